package runthrough.report.comparison;

import java.util.List;
import java.util.stream.Stream;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;

/**
 * All figures of a comparison as people read them, in the user's units.
 *
 * @param now as simulated, per 8 h, per coil change or as a share
 * @param yearly what they come to in a year
 */
record ComparisonFigures(List<ComparisonFigure> now, List<ComparisonFigure> yearly) {

    static ComparisonFigures of(Comparison comparison, UnitSystem system) {
        Units units = Units.of(system);
        Unit mass = units.unit(Kind.MASS);
        Unit yearlyMass = units.unitFor(Kind.MASS, Double.MAX_VALUE);
        Unit time = clock(comparison, ComparisonMeasure.LOST_TIME);
        return new ComparisonFigures(
                List.of(
                        ComparisonFigure.in(
                                Unit.PERCENT, "coil changes run through", ComparisonMeasure.RUN_THROUGH, false),
                        ComparisonFigure.plain("starved stops per 8 h", ComparisonMeasure.STOPS, false),
                        ComparisonFigure.in(time, "time lost per 8 h", ComparisonMeasure.LOST_TIME, false),
                        ComparisonFigure.in(
                                units.unit(Kind.RATE_LENGTH),
                                "output by length",
                                ComparisonMeasure.OUTPUT_LENGTH,
                                false),
                        ComparisonFigure.in(
                                units.unit(Kind.RATE_MASS), "output by mass", ComparisonMeasure.OUTPUT_MASS, false),
                        ComparisonFigure.in(Unit.PERCENT, "output, of rated", ComparisonMeasure.UTILISATION, false),
                        ComparisonFigure.in(mass, "scrap per 8 h", ComparisonMeasure.SCRAP_MASS, false),
                        ComparisonFigure.in(Unit.PERCENT, "scrap, share of mass", ComparisonMeasure.SCRAP_SHARE, false),
                        ComparisonFigure.in(
                                clock(comparison, ComparisonMeasure.JOINT_CYCLE_TIME),
                                "joint cycle time",
                                ComparisonMeasure.JOINT_CYCLE_TIME,
                                false),
                        ComparisonFigure.ofPeople(
                                Unit.MINUTE,
                                "crew time at the joint, at a coil change",
                                ComparisonMeasure.CREW_TIME_PER_CHANGE,
                                false),
                        ComparisonFigure.ofPeople(
                                Unit.MINUTE, "crew time at the joint per 8 h", ComparisonMeasure.CREW_TIME, false)),
                List.of(
                        ComparisonFigure.in(yearlyMass, "output of a year", ComparisonMeasure.OUTPUT_MASS, true),
                        ComparisonFigure.in(
                                units.unit(Kind.LENGTH),
                                "output of a year by length",
                                ComparisonMeasure.OUTPUT_LENGTH,
                                true),
                        ComparisonFigure.in(Unit.HOUR, "time lost in a year", ComparisonMeasure.LOST_TIME, true),
                        ComparisonFigure.plain("starved stops in a year", ComparisonMeasure.STOPS, true),
                        ComparisonFigure.in(yearlyMass, "scrap of a year", ComparisonMeasure.SCRAP_MASS, true),
                        ComparisonFigure.ofPeople(
                                Unit.HOUR, "crew time at the joint in a year", ComparisonMeasure.CREW_TIME, true)));
    }

    private static Unit clock(Comparison comparison, ComparisonMeasure measure) {
        double greatest = comparison.all().stream()
                .mapToDouble(one -> one.figure(measure).value().mean())
                .max()
                .orElse(0);
        return greatest <= 600 ? Unit.SECOND : greatest <= 3 * 3600 ? Unit.MINUTE : Unit.HOUR;
    }

    Stream<ComparisonFigure> all() {
        return Stream.concat(now.stream(), yearly.stream());
    }

    ComparisonFigure find(ComparisonMeasure measure, boolean ofAYear) {
        return all().filter(figure -> figure.measure() == measure && figure.yearly() == ofAYear)
                .findFirst()
                .orElseThrow();
    }
}
