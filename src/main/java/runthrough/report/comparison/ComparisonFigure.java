package runthrough.report.comparison;

import java.util.Optional;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.report.Texts;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Compared.Figure;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * One measure of a comparison as people read it, the same unit for all alternatives.
 *
 * @param name of the measure
 * @param measure that is shown
 * @param yearly whether what it comes to in a year is shown
 * @param unit in which; empty for plain numbers
 * @param symbol of the unit of a value; empty for plain numbers
 */
record ComparisonFigure(String name, ComparisonMeasure measure, boolean yearly, Optional<Unit> unit, String symbol) {

    static ComparisonFigure plain(String name, ComparisonMeasure measure, boolean yearly) {
        return new ComparisonFigure(name, measure, yearly, Optional.empty(), "");
    }

    static ComparisonFigure in(Unit unit, String name, ComparisonMeasure measure, boolean yearly) {
        return new ComparisonFigure(name, measure, yearly, Optional.of(unit), unit.symbol());
    }

    /** Of people's work: {@code unit} for each of them. */
    static ComparisonFigure ofPeople(Unit unit, String name, ComparisonMeasure measure, boolean yearly) {
        return new ComparisonFigure(name, measure, yearly, Optional.of(unit), "person-" + unit.symbol());
    }

    /** The unit of a difference: that of two shares is in points of a per cent. */
    String differenceSymbol() {
        return isShare() ? "points" : symbol;
    }

    private boolean isShare() {
        return unit.filter(Unit.PERCENT::equals).isPresent();
    }

    Figure of(Compared one) {
        return yearly ? one.perYear(measure) : one.figure(measure);
    }

    double shown(double si) {
        return unit.map(given -> given.fromSi(si)).orElse(si);
    }

    /** The value without its unit. */
    String value(Compared one) {
        Estimate value = of(one).value();
        if (isShare()) {
            return Notation.SHARE.number(value.mean());
        }
        double half = value.interval()
                .filter(any -> one.chance())
                .map(Interval::halfWidth)
                .orElse(0.0);
        return Texts.certain(shown(value.mean()), shown(half));
    }

    /** The difference with its sign, without its unit. */
    String mean(Difference difference) {
        double mean = shown(difference.mean());
        double half = shown(halfWidth(difference));
        return (Numbers.roundsToNothing(mean, half) ? "" : mean > 0 ? "+" : "-") + Texts.certain(Math.abs(mean), half);
    }

    /** Its interval without the unit, such as "-3 to 5"; empty without one. */
    Optional<String> interval(Difference difference) {
        double half = shown(halfWidth(difference));
        return difference
                .interval()
                .map(ends -> Texts.certain(shown(ends.low()), half) + " to " + Texts.certain(shown(ends.high()), half));
    }

    /** The size of the difference and, in brackets, that of its interval, both without sign: "312 t (305 to 319)". */
    String size(Difference difference) {
        double half = shown(halfWidth(difference));
        boolean isLess = difference.mean() < 0;
        String size = Texts.certain(Math.abs(shown(difference.mean())), half)
                + (differenceSymbol().isEmpty() ? "" : " " + differenceSymbol());
        return size
                + difference
                        .interval()
                        .map(ends -> isLess ? new Interval(-ends.high(), -ends.low(), ends.method()) : ends)
                        .map(ends -> " (" + Texts.certain(shown(ends.low()), half) + " to "
                                + Texts.certain(shown(ends.high()), half) + ")")
                        .orElse("");
    }

    private static double halfWidth(Difference difference) {
        return difference.interval().map(Interval::halfWidth).orElse(0.0);
    }

    /** What to say of a difference. */
    static String word(Difference difference) {
        return switch (difference.significance()) {
            case SIGNIFICANT -> "significant";
            case NOT_SHOWN -> "not shown";
            case NONE -> "none";
        };
    }
}
