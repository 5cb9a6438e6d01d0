package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.cli.terminal.ExitCode;

/** {@code map}: where the target is met, over two numbers; said first, drawn, and taken up again when interrupted. */
class MapCommandTest {
    private static final List<String> FILES = List.of("map-points.csv", "map.json", "report.html");

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenarios() {
        session = new Session(folder).write("line.yaml", Session.LINE).write("marginal.yaml", Session.MARGINAL);
    }

    /** Half the way to what it may be at most, where half as much again would be too much. */
    @Test
    void theUsualRangeHoldsOnlyWhatIsAllowed() throws IOException {
        session.write(
                "wound.yaml",
                Session.LINE.replace(
                        "length: 1000 m", "outer-diameter: 1400 mm, inner-diameter: 508 mm, winding-factor: 0.9"));

        JsonNode map = new ObjectMapper()
                .readTree(session.run(
                                "map",
                                "wound.yaml",
                                "--x",
                                "coil.winding-factor",
                                "--y",
                                "process.speed",
                                "--points",
                                "4",
                                "--no-report",
                                "--json")
                        .out());

        assertThat(map.at("/x_axis/from").asDouble()).isEqualTo(0.45, within(1e-9));
        // Rounded to two digits, as people would write it.
        assertThat(map.at("/x_axis/to").asDouble()).isEqualTo(0.95, within(1e-9));
    }

    /** What is written as an example can be typed as it stands. */
    @ParameterizedTest
    @ValueSource(
            strings = {"coil.winding-factor=0.9..1.1", "coil.head-crop=-1m..1m", "entry.top-speed=-5m/min..5m/min"})
    void aRangeThatIsRefusedHasAnExampleThatIsTaken(String range) {
        session.write(
                "wound.yaml",
                Session.LINE.replace(
                        "length: 1000 m",
                        "outer-diameter: 1400 mm, inner-diameter: 508 mm, winding-factor: 0.95, head-crop: 0 m"));

        Session.Done refused = session.run("map", "wound.yaml", "--x", range, "--y", "joint-cycle-time");
        Matcher example = Pattern.compile("such as ([^ ]+)\\.\n").matcher(refused.err());

        assertThat(refused.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(example.find()).as(refused.err()).isTrue();
        String path = range.substring(0, range.indexOf('='));
        assertThat(session.run("sensitivity", "wound.yaml", "--no-report", "--range", path + "=" + example.group(1))
                        .err())
                .isEmpty();
    }

    /** A reserve of more than the whole accumulator is none, whatever the number of people. */
    @Test
    void aMapWithoutAnyLineIsRefusedAndNothingIsLeft() {
        Session.Done done = session.run(
                "map",
                "line.yaml",
                "--x",
                "accumulator.reserve=1000m..2000m",
                "--y",
                "coil-change.crew=1..3",
                "--points",
                "9",
                "--out",
                "map");

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err()).contains("no line can be so", "must be at most the accumulator's capacity");
        assertThat(done.out()).isEmpty();
        assertThat(session.files()).noneMatch(file -> file.contains("map"));
    }

    /** 100 m bear joints of 100 s at 60 m/min, and 100 m/min at joints of 60 s. */
    @Test
    void withoutOptionsJointCycleTimeIsMappedAgainstProcessSpeed() {
        Session.Done done = session.run("map", "line.yaml", "--no-report", "--points", "300");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().lines().skip(1).findFirst().orElseThrow())
                .matches("ON PART OF THE MAP\\. The target of 95 % is met on \\d\\d(\\.\\d)? % of the map: joint.*");
        assertThat(done.out().replace('\n', ' '))
                .contains("The line as it is, at 60 s and 60 m/min, meets it")
                .contains(
                        "With joint cycle time changed alone, the target is still met with 40 s more on every pass of the"
                                + " join work, and lost beyond.")
                .contains("With rated speed changed alone, the target is still met with a process speed of 100 m/min,")
                .contains("The hand calculation draws the same line as the simulation, within a cell");
        assertThat(done.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    /** Rule LEVER-12: a value does not depend on who asks. */
    @Test
    void aSingleValueIsThatOfLimits_notReadOffTheGrid() throws IOException {
        JsonNode map = json("map", "marginal.yaml", "--no-report", "--json", "--points", "40");
        JsonNode limits = json("limits", "marginal.yaml", "--no-report", "--json");

        JsonNode speed = StreamSupport.stream(limits.get("limits").spliterator(), false)
                .filter(one -> one.get("what").asText().equals("process-speed"))
                .findFirst()
                .orElseThrow();
        JsonNode below = map.get("target_down");
        assertThat((below.isNull() ? map.get("target_up") : below).asDouble())
                .isEqualTo(
                        speed.get(speed.get("low").isNull() ? "value" : "low").asDouble());
    }

    private JsonNode json(String... command) throws IOException {
        return new ObjectMapper().readTree(session.run(command).out());
    }

    /** How fast the process may be does not depend on how fast it gets there: both lines of the map lie level. */
    @Test
    void aLineThatLiesLevelIsDrawn() throws IOException {
        Session.Done done = session.run(
                "map",
                "line.yaml",
                "--x",
                "process.acceleration=0.1m/s2..0.5m/s2",
                "--y",
                "rated-speed",
                "--points",
                "40",
                "--out",
                "out");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(Files.readString(folder.resolve("out/report.html")))
                .contains("hand calculation: capacity")
                .doesNotContain("NaN");
    }

    /** 57 s at 1 m/s draw 57 m; the points of a map lie some metres apart. */
    @Test
    void aCapacityOnStrandsIsGivenInWholeOnesToo() {
        session.write("strands.yaml", """
                title: Strands (invented)
                coil: {thickness: 2 mm, width: 1 m, density: 7850 kg/m3, length: 2000 m}
                entry: {top-speed: 2 m/s}
                accumulator: {strands: 10, stroke: 10 m}
                process: {speed: 1 m/s}
                coil-change: {crew: 2, join: [{weld: 57 s}]}
                run: {coil-changes: 5, replications: 1, target: 99 %}
                """);

        Session.Done done = session.run(
                "map",
                "strands.yaml",
                "--no-report",
                "--points",
                "300",
                "--x",
                "usable-capacity=30m..150m",
                "--y",
                "rated-speed=0.8m/s..1.2m/s");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().replace('\n', ' '))
                .contains(
                        "the target is still met with an accumulator that holds 60 m (6 strands), instead of 100 m, and lost"
                                + " beyond.");
    }

    /** Joints of 120 s need 120 m of 100 m at 1 m/s: 20 s off every pass, as on the axis of their mean. */
    @Test
    void anAxisOfSecondsOffEveryPassHasTheLeversAnswer() {
        session.write("long.yaml", Session.LINE.replace("60 s", "120 s"));

        Session.Done done = session.run(
                "map", "long.yaml", "--x", "coil-change.join-shorter-by=0s..60s", "--y", "rated-speed", "--no-report");

        assertThat(done.out().replaceAll("\\s+", " "))
                .contains(
                        "With coil-change.join-shorter-by changed alone, the target is met with 20 s off every pass of the"
                                + " join work.")
                .doesNotContain("read off the grid");
    }

    @Test
    void anyTwoNumbersAreMapped() throws IOException {
        Session.Done done = session.run(
                "map",
                "line.yaml",
                "--json",
                "--no-report",
                "--points",
                "600",
                "--x",
                "coil-change.join.join strip=30s..130s",
                "--y",
                "accumulator.capacity=50m..150m");
        JsonNode map = new ObjectMapper().readTree(done.out());

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(map.at("/format").asText()).isEqualTo("runthrough-map/2");
        assertThat(map.at("/x_axis/path").asText()).isEqualTo("coil-change.join.join strip");
        assertThat(map.at("/own_x").asDouble()).isEqualTo(60);
        assertThat(map.at("/own_y").asDouble()).isEqualTo(100);
        // At 1 m/s as many metres as seconds are needed.
        assertThat(map.at("/target_right").asDouble()).isCloseTo(100, within(5.0));
        assertThat(map.at("/target_down").asDouble()).isCloseTo(60, within(5.0));
        // Of 100 x 100, that above the diagonal from (50, 50) to (130, 130), and all left of 50.
        assertThat(map.at("/parts/meets").asDouble())
                .isCloseTo((20 * 100 + 80 * 100 - 80 * 80 / 2.0) / 10_000, within(0.03));
    }

    @Test
    void wholeNumbersAreMappedAtWholeNumbers() throws IOException {
        Session.Done done = session.run(
                "map",
                "line.yaml",
                "--json",
                "--no-report",
                "--x",
                "entry.uncoilers=1..3",
                "--y",
                "rated-speed=50m/min..80m/min",
                "--points",
                "40");
        JsonNode map = new ObjectMapper().readTree(done.out());

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(map.at("/x_axis/points").asInt()).isEqualTo(3);
        assertThat(map.at("/x_axis/unit_si").isNull()).isTrue();
    }

    @Test
    void theReportHoldsTheMapAsAPictureThatIsNotLarge() throws IOException {
        Session.Done done = session.run("map", "marginal.yaml", "--out", "report", "--points", "400");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(session.files())
                .filteredOn(file -> file.startsWith("report"))
                .containsExactlyElementsOf(
                        FILES.stream().map(file -> "report/" + file).toList());
        String page = Files.readString(folder.resolve("report/report.html"));
        String picture = page.substring(page.indexOf("<svg"), page.lastIndexOf("</svg"));
        assertThat(picture)
                .hasSizeLessThan(150_000)
                .contains("the line as it is", "hand calculation: capacity", "target of 95 %", "below 50 %");
        assertThat(Files.readString(folder.resolve("report/map-points.csv")))
                .startsWith("joint-cycle-time (s),rated-speed (m/min),share run through,");
    }

    private void interruptOnceItHasBegun(Thread map, AtomicBoolean isOver) {
        while (!isOver.get()
                && Stream.of(Objects.requireNonNull(folder.toFile().list()))
                        .noneMatch(file -> file.endsWith(".progress"))) {
            Thread.onSpinWait();
        }
        map.interrupt();
    }

    @Test
    void aMapThatWasGivenUpLeavesItsPointsAndComesOutTheSame() throws IOException, InterruptedException {
        String[] command = {"map", "marginal.yaml", "--out", "report", "--points", "100"};
        session.run(command);
        byte[] whole = Files.readAllBytes(folder.resolve("report/map.json"));
        Files.delete(folder.resolve("report/map.json"));

        Thread map = Thread.currentThread();
        AtomicBoolean isOver = new AtomicBoolean();
        Thread user = new Thread(() -> interruptOnceItHasBegun(map, isOver));
        user.start();
        Session.Done givenUp = session.run(command);
        isOver.set(true);
        user.join();
        boolean wasInterrupted = Thread.interrupted();
        assertThat(wasInterrupted).isTrue();
        assertThat(givenUp.code()).isEqualTo(ExitCode.GIVEN_UP);
        assertThat(givenUp.err()).contains("the same command goes on from there");
        assertThat(session.files()).anyMatch(file -> file.endsWith(".progress")).doesNotContain("report/map.json");

        Session.Done resumed = session.run(command);
        assertThat(resumed.code()).as(resumed.err()).isZero();
        assertThat(Files.readAllBytes(folder.resolve("report/map.json"))).isEqualTo(whole);
        assertThat(session.files()).noneMatch(file -> file.endsWith(".progress"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--x entry.topspeed=1m/min..2m/min | --x entry.topspeed = 1m/min..2m/min; is not a part of this scenario. Did"
                        + " you mean entry.top-speed?",
                "--x joint-cycle-time=150s..30s | --x joint-cycle-time = 150s..30s; must rise: 30s is not more than 150s. Give the least",
                "--x joint-cycle-time=30s..30s | must rise",
                "--x joint-cycle-time=30m..150m | --x joint-cycle-time = 30m; m is a unit of length, not of time",
                "--x joint-cycle-time=30..150 | --x joint-cycle-time = 30; the unit is missing",
                "--x joint-cycle-time=30s | must be a range, from its least to its greatest value with two dots between them",
                "--x joint-cycle-time=30s.. | must be a range",
                "--x joint-cycle-time=-30s..50s | must be more than 0 s",
                "--y entry.uncoilers=1..2.5 | must be a whole number, at least 1 and at most 100",
                "--x joint-cycle-time=30s..90s --y joint-cycle-time=10s..20s | is on the other side of the map already",
                "--x accumulator.capacity=0m..50m | must be more than 0 m",
                "--x title=1..2 | is not a single number",
                "--x run.seed=1..2 | is about how to run, not about the line",
                "--target 100% | must be more than 0 % and less than 100 %",
                "--target 0% | must be more than 0 % and less than 100 %",
                "--points 3 | --points",
            })
    void badInputIsRefusedBeforeAnythingIsComputed(String options, String message) {
        String[] words = ("map line.yaml " + options).split(" ");

        Session.Done done = session.run(words);

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err()).contains(message);
        assertThat(done.out()).isEmpty();
        assertThat(session.files()).containsExactly("line.yaml", "marginal.yaml");
    }

    @Test
    void valuesThatAreSetHoldAllOverTheMap() throws IOException {
        Session.Done done = session.run(
                "map",
                "line.yaml",
                "--json",
                "--no-report",
                "--points",
                "100",
                "--set",
                "usable-capacity=50m",
                "--set",
                "joint-cycle-time=40s");
        JsonNode map = new ObjectMapper().readTree(done.out());

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(map.at("/own_x").asDouble()).isEqualTo(40);
        assertThat(map.at("/scenario/changes")).hasSize(2);
        // 50 m at 1 m/s.
        assertThat(map.at("/target_right").asDouble()).isCloseTo(50, within(5.0));
    }
}
