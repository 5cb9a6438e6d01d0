package runthrough.study.times;

import org.apache.commons.statistics.distribution.NormalDistribution;
import runthrough.study.statistics.Moments;

/**
 * How many observations it takes to know a mean time: the formula of the time-study handbooks, G. Kanawaty (ed.), Introduction
 * to Work Study, 4th ed., International Labour Office, 1992, part on time study (from memory): from n' readings x
 *
 * <pre>    n = (k / e * sqrt(n' sum x^2 - (sum x)^2) / sum x)^2        40 = 2 / 0.05 for 95.45 % and 5 %</pre>
 *
 * where k is the normal deviate of the confidence and e the precision as a share of the mean.
 *
 * @param confidence that the mean lies within the precision, in (0, 1)
 * @param precision half-width as a share of the mean, {@code > 0}
 * @param taken readings there are
 * @param needed observations that the formula asks for, not rounded
 */
public record SampleSize(double confidence, double precision, int taken, double needed) {

    /** Two standard errors to either side, as the handbooks have it. */
    public static final double USUAL_CONFIDENCE = 0.9545;

    /** 5 % of the mean, as the handbooks have it. */
    public static final double USUAL_PRECISION = 0.05;

    /** Handbooks take 1, 2 and 3 for 68.27, 95.45 and 99.73 %. */
    private static final double NEARLY_WHOLE = 1e-3;

    private static final double ROUNDING = 1e-9;

    public SampleSize {
        if (!(confidence > 0 && confidence < 1 && precision > 0)) {
            throw new IllegalArgumentException(
                    "confidence " + confidence + " must be between 0 and 1, precision " + precision + " more than 0");
        }
    }

    /** For {@code times}, of which one must be more than 0. */
    public static SampleSize of(double confidence, double precision, double... times) {
        Moments moments = Moments.of(times);
        int n = times.length;
        // n' sum x^2 - (sum x)^2 = n' (n' - 1) sd^2, without its loss of digits.
        double spread = Math.sqrt((double) n * (n - 1)) * moments.sdOrZero();
        double root = deviate(confidence) / precision * spread / (n * moments.mean());
        return new SampleSize(confidence, precision, n, root * root);
    }

    private static double deviate(double confidence) {
        double k = NormalDistribution.of(0, 1).inverseCumulativeProbability((1 + confidence) / 2);
        return Math.abs(k - Math.rint(k)) < NEARLY_WHOLE ? Math.rint(k) : k;
    }

    /** Observations to take in all, {@code >= 1}; one alone says nothing of how far times lie apart. */
    public long total() {
        return (long) Math.max(taken == 1 ? 2 : 1, Math.ceil(needed - ROUNDING));
    }

    /** Observations still to take, {@code >= 0}. */
    public long more() {
        return Math.max(0, total() - taken);
    }
}
