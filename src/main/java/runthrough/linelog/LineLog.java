package runthrough.linelog;

import java.util.ArrayList;
import java.util.List;

/**
 * The joints and stops of a line over some time.
 *
 * <p>A coil change reaches from the instant at which its tail stops until the next tail stops; a stop belongs to the coil change
 * in which it begins. The last joint is not judged, since its time is not over, and what had begun before the log is left out.
 *
 * @param name of the log, for reports
 * @param joints in order of time
 * @param stops in order of time
 * @param changes the coil changes whose time is over, in order
 * @param saysWhy whether the log marks process downtime, which is then left out
 */
public record LineLog(String name, List<Joint> joints, List<Stop> stops, List<Change> changes, boolean saysWhy) {

    public LineLog {
        joints = List.copyOf(joints);
        stops = List.copyOf(stops);
        changes = List.copyOf(changes);
    }

    /**
     * A joint.
     *
     * @param coil that ended, as the log calls it
     * @param tailStopped when the tail stopped (s)
     * @param released when the joint was released (s)
     */
    public record Joint(String coil, double tailStopped, double released) {
        /** How long the strip stood (s). */
        public double time() {
            return released - tailStopped;
        }
    }

    /**
     * A stop of the process.
     *
     * @param from when it stood (s)
     * @param to when it moved again (s); NaN when the log ends before
     */
    public record Stop(double from, double to) {
        /** How long it stood (s); NaN when the log ends before it moved. */
        public double duration() {
            return to - from;
        }
    }

    /**
     * A coil change.
     *
     * @param stops that began in it
     * @param nextTail when the next tail stopped (s)
     */
    public record Change(Joint joint, List<Stop> stops, double nextTail) {
        public Change {
            stops = List.copyOf(stops);
        }

        /** Whether the process did not stop. */
        public boolean ranThrough() {
            return stops.isEmpty();
        }

        /** From the release of the joint until the next tail stopped (s): how long the next coil ran. */
        public double coilRun() {
            return nextTail - joint.released();
        }

        /** From this tail to the next (s). */
        public double cycle() {
            return nextTail - joint.tailStopped();
        }

        /** From the release of the joint until the process moved again (s); NaN where it did not stand then. */
        public double untilRestart() {
            return stops.stream()
                    .filter(stop -> stop.from() <= joint.released() && stop.to() > joint.released())
                    .mapToDouble(stop -> stop.to() - joint.released())
                    .findFirst()
                    .orElse(Double.NaN);
        }
    }

    /**
     * What {@code events} tell, which come in order of time, each joint and stop beginning before it ends.
     *
     * @param name of the log, for reports
     */
    public static LineLog of(String name, List<LineEvent> events, boolean saysWhy) {
        List<Joint> joints = new ArrayList<>();
        List<Stop> stops = new ArrayList<>();
        double tail = Double.NaN;
        String coil = "";
        double stood = Double.NaN;
        for (LineEvent event : events) {
            switch (event.what()) {
                case TAIL_STOPPED -> {
                    tail = event.time();
                    coil = event.coil();
                }
                case JOINT_RELEASED -> {
                    if (!Double.isNaN(tail)) {
                        joints.add(new Joint(coil, tail, event.time()));
                    }
                    tail = Double.NaN;
                }
                case LINE_STOPPED -> stood = event.time();
                case LINE_RUNNING -> {
                    if (!Double.isNaN(stood)) {
                        stops.add(new Stop(stood, event.time()));
                    }
                    stood = Double.NaN;
                }
            }
        }
        if (!Double.isNaN(stood)) {
            stops.add(new Stop(stood, Double.NaN));
        }
        return new LineLog(name, joints, stops, changes(joints, stops, tail), saysWhy);
    }

    /** @param lastTail when a tail stopped whose joint the log does not see released (s); NaN for none */
    private static List<Change> changes(List<Joint> joints, List<Stop> stops, double lastTail) {
        List<Change> changes = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < joints.size(); i++) {
            Joint joint = joints.get(i);
            double end = i + 1 < joints.size() ? joints.get(i + 1).tailStopped() : lastTail;
            List<Stop> within = new ArrayList<>();
            while (next < stops.size() && !(stops.get(next).from() >= end)) {
                if (stops.get(next).from() >= joint.tailStopped()) {
                    within.add(stops.get(next));
                }
                next++;
            }
            if (!Double.isNaN(end)) {
                changes.add(new Change(joint, within, end));
            }
        }
        return changes;
    }

    /** How many of the judged coil changes ran through. */
    public long ranThrough() {
        return changes.stream().filter(Change::ranThrough).count();
    }

    /** All joint cycle times (s), in order of time. */
    public double[] jointCycleTimes() {
        return joints.stream().mapToDouble(Joint::time).toArray();
    }
}
