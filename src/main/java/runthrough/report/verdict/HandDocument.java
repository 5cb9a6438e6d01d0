package runthrough.report.verdict;

import java.util.OptionalDouble;
import runthrough.handcalc.Bearable;
import runthrough.handcalc.BearableSlowed;
import runthrough.handcalc.CoherentUnits;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Limit;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Refill;
import runthrough.handcalc.Step;
import runthrough.handcalc.Storage;
import runthrough.handcalc.Term;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.report.JsonShape;

/** JSON of the hand calculation. */
final class HandDocument {
    private static final CoherentUnits SI = new CoherentUnits(UnitSystem.METRIC);

    private static final JsonShape<Margin> HELD = JsonShape.<Margin>named("held")
            .optionalNumber("given", "What there is; null for no limit.", margin -> known(margin.given()))
            .optionalNumber("needed", "What is needed.", margin -> known(margin.needed()))
            .optionalNumber("margin", "Given less needed; negative for a shortfall.", margin -> known(margin.spare()));

    private static final JsonShape<Bearable> BEARABLE = JsonShape.<Bearable>named("bearable")
            .in("capacity_m", "Capacity, and what a coil change takes of it.", HELD, Bearable::capacity)
            .in(
                    "joint_cycle_time_s",
                    "The longest that the accumulator bears, and what the joint takes.",
                    HELD,
                    Bearable::jointCycleTime)
            .in(
                    "speed_m_per_s",
                    "The fastest that the accumulator bears, and the process's speed.",
                    HELD,
                    Bearable::speed);

    private static final JsonShape<BearableSlowed> BEARABLE_SLOWED = JsonShape.<BearableSlowed>named("bearable_slowed")
            .optional(
                    "capacity_m",
                    "Capacity, and what a coil change takes of it; null where no closed form holds at that capacity.",
                    HELD,
                    BearableSlowed::capacity)
            .optional(
                    "joint_cycle_time_s",
                    "The longest that the accumulator bears, and what the joint takes; null where no closed form holds.",
                    HELD,
                    BearableSlowed::jointCycleTime)
            .optional(
                    "speed_m_per_s",
                    "The fastest that the accumulator bears, and the process's speed; null where no closed form holds at it.",
                    HELD,
                    BearableSlowed::speed);

    private static final JsonShape<Term> GIVEN = JsonShape.<Term>named("given")
            .text("symbol", "As it stands in the formulas.", Term::symbol)
            .text("name", "What it is.", Term::name)
            .optionalNumber("value", "In unit; null for infinite.", term -> known(term.value()))
            .text("unit", "SI unit; empty for a plain number.", HandDocument::unit);

    private static final JsonShape<Step> WORKED = JsonShape.<Step>named("worked")
            .text(
                    "symbol",
                    "As it stands in later formulas.",
                    step -> step.result().symbol())
            .text("name", "What it is.", step -> step.result().name())
            .text("formula", "The formula in symbols.", Step::formula)
            .optionalNumber(
                    "value",
                    "In unit; null for infinite.",
                    step -> known(step.result().value()))
            .text("unit", "SI unit; empty for a plain number.", step -> unit(step.result()));

    static final JsonShape<HandCalculation> SHAPE = JsonShape.<HandCalculation>named("hand")
            .text("coil", "Name of the kind of coil.", hand -> hand.coil().name())
            .count("kind", "Its place in the scenario, from 0.", HandCalculation::kind)
            .optionalNumber("process_speed_m_per_s", "Process speed with that coil.", hand -> known(hand.speed()))
            .optionalNumber("coil_run_s", "From one coil change to the next.", hand -> known(hand.coilRun()))
            .optionalWord(
                    "limiting_factor",
                    "The limit that is nearest to being reached or furthest beyond; where the process slows on a low level,"
                            + " capacity is that without slowing; null where entry and process are one strip.",
                    Limit.class,
                    HandCalculation::limitingFactor)
            .in(
                    "preparation_s",
                    "Time there is to prepare a coil, and what it takes.",
                    HELD,
                    HandCalculation::preparationTime)
            .optional(
                    "without_slowing",
                    "What the accumulator bears at the rated speed; null where the process cannot slow.",
                    BEARABLE,
                    hand -> hand.storage().flatMap(Storage::withoutSlowing))
            .optional(
                    "without_stop",
                    "What the accumulator bears with the process slowing; null where it cannot slow.",
                    BEARABLE_SLOWED,
                    hand -> hand.storage().flatMap(Storage::withoutStop))
            .optional(
                    "capacity_m",
                    "Capacity, and what a coil change takes of it; here and below as if the process did not slow.",
                    HELD,
                    hand -> hand.storage().map(storage -> storage.atRatedSpeed().capacity()))
            .optional(
                    "joint_cycle_time_s",
                    "The longest that the accumulator bears, and what the joint takes.",
                    HELD,
                    hand -> hand.storage().map(storage -> storage.atRatedSpeed().jointCycleTime()))
            .optional(
                    "speed_m_per_s",
                    "The fastest that the accumulator bears, and the process's speed.",
                    HELD,
                    hand -> hand.storage().map(storage -> storage.atRatedSpeed().speed()))
            .optional(
                    "strip_before_change_m",
                    "Strip of a coil before its change begins, and what passes until the accumulator is full.",
                    HELD,
                    hand -> hand.storage().flatMap(Storage::coilStrip))
            .optionalNumber(
                    "strip_drawn_m",
                    "Strip drawn at a coil change.",
                    hand -> hand.storage()
                            .map(storage -> known(storage.stripDrawn()))
                            .orElse(OptionalDouble.empty()))
            .optionalNumber(
                    "refill_time_s",
                    "From the release of the joint until full again.",
                    hand -> hand.storage()
                            .flatMap(Storage::refill)
                            .map(Refill::timeFromRelease)
                            .map(HandDocument::known)
                            .orElse(OptionalDouble.empty()))
            .list("givens", "What the worked calculation starts from.", GIVEN, HandCalculation::givens)
            .list("steps", "The worked calculation, line by line.", WORKED, HandCalculation::steps);

    private static String unit(Term term) {
        return SI.unit(term.kind()).map(Unit::symbol).orElse("");
    }

    private static OptionalDouble known(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private HandDocument() {}
}
