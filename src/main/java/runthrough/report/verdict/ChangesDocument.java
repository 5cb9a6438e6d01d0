package runthrough.report.verdict;

import java.util.Locale;
import runthrough.report.JsonShape;
import runthrough.study.Verdict;
import runthrough.study.cause.Cause;
import runthrough.study.cause.CauseCounts;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.lever.CauseWorth;

/** JSON of the coil changes of a verdict: what came of them, and why. */
final class ChangesDocument {
    static final JsonShape<Verdict.Changes> CHANGES = JsonShape.<Verdict.Changes>named("changes")
            .count("total", "All of them.", Verdict.Changes::total)
            .count("ran_through", "The process held its rated speed.", Verdict.Changes::ranThrough)
            .count("slowed", "The process ran slower on a low level.", Verdict.Changes::slowed)
            .count("stopped", "The process stopped, starved.", Verdict.Changes::stopped);

    static final JsonShape<CauseCounts> CAUSES = causes();

    private static JsonShape<CauseCounts> causes() {
        JsonShape<CauseCounts> shape = JsonShape.named("causes");
        for (Cause cause : Cause.values()) {
            shape = shape.count(
                    cause.name().toLowerCase(Locale.ROOT),
                    "Coil changes that did not run through because of this: " + cause.words() + ".",
                    counts -> counts.count(cause));
        }
        return shape.optionalWord(
                "main", "The cause of most; null when all ran through.", Cause.class, CauseCounts::main);
    }

    static final JsonShape<NamedCauses.Count> NAMED_CAUSE = JsonShape.<NamedCauses.Count>named("named_cause")
            .word(
                    "cause",
                    "What would have let them run through.",
                    Cause.class,
                    count -> count.reason().cause())
            .optionalText(
                    "element",
                    "The work element that it is named by, as list/name; null where it is named by none.",
                    count -> count.reason().element().map(Reason.Element::path))
            .count("coil_changes", "Coil changes that did not run through because of it.", NamedCauses.Count::changes)
            .count("starved_stops", "Starved stops that belong to them.", NamedCauses.Count::starvedStops)
            .number("lost_time_s", "Lost time of them.", NamedCauses.Count::lostTime);

    static final JsonShape<CauseWorth> WORTH = JsonShape.<CauseWorth>named("worth")
            .word(
                    "cause",
                    "What is removed.",
                    Cause.class,
                    worth -> worth.reason().cause())
            .optionalText(
                    "element",
                    "The work element that it is named by, as list/name; null where it is named by none.",
                    worth -> worth.reason().element().map(Reason.Element::path))
            .count("replications", "Replications that were held against those with it.", CauseWorth::replications)
            .estimate("fewer_starved_stops_per_year", "Starved stops saved in a year.", CauseWorth::stops)
            .estimate(
                    "more_run_through",
                    "By how much the share of coil changes run through is greater.",
                    CauseWorth::shareRunThrough)
            .estimate("less_lost_time_per_year_s", "Lost time saved in a year.", CauseWorth::lostTime)
            .estimate("more_good_output_per_year_m", "More good strip in a year.", CauseWorth::goodOutput);

    private ChangesDocument() {}
}
