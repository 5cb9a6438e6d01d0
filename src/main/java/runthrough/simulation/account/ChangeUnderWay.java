package runthrough.simulation.account;

import java.util.Optional;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.WorkDone;

/**
 * What is known so far of a coil change: from its T0 until the next, and what it loses beyond that. SI units.
 *
 * <p>Rules REPORT-1, REPORT-2, REPORT-3, REPORT-5.
 */
final class ChangeUnderWay {
    private final int number;
    private final int shift;
    private final int tailCoil;
    private final int headCoil;
    private final double start;
    private final double levelAtStart;
    private final double remainingAtStart;
    private final double ratedSpeed;
    private final double stopLevel;

    private double tailStopped = Double.NaN;
    private double released = Double.NaN;
    private double waitingForPreparation;
    private double waitingForPeople;
    private int passes;
    private double lowestLevel;
    private Outcome worst;
    private int starvedStops;
    private double lostMetres;
    private double lostTime;
    private double refillTime = Double.NaN;
    private Optional<WorkDone> work = Optional.empty();

    /** The coil change after {@code before}, which begins at {@code time} with the process in the state {@code carried}. */
    ChangeUnderWay(
            ChangeUnderWay before,
            double time,
            int shift,
            int endingKind,
            int nextKind,
            ObservedLine line,
            Outcome carried) {
        number = before.number + 1;
        this.shift = shift;
        start = time;
        tailCoil = endingKind;
        headCoil = nextKind;
        levelAtStart = line.level();
        remainingAtStart = line.remaining();
        ratedSpeed = line.ratedSpeed();
        lowestLevel = line.level();
        stopLevel = line.stopLevelAtRated();
        worst = carried;
    }

    /** What stands in the place of a coil change before the first: number 0, of which no record is made. */
    ChangeUnderWay() {
        number = 0;
        shift = 0;
        start = Double.NaN;
        tailCoil = -1;
        headCoil = -1;
        levelAtStart = Double.NaN;
        remainingAtStart = Double.NaN;
        ratedSpeed = Double.NaN;
        stopLevel = Double.NaN;
        worst = Outcome.RAN_THROUGH;
    }

    int number() {
        return number;
    }

    /** Place of the shift in which it begins; 0 without shifts. */
    int shift() {
        return shift;
    }

    void tailStopped(double time) {
        tailStopped = time;
    }

    void released(double time, double waitedForPreparation, double waitedForPeople, int made) {
        released = time;
        waitingForPreparation = waitedForPreparation;
        waitingForPeople = waitedForPeople;
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

    /** So many metres were not processed, which takes {@code time} (s) at the rated speed. */
    void lost(double metres, double time) {
        lostMetres += metres;
        lostTime += time;
    }

    boolean isRefilled() {
        return !Double.isNaN(refillTime);
    }

    int starvedStops() {
        return starvedStops;
    }

    /** What took time at its joint, where it did not run through. */
    void done(Optional<WorkDone> took) {
        work = took;
    }

    Outcome worst() {
        return worst;
    }

    ChangeRecord record() {
        return new ChangeRecord(
                number,
                shift,
                tailCoil,
                headCoil,
                start,
                tailStopped,
                released,
                waitingForPreparation,
                waitingForPeople,
                passes,
                levelAtStart,
                remainingAtStart,
                ratedSpeed,
                lowestLevel,
                stopLevel,
                worst,
                starvedStops,
                lostMetres,
                lostTime,
                refillTime,
                work);
    }
}
