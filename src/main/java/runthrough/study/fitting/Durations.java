package runthrough.study.fitting;

import java.util.Arrays;

/**
 * Measured times, and times that were only seen to be longer than what is noted (censored on the right), in order of size (s).
 */
public final class Durations {
    private final double[] exact;
    private final double[] longerThan;

    private Durations(double[] exact, double[] longerThan) {
        this.exact = exact;
        this.longerThan = longerThan;
    }

    /** Times that were all seen to their end; at least one, each {@code >= 0}. */
    public static Durations of(double... times) {
        if (times.length == 0 || !Arrays.stream(times).allMatch(time -> time >= 0 && time < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("durations must be finite and 0 or more, at least one");
        }
        return new Durations(sorted(times), new double[0]);
    }

    /**
     * With more of them, whose end was not seen: {@code times} is how long each had gone on when the watch was stopped. A
     * time-study sheet has none; published samples, against which the fits are tested, have.
     */
    Durations andLongerThan(double... times) {
        return new Durations(exact, sorted(times));
    }

    private static double[] sorted(double[] times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** Each less {@code shift}, which must not exceed the least. */
    Durations less(double shift) {
        return shift == 0
                ? this
                : new Durations(
                        Arrays.stream(exact).map(time -> time - shift).toArray(),
                        Arrays.stream(longerThan).map(time -> time - shift).toArray());
    }

    /** How many were seen to their end. */
    public int n() {
        return exact.length;
    }

    /** Whether the end of some was not seen. */
    boolean isCensored() {
        return longerThan.length > 0;
    }

    /** The {@code i}-th smallest of those seen to their end, from 0. */
    double get(int i) {
        return exact[i];
    }

    /** Those seen to their end, smallest first. */
    double[] exact() {
        return exact;
    }

    /** How long the others had gone on, smallest first. */
    double[] longerThan() {
        return longerThan;
    }

    double least() {
        return exact[0];
    }

    double greatest() {
        return exact[exact.length - 1];
    }

    /** Mean of those seen to their end. */
    double mean() {
        return Arrays.stream(exact).average().orElseThrow();
    }

    /** Mean of their logarithms. */
    double meanLogarithm() {
        return Arrays.stream(exact).map(Math::log).average().orElseThrow();
    }
}
