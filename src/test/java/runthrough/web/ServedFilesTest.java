package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

/** Files that are dropped on the page. */
class ServedFilesTest extends ServedPage {
    private static final String COILS = """
            id,thickness [mm],width [mm],mass [t]
            A1,2.0,240,2.5
            A2,1.5,240,2.4
            """;

    private static ObjectNode dropped(String line, String name, String text) {
        ObjectNode body = body(line);
        body.putObject("file").put("name", name).put("text", text);
        return body;
    }

    private static String file(String name) throws IOException {
        return Files.readString(Path.of("scenarios", name));
    }

    /** What the coils had in common stays; where the values came from, and the alternatives, follow. */
    @Test
    void aScheduleTakesThePlaceOfTheCoilsOfTheLine() throws Exception {
        JsonNode said = ask("/api/file", dropped(shipped("tube-line"), "C:\\lists\\Our coils.csv", COILS));

        assertThat(said.get("problems")).isEmpty();
        assertThat(said.get("kind").asText()).isEqualTo("schedule");
        assertThat(said.get("text").asText())
                .contains("schedule: Our-coils.csv", "density: 7850 kg/m3", "coils.defaults.head-crop: 3 m")
                .doesNotContain("outer-diameter: 1450 mm");
        JsonNode answer = ask("/api/answer", withFile(said, COILS));
        assertThat(answer.get("word").asText()).isIn("STOPS", "RUNS THROUGH");
    }

    private static ObjectNode withFile(JsonNode said, String content) {
        ObjectNode body = body(said.get("text").asText());
        body.putArray("files")
                .addObject()
                .put("name", said.get("name").asText())
                .put("text", content);
        return body;
    }

    @Test
    void aSheetGivesTheTimesOfTheElementsOfItsNames() throws Exception {
        String times = file("tube-line-stopwatch.csv");
        JsonNode said = ask("/api/file", dropped(shipped("tube-line"), "times.csv", times));

        assertThat(said.get("kind").asText()).isEqualTo("sheet");
        assertThat(said.get("says").asText()).contains("60 coil changes");
        JsonNode line = ask("/api/line", withFile(said, times));
        assertThat(line.at("/work/join"))
                .allMatch(element -> element.get("kind").asText().equals("sheet"));
    }

    /** Half of a letter can be sent, and cannot be kept in a file. */
    @Test
    void aTableWithHalfALetterIsRefused() throws Exception {
        ObjectNode body = body(shipped("tube-line"));
        body.putArray("files").addObject().put("name", "a.csv").put("text", "a,b\n1,\ud800\n");

        HttpResponse<byte[]> answer = post("/api/line", body);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains("Save it anew, in UTF-8.");
    }

    /** With the words of the commands: file, line, what, and how to mend it. */
    @Test
    void whatIsWrongWithAFileIsSaidAsTheCommandsSayIt() throws Exception {
        assertThat(problem("coils.csv", COILS.replace("2.4", "-1")))
                .isEqualTo(
                        "coils.csv:3:12 mass = -1 t; must be more than 0 t. Give the mass of the whole coil, such as 12 t.");
        assertThat(problem("times.csv", "join: fitup\n12\n13\n"))
                .isEqualTo(
                        "times.csv:1 join: fitup; the scenario has no such work element. Did you mean join: fit up?");
        assertThat(problem("log.csv", "time,event\n0,tail stoped\n")).contains("log.csv:2:3", "tail stopped");
    }

    private static String problem(String name, String text) throws Exception {
        JsonNode said = ask("/api/file", dropped(shipped("tube-line"), name, text));
        assertThat(said.get("problems")).isNotEmpty();
        return said.at("/problems/0").asText();
    }

    /** A name leads nowhere but beside the line, and a scenario without the file names none. */
    @Test
    void aFileLiesBesideTheLineAndNowhereElse() throws Exception {
        JsonNode said = ask("/api/file", dropped(shipped("tube-line"), "../../etc/passwd.csv", COILS));
        assertThat(said.get("name").asText()).isEqualTo("passwd.csv");
        assertThat(ask("/api/line", body(said.get("text").asText())).get("problems"))
                .isNotEmpty();
        String foreign = shipped("tube-line").replace("inspect: 10 s", "inspect: {sheet: /etc/passwd}");
        assertThat(ask("/api/file", dropped(foreign, "coils.csv", COILS))
                        .at("/problems/0")
                        .asText())
                .contains("/etc/passwd; on the page only files of the lines");
        assertThat(post("/api/file", dropped(shipped("tube-line"), "../..", COILS))
                        .statusCode())
                .isEqualTo(400);
    }

    /** What the line names already is used as it is, and not as something to be added to it. */
    @Test
    void aTableThatTheLineNamesIsUsedWhereItNamesIt() throws Exception {
        String line = file("tube-line-measured.yaml").replace("tube-line-times.csv", "my-times.csv");
        String times = file("tube-line-times.csv");

        JsonNode said = ask("/api/file", dropped(line, "my-times.csv", times));

        assertThat(said.get("kind").asText()).isEqualTo("table");
        assertThat(said.get("problems")).isEmpty();
        assertThat(said.get("text").asText()).isEqualTo(line);
        assertThat(ask("/api/answer", withFile(said, times)).get("word").asText())
                .isNotEmpty();
    }

    /** Whoever gets it needs nothing else: the schedule of a line that comes with the program is in it, too. */
    @Test
    void theScenarioIsHandedOverWithTheTablesThatItNames() throws Exception {
        ObjectNode body = body(shipped("slitter")).put("name", "slitter");

        HttpResponse<byte[]> answer = post("/api/scenario", body);

        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/zip");
        Map<String, String> files = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(answer.body()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        assertThat(files)
                .containsOnlyKeys("slitter.yaml", "slitter-coils.csv")
                .containsEntry("slitter.yaml", shipped("slitter"))
                .containsEntry("slitter-coils.csv", file("slitter-coils.csv"));
    }

    @Test
    void aScenarioWithoutTablesIsHandedOverAsItIs() throws Exception {
        HttpResponse<byte[]> answer = post("/api/scenario", body(shipped("tube-line")));

        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/yaml");
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).isEqualTo(shipped("tube-line"));
    }

    @Test
    void aNameLongerThanADiskTakesIsRefused() throws Exception {
        ObjectNode body = dropped(shipped("tube-line"), "a".repeat(300) + ".csv", COILS);

        HttpResponse<byte[]> answer = post("/api/file", body);

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains("letters or digits, at most 100");
    }

    /** Its lines are not those of the scenario. */
    @Test
    void whatIsWrongInATableIsSaidWithItsName() throws Exception {
        ObjectNode body = body(shipped("slitter"));
        body.putArray("files").addObject().put("name", "slitter-coils.csv").put("text", "id,width [mm]\nA1,wide\n");

        String said = ask("/api/line", body).get("problems").toString();

        assertThat(said).contains("slitter-coils.csv, line 1: ").doesNotContain("runthrough-page");
    }
}
