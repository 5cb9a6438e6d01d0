package runthrough.simulation.motion;

import static runthrough.simulation.motion.EntryMode.ARRIVING_ABOVE;
import static runthrough.simulation.motion.EntryMode.ARRIVING_FULL;
import static runthrough.simulation.motion.EntryMode.FILLING;
import static runthrough.simulation.motion.EntryMode.FOLLOWING;
import static runthrough.simulation.motion.EntryMode.HEADING_FOR_PROCESS;
import static runthrough.simulation.motion.EntryMode.HOLDING;
import static runthrough.simulation.motion.EntryMode.MATCHED;
import static runthrough.simulation.motion.EntryMode.RUNNING_OUT;
import static runthrough.simulation.motion.EntryMode.STANDING;

import java.util.Arrays;
import runthrough.simulation.motion.EntryOutlook.Condition;

/**
 * The transition table of an entry section that feeds an accumulator. Each block says what happens and in which states it
 * counts; its rows are tried in their order, and the first whose condition holds gives the state that follows.
 *
 * <p>Rules ENTRY-4, ENTRY-5, ENTRY-6, ENTRY-7, ENTRY-8, ENTRY-9, ENTRY-11, ENTRY-12, ENTRY-13, ENTRY-18, ENTRY-20, ENTRY-21.
 */
final class EntryTransition {

    /** What an entry that is neither matched nor running out does next, judged by the level at which it would settle. */
    private static final Row[] BY_SETTLED_LEVEL = {
        when(Condition.SETTLES_BELOW, FILLING), // ENTRY-5, ENTRY-21
        when(Condition.SLOWS_TO_FULL, ARRIVING_FULL), // ENTRY-4
        when(Condition.IS_NO_SLOWER_THAN_TARGET, ARRIVING_ABOVE), // ENTRY-5
        when(Condition.IS_ABOVE_CAPACITY, HOLDING), // ENTRY-7
        when(Condition.CAN_FOLLOW_UPWARDS, FOLLOWING), // ENTRY-6
        when(Condition.HAS_PROCESS_SPEED, FILLING), // ENTRY-6
        otherwise(HEADING_FOR_PROCESS) // ENTRY-6
    };

    /** v* changes. */
    static final EntryTransition TARGET_CHANGES = new EntryTransition(
            in(FILLING, ARRIVING_FULL, ARRIVING_ABOVE, HEADING_FOR_PROCESS, FOLLOWING, HOLDING), BY_SETTLED_LEVEL);

    /** T2. */
    static final EntryTransition JOINT_RELEASED = new EntryTransition(in(STANDING), BY_SETTLED_LEVEL);

    /** X = C: rising with v_e >= v*, or falling to it. */
    static final EntryTransition REACHES_CAPACITY = new EntryTransition(
            in(FILLING, HOLDING),
            // An entry that jumps, or speeds up while full to begin with, may settle above C.
            when(Condition.SETTLES_ABOVE, ARRIVING_ABOVE), // ENTRY-5
            otherwise(ARRIVING_FULL)); // ENTRY-4, ENTRY-7

    /** v_e = v_p, which is below v*. */
    static final EntryTransition MEETS_PROCESS = new EntryTransition(
            in(HEADING_FOR_PROCESS),
            when(Condition.IS_ABOVE_AND_SETTLES_BELOW, FILLING), // ENTRY-8
            when(Condition.IS_ABOVE_CAPACITY, HOLDING), // ENTRY-8
            when(Condition.CAN_FOLLOW_UPWARDS, FOLLOWING), // ENTRY-6
            otherwise(FILLING)); // ENTRY-6

    /** v_e = v_p = v*. */
    static final EntryTransition ALL_AT_TARGET = new EntryTransition(
            in(ARRIVING_FULL, ARRIVING_ABOVE, FOLLOWING),
            when(Condition.IS_FULL, MATCHED), // ENTRY-9
            otherwise(FILLING)); // ENTRY-9

    /** The process ramps, and the entry cannot follow. */
    static final EntryTransition CANNOT_FOLLOW = new EntryTransition(
            in(MATCHED),
            when(Condition.PROCESS_SLOWS, ARRIVING_ABOVE), // ENTRY-11
            when(Condition.SETTLES_BELOW, FILLING), // ENTRY-12, ENTRY-13
            otherwise(ARRIVING_ABOVE)); // ENTRY-12, ENTRY-13

    /** T0. */
    static final EntryTransition CHANGE_STARTS = new EntryTransition(
            in(FILLING, ARRIVING_FULL, ARRIVING_ABOVE, HEADING_FOR_PROCESS, FOLLOWING, HOLDING, MATCHED),
            otherwise(RUNNING_OUT)); // ENTRY-18

    /** T1. */
    static final EntryTransition TAIL_STOPS = new EntryTransition(in(RUNNING_OUT), otherwise(STANDING)); // ENTRY-20

    /** A bit for each mode in which it counts. */
    private final int from;

    private final Row[] rows;

    private EntryTransition(int from, Row... rows) {
        this.from = from;
        this.rows = rows;
    }

    /** Whether it counts in {@code mode}. */
    @SuppressWarnings("EnumOrdinal") // a bit for each mode: asked at every plan
    boolean countsIn(EntryMode mode) {
        return (from >> mode.ordinal() & 1) == 1;
    }

    /** What follows with the line as {@code outlook} sees it. */
    EntryMode next(EntryOutlook outlook) {
        int row = 0;
        while (!outlook.holds(rows[row].condition)) {
            row++;
        }
        return rows[row].follows;
    }

    @SuppressWarnings("EnumOrdinal") // see countsIn
    private static int in(EntryMode... modes) {
        return Arrays.stream(modes).mapToInt(mode -> 1 << mode.ordinal()).sum();
    }

    private static Row when(Condition condition, EntryMode follows) {
        return new Row(condition, follows);
    }

    private static Row otherwise(EntryMode follows) {
        return new Row(Condition.OTHERWISE, follows);
    }

    private record Row(Condition condition, EntryMode follows) {}
}
