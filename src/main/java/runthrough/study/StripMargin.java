package runthrough.study;

import runthrough.handcalc.ClosedForms;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.simulation.ChangeRecord;
import runthrough.simulation.Outcome;

/** What a coil change had to spare, or was missing, for the process to hold its rated speed: in metres, seconds and speed. */
public final class StripMargin {
    private final Line line;
    private final StripNeeded needed;
    private final ClosedForms forms;
    private final double slowLevel;

    /** What coil changes of {@code line}, which must have an accumulator, had to spare. */
    public StripMargin(Line line) {
        this.line = line;
        this.needed = new StripNeeded(line);
        // Nothing that depends on the kind of coil is asked of it.
        this.forms = ClosedForms.of(line, line.coils().get(0));
        this.slowLevel =
                line.process().slowing().map(ProcessSection.Slowing::level).orElse(0.0);
    }

    /**
     * The level (m) above which the process holds its rated speed: that at which it slows, or else stops.
     *
     * <p>Rule MARGIN-1.
     */
    double holdLevel(ChangeRecord change) {
        return Math.max(change.stopLevel(), slowLevel);
    }

    /**
     * Metres to spare above the level at which the process slows or stops. Where it did so, what is missing (negative) is
     * reckoned with the process kept at its rated speed, for a process that stops takes less.
     *
     * <p>Rule MARGIN-2.
     */
    public double metres(ChangeRecord change) {
        double spare = change.lowestLevel() - holdLevel(change);
        return change.outcome() == Outcome.RAN_THROUGH
                ? spare
                : Math.min(spare, change.levelAtStart() - needed.of(change) - holdLevel(change));
    }

    /** The same as seconds of joint time at the rated speed. Rule MARGIN-3. */
    double seconds(ChangeRecord change) {
        return seconds(change, metres(change));
    }

    /** The same where {@code metres} are known. */
    double seconds(ChangeRecord change, double metres) {
        return metres / needed.ratedSpeed(change);
    }

    /**
     * By how much (m/s) the process could have run faster (positive), or would have had to run slower, through this joint on
     * the strip held at its start: from the closed form for an entry at the process's speed, and no faster than the entry
     * can.
     *
     * <p>Rule MARGIN-3.
     */
    double speed(ChangeRecord change) {
        double fastest =
                fastest(change, line.accumulator().reserve(), line.process().deceleration());
        if (slowLevel > 0) {
            fastest = Math.min(fastest, fastest(change, slowLevel, Double.POSITIVE_INFINITY));
        }
        return Math.min(fastest, line.entry().topSpeed()) - needed.ratedSpeed(change);
    }

    /** The fastest speed (m/s) that leaves {@code kept} metres and the way to stop. */
    private double fastest(ChangeRecord change, double kept, double deceleration) {
        double level = change.levelAtStart();
        if (level <= kept) {
            return 0;
        }
        return new ClosedForms(
                        forms.entry(),
                        forms.topSpeed(),
                        level,
                        kept,
                        forms.fillRateLimit(),
                        deceleration,
                        forms.usable())
                .fastestSpeed(change.jointTime());
    }
}
