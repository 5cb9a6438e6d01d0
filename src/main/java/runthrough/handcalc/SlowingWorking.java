package runthrough.handcalc;

import java.util.Optional;
import runthrough.quantity.Kind;

/**
 * Works out what {@link SlowingForms} give: what an accumulator bears where the process slows on a low level, for each of the two
 * targets. The fastest speed without a stop has no closed form and is no step.
 */
final class SlowingWorking {
    private final Sheet sheet;
    private final SlowingForms forms;
    private final Bearable withoutSlowing;
    private final Optional<BearableSlowed> withoutStop;
    private final Term speed;
    private final Ramps ramps;

    SlowingWorking(Sheet sheet, SlowingForms forms, Storage storage, Term speed, Ramps ramps) {
        this.sheet = sheet;
        this.forms = forms;
        this.withoutSlowing = storage.withoutSlowing().orElseThrow();
        this.withoutStop = storage.withoutStop();
        this.speed = speed;
        this.ramps = ramps;
    }

    /** Reserve and process deceleration. */
    record Stopping(Term reserve, Term deceleration) {}

    void work(Term capacity, Term drawn, Term joint, Stopping stopping) {
        Term level = sheet.given("x_slow", "level at which the process slows", forms.level(), Kind.LENGTH);
        sheet.step(
                new Term(
                        "C_slow",
                        "capacity needed without slowing",
                        withoutSlowing.capacity().needed(),
                        Kind.LENGTH),
                withoutSlowing.capacity(),
                new Sum().plus("{}", drawn).plus("{}", level));
        sheet.step(
                new Term(
                        "T_slow",
                        "longest joint cycle time without slowing",
                        withoutSlowing.jointCycleTime().given(),
                        Kind.TIME),
                withoutSlowing.jointCycleTime(),
                running(capacity, level).minusRamp(speed, ramps.acceleration()).over(speed));
        if (speed.value() > forms.slowedSpeed()) {
            withoutStop.ifPresent(borne -> withoutStop(borne, capacity, joint, level, stopping));
        }
    }

    /**
     * In steps: until the level of slowing at V, down to V_slow, down to the stop level at V_slow; and what must be held for the first
     * of them to be as long as the joint takes beyond the others.
     */
    private void withoutStop(BearableSlowed borne, Term capacity, Term joint, Term level, Stopping stopping) {
        if (borne.capacity().isEmpty() && borne.jointCycleTime().isEmpty()) {
            return;
        }
        Term slowed = sheet.given("V_slow", "slowed process speed", forms.slowedSpeed(), Kind.SPEED);
        Term stop = sheet.step(
                new Term(
                        "x_stop",
                        "stop level at the process speed",
                        forms.forms().reserve() + forms.forms().processStoppingLength(),
                        Kind.LENGTH),
                new Sum().plus("{}", stopping.reserve()).plusRamp(speed, stopping.deceleration()));
        Term last = sheet.step(
                new Term(
                        "T_3",
                        "at the slowed speed down to the stop level",
                        forms.atSlowedSpeed(speed.value()),
                        Kind.TIME),
                new Sum()
                        .plus("{}", level)
                        .minus("{}", stop)
                        .minusRamp(slowed, ramps.acceleration())
                        .over(slowed));
        boolean takesTime = Double.isFinite(stopping.deceleration().value());
        borne.jointCycleTime().ifPresent(margin -> {
            Term first = sheet.step(
                    new Term("T_1", "from the tail's stop until the process slows", forms.untilSlowed(), Kind.TIME),
                    running(capacity, level).over(speed));
            Sum longest = new Sum().plus("{}", first);
            if (takesTime) {
                longest.plus("({} - {}) / {}", speed, slowed, stopping.deceleration());
            }
            sheet.step(
                    new Term("T_stop", "longest joint cycle time without a stop", margin.given(), Kind.TIME),
                    margin,
                    longest.plus("{}", last));
        });
        borne.capacity().ifPresent(margin -> {
            Sum needed = new Sum().plus("{}", level).plusRamp(speed, ramps.deceleration());
            ramps.creep().ifPresent(c -> needed.plus("({} - {}) * {}", speed, c.speed(), c.time()));
            if (takesTime) {
                needed.plus(
                        "{} * ({} - {} - ({} - {}) / {})", speed, joint, last, speed, slowed, stopping.deceleration());
            } else {
                needed.plus("{} * ({} - {})", speed, joint, last);
            }
            sheet.step(
                    new Term("C_stop", "capacity needed without a stop", margin.needed(), Kind.LENGTH), margin, needed);
        });
    }

    /** What the process runs on at V before it slows, less what the entry lets it miss while it stops (m). */
    private Sum running(Term capacity, Term level) {
        Sum strip = new Sum().plus("{}", capacity).minus("{}", level).minusRamp(speed, ramps.deceleration());
        ramps.creep().ifPresent(c -> strip.minus("({} - {}) * {}", speed, c.speed(), c.time()));
        return strip;
    }
}
