package runthrough.study.logged;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import runthrough.linelog.LineLog;
import runthrough.linelog.LineLog.Change;
import runthrough.linelog.LineLog.Joint;
import runthrough.linelog.LineLog.Stop;
import runthrough.quantity.Kind;
import runthrough.study.statistics.Sample;

/** A number that a log gives, by which the line and the model are compared. NaN where a log has nothing to take it from. */
public enum LogFigure {
    /** Share of coil changes during which the process did not stop. */
    SHARE_RUN_THROUGH(
            Kind.SHARE, log -> (double) log.ranThrough() / log.changes().size()),
    /** Stops for each coil change. */
    STOPS_PER_CHANGE(
            Kind.SHARE,
            log -> (double) log.changes().stream()
                            .mapToInt(change -> change.stops().size())
                            .sum()
                    / log.changes().size()),
    /** How long the process stood, on average (s). */
    STOP_TIME(
            Kind.TIME,
            log -> mean(log.stops().stream().mapToDouble(Stop::duration).toArray())),
    /** From the release of the joint until the process moved again, on average (s). */
    UNTIL_RESTART(
            Kind.TIME,
            log -> mean(log.changes().stream().mapToDouble(Change::untilRestart).toArray())),
    /** Mean joint cycle time (s). */
    JOINT_CYCLE_TIME(
            Kind.TIME,
            log -> mean(log.joints().stream().mapToDouble(Joint::time).toArray())),
    /** The joint cycle time that nine in ten stay below (s). */
    LONG_JOINT_CYCLE_TIME(Kind.TIME, log -> Sample.of(log.jointCycleTimes()).percentile(0.9)),
    /**
     * From one tail to the next, on average (s), where the process ran through: then it is the strip of a coil over the process
     * speed, however long the joint took.
     */
    CYCLE(
            Kind.TIME,
            log -> mean(log.changes().stream()
                    .filter(Change::ranThrough)
                    .mapToDouble(Change::cycle)
                    .toArray()));

    private final Kind kind;

    @SuppressWarnings("ImmutableEnumChecker") // each is a function without state
    private final ToDoubleFunction<LineLog> value;

    LogFigure(Kind kind, ToDoubleFunction<LineLog> value) {
        this.kind = kind;
        this.value = value;
    }

    /** What kind of quantity it is. */
    public Kind kind() {
        return kind;
    }

    /** What {@code log} gives. */
    public double of(LineLog log) {
        return value.applyAsDouble(log);
    }

    private static double mean(double... values) {
        return Arrays.stream(values)
                .filter(value -> !Double.isNaN(value))
                .average()
                .orElse(Double.NaN);
    }
}
