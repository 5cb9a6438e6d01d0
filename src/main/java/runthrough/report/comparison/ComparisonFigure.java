package runthrough.report.comparison;

import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Value;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Compared.Figure;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Interval;

/**
 * One measure of a comparison as people read it, the same unit for all alternatives.
 *
 * @param name of the measure
 * @param measure that is shown
 * @param yearly whether what it comes to in a year is shown
 * @param notation of its values
 */
record ComparisonFigure(String name, ComparisonMeasure measure, boolean yearly, Notation notation) {

    /** The same as so much a year, where the place does not say so. */
    ComparisonFigure aYear() {
        return new ComparisonFigure(name, measure, yearly, notation.called(notation.symbol() + " a year"));
    }

    Figure of(Compared one) {
        return yearly ? one.perYear(measure) : one.figure(measure);
    }

    /** What it is with an alternative. */
    Value value(Compared one) {
        Figure figure = of(one);
        return new Value(
                figure.value().mean(), notation, figure.value().interval().filter(any -> one.chance()));
    }

    /** How differences are written: those of two shares in points of a per cent. */
    Notation notationOfDifferences() {
        return notation.equals(Notation.SHARE) ? Notation.POINTS : notation;
    }

    /** By how much it is more or less than another. */
    Value value(Difference difference) {
        return new Value(difference.mean(), notationOfDifferences(), difference.interval());
    }

    /** The same as a cell, with its sign. */
    Cell change(Difference difference) {
        return new Cell.Change(value(difference), "");
    }

    /** The size of a difference and, in brackets, that of its interval, both without sign: "312 t (305 to 319)". */
    String size(Difference difference) {
        Value value = value(difference);
        return difference.mean() < 0
                ? new Value(
                                -value.si(),
                                value.notation(),
                                value.interval().map(ends -> new Interval(-ends.high(), -ends.low(), ends.method())))
                        .known()
                : value.known();
    }

    /** What to say of a difference. */
    static String word(Difference difference) {
        return switch (difference.significance()) {
            case SIGNIFICANT -> difference.isExact() ? "exact" : "significant";
            case NOT_SHOWN -> "not shown";
            case NONE -> "none";
        };
    }
}
