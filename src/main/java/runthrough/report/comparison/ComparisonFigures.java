package runthrough.report.comparison;

import java.util.List;
import java.util.stream.Stream;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Unit;
import runthrough.report.Texts;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;

/**
 * All figures of a comparison as people read them, in the user's units.
 *
 * @param all as simulated (per 8 h, per coil change or as a share), then what they come to in a year
 */
record ComparisonFigures(List<ComparisonFigure> all) {
    private static final Notation CREW_MINUTES = Notation.of(Unit.MINUTE).called("person-min");
    private static final Notation CREW_HOURS = Notation.of(Unit.HOUR).called("person-h");

    static ComparisonFigures of(Comparison comparison, Texts texts) {
        return new ComparisonFigures(
                Stream.concat(now(comparison, texts), yearly(texts)).toList());
    }

    private static Stream<ComparisonFigure> now(Comparison comparison, Texts texts) {
        return Stream.of(
                now("coil changes run through", ComparisonMeasure.RUN_THROUGH, Notation.SHARE),
                now("starved stops per 8 h", ComparisonMeasure.STOPS, Notation.PLAIN),
                now("time lost per 8 h", ComparisonMeasure.LOST_TIME, time(comparison, ComparisonMeasure.LOST_TIME)),
                now("output by length", ComparisonMeasure.OUTPUT_LENGTH, texts.notation(Kind.RATE_LENGTH)),
                now("output by mass", ComparisonMeasure.OUTPUT_MASS, texts.notation(Kind.RATE_MASS)),
                now("yield: good of gross output", ComparisonMeasure.YIELD, Notation.SHARE),
                now("output, of rated", ComparisonMeasure.UTILISATION, Notation.SHARE),
                now("scrap per 8 h", ComparisonMeasure.SCRAP_MASS, texts.notation(Kind.MASS)),
                now("scrap, share of mass", ComparisonMeasure.SCRAP_SHARE, Notation.SHARE),
                now(
                        "joint cycle time",
                        ComparisonMeasure.JOINT_CYCLE_TIME,
                        time(comparison, ComparisonMeasure.JOINT_CYCLE_TIME)),
                now("crew time at the joint, at a coil change", ComparisonMeasure.CREW_TIME_PER_CHANGE, CREW_MINUTES),
                now("crew time at the joint per 8 h", ComparisonMeasure.CREW_TIME, CREW_MINUTES),
                now("paid hours per 8 h", ComparisonMeasure.PAID_TIME, CREW_HOURS));
    }

    private static Stream<ComparisonFigure> yearly(Texts texts) {
        Notation mass = texts.notation(Kind.MASS, Double.MAX_VALUE);
        return Stream.of(
                yearly("output of a year", ComparisonMeasure.OUTPUT_MASS, mass),
                yearly("output of a year by length", ComparisonMeasure.OUTPUT_LENGTH, texts.notation(Kind.LENGTH)),
                yearly("time lost in a year", ComparisonMeasure.LOST_TIME, Notation.of(Unit.HOUR)),
                yearly("starved stops in a year", ComparisonMeasure.STOPS, Notation.PLAIN),
                yearly("scrap of a year", ComparisonMeasure.SCRAP_MASS, mass),
                yearly("paid hours of a year", ComparisonMeasure.PAID_TIME, CREW_HOURS),
                yearly("crew time at the joint in a year", ComparisonMeasure.CREW_TIME, CREW_HOURS));
    }

    private static ComparisonFigure now(String name, ComparisonMeasure measure, Notation notation) {
        return new ComparisonFigure(name, measure, false, notation);
    }

    private static ComparisonFigure yearly(String name, ComparisonMeasure measure, Notation notation) {
        return new ComparisonFigure(name, measure, true, notation);
    }

    private static Notation time(Comparison comparison, ComparisonMeasure measure) {
        return Notation.time(comparison.all().stream()
                .mapToDouble(one -> one.figure(measure).value().mean())
                .max()
                .orElse(0));
    }

    /** What was simulated of {@code measure}. */
    ComparisonFigure now(ComparisonMeasure measure) {
        return find(measure, false);
    }

    /** What {@code measure} comes to in a year. */
    ComparisonFigure yearly(ComparisonMeasure measure) {
        return find(measure, true);
    }

    private ComparisonFigure find(ComparisonMeasure measure, boolean yearly) {
        return all.stream()
                .filter(figure -> figure.measure() == measure && figure.yearly() == yearly)
                .findFirst()
                .orElseThrow();
    }
}
