package runthrough.handcalc;

import java.util.ArrayList;
import java.util.List;

/** A formula put together part by part; what belongs to a speed that changes at once is left out. */
final class Sum {
    private final StringBuilder text = new StringBuilder();
    private final List<Term> terms = new ArrayList<>();

    /** Adds a part, with {@code {}} for each of its terms. */
    Sum plus(String part, Term... partTerms) {
        return append(" + ", part, partTerms);
    }

    /** Subtracts a part. */
    Sum minus(String part, Term... partTerms) {
        return append(" - ", part, partTerms);
    }

    /** Adds a ramp's {@code v^2/(2 a)}. */
    Sum plusRamp(Term speed, Term acceleration) {
        return isAtOnce(acceleration) ? this : plus("{}^2 / (2 * {})", speed, acceleration);
    }

    /** Subtracts a ramp's {@code v^2/(2 a)}. */
    Sum minusRamp(Term speed, Term acceleration) {
        return isAtOnce(acceleration) ? this : minus("{}^2 / (2 * {})", speed, acceleration);
    }

    /** Adds a ramp's duration {@code v/a}. */
    Sum plusQuotient(Term speed, Term acceleration) {
        return isAtOnce(acceleration) ? this : plus("{} / {}", speed, acceleration);
    }

    /** Adds a part with nothing but an acceleration under a fraction line. */
    Sum plusInverse(String part, Term acceleration) {
        return isAtOnce(acceleration) ? this : plus(part, acceleration);
    }

    /** Goes on with another formula, as it stands. */
    Sum join(Sum other) {
        text.append(other.text());
        terms.addAll(other.terms);
        return this;
    }

    /** Goes on with plain text. */
    Sum join(String more) {
        text.append(more);
        return this;
    }

    /** All of it, in brackets, over a term. */
    Sum over(Term below) {
        text.insert(0, '(').append(") / {}");
        terms.add(below);
        return this;
    }

    private static boolean isAtOnce(Term acceleration) {
        return Double.isInfinite(acceleration.value());
    }

    private Sum append(String sign, String part, Term... partTerms) {
        text.append(text.isEmpty() ? "" : sign).append(part);
        terms.addAll(List.of(partTerms));
        return this;
    }

    /** The formula; the sum of nothing is 0. */
    String text() {
        return text.isEmpty() ? "0" : text.toString();
    }

    List<Term> terms() {
        return List.copyOf(terms);
    }
}
