package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.cli.terminal.ExitCode;

/** {@code times}: from a stopwatch sheet to a scenario, and {@code --times} from there to a verdict. */
class TimesCommandTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void copyTheShippedSheet() throws IOException {
        session = new Session(folder)
                .write("sheet.csv", Files.readString(Path.of("scenarios/tube-line-stopwatch.csv")))
                .write("line.yaml", Files.readString(Path.of("scenarios/tube-line.yaml")));
    }

    @Test
    void theSheetItselfIsNotWrittenOver() throws IOException {
        String sheet = Files.readString(folder.resolve("sheet.csv"));

        Session.Done done = session.run("times", "sheet.csv", "--no-report", "--fragment", "sheet.csv");

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err()).contains("sheet.csv cannot be written: it is what this command itself reads or writes.");
        assertThat(folder.resolve("sheet.csv")).hasContent(sheet);
    }

    /** Nothing of the study is written where its fragment cannot be. */
    @ParameterizedTest
    @CsvSource({
        "taken, it is a folder",
        "report, it is what this command itself reads or writes",
        "report/report.html, it is what this command itself reads or writes",
        "report/times.json, it is what this command itself reads or writes"
    })
    void aFragmentThatCannotBeWrittenIsRefusedFirst(String fragment, String why) throws IOException {
        Files.createDirectory(folder.resolve("taken"));

        Session.Done done = session.run("times", "sheet.csv", "--out", "report", "--fragment", fragment);

        assertThat(done.err()).contains(fragment + " cannot be written: " + why);
        assertThat(folder.resolve("report")).doesNotExist();
    }

    /** As by any other program that is given the name of a link. */
    @Test
    void aLinkStaysAndWhatItLeadsToIsWritten() throws IOException {
        Files.createFile(folder.resolve("target.yaml"));
        Path link = Files.createSymbolicLink(folder.resolve("work.yaml"), Path.of("target.yaml"));

        session.run("times", "sheet.csv", "--no-report", "--fragment", "work.yaml");

        assertThat(link).isSymbolicLink();
        assertThat(folder.resolve("target.yaml")).content().contains("coil-change");
    }

    @Test
    void theShippedSheetIsSaidInPlainLanguage() {
        Session.Done done = session.run("times", "sheet.csv", "--no-report", "--fragment", "work.yaml");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().replaceAll("\\s+", " "))
                .contains(
                        "USE WITH CARE. 60 coil changes were timed, 6 elements.",
                        "--leave-out 17,22,44",
                        "The crew sped up: join: fit up took 0.11 s less at each coil change",
                        "99 % of the joints took at most 2:05 min; with each",
                        "Times of each element, s",
                        "What to simulate with",
                        "Enough? To know each mean within 5 % with 95.45 % confidence (ILO)");
        assertThat(done.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        // A value to copy has a line of its own.
        assertThat(done.out().lines())
                .filteredOn(line -> line.contains("{"))
                .filteredOn(line -> !line.contains("{sheet: FILE}"))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).endsWith("}"));
        assertThat(session.files()).containsExactly("line.yaml", "sheet.csv", "work.yaml");
    }

    @Test
    void sharesThatAreNoneAreRefused() {
        assertThat(session.run("times", "sheet.csv", "--allowance", "-5%").err())
                .contains("--allowance = -5%; must be at least 0 % and at most 100 %.");
        assertThat(session.run("times", "sheet.csv", "--allowance", "5%").err())
                .contains("--allowance is a share of basic times. Add --basic-times.");
        for (String option : List.of("--confidence", "--precision")) {
            assertThat(session.run("times", "sheet.csv", option, "100%").err())
                    .contains(option + " = 100%; must be more than 0 % and less than 100 %. Write it like 95%.");
        }
    }

    @Test
    void theFragmentIsAPartOfAScenario() throws IOException {
        session.run("times", "sheet.csv", "--no-report", "--fragment", "work.yaml", "--timed", "2 March\nfirst: shift");
        String fragment = Files.readString(folder.resolve("work.yaml"));
        String rest = Session.LINE.replaceFirst("(?s)coil-change:.*(?=run:)", "");

        Session.Done done = session.write("whole.yaml", rest + fragment).run("check", "whole.yaml");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(fragment).contains("# Timed: 2 March first: shift.", "# n = 60 coil changes", "sheet.csv");
    }

    @Test
    void aVerdictComesFromASheetInOneCommand() {
        Session.Done done =
                session.run("run", "line.yaml", "--times", "sheet.csv", "--no-report", "--replications", "5");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().replaceAll("\\s+", " ")).contains("Changed for this run:", "coil-change.join.fit up.");
    }

    @Test
    void anElementThatTheScenarioHasNotIsRefused() {
        Session.Done done = session.write("other.csv", "join: fitup,join: weld\n20,30\n21,31\n")
                .run("run", "line.yaml", "--times", "other.csv", "--no-report");

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.errLines())
                .containsExactly(
                        "other.csv:1 join: fitup; the scenario has no such work element. Did you mean join: fit"
                                + " up?");
    }

    @Test
    void aReportHoldsPageDataAndFragment() {
        Session.Done done = session.run("times", "sheet.csv", "--out", "report");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(session.files())
                .contains(
                        "report/correlations.csv",
                        "report/elements.csv",
                        "report/fits.csv",
                        "report/outliers.csv",
                        "report/parameters.csv",
                        "report/report.html",
                        "report/times.json",
                        "report/work-times.yaml");
    }

    @Test
    void aFileHasAllRowsOfItsTable_theStrongestFirst() throws IOException {
        session.run("times", "sheet.csv", "--out", "report");

        List<String> elements = Files.readAllLines(folder.resolve("report/elements.csv"));
        List<String> pairs = Files.readAllLines(folder.resolve("report/correlations.csv"));

        assertThat(elements.get(0))
                .startsWith("element,n,gaps,mean (s),sd (s),cv,least (s),median (s),90 % (s),greatest (s)")
                .endsWith(
                        "slope low (s per coil change),slope high (s per coil change),p of trend,observations needed");
        // 6 elements are 15 pairs, of which the page shows 10.
        assertThat(pairs).hasSize(16);
        assertThat(pairs.subList(1, 16))
                .extracting(row -> Double.valueOf(row.split(",", -1)[5]))
                .isSorted();
        assertThat(Files.readString(folder.resolve("report/report.html")))
                .contains("Elements that go together, the 10 strongest of 15", "Distributions fitted to each element");
    }

    @Test
    void jsonIsWhatItsSchemaSaysAndTheSameEachTime() throws IOException {
        String json = session.run("times", "sheet.csv", "--json", "--no-report").out();
        JsonNode answer = new ObjectMapper().readTree(json);

        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                        .getSchema(session.run("schema", "times").out())
                        .validate(answer))
                .isEmpty();
        assertThat(answer.at("/elements/3/name").asText()).isEqualTo("fit up");
        assertThat(answer.at("/elements/3/outliers/1/row").asInt()).isEqualTo(44);
        assertThat(session.run("times", "sheet.csv", "--json", "--no-report").out())
                .isEqualTo(json);
    }

    @Test
    void rowsAreLeftOutOnlyWhereNamed() {
        String said = session.run("times", "sheet.csv", "--no-report", "--leave-out", "17,22,44")
                .out();

        assertThat(said).contains("57 coil changes were timed", "Left out, as asked: rows 17, 22, 44.");
        assertThat(session.run("times", "sheet.csv", "--no-report", "--leave-out", "61")
                        .errLines())
                .containsExactly(
                        "--leave-out = 61; the sheet has no such row with times. Rows are counted from 1 below the"
                                + " header, up to 60.");
    }

    @Test
    void aBadSheetIsSaidWholeAndNothingIsWritten() {
        Session.Done done = session.write("bad.csv", "weld,shear\n=1+1,8\n-3,x\n")
                .run("times", "bad.csv", "--out", "report", "--fragment", "work.yaml");

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.errLines())
                .extracting(line -> line.replaceFirst(";.*", ""))
                .containsExactly("bad.csv:2:1 weld = =1+1", "bad.csv:3:1 weld = -3", "bad.csv:3:4 shear = x");
        assertThat(session.files()).containsExactly("bad.csv", "line.yaml", "sheet.csv");
    }

    @Test
    void textOfTheSheetIsNeverAFormulaOfTheAnswer() throws IOException {
        StringBuilder sheet = new StringBuilder("weld,remark\n");
        for (int i = 0; i < 12; i++) {
            sheet.append(i == 7 ? "300,@SUM(A1)\n" : 30 + i % 4 + ",\n");
        }
        session.write("odd.csv", sheet.toString()).run("times", "odd.csv", "--out", "report");

        assertThat(Files.readString(folder.resolve("report/outliers.csv"))).contains(",'@SUM(A1)");
    }
}
