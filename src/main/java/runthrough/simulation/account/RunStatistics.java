package runthrough.simulation.account;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.WorkDone;

/**
 * Keeps the sums of a replication and hands what belongs to a coil change to its {@link ChangeBook}. It is shown the line
 * before and after each stretch between two events, and never moves it. SI units.
 *
 * <p>Rules TIME-3, PROC-10, ACC-9, ENTRY-19, ENTRY-23, REPORT-4, REPORT-6, REPORT-7, REPORT-8, REPORT-9, REPORT-10,
 * REPORT-11.
 */
public final class RunStatistics {
    private final ObservedLine line;
    private final ChangeBook book = new ChangeBook();
    private final double scrapPerStop;
    private final LevelBound overfull;
    private final LevelBound broken;

    private Sums sums;
    private double massPerMetre;
    /** Metres are being lost, since a starved stop or slowing that began at coil change {@code lossSince}. */
    private boolean losing;

    private int lossSince;

    /** An account of one replication of the line {@code described}, shown as it moves by {@code line}. */
    public RunStatistics(Line described, ObservedLine line) {
        this.line = line;
        overfull = LevelBound.above(line.capacity() + described.accumulator().overtravelAllowance() + line.tolerance());
        // Ten times what counts as a crossing of the stop level: a process that stopped in time is no strip break.
        broken = LevelBound.below(-10 * line.tolerance());
        scrapPerStop = described.process().scrapPerStop();
        sums = new Sums(0, line);
    }

    /** Begins the totals anew: at time 0, or when the coil changes left out are over. */
    public void beginTotals(double time) {
        sums = new Sums(time, line);
    }

    /** Books the {@code dt} seconds, {@code > 0}, before the line, shown as it is now, moves on through them. */
    public void stretchAhead(double dt) {
        double rated = line.ratedSpeed();
        sums.ratedMetres += rated * dt;
        if (line.isDown()) {
            sums.downSeconds += dt;
        } else {
            if (losing) {
                lose(shortfall(rated - line.processSpeed(), -line.processAcceleration(), dt), rated);
            }
            if (line.isStarved() && line.processStands()) {
                sums.starvedSeconds += dt;
            }
        }
        if (line.isEntryBlocked()) {
            sums.blockedSeconds += dt;
        }
    }

    /** Books what the stretch made of the level. */
    public void stretchPassed() {
        double lowest = line.lowestLevel();
        double highest = line.highestLevel();
        sums.levelIntegral += line.levelIntegral();
        sums.lowestLevel = Math.min(sums.lowestLevel, lowest);
        sums.highestLevel = Math.max(sums.highestLevel, highest);
        book.latest().level(lowest);
        if (overfull.isPassed(lowest, highest, line.level())) {
            sums.overfull++;
        }
        if (broken.isPassed(lowest, highest, line.level())) {
            sums.stripBreaks++;
        }
    }

    private void lose(double metres, double rated) {
        double time = metres / rated;
        sums.lostMetres += metres;
        sums.lostTime += time;
        if (lossSince > 0) {
            book.latest().lost(metres, time);
        }
    }

    /** Integral over {@code dt} of {@code below + slope t} where it is positive. */
    private static double shortfall(double below, double slope, double dt) {
        double end = below + slope * dt;
        if (below >= 0 && end >= 0) {
            return dt * (below + end) / 2;
        }
        if (below <= 0 && end <= 0) {
            return 0;
        }
        double positive = Math.max(below, end);
        return positive * positive / (2 * Math.abs(slope));
    }

    /** The coil being processed weighs {@code kilogramsPerMetre} from here on. */
    public void weigh(double kilogramsPerMetre) {
        sums.kilograms += (line.processed() - sums.weighedUpTo) * massPerMetre;
        sums.weighedUpTo = line.processed();
        massPerMetre = kilogramsPerMetre;
    }

    /** Number of the latest coil change begun; 0 before the first. */
    public int latestChange() {
        return book.latest().number();
    }

    /** A starved stop begins. */
    public void starvedStop() {
        sums.starvedStops++;
        beginLoss();
        book.latest().starvedStop();
    }

    /** Held as starved after downtime: no stop more, but the outcome of the coil change. */
    public void heldAsStarved() {
        beginLoss();
        book.latest().atLeast(Outcome.STOPPED);
    }

    /** Slowing begins. */
    public void slowing() {
        sums.slowings++;
        beginLoss();
        book.latest().atLeast(Outcome.SLOWED);
    }

    private void beginLoss() {
        if (!losing) {
            losing = true;
            lossSince = latestChange();
        } else if (lossSince == 0) {
            lossSince = latestChange();
        }
    }

    /** Metres are lost no longer when nothing holds the process and it has its rated speed again. */
    public void noteRecovery() {
        if (losing && !line.isStarved() && !line.isSlowed() && line.processSpeed() >= line.ratedSpeed()) {
            losing = false;
        }
    }

    /** Downtime begins. */
    public void downtime() {
        sums.downtimes++;
    }

    /** The process has come to rest. */
    public void cameToRest() {
        scrap(scrapPerStop, massPerMetre);
    }

    /** A joint was made, good or not: the old tail's and the new head's crop are scrap. */
    public void jointMade(Coil ending, Coil next) {
        scrap(ending.tailCrop(), ending.massPerMetre());
        scrap(next.headCrop(), next.massPerMetre());
    }

    private void scrap(double metres, double kilogramsPerMetre) {
        sums.scrapMetres += metres;
        sums.scrapKilograms += metres * kilogramsPerMetre;
    }

    /**
     * A coil change begins at {@code time} (T0) in the shift of place {@code shift}, from a coil of kind {@code endingKind} to one
     * of {@code nextKind}.
     */
    public void changeBegins(double time, int shift, int endingKind, int nextKind) {
        Outcome carried = Outcome.RAN_THROUGH;
        // What began before the first coil change appears in the totals only.
        if (lossSince > 0 && line.isStarved()) {
            carried = Outcome.STOPPED;
        } else if (lossSince > 0 && line.isSlowed()) {
            carried = Outcome.SLOWED;
        }
        book.begin(new ChangeUnderWay(book.latest(), time, shift, endingKind, nextKind, line, carried));
    }

    /** The tail has stopped in the joiner (T1). */
    public void tailStopped(double time) {
        book.latest().tailStopped(time);
    }

    /** The joint of the latest coil change, made {@code passes} times, is released at {@code time} (T2). */
    public void jointReleased(double time, double waitedForPreparation, double waitedForPeople, int passes) {
        book.latest().released(time, waitedForPreparation, waitedForPeople, passes);
        sums.jointSeconds += book.latest().jointCycleTime();
        sums.waitingForPreparationSeconds += waitedForPreparation;
        sums.waitingForPeopleSeconds += waitedForPeople;
    }

    /** The entry has become matched. */
    public void matched(double time) {
        book.latest().matched(time);
    }

    /** The latest coil change is over; its record is kept if it came as far as T2, with its {@code work} if it failed. */
    public void keepLatestChange(Supplier<Optional<WorkDone>> work) {
        book.keepLatest(work);
    }

    /** The records kept, in order. */
    public List<ChangeRecord> changes() {
        return book.records();
    }

    /** The totals at {@code time}. */
    public Totals totals(double time) {
        weigh(massPerMetre);
        double overtravel = sums.highestLevel - line.capacity();
        return new Totals(
                time - sums.begun,
                book.records().size(),
                book.counted(Outcome.RAN_THROUGH),
                book.counted(Outcome.SLOWED),
                book.counted(Outcome.STOPPED),
                book.refilled(),
                sums.starvedStops,
                sums.slowings,
                sums.downtimes,
                line.processed() - sums.processedBefore,
                sums.kilograms,
                line.entered() - sums.enteredBefore,
                sums.ratedMetres,
                sums.lostMetres,
                sums.lostTime,
                sums.scrapMetres,
                sums.scrapKilograms,
                sums.jointSeconds,
                sums.waitingForPreparationSeconds,
                sums.waitingForPeopleSeconds,
                sums.starvedSeconds,
                sums.downSeconds,
                sums.blockedSeconds,
                sums.levelIntegral,
                sums.lowestLevel,
                overtravel > 10 * line.tolerance() ? overtravel : 0,
                sums.overfull,
                sums.stripBreaks);
    }
}
