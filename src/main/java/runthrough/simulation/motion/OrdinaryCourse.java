package runthrough.simulation.motion;

import runthrough.plant.Line;
import runthrough.simulation.motion.LineMotion.Reached;

/**
 * An ordinary coil change in closed form, one stretch after the other: the tail is braked to rest; after T2 the entry speeds up,
 * fills at its highest speed, slows to arrive with a full accumulator, and is matched until the next coil change starts. Each stretch
 * is the same arithmetic as from event to event, to the last bit; what is saved is to ask for all that could come instead.
 *
 * <p>Its conditions, all of which hold to the end of it, with the rules by which anything else would come, and who is asked:
 *
 * <ul>
 *   <li>there is an accumulator, the entry ramps and does not creep: ENTRY-14 and not ENTRY-15 (here)
 *   <li>the process has its rated speed, and no strip, downtime, break, joint passage or slowing holds it; nor does it still lose
 *       metres: PROC-2, PROC-4, PROC-7, DOWN-1, BREAK-2 ({@link LineMotion#isOrdinary})
 *   <li>the level stays above what starves the process or slows it: PROC-3, PROC-7 ({@link LevelWatch#staysAbove})
 *   <li>nothing in the calendar comes before the end of a stretch: ORDER-3, ORDER-4, ORDER-13 ({@link LineMotion#passes})
 *   <li>no joint reaches the process, and no tail leaves its uncoiler, before that: ORDER-5, ORDER-12 ({@link LineMotion#passes})
 *   <li>there are people enough for the joint and the preparation at once, and nothing waits or is put down: CREW-2, CREW-4,
 *       CREW-7 ({@code ChangeWork.isOrdinary}, asked by the run before each coil change)
 *   <li>the stretches come in their order: the tail stops (ENTRY-14, ENTRY-20), the entry speeds up and fills (ENTRY-21, ENTRY-3),
 *       settles at the capacity (ENTRY-4), is matched (ENTRY-9), and is so until T0 (here)
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
