package runthrough.simulation.work;

/**
 * Which coil is prepared next, and when that may begin. Coil 1 runs at time 0. Preparing coil j may begin when the tail of coil
 * j - U has left its uncoiler, U being the number of uncoilers, and coil j - 1 is prepared.
 *
 * <p>Rule CHANGE-6.
 */
final class CoilPreparation {
    private final WorkSequence work;
    private final int uncoilers;

    private int prepared = 1;
    private int lastGone;

    /** Preparation by {@code work} for so many uncoilers. */
    CoilPreparation(WorkSequence work, int uncoilers) {
        this.work = work;
        this.uncoilers = uncoilers;
    }

    /** The tail of coil {@code number} has left its uncoiler. */
    void coilGone(int number) {
        lastGone = number;
    }

    /** Whether coil {@code number} is prepared. */
    boolean isPrepared(int number) {
        return prepared >= number;
    }

    /** Begins the list of the next coil, if none is under way and it may, or puts away the one that is done; whether it did. */
    boolean comesToNextCoil() {
        return work.isIdle() ? begins() : ends();
    }

    /** Goes on until {@code now} (s) with nobody in its way; begins at {@code now} where nothing is under way. */
    void goOnUntil(double now) {
        double time = now;
        do {
            if (work.isIdle() && !begins()) {
                return;
            }
            time = work.goOnUntil(time, now);
        } while (ends());
    }

    private boolean begins() {
        int next = prepared + 1;
        if (next > lastGone + uncoilers) {
            return false;
        }
        work.begin(next - 1, 1);
        return true;
    }

    private boolean ends() {
        if (!work.isDone()) {
            return false;
        }
        prepared++;
        work.clear();
        return true;
    }
}
