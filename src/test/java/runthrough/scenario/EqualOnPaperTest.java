package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.quantity.Unit;
import runthrough.scenario.source.Problem;

/** What is equal on paper is equal, in whatever units it is written and however it is worked out. */
class EqualOnPaperTest {
    private static final String LINE = """
            title: a line
            coil: {thickness: 2 mm, width: 300 mm, density: 7850 kg/m3, length: 700 m}
            entry: {top-speed: 90 m/min, acceleration: 0.3 m/s2, deceleration: 0.4 m/s2}
            accumulator: {strands: 3, stroke: 9.1 m}
            process: {speed: 12.3 m/min, acceleration: 0.2 m/s2, deceleration: 0.25 m/s2}
            coil-change: {crew: 2, join: [{weld: 20 s}]}
            """;

    private static ScenarioReading.Accepted read(String text) {
        ScenarioReading reading = ScenarioFile.of(Path.of("line.yaml"), text).read();
        assertThat(reading).as(reading.toString()).isInstanceOf(ScenarioReading.Accepted.class);
        return (ScenarioReading.Accepted) reading;
    }

    @ParameterizedTest
    @CsvSource({
        "41.5, in, 1054.1, mm",
        "93, in, 2362.2, mm",
        "1054.1, mm, 1.0541, m",
        "12.87, cm, 0.1287, m",
        "4.1, h, 246, min",
        "8.3, min, 498, s",
        "56.6928, m/min, 186, ft/min",
        "31600, mm/min, 31.6, m/min",
        "7650.48, cm, 3012, in",
        "1.1, t, 1100, kg",
        "2204.6, lb, 1.1023, short ton"
    })
    void aQuantityIsTheSameInEveryUnit(double one, String unit, double other, String otherUnit) {
        assertThat(Unit.bySymbol(unit).orElseThrow().toSi(one))
                .isEqualTo(Unit.bySymbol(otherUnit).orElseThrow().toSi(other));
    }

    /** 41.5 in are 1054.1 mm. */
    @Test
    void coilsOfOneWidthInTwoUnitsDoNotDiffer() {
        String coil = "thickness: 2 mm, density: 7850 kg/m3, length: 700 m, weight: 1";
        Line line = read(LINE.replaceFirst(
                        "coil: .*", "coils: {mix: [{width: 41.5 in, " + coil + "}, {width: 1054.1 mm, " + coil + "}]}"))
                .request()
                .line();

        assertThat(line.coilSource().kinds()).extracting(Coil::width).containsExactly(1.0541, 1.0541);
    }

    /** 3 strands of 9.1 m hold 27.3 m; 3.6 h and 30 min are 4.1 h; 246 s are 4.1 min. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "deceleration: 0.25 m/s2}; deceleration: 0.25 m/s2, restart: {level: 27.3 m}}",
                "deceleration: 0.25 m/s2}; deceleration: 0.25 m/s2, slowing: {speed: 10 m/min, level: 10 m, resume: 27.3 m}}",
                "stroke: 9.1 m; stroke: 9.1 m, emptying-speed: 4.1 m/min",
                "entry: {; entry: {creep: {speed: 0.2 m/s, length: 5 cm}, ",
                "crew: 2; shifts: [{name: early, hours: 8 h, crew: 2, breaks: [{begin: 3.6 h, length: 30 min},"
                        + " {begin: 4.1 h, length: 10 min}]}]",
                "crew: 2; shifts: [{name: early, hours: 8 h, crew: 2, breaks: [{begin: 0.1 s, length: 0.2 s},"
                        + " {begin: 0.3 s, length: 10 min}]}]",
                "weld: 20 s; weld: {uniform: [246 s, 4.1 min]}",
            })
    void whatIsAtItsBoundIsAllowed(String before, String after) {
        assertThat(read(LINE.replace(before, after)).warnings()).isEmpty();
    }

    /** 10.1 m and 20.2 m of crops leave nothing of 30.3 m; 27.3 m are all that 3 strands of 9.1 m hold. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "length: 700 m; length: 30.3 m, head-crop: 10.1 m, tail-crop: 20.2 m; must be more than 0 after its crops",
                "deceleration: 0.25 m/s2}; deceleration: 0.25 m/s2, slowing: {speed: 10 m/min, level: 27.3 m}};"
                        + " must be less than the accumulator's capacity",
            })
    void whatIsAtABoundThatItMustNotReachIsRefused(String before, String after, String why) {
        ScenarioReading reading = ScenarioFile.of(Path.of("line.yaml"), LINE.replace(before, after))
                .read();

        assertThat(((ScenarioReading.Refused) reading).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.rule()).contains(why));
    }

    /** Rule CHECK-6: with the process's own speed, 1.1 times 50 m/min, the accumulator never refills, which is warned of. */
    @Test
    void anEntryAtTheProcessSpeedIsWarnedOf(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("c.csv"), "length [m],process-speed [m/min]\n700,50\n");
        ScenarioReading reading = ScenarioFile.of(
                        folder.resolve("line.yaml"),
                        LINE.replaceFirst(
                                        "coil: \\{(.*), length: 700 m}",
                                        "coils: {schedule: c.csv, process-speed-factor: 1.1, defaults: {$1}}")
                                .replace("top-speed: 90 m/min", "top-speed: 55 m/min"))
                .read();

        assertThat(((ScenarioReading.Accepted) reading).warnings())
                .extracting(Problem::remedy)
                .containsExactly(
                        "As it is, the accumulator never refills: give a higher speed here or a lower one there.");
    }
}
