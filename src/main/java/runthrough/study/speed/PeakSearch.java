package runthrough.study.speed;

import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import runthrough.simulation.records.Totals;
import runthrough.study.StudyException;
import runthrough.study.speed.SpeedCurve.Peak;
import runthrough.study.speed.SpeedCurve.Where;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Finds the speed at which most comes out: the best of the range's speeds, then by golden section between its neighbours. All
 * under the same random numbers, so that outputs of neighbouring speeds can be distinguished.
 */
final class PeakSearch {
    /** The golden section. */
    private static final double SECTION = (Math.sqrt(5) - 1) / 2;

    /** Outputs that differ by less than this part are the same but for rounding. */
    private static final double ROUNDING = 1e-12;

    private final Speeds speeds;
    private final SpeedRange range;
    private final double precision;

    PeakSearch(Speeds speeds, SpeedRange range, double precision) {
        this.speeds = speeds;
        this.range = range;
        this.precision = precision;
    }

    Peak peak() {
        refine(best());
        double best = best();
        double fastest = inRange().max().orElseThrow();
        Where where = best == fastest ? Where.AT_FASTEST : best == range.from() ? Where.AT_SLOWEST : Where.INSIDE;
        return new Peak(
                speeds.point(best),
                where,
                asGood(
                        best,
                        speeds.tried().stream()
                                .filter(s -> s <= best)
                                .sorted(Comparator.reverseOrder())
                                .toList()),
                asGood(best, speeds.tried().stream().filter(s -> s >= best).toList()),
                fastest,
                loss(best, fastest));
    }

    /** The best speed of the range that was tried; of equals the slowest. */
    private double best() {
        return inRange()
                .boxed()
                .reduce((best, speed) -> output(speed) > output(best) ? speed : best)
                .orElseThrow(() -> new StudyException("the line cannot be run at any speed of the range: "
                        + speeds.notPossible().get(0).why()));
    }

    /** The speeds of the range at which the line was run, slowest first. */
    private DoubleStream inRange() {
        return speeds.tried().stream()
                .mapToDouble(Double::doubleValue)
                .filter(speed -> range.from() <= speed && speed <= range.to());
    }

    /** Less than any other where the line cannot be run. */
    private double output(double speed) {
        return speeds.attempt(speed)
                .map(there -> there.mean(Totals::goodSpeed).mean())
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private void refine(double best) {
        double step = (range.to() - range.from()) / (range.points() - 1);
        double low = Math.max(range.from(), best - step);
        double high = Math.min(range.to(), best + step);
        double left = high - SECTION * (high - low);
        double right = low + SECTION * (high - low);
        while (high - low > precision * best) {
            if (output(left) >= output(right)) {
                high = right;
                right = left;
                left = high - SECTION * (high - low);
            } else {
                low = left;
                left = right;
                right = low + SECTION * (high - low);
            }
        }
    }

    /** The last of {@code away}, which leads away from the best, before the first at which less is shown to come out. */
    private double asGood(double best, List<Double> away) {
        double last = best;
        for (double speed : away) {
            if (isLess(best, speed)) {
                return last;
            }
            last = speed;
        }
        return last;
    }

    private boolean isLess(double best, double speed) {
        Estimate loss = loss(best, speed);
        double least = loss.interval().map(Interval::low).orElse(loss.mean());
        return least > ROUNDING * output(best);
    }

    private Estimate loss(double best, double speed) {
        return speeds.at(best).speedOver(speeds.at(speed));
    }
}
