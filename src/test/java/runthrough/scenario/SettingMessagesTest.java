package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.scenario.FileTrials.refusal;
import static runthrough.scenario.FileTrials.setting;
import static runthrough.scenario.FileTrials.shown;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.scenario.source.Problems;

/** What is wrong with what is set in a scenario file, in the words that the user reads. */
class SettingMessagesTest {

    @TempDir
    private Path folder;

    @Test
    void aFormerPathIsAnsweredWithItsNewName() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        assertThat(refusal(file, setting("joint-time", "60 s")))
                .containsExactly(
                        "--set joint-time = 60 s; is now called joint-cycle-time, or rethread-time where the line"
                                + " rethreads. Write the new name.");
        assertThat(refusal(file, setting("process.own-stops.running", "3 h")))
                .containsExactly(
                        "--set process.own-stops.running = 3 h; is now called process.downtime.running. Write the"
                                + " new name.");
    }

    @Test
    void anUnknownPathIsSaidWithTheNearest() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        assertThat(refusal(file, setting("entry.topspeed", "100 m/min")))
                .containsExactly("--set entry.topspeed = 100 m/min; is not a part of this scenario. Did you mean"
                        + " entry.top-speed?");
        assertThat(refusal(file, setting("top-speed", "100 m/min")).get(0)).contains("Did you mean entry.top-speed?");
        assertThat(refusal(file, setting("coil-change.join.wled.travel", "1 m/min"))
                        .get(0))
                .contains("Did you mean coil-change.join.weld.travel?");
        assertThat(refusal(file, setting("joint-cycle-tme", "1 min")).get(0))
                .contains("Did you mean joint-cycle-time?");
        assertThat(refusal(file, setting("accumulator.fill-rate-limt", "1 m/min"))
                        .get(0))
                .contains("Did you mean accumulator.fill-rate-limit?");
        assertThat(refusal(file, setting("zzz", "1")).get(0)).contains("The command inputs lists all numbers");
    }

    @Test
    void aWrongValueIsSaidAtThePlaceWhereItWasSet() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        assertThat(refusal(file, setting("entry.top-speed", "100 kg")).get(0))
                .startsWith("--set entry.top-speed = 100 kg; kg is a unit of mass, not of speed; allowed are");
        assertThat(refusal(file, setting("entry.top-speed", "30 m/min")).get(0)).startsWith("--set entry.top-speed = ");
        assertThat(refusal(file, setting("joint-cycle-time", "10 m")).get(0))
                .startsWith("--set joint-cycle-time = 10 m; m is a unit of length, not of time");
        assertThat(refusal(file, setting("rated-speed", "100 m/min")).get(0)).startsWith("--set ");
    }

    @Test
    void severalThingsWrongComeAtOnce() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        ScenarioReading reading = file.with(List.of(
                setting("entry.topspeed", "1 m/min"),
                setting("coil.width", "0 mm"),
                setting("joint-cycle-time", "60 s"),
                setting("joint-cycle-time", "70 s")));

        assertThat(shown(reading))
                .hasSize(3)
                .anyMatch(text -> text.contains("entry.topspeed"))
                .anyMatch(text -> text.contains("coil.width = 0 mm; must be more than 0 mm"))
                .anyMatch(text -> text.contains("joint-cycle-time = 70 s; is set twice"));
    }

    @Test
    void aWrongFigureIsSaidAlsoWhereOtherThingsAreWrong() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        ScenarioReading reading = file.with(List.of(setting("coil.width", "0 mm"), setting("rated-speed", "-4 m/min")));

        assertThat(shown(reading))
                .hasSize(2)
                .anyMatch(text -> text.contains("coil.width = 0 mm; must be more than 0 mm"))
                .anyMatch(text -> text.contains("rated-speed = -4 m/min; must be more than 0 m/min"));
    }

    @Test
    void whatIsWrongWithTheFileComesWithEveryReading() {
        ScenarioFile file = ScenarioFile.open(folder.resolve("nowhere.yaml"));

        assertThat(shown(file.read()).get(0)).contains("there is no such file");
        assertThat(shown(file.with(List.of(setting("entry.top-speed", "1 m/min"))))
                        .get(0))
                .contains("there is no such file");
        assertThat(file.inputs()).isEmpty();
    }

    /** Of two groups of one name nobody knows which was meant, whatever is set within them. */
    @ParameterizedTest
    @ValueSource(strings = {"process.acceleration", "entry.acceleration"})
    void aGroupThatIsGivenTwiceStaysRefused(String set) throws IOException {
        String line = Files.readString(Path.of("scenarios", "tube-line.yaml"));
        Path file = folder.resolve("twice.yaml");
        Files.writeString(file, line + "\nprocess: {speed: 50 m/min}\n");

        assertThat(refusal(ScenarioFile.open(file), setting(set, "0.3 m/s2")))
                .singleElement()
                .asString()
                .contains("process", "is given twice, first in line");
    }

    @Test
    void aValueThatIsNotYamlIsSaidWhereItWasWritten() {
        Problems problems = new Problems();

        assertThat(Setting.written("coil-change.join", "[{weld: 3 s}", "--set", problems))
                .isEmpty();
        assertThat(problems.errors())
                .singleElement()
                .satisfies(problem -> assertThat(problem.toString())
                        .startsWith("--set coil-change.join = [{weld: 3 s}; is not YAML"));
    }

    /** Signs that mean something to YAML and nothing to a person. */
    @ParameterizedTest
    @ValueSource(strings = {"|", ">", "&x", "%"})
    void whatIsNoValueIsCalledThat(String text) {
        Problems problems = new Problems();

        assertThat(Setting.written("process.speed", text, "--set", problems)).isEmpty();
        assertThat(problems.errors())
                .singleElement()
                .asString()
                .isEqualTo("--set process.speed = " + text
                        + "; cannot be read as a value. Give a number with its unit, a word, or a text in quotes.");
    }
}
