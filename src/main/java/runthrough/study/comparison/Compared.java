package runthrough.study.comparison;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import runthrough.plant.Alternative;
import runthrough.study.TargetStatus;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Estimate;

/**
 * One alternative and what it gave.
 *
 * @param alternative with its name and what it changes
 * @param chance whether anything in it is random; if not, its values are exact
 * @param answer whether the target is met
 * @param changes how many coil changes were run
 * @param withoutStop share of coil changes without a stop, where it has a target for that
 * @param causes what those that did not run through are attributed to, by named element, most coil changes first
 * @param stripBreaks how often the level fell below 0, in all replications; what follows one is not physical
 * @param figures one for each measure, as {@link ComparisonMeasure} defines it
 * @param yearly the same of a year, for those measures of which a year has a meaning
 * @param against the line called today, replication by replication; empty for that one itself
 */
public record Compared(
        Alternative alternative,
        boolean chance,
        TargetStatus answer,
        long changes,
        Optional<Estimate> withoutStop,
        List<NamedCauses.Count> causes,
        long stripBreaks,
        Map<ComparisonMeasure, Figure> figures,
        Map<ComparisonMeasure, Figure> yearly,
        Optional<AgainstToday> against) {

    public Compared {
        causes = List.copyOf(causes);
        figures = Map.copyOf(figures);
        yearly = Map.copyOf(yearly);
    }

    /**
     * A value of an alternative.
     *
     * @param value with its 95 % interval
     * @param difference to the one called today: this less that one; empty for that one itself
     */
    public record Figure(Estimate value, Optional<Difference> difference) {

        private Figure times(double factor) {
            return new Figure(value.times(factor), difference.map(by -> by.times(factor)));
        }
    }

    /** What most of its coil changes that did not run through are attributed to; empty where all ran through. */
    public Optional<Reason> mainCause() {
        return causes.stream().findFirst().map(NamedCauses.Count::reason);
    }

    /** What {@code measure} gave. */
    public Figure figure(ComparisonMeasure measure) {
        return Objects.requireNonNull(figures.get(measure));
    }

    /**
     * What {@code measure}, of which a year has a meaning, comes to in a year: stops, lost seconds, metres, kilograms,
     * kilograms of scrap, person-seconds at the joint.
     */
    public Figure perYear(ComparisonMeasure measure) {
        return Objects.requireNonNull(yearly.get(measure), () -> measure + " has no year");
    }

    /** The figures of a year of {@code yearlyTime} (s). */
    static Map<ComparisonMeasure, Figure> yearly(Map<ComparisonMeasure, Figure> figures, double yearlyTime) {
        Map<ComparisonMeasure, Figure> yearly = new EnumMap<>(ComparisonMeasure.class);
        figures.forEach((measure, figure) ->
                measure.perYear(yearlyTime).ifPresent(factor -> yearly.put(measure, figure.times(factor))));
        return yearly;
    }
}
