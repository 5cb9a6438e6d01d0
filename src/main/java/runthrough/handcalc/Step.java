package runthrough.handcalc;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One line of the worked calculation: a result, the formula, and what goes into it. Numbers are SI; whoever shows them
 * decides the units, and must take coherent ones in the formula, or it does not add up.
 *
 * @param result what comes out
 * @param text the formula, with {@code {}} where the terms go, in their order
 * @param terms what goes in, one for each {@code {}}
 * @param margin what the result is held against, if anything
 */
public record Step(Term result, String text, List<Term> terms, Optional<Margin> margin) {
    private static final String PLACE = "{}";

    public Step {
        terms = List.copyOf(terms);
        int places = (text.length() - text.replace(PLACE, "").length()) / PLACE.length();
        if (places != terms.size()) {
            throw new IllegalArgumentException(text + " has room for " + places + " terms, not for " + terms.size());
        }
    }

    /** The formula with its symbols: {@code V × T + V²/(2 × d_e)}. */
    public String formula() {
        return fill(Term::symbol);
    }

    /** The formula with each term written as {@code write} says. */
    public String fill(Function<Term, String> write) {
        StringBuilder filled = new StringBuilder();
        int from = 0;
        for (Term term : terms) {
            int place = text.indexOf(PLACE, from);
            filled.append(text, from, place).append(write.apply(term));
            from = place + PLACE.length();
        }
        return filled.append(text.substring(from)).toString();
    }
}
