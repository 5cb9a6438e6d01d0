package runthrough.simulation.motion;

import runthrough.plant.Line;
import runthrough.simulation.calendar.EventOrder;

/**
 * Watches for the tail of the running coil to leave its uncoiler.
 *
 * <p>Rule CHANGE-7.
 */
final class UncoilerWatch {
    private final LineState state;
    private final CoilChangeEvents changes;
    /** Strip (m) from the uncoiler to the joiner. */
    private final double path;

    private final TailLeaves tailLeaves = new TailLeaves();
    private boolean tailIsOn = true;

    UncoilerWatch(Line line, LineState state, CoilChangeEvents changes) {
        this.state = state;
        this.changes = changes;
        path = line.entry().uncoilerPath();
    }

    /** A new coil begins to run. */
    void release() {
        tailIsOn = true;
    }

    /** The tail has stopped in the joiner. */
    void tailStopped() {
        tailIsOn = false;
    }

    /** Whether a tail leaves its uncoiler before it is in the joiner. */
    boolean mayAct() {
        return path > 0;
    }

    void offerTo(NextEvent next) {
        if (tailIsOn && path > 0) {
            next.offer(tailLeaves);
        }
    }

    private final class TailLeaves extends StateEvent {
        TailLeaves() {
            super(EventOrder.TAIL_LEAVES_UNCOILER);
        }

        @Override
        double timeTo() {
            return Kinematics.travel(state.remaining - path, state.entry.speed, state.entry.acceleration);
        }

        @Override
        void happen() {
            tailIsOn = false;
            changes.tailLeavesUncoiler();
        }
    }
}
