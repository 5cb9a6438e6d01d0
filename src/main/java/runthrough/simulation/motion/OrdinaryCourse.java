package runthrough.simulation.motion;

import runthrough.plant.Line;
import runthrough.simulation.motion.LineMotion.Reached;

/**
 * An ordinary coil change in closed form, one stretch after the other: the tail is braked to rest; after T2 the entry speeds up,
 * fills at its highest speed, slows to arrive with a full accumulator, and is matched until the next coil change starts. Each stretch
 * is the same arithmetic as from event to event, to the last bit; what is saved is to ask for all that could come instead.
 *
 * <p>Its conditions, all of which hold to the end of it, and who is asked; DEVELOPERS names the rules that they come from:
 *
 * <ul>
 *   <li>there is an accumulator, the entry ramps and does not creep (here)
 *   <li>the process has its rated speed, and no strip, downtime, break, joint passage or slowing holds it; nor does it still lose
 *       metres ({@link LineMotion#isOrdinary})
 *   <li>the level stays above what starves the process or slows it ({@link LevelWatch#staysAbove})
 *   <li>nothing in the calendar comes before the end of a stretch ({@link LineMotion#passes})
 *   <li>no joint reaches the process, and no tail leaves its uncoiler, before that ({@link LineMotion#passes})
 *   <li>there are people enough for the joint and the preparation at once, and nothing waits or is put down ({@code
 *       ChangeWork.isOrdinary}, asked by the run before each coil change)
 *   <li>the stretches come in their order: the tail stops, the entry speeds up and fills, settles at the capacity, is matched, and is so
 *       until T0 (here)
 * </ul>
 *
 * <p>Where one fails, the line stands where the last stretch ended, and the events take over. The stretches are decided by {@link
 * RunOut}, {@link SettledLevel} and {@link EntryTransition}, of which it asks.
 */
final class OrdinaryCourse {
    private final LineMotion motion;
    private final LineState state;
    private final StripEnd strip;
    private final AccumulatedEntry entry;
    private final RunOut runOut;
    private final SettledLevel settled;
    private final boolean isPossible;

    OrdinaryCourse(Line line, LineMotion motion, LineState state, AccumulatedEntry entry, RunOut runOut) {
        this.motion = motion;
        this.state = state;
        this.strip = state.entry;
        this.entry = entry;
        this.runOut = runOut;
        settled = new SettledLevel(state);
        isPossible =
                line.creep().isEmpty() && strip.up < Double.POSITIVE_INFINITY && strip.down < Double.POSITIVE_INFINITY;
    }

    /** Goes on to T1 or to T0, where all is ordinary until then; else as far as it is. */
    Reached goOn() {
        if (!isPossible || !motion.isOrdinary()) {
            return Reached.SOMETHING_ELSE;
        }
        if (entry.mode() == EntryMode.RUNNING_OUT) {
            return brakes() ? Reached.TAIL_AT_REST : Reached.SOMETHING_ELSE;
        }
        boolean isReleased = entry.mode() == EntryMode.FILLING && strip.speed == 0;
        return isReleased && speedsUp() && fills() && arrives() && runsOut()
                ? Reached.CHANGE_STARTS
                : Reached.SOMETHING_ELSE;
    }

    private boolean brakes() {
        motion.noteMatching();
        strip.rampTo(0);
        return endsRamp(Kinematics.NEVER);
    }

    private boolean speedsUp() {
        strip.rampTo(entry.fillingSpeed());
        return endsRamp(Math.min(timeToFull(), timeToStart()));
    }

    private boolean fills() {
        strip.rampTo(entry.fillingSpeed());
        double time = timeToFull();
        if (!(time < timeToStart() && motion.passes(time))) {
            return false;
        }
        entry.take(EntryTransition.REACHES_CAPACITY);
        return entry.mode() == EntryMode.ARRIVING_FULL;
    }

    private boolean arrives() {
        strip.rampTo(state.target());
        if (!endsRamp(timeToStart())) {
            return false;
        }
        entry.plan();
        motion.noteMatching();
        return entry.isMatched();
    }

    private boolean runsOut() {
        return motion.passes(timeToStart());
    }

    /** Ends the ramp of the entry, which there must be, where that comes before {@code other} (s). */
    private boolean endsRamp(double other) {
        double time = strip.timeToGoal();
        if (!(time < other && motion.passes(time))) {
            return false;
        }
        strip.arrive();
        return true;
    }

    private double timeToFull() {
        return settled.timeToRise(state.capacity, state.tolerance);
    }

    private double timeToStart() {
        return runOut.timeToStart(strip.speed, strip.acceleration, state.remaining);
    }
}
