package runthrough.study.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Wilson's score interval of a share: all shares {@code t} for which {@code |p - t| <= z sqrt(t (1 - t) / n)}, {@code p}
 * being the share seen in {@code n} trials. It has a width at 0 and 1 too.
 *
 * <p>Source: R. G. Newcombe, "Two-sided confidence intervals for the single proportion: comparison of seven methods",
 * Statistics in Medicine 17, 1998, method 3.
 *
 * <p>Rule REPORT-13.
 */
public final class Wilson {
    /** The normal deviate that is exceeded on either side together by what the interval leaves out. */
    static final double Z = deviate(Interval.CONFIDENCE);

    private Wilson() {}

    /**
     * The interval.
     *
     * @param share seen, in [0, 1]
     * @param trials that it was seen in, {@code > 0}; not a whole number where they count for less than their number
     */
    public static Interval interval(double share, double trials) {
        return of(Z, share, trials);
    }

    /** The same with another {@code confidence}, in (0, 1). */
    static Interval interval(double confidence, double share, double trials) {
        return of(deviate(confidence), share, trials);
    }

    /** The normal deviate that is exceeded on either side together by what the interval leaves out. */
    static double deviate(double confidence) {
        return NormalDistribution.of(0, 1).inverseCumulativeProbability((1 + confidence) / 2);
    }

    private static Interval of(double z, double share, double trials) {
        double zz = z * z / trials;
        double middle = (share + zz / 2) / (1 + zz);
        double half = Math.sqrt(share * (1 - share) * zz + zz * zz / 4) / (1 + zz);
        double low = share == 0 ? 0 : Math.max(0, middle - half);
        double high = share == 1 ? 1 : Math.min(1, middle + half);
        return new Interval(low, high, Interval.Method.WILSON);
    }

    /**
     * In how many independent trials a share of {@code share} would be told from {@code target}: the least number whose
     * interval leaves {@code target} out, {@code z^2 t (1 - t) / (p - t)^2}. Infinite when they are equal.
     */
    public static double trialsToTell(double share, double target) {
        double gap = share - target;
        return gap == 0 ? Double.POSITIVE_INFINITY : Z * Z * target * (1 - target) / (gap * gap);
    }
}
