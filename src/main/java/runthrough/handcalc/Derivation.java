package runthrough.handcalc;

import java.util.List;

/**
 * What leads to a number of the hand calculation.
 *
 * @param givens what it starts from
 * @param steps in order; none where the number is given
 */
public record Derivation(List<Term> givens, List<Step> steps) {
    public Derivation {
        givens = List.copyOf(givens);
        steps = List.copyOf(steps);
    }
}
