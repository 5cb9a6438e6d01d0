package runthrough.study.sensitivity;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * By how much something changed.
 *
 * @param by how much, compared under the same random numbers
 * @param shown whether it is shown to have changed at all, all comparisons of the study made at once
 */
public record Change(Estimate by, boolean shown) {
    /** What is less than this, in metres, seconds or as a share, comes from rounding alone. */
    private static final double ROUNDING = 1e-9;

    /**
     * A change, one of {@code comparisons}. Of a hundred changes that are none, five would pass as some by their own 95 %
     * intervals; so each has to be shown at a level that leaves all of them together 5 % (Bonferroni's inequality).
     *
     * @param chance whether anything is random; if not, what is seen is so
     */
    static Change of(Estimate by, int comparisons, boolean chance) {
        double size = Math.abs(by.mean());
        OptionalDouble sd = by.sd();
        if (!chance || size <= ROUNDING) {
            return new Change(by, size > ROUNDING);
        }
        return new Change(by, sd.isPresent() && size > needed(by.replications(), sd.getAsDouble(), comparisons));
    }

    private static double needed(int replications, double sd, int comparisons) {
        double tail = (1 - Interval.CONFIDENCE) / 2 / comparisons;
        return TDistribution.of(replications - 1).inverseSurvivalProbability(tail) * sd / Math.sqrt(replications);
    }
}
