package runthrough.report.lever;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Value;
import runthrough.study.lever.LeverChange;
import runthrough.study.lever.Levers;
import runthrough.study.lever.Way;

/** Ways to meet the targets, of one change or two, in the order of their rank, as a table. */
public final class WayTable {
    private WayTable() {}

    /** The table of the ways of {@code levers}, of which there are some. */
    public static Table of(Levers levers) {
        List<Way> ways = levers.ways();
        WayWords words = WayWords.of(levers.request());
        boolean several = ways.stream().map(Way::goal).distinct().count() > 1;
        Optional<String> currency = ways.stream()
                .flatMap(way -> way.cost().stream())
                .map(cost -> cost.currency())
                .findFirst();
        TableMaker<Way> table =
                TableMaker.<Way>of("Ways to meet the target, of one change or two, " + WayWords.order(ways));
        table.words("change", words::sentence);
        if (several) {
            table.pageWords("target", way -> LeverTable.goal(way.goal()));
        }
        table.fileWords("target", way -> LeverTable.goal(way.goal()));
        currency.ifPresent(name -> table.with(
                new Column(
                        name + " a year",
                        Column.Holds.NUMBERS,
                        Optional.of(Notation.PLAIN.with(Rounding.AMOUNT)),
                        Column.Place.EVERYWHERE),
                way -> new Cell.Quantity(
                        Value.of(way.rank().perYear(), Notation.PLAIN.with(Rounding.AMOUNT)), "not given")));
        table.number("changed in all", Notation.SHARE, way -> way.rank().part());
        for (int i = 0; i < 2; i++) {
            int place = i;
            String which = i == 0 ? "first" : "second";
            table.fileWords(
                            which + " lever",
                            way -> at(way, place)
                                    .map(change -> LeverWords.name(change.lever()))
                                    .orElse(""))
                    .with(file(which + " now (SI)"), way -> cell(way, place, LeverChange::present))
                    .with(file(which + " value (SI)"), way -> cell(way, place, LeverChange::value));
        }
        return table.intoFile("ways.csv").of(ways);
    }

    private static Column file(String heading) {
        return new Column(heading, Column.Holds.NUMBERS, Optional.empty(), Column.Place.FILE);
    }

    private static Cell cell(Way way, int place, ToDoubleFunction<LeverChange> value) {
        return Cell.of(Value.of(
                at(way, place)
                        .map(change -> OptionalDouble.of(value.applyAsDouble(change)))
                        .orElseGet(OptionalDouble::empty),
                Notation.PLAIN));
    }

    private static Optional<LeverChange> at(Way way, int place) {
        return way.changes().stream().skip(place).findFirst();
    }
}
