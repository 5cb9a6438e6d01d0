package runthrough.study.margin;

import org.jspecify.annotations.Nullable;
import runthrough.handcalc.ClosedForms;
import runthrough.handcalc.SlowingForms;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.simulation.records.ChangeFacts;

/**
 * The margin of a coil change: the strip that would be left above the stop level if the process kept the rated speed V that it had
 * at T0; negative, it is the strip that lacked. It is the same whether the process then ran through, slowed or stopped.
 *
 * <p>There are two: for running through at rated speed, which ends where the process slows if it can slow; and for going without
 * a stop, with the process slowing as it does. Where nothing slows they are the same. Margin and outcome agree where rule MARGIN-6
 * says so; otherwise the outcome counts.
 *
 * <p>Rules MARGIN-1, MARGIN-2, MARGIN-5, MARGIN-6.
 */
public final class StripMargin {
    private final Line line;
    private final @Nullable Slowing slowing;
    private final ClosedForms forms;

    /** The margins of coil changes of {@code line}, which must have an accumulator. */
    public StripMargin(Line line) {
        this.line = line;
        slowing = line.process().slowing().orElse(null);
        // Nothing that depends on the kind of coil is asked of it.
        forms = ClosedForms.of(line, line.coils().get(0));
    }

    /** Above the stop level (m), the process keeping its rated speed: {@code x(T0) + r(T0) - V (T2 - T0) - V^2/(2 a_e) - x_stop(V)}. */
    public double toStop(ChangeFacts change) {
        double speed = change.ratedSpeed();
        return change.levelAtStart()
                + change.remainingAtStart()
                - speed * (change.released() - change.start())
                - speed * speed / (2 * line.entry().acceleration())
                - change.stopLevel();
    }

    /** For the target to run through (m): above the level at which the process slows, or else stops. */
    public double metres(ChangeFacts change) {
        return toStop(change) - beforeStop(change);
    }

    /** How far above the stop level (m) the process slows; 0 where it cannot. */
    private double beforeStop(ChangeFacts change) {
        return slowing == null ? 0 : slowing.level() - change.stopLevel();
    }

    /** For the target without a stop (m): the lowest level above the stop level while the process slows as it does. */
    public double metresWithoutStop(ChangeFacts change) {
        return slowing == null ? toStop(change) : new SlowedCourse(line, slowing, change).lowest();
    }

    /** What {@code metres} of margin of {@code change} are as joint cycle time at the rated speed (s). */
    public double seconds(ChangeFacts change, double metres) {
        return metres / change.ratedSpeed();
    }

    /**
     * By how much (m/s) the process could have run faster, or would have had to run slower, to run through this joint on the strip
     * held at its start: the fastest speed of the closed form with that strip in the place of the capacity, less V. The top speed of
     * the entry does not limit it.
     */
    public double speed(ChangeFacts change) {
        ClosedForms here = forms.holding(change.levelAtStart());
        double fastest = slowing == null
                ? here.fastestSpeed(change.jointCycleTime())
                : SlowingForms.of(here, slowing).fastestAtRatedSpeed(change.jointCycleTime());
        return Math.max(0, fastest) - change.ratedSpeed();
    }

    /** The same to go through it without a stop, also where the closed form does not hold: see {@link #holdsWithoutStop}. */
    public double speedWithoutStop(ChangeFacts change) {
        ClosedForms here = forms.holding(change.levelAtStart());
        double fastest = slowing == null
                ? here.fastestSpeed(change.jointCycleTime())
                : SlowingForms.of(here, slowing).fastestWithoutStop(change.jointCycleTime());
        return Math.max(0, fastest) - change.ratedSpeed();
    }

    /**
     * Whether the closed form without a stop holds at the speed that a {@code margin} as speed (m/s) stands for, the accumulator
     * full: with every kind of coil.
     */
    public boolean holdsWithoutStop(double margin) {
        return slowing == null
                || line.coilSource().kinds().stream()
                        .allMatch(coil -> SlowingForms.of(ClosedForms.of(line, coil), slowing)
                                .isAnswerWithoutStop(line.ratedSpeed(coil) + margin));
    }
}
