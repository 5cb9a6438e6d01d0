package runthrough.web;

import java.util.List;
import java.util.Locale;
import runthrough.plant.Line;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Trace;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * What holds the process at each point of a trace, in words for the page. A trace calls the process starved until it starts again;
 * here the restart delay, in which nothing is waited for but the time, has its own word. It runs from when the process stands,
 * the joint is released and the restart level is reached.
 *
 * <p>Rule PROC-2.
 */
final class ProcessWords {
    private static final String RESTART_DELAY = "restart-delay";

    private final Line line;
    private final List<ChangeRecord> changes;
    private boolean delayRuns;
    private int next;

    private ProcessWords(Line line, List<ChangeRecord> changes) {
        this.line = line;
        this.changes = changes;
    }

    /** A word for each point of {@code trace}. */
    static String[] of(Line line, List<ChangeRecord> changes, Trace trace) {
        ProcessWords words = new ProcessWords(line, changes);
        return trace.points().stream().map(words::word).toArray(String[]::new);
    }

    private String word(Trace.Point point) {
        boolean stands = point.processSpeed() == 0 && point.processAcceleration() == 0;
        delayRuns = stands && (delayRuns || mayRestart(point));
        return delayRuns && point.processState() == ProcessState.STARVED
                ? RESTART_DELAY
                : point.processState().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private boolean mayRestart(Trace.Point point) {
        while (next < changes.size() && changes.get(next).released() <= point.time()) {
            next++;
        }
        boolean isReleased =
                next == changes.size() || point.time() < changes.get(next).start();
        double level = line.practice().isOneStrip() ? 0 : line.restartLevel(point.ratedSpeed());
        // As close as the level of an event comes to the threshold that it is for.
        double tolerance = 1e-9 * Math.max(1, line.accumulator().capacity());
        return isReleased && point.level() >= level - tolerance;
    }
}
