package runthrough.handcalc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.quantity.Kind;

/** The sheet on which a calculation is worked: what is given, then step by step. */
final class Sheet {
    private final List<Term> givens = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();

    /** Writes down what is given. */
    Term given(String symbol, String name, double value, Kind kind) {
        Term term = new Term(symbol, name, value, kind);
        givens.add(term);
        return term;
    }

    /** Works out {@code result} by a formula with {@code {}} for each term. */
    Term step(Term result, String text, Term... terms) {
        steps.add(new Step(result, text, List.of(terms), Optional.empty()));
        return result;
    }

    /** Works out {@code result} as the sum of parts. */
    Term step(Term result, Sum sum) {
        steps.add(new Step(result, sum.text(), sum.terms(), Optional.empty()));
        return result;
    }

    /** Works out {@code result} and holds it against something. */
    Term step(Term result, Margin margin, Sum sum) {
        steps.add(new Step(result, sum.text(), sum.terms(), Optional.of(margin)));
        return result;
    }

    List<Term> givens() {
        return List.copyOf(givens);
    }

    List<Step> steps() {
        return List.copyOf(steps);
    }
}
