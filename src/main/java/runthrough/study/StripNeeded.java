package runthrough.study;

import java.util.Optional;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.simulation.ChangeRecord;

/**
 * The strip that a coil change takes from the accumulator when the process keeps its rated speed {@code V} throughout:
 * {@code V (T2 - T0) + V^2/(2 a_e)}, less the strip that still passes the joiner between {@code T0} and {@code T1}. It is
 * known also where the process slowed or stopped, so that what was missing can be told in metres.
 *
 * <p>Between {@code T0} and {@code T1} the entry slows to a stop, or slows to creep speed, creeps and stops; how long that
 * took gives the strip that passed. A rated speed that changes before the entry has caught up is not followed.
 *
 * <p>Rule MARGIN-1.
 */
final class StripNeeded {
    private final Line line;
    private final Entry entry;

    StripNeeded(Line line) {
        this.line = line;
        this.entry = line.entry();
    }

    /** The strip needed (m) for {@code change} as it was, {@code >= 0} unless the entry came in faster than the process. */
    double of(ChangeRecord change) {
        double speed = ratedSpeed(change);
        return speed * (change.released() - change.start())
                + speed * speed / (2 * entry.acceleration())
                - passed(change.tailStopped() - change.start());
    }

    /** The rated speed (m/s) at the start of {@code change}: the ending coil's, or that of an earlier coil still there. */
    double ratedSpeed(ChangeRecord change) {
        double ofTail = line.ratedSpeed(line.coils().get(change.tailCoil()));
        double deceleration = line.process().deceleration();
        if (line.stopLevel(ofTail) == change.stopLevel() || deceleration == Double.POSITIVE_INFINITY) {
            return ofTail;
        }
        return Math.sqrt(
                2 * deceleration * (change.stopLevel() - line.accumulator().reserve()));
    }

    /** The strip (m) that passes the joiner in the {@code duration} (s) from the first slowing until the tail stops. */
    private double passed(double duration) {
        double deceleration = entry.deceleration();
        Optional<Entry.Creep> creep = entry.creep();
        if (creep.isEmpty()) {
            return deceleration == Double.POSITIVE_INFINITY ? 0 : deceleration * duration * duration / 2;
        }
        double slow = creep.get().speed();
        double length = creep.get().length();
        double stopping = slow * slow / (2 * deceleration);
        double creeping = (length - stopping) / slow + slow / deceleration;
        if (duration <= creeping || deceleration == Double.POSITIVE_INFINITY) {
            return Math.min(length, slow * duration - stopping);
        }
        double slowing = duration - creeping;
        return length + slowing * (slow + deceleration * slowing / 2);
    }
}
