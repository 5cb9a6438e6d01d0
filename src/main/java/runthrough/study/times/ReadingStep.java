package runthrough.study.times;

import java.util.Arrays;

/** To what the watch was read: times that are all whole multiples of 5 s were not read to the second. */
public final class ReadingStep {
    /** Steps in use (s), the coarsest first; 0.6 s is a hundredth of a minute. */
    private static final double[] STEPS = {60, 30, 15, 10, 5, 1, 0.6, 0.5, 0.1, 0.06, 0.01};

    /** Times that were converted from minutes miss a multiple by rounding alone. */
    private static final double ROUNDING = 1e-6;

    private ReadingStep() {}

    /** The coarsest step of which all {@code times} are multiples (s); 0 when there is none, or fewer than two times differ. */
    public static double of(double... times) {
        if (Arrays.stream(times).distinct().count() < 2) {
            return 0;
        }
        return Arrays.stream(STEPS)
                .filter(step -> Arrays.stream(times).allMatch(time -> isMultiple(time, step)))
                .findFirst()
                .orElse(0);
    }

    private static boolean isMultiple(double time, double step) {
        double steps = time / step;
        return Math.abs(steps - Math.rint(steps)) < ROUNDING;
    }
}
