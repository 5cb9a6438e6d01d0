package runthrough.simulation.motion;

import runthrough.plant.Line;
import runthrough.simulation.records.Trace.EntryState;

/**
 * An entry section without an accumulator: entry and process are one strip with one speed, so that every coil change stops
 * the process. Used for joining without an accumulator and for rethreading.
 *
 * <p>Rules ACC-5, PRACTICE-2, PRACTICE-3, PRACTICE-5.
 */
final class OneStripEntry implements EntrySection {
    private final LineState state;
    private final ProcessControl process;
    private final TailWatch tail;
    private final RunOut runOut;
    private final boolean waitsRestartDelay;
    private final boolean startsAtOnce;

    OneStripEntry(Line line, LineState state, ProcessControl process, TailWatch tail) {
        this.state = state;
        this.process = process;
        this.tail = tail;
        runOut = tail.runOut();
        waitsRestartDelay = line.practice().waitsRestartDelayAfterJoint();
        startsAtOnce = state.process.up == Double.POSITIVE_INFINITY;
    }

    @Override
    public void begin() {
        state.level = 0;
    }

    @Override
    public void release() {
        runOut.newCoil(state.remaining);
        state.entryState = EntryState.MATCHED;
        if (waitsRestartDelay) {
            process.restartAfterDelay();
        } else {
            process.letGo();
        }
    }

    @Override
    public void runOut() {
        runOut.start(state.entry.speed);
        state.entryState = EntryState.RUNNING_OUT;
        process.starve();
    }

    @Override
    public void plan() {
        state.entry.follow(state.process);
    }

    @Override
    public void offerTo(NextEvent next) {
        if (state.entryState == EntryState.MATCHED) {
            tail.offerBeforeChange(next);
        } else if (state.entryState == EntryState.RUNNING_OUT) {
            tail.offerInRunOut(next);
        }
    }

    @Override
    public boolean tailHasStopped() {
        if (state.entryState != EntryState.RUNNING_OUT || runOut.isCreeping() || !state.process.stands()) {
            return false;
        }
        state.entryState = EntryState.STANDING;
        state.remaining = 0;
        return true;
    }

    /** Never: there is nothing to fill. */
    @Override
    public boolean isMatched() {
        return false;
    }

    /** The strip must stop for the tail; a jump must leave enough of it. */
    @Override
    public double processCeiling() {
        return startsAtOnce ? Math.max(state.process.speed, runOut.jumpCeiling(state.remaining)) : runOut.ceiling();
    }

    /** Creep speed, and 0 from the last ramp on. */
    @Override
    public double speedWhileStarved() {
        return runOut.goal();
    }
}
