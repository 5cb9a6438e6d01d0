package runthrough.scenario.times;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.scenario.source.Problem;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;
import runthrough.timestudy.TimedElement;
import runthrough.timestudy.TimedElement.Part;

/** Time-study sheets as they come, and what is wrong with bad ones. */
class TimeSheetReaderTest {

    @TempDir
    private Path folder;

    private TimeSheetReading reading(String text) {
        return reading(text.getBytes(StandardCharsets.UTF_8));
    }

    private TimeSheetReading reading(byte[] bytes) {
        try {
            return TimeSheetReader.read(Files.write(folder.resolve("times.csv"), bytes), "times.csv");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private TimeSheet sheet(String text) {
        TimeSheetReading reading = reading(text);
        assertThat(reading).isInstanceOf(TimeSheetReading.Accepted.class);
        return ((TimeSheetReading.Accepted) reading).sheet();
    }

    private List<String> warnings(String text) {
        return texts(((TimeSheetReading.Accepted) reading(text)).warnings());
    }

    private List<String> refusal(String text) {
        return refusal(reading(text));
    }

    private List<String> refusal(TimeSheetReading reading) {
        assertThat(reading).isInstanceOf(TimeSheetReading.Refused.class);
        return texts(((TimeSheetReading.Refused) reading).problems());
    }

    private List<String> texts(List<Problem> problems) {
        return problems.stream().map(Problem::toString).toList();
    }

    /** The times of element {@code i}, counted from 0, row by row (s); NaN where it was not timed. */
    private static double[] column(TimeSheet sheet, int i) {
        return sheet.rows().stream().mapToDouble(row -> row.times().get(i)).toArray();
    }

    @Test
    void aRowIsACoilChangeAndAColumnAnElement() {
        TimeSheet sheet = sheet("shear,weld\n8,41\n9,44.5\n");

        assertThat(sheet.elements()).extracting(TimedElement::name).containsExactly("shear", "weld");
        assertThat(column(sheet, 1)).containsExactly(41, 44.5);
        assertThat(sheet.rows()).extracting(Observation::number).containsExactly(1, 2);
        assertThat(sheet.rows()).extracting(Observation::line).containsExactly(2, 3);
    }

    @ParameterizedTest
    @CsvSource({
        "83, 83",
        "83 s, 83",
        "83s, 83",
        "1:23, 83",
        "1:23 min, 83",
        "0:01:23.5, 83.5",
        "00:01:23, 83",
        "1.38 min, 82.8",
        "1 min 23 s, 83",
        "1m23s, 83",
        "0.02 h, 72",
        "83.25, 83.25",
        "90:00, 5400",
        "0, 0"
    })
    void timesComeInAnyOfTheUsualForms(String text, double seconds) {
        assertThat(column(sheet("weld\n" + text + "\n"), 0)[0]).isCloseTo(seconds, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1.5, 90", "1:23, 83", "45 s, 45", "0:01:23.5, 83.5"})
    void theHeaderGivesTheUnitOfNumbersAlone(String text, double seconds) {
        assertThat(column(sheet("weld [min]\n" + text + "\n"), 0)).containsExactly(seconds);
        assertThat(column(sheet("weld (min)\n" + text + "\n"), 0)).containsExactly(seconds);
    }

    @Test
    void aBlankOrADashIsAGap() {
        TimeSheet sheet = sheet("shear,weld\n,41\n-,42\n8,\n");

        assertThat(column(sheet, 0)).containsExactly(Double.NaN, Double.NaN, 8);
        assertThat(sheet.times(1)).containsExactly(41, 42);
        assertThat(sheet.complete(List.of(0, 1))).isEmpty();
    }

    @Test
    void ratingRemarkNumberAndDateAreNotElements() {
        TimeSheet sheet = sheet("""
                no.,date,weld,rating [%],remark,remark: operator
                1,2026-03-02,41,95,slow wire,A
                2,2026-03-02,44,,,B
                """);

        assertThat(sheet.elements()).singleElement().isEqualTo(new TimedElement(Optional.empty(), "weld", 3));
        assertThat(sheet.rows())
                .extracting(Observation::rating)
                .containsExactly(OptionalDouble.of(0.95), OptionalDouble.empty());
        assertThat(sheet.rows()).extracting(Observation::label).containsExactly("1, 2026-03-02", "2, 2026-03-02");
        assertThat(sheet.rows()).extracting(Observation::remark).containsExactly("slow wire, A", "B");
    }

    @Test
    void basicTimeIsObservedTimeByRating() {
        // 40 s at 95 is 38 s; without a rating as observed.
        TimeSheet sheet = sheet("weld,rating\n40,95\n44,\n,110\n50,110 %\n");

        assertThat(sheet.isRated()).isTrue();
        assertThat(sheet.basicTimes().times(0)[0]).isCloseTo(38, within(1e-12));
        assertThat(sheet.basicTimes().times(0)[1]).isEqualTo(44);
        assertThat(sheet.basicTimes().times(0)[2]).isCloseTo(55, within(1e-12));
    }

    @Test
    void aGapIsAGapInBasicTimesToo() {
        // 40 s at 95 is 38 s; what was not timed has no basic time either.
        TimeSheet basic = sheet("shear,weld,rating\n40,,95\n,50,100\n").basicTimes();

        assertThat(column(basic, 0)).containsExactly(new double[] {38, Double.NaN}, within(1e-12));
        assertThat(column(basic, 1)).containsExactly(Double.NaN, 50);
    }

    @Test
    void theHeaderSaysToWhichPartAnElementBelongs() {
        TimeSheet sheet = sheet("prepare: load [min],tail:shear,Join: weld,release\n2,8,41,3\n");

        assertThat(sheet.elements())
                .extracting(TimedElement::label)
                .containsExactly("prepare: load", "tail: shear", "join: weld", "release");
        assertThat(sheet.elements().get(3).partOrJoin()).isEqualTo(Part.JOIN);
        assertThat(sheet.standing()).containsExactly(1, 2, 3);
        assertThat(sheet.rows().get(0).times().subList(1, 4).stream()
                        .mapToDouble(t -> t)
                        .sum())
                .isEqualTo(52);
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "\t"})
    void decimalCommasAreReadWhereCommasDoNotSeparateColumns(String separator) {
        TimeSheet sheet = sheet(String.join(separator, "weld [min]", "rating", "remark") + "\n"
                + String.join(separator, "1,38", "97,5", "a.b") + "\n" + String.join(separator, "0:01:23,5", "", "")
                + "\n");

        assertThat(column(sheet, 0)[0]).isCloseTo(82.8, within(1e-12));
        assertThat(column(sheet, 0)[1]).isEqualTo(83.5);
        assertThat(sheet.rows().get(0).rating()).hasValue(0.975);
    }

    @Test
    void decimalPointsAreReadBetweenSemicolonsToo() {
        assertThat(column(sheet("weld;remark\n41.5;a, b\n"), 0)).containsExactly(41.5);
    }

    @Test
    void commasAndPointsInOneFileAreRefused() {
        assertThat(refusal("weld;shear\n1.234;8,5\n"))
                .containsExactly("times.csv:2:1 weld = 1.234; has a decimal point, but other numbers of this file have"
                        + " decimal commas. Write all numbers of the file in the same way, without separating"
                        + " thousands.");
    }

    @Test
    void aDecimalCommaBetweenCommasIsRefused() {
        assertThat(refusal("weld,shear\n\"41,5\",8\n"))
                .containsExactly("times.csv:2:1 weld = 41,5; a number has a decimal point where commas separate the"
                        + " columns. Write 41.5 if the comma is a decimal comma.");
    }

    @Test
    void whatSpreadsheetsLeaveBehindDoesNoHarm() {
        TimeSheet sheet =
                sheet("\uFEFF# timed on the first shift\r\nweld,\"shear\",,\r\n\r\n41,8,,\r\n,,,\r\n42 ,9,,\r\n");

        assertThat(sheet.elements()).extracting(TimedElement::name).containsExactly("weld", "shear");
        assertThat(column(sheet, 0)).containsExactly(41, 42);
        assertThat(sheet.rows()).extracting(Observation::line).containsExactly(4, 6);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "abc | must be a time, such as 83, 83 s, 1:23, 0:01:23.5 or 1.38 min, or blank. Correct the cell, or leave it"
                        + " blank if the element was not timed.",
                "-5 | a time must not be negative. Correct the cell, or leave it blank if the element was not timed.",
                "1e400 | is longer than a day. Correct the cell, or leave it blank if the element was not timed.",
                "2026-03-02 | unknown unit \"-03-02\"; allowed for time are ms, s, min, h, d. Write it like 90 s or 1.5 min.",
                "-1:23 | a time must not be negative. Correct the cell, or leave it blank if the element was not timed.",
                "=A1+3 | is a formula, not a value. Copy the cells in the spreadsheet, paste them as values and save again.",
                "=cmd() | is a formula, not a value. Copy the cells in the spreadsheet, paste them as values and save again.",
                "1:75 | a clock shows fewer than 60 minutes and seconds. Correct the cell, or leave it blank if the element"
                        + " was not timed.",
                "12:01:23 AM | must be a time, such as 83, 83 s, 1:23, 0:01:23.5 or 1.38 min, or blank. Correct the cell, or"
                        + " leave it blank if the element was not timed.",
                "90000 | is longer than a day. Check the unit of the column and the cell.",
                "1e-90 s | is shorter than a microsecond. Check the unit of the column and the cell.",
                "83 mm | mm is a unit of length, not of time; allowed are ms, s, min, h, d. Write it like 90 s or 1.5 min.",
                "83\" | unknown unit \"\"\"; allowed for time are ms, s, min, h, d. Write it like 90 s or 1.5 min.",
                "83 sec | unknown unit \"sec\"; allowed for time are ms, s, min, h, d. Write s.",
                "NaN | must be a time, such as 83, 83 s, 1:23, 0:01:23.5 or 1.38 min, or blank. Correct the cell, or leave it"
                        + " blank if the element was not timed."
            })
    void whatIsNotATimeIsShownWithItsPlace(String cell, String rest) {
        assertThat(refusal("shear,weld\n8,41\n9," + cell + "\n"))
                .containsExactly("times.csv:3:3 weld = " + cell + "; " + rest);
    }

    @Test
    void minutesOrHoursInAColumnOfHoursAreRefused() {
        assertThat(refusal("weld [h]\n1:23\n"))
                .containsExactly("times.csv:2:1 weld [h] = 1:23; might be hours and minutes or minutes and seconds in a"
                        + " column of hours. Write hours, minutes and seconds, such as 0:1:23.");
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnce() {
        assertThat(refusal("weld,weld [min],rating\n41,x,300\n-1,2\n=3,4,100,7\n"))
                .extracting(text -> text.replaceFirst("; .*", ""))
                .containsExactly(
                        "times.csv:1:6 weld [min]",
                        "times.csv:2:4 weld [min] = x",
                        "times.csv:2:6 rating = 300",
                        "times.csv:3:1: the row has 2 cells, but the header has 3. Give every row all separators, and"
                                + " leave blank what was not timed.",
                        "times.csv:3:1 weld = -1",
                        "times.csv:4:1 weld = =3",
                        "times.csv:4:10 7");
    }

    @Test
    void aSecondColumnOfTheSameNameIsRefused() {
        assertThat(refusal("weld,Weld [min]\n41,1\n"))
                .containsExactly("times.csv:1:6 Weld [min]; a second column of this name; the first is at"
                        + " 1:1. Give each work element a name of its own, or leave one column out.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "weld [mm] | times.csv:1:1 weld [mm]; [mm] is not a unit of time; allowed are ms, s, min, h, d. Write it like"
                        + " weld [s] or weld [min].",
                "joint: weld | times.csv:1:1 joint: weld; what stands before the colon must be prepare, tail, join or remark."
                        + " Did you mean join?",
                "41 | times.csv:1:1 41; the first row must name the columns, such as \"weld\" or \"join: weld [s]\". Put a row"
                        + " with names above the times. A line that begins with # is a comment.",
                "=A1 | times.csv:1:1 =A1; the first row must name the columns, such as \"weld\" or \"join: weld [s]\". Put a"
                        + " row with names above the times. A line that begins with # is a comment.",
                "join: [s] | times.csv:1:1 join: [s]; the element has no name. Write it like join: weld [s].",
                "remark | times.csv:1:1: no column holds the times of a work element. Give each element a column, such as"
                        + " join: weld [s]."
            })
    void badHeadersAreRefused(String header, String expected) {
        assertThat(refusal(header + "\n41\n")).containsExactly(expected);
    }

    @Test
    void tenThousandColumnsAreSaidInOneLine() {
        String header = IntStream.range(0, 10_000).mapToObj(i -> "e" + i).collect(Collectors.joining(","));
        String row = IntStream.range(0, 10_000).mapToObj(i -> "x").collect(Collectors.joining(","));

        assertThat(refusal(header + "\n" + row + "\n"))
                .containsExactly("times.csv:1:391: the sheet has 10000 columns; at most 100 are read. Give each work"
                        + " element one column, and each coil change a row.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# nothing\n"})
    void anEmptyFileIsRefused(String text) {
        assertThat(refusal(text))
                .containsExactly("times.csv: is empty. Give a header and one row for each observed coil change.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"weld\n", "weld,shear\n,\n", "weld,remark\n,holiday\n"})
    void aSheetWithoutTimesIsRefused(String text) {
        assertThat(refusal(text))
                .containsExactly("times.csv: has no row with a time. Give one row for each observed coil change.");
    }

    @Test
    void aRowOfMeansIsRefused() {
        assertThat(refusal("no.,weld\n1,41\nMean,41\n"))
                .containsExactly("times.csv:3:1 no. = Mean; the row looks like a summary, not like an observation."
                        + " Delete the row; means and the like are worked out anew.");
    }

    @Test
    void aRatingThatIsAFactorIsRefused() {
        assertThat(refusal("weld,rating\n41,1.05\n"))
                .containsExactly("times.csv:2:4 rating = 1.05; a rating must be a number from 20 to 200, standard"
                        + " performance being 100. Write the rating in per cent, standard performance being 100.");
    }

    @Test
    void aWorkbookIsCalledThat() {
        assertThat(refusal(reading(new byte[] {'P', 'K', 3, 4, 20, 0})))
                .containsExactly(
                        "times.csv:1:1: is a workbook, or another archive, and not a text. Save its sheet as CSV in"
                                + " UTF-8.");
    }

    @Test
    void otherEncodingsAreSaidByName() {
        assertThat(refusal(reading("weld,Fläche\n41,8\n".getBytes(StandardCharsets.ISO_8859_1))))
                .containsExactly("times.csv:1:8: the text is not UTF-8; it looks like the older encoding of a"
                        + " spreadsheet (Windows-1252, Latin-1). Save the file with the encoding UTF-8.");
        assertThat(refusal(reading("weld\n41\n".getBytes(StandardCharsets.UTF_16))))
                .containsExactly(
                        "times.csv:1:1: the text is not UTF-8 but UTF-16. Save the file with the encoding" + " UTF-8.");
    }

    @Test
    void aZeroAnEmptyColumnAndAnEmptyRowAreWarnedOf() {
        assertThat(warnings("weld,shear,remark\n0,,\n,,holiday\n"))
                .containsExactly(
                        "times.csv:1:6 shear; the column holds no time. The element is left out.",
                        "times.csv:2:1 weld = 0; is counted as an element that took no time. Leave the cell blank if"
                                + " the element was not done.",
                        "times.csv:3:1: the row holds no time. It is left out.");
    }

    @Test
    void rowsCanBeLeftOutByNumber() {
        TimeSheet sheet = sheet("weld\n41\n300\n42\n").without(List.of(2));

        assertThat(sheet.times(0)).containsExactly(41, 42);
        assertThat(sheet.rows()).extracting(Observation::number).containsExactly(1, 3);
    }
}
