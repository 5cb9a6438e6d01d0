package runthrough.study.comparison;

import java.util.EnumMap;
import java.util.Map;
import runthrough.study.Evaluation;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Pairs;
import runthrough.study.statistics.SplitValues;

/**
 * The replications of an alternative, held one by one against those of the line called today.
 *
 * @param here the alternative
 * @param there the line called today
 * @param comparisons how many differences of a measure are judged at once
 * @param yearlyTime scheduled running time of a year (s)
 */
public record AgainstToday(Evaluation here, Evaluation there, int comparisons, double yearlyTime) {

    /** By how much {@code measure} is more than today. */
    Difference difference(ComparisonMeasure measure) {
        return measure == ComparisonMeasure.RUN_THROUGH
                ? pairs().shares(here.successes(), there.successes())
                : difference(measure.values(here), measure.values(there));
    }

    /**
     * By how much a sum of several measures of a year is more than today, with an interval of its own from the sums of the
     * replications: what one of them gains where another loses falls out.
     *
     * @param factors of measures of which a year has a meaning, at least one
     */
    public Difference ofYear(Map<ComparisonMeasure, Double> factors) {
        return difference(sum(factors, here), sum(factors, there));
    }

    private Pairs pairs() {
        return Pairs.of(comparisons);
    }

    private SplitValues sum(Map<ComparisonMeasure, Double> factors, Evaluation evaluation) {
        return new EnumMap<>(factors)
                .entrySet().stream()
                        .map(entry -> entry.getKey()
                                .values(evaluation)
                                .times(entry.getValue()
                                        * entry.getKey().perYear(yearlyTime).orElseThrow()))
                        .reduce(SplitValues::plus)
                        .orElseThrow();
    }

    private Difference difference(SplitValues ones, SplitValues others) {
        if (!here.chance() && !there.chance()) {
            return Difference.exact(ones.values()[0], others.values()[0], pairs().confidence());
        }
        int replications =
                Math.max(here.replications().size(), there.replications().size());
        return pairs().means(
                        here.chance() ? ones : ones.at(new int[replications]),
                        there.chance() ? others : others.at(new int[replications]));
    }
}
