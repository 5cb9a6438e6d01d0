package runthrough.simulation;

import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.simulation.Trace.EntryState;

/**
 * An entry section without an accumulator: entry and process are one strip with one speed, so that every coil change stops
 * the process. Used for joining without an accumulator and for rethreading.
 */
final class OneStripEntry implements EntrySection {
    private final LineState strip;
    private final ProcessControl process;
    private final RunOut tail;
    private final boolean waitsRestartDelay;
    private EntryState state = EntryState.MATCHED;

    OneStripEntry(Line line, LineState strip, ProcessControl process, RunOut tail) {
        this.strip = strip;
        this.process = process;
        this.tail = tail;
        waitsRestartDelay = line.practice() == Practice.JOIN_WITHOUT_ACCUMULATOR;
    }

    @Override
    public void begin() {
        strip.level = 0;
    }

    @Override
    public void release() {
        tail.newCoil(strip.remaining);
        state = EntryState.MATCHED;
        if (waitsRestartDelay) {
            process.restartAfterDelay();
        } else {
            process.letGo();
        }
    }

    @Override
    public void runOut() {
        tail.start(strip.entrySpeed);
        state = EntryState.RUNNING_OUT;
        process.starve(tail.goal());
    }

    @Override
    public void plan() {
        strip.entrySpeed = strip.processSpeed;
        strip.entryAcceleration = strip.processAcceleration;
    }

    @Override
    public void offerTo(NextEvent next) {
        double speed = strip.entrySpeed;
        double acceleration = strip.entryAcceleration;
        if (state == EntryState.MATCHED) {
            next.offer(StateEvent.CHANGE_STARTS, tail.timeToStart(speed, acceleration, strip.remaining));
            next.offer(StateEvent.CREEP_ZONE, tail.timeToComeNear(speed, acceleration, strip.remaining));
        } else if (state == EntryState.RUNNING_OUT) {
            next.offer(StateEvent.CREEP_ENDS, tail.timeToEndCreep(speed, acceleration, strip.remaining));
        }
    }

    @Override
    public void perform(StateEvent event) {
        switch (event) {
            case CREEP_ZONE -> tail.comeNearTail();
            case CREEP_ENDS -> {
                tail.endCreep();
                process.headWhileStarved(tail.goal());
            }
            default -> throw new IllegalArgumentException("not an event of a one-strip entry: " + event);
        }
    }

    @Override
    public boolean tailHasStopped() {
        if (state != EntryState.RUNNING_OUT || tail.isCreeping() || !process.stands()) {
            return false;
        }
        state = EntryState.STANDING;
        strip.remaining = 0;
        return true;
    }

    /** Never: there is nothing to fill. */
    @Override
    public boolean isMatched() {
        return false;
    }

    @Override
    public boolean isBlocked() {
        return false;
    }

    @Override
    public EntryState state() {
        return state;
    }
}
