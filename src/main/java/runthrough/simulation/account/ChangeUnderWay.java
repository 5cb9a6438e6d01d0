package runthrough.simulation.account;

import java.util.Optional;
import runthrough.simulation.records.ChangeFacts;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.WorkDone;

/**
 * What is known so far of a coil change: from its T0 until the next, and what it loses beyond that. SI units.
 *
 * <p>Rules REPORT-1, REPORT-2, REPORT-3, REPORT-5.
 */
final class ChangeUnderWay implements ChangeFacts {
    private int number;
    private int shift;
    private int tailCoil = -1;
    private int headCoil = -1;
    private double start = Double.NaN;
    private double levelAtStart = Double.NaN;
    private double remainingAtStart = Double.NaN;
    private double ratedSpeed = Double.NaN;
    private double stopLevel = Double.NaN;

    private double tailStopped = Double.NaN;
    private double released = Double.NaN;
    private double waitingForPreparation;
    private double waitingForPeople;
    private int passes;
    private double lowestLevel;
    private Outcome worst = Outcome.RAN_THROUGH;
    private int starvedStops;
    private double lostMetres;
    private double lostTime;
    private double refillTime = Double.NaN;
    private Optional<WorkDone> work = Optional.empty();

    /** What stands in the place of a coil change before the first: number 0, of which no record is made. */
    ChangeUnderWay() {}

    /**
     * Begins coil change {@code changeNumber} at {@code time}, the process in the state {@code carried}. Whatever was noted here of an
     * earlier one is forgotten: a run of a million coil changes makes a few of these.
     */
    void begin(
            int changeNumber,
            double time,
            int inShift,
            int endingKind,
            int nextKind,
            ObservedLine line,
            Outcome carried) {
        number = changeNumber;
        shift = inShift;
        start = time;
        tailCoil = endingKind;
        headCoil = nextKind;
        tailStopped = Double.NaN;
        released = Double.NaN;
        waitingForPreparation = 0;
        waitingForPeople = 0;
        passes = 0;
        starvedStops = 0;
        lostMetres = 0;
        lostTime = 0;
        refillTime = Double.NaN;
        work = Optional.empty();
        levelAtStart = line.level();
        remainingAtStart = line.remaining();
        ratedSpeed = line.ratedSpeed();
        lowestLevel = line.level();
        stopLevel = line.stopLevelAtRated();
        worst = carried;
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

    /** What took time at its joint, where it did not run through. */
    void done(Optional<WorkDone> took) {
        work = took;
    }

    @Override
    public int number() {
        return number;
    }

    @Override
    public int shift() {
        return shift;
    }

    @Override
    public int tailCoil() {
        return tailCoil;
    }

    @Override
    public int headCoil() {
        return headCoil;
    }

    @Override
    public double start() {
        return start;
    }

    @Override
    public double tailStopped() {
        return tailStopped;
    }

    @Override
    public double released() {
        return released;
    }

    @Override
    public double waitingForPreparation() {
        return waitingForPreparation;
    }

    @Override
    public double waitingForPeople() {
        return waitingForPeople;
    }

    @Override
    public int passes() {
        return passes;
    }

    @Override
    public double levelAtStart() {
        return levelAtStart;
    }

    @Override
    public double remainingAtStart() {
        return remainingAtStart;
    }

    @Override
    public double ratedSpeed() {
        return ratedSpeed;
    }

    @Override
    public double lowestLevel() {
        return lowestLevel;
    }

    @Override
    public double stopLevel() {
        return stopLevel;
    }

    @Override
    public Outcome outcome() {
        return worst;
    }

    @Override
    public int starvedStops() {
        return starvedStops;
    }

    @Override
    public double lostMetres() {
        return lostMetres;
    }

    @Override
    public double lostTime() {
        return lostTime;
    }

    @Override
    public double refillTime() {
        return refillTime;
    }

    @Override
    public Optional<WorkDone> work() {
        return work;
    }
}
