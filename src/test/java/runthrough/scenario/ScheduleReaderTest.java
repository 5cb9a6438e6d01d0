package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;

/** Schedules of coils in a CSV file. */
class ScheduleReaderTest {

    private static final String HEADER = "id,thickness [mm],width [mm],density [kg/m3],length [m]\n";

    @TempDir
    private Path folder;

    private Written written = new Written(Path.of("."));

    @BeforeEach
    void writeIntoTheFolder() {
        written = new Written(folder);
    }

    private String scenario(String csv, String defaults) {
        written.file("coils.csv", csv);
        return Written.without("coil") + "coils: {schedule: coils.csv" + defaults + "}\n";
    }

    private List<Coil> coils(String csv, String defaults) {
        CoilSource coilSource = written.request(scenario(csv, defaults)).line().coilSource();
        assertThat(coilSource).isInstanceOf(CoilSource.Schedule.class);
        return ((CoilSource.Schedule) coilSource).coils();
    }

    private List<String> refusal(String csv) {
        return written.refusal(scenario(csv, ""));
    }

    @Test
    void oneRowIsOneCoilInTheOrderOfTheFile() {
        List<Coil> coils = coils(HEADER + "A1,2,240,7850,900\nA2,1.5,200,7850,1200.5\n", "");

        assertThat(coils).extracting(Coil::name).containsExactly("A1", "A2");
        assertThat(coils).extracting(Coil::thickness).containsExactly(0.002, 0.0015);
        assertThat(coils)
                .extracting(Coil::size)
                .containsExactly(
                        new CoilSize.ByLength(Distribution.constant(900)),
                        new CoilSize.ByLength(Distribution.constant(1200.5)));
    }

    /** As spreadsheets break a line within a cell; of the second row only what differs from the first is read. */
    @Test
    void namesAndProductsStandInOneLine() {
        List<Coil> coils = coils(
                HEADER.strip()
                        + ",product\n\"A\n1\",2,240,7850,900,\"tube\n 60\"\nA\t2,2,240,7850,900,\"tube\r\n60\"\n",
                "");

        assertThat(coils).extracting(Coil::name).containsExactly("A 1", "A 2");
        assertThat(coils).extracting(Coil::product).containsExactly("tube 60", "tube 60");
    }

    @Test
    void columnsMayComeInAnyOrderAndUnit() {
        String csv = """
                process-speed [ft/min],mass [lb],density [lb/in3],width [in],thickness [in]
                120,4000,0.2836,9.5,0.078
                """;
        Coil coil = coils(csv, "").get(0);

        assertThat(coil.name()).isEqualTo("coil 1");
        assertThat(coil.thickness()).isCloseTo(0.078 * 0.0254, within(1e-15));
        assertThat(coil.size()).isEqualTo(new CoilSize.ByMass(Distribution.constant(4000 * 0.45359237)));
        assertThat(coil.processSpeed().orElseThrow()).isCloseTo(0.6096, within(1e-15));
    }

    @Test
    void whatARowDoesNotSayIsTakenFromTheDefaults() {
        List<Coil> coils = coils(
                "width [mm],length [m],outer-diameter [mm],head-crop [m]\n240,,,0.5\n200,800,,\n200,,1400,\n",
                ", defaults: {thickness: 2 mm, density: 7850 kg/m3, length: 900 m, inner-diameter: 508 mm,"
                        + " head-crop: 0.1 m}");

        assertThat(coils).extracting(Coil::headCrop).containsExactly(0.5, 0.1, 0.1);
        assertThat(coils.get(1).size()).isEqualTo(new CoilSize.ByLength(Distribution.constant(800)));
        assertThat(coils.get(2).size()).isEqualTo(new CoilSize.ByDiameters(1.4, 0.508, 1));
    }

    @Test
    void spacesCommentsEmptyLinesQuotesAndAByteOrderMarkDoNoHarm() {
        List<Coil> coils = coils(
                "\uFEFF# a day\r\n id , thickness [mm], width [mm],density [kg/m3],length [m]\r\n\r\n\"A, 1\", 2 ,240,7850,900\r\n",
                "");

        assertThat(coils).extracting(Coil::name).containsExactly("A, 1");
        assertThat(coils).extracting(Coil::thickness).containsExactly(0.002);
    }

    @Test
    void aBadNumberInLineThreeThousandIsShownThere() {
        String rows = IntStream.rangeClosed(2, 4000)
                .mapToObj(line -> "A" + line + ",2," + (line == 3000 ? "2 40" : "240") + ",7850,900\n")
                .collect(Collectors.joining());

        assertThat(refusal(HEADER + rows))
                .containsExactly(
                        "coils.csv:3000:9 width [mm] = 2 40; must be a plain number, since the header gives the"
                                + " unit. Write the digits and nothing else, such as 12.5.");
    }

    @Test
    void linesAreCountedAsAnEditorDoesAlsoBehindCommentsAndQuotedLines() {
        assertThat(refusal("# one\n\n" + HEADER + "# four\n\"A\n1\",2,240,7850,900\nA2,2,x,7850,900\n"))
                .singleElement()
                .asString()
                .startsWith("coils.csv:7:6 width [mm] = x; ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "=cmd()", "@A1", "1.5 mm", "NaN", "inf", "1.2.3", "0x2", "two"})
    void whatIsNotAPlainNumberIsRefused(String cell) {
        assertThat(refusal(HEADER + "A1," + cell + ",240,7850,900\n"))
                .singleElement()
                .asString()
                .startsWith("coils.csv:2:4 thickness [mm] = " + cell + "; must be a plain number");
    }

    @Test
    void aDecimalCommaShowsAsOneCellTooMany() {
        assertThat(refusal(HEADER + "A1,1,5,240,7850,900\n"))
                .containsExactly("coils.csv:2:17 900; the row has more cells than the header has columns, 5. "
                        + "Check the separators; in a table with commas between columns a number has a decimal point.");
        assertThat(refusal(HEADER + "A1,\"1,5\",240,7850,900\n"))
                .singleElement()
                .asString()
                .isEqualTo(
                        "coils.csv:2:4 thickness [mm] = 1,5; a number has a decimal point and no commas. Write 1.5.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        0    | must be more than 0 mm
        -2   | must be more than 0 mm
        2e12 | is beyond any strip line
        """)
    void aNumberOutOfRangeIsShownWithTheUnitOfItsColumn(String cell, String rule) {
        assertThat(refusal(HEADER + "A1," + cell + ",240,7850,900\n"))
                .singleElement()
                .asString()
                .startsWith("coils.csv:2:4 thickness = " + cell + " mm; " + rule);
    }

    @Test
    void aBlankCellIsSaidToBeBlankAndWhatBelongsThere() {
        assertThat(refusal(HEADER + "A1,2,,7850,900\n"))
                .containsExactly(
                        "coils.csv:2:6 width [mm]; the cell is blank; it must give the strip width, a number in mm. "
                                + "Fill it in, or give width for all coils under coils.defaults of the scenario.");
        String size = "; the cell is blank; it must give the length of the whole coil, a number in m. "
                + "Fill it in, or give the size in another way: length; mass; outer-diameter with inner-diameter.";
        assertThat(refusal(HEADER + "A1,2,240,7850,\n")).containsExactly("coils.csv:2:15 length [m]" + size);
        // A row that ends early lacks the same.
        assertThat(refusal(HEADER + "A1,2,240,7850\n")).containsExactly("coils.csv:2:15 length [m]" + size);
    }

    @Test
    void aBlankCellHidesNothingElseOfItsRow() {
        assertThat(refusal(HEADER + "A1,,-3,7850,\n"))
                .extracting(text -> text.replaceAll(";.*", ""))
                .containsExactly(
                        "coils.csv:2:4 thickness [mm]", "coils.csv:2:5 width = -3 mm", "coils.csv:2:13 length [m]");
    }

    @Test
    void aBlankCellBesideASizeGivenOtherwiseIsNoError() {
        assertThat(refusal("""
                        thickness [mm],width [mm],density [kg/m3],length [m],outer-diameter [mm],inner-diameter [mm]
                        2,240,7850,,1400,508
                        2,240,7850,900,,
                        2,240,7850,,1400,
                        """))
                .containsExactly(
                        "coils.csv:4:18 inner-diameter [mm]; the cell is blank; it must give the inner diameter of"
                                + " the coil, a number in mm. Fill it in, or give the size in another way: length; mass;"
                                + " outer-diameter with inner-diameter.");
    }

    @Test
    void aMissingColumnIsSaidOnceAndNotForEveryRow() {
        assertThat(refusal("id,thickness [mm],density [kg/m3],length [m]\nA1,2,7850,900\nA2,2,7850,900\n"))
                .containsExactly("coils.csv:1:1: the column width is missing. Add it, or give the value for all coils "
                        + "under coils.defaults of the scenario.");
        assertThat(refusal("thickness [mm],width [mm],density [kg/m3],outer-diameter [mm]\n2,240,7850,1400\n"))
                .containsExactly("coils.csv:1:1: no column gives the size of the coil. "
                        + "Add one of: length; mass; outer-diameter with inner-diameter.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        thikness [mm] | is not a known column. Did you mean thickness?
        colour        | is not a known column. Allowed columns are: id, name, thickness,
        thickness     | the unit is missing; allowed are um, mm,
        thickness []  | the unit is missing; allowed are um, mm,
        thickness [kg]| [kg] is not a unit of length; allowed are um, mm,
        thickness (kg)| [kg] is not a unit of length; allowed are um, mm,
        thickness ((mm| is not a known column
        winding-factor [mm] | this column has no unit. Write it as winding-factor.
        ""            | the column has no name. Allowed columns are: id,
        """)
    void aHeaderThatIsNoneIsRefused(String header, String message) {
        assertThat(refusal(HEADER.strip() + "," + header + "\nA1,2,240,7850,900,1\n"))
                .singleElement()
                .asString()
                .startsWith("coils.csv:1:57")
                .contains(message);
    }

    @Test
    void aHeaderMayHaveCapitalsBlanksAndRoundBrackets() {
        assertThat(coils(
                        "ID,Thickness (mm),Width [mm],density [kg/m3],Mass [lb],Inner_Diameter [mm]\nA1,2,240,7850,2000,508\n",
                        ""))
                .isEqualTo(coils(
                        "id,thickness [mm],width [mm],density [kg/m3],mass [lb],inner-diameter [mm]\nA1,2,240,7850,2000,508\n",
                        ""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        1 240   | a number has no blanks between its digits. Write 1240.
        1,240   | a number has a decimal point and no commas. Write 1240 if the comma groups thousands, 1.240 if it is a decimal comma.
        1/4     | fractions are not read. Write it as a decimal number, such as 0.25.
        230-240 | is a range, and not one number. Write one number.
        2:40    | is minutes and seconds, and not a number without a unit. Write one number.
        0xF0    | must be a plain number, since the header gives the unit. Write the digits and nothing else, such as 12.5.
        240 mm  | must be a plain number, since the header gives the unit. Write the digits and nothing else, such as 12.5.
        """)
    void aWidthThatIsNoNumberSaysWhy(String width, String message) {
        String cell = '"' + width + '"';
        assertThat(refusal(HEADER + "A1,2," + cell + ",7850,900\n"))
                .singleElement()
                .asString()
                .startsWith("coils.csv:2:6 width [mm] = " + width + "; ")
                .endsWith(message);
    }

    @Test
    void aWorkbookIsCalledThat() {
        assertThat(refusal("PK\u0003\u0004"))
                .containsExactly(
                        "coils.csv:1:1: is a workbook, or another archive, and not a text. Save its sheet as CSV in UTF-8.");
    }

    @Test
    void moreColumnsThanACoilHasAreRefusedAtOnce() {
        assertThat(refusal(HEADER.strip() + ",x".repeat(10_000) + "\nA1,2,240,7850,900" + ",1".repeat(10_000) + "\n"))
                .singleElement()
                .asString()
                .contains(
                        "the schedule has 10005 columns; at most 100 are read. Keep the columns that describe a coil.");
    }

    @Test
    void aColumnGivenTwiceIsRefused() {
        assertThat(refusal(HEADER.strip() + ",width [m]\nA1,2,240,7850,900,0.2\n"))
                .containsExactly("coils.csv:1:57 width [m]; a second column of this name. Keep only one.");
        assertThat(refusal(HEADER.strip() + ",name\nA1,2,240,7850,900,B\n"))
                .singleElement()
                .asString()
                .contains("name; a second column of this name");
    }

    @Test
    void aTableOfSemicolonsAndDecimalCommasIsReadAsItIs() {
        List<Coil> coils = coils(
                "\uFEFFid;thickness [mm];width [mm];density [kg/m3];length [m]\nA1;2,5;240;7850;900,25\nA2;2;240;7850;800\n",
                "");

        assertThat(coils).extracting(Coil::thickness).containsExactly(0.0025, 0.002);
        assertThat(coils.get(0).size()).isEqualTo(new CoilSize.ByLength(Distribution.constant(900.25)));
        assertThat(coils("thickness [mm]\twidth [mm]\tdensity [kg/m3]\tlength [m]\n1,5\t240\t7850\t900\n", ""))
                .extracting(Coil::thickness)
                .containsExactly(0.0015);
    }

    @Test
    void aTableWithDecimalCommasAndPointsIsRefusedForAPointMayGroupThousands() {
        assertThat(refusal("id;thickness [mm];width [mm];density [kg/m3];length [m]\nA1;2,5;240;7850;1.200\n"))
                .containsExactly(
                        "coils.csv:2:17 1.200; some numbers of this table have a decimal comma and some a point. "
                                + "Write all numbers in one way, and do not group thousands.");
    }

    @Test
    void aCoilSaysItsProductUnderEitherName() {
        assertThat(coils(HEADER.strip() + ",product\nA1,2,240,7850,900,tube 60\nA2,2,240,7850,900,\n", ""))
                .extracting(Coil::product)
                .containsExactly("tube 60", "");
        assertThat(coils(HEADER.strip() + ",group\nA1,2,240,7850,900,=tube\n", ""))
                .extracting(Coil::product)
                .containsExactly("=tube");
    }

    /** Rows like an earlier one are read in a short way, which must give the same to the last digit. */
    @Test
    void aRowIsReadAlikeWhateverRowsComeBefore() {
        String header =
                "width [in],mass [lb],outer-diameter [mm],inner-diameter [mm],winding-factor,process-speed [ft/min],id\n";
        String defaults = ", defaults: {thickness: 2 mm, density: 7850 kg/m3, mass: {normal: [4 t, 300 kg]}}";
        List<String> rows = List.of(
                "9.45,4000.7,,,,,A",
                "9.4500000000000001,8123.123,,,,120,B",
                "+9.1,7000,,,,1e2,",
                "10,,1400.5,508,0.97,,D",
                "10.125,,1301.25,508.5,1,130.5,E",
                "11,,,,,99.9,F",
                "11.3,,,,,,G");

        List<Coil> together = coils(header + String.join("\n", rows) + "\n" + String.join("\n", rows) + "\n", defaults);

        for (int i = 0; i < 2 * rows.size(); i++) {
            String row = rows.get(i % rows.size());
            Coil alone = coils(header + row + "\n", defaults).get(0);
            String name = alone.name().equals("coil 1") ? "coil " + (i + 1) : alone.name();
            assertThat(together.get(i))
                    .as(row)
                    .usingRecursiveComparison()
                    .ignoringFields("name")
                    .isEqualTo(alone);
            assertThat(together.get(i).name()).isEqualTo(name);
        }
    }

    @Test
    void aBadRowAmongRowsLikeItIsSaidLikeAnyOther() {
        String good = "A1,2,240,7850,900\n";
        assertThat(refusal(HEADER + good.repeat(20_000) + "A2,2,-240,7850,900\n" + good + "A3,2,24O,7850,900\n"))
                .containsExactly(
                        "coils.csv:20002:6 width = -240 mm; must be more than 0 mm. Give the strip width, such as 240 mm.",
                        "coils.csv:20004:6 width [mm] = 24O; must be a plain number, since the header gives the unit. "
                                + "Write the digits and nothing else, such as 12.5.");
    }

    @Test
    void aHundredProblemsAreSaidAndTheOthersCounted() {
        ScenarioReading reading = written.read(scenario(HEADER + "A1,x,240,7850,900\n".repeat(3000), ""));

        assertThat(((ScenarioReading.Refused) reading).problems()).hasSize(100);
        assertThat(((ScenarioReading.Refused) reading).further()).isEqualTo(2900);
    }

    @Test
    void aFindingAboutACoilFarDownIsShownAtItsRow() {
        String rows = "A1,2,240,7850,900\n".repeat(12_000) + "\nA2,2,240,7850,1\n";

        assertThat(written.refusal(scenario(HEADER + rows, ", defaults: {head-crop: 2 m}")))
                .singleElement()
                .asString()
                .startsWith("coils.csv:12003:1 coils.schedule[12001] = -1 m of usable strip; ");
    }

    @Test
    void textThatIsNotUtf8IsShownWhereItStands() throws java.io.IOException {
        byte[] good = (HEADER + "A1,2,240,7850,900\nA").getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        byte[] bytes = java.util.Arrays.copyOf(good, good.length + 2);
        bytes[good.length] = (byte) 0xE4;
        bytes[good.length + 1] = 'x';
        java.nio.file.Files.write(folder.resolve("coils.csv"), bytes);

        assertThat(written.refusal(Written.without("coil") + "coils: {schedule: coils.csv}\n"))
                .containsExactly("coils.csv:3:2: the text is not UTF-8. Save the file with the encoding UTF-8.");
        assertThat(refusal(HEADER + "A1,2,240,7850,900\nA2,2,\u00012,7850,900\n"))
                .containsExactly("coils.csv:3:6: holds a control character (U+0001). Give a plain text file in UTF-8.");
    }

    @Test
    void aTableWithoutRowsIsRefused() {
        assertThat(refusal("")).containsExactly("coils.csv: is empty. Give a header and one row for each coil.");
        assertThat(refusal(HEADER)).containsExactly("coils.csv: has no rows. Give one row for each coil.");
    }

    @Test
    void aQuoteThatIsNeverClosedIsShown() {
        assertThat(refusal(HEADER + "A1,2,240,7850,900\n\"A2,2,240,7850,900\n"))
                .containsExactly("coils.csv:2:1: is not CSV from here on. Check quotes: each needs its closing one.");
    }

    @Test
    void aScheduleThatIsNotThereIsAnsweredWithTheNearestFile() {
        written.file("coils.csv", HEADER);

        assertThat(written.refusal(Written.without("coil") + "coils: {schedule: coil.csv}\n"))
                .containsExactly(
                        "line.yaml:8:19 coils.schedule = coil.csv; there is no such file. Did you mean coils.csv?");
    }

    @Test
    void problemsOfScenarioAndScheduleAreSaidTogether() {
        written.file("coils.csv", HEADER + "A1,2,x,7850,900\n");

        assertThat(written.refusal(Written.without("coil").replace("target: 90 %", "target: 900 %")
                        + "coils: {schedule: coils.csv}\n"))
                .hasSize(2)
                .anyMatch(problem -> problem.startsWith("coils.csv:2:6 width [mm] = x"))
                .anyMatch(problem -> problem.startsWith("line.yaml:7:34 run.target = 900 %"));
    }

    @Test
    void aFindingAboutACoilIsShownAtItsRow() {
        assertThat(written.refusal(
                        scenario(HEADER + "A1,2,240,7850,900\nA2,2,240,7850,1\n", ", defaults: {head-crop: 2 m}")))
                .singleElement()
                .asString()
                .startsWith(
                        "coils.csv:3:1 coils.schedule[2] = -1 m of usable strip; must be more than 0 after its crops");
    }
}
