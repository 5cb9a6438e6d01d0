package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import runthrough.scenario.source.Problem;

/** Scenarios of which a part cannot be read: what is wrong between the values of the rest is said all the same. */
class PartlyReadTest {
    private static final Path FILE = Path.of("line.yaml");
    private static final int FILES = 1500;

    private static List<String> said(String text) {
        ScenarioReading reading = ScenarioFile.of(FILE, text).read();
        return Stream.concat(problems(reading).stream(), warnings(reading).stream())
                .map(problem -> problem.path() + " = " + problem.value() + "; " + problem.rule())
                .toList();
    }

    private static List<Problem> problems(ScenarioReading reading) {
        return reading instanceof ScenarioReading.Refused refused ? refused.problems() : List.of();
    }

    private static List<Problem> warnings(ScenarioReading reading) {
        return reading instanceof ScenarioReading.Refused refused
                ? refused.warnings()
                : ((ScenarioReading.Accepted) reading).warnings();
    }

    private static String with(String coil, String entry, String accumulator, String process, String rest) {
        return String.join(
                "\n",
                "title: test",
                "coil: {" + coil + "}",
                "entry: {" + entry + "}",
                "accumulator: {" + accumulator + "}",
                "process: {" + process + "}",
                "coil-change: {join: [{weld: 60 s}]}",
                "run: {coil-changes: 20000}",
                rest);
    }

    private static final String COIL = "thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, length: 900 m";
    private static final String SLOWER = "entry.top-speed = 40 m/min; must be more than the process speed, 60 m/min";

    @Test
    void aNumberOutOfItsRangeHidesNoRelationBetweenTheOthers() {
        // Rule CHECK-35.
        assertThat(said(with(COIL, "top-speed: 40 m/min", "strands: 8, stroke: -9 m", "speed: 60 m/min", "")))
                .containsExactly(SLOWER, "accumulator.stroke = -9 m; must be more than 0 m");
        // The reserve is held against the capacity although another number of the same part cannot be read.
        assertThat(said(with(
                        COIL,
                        "top-speed: 90 m/min",
                        "capacity: 50 m, reserve: 60 m, fill-rate-limit: 9",
                        "speed: 60 m/min",
                        "")))
                .contains("accumulator.reserve = 60 m; must be at most the accumulator's capacity, 50 m")
                .hasSize(2);
    }

    @Test
    void aCoilOfWhichANumberIsWrong_stillAsksForNoSpeedOfItsOwn() {
        // Rule CHECK-35.
        String thick = COIL.replace("2 mm", "0 mm");
        String capacity = "capacity: 90 m";
        assertThat(said(with(thick, "top-speed: 40 m/min", capacity, "speed: 60 m/min", "")))
                .containsExactly("coil.thickness = 0 mm; must be more than 0 mm", SLOWER);
        // With an unknown key it might ask for one, so that the fastest speed is not known.
        assertThat(said(with(COIL + ", speed: 20 m/min", "top-speed: 40 m/min", capacity, "speed: 60 m/min", "")))
                .singleElement()
                .asString()
                .contains("coil.speed = 20 m/min; is not a known key of coil");
    }

    @Test
    void aMessageIsInTheUnitsInWhichItsValueIsWritten() {
        String capacity = "capacity: 90 m";
        assertThat(said(with(COIL, "top-speed: 40 m/min", capacity, "speed: 60 m/min", "results-in: us")))
                .containsExactly(SLOWER);
        // 60 m/min are 196.85 ft/min.
        assertThat(said(with(COIL, "top-speed: 131 ft/min", capacity, "speed: 60 m/min", "colour: blue")))
                .contains("entry.top-speed = 131 ft/min; must be more than the process speed, 196.9 ft/min")
                .hasSize(2);
    }

    @Test
    void whatIsWrongOutsideTheLineHidesNothing() {
        // Rule CHECK-35.
        assertThat(said(with(
                        COIL, "top-speed: 40 m/min", "capacity: 90 m", "speed: 60 m/min", "document: {made-by: [1]}")))
                .contains(SLOWER)
                .hasSizeGreaterThan(1);
    }

    @Test
    void aPracticeThatIsNotKnown_isNotTakenForTheUsualOne() {
        // Rule CHECK-35. Rethreading needs no entry that outruns the process.
        String text = with(COIL, "top-speed: 40 m/min", "capacity: 90 m", "speed: 60 m/min", "");
        assertThat(said(text + "practice: retread")).singleElement().asString().startsWith("practice = retread;");
        assertThat(said(text + "praktice: rethread")).singleElement().asString().startsWith("praktice = rethread;");
    }

    /** A file drawn at random; each value on a line of its own. */
    private static List<String> drawn(SplittableRandom random) {
        List<String> lines = new ArrayList<>(List.of(
                "title: test",
                "coil:",
                "  thickness: " + between(1, 9, random) + " mm",
                "  width: " + between(100, 2000, random) + " mm",
                "  density: 7850 kg/m3",
                "  length: {uniform: [1 m, " + between(2, 90, random) + " m]}",
                "  head-crop: " + between(0, 4, random) + " m",
                "  tail-crop: " + between(0, 4, random) + " m",
                "entry:",
                "  uncoilers: " + between(1, 3, random),
                "  top-speed: " + between(30, 120, random) + " m/min",
                "  acceleration: 0." + between(1, 9, random) + " m/s2",
                "  deceleration: 0." + between(1, 9, random) + " m/s2",
                "  uncoiler-path: " + between(0, 20, random) + " m",
                "  creep:",
                "    speed: " + between(5, 90, random) + " m/min",
                "    length: " + between(1, 9, random) + " m",
                "accumulator:",
                "  strands: " + between(1, 9, random),
                "  stroke: " + between(1, 9, random) + " m",
                "  emptying-speed: " + between(1, 40, random) + " m/min",
                "  reserve: " + between(0, 40, random) + " m",
                "process:",
                "  speed: " + between(20, 120, random) + " m/min",
                "  deceleration: 0.0" + between(1, 9, random) + " m/s2",
                "  restart:",
                "    level: " + between(0, 70, random) + " m",
                "    delay: {uniform: [1 s, 9 s], shift: -" + between(0, 4, random) + " s}",
                "  slowing:",
                "    speed: " + between(10, 120, random) + " m/min",
                "    level: " + between(0, 60, random) + " m",
                "    resume: " + between(0, 70, random) + " m",
                "  joint-passage:",
                "    speed: " + between(10, 120, random) + " m/min",
                "    before: " + between(0, 9, random) + " m",
                "    after: " + between(0, 90, random) + " m",
                "coil-change:",
                "  crew: " + between(1, 3, random),
                "  prepare: [{load: {constant: 60 s, people: " + between(1, 4, random) + "}}]",
                "  join:",
                "  - weld: " + between(0, 60, random) + " s",
                "  - trim: {uniform: [1 s, 9 s], people: " + between(1, 3, random) + "}",
                "  reject: {chance: " + between(0, 9, random) + " %}",
                "run:",
                "  coil-changes: " + between(1, 400, random),
                "  leave-out: " + between(0, 30, random),
                "  target: 99." + between(0, 9, random) + " %"));
        List<String> practices = List.of("join with accumulator", "join without accumulator", "rethread");
        lines.add("practice: " + practices.get(random.nextInt(practices.size())));
        return lines;
    }

    private static int between(int least, int greatest, SplittableRandom random) {
        return random.nextInt(least, greatest + 1);
    }

    @Test
    void nothingIsSaidThatDoesNotHoldOfTheFileWhenItIsMended() {
        // Rule CHECK-35.
        int said = 0;
        int found = 0;
        for (long seed = 0; seed < FILES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<String> good = drawn(random);
            List<String> bad = new ArrayList<>(good);
            int place = random.nextInt(1, bad.size());
            String line = bad.get(place);
            boolean isValue = line.indexOf(':') < line.length() - 1;
            String key = line.substring(0, line.indexOf(':'));
            // A value that cannot be read, or a key that is none; of a heading the key alone.
            boolean isUnlikeAny = random.nextInt(4) == 0;
            String unknown = isUnlikeAny ? line.replaceFirst("[a-z][a-z-]*:", "unlike-any:") : line.replace(":", "x:");
            bad.set(place, isValue && random.nextInt(4) > 0 ? key + ": -7 x" : unknown);

            List<String> whenMended = said(String.join("\n", good));
            List<String> messages = said(String.join("\n", bad)).stream()
                    .filter(message -> !message.contains("known key") && !message.contains(" is missing"))
                    .filter(message -> !message.contains("-7 x") && !message.contains(" does not say "))
                    .toList();
            assertThat(whenMended).as("file %d, line %d: %s", seed, place, line).containsAll(messages);
            said += messages.size();
            found += whenMended.size();
        }
        assertThat(found).isGreaterThan(FILES);
        assertThat(said).isGreaterThan(found / 2);
    }
}
