package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Unit;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.Verdict;
import runthrough.study.cause.Cause;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Summary;

/** The results in full: what came of the coil changes, means with their intervals, and how the coil changes spread. */
final class VerdictTables {
    /** As many causes as a terminal shows beside the verdict. */
    private static final int MAIN_CAUSES = 10;

    private final RunThroughResult result;
    private final Verdict verdict;
    private final Texts texts;

    VerdictTables(RunThroughResult result) {
        this.result = result;
        this.verdict = result.verdict();
        this.texts = result.texts();
    }

    static List<Table> of(RunThroughResult result) {
        VerdictTables tables = new VerdictTables(result);
        List<Table> all = new ArrayList<>(List.of(tables.outcomes()));
        if (!result.verdict().shifts().isEmpty()) {
            all.add(ShiftTable.of(result));
        }
        all.addAll(List.of(tables.means(), tables.spreads()));
        return all;
    }

    private record Outcome(String name, long count) {}

    private Table outcomes() {
        Verdict.Changes changes = verdict.changes();
        List<Outcome> rows = new ArrayList<>(List.of(
                new Outcome("Ran through: no stop and no slowing for lack of strip", changes.ranThrough()),
                new Outcome("Slowed: the process ran slower on a low level", changes.slowed()),
                new Outcome("Stopped: " + result.stops(), changes.stopped())));
        rows.add(new Outcome("All", changes.total()));
        return TableMaker.<Outcome>of("Outcomes of the coil changes")
                .words("", Outcome::name)
                .count("Coil changes", Outcome::count)
                .number("Share", Notation.SHARE, row -> (double) row.count() / changes.total())
                .of(rows)
                .in(Table.Seen.PAGE);
    }

    /** Causes by named element, those of most coil changes first; where the practice is the only one it says nothing new. */
    Table causes() {
        long failed = verdict.changes().failed();
        Notation lost = texts.notation(
                Kind.TIME,
                verdict.namedCauses().stream()
                        .mapToDouble(NamedCauses.Count::lostTime)
                        .max()
                        .orElse(0));
        boolean isPractice =
                verdict.namedCauses().stream().allMatch(count -> count.reason().cause() == Cause.PRACTICE);
        return TableMaker.<NamedCauses.Count>of("Causes of the coil changes that did not run through")
                .pageWords("Cause", count -> count.reason().words())
                .count("Changes", NamedCauses.Count::changes)
                .number("Share", Notation.SHARE, count -> (double) count.changes() / failed)
                .count("Stops", NamedCauses.Count::starvedStops)
                .with(
                        new Column("Lost time", Column.Holds.NUMBERS, Optional.of(lost), Column.Place.PAGE),
                        count -> Cell.of(Value.of(count.lostTime(), lost)))
                .fileNumber("Lost time", Notation.SECONDS, NamedCauses.Count::lostTime)
                .shownUpTo(MAIN_CAUSES)
                .fileWords("cause", count -> count.reason().cause().words())
                .fileWords("list", count -> element(count, element -> list(element)))
                .fileWords("element", count -> element(count, Reason.Element::name))
                .intoFile("causes.csv")
                .of(verdict.namedCauses())
                .in(isPractice ? Table.Seen.PAGE : Table.Seen.FIRST);
    }

    private static String element(NamedCauses.Count count, Function<Reason.Element, String> of) {
        return count.reason().element().map(of).orElse("");
    }

    private static String list(Reason.Element element) {
        return element.list().name().toLowerCase(Locale.ROOT);
    }

    /** A cause in words, with the element that it is named by. */
    private record Mean(String name, Value value) {}

    private Table means() {
        return TableMaker.<Mean>of("Means over the replications")
                .words("", Mean::name)
                .cell("Mean", row -> Cell.of(row.value()))
                .with(
                        new Column("95 % interval", Column.Holds.ENDS, Optional.empty(), Column.Place.EVERYWHERE),
                        row -> new Cell.Ends(row.value()))
                .of(rows())
                .in(Table.Seen.PAGE);
    }

    private List<Mean> rows() {
        List<Mean> rows = new ArrayList<>();
        rows.add(mean("Share of coil changes run through", Kind.SHARE, verdict.shareRunThrough()));
        verdict.withoutStop()
                .ifPresent(
                        second -> rows.add(mean("Share of coil changes without a stop", Kind.SHARE, second.share())));
        Verdict.Stoppages stoppages = verdict.stoppages();
        rows.add(plain(result.stops() + " per 100 coil changes", stoppages.starvedPerHundredChanges()));
        rows.add(plain(result.stops() + " per 8 h", stoppages.starvedPerShift()));
        rows.add(plain("slowings on a low level per 8 h", stoppages.slowingsPerShift()));
        rows.add(plain("stops of process downtime per 8 h", stoppages.downtimesPerShift()));
        rows.add(mean("strip not run per 8 h", Kind.LENGTH, stoppages.lostMetresPerShift()));
        rows.add(mean(result.lost() + " per 8 h", Kind.TIME, stoppages.lostTimePerShift()));
        verdict.passages().ifPresent(passages -> {
            rows.add(mean("strip not run in joint passages per 8 h", Kind.LENGTH, passages.lostMetresPerShift()));
            rows.add(mean("the same over strip at rated speed", Kind.SHARE, passages.share()));
        });
        verdict.breaks().ifPresent(breaks -> {
            rows.add(plain("joint breaks per 8 h", breaks.perShift()));
            rows.add(mean("strip not run for joint breaks per 8 h", Kind.LENGTH, breaks.lostMetresPerShift()));
            rows.add(mean("lost time (joint breaks) per 8 h", Kind.TIME, breaks.lostTimePerShift()));
            rows.add(mean("repair of joint breaks per 8 h", Kind.TIME, breaks.repairPerShift()));
        });
        Verdict.Output output = verdict.output();
        rows.add(mean("good output, strip", Kind.RATE_LENGTH, output.speed()));
        rows.add(mean("good output, mass", Kind.RATE_MASS, output.massFlow()));
        rows.add(mean("gross output, strip", Kind.RATE_LENGTH, output.grossSpeed()));
        rows.add(mean("gross output, mass", Kind.RATE_MASS, output.grossMassFlow()));
        rows.add(mean("yield: good over gross output, by mass", Kind.SHARE, output.goodShare()));
        rows.add(mean("utilisation: strip run over strip at rated speed", Kind.SHARE, output.utilisation()));
        rows.add(mean("scrap, strip per 8 h", Kind.LENGTH, output.scrapMetresPerShift()));
        rows.add(mean("scrap, mass per 8 h", Kind.MASS, output.scrapKilogramsPerShift()));
        rows.add(mean("scrap, share of mass", Kind.SHARE, output.scrapShare()));
        rows.add(plain("coil changes per 8 h", output.changesPerShift()));
        rows.add(new Mean("paid hours per 8 h", texts.value(Notation.of(Unit.HOUR), output.paidTimePerShift())));
        Verdict.Joint joint = verdict.joint();
        rows.add(mean(
                "waiting for preparation at a coil change",
                Kind.TIME,
                joint.forPreparation().time().mean()));
        rows.add(mean(
                "waiting for people at a coil change",
                Kind.TIME,
                joint.forPeople().time().mean()));
        rows.add(mean(
                "share of coil changes that waited for preparation",
                Kind.SHARE,
                joint.forPreparation().share()));
        rows.add(mean(
                "share of coil changes that waited for people",
                Kind.SHARE,
                joint.forPeople().share()));
        verdict.storage().ifPresent(storage -> {
            rows.add(mean("share of coil changes refilled before the next", Kind.SHARE, storage.shareRefilled()));
            rows.add(mean("level, average over time", Kind.LENGTH, storage.meanLevel()));
            rows.add(new Mean("lowest level", texts.value(Kind.LENGTH, storage.lowestLevel())));
            rows.add(new Mean("largest overtravel above the capacity", texts.value(Kind.LENGTH, storage.overtravel())));
            rows.add(new Mean("times above the capacity and its allowance", Value.plain((double) storage.overfull())));
            rows.add(new Mean("strip breaks: level below 0", Value.plain((double) storage.stripBreaks())));
        });
        return rows;
    }

    private Mean mean(String name, Kind kind, Estimate estimate) {
        return new Mean(name, texts.value(kind, estimate));
    }

    private Mean plain(String name, Estimate estimate) {
        return new Mean(name, texts.plain(estimate));
    }

    /** {@code single} is how the value of one coil change is written, {@code notation} how all else is. */
    private record Spread(String name, Notation notation, Notation single, Summary summary) {}

    private Table spreads() {
        List<Spread> rows = new ArrayList<>();
        rows.add(spread(result.joint(), Kind.TIME, verdict.joint().time()));
        rows.add(spread(
                "waiting for preparation",
                Kind.TIME,
                verdict.joint().forPreparation().time()));
        rows.add(spread(
                "waiting for people", Kind.TIME, verdict.joint().forPeople().time()));
        verdict.storage().ifPresent(storage -> {
            rows.add(spread("strip drawn", Kind.LENGTH, storage.stripDrawn()));
            rows.add(margin("margin", storage.margin()));
            storage.marginToSlowing().ifPresent(margin -> rows.add(margin("margin to slowing", margin)));
            storage.marginWithoutStop().ifPresent(margin -> rows.add(margin("margin without a stop", margin)));
            storage.refillTime().ifPresent(refill -> rows.add(spread("refill time", Kind.TIME, refill)));
        });
        TableMaker<Spread> table = TableMaker.<Spread>of(
                        "Distribution over the coil changes: the value that so many stay below")
                .words(
                        "",
                        row -> row.name() + ", "
                                + (row.notation().isClock()
                                        ? "min:s"
                                        : row.notation().symbol()));
        add(table, "Mean", Spread::notation, summary -> summary.mean().mean());
        add(table, "Standard deviation", Spread::notation, Summary::sd);
        add(table, "Least", Spread::single, Summary::least);
        add(table, "1 %", Spread::single, Summary::p01);
        add(table, "5 %", Spread::single, Summary::p05);
        add(table, "50 %", Spread::single, Summary::p50);
        add(table, "90 %", Spread::single, Summary::p90);
        add(table, "95 %", Spread::single, Summary::p95);
        add(table, "99 %", Spread::single, Summary::p99);
        add(table, "Most", Spread::single, Summary::greatest);
        return table.of(rows).in(Table.Seen.PAGE);
    }

    private Spread spread(String name, Kind kind, Summary summary) {
        Notation notation = texts.notation(kind, kind == Kind.TIME ? summary.p99() : summary.p95());
        return new Spread(name, notation, notation, summary);
    }

    /** What there is at least is rounded down, as in the figures. */
    private Spread margin(String name, Summary summary) {
        Notation notation = texts.notation(Kind.LENGTH, summary.p95());
        return new Spread(name, notation, notation.atMost(), summary);
    }

    /** A column whose unit stands with the name of the row. */
    private static void add(
            TableMaker<Spread> table,
            String heading,
            Function<Spread, Notation> notation,
            ToDoubleFunction<Summary> value) {
        table.cell(heading, row -> {
            double si = value.applyAsDouble(row.summary());
            return new Cell.Quantity(Value.of(si, notation.apply(row).called("")), "");
        });
    }
}
