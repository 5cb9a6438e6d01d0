package runthrough.simulation;

import runthrough.plant.Coil;
import runthrough.plant.Line;

/** Keeps the sums of a replication and hands what belongs to a coil change to its {@link ChangeBook}. SI units. */
final class RunStatistics {
    private final LineState strip;
    private final ChangeBook book;
    private final double capacity;
    private final double tolerance;
    private final double overfullLevel;
    private final double brokenLevel;
    private final double spoiltPerStop;

    private double begun;
    private double processedBefore;
    private double enteredBefore;
    private double kilograms;
    private double weighedUpTo;
    private double massPerMetre;
    private double ratedMetres;
    private double lostMetres;
    private double lostTime;
    private double scrapMetres;
    private double scrapKilograms;
    private double jointSeconds;
    private double waitingSeconds;
    private double starvedSeconds;
    private double ownStopSeconds;
    private double blockedSeconds;
    private double levelIntegral;
    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = Double.NEGATIVE_INFINITY;
    private int starvedStops;
    private int slowings;
    private int ownStops;
    private int overfull;
    private int stripBreaks;
    private boolean isOverfull;
    private boolean isBroken;
    /** Metres are being lost, since a starved stop or slowing that began at coil change {@code lossSince}. */
    private boolean losing;

    private int lossSince;

    /** A statistics of {@code line}; {@code tolerance} is what rounding may do to a level (m). */
    RunStatistics(Line line, LineState strip, ChangeBook book, double tolerance) {
        this.strip = strip;
        this.book = book;
        this.tolerance = tolerance;
        capacity = line.practice().isOneStrip() ? 0 : line.accumulator().capacity();
        overfullLevel = capacity + line.accumulator().overtravelAllowance() + tolerance;
        // Ten times what counts as a crossing of the stop level: a process that stopped in time is no strip break.
        brokenLevel = -10 * tolerance;
        spoiltPerStop = line.process().scrapPerStop();
    }

    /** Begins the totals anew: at time 0, or when the coil changes left out are over. */
    void beginTotals(double time) {
        begun = time;
        processedBefore = strip.processed;
        enteredBefore = strip.entered;
        weighedUpTo = strip.processed;
        kilograms = 0;
        ratedMetres = 0;
        lostMetres = 0;
        lostTime = 0;
        scrapMetres = 0;
        scrapKilograms = 0;
        jointSeconds = 0;
        waitingSeconds = 0;
        starvedSeconds = 0;
        ownStopSeconds = 0;
        blockedSeconds = 0;
        levelIntegral = 0;
        lowest = strip.level;
        highest = strip.level;
        starvedStops = 0;
        slowings = 0;
        ownStops = 0;
        overfull = 0;
        stripBreaks = 0;
    }

    /** Moves the strip on by {@code dt} seconds, {@code > 0}, in the states as they are, and books what that makes. */
    void advance(double dt, ProcessControl process, EntrySection entry) {
        double rated = process.rated();
        ratedMetres += rated * dt;
        if (process.isInOwnStop()) {
            ownStopSeconds += dt;
        } else {
            if (losing) {
                lose(shortfall(rated - strip.processSpeed, -strip.processAcceleration, dt), rated);
            }
            if (process.isStarved() && process.stands()) {
                starvedSeconds += dt;
            }
        }
        if (entry.isBlocked()) {
            blockedSeconds += dt;
        }
        strip.advance(dt);
        levelIntegral += strip.levelIntegral;
        watchLevel();
    }

    private void lose(double metres, double rated) {
        lostMetres += metres;
        lostTime += metres / rated;
        if (lossSince > 0) {
            book.lost(metres);
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

    private void watchLevel() {
        lowest = Math.min(lowest, strip.lowest);
        highest = Math.max(highest, strip.highest);
        book.level(strip.lowest);
        double over = strip.level - overfullLevel;
        if (passes(isOverfull, strip.lowest - overfullLevel, strip.highest - overfullLevel, over)) {
            overfull++;
        }
        isOverfull = over > 0;
        double under = brokenLevel - strip.level;
        if (passes(isBroken, brokenLevel - strip.highest, brokenLevel - strip.lowest, under)) {
            stripBreaks++;
        }
        isBroken = under > 0;
    }

    /**
     * Whether the level has just passed a bound outwards: from within it, or having come back within it between two events.
     * Its least, most and last distance beyond the bound are negative within.
     */
    private static boolean passes(boolean wasBeyond, double least, double most, double last) {
        return wasBeyond ? least <= 0 && last > 0 : most > 0;
    }

    /** The coil being processed weighs {@code kilogramsPerMetre} from here on. */
    void weigh(double kilogramsPerMetre) {
        kilograms += (strip.processed - weighedUpTo) * massPerMetre;
        weighedUpTo = strip.processed;
        massPerMetre = kilogramsPerMetre;
    }

    /** Number of the latest coil change begun; 0 before the first. */
    int latestChange() {
        return book.latest();
    }

    void starvedStop() {
        starvedStops++;
        beginLoss();
        if (book.latest() > 0) {
            book.starvedStop();
        }
    }

    /** Held for want of strip after a stop of the process's own: no stop more, but it colours the coil change. */
    void heldAsStarved() {
        beginLoss();
        if (book.latest() > 0) {
            book.atLeast(Outcome.STOPPED);
        }
    }

    void slowing() {
        slowings++;
        beginLoss();
        if (book.latest() > 0) {
            book.atLeast(Outcome.SLOWED);
        }
    }

    private void beginLoss() {
        if (!losing) {
            losing = true;
            lossSince = book.latest();
        } else if (lossSince == 0) {
            lossSince = book.latest();
        }
    }

    /** Metres are lost no longer when nothing holds the process and it has its rated speed again. */
    void noteRecovery(boolean held, boolean atRatedSpeed) {
        if (losing && !held && atRatedSpeed) {
            losing = false;
        }
    }

    void ownStop() {
        ownStops++;
    }

    void cameToRest() {
        scrap(spoiltPerStop, massPerMetre);
    }

    /** A joint was made, good or not: the old tail's and the new head's crop are scrap. */
    void jointMade(Coil ending, Coil next) {
        scrap(ending.tailCrop(), ending.massPerMetre());
        scrap(next.headCrop(), next.massPerMetre());
    }

    private void scrap(double metres, double kilogramsPerMetre) {
        scrapMetres += metres;
        scrapKilograms += metres * kilogramsPerMetre;
    }

    /** A coil change begins (T0). */
    void changeBegins(double time, int endingKind, int nextKind, double stopLevel, ProcessControl process) {
        Outcome carried = Outcome.RAN_THROUGH;
        // What began before the first coil change appears in the totals only.
        if (lossSince > 0 && process.isStarved()) {
            carried = Outcome.STOPPED;
        } else if (lossSince > 0 && process.isSlowed()) {
            carried = Outcome.SLOWED;
        }
        book.begin(time, endingKind, nextKind, strip.level, stopLevel, carried);
    }

    void jointReleased(double time, double jointTime, double waited, int passes) {
        jointSeconds += jointTime;
        waitingSeconds += waited;
        book.released(time, waited, passes);
    }

    /** The totals at {@code time}. */
    Totals totals(double time) {
        weigh(massPerMetre);
        double overtravel = highest - capacity;
        return new Totals(
                time - begun,
                book.records().size(),
                book.counted(Outcome.RAN_THROUGH),
                book.counted(Outcome.SLOWED),
                book.counted(Outcome.STOPPED),
                book.refilled(),
                starvedStops,
                slowings,
                ownStops,
                strip.processed - processedBefore,
                kilograms,
                strip.entered - enteredBefore,
                ratedMetres,
                lostMetres,
                lostTime,
                scrapMetres,
                scrapKilograms,
                jointSeconds,
                waitingSeconds,
                starvedSeconds,
                ownStopSeconds,
                blockedSeconds,
                levelIntegral,
                lowest,
                overtravel > 10 * tolerance ? overtravel : 0,
                overfull,
                stripBreaks);
    }
}
