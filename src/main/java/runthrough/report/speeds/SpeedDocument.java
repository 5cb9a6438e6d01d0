package runthrough.report.speeds;

import runthrough.report.JsonShape;
import runthrough.study.TargetStatus;
import runthrough.study.search.Crossing;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.speed.SpeedPoint;

/** JSON of a speed study. */
final class SpeedDocument {
    private static final JsonShape<SpeedPoint> POINT = JsonShape.<SpeedPoint>named("point")
            .number("speed_m_per_s", "Fastest rated process speed.", SpeedPoint::speed)
            .number("factor", "Factor on all rated speeds, 1 for the line as it is.", SpeedPoint::factor)
            .word("answer", "Whether the target is met.", TargetStatus.class, SpeedPoint::answer)
            .estimate("share_run_through", "Share of coil changes run through.", SpeedPoint::shareRunThrough)
            .estimate(
                    "output_m_per_s",
                    "Good output over time, stops included: strip processed less what is scrap afterwards.",
                    SpeedPoint::output)
            .estimate("output_kg_per_s", "The same by mass.", SpeedPoint::massFlow)
            .estimate("yield", "Good output over what was processed, by mass.", SpeedPoint::goodShare)
            .estimate("share_of_rated", "Metres processed over metres at the rated speed.", SpeedPoint::utilisation)
            .estimate("stops_per_8_h", "Starved stops.", SpeedPoint::stopsPerShift)
            .estimate(
                    "lost_s_per_8_h",
                    "Time lost, at the rated speed, by starved stops and slowing.",
                    SpeedPoint::lostTimePerShift);

    private static final JsonShape<SpeedCurve.Peak> PEAK = JsonShape.<SpeedCurve.Peak>named("peak")
            .and(POINT, SpeedCurve.Peak::at)
            .word("where", "Where in the range it lies.", SpeedCurve.Where.class, SpeedCurve.Peak::where)
            .number(
                    "as_good_from_m_per_s",
                    "Slowest speed tried whose output is not shown to be less.",
                    SpeedCurve.Peak::asGoodFrom)
            .number("as_good_to_m_per_s", "Fastest such speed.", SpeedCurve.Peak::asGoodTo)
            .number(
                    "fastest_m_per_s",
                    "Fastest speed of the range at which the line can be run.",
                    SpeedCurve.Peak::fastest)
            .estimate(
                    "output_lost_at_fastest_m_per_s",
                    "Output here less that at the fastest speed at which the line can be run, compared under the same random numbers.",
                    SpeedCurve.Peak::lossAtFastest);

    private static final JsonShape<Crossing> TARGET_LOST = JsonShape.<Crossing>named("target_lost")
            .word("found", "Whether the target is crossed within the range.", Crossing.Found.class, Crossing::found)
            .optionalNumber(
                    "fastest_that_meets_m_per_s",
                    "Fastest speed at which the target is shown to be met, or in a run too short to show it seen to be met; null"
                            + " when it is missed throughout.",
                    Crossing::answer)
            .optionalNumber(
                    "low_m_per_s",
                    "Lower end of its 95 % interval: the fastest speed at which the target is shown to be met; null"
                            + " where none is.",
                    Crossing::low)
            .optionalNumber(
                    "high_m_per_s",
                    "Upper end: the fastest speed at which it is not shown to be missed; null where it lies beyond the"
                            + " range.",
                    Crossing::high);

    private static final JsonShape<SpeedCurve.NotPossible> NOT_POSSIBLE = JsonShape.<SpeedCurve.NotPossible>named(
                    "not_possible")
            .number("speed_m_per_s", "Fastest rated process speed.", SpeedCurve.NotPossible::speed)
            .text("why", "Why the line cannot be run at it.", SpeedCurve.NotPossible::why);

    static final JsonShape<SpeedCurve> SHAPE = JsonShape.<SpeedCurve>named("speeds")
            .number("target", "Share of coil changes that should run through.", SpeedCurve::target)
            .flag(
                    "speeds_scaled_alike",
                    "Whether coils have speeds of their own, which were all changed by the same factor.",
                    SpeedCurve::scaledAlike)
            .number("from_m_per_s", "Slowest speed of the range.", SpeedCurve::from)
            .number("to_m_per_s", "Fastest speed of the range, as far as the line is feasible.", SpeedCurve::to)
            .in("peak", "Where most comes out.", PEAK, SpeedCurve::peak)
            .in("present", "The line as it is.", POINT, SpeedCurve::present)
            .optional(
                    "target_lost",
                    "The speed beyond which the target is lost; null where every coil change stops the line.",
                    TARGET_LOST,
                    SpeedCurve::targetLost)
            .list("points", "What comes out at each speed, slowest first.", POINT, SpeedTables::points)
            .list(
                    "not_possible",
                    "Speeds at which the line cannot be run, slowest first; the last may be the end of the range that was asked"
                            + " for.",
                    NOT_POSSIBLE,
                    SpeedCurve::notPossible);

    private SpeedDocument() {}
}
