package runthrough.report.comparison;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import runthrough.report.JsonShape;
import runthrough.report.described.LineDifferences;
import runthrough.study.TargetStatus;
import runthrough.study.cause.Cause;
import runthrough.study.cause.Reason;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Compared.Figure;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Interval;

/** JSON of a comparison. */
final class ComparisonDocument {
    private static final JsonShape<Difference> DIFFERENCE = JsonShape.<Difference>named("difference")
            .optionalNumber(
                    "mean",
                    "This less today's; null where no pair gave a value.",
                    difference -> OptionalDouble.of(difference.mean()))
            .optionalNumber(
                    "low",
                    "Lower end of its interval; null where there is none.",
                    difference -> low(difference.interval()))
            .optionalNumber(
                    "high",
                    "Upper end of its interval; null where there is none.",
                    difference -> high(difference.interval()))
            .word(
                    "significance",
                    "significant: the whole interval lies on one side of zero, or the difference is exact; not-shown: it does"
                            + " not; none: every pair gave the same.",
                    Difference.Significance.class,
                    Difference::significance);

    private static final JsonShape<Shown> FIGURE = JsonShape.<Shown>named("figure")
            .number(
                    "mean",
                    "Mean over the replications.",
                    shown -> shown.figure().value().mean())
            .optionalNumber(
                    "low", "Lower end of its 95 % interval; null where there is none.", shown -> low(shown.interval()))
            .optionalNumber(
                    "high",
                    "Upper end of its 95 % interval; null where there is none.",
                    shown -> high(shown.interval()))
            .optional(
                    "less_today",
                    "This less the same of the alternative called today, under the same random numbers; null for that one"
                            + " itself.",
                    DIFFERENCE,
                    shown -> shown.figure().difference());

    private static final List<Member> FIGURES = List.of(
            new Member("share_run_through", "Share of coil changes run through.", ComparisonMeasure.RUN_THROUGH, false),
            new Member("stops_per_8_h", "Starved stops.", ComparisonMeasure.STOPS, false),
            new Member(
                    "lost_s_per_8_h",
                    "Time lost, at the rated speed, by starved stops and slowing.",
                    ComparisonMeasure.LOST_TIME,
                    false),
            new Member(
                    "output_m_per_s",
                    "Good output over time, stops included: strip processed less what is scrap afterwards.",
                    ComparisonMeasure.OUTPUT_LENGTH,
                    false),
            new Member("output_kg_per_s", "The same by mass.", ComparisonMeasure.OUTPUT_MASS, false),
            new Member("yield", "Good output over what was processed, by mass.", ComparisonMeasure.YIELD, false),
            new Member(
                    "share_of_rated",
                    "Metres processed over metres at the rated speed.",
                    ComparisonMeasure.UTILISATION,
                    false),
            new Member("scrap_kg_per_8_h", "Crops and strip scrapped by stops.", ComparisonMeasure.SCRAP_MASS, false),
            new Member(
                    "scrap_share",
                    "Scrap over scrap and processed strip, by mass.",
                    ComparisonMeasure.SCRAP_SHARE,
                    false),
            new Member(
                    "joint_s",
                    "How long the strip stands at a coil change.",
                    ComparisonMeasure.JOINT_CYCLE_TIME,
                    false),
            new Member(
                    "crew_person_s_per_change",
                    "Crew time at the joint: tail and join work, rethreading and joints made again included, times the"
                            + " crew; waiting for the next coil is not in it.",
                    ComparisonMeasure.CREW_TIME_PER_CHANGE,
                    false),
            new Member("crew_person_s_per_8_h", "The same in 8 h.", ComparisonMeasure.CREW_TIME, false),
            new Member(
                    "paid_person_s_per_8_h",
                    "What people are paid for: crew times time, whether they are at the joint or not.",
                    ComparisonMeasure.PAID_TIME,
                    false));

    private static final List<Member> YEAR = List.of(
            new Member("stops_per_year", "Starved stops.", ComparisonMeasure.STOPS, true),
            new Member(
                    "lost_s_per_year",
                    "Time lost, at the rated speed, by starved stops and slowing.",
                    ComparisonMeasure.LOST_TIME,
                    true),
            new Member("output_m_per_year", "Strip processed.", ComparisonMeasure.OUTPUT_LENGTH, true),
            new Member("output_kg_per_year", "The same by mass.", ComparisonMeasure.OUTPUT_MASS, true),
            new Member("scrap_kg_per_year", "Crops and strip scrapped by stops.", ComparisonMeasure.SCRAP_MASS, true),
            new Member("crew_person_s_per_year", "Crew time at the joint.", ComparisonMeasure.CREW_TIME, true),
            new Member(
                    "paid_person_s_per_year",
                    "What people are paid for: crew times time.",
                    ComparisonMeasure.PAID_TIME,
                    true));

    private static final JsonShape<Compared> ALTERNATIVE = JsonShape.<Compared>named("alternative")
            .text("name", "What it is called.", one -> one.alternative().name())
            .flag("random", "Whether anything in it is random; if not, it is exact.", Compared::chance)
            .word("answer", "Whether the target is met.", TargetStatus.class, Compared::answer)
            .count("coil_changes_run", "Coil changes of all replications.", Compared::changes)
            .optionalNumber(
                    "share_without_stop",
                    "Share of coil changes without a stop; null without a target for it.",
                    one -> one.withoutStop()
                            .map(share -> OptionalDouble.of(share.mean()))
                            .orElse(OptionalDouble.empty()))
            .optionalWord(
                    "limiting_factor",
                    "What most coil changes that did not run through are attributed to; null when all did.",
                    Cause.class,
                    one -> one.mainCause().map(Reason::cause))
            .optionalText(
                    "limiting_element",
                    "The work element that it is named by, as list/name; null where it is named by none.",
                    one -> one.mainCause().flatMap(Reason::element).map(Reason.Element::path))
            .count(
                    "strip_breaks",
                    "Times that the level fell below zero; numbers are not physical then.",
                    Compared::stripBreaks)
            .in("figures", "What it gives.", shape("figures", FIGURES), one -> one)
            .in("per_year", "What that comes to in a year.", shape("per_year", YEAR), one -> one);

    private static final JsonShape<Changed> CHANGED = JsonShape.<Changed>named("changed")
            .text("name", "Of the alternative.", Changed::name)
            .text("value", "With its unit, or in words.", Changed::value);

    private static final JsonShape<Change> CHANGE = JsonShape.<Change>named("change")
            .text(
                    "what",
                    "Is changed, in the terms of the trade.",
                    change -> change.row().what())
            .text(
                    "today",
                    "With the alternative called today; none where it has no such part.",
                    change -> change.row().present())
            .list("alternatives", "Those that have it otherwise.", CHANGED, Change::changed);

    private static final JsonShape<Comparison.NotRun> NOT_RUN = JsonShape.<Comparison.NotRun>named("not_run")
            .text("name", "What it is called.", Comparison.NotRun::name)
            .text("why", "It cannot be run.", Comparison.NotRun::why);

    static final JsonShape<Comparison> SHAPE = JsonShape.<Comparison>named("compare")
            .number("target", "Share of coil changes that should run through.", Comparison::target)
            .count(
                    "replications_run",
                    "Replications of each alternative that has any random numbers.",
                    Comparison::replications)
            .number("year_s", "Scheduled running time of a year.", Comparison::yearlyTime)
            .number(
                    "difference_confidence",
                    "Confidence of each difference's interval: those of all alternatives hold together with 0.95.",
                    Comparison::confidence)
            .in("today", "The alternative that the others are compared with.", ALTERNATIVE, Comparison::today)
            .list("alternatives", "All others.", ALTERNATIVE, Comparison::others)
            .list("cannot_run", "Alternatives that cannot be run, and are not compared.", NOT_RUN, Comparison::notRun)
            .list(
                    "changes",
                    "What the others change, by what it is called.",
                    CHANGE,
                    comparison -> ComparisonTables.changed(comparison).stream()
                            .map(row -> new Change(comparison, row))
                            .toList());

    private ComparisonDocument() {}

    /** A figure of an alternative in which something is random, or nothing is. */
    private record Shown(Figure figure, boolean chance) {
        Optional<Interval> interval() {
            return figure.value().interval().filter(any -> chance);
        }
    }

    private record Changed(String name, String value) {}

    private record Change(Comparison comparison, LineDifferences.Row row) {
        List<Changed> changed() {
            return IntStream.range(0, row.others().size())
                    .filter(i -> !row.others().get(i).isEmpty())
                    .mapToObj(i -> new Changed(
                            comparison.others().get(i).alternative().name(),
                            row.others().get(i)))
                    .toList();
        }
    }

    private record Member(String name, String meaning, ComparisonMeasure measure, boolean yearly) {
        Shown of(Compared one) {
            return new Shown(yearly ? one.perYear(measure) : one.figure(measure), one.chance());
        }
    }

    private static JsonShape<Compared> shape(String name, List<Member> members) {
        JsonShape<Compared> shape = JsonShape.named(name);
        for (Member member : members) {
            shape = shape.in(member.name(), member.meaning(), FIGURE, member::of);
        }
        return shape;
    }

    private static OptionalDouble low(Optional<Interval> interval) {
        return interval.map(ends -> OptionalDouble.of(ends.low())).orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble high(Optional<Interval> interval) {
        return interval.map(ends -> OptionalDouble.of(ends.high())).orElseGet(OptionalDouble::empty);
    }
}
