package runthrough.study.map;

import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Margin;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;

/**
 * A range in which there is something to see: it holds the line as it is, and the limit of the hand calculation unless that is far off.
 *
 * @param from its lower end (SI)
 * @param to its upper end (SI)
 */
public record UsualRange(double from, double to) {
    private static final double LOW = 0.5;
    private static final double HIGH = 1.25;
    private static final double FAR = 2;

    /**
     * For the number of {@code line} called {@code path}.
     *
     * @param now its value (SI), {@code > 0}
     * @param greatest value that it may have; half the way to it where the usual range would go beyond
     */
    public static UsualRange of(String path, Line line, double now, double greatest) {
        UsualRange usual = path.equals(LineFigure.standingTime(line).path())
                ? ofJointCycleTime(line, now)
                : path.equals(LineFigure.RATED_SPEED.path()) ? ofRatedSpeed(line, now) : about(now);
        return usual.to > greatest ? new UsualRange(usual.from, (now + greatest) / 2) : usual;
    }

    /** For joint cycle times (s), about {@code now}. */
    static UsualRange ofJointCycleTime(Line line, double now) {
        return HandCalculation.of(line)
                .storage()
                .map(storage -> storage.toRunThrough().jointCycleTime())
                .map(limit -> about(now, limit))
                .orElseGet(() -> about(now));
    }

    /** For rated process speeds (m/s), about {@code now}; no faster than the entry, which would be refused. */
    static UsualRange ofRatedSpeed(Line line, double now) {
        UsualRange range = HandCalculation.of(line)
                .storage()
                .map(storage -> storage.toRunThrough().speed())
                .map(limit -> about(now, limit))
                .orElseGet(() -> about(now));
        return new UsualRange(range.from, Math.min(range.to, line.entry().topSpeed()));
    }

    /** For any other number, about {@code now}, {@code > 0}. */
    static UsualRange about(double now) {
        return new UsualRange(LOW * now, (2 - LOW) * now);
    }

    private static UsualRange about(double now, Margin margin) {
        double limit = Math.min(Math.max(margin.given(), now / FAR), FAR * now);
        return new UsualRange(LOW * Math.min(now, limit), HIGH * Math.max(now, limit));
    }
}
