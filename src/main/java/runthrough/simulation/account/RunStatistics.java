package runthrough.simulation.account;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.ProcessedScrap;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.WorkDone;

/**
 * Keeps the sums of a replication and hands what belongs to a coil change to its {@link ChangeBook}. It is shown the line
 * before and after each stretch between two events, and never moves it. SI units.
 *
 * <p>Rules TIME-3, PROC-10, BREAK-3, ACC-9, ENTRY-19, ENTRY-23, REPORT-4, REPORT-6, REPORT-8, REPORT-9, REPORT-10,
 * REPORT-11.
 */
public final class RunStatistics {
    private final ObservedLine line;
    private final ChangeBook book;
    private final Losses losses;
    private final PaidTime paidTime;
    private final double scrapPerStop;
    private final double scrapPerJoint;
    /** People of each shift by its place; one crew without shifts. */
    private final int[] crewByShift;

    private final LevelBound overfull;
    private final LevelBound broken;

    private Sums sums;
    private double massPerMetre;
    /** Whether the starved stop or hold under way began in a coil change: what began before the first is in the totals only. */
    private boolean isStarvingCounted;
    /** The same of the slowing under way. */
    private boolean isSlowingCounted;

    /**
     * An account of one replication.
     *
     * @param described the line
     * @param line shows it as it moves
     * @param detail how much is kept of it
     * @param eye sees each coil change
     */
    public RunStatistics(Line described, ObservedLine line, Detail detail, Optional<ChangeEye> eye) {
        this.line = line;
        book = new ChangeBook(detail.keepsChanges(), eye);
        overfull = LevelBound.above(line.capacity() + described.accumulator().overtravelAllowance() + line.tolerance());
        // Ten times what counts as a crossing of the stop level: a process that stopped in time is no strip break.
        broken = LevelBound.below(-10 * line.tolerance());
        scrapPerStop = described.process().scrapPerStop();
        scrapPerJoint = described.process().scrapPerJoint();
        losses = new Losses(line);
        paidTime = new PaidTime(described.change());
        crewByShift = described
                .change()
                .shifts()
                .map(shifts ->
                        shifts.list().stream().mapToInt(Shifts.Shift::crew).toArray())
                .orElseGet(() -> new int[] {described.change().crew()});
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
        } else if (losses.mayLose()) {
            losses.book(dt, rated, sums);
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

    /** How many starved stops belong to that coil change; before the first, how many there were. */
    public int starvedStopsOfLatestChange() {
        return book.latest().starvedStops();
    }

    /** A starved stop begins. */
    public void starvedStop() {
        sums.starvedStops++;
        beginStarving();
        book.latest().starvedStop();
    }

    /** Held as starved after downtime or a joint break: no stop more, but the outcome of the coil change. */
    public void heldAsStarved() {
        beginStarving();
        book.latest().atLeast(Outcome.STOPPED);
    }

    private void beginStarving() {
        isStarvingCounted = latestChange() > 0;
        losses.stripLacks(book.latest());
    }

    /** Slowing begins. */
    public void slowing() {
        sums.slowings++;
        isSlowingCounted = latestChange() > 0;
        losses.stripLacks(book.latest());
        book.latest().atLeast(Outcome.SLOWED);
    }

    /** A joint passage opens. */
    public void passageOpens() {
        losses.passageOpens();
    }

    /** A joint breaks in the process, which makes {@code scrap} (m) of what is there. */
    public void jointBroke(double scrap) {
        sums.jointBreaks++;
        losses.jointBreaks();
        sums.ofBreaks.add(scrap, massPerMetre);
    }

    /** The plan of the process is made: metres are lost no longer when it has its rated speed again and nothing holds it. */
    public void noteRecovery() {
        if (losses.mayLose()) {
            losses.noteSpeed();
        }
    }

    /** Whether the process loses metres, or recovers from what cost it some. */
    public boolean mayLose() {
        return losses.mayLose();
    }

    /** Downtime begins. */
    public void downtime() {
        sums.downtimes++;
    }

    /** The process has come to rest. */
    public void cameToRest() {
        sums.atStops.add(scrapPerStop, massPerMetre);
    }

    /** A joint was made, good or not: the old tail's and the new head's crop are scrap. */
    public void jointMade(Coil ending, Coil next) {
        sums.crops.add(ending.tailCrop(), ending.massPerMetre());
        sums.crops.add(next.headCrop(), next.massPerMetre());
    }

    /**
     * A coil change begins at {@code time} (T0) in the shift of place {@code shift}, from a coil of kind {@code endingKind} to one
     * of {@code nextKind}.
     */
    public void changeBegins(double time, int shift, int endingKind, int nextKind) {
        Outcome carried = Outcome.RAN_THROUGH;
        if (isStarvingCounted && line.isStarved()) {
            carried = Outcome.STOPPED;
        } else if (isSlowingCounted && line.isSlowed()) {
            carried = Outcome.SLOWED;
        }
        int number = book.begin();
        book.latest().begin(number, time, shift, endingKind, nextKind, line, carried);
    }

    /** The tail has stopped in the joiner (T1). */
    public void tailStopped(double time) {
        book.latest().tailStopped(time);
    }

    /** The good joint between {@code ending} and {@code next} will be cut out after the process, with strip of both. */
    public void jointCutOut(Coil ending, Coil next) {
        sums.cutOut.add(scrapPerJoint / 2, ending.massPerMetre());
        sums.cutOut.add(scrapPerJoint / 2, next.massPerMetre());
    }

    /** The joint of the latest coil change, made {@code passes} times, is released at {@code time} (T2). */
    public void jointReleased(double time, double waitedForPreparation, double waitedForPeople, int passes) {
        book.latest().released(time, waitedForPreparation, waitedForPeople, passes);
        double cycleTime = book.latest().jointCycleTime();
        sums.jointSeconds += cycleTime;
        sums.crewSeconds += (cycleTime - waitedForPreparation - waitedForPeople)
                * crewByShift[book.latest().shift()];
        sums.waitingForPreparationSeconds += waitedForPreparation;
        sums.waitingForPeopleSeconds += waitedForPeople;
    }

    /** The entry has become matched. */
    public void matched(double time) {
        book.latest().matched(time);
    }

    /** The latest coil change is over; its record is kept if it came as far as T2, with its {@code work} if it failed. */
    public void keepLatestChange(Supplier<Optional<WorkDone>> work) {
        book.keepLatest(work, losses.mayLose());
    }

    /** The records kept, in order, once the totals are made. */
    public List<ChangeRecord> changes() {
        return book.records();
    }

    /** The totals at {@code time}, at which the run ends. */
    public Totals totals(double time) {
        book.close();
        weigh(massPerMetre);
        ProcessedScrap processedScrap = new ProcessedScrap(
                sums.atStops.metres,
                sums.atStops.kilograms,
                sums.cutOut.metres,
                sums.cutOut.kilograms,
                sums.ofBreaks.metres,
                sums.ofBreaks.kilograms);
        double overtravel = sums.highestLevel - line.capacity();
        return new Totals(
                time - sums.begun,
                book.size(),
                book.counted(Outcome.RAN_THROUGH),
                book.counted(Outcome.SLOWED),
                book.counted(Outcome.STOPPED),
                book.refilled(),
                sums.starvedStops,
                book.starvedStops(),
                sums.slowings,
                sums.downtimes,
                line.processed() - sums.processedBefore,
                sums.kilograms,
                line.entered() - sums.enteredBefore,
                sums.ratedMetres,
                sums.lostMetres,
                sums.lostTime,
                sums.crops.metres + processedScrap.metres(),
                sums.crops.kilograms + processedScrap.kilograms(),
                sums.jointSeconds,
                sums.waitingForPreparationSeconds,
                sums.waitingForPeopleSeconds,
                sums.crewSeconds,
                sums.starvedSeconds,
                sums.downSeconds,
                sums.blockedSeconds,
                sums.levelIntegral,
                sums.lowestLevel,
                overtravel > 10 * line.tolerance() ? overtravel : 0,
                sums.overfull,
                sums.stripBreaks,
                processedScrap,
                sums.passageLostMetres,
                sums.jointBreaks,
                sums.breakLostMetres,
                sums.breakLostTime,
                sums.breakSeconds,
                paidTime.between(sums.begun, time));
    }
}
