package runthrough.simulation.work;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import runthrough.plant.CoilChange;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;

/**
 * How many people attend to coil changes at present. Shifts follow one another and repeat from time 0; in a break only some of
 * the shift's people stay. From the start of a coil change (T0) until its joint is released (T2) the crew is not reduced: what
 * falls due meanwhile begins at T2, a break with its full length. Times in seconds from time 0.
 *
 * <p>Rules CREW-10, CREW-11, CREW-14, CREW-15.
 */
final class Crew {
    private static final double NEVER = Double.POSITIVE_INFINITY;
    /** What is no further apart (s) happens at one instant: where one break follows another nobody comes between them. */
    private static final double SAME_INSTANT = 1e-9;

    /** Length of all shifts together; endless without shifts. */
    private final double cycle;
    /** When shifts and breaks begin in a cycle, rising; at one instant the shift before its break. */
    private final double[] begins;
    /** What begins there: shift i as i, break k as -1 - k. */
    private final int[] what;

    private final int[] shiftCrew;
    private final int[] breakCrew;
    private final double[] breakLength;
    /** When a break under way ends; {@link #NEVER} for one that is not under way. */
    private final double[] breakEnds;

    private final boolean[] postponed;
    private int cycles;
    private int next;
    private int shift;
    /** Of the shift in force, which is an earlier one than by the clock where a smaller one is put off. */
    private int crewInForce;

    private boolean held;

    /** The people of {@code work}. */
    Crew(CoilChange work) {
        List<Shift> shifts = work.shifts().map(Shifts::list).orElse(List.of());
        int breaks = shifts.stream().mapToInt(one -> one.breaks().size()).sum();
        int count = Math.max(1, shifts.size());
        shiftCrew = new int[count];
        breakCrew = new int[breaks];
        breakLength = new double[breaks];
        breakEnds = new double[breaks];
        Arrays.fill(breakEnds, NEVER);
        postponed = new boolean[breaks];
        begins = new double[count + breaks];
        what = new int[count + breaks];
        shiftCrew[0] = work.crew();
        cycle = shifts.isEmpty() ? NEVER : layOut(shifts);
        crewInForce = shiftCrew[0];
        next = 1;
        reach(0);
    }

    private double layOut(List<Shift> shifts) {
        double start = 0;
        int place = 0;
        int number = 0;
        for (int i = 0; i < shifts.size(); i++) {
            shiftCrew[i] = shifts.get(i).crew();
            begins[place] = start;
            what[place++] = i;
            List<Break> breaks = shifts.get(i).breaks().stream()
                    .sorted(Comparator.comparingDouble(Break::begin))
                    .toList();
            for (Break one : breaks) {
                breakCrew[number] = one.crew();
                breakLength[number] = one.length();
                begins[place] = start + one.begin();
                what[place++] = -1 - number++;
            }
            start += shifts.get(i).hours();
        }
        return start;
    }

    /** How many people there are. */
    int people() {
        int least = crewInForce;
        for (int k = 0; k < breakEnds.length; k++) {
            if (breakEnds[k] < NEVER) {
                least = Math.min(least, breakCrew[k]);
            }
        }
        return least;
    }

    /** Index of the shift by the clock, from 0. */
    int shift() {
        return shift;
    }

    /** When the clock changes something next; never without shifts. */
    double nextChange() {
        double earliest = nextBegin();
        for (double end : breakEnds) {
            earliest = Math.min(earliest, end);
        }
        return earliest;
    }

    private double nextBegin() {
        return next < begins.length ? cycles * cycle + begins[next] : (cycles + 1) * cycle;
    }

    /** Comes to {@code time}: what ends by then ends before what begins. */
    void reach(double time) {
        double instant = time + SAME_INSTANT;
        for (int k = 0; k < breakEnds.length; k++) {
            if (breakEnds[k] <= instant) {
                breakEnds[k] = NEVER;
            }
        }
        for (double begin = nextBegin(); begin <= instant; begin = nextBegin()) {
            if (next == begins.length) {
                next = 0;
                cycles++;
            }
            int beginning = what[next++];
            if (beginning >= 0) {
                beginShift(beginning);
            } else {
                beginBreak(-1 - beginning, begin, instant);
            }
        }
    }

    private void beginShift(int index) {
        shift = index;
        crewInForce = held ? Math.max(crewInForce, shiftCrew[index]) : shiftCrew[index];
    }

    private void beginBreak(int index, double begin, double instant) {
        if (held) {
            postponed[index] = true;
        } else if (begin + breakLength[index] > instant) {
            breakEnds[index] = begin + breakLength[index];
        }
    }

    /** A coil change starts (T0): from now on nobody goes. */
    void hold() {
        held = true;
    }

    /** The joint is released (T2) at {@code time}: what was put off begins. */
    void letGo(double time) {
        held = false;
        crewInForce = shiftCrew[shift];
        for (int k = 0; k < postponed.length; k++) {
            if (postponed[k]) {
                postponed[k] = false;
                breakEnds[k] = time + breakLength[k];
            }
        }
    }
}
