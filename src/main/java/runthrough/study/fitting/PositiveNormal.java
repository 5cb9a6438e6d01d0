package runthrough.study.fitting;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** Fits the normal distribution conditioned on being more than 0, which is the normal distribution of scenarios. */
final class PositiveNormal {
    private PositiveNormal() {}

    /** The parent's mean is kept above 0, as a scenario wants it. */
    static FittedDistribution fit(Durations times) {
        double mean = times.mean();
        double sd = Math.sqrt(Arrays.stream(times.exact())
                .map(time -> (time - mean) * (time - mean))
                .average()
                .orElseThrow());
        FittedNumbers.Normal whole = new FittedNumbers.Normal(mean, sd);
        if (whole.isFarFromZero()) {
            return FittedDistribution.of(whole, times);
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
        return FittedDistribution.of(new FittedNumbers.Normal(Math.exp(best[0]), Math.exp(best[1])), times);
    }
}
