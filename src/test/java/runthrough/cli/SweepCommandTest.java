package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.cli.terminal.ExitCode;
import runthrough.report.write.ExclusiveFile;

/** {@code sweep}: a line for each case. */
class SweepCommandTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenarios() {
        session = new Session(folder).write("line.yaml", Session.LINE).write("marginal.yaml", Session.MARGINAL);
    }

    private Session.Done nine(String... more) {
        return session.run(
                Stream.concat(Arrays.stream(Session.NINE), Arrays.stream(more)).toArray(String[]::new));
    }

    static List<JsonNode> lines(Session.Done done) {
        return done.out().lines().map(SweepCommandTest::json).toList();
    }

    static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String read(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }

    @Test
    void aCaseGivesTheNumbersOfARunWithItsValues() {
        JsonNode line = lines(nine()).get(5);
        JsonNode run = json(session.run(
                        "run",
                        "marginal.yaml",
                        "--set",
                        "joint-cycle-time=80s",
                        "--set",
                        "entry.top-speed=140m/min",
                        "--json",
                        "--no-report")
                .out());

        assertThat(line.path("case").asInt()).isEqualTo(6);
        assertThat(line.path("of").asInt()).isEqualTo(9);
        assertThat(line.path("values")).hasToString("{\"joint-cycle-time\":\"80s\",\"entry.top-speed\":\"140 m/min\"}");
        assertThat(line.path("answer")).isEqualTo(run.path("answer"));
        assertThat(line.path("share_run_through")).isEqualTo(run.at("/share_run_through/mean"));
        assertThat(line.path("share_run_through_high")).isEqualTo(run.at("/share_run_through/interval_high"));
        assertThat(line.path("margin_m")).isEqualTo(run.at("/margin_at_target/strip_m"));
        assertThat(line.path("good_output_m_per_s")).isEqualTo(run.at("/output/speed_m_per_s/mean"));
        assertThat(line.path("joint_cycle_time_s")).isEqualTo(run.at("/joint/cycle_time_s/mean/mean"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"json", "csv"})
    void theLinesAreTheSameWithAnyNumberOfThreads(String format) {
        assertThat(nine("--format", format, "--threads", "1").out())
                .isEqualTo(nine("--format", format, "--threads", "7").out());
    }

    @Test
    void everyLineIsWhatItsSchemaSays_alsoThatOfACaseThatFailed() {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                .getSchema(session.run("schema", "sweep").out());
        Session.Done done = session.run("sweep", "marginal.yaml", "--vary", "entry.top-speed=100m/min,-1m/min");

        assertThat(lines(done))
                .hasSize(2)
                .allSatisfy(line -> assertThat(schema.validate(line)).isEmpty());
    }

    @Test
    void aCaseThatFailsSaysWhyInItsLineAndStopsNothingElse() {
        Session.Done done = session.run(
                "sweep", "line.yaml", "--vary", "coil-change.join.join strip=60s,sixty,{uniform: [50 s, 70 s]}");

        assertThat(done.code()).isEqualTo(ExitCode.CASE_FAILED);
        assertThat(done.err()).isEmpty();
        assertThat(lines(done))
                .extracting(line -> line.path("answer").asText())
                .containsExactly("meets", "null", "undecided");
        assertThat(lines(done).get(1).path("error").asText())
                .startsWith("coil-change.join[1].join strip = sixty; must be a number with a unit of time")
                .endsWith(".");
    }

    /** Shards are written in the folders of several machines, and put together are what one would have written. */
    @Test
    void linesAreTheSameFromWhateverFolder() {
        String[] vary = {"--vary", "process.speed=60m/min,2000m/min"};
        Session.Done there = session.run("sweep", "line.yaml", vary[0], vary[1]);
        Session.Done elsewhere =
                session.run("sweep", folder.resolve("line.yaml").toString(), vary[0], vary[1]);

        assertThat(lines(there).get(1).path("error").asText()).startsWith("line.yaml:");
        assertThat(elsewhere.out()).isEqualTo(there.out());
    }

    /** Joints of 60 s leave 40 m, joints of 90 s leave 10 m. */
    @Test
    void casesComeAsJsonLinesOrAsATableWithUnits() {
        session.given(
                        "{\"joint-cycle-time\": \"60 s\"}\n\n{\"joint-cycle-time\": \"1.5 min\", \"coil-change.crew\": 2}\n")
                .write("cases.csv", "joint-cycle-time [s];coil-change.crew\n60;\n90;2\n");

        Session.Done json = session.run("sweep", "line.yaml", "--cases", "-");
        Session.Done table = session.run("sweep", "line.yaml", "--cases", "cases.csv");

        assertThat(json.code()).as(json.err()).isZero();
        assertThat(lines(json))
                .extracting(line -> line.path("margin_m").asDouble())
                .containsExactly(40.0, 10.0);
        assertThat(lines(table))
                .extracting(line -> line.path("margin_m").asDouble())
                .containsExactly(40.0, 10.0);
        assertThat(lines(table).get(1).path("values"))
                .hasToString("{\"joint-cycle-time\":\"90 s\",\"coil-change.crew\":\"2\"}");
    }

    @Test
    void allCasesMeetTheSameRandomNumbersUnlessOneSetsItsSeed() {
        session.write("cases.csv", "run.seed\n\"\"\n5\n\"\"\n8\n");
        List<JsonNode> lines = lines(session.run("sweep", "marginal.yaml", "--cases", "cases.csv", "--seed", "5"));

        // An empty row is a case, too: the scenario under the options given.
        assertThat(lines).hasSize(4);
        assertThat(lines.get(0).path("margin_m")).isEqualTo(lines.get(1).path("margin_m"));
        assertThat(lines.get(2).path("margin_m")).isEqualTo(lines.get(1).path("margin_m"));
        assertThat(lines.get(3).path("margin_m")).isNotEqualTo(lines.get(1).path("margin_m"));
    }

    /** Whole numbers have equal shares of the interval: the Sobol points 0, 0.5, 0.75, 0.25 of 1 to 4 are 1, 3, 4, 2. */
    @Test
    void aDesignFillsTheSpace() {
        Session.Done done = session.run(
                "sweep",
                "line.yaml",
                "--vary",
                "coil-change.crew=1..4",
                "--vary",
                "usable-capacity=80m..120m",
                "--fill",
                "4");

        assertThat(lines(done))
                .extracting(line -> line.at("/values/coil-change.crew").asText() + " at "
                        + line.at("/values/usable-capacity").asText())
                .containsExactly("1 at 80 m", "3 at 100 m", "4 at 90 m", "2 at 110 m");
    }

    /** Half way between 20 and 50 is 35, and not 34.99999999999999, which is what its double in m/s comes to. */
    @Test
    void aDesignHasRoundValuesWhereTheyAreMeantToBeRound() {
        Session.Done done =
                session.run("sweep", "line.yaml", "--vary", "process.speed=20m/min..50m/min", "--fill", "8");

        assertThat(lines(done))
                .extracting(line -> line.at("/values/process.speed").asText())
                .containsExactlyInAnyOrder(
                        "20 m/min",
                        "23.75 m/min",
                        "27.5 m/min",
                        "31.25 m/min",
                        "35 m/min",
                        "38.75 m/min",
                        "42.5 m/min",
                        "46.25 m/min");
    }

    @ParameterizedTest
    @ValueSource(strings = {"json", "csv"})
    void whatWasKilledGoesOnBehindItsLastWholeLine(String format) throws IOException {
        nine("--format", format, "--out", "whole");
        String whole = read("whole");
        String begun = whole.substring(0, whole.length() / 2);
        session.write("cut", begun);

        Session.Done done = nine("--format", format, "--out", "cut");

        assertThat(done.err()).containsPattern("going on behind [1-8] cases that were done before\n");
        assertThat(read("cut")).isEqualTo(whole);
    }

    @Test
    void aDamagedLineAndAllBehindItIsRunAgain() throws IOException {
        nine("--out", "whole.jsonl");
        String whole = read("whole.jsonl");
        session.write("spoiled.jsonl", whole.replaceFirst("\"case\":4,(.*)\"stopped\":", "\"case\":4,$1\"stopped\":7"));

        Session.Done done = nine("--out", "spoiled.jsonl");

        assertThat(done.err())
                .contains("going on behind 3 cases that were done before; a damaged line and all behind"
                        + " it will be run again");
        assertThat(read("spoiled.jsonl")).isEqualTo(whole);
    }

    @Test
    void aFileThatAnotherRunIsWritingIsRefused() throws IOException {
        RandomAccessFile other = ExclusiveFile.open(folder.resolve("out.jsonl"), "");
        Session.Done done = nine("--out", "out.jsonl");
        other.close();

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err()).contains("out.jsonl is in use: the same sweep is being run.");
        assertThat(read("out.jsonl")).isEmpty();
    }

    @Test
    void aFileOfSomethingElseIsLeftAlone() throws IOException {
        session.write("mine.txt", "dear diary\n");
        nine("--seed", "8", "--out", "other.jsonl");
        String other = read("other.jsonl");

        session.write("short.txt", "dear");
        session.write("mine.jsonl", "{\"case\": 1, \"mine\": 2}\n");
        nine("--format", "csv", "--out", "whole.csv");
        String table = read("whole.csv");

        assertThat(nine("--out", "mine.txt").err())
                .contains(
                        "mine.txt is not what this sweep has left: in line 1, it is damaged, or not a line of this kind of"
                                + " sweep. Remove");
        assertThat(nine("--out", "short.txt").err()).contains("in line 1, it is not a line of a sweep. Remove");
        assertThat(nine("--out", "mine.jsonl").err()).contains("in line 1, it is damaged, or not a line of this kind");
        assertThat(nine("--out", "whole.csv").err()).contains("in line 1, it is damaged, or not a line of this kind");
        assertThat(nine("--format", "csv", "--out", "mine.jsonl").err())
                .contains("its header is not that of this sweep");
        assertThat(read("whole.csv")).isEqualTo(table);
        assertThat(read("short.txt")).isEqualTo("dear");
        assertThat(read("mine.jsonl")).isEqualTo("{\"case\": 1, \"mine\": 2}\n");
        assertThat(nine("--out", "other.jsonl").err()).contains("in line 1, it is of another sweep (");
        assertThat(read("mine.txt")).isEqualTo("dear diary\n");
        assertThat(read("other.jsonl")).isEqualTo(other);
    }

    @Test
    void aSweepGoesIntoAFile() {
        assertThat(nine("--out", "/dev/full").err())
                .contains(
                        "/dev/full cannot be written (it is a device, and must be a file). Name another file with --out.");
        assertThat(nine("--out", ".").err()).contains("(it is a folder, and must be a file)");
        assertThat(nine("--out", "line.yaml/x.jsonl").err())
                .contains("line.yaml is a file, and must be a folder). Name another file with --out.");
    }

    @Test
    void aTableWithOtherContentMakesAnotherSweep() {
        session.write("schedule.yaml", Session.LINE.replaceFirst("coil: .*", "coils: {schedule: coils.csv}"))
                .write("coils.csv", "thickness [mm],width [mm],density [kg/m3],length [m]\n2,200,7850,1000\n");
        String before = sweepOf("schedule.yaml");
        session.write("coils.csv", "thickness [mm],width [mm],density [kg/m3],length [m]\n2,200,7850,1001\n");

        assertThat(before).matches("[0-9a-f]{16}").isNotEqualTo(sweepOf("schedule.yaml"));
    }

    /** Machines have the files in folders of their own. */
    @Test
    void theSweepIsTheSameWhereverItsFilesAre() {
        String alternatives = Session.LINE + "alternatives: {quicker: {coil-change.join.join strip: 50 s}}\n";
        session.write("here/line.yaml", alternatives).write("there/a.yaml", alternatives);

        assertThat(sweepOf("here/line.yaml", "--alternative", "quicker"))
                .isEqualTo(sweepOf("there/a.yaml", "--alternative", "quicker"))
                .isNotEqualTo(sweepOf("there/a.yaml"));
    }

    private String sweepOf(String scenario, String... options) {
        Session.Done done = session.run(
                Stream.concat(Stream.of("sweep", scenario, "--vary", "coil-change.crew=1"), Arrays.stream(options))
                        .toArray(String[]::new));
        assertThat(done.code()).as(done.out() + done.err()).isZero();
        return lines(done).get(0).path("sweep").asText();
    }

    @Test
    void withoutCasesOrWithTwoKindsOfThemNothingIsRun() {
        session.write("cases.jsonl", "{\"a\": 1}\nno json\n");

        assertThat(session.run("sweep", "line.yaml").err())
                .isEqualToIgnoringNewLines("sweep needs cases. Give --cases FILE or --vary PATH=VALUES.");
        assertThat(session.run("sweep", "line.yaml", "--cases", "cases.jsonl", "--fill", "3")
                        .err())
                .startsWith("--cases names all cases; ");
        assertThat(session.run("sweep", "line.yaml", "--cases", "cases.jsonl").err())
                .contains("cases.jsonl:2:1 no json; is not an object of JSON on one line.");
        assertThat(session.run("sweep", "line.yaml", "--vary", "entry.top-speed=100m/min..nine:3")
                        .err())
                .contains("--vary entry.top-speed = nine; ");
        assertThat(session.run("sweep", "line.yaml", "--vary", "entry.top-speed=100m/min..120m/min:0")
                        .err())
                .contains(
                        "must be a whole number from 1 to 9999999. Write it like entry.top-speed=100m/min..120m/min:5.");
        assertThat(session.run("sweep", "line.yaml", "--fill", "3", "--vary", "entry.top-speed=100m/min..120m/min:5")
                        .err())
                .contains("which does not go here. Leave out :5.");
        assertThat(session.run("sweep", "line.yaml", "--vary", "coil-change.crew=1,2", "--shard", "3/2")
                        .err())
                .startsWith("--shard = 3/2; must be the number of a part and how many there are, such as 2/8");
    }

    /** Minutes and seconds have a colon, too. */
    @ParameterizedTest
    @ValueSource(strings = {"1:00 min..1:30 min:3", "60 s..1:30 min:3", "1 min..90 s:3", "60 s:90 s:3"})
    void aRangeMayBeOfMinutesAndSeconds(String range) {
        Session.Done done = session.run("sweep", "line.yaml", "--vary", "joint-cycle-time=" + range);

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().lines()).hasSize(3);
        assertThat(done.out()).contains("\"75 s\"");
    }
}
