package runthrough.simulation;

import java.util.ArrayList;
import java.util.List;

/** The coil changes of a replication: one under way, the finished ones as records. */
final class ChangeBook {
    private final List<ChangeRecord> records = new ArrayList<>();
    private int ranThrough;
    private int slowed;
    private int stopped;
    private int refilled;
    private int number;
    private int tailCoil;
    private int headCoil;
    private double start;
    private double tailStopped;
    private double released;
    private double waiting;
    private int passes;
    private double levelAtStart;
    private double lowestLevel;
    private double stopLevel;
    private Outcome worst = Outcome.RAN_THROUGH;
    private int starvedStops;
    private double lostMetres;
    private double refillTime;

    /** Number of the latest coil change begun; 0 before the first. */
    int latest() {
        return number;
    }

    /** A coil change begins (T0) with the process in the state {@code carried}. */
    void begin(double time, int endingKind, int nextKind, double level, double stop, Outcome carried) {
        number++;
        start = time;
        tailCoil = endingKind;
        headCoil = nextKind;
        tailStopped = Double.NaN;
        released = Double.NaN;
        levelAtStart = level;
        lowestLevel = level;
        stopLevel = stop;
        worst = carried;
        starvedStops = 0;
        lostMetres = 0;
        refillTime = Double.NaN;
    }

    void tailStopped(double time) {
        tailStopped = time;
    }

    void released(double time, double waitedFor, int made) {
        released = time;
        waiting = waitedFor;
        passes = made;
    }

    /** The latest coil change that is not matched again has seen this level. */
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

    /** Closes the latest coil change, if one has come as far as T2; {@code counts} says whether its record is kept. */
    void close(boolean counts) {
        if (number == 0 || Double.isNaN(released) || !counts) {
            return;
        }
        switch (worst) {
            case RAN_THROUGH -> ranThrough++;
            case SLOWED -> slowed++;
            case STOPPED -> stopped++;
        }
        if (!Double.isNaN(refillTime)) {
            refilled++;
        }
        records.add(new ChangeRecord(
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
                refillTime));
    }

    /** How many records there are of this outcome. */
    int counted(Outcome outcome) {
        return switch (outcome) {
            case RAN_THROUGH -> ranThrough;
            case SLOWED -> slowed;
            case STOPPED -> stopped;
        };
    }

    /** How many of the recorded coil changes were refilled before the next. */
    int refilled() {
        return refilled;
    }

    List<ChangeRecord> records() {
        return records;
    }
}
