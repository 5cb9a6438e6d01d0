package runthrough.simulation.random;

import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * Numbers of the sources of randomness: fixed, so that a source keeps its random numbers when others come or go.
 *
 * <p>Rule RANDOM-3.
 */
public final class Source {
    public static final int COIL_CHOICE = 0;
    public static final int COIL_SIZE = 1;
    public static final int REJECT = 2;
    public static final int RESTART_DELAY = 3;
    public static final int OWN_RUNNING = 4;
    public static final int OWN_STANDING = 5;
    private static final int WORK = 16;
    private static final int LISTS = 3;
    /** Far beyond the elements of any scenario. */
    private static final int ROWS = 1 << 20;

    private Source() {}

    /** The durations of an element of the work. */
    public static int duration(WorkList list, int element) {
        int place = switch (list) {
            case PREPARE -> 0;
            case TAIL -> 1;
            case JOIN -> 2;
        };
        return WORK + 2 * (element * LISTS + place);
    }

    /** Which of the measured rows numbered {@code number}, from 0, a coil change takes. */
    public static int rows(int number) {
        return ROWS + 2 * number;
    }

    /** The source of randomness that {@code number} belongs to: rows for joints made again are of one with the others. */
    public static int owner(int number) {
        return number < ROWS ? number : number - (number - ROWS) % 2;
    }

    /** Which of them a joint takes that is made again. */
    public static int rowsAgain(int number) {
        return rows(number) + 1;
    }

    /** Whether that element is done. */
    public static int chance(WorkList list, int element) {
        return duration(list, element) + 1;
    }
}
