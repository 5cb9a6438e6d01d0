package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.scenario.FileTrials.STRIP;
import static runthrough.scenario.FileTrials.accepted;
import static runthrough.scenario.FileTrials.input;
import static runthrough.scenario.FileTrials.setting;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Joints;
import runthrough.plant.Line;
import runthrough.plant.MeanWork;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.quantity.Dimension;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;

/** The numbers of a scenario as they are listed, named and found. */
class ScenarioInputsTest {

    @TempDir
    private Path folder;

    static List<Path> shipped() throws IOException {
        return ShippedScenariosTest.shipped();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyInputOfAShippedScenarioCanBeSetToItsOwnValueAndChangesNothing(Path path) {
        ScenarioFile file = ScenarioFile.open(path);
        SimulationRequest request = accepted(file.read());

        assertThat(file.inputs()).hasSizeGreaterThan(15).allSatisfy(input -> {
            Setting asWritten = input.origin() == Input.Origin.FIGURE
                    ? input.setTo(input.present().orElseThrow(), "--set")
                    : setting(input.path(), input.text());
            assertThat(accepted(file.with(List.of(asWritten)))).isEqualTo(request);
        });
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyInputOfAShippedScenarioCanBeSetToANumberInSi(Path path) {
        ScenarioFile file = ScenarioFile.open(path);
        SimulationRequest request = accepted(file.read());

        assertThat(file.inputs())
                .allSatisfy(input -> assertThat(accepted(
                                file.with(List.of(input.setTo(input.present().orElseThrow(), "--set")))))
                        .as(input.path())
                        .isEqualTo(request));
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyInputIsNamedOnceAndIsFoundByItsName(Path path) {
        ScenarioFile file = ScenarioFile.open(path);
        Problems problems = new Problems();

        assertThat(file.inputs()).extracting(Input::path).doesNotHaveDuplicates();
        assertThat(file.inputs())
                .allSatisfy(input -> assertThat(file.input(setting(input.path(), "0"), List.of(), problems))
                        .contains(input));
        assertThat(problems.errors()).isEmpty();
    }

    /** A number that nothing in the line depends on would be a trap in a list of inputs. */
    @ParameterizedTest
    @MethodSource("shipped")
    void everyInputOfAShippedScenarioMovesTheLineOrIsRefused(Path path) {
        ScenarioFile file = ScenarioFile.open(path);
        SimulationRequest request = accepted(file.read());

        assertThat(file.inputs()).allSatisfy(input -> {
            double present = input.present().orElseThrow();
            double other = input.numeric().isWhole() ? present + 1 : present == 0 ? 0.01 : 0.97 * present;
            ScenarioReading reading = file.with(List.of(input.setTo(other, "--set")));
            if (reading instanceof ScenarioReading.Accepted accepted) {
                assertThat(accepted.request()).as(input.path()).isNotEqualTo(request);
            } else {
                assertThat(((ScenarioReading.Refused) reading).problems())
                        .as(input.path())
                        .isNotEmpty();
            }
        });
    }

    @Test
    void inputsTellValueUnitDimensionAndPlace() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        Input speed = input(file, "entry.top-speed");

        assertThat(speed.present()).hasValue(1.5);
        assertThat(speed.text()).isEqualTo("90 m/min");
        assertThat(speed.dimension()).contains(Dimension.SPEED);
        assertThat(speed.allowed()).isEqualTo("more than 0 m/min");
        assertThat(speed.origin()).isEqualTo(Input.Origin.WRITTEN);
        assertThat(speed.place()).hasToString("scenarios/tube-line.yaml:24:34");
        assertThat(input(file, "entry.uncoiler-path").origin()).isEqualTo(Input.Origin.DEFAULT);
        assertThat(input(file, "joint-cycle-time").origin()).isEqualTo(Input.Origin.FIGURE);
    }

    @Test
    void numbersOfTheRunAreSetButAreNoInputsOfTheLine() {
        ScenarioFile file = good();

        assertThat(file.inputs()).extracting(Input::path).noneMatch(path -> path.startsWith("run."));
        assertThat(accepted(file.with(List.of(setting("run.target", "95 %"))))
                        .run()
                        .target())
                .isEqualTo(0.95);
    }

    @Test
    void aWorkElementIsNamedByItsNameOrItsNumber() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        assertThat(List.of(
                        "coil-change.join.weld.travel",
                        "coil-change.join[2].travel",
                        "coil-change.join[2].weld.travel"))
                .allSatisfy(path -> {
                    Line line = accepted(file.with(List.of(setting(path, "300 mm/min"))))
                            .line();
                    WorkElement.WorkTime weld = line.change().join().get(1).time();
                    assertThat(((WorkElement.WorkTime.Travel) weld).speed().at(0.002))
                            .isEqualTo(0.005);
                });
    }

    @Test
    void elementsOfOneNameAreDistinguishedByNumber() {
        ScenarioFile file = opened(Written.with("coil-change: {join: [{weld: 20 s}, {wait: 5 s}, {weld: 30 s}]}"));

        assertThat(file.inputs())
                .extracting(Input::path)
                .contains("coil-change.join[1]", "coil-change.join.wait", "coil-change.join[3]");
        assertThat(meanJoin(file, setting("coil-change.join[3]", "40 s"))).isEqualTo(20 + 5 + 40);
    }

    @Test
    void numbersWithinALawAreNamed() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        // 20 s of fitting up become 25 s; all else, 24 + 6 s of weld and 10 s of inspection, stays.
        assertThat(meanJoin(file, setting("coil-change.join.fit up.lognormal.mean", "25 s")))
                .isEqualTo(25 + 30 + 10);
    }

    @Test
    void aNumberThatIsNotWrittenIsFoundToo() {
        Problems problems = new Problems();

        Optional<Input> delay = good().input(setting("process.restart.delay", "90 s"), List.of(), problems);

        assertThat(delay).isPresent();
        assertThat(delay.get().dimension()).contains(Dimension.TIME);
        assertThat(accepted(good().with(List.of(delay.get().setTo(90, "--x"))))
                        .line()
                        .process()
                        .restartDelay()
                        .mean())
                .isEqualTo(90);
    }

    @Test
    void whatIsNoSingleNumberIsSaidWithTheNumbersWithin() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        assertThat(noInput(file, "coil-change.join.fit up"))
                .isEqualTo("--x coil-change.join.fit up = 1; is not a single number. Name one within it:"
                        + " coil-change.join.fit up.lognormal.mean, coil-change.join.fit up.lognormal.sd.");
        assertThat(noInput(file, "title")).contains("is not a single number. Name a number of the line.");
        assertThat(noInput(file, "run.seed")).contains("is about how to run, not about the line");
        assertThat(noInput(file, "entry.creep.sped")).contains("Did you mean entry.creep.speed?");
    }

    private static String noInput(ScenarioFile file, String path) {
        Problems problems = new Problems();
        Setting asked = new Setting(path, new runthrough.scenario.source.Raw.Scalar("1", Place.whole("--x")));
        assertThat(file.input(asked, List.of(), problems)).isEmpty();
        return problems.errors().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    private static double meanJoin(ScenarioFile file, Setting setting) {
        return MeanWork.total(
                accepted(file.with(List.of(setting))).line().change().join(), Joints.only(STRIP));
    }

    private ScenarioFile good() {
        return opened(Written.with());
    }

    private ScenarioFile opened(String text) {
        return ScenarioFile.open(new Written(folder).file("line.yaml", text));
    }
}
