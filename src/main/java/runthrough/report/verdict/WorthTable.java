package runthrough.report.verdict;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.Unit;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.TotalsEstimates;
import runthrough.study.lever.CauseWorth;
import runthrough.study.statistics.Estimate;

/** What it would be worth to remove the causes that matter most, in a year, beside the stops that a year has. */
final class WorthTable {
    private static final double THOUSAND = 1000;

    private final RunThroughResult result;
    private final Texts texts;
    private final TableMaker<CauseWorth> table;

    private WorthTable(RunThroughResult result) {
        this.result = result;
        this.texts = result.texts();
        this.table = TableMaker.of(caption());
    }

    static Table of(RunThroughResult result) {
        return new WorthTable(result).table();
    }

    private Table table() {
        table.pageWords(
                texts.random() ? "without (95 % interval)" : "without", worth -> RemovalWords.name(worth.reason()));
        table.fileWords("without", worth -> RemovalWords.name(worth.reason()));
        column("fewer stops", Notation.PLAIN.with(Rounding.AMOUNT), CauseWorth::stops);
        column("less time lost", Notation.of(Unit.HOUR), CauseWorth::lostTime);
        strip(texts.notation(Kind.LENGTH));
        file("more run through", Notation.POINTS, CauseWorth::shareRunThrough);
        return table.fileNumber("replications", Notation.PLAIN, CauseWorth::replications)
                .intoFile("worth.csv")
                .of(result.worths().stream()
                        .sorted(Comparator.comparing((CauseWorth worth) -> RemovalWords.isAll(worth.reason())))
                        .toList())
                .in(Table.Seen.FIRST);
    }

    /** What there is in a year stands in it, since no cause can be worth more; and over what the worth was found. */
    private String caption() {
        double year = result.study().request().run().yearlyTime();
        double stops = result.verdict().stoppages().starvedPerShift().mean() * year / TotalsEstimates.SHIFT;
        int all = result.study().totals().size();
        int held = result.worths().stream()
                .mapToInt(CauseWorth::replications)
                .max()
                .orElse(all);
        return "Worth of removing a cause, of "
                + Notation.PLAIN.with(Rounding.AMOUNT).number(stops) + " stops in a year of "
                + texts.of(Kind.TIME, year)
                + (texts.random()
                        ? "; " + (held < all ? "the first " + Texts.count(held) + " of " : "")
                                + Texts.count(all, "replication")
                        : "");
    }

    /** Strip of a year, for people in thousands: millions of metres have more digits than anybody reads. */
    private void strip(Notation length) {
        String heading = "more good strip";
        page(heading, thousands(length), WorthTable::thousands);
        file(heading, length, CauseWorth::goodOutput);
    }

    /** How {@link #thousands(CauseWorth)} is written, {@code length} being the user's unit. */
    static Notation thousands(Notation length) {
        return length.called(length.symbol().equals("m") ? "km" : "1000 " + length.symbol());
    }

    /** Good strip of a year, by the thousand. */
    static Estimate thousands(CauseWorth worth) {
        return worth.goodOutput().times(1 / THOUSAND);
    }

    /** A number with its interval in brackets for people, in two columns for a file. */
    private void column(String heading, Notation notation, Function<CauseWorth, Estimate> value) {
        page(heading, notation, value);
        file(heading, notation, value);
    }

    private void page(String heading, Notation notation, Function<CauseWorth, Estimate> value) {
        table.with(
                new Column(heading, Column.Holds.NUMBERS, Optional.of(notation), Column.Place.PAGE),
                worth -> Cell.gain(texts.value(notation, value.apply(worth))));
    }

    private void file(String heading, Notation notation, Function<CauseWorth, Estimate> value) {
        table.fileNumber(heading, notation, worth -> value.apply(worth).mean());
        table.with(
                new Column("95 % interval", Column.Holds.ENDS, Optional.of(notation), Column.Place.FILE),
                worth -> new Cell.Ends(file(value.apply(worth), notation)));
    }

    private static Value file(Estimate estimate, Notation notation) {
        return new Value(estimate.mean(), notation, estimate.interval());
    }
}
