package runthrough.report.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.VarianceShares;
import runthrough.study.sensitivity.VarianceShares.Share;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** Shares of random sources in the variance of what a line gives: a table for each measure, and all of them as a file. */
final class VarianceTables {
    private static final String FILE = "shares-of-variance.csv";
    /** An index of less than this is rounding. */
    private static final double NEGLIGIBLE = 1e-6;

    private final List<VarianceShares> randomness;
    private final Texts texts;

    VarianceTables(List<VarianceShares> randomness, Texts texts) {
        this.randomness = randomness;
        this.texts = texts;
    }

    /** The tables of the measures that vary, then the file. */
    List<Table> all() {
        List<Table> tables = new ArrayList<>();
        randomness.stream().filter(VarianceShares::varies).map(this::table).forEach(tables::add);
        tables.add(file());
        return tables;
    }

    private Table table(VarianceShares shares) {
        TableMaker<Row> table = TableMaker.<Row>of(
                        "Shares in the variance of " + VarianceWords.name(shares.measure()) + " (" + size(shares) + ")")
                .words("source", Row::name);
        known(table, "first-order", Row::first);
        known(table, "total", Row::total);
        return table.of(Stream.concat(
                        shares.sources().stream().map(Row::of),
                        Stream.of(new Row("sum of first-order", Part.shown(shares.firstOrders()), Part.NOTHING)))
                .toList());
    }

    private String size(VarianceShares shares) {
        return switch (shares.measure()) {
            case RUN_THROUGH -> "mean " + texts.share(shares.mean());
            case MARGIN -> "standard deviation " + texts.length(shares.sd());
            case JOINT_CYCLE_TIME, LOST_TIME -> "standard deviation " + texts.time(shares.sd());
        };
    }

    private static void known(TableMaker<Row> table, String heading, Function<Row, Part> part) {
        Optional<Notation> share = Optional.of(Notation.SHARE);
        table.with(
                new Column(heading, Column.Holds.NUMBERS, share, Column.Place.EVERYWHERE),
                row -> new Cell.Quantity(
                        part.apply(row).value(), part.apply(row).without()));
        table.with(
                new Column("95 % interval", Column.Holds.ENDS, share, Column.Place.EVERYWHERE),
                row -> new Cell.Ends(part.apply(row).value()));
    }

    private Table file() {
        return TableMaker.<Source>of("Shares of variance")
                .intoFile(FILE)
                .shownUpTo(0)
                .words("measure", source -> VarianceWords.name(source.measure()))
                .words("random source", source -> source.share().source().label())
                .estimate(
                        "first order",
                        Notation.SHARE,
                        true,
                        "",
                        source -> value(source.share().index().first()))
                .estimate(
                        "total",
                        Notation.SHARE,
                        true,
                        "",
                        source -> value(source.share().index().total()))
                .of(randomness.stream()
                        .flatMap(shares -> shares.sources().stream().map(share -> new Source(shares.measure(), share)))
                        .toList());
    }

    private static Value value(Estimate index) {
        return new Value(index.mean(), Notation.SHARE, index.interval());
    }

    /** What the error of estimation takes below none or above all is neither. */
    static Value within(Estimate index) {
        return new Value(
                within(index.mean()),
                Notation.SHARE,
                index.interval()
                        .filter(ends -> within(ends.low()) < within(ends.high()))
                        .map(ends -> new Interval(within(ends.low()), within(ends.high()), ends.method())));
    }

    private static double within(double index) {
        return Math.max(0, Math.min(1, index));
    }

    /** A source and a measure in whose variance it has a share. */
    private record Source(ChangeMeasure measure, Share share) {}

    /** A row of a table. */
    private record Row(String name, Part first, Part total) {
        static Row of(Share share) {
            return new Row(
                    share.source().label(),
                    Part.of(share.index().first(), share.index().isFirstShown()),
                    Part.of(share.index().total(), share.index().isShown()));
        }
    }

    /** A share, or what stands in its place: one that is not shown has its interval only. */
    private record Part(Value value, String without) {
        static final Part NOTHING = new Part(Value.of(Double.NaN, Notation.SHARE), "");

        static Part of(Estimate index, boolean isShown) {
            if (isShown) {
                return shown(index);
            }
            Optional<Interval> interval = within(index).interval().filter(ends -> ends.high() > NEGLIGIBLE);
            return new Part(
                    new Value(Double.NaN, Notation.SHARE, interval), interval.isPresent() ? "none shown" : "none");
        }

        static Part shown(Estimate index) {
            return new Part(within(index), "");
        }
    }
}
