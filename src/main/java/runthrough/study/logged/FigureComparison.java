package runthrough.study.logged;

import java.util.Arrays;
import runthrough.quantity.Kind;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Sample;

/**
 * One figure of the log against the same figure of simulated logs as long.
 *
 * @param logged of the line; NaN where the log has nothing to take it from
 * @param simulated of each simulated log that has something to take it from
 * @param atMost share of the simulated logs in which it is no greater than logged, in [0, 1]; times count as equal when they
 *     differ by less than half a per cent
 * @param atLeast share in which it is no less
 */
public record FigureComparison(LogFigure figure, double logged, Sample simulated, double atMost, double atLeast) {

    /** A difference in time by less than this part of it matters to nobody; clocks of logs are coarse. */
    private static final double TOO_SMALL = 0.005;

    /** A figure that so few simulated logs have shows nothing. */
    private static final int FEWEST = 20;

    static FigureComparison of(LogFigure figure, double logged, double[] values) {
        double[] known =
                Arrays.stream(values).filter(value -> !Double.isNaN(value)).toArray();
        double slack = (figure.kind() == Kind.TIME ? TOO_SMALL : 1e-9) * Math.abs(logged);
        double n = known.length;
        return new FigureComparison(
                figure,
                logged,
                Sample.of(known),
                Arrays.stream(known).filter(value -> value <= logged + slack).count() / n,
                Arrays.stream(known).filter(value -> value >= logged - slack).count() / n);
    }

    /** Whether there is anything to compare. */
    public boolean isKnown() {
        return !Double.isNaN(logged) && (simulated.count() >= FEWEST || isExact());
    }

    /** Whether all simulated logs give the same. */
    private boolean isExact() {
        return !simulated.isEmpty() && simulated.get(0) == simulated.get(simulated.count() - 1);
    }

    /** Mean over the simulated logs. */
    public double mean() {
        return Arrays.stream(simulated.values()).average().orElse(Double.NaN);
    }

    /** Within which 95 % of simulated logs lie: lower end. */
    public double low() {
        return simulated.isEmpty() ? Double.NaN : simulated.percentile((1 - Interval.CONFIDENCE) / 2);
    }

    /** Upper end. */
    public double high() {
        return simulated.isEmpty() ? Double.NaN : simulated.percentile((1 + Interval.CONFIDENCE) / 2);
    }

    /** Whether the line gives what the model gives in 95 % of logs; true where there is nothing to compare. */
    public boolean isWithin() {
        return isWithin(1 - Interval.CONFIDENCE);
    }

    /** The same, with the chance {@code alpha} of a false alarm. */
    public boolean isWithin(double alpha) {
        return !isKnown() || Math.min(atMost, atLeast) > alpha / 2;
    }

    /** Whether the line gives less than the model. */
    public boolean isLess() {
        return atMost < atLeast;
    }
}
