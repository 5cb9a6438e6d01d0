package runthrough.study.uncertainty;

import java.util.Arrays;
import runthrough.study.statistics.Moments;
import runthrough.study.statistics.Sample;

/**
 * How well a quantity is known.
 *
 * @param value it has with the times as observed
 * @param simulation its 95 % interval from simulation noise alone, as if the times were known exactly
 * @param all its 95 % interval with what is not known of the times included, at least as wide
 * @param times half the width of an interval from what is not known of the times alone
 */
public record UncertainFigure(double value, Band simulation, Band all, double times) {

    /** From {@code low} to {@code high}, {@code low <= high}. */
    public record Band(double low, double high) {
        public Band {
            if (!(low <= high)) {
                throw new IllegalArgumentException("from " + low + " to " + high + "; must not fall");
            }
        }

        /** Half of the distance between the ends. */
        public double halfWidth() {
            return (high - low) / 2;
        }

        private Band within(double floor, double ceiling) {
            return new Band(Math.min(ceiling, Math.max(floor, low)), Math.max(floor, Math.min(ceiling, high)));
        }
    }

    /**
     * What resamples tell.
     *
     * <p>The variance of the resampled values is that of the inputs and that of the noise of their own runs. The spread of the
     * values about their mean is scaled so that it has the variance of the inputs and that of the noise of the answer itself,
     * and laid about the answer: a percentile interval with the noise of short runs taken out.
     *
     * @param value with the times as observed
     * @param simulation its interval from noise alone
     * @param noise variance of {@code value} from simulation noise
     * @param resampled the value with each resample
     * @param resampledNoise variance of each of those from simulation noise
     * @param floor least that the quantity can be
     * @param ceiling most that it can be
     */
    static UncertainFigure of(
            double value,
            Band simulation,
            double noise,
            double[] resampled,
            double resampledNoise,
            double floor,
            double ceiling) {
        Moments moments = Moments.of(resampled);
        double variance = moments.sd() * moments.sd();
        Sample sorted = Sample.of(resampled);
        double low = sorted.percentile(0.025) - moments.mean();
        double high = sorted.percentile(0.975) - moments.mean();
        double scale = scale(variance, resampledNoise, noise);
        double alone = scale(variance, resampledNoise, 0);
        Band all = new Band(
                Math.min(simulation.low(), value + scale * low), Math.max(simulation.high(), value + scale * high));
        return new UncertainFigure(
                value, simulation.within(floor, ceiling), all.within(floor, ceiling), alone * (high - low) / 2);
    }

    /**
     * In what part of the resamples the value is {@code bound} or more, their spread scaled and laid about {@code value} as for the
     * interval: the chance that it is, as far as the inputs are known.
     */
    static double chanceOfAtLeast(double bound, double value, double noise, double[] resampled, double resampledNoise) {
        Moments moments = Moments.of(resampled);
        double scale = scale(moments.sd() * moments.sd(), resampledNoise, noise);
        return Arrays.stream(resampled)
                .map(one -> value + scale * (one - moments.mean()) >= bound ? 1 : 0)
                .average()
                .orElseThrow();
    }

    /** By what the spread of resampled values must be multiplied for the variance of the inputs and that of {@code noise}. */
    private static double scale(double variance, double resampledNoise, double noise) {
        return variance > 0 ? Math.sqrt((Math.max(0, variance - resampledNoise) + noise) / variance) : 0;
    }

    /**
     * By what factor the observations must grow for {@code times} to come down to {@code precision}, {@code > 0}: the variance
     * due to the inputs falls as one over their number. At least 1.
     */
    public double observationsFactor(double precision) {
        return Math.max(1, times / precision * (times / precision));
    }

    static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }
}
