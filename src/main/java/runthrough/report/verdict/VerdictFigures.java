package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Unit;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.verdict.AnswerSheet.Named;
import runthrough.report.verdict.AnswerSheet.Which;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Summary;

/** The numbers of a verdict that matter most, and those that a terminal shows beside them. */
final class VerdictFigures {
    /** Less strip than this (m) is the rounding of the computer's own. */
    private static final double NOTHING = 1e-6;

    private final RunThroughResult result;
    private final Verdict verdict;
    private final Texts texts;

    VerdictFigures(RunThroughResult result) {
        this.result = result;
        this.verdict = result.verdict();
        this.texts = result.texts();
    }

    List<Figure> all() {
        return named().stream().map(Named::figure).toList();
    }

    List<Named> named() {
        List<Named> figures = new ArrayList<>();
        figures.add(new Named(
                Which.SHARE,
                Figure.of(
                        "run through",
                        texts.value(Kind.SHARE, verdict.shareRunThrough()).besides(verdict.target()),
                        result.isOneStrip()
                                ? "entry and process are one strip"
                                : verdict.chance() ? "" : "nothing is random")));
        verdict.spare()
                .ifPresent(margin -> figures.add(
                        new Named(Which.MARGIN, margin("at the target", margin, " of " + result.joint(), true))));
        verdict.withoutStop().ifPresent(second -> withoutStop(second, figures));
        Verdict.Stoppages stoppages = verdict.stoppages();
        figures.add(new Named(
                Which.STOPS,
                Figure.of(
                        result.stops() + " per 8 h",
                        texts.plain(stoppages.starvedPerShift()),
                        Texts.number(stoppages.starvedPerHundredChanges().mean()) + " per 100 coil changes")));
        figures.add(new Named(
                Which.LOST,
                Figure.of(
                        result.lost() + " per 8 h",
                        texts.value(Kind.TIME, stoppages.lostTimePerShift()),
                        texts.length(stoppages.lostMetresPerShift().mean()) + " of strip" + few(stoppages))));
        Summary joint = verdict.joint().time();
        Estimate good = verdict.output().speed();
        Value grossOutput = texts.value(
                texts.notation(Kind.RATE_LENGTH, good.mean()), verdict.output().grossSpeed());
        figures.add(new Named(
                Which.JOINT,
                Figure.of(
                        result.joint() + ", mean",
                        texts.value(Kind.TIME, joint.mean()),
                        "90 % at most " + texts.time(joint.p90()) + ", 95 % " + texts.time(joint.p95()) + ", 99 % "
                                + texts.time(joint.p99()))));
        figures.add(new Named(
                Which.OUTPUT,
                Figure.of(
                        "good output",
                        texts.value(Kind.RATE_LENGTH, good),
                        texts.of(Kind.RATE_MASS, verdict.output().massFlow().mean()) + "; gross "
                                + grossOutput.textLike(texts.value(Kind.RATE_LENGTH, good)) + ", yield "
                                + texts.share(verdict.output().goodShare().mean()) + ", "
                                + texts.share(verdict.output().utilisation().mean()) + " of rated")));
        return figures;
    }

    /** What to do where little was seen of what is lost. */
    private String few(Verdict.Stoppages stoppages) {
        boolean restsOnFew = texts.known(stoppages.lostTimePerShift().interval())
                .filter(ends -> ends.method() == Interval.Method.FEW_EVENTS)
                .isPresent();
        return restsOnFew
                ? "; rests on " + Texts.count(verdict.changes().failed(), "coil change")
                        + ", more replications would narrow it"
                : "";
    }

    private void withoutStop(Verdict.WithoutStop second, List<Named> figures) {
        String target = second.target().isPresent()
                ? "target " + Texts.target(second.target().getAsDouble()) + ", "
                        + second.answer().map(VerdictFigures::words).orElse("")
                : "run through or slowed";
        Value share = texts.value(Kind.SHARE, second.share());
        figures.add(new Named(
                Which.WITHOUT_STOP,
                Figure.of(
                        "without a stop",
                        second.target().isPresent()
                                ? share.besides(second.target().getAsDouble())
                                : share,
                        target)));
        second.spare()
                .ifPresent(margin -> figures.add(new Named(
                        Which.MARGIN_WITHOUT_STOP,
                        margin("without a stop", margin, " at the rated speed", second.isSpeedHeld()))));
    }

    private static String words(TargetStatus answer) {
        return switch (answer) {
            case MEETS -> "met";
            case MISSES -> "missed";
            case UNDECIDED -> "not decided";
        };
    }

    /** The speed is left out where its closed form does not hold, or at this coil change points the other way. */
    private Figure margin(String of, Verdict.Spare found, String time, boolean isSpeedHeld) {
        Verdict.Spare margin = Math.abs(found.metres()) < NOTHING ? new Verdict.Spare(0, 0, 0) : found;
        boolean isMargin = margin.metres() >= 0;
        boolean hasSpeed = isSpeedHeld && isMargin == (margin.speed() >= 0);
        return Figure.of(
                (isMargin ? "margin " : "shortfall ") + of,
                texts.marginSize(Kind.LENGTH, margin.metres()),
                texts.marginSize(Kind.TIME, margin.seconds()).text()
                        + time
                        + (hasSpeed
                                ? "; "
                                        + texts.marginSize(Kind.SPEED, margin.speed())
                                                .text()
                                : ""));
    }

    /** What a terminal shows beside the figures; pages have it in their tables. */
    Table details() {
        List<List<Cell>> rows = new ArrayList<>();
        Verdict.Changes changes = verdict.changes();
        rows.add(row(
                "coil changes",
                Texts.count(changes.total()) + ": " + Texts.count(changes.ranThrough()) + " ran through, "
                        + Texts.count(changes.slowed()) + " slowed, " + Texts.count(changes.stopped()) + " stopped"));
        Value downtime = texts.plain(verdict.stoppages().downtimesPerShift());
        if (downtime.si() > 0) {
            rows.add(row("process downtime", downtime.known() + " stops per 8 h"));
        }
        rows.add(row(
                "scrap",
                texts.share(verdict.output().scrapShare().mean()) + ", "
                        + texts.of(
                                Kind.MASS,
                                verdict.output().scrapKilogramsPerShift().mean()) + " per 8 h"));
        verdict.passages()
                .ifPresent(passages -> rows.add(row(
                        "joint passages",
                        texts.length(passages.lostMetresPerShift().mean()) + " of strip not run per 8 h, "
                                + texts.share(passages.share().mean()) + " of rated")));
        verdict.breaks().ifPresent(breaks -> breaks(breaks, rows));
        waiting(verdict.joint(), rows);
        rows.add(row(
                "paid hours",
                Notation.of(Unit.HOUR)
                                .number(verdict.output().paidTimePerShift().mean()) + " per 8 h"));
        verdict.storage().ifPresent(storage -> storage(storage, rows));
        return Table.pairs("What else the run shows", rows).in(Table.Seen.TERMINAL);
    }

    private void breaks(Verdict.Breaks breaks, List<List<Cell>> rows) {
        rows.add(row(
                "joint breaks",
                texts.plain(breaks.perShift()).known() + " per 8 h, repair "
                        + texts.time(breaks.repairPerShift().mean())));
        rows.add(row(
                "lost time (joint breaks)",
                texts.time(breaks.lostTimePerShift().mean()) + " per 8 h ("
                        + texts.length(breaks.lostMetresPerShift().mean()) + " of strip)"));
    }

    /** For preparation and for people apart, as far as there is any. */
    private void waiting(Verdict.Joint joint, List<List<Cell>> rows) {
        if (joint.waiting().share().mean() == 0) {
            rows.add(row("waiting", "at no coil change"));
        }
        waiting("waiting for preparation", joint.forPreparation(), rows);
        waiting("waiting for people", joint.forPeople(), rows);
    }

    private void waiting(String name, Verdict.Waiting waiting, List<List<Cell>> rows) {
        if (waiting.share().mean() > 0) {
            rows.add(row(
                    name,
                    "mean " + texts.time(waiting.time().mean().mean()) + ", at "
                            + texts.share(waiting.share().mean()) + " of coil changes"));
        }
    }

    private void storage(Verdict.Storage storage, List<List<Cell>> rows) {
        Optional<String> refill = storage.refillTime()
                .map(time -> ", in " + texts.time(time.mean().mean()) + " on average");
        rows.add(row(
                "refilled",
                "at " + texts.share(storage.shareRefilled().mean()) + " of coil changes" + refill.orElse("")));
        rows.add(row(result.margin(), least(storage.marginToRunThrough())));
        storage.marginWithoutStop().ifPresent(margin -> rows.add(row("margin without a stop", least(margin))));
        if (storage.stripBreaks() > 0) {
            rows.add(row(
                    "strip breaks",
                    Texts.count(storage.stripBreaks())
                            + ": the level fell below 0; numbers after it are not physical"));
        }
    }

    private String least(Summary margin) {
        return "least " + texts.margin(Kind.LENGTH, margin.least()).text() + ", median "
                + texts.margin(Kind.LENGTH, margin.p50()).text();
    }

    private static List<Cell> row(String name, String value) {
        return List.of(Cell.of(name), Cell.of(value));
    }
}
