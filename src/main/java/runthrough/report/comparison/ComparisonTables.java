package runthrough.report.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.quantity.UnitSystem;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.write.CsvWriter;
import runthrough.study.cause.Cause;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Interval;

/** The tables of a comparison: what is changed, all side by side, and every difference with its interval and its word. */
final class ComparisonTables {
    private final Comparison comparison;
    private final ComparisonFigures figures;
    private final String year;

    private ComparisonTables(Comparison comparison, UnitSystem system) {
        this.comparison = comparison;
        this.figures = ComparisonFigures.of(comparison, system);
        this.year = "a year of " + new Texts(system, true).time(comparison.yearlyTime());
    }

    static List<Table> of(Comparison comparison, UnitSystem system) {
        ComparisonTables tables = new ComparisonTables(comparison, system);
        return Stream.concat(
                        Stream.of(tables.shift(), tables.output(), tables.year()),
                        Stream.concat(tables.differences(), Stream.of(tables.changes())))
                .toList();
    }

    private Table shift() {
        return side(
                "Side by side: coil changes, and what they cost in 8 h",
                List.of("through", "stops", "lost", "joint", "crew"),
                List.of(
                        find(ComparisonMeasure.RUN_THROUGH, false),
                        find(ComparisonMeasure.STOPS, false),
                        find(ComparisonMeasure.LOST_TIME, false),
                        find(ComparisonMeasure.JOINT_CYCLE_TIME, false),
                        find(ComparisonMeasure.CREW_TIME, false)));
    }

    private Table output() {
        Table numbers = side(
                "Side by side: output, scrap, and what most failures are attributed to",
                List.of("length", "mass", "of rated", "scrap"),
                List.of(
                        find(ComparisonMeasure.OUTPUT_LENGTH, false),
                        find(ComparisonMeasure.OUTPUT_MASS, false),
                        find(ComparisonMeasure.UTILISATION, false),
                        find(ComparisonMeasure.SCRAP_SHARE, false)));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < numbers.page().rows().size(); i++) {
            List<String> row = new ArrayList<>(numbers.page().rows().get(i));
            row.add(limitingFactor(comparison.all().get(i)));
            rows.add(row);
        }
        List<String> head = new ArrayList<>(numbers.page().head());
        head.add("limiting factor");
        return Table.words(numbers.caption(), head, rows, true);
    }

    private static String limitingFactor(Compared one) {
        return one.causes().main().map(Cause::name).orElse("nothing").toLowerCase(Locale.ROOT);
    }

    private Table year() {
        return side(
                "Side by side: " + year,
                List.of("output", "stops", "lost", "scrap", "crew"),
                List.of(
                        find(ComparisonMeasure.OUTPUT_MASS, true),
                        find(ComparisonMeasure.STOPS, true),
                        find(ComparisonMeasure.LOST_TIME, true),
                        find(ComparisonMeasure.SCRAP_MASS, true),
                        find(ComparisonMeasure.CREW_TIME, true)));
    }

    private ComparisonFigure find(ComparisonMeasure measure, boolean yearly) {
        return figures.find(measure, yearly);
    }

    private Table side(String caption, List<String> heads, List<ComparisonFigure> columns) {
        List<String> head = new ArrayList<>();
        head.add("");
        for (int i = 0; i < heads.size(); i++) {
            String symbol = columns.get(i).symbol();
            head.add(heads.get(i) + (symbol.isEmpty() ? "" : ", " + symbol));
        }
        List<List<String>> rows = comparison.all().stream()
                .map(one -> Stream.concat(
                                Stream.of(one.alternative().name()),
                                columns.stream().map(column -> column.value(one)))
                        .toList())
                .toList();
        return Table.words(caption, head, rows, true);
    }

    private Stream<Table> differences() {
        return Stream.of(
                        find(ComparisonMeasure.OUTPUT_MASS, true),
                        find(ComparisonMeasure.LOST_TIME, true),
                        find(ComparisonMeasure.RUN_THROUGH, false),
                        find(ComparisonMeasure.SCRAP_MASS, true),
                        find(ComparisonMeasure.CREW_TIME, true))
                .map(this::differences);
    }

    private Table differences(ComparisonFigure figure) {
        String name = figure.name();
        String caption = Character.toUpperCase(name.charAt(0)) + name.substring(1) + ", less that of \""
                + comparison.today().alternative().name() + "\"";
        List<List<String>> rows =
                comparison.others().stream().map(one -> row(one, figure)).toList();
        return Table.words(caption, List.of("", figure.differenceSymbol(), "interval", "it is"), rows, true);
    }

    private static List<String> row(Compared one, ComparisonFigure figure) {
        Difference difference = figure.of(one).difference().orElseThrow();
        return List.of(
                one.alternative().name(),
                figure.mean(difference),
                figure.interval(difference).orElse(""),
                ComparisonFigure.word(difference));
    }

    private Table changes() {
        List<List<String>> rows = comparison.all().stream()
                .map(one -> List.of(
                        one.alternative().name(),
                        one.alternative().changes().isEmpty()
                                ? "nothing"
                                : String.join("; ", one.alternative().changes())))
                .toList();
        return Table.words("What each changes in the scenario as written", List.of("", ""), rows, false);
    }

    /** Every figure of every alternative, a row each. */
    static String csv(Comparison comparison, UnitSystem system) {
        ComparisonFigures figures = ComparisonFigures.of(comparison, system);
        List<String> header = List.of(
                "alternative",
                "figure",
                "unit",
                "value",
                "low",
                "high",
                "less today's",
                "difference low",
                "difference high",
                "confidence of the difference",
                "it is");
        List<List<String>> rows = comparison.all().stream()
                .flatMap(one -> figures.all().map(figure -> cells(one, figure)))
                .toList();
        return CsvWriter.of(header, rows);
    }

    private static List<String> cells(Compared one, ComparisonFigure figure) {
        Compared.Figure given = figure.of(one);
        List<String> cells = new ArrayList<>(List.of(
                CsvWriter.text(one.alternative().name()),
                figure.name(),
                figure.symbol(),
                number(figure, given.value().mean())));
        cells.addAll(ends(figure, given.value().interval().filter(any -> one.chance())));
        given.difference()
                .ifPresentOrElse(
                        difference -> {
                            cells.add(number(figure, difference.mean()));
                            cells.addAll(ends(figure, difference.interval()));
                            cells.add(CsvWriter.number(difference.confidence()));
                            cells.add(ComparisonFigure.word(difference));
                        },
                        () -> cells.addAll(List.of("", "", "", "", "")));
        return cells;
    }

    private static List<String> ends(ComparisonFigure figure, Optional<Interval> interval) {
        return interval.map(ends -> List.of(number(figure, ends.low()), number(figure, ends.high())))
                .orElse(List.of("", ""));
    }

    private static String number(ComparisonFigure figure, double si) {
        return CsvWriter.number(figure.shown(si));
    }
}
