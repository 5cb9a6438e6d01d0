package runthrough.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TextLines;
import runthrough.report.Value;
import runthrough.study.statistics.Interval;

/** Tables in a terminal of 80 columns. */
class TerminalTableTest {
    private static List<String> written(List<Column> columns, List<List<Cell>> rows) {
        TextLines lines = new TextLines();
        TerminalTable.write(new Table("", columns, rows).page(), lines);
        return lines.text().lines().toList();
    }

    private static Column column(String heading, Column.Holds holds) {
        return new Column(heading, holds, Optional.of(Notation.SECONDS), Column.Place.EVERYWHERE);
    }

    private static Cell number(double si) {
        return Cell.of(Value.of(si, Notation.SECONDS));
    }

    @Test
    void whatFitsIsATableOfItsOwnWidth() {
        assertThat(written(
                        List.of(Column.words("shift"), column("waiting", Column.Holds.NUMBERS)),
                        List.of(List.of(Cell.of("early"), number(1.5)), List.of(Cell.of("night"), number(12)))))
                .containsExactly("shift  waiting, s", "early         1.5", "night          12");
    }

    /** Nine columns of 12 and a name of 5 would be 5 + 9 x 14 = 131 wide; five fit beside the name (5 + 5 x 14 = 75). */
    @Test
    void aWideTableIsDividedIntoBlocksThatNameTheRowsAgain() {
        List<Column> columns = Stream.concat(
                        Stream.of(Column.words("shift")),
                        IntStream.rangeClosed(1, 9).mapToObj(i -> column("heading" + i, Column.Holds.NUMBERS)))
                .toList();
        List<List<Cell>> rows = Stream.of("early", "night")
                .map(name -> Stream.concat(
                                Stream.of(Cell.of(name)),
                                IntStream.rangeClosed(1, 9).mapToObj(TerminalTableTest::number))
                        .toList())
                .toList();

        List<String> lines = written(columns, rows);

        assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(lines).filteredOn(line -> line.startsWith("early")).hasSize(2);
        assertThat(String.join(" ", lines)).contains("heading1, s", "heading9, s");
        assertThat(lines.get(3)).isEmpty();
        assertThat(lines.get(1)).matches("early( +\\d){5}");
        assertThat(lines.get(5)).matches("early( +\\d){4}");
    }

    /** Six columns of 12 and a name of 5 are 5 + 6 x 14 = 89 wide; five fit (75), and three and three stand better. */
    @Test
    void theBlocksOfATableHaveAboutAsManyColumns() {
        List<Column> columns = Stream.concat(
                        Stream.of(Column.words("shift")),
                        IntStream.rangeClosed(1, 6).mapToObj(i -> column("heading" + i, Column.Holds.NUMBERS)))
                .toList();
        List<Cell> row = Stream.concat(
                        Stream.of(Cell.of("early")), IntStream.rangeClosed(1, 6).mapToObj(TerminalTableTest::number))
                .toList();

        assertThat(written(columns, List.of(row)))
                .filteredOn(line -> line.startsWith("early"))
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).matches("early( +\\d){3}"));
    }

    @Test
    void aNumberStaysBesideItsInterval() {
        Cell known = new Cell.Ends(
                new Value(2, Notation.SECONDS, Optional.of(new Interval(1, 3, Interval.Method.STUDENT_T))));
        List<Column> pair =
                List.of(column("x".repeat(22), Column.Holds.NUMBERS), column("y".repeat(6), Column.Holds.ENDS));
        List<Column> columns = Stream.of(List.of(Column.words("")), pair, pair, pair)
                .flatMap(List::stream)
                .toList();
        List<Cell> row = List.of(Cell.of("row"), number(2), known, number(2), known, number(2), known);

        // A name of 3, numbers of 25 and intervals of 10 with gaps of 2: one pair takes 42, two take 81.
        assertThat(written(columns, List.of(row)))
                .filteredOn(line -> line.startsWith("row"))
                .hasSize(3);
    }

    @Test
    void headingsNamesAndWordsTakeSeveralLines_numbersStandOnTheFirst() {
        List<String> lines = written(
                List.of(
                        Column.words("element"),
                        column("waiting for the preparation of coils", Column.Holds.NUMBERS),
                        Column.words("why")),
                List.of(List.of(
                        Cell.of("cut the straps and square the head"),
                        number(12),
                        Cell.of("the crane was away and nobody else was there to lift the next coil"))));

        assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(lines)
                .filteredOn(line -> line.contains("12"))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("cut the");
        assertThat(lines.stream()
                        .filter(line -> line.contains("12"))
                        .findFirst()
                        .orElseThrow())
                .contains("the crane");
        assertThat(lines.get(0)).doesNotContain("element");
    }

    /** Rows of one name are kept apart by the next column, which every block repeats. */
    @Test
    void rowsOfOneNameHaveTwoNames() {
        List<Column> columns = Stream.concat(
                        Stream.of(Column.words("element"), Column.numbers("row")),
                        IntStream.rangeClosed(1, 8).mapToObj(i -> column("heading" + i, Column.Holds.NUMBERS)))
                .toList();
        List<List<Cell>> rows = IntStream.of(17, 22)
                .mapToObj(at -> Stream.concat(
                                Stream.of(Cell.of("weld"), Cell.of(at)),
                                IntStream.rangeClosed(1, 8).mapToObj(TerminalTableTest::number))
                        .toList())
                .toList();

        assertThat(written(columns, rows))
                .filteredOn(line -> line.startsWith("weld"))
                .extracting(line -> line.substring(0, 12))
                .containsExactly("weld      17", "weld      22", "weld      17", "weld      22");
    }
}
