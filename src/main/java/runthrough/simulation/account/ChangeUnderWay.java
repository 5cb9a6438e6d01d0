package runthrough.simulation.account;

import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;

/**
 * What is known so far of a coil change, from its T0 until the next. SI units.
 *
 * <p>Rules REPORT-1, REPORT-2, REPORT-3, REPORT-5.
 */
final class ChangeUnderWay {
    private final int number;
    private final int tailCoil;
    private final int headCoil;
    private final double start;
    private final double levelAtStart;
    private final double stopLevel;

    private double tailStopped = Double.NaN;
    private double released = Double.NaN;
    private double waiting;
    private int passes;
    private double lowestLevel;
    private Outcome worst;
    private int starvedStops;
    private double lostMetres;
    private double refillTime = Double.NaN;

    /** The coil change after {@code before}, which begins at {@code time} with the process in the state {@code carried}. */
    ChangeUnderWay(
            ChangeUnderWay before, double time, int endingKind, int nextKind, ObservedLine line, Outcome carried) {
        number = before.number + 1;
        start = time;
        tailCoil = endingKind;
        headCoil = nextKind;
        levelAtStart = line.level();
        lowestLevel = line.level();
        stopLevel = line.stopLevelAtRated();
        worst = carried;
    }

    /** What stands in the place of a coil change before the first: number 0, of which no record is made. */
    ChangeUnderWay() {
        number = 0;
        start = Double.NaN;
        tailCoil = -1;
        headCoil = -1;
        levelAtStart = Double.NaN;
        stopLevel = Double.NaN;
        worst = Outcome.RAN_THROUGH;
    }

    int number() {
        return number;
    }

    void tailStopped(double time) {
        tailStopped = time;
    }

    void released(double time, double waitedFor, int made) {
        released = time;
        waiting = waitedFor;
        passes = made;
    }

    boolean isReleased() {
        return !Double.isNaN(released);
    }

    /** How long the strip stood (s). */
    double jointCycleTime() {
        return released - tailStopped;
    }

    /** The level has been as low as {@code low} (m), which counts until the entry is matched again. */
    void level(double low) {
        if (Double.isNaN(refillTime) && low < lowestLevel) {
            lowestLevel = low;
        }
    }

    /** The entry is matched; only the first time after T2 counts. */
    void matched(double time) {
        if (Double.isNaN(refillTime) && time >= released) {
            refillTime = time - released;
        }
    }

    /** The process has been in a state as bad as {@code outcome}. */
    void atLeast(Outcome outcome) {
        if (outcome.compareTo(worst) > 0) {
            worst = outcome;
        }
    }

    void starvedStop() {
        starvedStops++;
        atLeast(Outcome.STOPPED);
    }

    void lost(double metres) {
        lostMetres += metres;
    }

    ChangeRecord record() {
        return new ChangeRecord(
                number,
                tailCoil,
                headCoil,
                start,
                tailStopped,
                released,
                waiting,
                passes,
                levelAtStart,
                lowestLevel,
                stopLevel,
                worst,
                starvedStops,
                lostMetres,
                refillTime);
    }
}
