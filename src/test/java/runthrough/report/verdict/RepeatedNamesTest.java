package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.report.Answer;
import runthrough.report.Table;
import runthrough.report.write.CsvWriter;
import runthrough.report.write.JsonWriter;
import runthrough.report.write.Outlet;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyOptions;

/**
 * Work elements of one name in one list. The joint takes 8 + 40 + 20 = 68 s and draws 0.75 * 68 + 1.6 = 53 m of the 69 m above
 * the stop level; 60 s more, by either weld, draw 45 m more, which is too much: that weld is the cause.
 */
class RepeatedNamesTest {
    private static final Line LINE = line();

    private static Line line() {
        Line line = Invented.line(Distribution.constant(25));
        CoilChange change = new CoilChange(
                2,
                line.change().prepare(),
                line.change().tail(),
                List.of(
                        Invented.timed("weld", Distribution.observed(List.of(40.0, 40.0, 40.0, 100.0))),
                        Invented.timed("weld", Distribution.observed(List.of(20.0, 20.0, 20.0, 80.0)))),
                new Reject.Never());
        return line.with(change);
    }

    @Test
    void causesNameTheSecondByItsNumber_inTableAndFileAndJson() throws IOException {
        // Rule CAUSE-9.
        Answer answer = VerdictAnswer.of(Invented.result(LINE));
        Table causes = answer.body().tables().stream()
                .filter(table -> table.file().filter("causes.csv"::equals).isPresent())
                .findFirst()
                .orElseThrow();

        assertThat(causes.page().rows())
                .extracting(row -> row.get(0))
                .doesNotHaveDuplicates()
                .anyMatch(cause -> cause.endsWith(": weld"))
                .anyMatch(cause -> cause.endsWith(": weld#2"));
        assertThat(CsvWriter.render(causes)).contains(",join,weld\r\n", ",join,weld#2\r\n");
        assertThat(new JsonMapper()
                        .readTree(JsonWriter.render(answer))
                        .get("named_causes")
                        .findValuesAsText("element"))
                .contains("join/weld", "join/weld#2");
    }

    @Test
    void filesOfCoilChangesNameTheSecondByItsNumber() throws IOException {
        Map<String, ByteArrayOutputStream> files = new TreeMap<>();
        Outlet outlet = name -> files.computeIfAbsent(name, any -> new ByteArrayOutputStream());
        try (CsvFiles csv = new CsvFiles(Invented.request(LINE), outlet)) {
            new RunThroughStudy(Invented.request(LINE)).run(StudyOptions.forReport(), csv);
        }

        assertThat(text(files, CsvFiles.ELEMENTS)).contains(",join,weld,", ",join,weld#2,");
        assertThat(text(files, CsvFiles.CHANGES)).contains(",weld,", ",weld#2,");
    }

    private static String text(Map<String, ByteArrayOutputStream> files, String name) {
        ByteArrayOutputStream file = files.getOrDefault(name, new ByteArrayOutputStream());
        return file.toString(StandardCharsets.UTF_8);
    }
}
