package runthrough.report.verdict;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.RunPlan;
import runthrough.quantity.Kind;
import runthrough.report.TextLines;
import runthrough.report.Texts;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Summary;

/**
 * The verdict as text: at most a screen of 24 lines by 80 columns, then the limits by hand calculation. Plain ASCII but
 * for what the user wrote.
 */
public final class TerminalReport {
    static final int SCREEN = 24;

    private static final int COLUMN = 20;

    private final RunThroughResult result;
    private final Verdict verdict;
    private final Texts texts;
    private final TextLines lines = new TextLines();

    private TerminalReport(RunThroughResult result) {
        this.result = result;
        this.verdict = result.verdict();
        this.texts = result.texts();
    }

    /**
     * The verdict and the limits, each line ended by a line feed. What was warned of is only counted.
     *
     * @param colour whether the terminal shows colours; the words say it all without them
     */
    public static String render(RunThroughResult result, boolean colour) {
        TerminalReport report = new TerminalReport(result);
        report.verdict();
        TextLines more = new TextLines();
        more.gap();
        HandCalculationText.limits(result, more);
        String text = joined(Stream.concat(report.lines.lines().stream(), more.lines().stream()));
        return colour ? coloured(text, VerdictHeadline.of(result).mark()) : text;
    }

    /** The hand calculation step by step, each line ended by a line feed. */
    public static String working(RunThroughResult result) {
        TextLines lines = new TextLines();
        HandCalculationText.steps(result, lines);
        return joined(lines.lines().stream());
    }

    private static String joined(Stream<String> lines) {
        return lines.map(line -> line.stripTrailing() + "\n").collect(Collectors.joining());
    }

    /** The lines of the verdict alone. */
    static List<String> verdictLines(RunThroughResult result) {
        TerminalReport report = new TerminalReport(result);
        report.verdict();
        return report.lines.lines();
    }

    private void verdict() {
        VerdictHeadline headline = VerdictHeadline.of(result);
        lines.line(result.study().request().title());
        result.provenance().changed().ifPresent(changed -> lines.paragraph(changed, 0));
        lines.paragraph(headline.mark().word() + ". " + headline.sentence(), 0);
        headline.further().ifPresent(further -> lines.paragraph(further, 0));
        lines.gap();
        Diagnosis diagnosis = new Diagnosis(result);
        row("what binds", diagnosis.binds());
        diagnosis.spare().ifPresent(spare -> row("at the target", spare));
        CoilTexts.of(result).ifPresent(coils -> {
            coils.worst().ifPresent(worst -> row("worst coil", worst));
            coils.notSeen().ifPresent(few -> row("coils", few));
        });
        Verdict.Changes changes = verdict.changes();
        row(
                "coil changes",
                Texts.count(changes.total()) + ": " + Texts.count(changes.ranThrough()) + " ran through, "
                        + Texts.count(changes.slowed()) + " slowed, " + Texts.count(changes.stopped()) + " stopped");
        stoppages(verdict.stoppages());
        output(verdict.output());
        joint(verdict.joint());
        verdict.storage().ifPresent(this::storage);
        basis();
    }

    private void stoppages(Verdict.Stoppages stoppages) {
        row(
                result.isOneStrip() ? "stops for coils" : "stops for strip",
                with(stoppages.starvedPerShift(), "per 8 h") + ", "
                        + Texts.number(stoppages.starvedPerHundredChanges().mean()) + " per 100 coil changes");
        row(
                result.isOneStrip() ? "lost for coils" : "lost for strip",
                quantity(Kind.TIME, stoppages.lostTimePerShift(), "per 8 h") + ", "
                        + texts.length(stoppages.lostMetresPerShift().mean()) + " per 8 h");
        if (stoppages.downtimesPerShift().mean() > 0) {
            row("stops of its own", with(stoppages.downtimesPerShift(), "per 8 h"));
        }
    }

    private void output(Verdict.Output output) {
        row(
                "output",
                quantity(Kind.RATE_LENGTH, output.speed(), "") + ", "
                        + texts.of(Kind.RATE_MASS, output.massFlow().mean()) + ", "
                        + texts.share(output.utilisation().mean()) + " of rated");
        row(
                "scrap",
                texts.share(output.scrapShare().mean()) + ", "
                        + texts.of(Kind.MASS, output.scrapKilogramsPerShift().mean()) + " per 8 h");
    }

    private void joint(Verdict.Joint joint) {
        Summary time = joint.time();
        row(
                "joint time",
                "mean " + texts.time(time.mean().mean()) + "; 90 % at most " + texts.time(time.p90()) + ", 95 % "
                        + texts.time(time.p95()) + ", 99 % " + texts.time(time.p99()));
        row(
                "of it waiting",
                "mean " + texts.time(joint.waiting().mean().mean()) + ", at "
                        + texts.share(joint.shareWaiting().mean()) + " of coil changes");
    }

    private void storage(Verdict.Storage storage) {
        String refill = storage.refillTime()
                .map(time -> ", in " + texts.time(time.mean().mean()) + " on average")
                .orElse("");
        row(
                "full again",
                "before the next change in "
                        + texts.share(storage.shareRefilled().mean()) + " of cases" + refill);
        row(
                "margin",
                "least " + texts.length(storage.margin().least()) + ", half at most "
                        + texts.length(storage.margin().p50()) + " above the stop level");
        if (storage.stripBreaks() > 0) {
            row(
                    "strip breaks",
                    Texts.count(storage.stripBreaks()) + ": the level fell below 0; numbers after it are not physical");
        }
    }

    private void basis() {
        RunPlan run = result.study().request().run();
        String extent = run.extent() instanceof RunPlan.Extent.Changes changes
                ? Texts.count(changes.changes()) + " coil changes"
                : texts.time(((RunPlan.Extent.Time) run.extent()).duration());
        int warnings = result.warnings().size();
        row(
                "from",
                run.replications() + " x " + extent + ", seed " + run.seed() + ", (95 % intervals)"
                        + (warnings == 0 ? "" : "; " + warnings + (warnings == 1 ? " warning" : " warnings")));
    }

    private void row(String label, String value) {
        lines.row(label, value, COLUMN);
    }

    private String with(Estimate estimate, String per) {
        return texts.mean(estimate) + bracketed(texts.interval(estimate)) + " " + per;
    }

    private String quantity(Kind kind, Estimate estimate, String per) {
        return (texts.value(kind, estimate).known() + " " + per).strip();
    }

    private static String bracketed(Optional<String> interval) {
        return interval.map(text -> " (" + text + ")").orElse("");
    }

    private static String coloured(String text, VerdictHeadline.Mark mark) {
        String code = switch (mark) {
            case RUNS_THROUGH -> "32";
            case MARGINAL, SLOWS -> "33";
            case STOPS -> "31";
        };
        int start = text.indexOf("\n") + 1;
        int end = start + mark.word().length();
        return text.substring(0, start) + "\u001b[1;" + code + "m" + text.substring(start, end) + "\u001b[0m"
                + text.substring(end);
    }
}
