package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.study.Cause;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Summary;

/** The results in full: what came of the coil changes, means with their intervals, and how the coil changes spread. */
final class ResultTables {
    private final Verdict verdict;
    private final Texts texts;
    private final String want;

    private ResultTables(RunThroughResult result) {
        this.verdict = result.verdict();
        this.want = result.want();
        this.texts = result.texts();
    }

    static List<Table> of(RunThroughResult result) {
        ResultTables tables = new ResultTables(result);
        List<Table> all = new ArrayList<>(List.of(tables.outcomes(), tables.means(), tables.spreads()));
        CoilTexts.of(result).ifPresent(coils -> {
            all.add(coils.products());
            coils.hardest().ifPresent(all::add);
        });
        return all;
    }

    private Table outcomes() {
        Verdict.Changes changes = verdict.changes();
        List<List<String>> rows = new ArrayList<>();
        rows.add(outcome("Ran through: the process held its rated speed", changes.ranThrough()));
        rows.add(outcome("Slowed: the process ran slower on a low level", changes.slowed()));
        rows.add(outcome("Stopped: the process stopped " + want, changes.stopped()));
        for (Cause cause : Cause.values()) {
            if (verdict.causes().count(cause) > 0) {
                rows.add(outcome(
                        "Of these, " + attributedTo(cause), verdict.causes().count(cause)));
            }
        }
        rows.add(outcome("All", changes.total()));
        return Table.words("What came of the coil changes", List.of("", "Coil changes", "Share"), rows, true);
    }

    private List<String> outcome(String name, long count) {
        return List.of(
                name,
                Texts.count(count),
                texts.share((double) count / verdict.changes().total()));
    }

    private static String attributedTo(Cause cause) {
        return switch (cause) {
            case PRACTICE -> "because entry and process are one strip";
            case PREPARATION -> "because the joint waited for preparation";
            case REFILL -> "because the accumulator was not full at the start";
            case CAPACITY -> "because a full accumulator would not have lasted";
        };
    }

    private Table means() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(mean("Share of coil changes run through", Kind.SHARE, verdict.shareRunThrough()));
        Verdict.Stoppages stoppages = verdict.stoppages();
        rows.add(plain("Stops " + want + " per 100 coil changes", stoppages.starvedPerHundredChanges()));
        rows.add(plain("Stops " + want + " per 8 h", stoppages.starvedPerShift()));
        rows.add(plain("Slowings on a low level per 8 h", stoppages.slowingsPerShift()));
        rows.add(plain("Stops of the process's own per 8 h", stoppages.downtimesPerShift()));
        rows.add(mean("Strip not run " + want + ", per 8 h", Kind.LENGTH, stoppages.lostMetresPerShift()));
        rows.add(mean("Time lost " + want + ", per 8 h", Kind.TIME, stoppages.lostTimePerShift()));
        Verdict.Output output = verdict.output();
        rows.add(mean("Output, strip", Kind.RATE_LENGTH, output.speed()));
        rows.add(mean("Output, mass", Kind.RATE_MASS, output.massFlow()));
        rows.add(mean("Utilisation: strip run over strip at rated speed", Kind.SHARE, output.utilisation()));
        rows.add(mean("Scrap, strip per 8 h", Kind.LENGTH, output.scrapMetresPerShift()));
        rows.add(mean("Scrap, mass per 8 h", Kind.MASS, output.scrapKilogramsPerShift()));
        rows.add(mean("Scrap, share of mass", Kind.SHARE, output.scrapShare()));
        rows.add(plain("Coil changes per 8 h", output.changesPerShift()));
        rows.add(mean(
                "Share of coil changes that waited for preparation",
                Kind.SHARE,
                verdict.joint().shareWaiting()));
        verdict.storage().ifPresent(storage -> {
            rows.add(mean("Share of coil changes refilled before the next", Kind.SHARE, storage.shareRefilled()));
            rows.add(mean("Level, average over time", Kind.LENGTH, storage.meanLevel()));
            rows.add(List.of("Lowest level", texts.length(storage.lowestLevel()), ""));
            rows.add(List.of("Largest overtravel above the capacity", texts.length(storage.overtravel()), ""));
            rows.add(List.of("Times above the capacity and its allowance", Texts.count(storage.overfull()), ""));
            rows.add(List.of("Strip breaks: level below 0", Texts.count(storage.stripBreaks()), ""));
        });
        return Table.words("Means over the replications", List.of("", "Mean", "95 % interval"), rows, true);
    }

    private List<String> mean(String name, Kind kind, Estimate estimate) {
        return List.of(
                name, texts.mean(kind, estimate), texts.interval(kind, estimate).orElse(""));
    }

    private List<String> plain(String name, Estimate estimate) {
        return List.of(name, texts.mean(estimate), texts.interval(estimate).orElse(""));
    }

    private Table spreads() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(spread("Joint time", Kind.TIME, verdict.joint().time()));
        rows.add(spread("Waiting for preparation", Kind.TIME, verdict.joint().waiting()));
        verdict.storage().ifPresent(storage -> {
            rows.add(spread("Strip drawn", Kind.LENGTH, storage.stripDrawn()));
            rows.add(spread("Margin above the stop level", Kind.LENGTH, storage.margin()));
            storage.refillTime().ifPresent(refill -> rows.add(spread("Refill time", Kind.TIME, refill)));
        });
        List<String> head = List.of(
                "", "Mean", "Standard deviation", "Least", "1 %", "5 %", "50 %", "90 %", "95 %", "99 %", "Most");
        return Table.words("How the coil changes spread: the value that so many stay below", head, rows, true);
    }

    private List<String> spread(String name, Kind kind, Summary summary) {
        Notation unit = texts.notation(kind, summary.p95());
        List<String> row = new ArrayList<>();
        row.add(name + ", " + unit.symbol());
        double[] values = {
            summary.mean().mean(),
            summary.sd(),
            summary.least(),
            summary.p01(),
            summary.p05(),
            summary.p50(),
            summary.p90(),
            summary.p95(),
            summary.p99(),
            summary.greatest()
        };
        for (double value : values) {
            row.add(unit.number(value));
        }
        return row;
    }
}
