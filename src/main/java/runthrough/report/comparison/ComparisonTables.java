package runthrough.report.comparison;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.LargestCause;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.described.LineDifferences;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Interval;

/** The tables of a comparison: all side by side, every difference with its interval and its word, what is changed, the file. */
final class ComparisonTables {
    private static final String FILE = "alternatives.csv";
    private static final String CHANGES = "changes.csv";

    private final Comparison comparison;
    private final ComparisonFigures figures;
    private final Texts texts;
    private final String year;

    private ComparisonTables(Comparison comparison, ComparisonFigures figures, Texts texts) {
        this.comparison = comparison;
        this.figures = figures;
        this.texts = texts;
        this.year = "a year of " + texts.time(comparison.yearlyTime());
    }

    static List<Table> of(Comparison comparison, ComparisonFigures figures, Texts texts) {
        ComparisonTables tables = new ComparisonTables(comparison, figures, texts);
        return Stream.of(
                        Stream.of(
                                tables.shift(), tables.withoutStop(), tables.causes(), tables.output(), tables.year()),
                        tables.differences(),
                        Stream.of(tables.changes(), tables.file()))
                .flatMap(Function.identity())
                .toList();
    }

    private Table shift() {
        TableMaker<Compared> table = side("Side by side: coil changes, and what they cost in 8 h");
        column(table, "through", figures.now(ComparisonMeasure.RUN_THROUGH));
        column(table, "stops", figures.now(ComparisonMeasure.STOPS));
        column(table, "lost", figures.now(ComparisonMeasure.LOST_TIME));
        column(table, "joint", figures.now(ComparisonMeasure.JOINT_CYCLE_TIME));
        column(table, "paid", figures.now(ComparisonMeasure.PAID_TIME));
        column(table, "at the joint", figures.now(ComparisonMeasure.CREW_TIME));
        return table.of(comparison.all());
    }

    /** Of those that have a target for it. */
    private Table withoutStop() {
        return side("Side by side: coil changes without a stop")
                .with(
                        numbers("share", texts.notation(Kind.SHARE)),
                        one -> new Cell.Known(
                                texts.value(Kind.SHARE, one.withoutStop().orElseThrow()), ""))
                .words("target", this::targetWithoutStop)
                .of(comparison.all().stream()
                        .filter(one -> one.withoutStop().isPresent())
                        .toList());
    }

    private String targetWithoutStop(Compared one) {
        return texts.share(one.alternative().request().run().targetWithoutStop().orElseThrow());
    }

    private Table output() {
        TableMaker<Compared> table = side("Side by side: output and scrap");
        column(table, "length", figures.now(ComparisonMeasure.OUTPUT_LENGTH));
        column(table, "mass", figures.now(ComparisonMeasure.OUTPUT_MASS));
        column(table, "yield", figures.now(ComparisonMeasure.YIELD));
        column(table, "of rated", figures.now(ComparisonMeasure.UTILISATION));
        column(table, "scrap", figures.now(ComparisonMeasure.SCRAP_SHARE));
        return table.of(comparison.all());
    }

    private Table causes() {
        return side("What most failures are attributed to")
                .words("", ComparisonTables::limitingFactor)
                .of(comparison.all());
    }

    private static String limitingFactor(Compared one) {
        return LargestCause.of(one.causes()).orElse("nothing");
    }

    private Table year() {
        TableMaker<Compared> table = side("Side by side: " + year);
        column(table, "output", figures.yearly(ComparisonMeasure.OUTPUT_MASS));
        column(table, "stops", figures.yearly(ComparisonMeasure.STOPS));
        column(table, "lost", figures.yearly(ComparisonMeasure.LOST_TIME));
        column(table, "scrap", figures.yearly(ComparisonMeasure.SCRAP_MASS));
        column(table, "paid", figures.yearly(ComparisonMeasure.PAID_TIME));
        column(table, "at the joint", figures.yearly(ComparisonMeasure.CREW_TIME));
        return table.of(comparison.all());
    }

    private static TableMaker<Compared> side(String caption) {
        return TableMaker.<Compared>of(caption).words("", ComparisonTables::name);
    }

    private static void column(TableMaker<Compared> table, String heading, ComparisonFigure figure) {
        table.with(numbers(heading, figure.notation()), one -> Cell.of(figure.value(one)));
    }

    private Stream<Table> differences() {
        return Stream.of(
                        figures.yearly(ComparisonMeasure.OUTPUT_MASS),
                        figures.yearly(ComparisonMeasure.LOST_TIME),
                        figures.now(ComparisonMeasure.RUN_THROUGH),
                        figures.yearly(ComparisonMeasure.SCRAP_MASS),
                        figures.yearly(ComparisonMeasure.PAID_TIME),
                        figures.yearly(ComparisonMeasure.CREW_TIME))
                .map(this::differences);
    }

    private Table differences(ComparisonFigure figure) {
        String name = figure.name();
        Notation notation = figure.notationOfDifferences();
        return TableMaker.<Compared>of(Character.toUpperCase(name.charAt(0)) + name.substring(1) + ", less that of \""
                        + name(comparison.today()) + "\"")
                .words("", ComparisonTables::name)
                .with(numbers("", notation), one -> figure.change(difference(figure, one)))
                .with(
                        new Column("interval", Column.Holds.ENDS, Optional.of(notation), Column.Place.EVERYWHERE),
                        one -> new Cell.Ends(figure.value(difference(figure, one))))
                .words("it is", one -> ComparisonFigure.word(difference(figure, one)))
                .of(comparison.others());
    }

    private static Difference difference(ComparisonFigure figure, Compared one) {
        return figure.of(one).difference().orElseThrow();
    }

    private static Column numbers(String heading, Notation notation) {
        return new Column(heading, Column.Holds.NUMBERS, Optional.of(notation), Column.Place.EVERYWHERE);
    }

    private Table changes() {
        TableMaker<LineDifferences.Row> table = TableMaker.<LineDifferences.Row>of("What each alternative changes")
                .intoFile(CHANGES)
                .words("", LineDifferences.Row::what)
                .words("\"" + name(comparison.today()) + "\"", LineDifferences.Row::present);
        for (int i = 0; i < comparison.others().size(); i++) {
            int other = i;
            table.words(
                    "\"" + name(comparison.others().get(i)) + "\"",
                    row -> row.others().get(other));
        }
        return table.of(changed(comparison));
    }

    /** What the alternatives have otherwise than the one called today. */
    static List<LineDifferences.Row> changed(Comparison comparison) {
        return LineDifferences.of(
                comparison.today().alternative().request(),
                comparison.others().stream()
                        .map(one -> one.alternative().request())
                        .toList());
    }

    private static String name(Compared one) {
        return one.alternative().name();
    }

    /** Every figure of every alternative, a row each: for a file alone. */
    private Table file() {
        return TableMaker.<Row>of("Every figure of every alternative")
                .intoFile(FILE)
                .shownUpTo(0)
                .words("alternative", row -> name(row.one()))
                .words("figure", row -> row.figure().name())
                .cell("value", row -> Cell.of(row.value()))
                .cell("low", row -> end(row.value(), Interval::low))
                .cell("high", row -> end(row.value(), Interval::high))
                .cell("less today's", row -> row.difference().map(Cell::of).orElse(Cell.none()))
                .cell(
                        "difference low",
                        row -> row.difference()
                                .map(by -> end(by, Interval::low))
                                .orElse(Cell.none()))
                .cell(
                        "difference high",
                        row -> row.difference()
                                .map(by -> end(by, Interval::high))
                                .orElse(Cell.none()))
                .number(
                        "confidence of the difference",
                        Notation.PLAIN,
                        row -> row.given().map(Difference::confidence).orElse(Double.NaN))
                .words("it is", row -> row.given().map(ComparisonFigure::word).orElse(""))
                .of(comparison.all().stream()
                        .flatMap(one -> figures.all().stream().map(figure -> new Row(one, figure)))
                        .toList());
    }

    private static Cell end(Value value, Function<Interval, Double> which) {
        return value.interval()
                .map(ends -> Cell.of(Value.of(which.apply(ends), value.notation())))
                .orElse(Cell.none());
    }

    private record Row(Compared one, ComparisonFigure figure) {
        Value value() {
            return figure.value(one);
        }

        Optional<Difference> given() {
            return figure.of(one).difference();
        }

        Optional<Value> difference() {
            return given().map(figure::value);
        }
    }
}
