package runthrough.study.fitting;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;
import runthrough.plant.Distribution;

/** Fits the normal distribution conditioned on being more than 0, which is the normal distribution of scenarios. */
final class PositiveNormal {
    /** With the mean so many standard deviations above 0 nothing is cut off that a double could tell. */
    private static final double FAR_FROM_ZERO = 8;

    private PositiveNormal() {}

    /** The parent's mean is kept above 0, as a scenario wants it. */
    static FittedDistribution fit(Durations times) {
        double mean = times.mean();
        double sd = Math.sqrt(Arrays.stream(times.exact())
                .map(time -> (time - mean) * (time - mean))
                .average()
                .orElseThrow());
        if (mean > FAR_FROM_ZERO * sd) {
            return distribution(mean, sd, times);
        }
        double[] best = LikelihoodMaximum.high(
                at -> {
                    NormalDistribution parent = NormalDistribution.of(Math.exp(at[0]), Math.exp(at[1]));
                    double all =
                            Arrays.stream(times.exact()).map(parent::logDensity).sum();
                    return all - times.n() * Math.log(parent.survivalProbability(0));
                },
                new double[] {Math.log(mean), Math.log(sd)},
                new double[] {0.1, 0.1});
        return distribution(Math.exp(best[0]), Math.exp(best[1]), times);
    }

    private static FittedDistribution distribution(double mean, double sd, Durations times) {
        ContinuousDistribution base = mean > FAR_FROM_ZERO * sd
                ? NormalDistribution.of(mean, sd)
                : TruncatedNormalDistribution.of(mean, sd, 0, Double.POSITIVE_INFINITY);
        return FittedDistribution.of(Family.NORMAL, base, Distribution.normal(mean, sd), times);
    }
}
