package runthrough.study.logged;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import runthrough.linelog.LineEvent;
import runthrough.linelog.LineEvent.What;
import runthrough.linelog.LineLog;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Trace;

/** The log that a replication would have left, had it been a line. */
public final class SimulatedLog {
    private SimulatedLog() {}

    /**
     * The log of {@code replication}, which must hold its trace.
     *
     * @param saysWhy whether process downtime is marked and left out
     */
    public static LineLog of(Replication replication, boolean saysWhy) {
        return LineLog.of("simulated", events(replication, saysWhy), saysWhy);
    }

    /** Its events in order of time. */
    public static List<LineEvent> events(Replication replication, boolean saysWhy) {
        List<LineEvent> events = new ArrayList<>();
        for (ChangeRecord change : replication.changes()) {
            String coil = Integer.toString(change.number());
            events.add(new LineEvent(change.tailStopped(), What.TAIL_STOPPED, coil));
            events.add(new LineEvent(change.released(), What.JOINT_RELEASED, coil));
        }
        boolean stands = false;
        boolean isOwn = false;
        for (Trace.Point point : replication.trace().orElseThrow().points()) {
            boolean rests = point.processSpeed() == 0 && !(point.processAcceleration() > 0);
            if (rests != stands) {
                isOwn = rests ? isOwn(point.processState()) : isOwn;
                if (!(saysWhy && isOwn)) {
                    events.add(new LineEvent(point.time(), rests ? What.LINE_STOPPED : What.LINE_RUNNING, ""));
                }
                stands = rests;
            }
        }
        events.sort(Comparator.comparingDouble(LineEvent::time).thenComparing(LineEvent::what));
        return events;
    }

    private static boolean isOwn(Trace.ProcessState held) {
        return held == Trace.ProcessState.DOWNTIME || held == Trace.ProcessState.JOINT_BREAK;
    }
}
