package runthrough.report.verdict;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Texts;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.RelativeHalfWidth;

/** The verdict in a word and a sentence, and where it is not decided, what would decide it. */
final class VerdictHeadline {
    private final RunThroughResult result;
    private final Verdict verdict;
    private final Texts texts;

    private VerdictHeadline(RunThroughResult result) {
        this.result = result;
        this.verdict = result.verdict();
        this.texts = result.texts();
    }

    static Headline of(RunThroughResult result) {
        return new VerdictHeadline(result).headline();
    }

    /** How often a coil change may be none that runs through: "1 in 200"; empty where no target is spoken of. */
    static String allowed(RunThroughResult result) {
        VerdictHeadline headline = new VerdictHeadline(result);
        return headline.isEveryOneAStop() ? "" : headline.target();
    }

    private boolean isEveryOneAStop() {
        return result.isOneStrip() && verdict.changes().ranThrough() == 0;
    }

    private Headline headline() {
        if (isEveryOneAStop()) {
            return new Headline(
                    Tone.STOPS,
                    "STOPS",
                    "Every coil change stops the process, and costs " + texts.time(lostPerStop()) + " on average.");
        }
        return switch (verdict.answer()) {
            case MEETS -> headline(Tone.RUNS_THROUGH, "RUNS THROUGH", counted());
            case UNDECIDED -> headline(Tone.MARGINAL, "MARGINAL", counted());
            case MISSES ->
                stops()
                        ? headline(
                                Tone.STOPS,
                                "STOPS",
                                howOften(
                                        verdict.changes().stopped(),
                                        " and slows ",
                                        verdict.changes().slowed()))
                        : headline(
                                Tone.SLOWS,
                                "SLOWS",
                                howOften(
                                        verdict.changes().slowed(),
                                        " and stops ",
                                        verdict.changes().stopped()));
        };
    }

    /** Its ramps and the restart delay are in it, not only the time that the strip stands for the joint (s). */
    private double lostPerStop() {
        Verdict.Stoppages stoppages = verdict.stoppages();
        return stoppages.lostTimePerShift().mean() / stoppages.starvedPerShift().mean();
    }

    /**
     * Whether a line that misses its target is said to stop. Where none slowed it does; where a target without a stop is set, that
     * decides; else what most of the coil changes did that did not run through. Rule REPORT-19.
     */
    private boolean stops() {
        Verdict.Changes changes = verdict.changes();
        return changes.slowed() == 0
                || verdict.withoutStop()
                        .flatMap(Verdict.WithoutStop::answer)
                        .map(answer -> answer == TargetStatus.MISSES)
                        .orElse(changes.stopped() >= changes.slowed());
    }

    private Headline headline(Tone tone, String word, String counted) {
        return new Headline(tone, word, counted + "; target " + target() + ". " + percentages(), further());
    }

    /** What people repeat: "Stops at about 1 in 42 coil changes". */
    private String counted() {
        Verdict.Changes changes = verdict.changes();
        if (changes.failed() == 0) {
            return verdict.chance()
                    ? "No stop in " + Texts.count(changes.total(), "coil change")
                    : "No stop at any coil change";
        }
        if (changes.stopped() > 0 && changes.slowed() > 0) {
            return "Stops " + howOften(changes.stopped()) + " and slows " + howOften(changes.slowed());
        }
        return (changes.stopped() == 0 ? "Slows " : "Stops ") + howOften();
    }

    /** How often what the word says happens, and the other where there is any. */
    private String howOften(long first, String and, long second) {
        return second == 0 ? howOften() : howOften(first) + and + howOften(second);
    }

    /** How often {@code some} coil changes come, out of all that were run. */
    private String howOften(long some) {
        long all = verdict.changes().total();
        return some == all
                ? "at every coil change"
                : (verdict.chance() ? "at about " : "at ") + Texts.odds((double) some / all) + " coil changes";
    }

    /** How often coil changes come that did not run through. */
    private String howOften() {
        return howOften(verdict.changes().failed());
    }

    private String target() {
        double allowed = 1 - verdict.target();
        return allowed <= 0 ? "none" : Texts.odds(allowed);
    }

    private String percentages() {
        boolean all = verdict.changes().failed() == 0;
        Optional<Interval> interval = texts.known(verdict.shareRunThrough().interval());
        String seen = all
                ? interval.map(ends -> "At least " + texts.share(ends.low()) + " run through with 95 % confidence")
                        .orElse("100 % run through")
                : result.words().known(verdict.shareRunThrough(), verdict.target()) + " of coil changes run through";
        return seen + "; " + against(all) + " " + Texts.target(verdict.target()) + "." + withoutStop();
    }

    /** A second target that is not met while the first is: the word says nothing of it. */
    private String withoutStop() {
        return verdict.withoutStop()
                .filter(second -> verdict.answer() == TargetStatus.MEETS && !verdict.meetsAll())
                .map(second -> result.words()
                        .missedWithoutStop(second.share(), second.target().orElseThrow()))
                .orElse("");
    }

    private String against(boolean all) {
        return switch (verdict.answer()) {
            case MEETS -> "this meets the target of";
            case MISSES -> "this misses the target of";
            case UNDECIDED -> all ? "too few were run to show the target of" : "the interval holds the target of";
        };
    }

    private String further() {
        return Stream.of(undecided(), result.precision().map(this::precision))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
    }

    private Optional<String> undecided() {
        if (verdict.answer() != TargetStatus.UNDECIDED) {
            return Optional.empty();
        }
        String run = Texts.count(verdict.changes().total()) + " coil changes were run";
        String target = " to show a share of " + Texts.target(verdict.target());
        Optional<String> least = verdict.resolution()
                .leastToShow()
                .filter(number -> number > verdict.changes().total())
                .map(number -> "; it takes at least " + Texts.about(number) + target);
        if (verdict.changes().failed() == 0) {
            return Optional.of(run
                    + least.orElse("; no number of them can show a share of " + Texts.target(verdict.target())) + ".");
        }
        String decide = verdict.resolution()
                .toDecide()
                .map(number -> "; about " + Texts.about(number) + " would decide, if the share stays what it is.")
                .orElse("; no number of them would decide.");
        return Optional.of(
                run + least.map(number -> number + ", even if all run through").orElse("") + decide);
    }

    /** Whether the interval is as narrow as was asked for. */
    private String precision(RelativeHalfWidth precision) {
        String asked = "plus or minus " + texts.share(precision.asked());
        if (precision.reached()) {
            return "The share is known to " + asked + ", as asked for.";
        }
        String there = precision.halfWidth().isPresent()
                ? "The share is known to plus or minus "
                        + texts.share(precision.halfWidth().getAsDouble()) + " only, not to "
                : "The share is not known to ";
        String more = precision.wouldDo().isPresent()
                ? "about " + Texts.about(precision.wouldDo().getAsInt()) + " would do"
                : "how many would do is not known";
        return there + asked + " as asked for: the " + Texts.count(precision.limit())
                + " replications allowed are used up; " + more + ".";
    }
}
