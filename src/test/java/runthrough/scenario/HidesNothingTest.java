package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.scenario.source.Problem;

/**
 * A line with something wrong between the values of every section: a bad key beside them hides none of it.
 *
 * <p>Rule CHECK-35.
 */
class HidesNothingTest {

    /** Whatever can be wrong at once between values, and what is said of it. */
    private static final List<String> CROSS_CHECKS = List.of(
            // The slower of the two speeds is that of the entry.
            "entry.top-speed = 30 m/min; must be more than the process speed, 40 m/min",
            "entry.creep.speed = 50 m/min; must be less than the slowest process speed, 40 m/min",
            "accumulator.reserve = 60 m; must be at most the accumulator's capacity, 50 m",
            "process.restart.level = 70 m; must be at most the accumulator's capacity, 50 m",
            "process.slowing.speed = 60 m/min; must be less than the process speed, 40 m/min",
            "process.slowing.level = 80 m; must be less than the accumulator's capacity, 50 m",
            "process.joint-passage.speed = 45 m/min; must be less than the process speed, 40 m/min",
            "coil-change.prepare[1].load.people = 4 people; must be at most the largest crew of any shift, 2 people",
            "coil-change.join[1].weld.people = 3 people; must be at most the largest crew of any shift, 2 people",
            // 4 h + 30 min is more than 4 h.
            "coil-change.shifts[1].breaks[1] = 4 h to 4.5 h after the start of early; must end within the shift, which lasts 4 h",
            "run.leave-out = 30 coil changes; must be less than the coil changes run, 20",
            "run.target-without-stop = 98 %; should be at least the target to run through, 99 %");

    private static Map<String, String> sections() {
        Map<String, String> sections = new LinkedHashMap<>();
        sections.put("coil", "thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, length: 900 m");
        sections.put("entry", "top-speed: 30 m/min, creep: {speed: 50 m/min, length: 9 m}");
        sections.put("accumulator", "capacity: 50 m, reserve: 60 m");
        sections.put(
                "process",
                "speed: 40 m/min, restart: {level: 70 m}, slowing: {speed: 60 m/min, level: 80 m, resume: 90 m},"
                        + " joint-passage: {speed: 45 m/min}");
        sections.put(
                "coil-change",
                "shifts: [{name: early, hours: 4 h, crew: 2, breaks: [{begin: 4 h, length: 30 min}]}],"
                        + " prepare: [{load: {constant: 9 s, people: 4}}],"
                        + " join: [{weld: {constant: 9 s, people: 3}}]");
        sections.put("run", "coil-changes: 20, leave-out: 30, target: 99 %, target-without-stop: 98 %");
        return sections;
    }

    private static List<String> said(Map<String, String> sections) {
        String text = sections.entrySet().stream()
                .map(section -> section.getKey() + ": {" + section.getValue() + "}")
                .collect(Collectors.joining("\n", "title: test\n", "\n"));
        ScenarioReading.Refused refused = (ScenarioReading.Refused)
                ScenarioFile.of(Path.of("line.yaml"), text).read();
        return Stream.concat(refused.problems().stream(), refused.warnings().stream())
                .map(HidesNothingTest::text)
                .toList();
    }

    private static String text(Problem problem) {
        return problem.path() + " = " + problem.value() + "; " + problem.rule();
    }

    @Test
    void allIsSaidOfTheLineWithoutABadKey() {
        assertThat(said(sections())).containsAll(CROSS_CHECKS);
    }

    @ParameterizedTest
    @CsvSource({
        "coil, colour: blue",
        "coil, head-crop: -1 m",
        "coil, widht: 2 m",
        "coil, mass: 9 t",
        "coil, 'outer-diameter: 400 mm, inner-diameter: 508 mm'",
        "coil, winding-factor: 0.9",
        "entry, acceleration: -0.5 m/s2",
        "entry, deceleration: 0.5",
        "entry, uncoilers: 0",
        "entry, uncoiler-path: wide",
        "entry, colour: blue",
        "entry, acceleratoin: 0.5 m/s2",
        "accumulator, fill-rate-limit: 9",
        "accumulator, overtravel-allowance: -9 m",
        "accumulator, colour: blue",
        "process, acceleration: 0 m/s2",
        "process, path: -1 m",
        "process, scrap-per-stop: 9 kg",
        "process, 'downtime: {running: {exponential: -3 h}, standing: 4 min}'",
        "process, 'downtime: {running: 3 h}'",
        "process, 'joint-break: {chance: 2, length: 4 m, repair: 9 s}'",
        "process, colour: blue",
        "coil-change, 'tail: [{shear: -8 s}]'",
        "coil-change, 'tail: [{shear: {lognormal: [50 s, -12 s]}}]'",
        "coil-change, 'tail: [{shear: {colour: blue}}]'",
        "coil-change, 'tail: [{shear: {travel: 600 kg, plus: 6 s}}]'",
        "coil-change, 'tail: [{shear: {triangular: [9 s, 8 s, 7 s], chance: 120 %}}]'",
        "coil-change, 'tail: [{shear: {constant: 8 s, uniform: [7 s, 9 s]}}]'",
        "coil-change, 'reject: {chance: 120 %}'",
        "coil-change, 'reject: {chance: 2 %, every: 20}'",
        "coil-change, join-shorter-by: -1 s",
        "coil-change, colour: blue",
        "run, replications: 1.5",
        "run, seed: x",
        "run, hours-per-year: 9000 h",
        "run, colour: blue",
    })
    void aBadKeyOfTheSameSectionHidesNothing(String section, String badKey) {
        Map<String, String> sections = sections();
        sections.merge(section, badKey, (good, bad) -> good + ", " + bad);
        assertThat(said(sections)).containsAll(CROSS_CHECKS).hasSizeGreaterThan(CROSS_CHECKS.size());
    }

    @ParameterizedTest
    @CsvSource({"spares, 3", "colour, blue", "wages, per-hour: 9"})
    void aSectionThatIsNotKnownHidesNothing(String name, String value) {
        Map<String, String> sections = sections();
        sections.put(name, value);
        assertThat(said(sections)).containsAll(CROSS_CHECKS);
    }

    @Test
    void aMissingKeyHidesOnlyWhatRestsOnIt() {
        Map<String, String> sections = sections();
        sections.computeIfPresent("process", (name, keys) -> keys.replace("speed: 40 m/min, ", ""));
        assertThat(said(sections))
                .containsAll(CROSS_CHECKS.stream()
                        .filter(check -> !check.contains("process speed"))
                        .toList())
                .noneMatch(check -> check.contains("process speed"));
    }

    /** A coil of 0.5 m is no longer than its crops, and the entry slower than the process, whatever the thickness of another coil. */
    @Test
    void aBadCoilOfAMixHidesNothingOfTheOthers() {
        Map<String, String> sections = sections();
        sections.remove("coil");
        sections.put(
                "coils",
                "defaults: {density: 7850 kg/m3, head-crop: 0.4 m, tail-crop: 0.3 m, width: 240 mm}, mix: ["
                        + "{weight: 70 %, name: short one, thickness: 2 mm, length: 0.5 m},"
                        + "{weight: 30 %, name: bad, thickness: -1 mm, length: 700 m}]");

        List<String> said = said(sections);

        assertThat(said).containsAll(CROSS_CHECKS);
        assertThat(said).anyMatch(text -> text.startsWith("coils.mix[1] = -0.2 m of usable strip"));
        assertThat(said).anyMatch(text -> text.contains("-1 mm"));
    }

    private static Map<String, String> mix(String defaults, String... coils) {
        Map<String, String> sections = sections();
        sections.remove("coil");
        sections.put(
                "coils",
                "defaults: {density: 7850 kg/m3, head-crop: 0.4 m, tail-crop: 0.3 m, inner-diameter: 508 mm, "
                        + defaults + "}, mix: [{" + String.join("}, {", coils) + "}]");
        return sections;
    }

    @Test
    void aCoilOfAMixThatContradictsItselfHidesNothingOfTheOthers() {
        String good = "weight: 3, thickness: 2 mm, length: 700 m";
        String shorter = "weight: 3, thickness: 2 mm, length: 0.5 m";
        for (String bad : List.of("outer-diameter: 400 mm", "outer-diameter: 1450 mm, length: 600 m", "mass: heavy")) {
            List<String> said = said(mix("width: 240 mm", "weight: 1, thickness: 3 mm, " + bad, good, shorter));
            assertThat(said).as(bad).containsAll(CROSS_CHECKS);
            assertThat(said).as(bad).anyMatch(text -> text.startsWith("coils.mix[3] = -0.2 m of usable strip; must"));
            assertThat(said).as(bad).noneMatch(text -> text.startsWith("coils.mix[2]"));
        }
    }

    @Test
    void aBadCoilOfAMixHidesNoSumOfWeights() {
        assertThat(said(mix(
                        "width: 240 mm",
                        "weight: 60 %, thickness: two mm, length: 700 m",
                        "weight: 50 %, thickness: 2 mm, length: 700 m")))
                .contains("coils.mix = ; the weights add up to 110 %; must be 100 %");
        // What cannot be read might be any weight.
        assertThat(said(mix(
                        "width: 240 mm",
                        "weight: -60 %, thickness: 2 mm, length: 700 m",
                        "weight: 50 %, thickness: 2 mm, length: 700 m")))
                .noneMatch(text -> text.contains("the weights"));
    }

    @Test
    void aBadDefaultHidesNothingOfTheCoilsAndIsSaidOnce() {
        List<String> said =
                said(mix("width: wide", "weight: 1, thickness: two mm, length: 700 m", "weight: 1, length: 700 m"));

        assertThat(said).containsAll(CROSS_CHECKS);
        assertThat(said)
                .filteredOn(text -> text.startsWith("coils"))
                .extracting(text -> text.replaceAll(" .*", ""))
                .containsExactly("coils.defaults.width", "coils.mix[1].thickness", "coils.mix[2].thickness");
    }

    @Test
    void aMisspeltGroupHidesNothingWithinIt() {
        Map<String, String> sections = sections();
        sections.put("coil-chnage", "crew: two");
        sections.remove("coil-change");
        assertThat(said(sections)).anyMatch(text -> text.startsWith("coil-chnage.crew = two; must be a whole number"));
    }
}
