package runthrough.simulation.motion;

import runthrough.simulation.calendar.EventOrder;

/**
 * What the tail of the running coil brings about: the start of the coil change, and the marks of creep.
 *
 * <p>Rule ENTRY-17.
 */
final class TailWatch {
    private final RunOut runOut;
    private final LineState state;
    private final CoilChangeEvents changes;
    private final ChangeStarts changeStarts = new ChangeStarts();
    private final ComesNear comesNear = new ComesNear();
    private final CreepEnds creepEnds = new CreepEnds();

    TailWatch(RunOut runOut, LineState state, CoilChangeEvents changes) {
        this.runOut = runOut;
        this.state = state;
        this.changes = changes;
    }

    /** How the tail is brought to rest. */
    RunOut runOut() {
        return runOut;
    }

    /** Offers what may come while the entry is not running out. */
    void offerBeforeChange(NextEvent next) {
        next.offer(changeStarts);
        next.offer(comesNear);
    }

    /** Offers what may come while it is. */
    void offerInRunOut(NextEvent next) {
        next.offer(creepEnds);
    }

    /** T0. */
    private final class ChangeStarts extends StateEvent {
        ChangeStarts() {
            super(EventOrder.CHANGE_STARTS);
        }

        @Override
        double timeTo() {
            return runOut.timeToStart(state.entry.speed, state.entry.acceleration, state.remaining);
        }

        @Override
        void happen() {
            changes.changeStarts();
        }
    }

    /** The tail comes within the creep length at no more than creep speed. */
    private final class ComesNear extends StateEvent {
        ComesNear() {
            super(EventOrder.MARK_REACHED);
        }

        @Override
        double timeTo() {
            return runOut.timeToComeNear(state.entry.speed, state.entry.acceleration, state.remaining);
        }

        @Override
        void happen() {
            runOut.comeNearTail();
        }
    }

    /** The last ramp begins. */
    private final class CreepEnds extends StateEvent {
        CreepEnds() {
            super(EventOrder.MARK_REACHED);
        }

        @Override
        double timeTo() {
            return runOut.timeToEndCreep(state.entry.speed, state.entry.acceleration, state.remaining);
        }

        @Override
        void happen() {
            runOut.endCreep();
        }
    }
}
