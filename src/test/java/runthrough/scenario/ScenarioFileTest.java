package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.CoilSize;
import runthrough.plant.Joint;
import runthrough.plant.Joints;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.MeanWork;
import runthrough.plant.Practice;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.quantity.Dimension;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;

class ScenarioFileTest {

    /** Of the line under test, joined to its like. */
    private static final Joint STRIP = Joint.alike(0.24, 0.002);

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
    void aWholeSectionMayBeReplaced() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        Line line = accepted(file.with(List.of(
                        setting("practice", "join without accumulator"),
                        setting("accumulator", "none"),
                        setting("coil-change.join", "[{weld: {triangular: [20 s, 30 s, 70 s]}}]"))))
                .line();

        assertThat(line.accumulator().form()).isEqualTo(new StorageForm.None());
        assertThat(line.change().join()).extracting(WorkElement::name).containsExactly("weld");
        assertThat(line.change().join().get(0).time().drawn().mean()).isEqualTo(40);
    }

    @Test
    void anElementAndASectionMayBeAdded() {
        ScenarioFile file = good();

        Line line = accepted(file.with(List.of(
                        setting("coil-change.join[+]", "{planish: 12 s}"),
                        setting("coil-change.prepare[+]", "{fetch: 60 s}"),
                        setting("coil-change.reject.chance", "5 %"),
                        setting("process.restart.delay", "90 s"))))
                .line();

        assertThat(line.change().join()).extracting(WorkElement::name).containsExactly("join", "planish");
        assertThat(line.change().prepare()).extracting(WorkElement::name).containsExactly("fetch");
        assertThat(line.change().reject().meanExtraPasses()).isEqualTo(0.05 / 0.95);
        assertThat(line.process().restartDelay().mean()).isEqualTo(90);
    }

    @Test
    void settingOneWayToSayAThingReplacesTheOthers() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        Line line = accepted(file.with(List.of(setting("accumulator.capacity", "60 m"), setting("coil.mass", "4 t"))))
                .line();

        assertThat(line.accumulator().form()).isEqualTo(new StorageForm.Direct(60));
        assertThat(line.accumulator().reserve()).isEqualTo(2);
        assertThat(line.coils().get(0).size()).isInstanceOf(CoilSize.ByMass.class);
    }

    @Test
    void aSimpleTimeBecomesMoreWhenPartOfMoreIsSet() {
        ScenarioFile file = good();

        Line sometimes = accepted(file.with(List.of(setting("coil-change.join.join.chance", "10 %"))))
                .line();
        Line travel = accepted(file.with(List.of(setting("coil-change.join.join.travel", "600 mm/min"))))
                .line();

        assertThat(sometimes.change().join().get(0).meanTime(STRIP)).isEqualTo(5);
        assertThat(travel.change().join().get(0).meanTime(STRIP)).isEqualTo(24);
    }

    @Test
    void aCoilOfAMixTakesItsOwnSizeOverTheDefaults() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-spiral.yaml"));

        Line line = accepted(file.with(List.of(setting("coils.mix[1].length", "700 m"))))
                .line();

        assertThat(line.coils().get(0).meanLength()).isEqualTo(700);
        assertThat(line.coils().get(1).size()).isInstanceOf(CoilSize.ByDiameters.class);
    }

    /** Tube line: 8 + 20 + 24 + 6 + 10 s once, and 2 in 98 times again; 60 s are 60 / 69.388 of that. */
    @Test
    void jointCycleTimeAsAWholeScalesAllStandingWork() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));
        Input joint = input(file, "joint-cycle-time");

        Line line = accepted(file.with(List.of(setting("joint-cycle-time", "60 s"))))
                .line();

        assertThat(joint.present().orElseThrow()).isEqualTo(68 / 0.98, Assertions.within(1e-12));
        assertThat(MeanWork.standing(line.change(), Joints.only(STRIP))).isEqualTo(60, Assertions.within(1e-12));
        assertThat(line.change().join().get(0).time().drawn().sd())
                .isEqualTo(6 * 60 * 0.98 / 68, Assertions.within(1e-12));
    }

    /** Preparing again after a reject is not part of what is scaled, and the strip stands for it: 1 in 5 times 30 s. */
    @Test
    void jointCycleTimeMustLeaveRoomForPreparingAgainAfterRejects() {
        ScenarioFile file = opened(
                Written.with(
                        "coil-change: {prepare: [{feed: {constant: 30 s, redo: yes}}], join: [{join: 50 s}], reject: {every: 5}}"));

        assertThat(input(file, "joint-cycle-time").present()).hasValue(50 * 1.2 + 6);
        assertThat(MeanWork.standing(
                        accepted(file.with(List.of(setting("joint-cycle-time", "36 s"))))
                                .line()
                                .change(),
                        Joints.only(STRIP)))
                .isEqualTo(36, Assertions.within(1e-12));
        assertThat(refusal(file, setting("joint-cycle-time", "6 s")))
                .containsExactly(
                        "--set joint-cycle-time = 6 s; must be more than 6 s. Give the mean time of the work on the standing"
                                + " strip.");
    }

    @Test
    void figuresOfAMixAreMeansOverTheCoilsAsTheyCome() {
        ScenarioFile file = opened(Written.with(
                        "coils: {mix: [{weight: 3, width: 100 mm, length: 400 m}, {weight: 1, width: 300 mm, length: 800 m}],"
                                + " defaults: {thickness: 2 mm, density: 8000 kg/m3}}",
                        "coil-change: {join: [{weld: {travel: 10 mm/s}}]}")
                .replaceAll("(?m)^coil:.*$", ""));

        // 3 in 4 are 400 m of 1.6 kg/m, 1 in 4 800 m of 4.8 kg/m.
        assertThat(input(file, "coil-length").present()).hasValue(500);
        assertThat(input(file, "coil-mass").present().orElseThrow())
                .isEqualTo(0.75 * 640 + 0.25 * 3840, Assertions.within(1e-9));
        // The wider strip is 100 mm for 9 pairs in 16, else 300 mm.
        assertThat(input(file, "joint-cycle-time").present().orElseThrow())
                .isEqualTo((9 * 10 + 7 * 30) / 16.0, Assertions.within(1e-12));
        Line longer =
                accepted(file.with(List.of(setting("coil-length", "1 km")))).line();
        assertThat(longer.coils().get(1).meanLength()).isEqualTo(1600);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tube-line", "stamping-joiner", "tube-spiral", "coating-line"})
    void usableCapacityIsSetWhateverTheFormOfTheAccumulator(String name) {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", name + ".yaml"));
        double capacity = 1.2 * input(file, "usable-capacity").present().orElseThrow();
        Class<?> form = accepted(file.read()).line().accumulator().form().getClass();

        Line line = accepted(file.with(List.of(input(file, "usable-capacity").setTo(capacity, "--set"))))
                .line();

        assertThat(line.accumulator().capacity()).isEqualTo(capacity, Assertions.within(1e-9 * capacity));
        assertThat(line.accumulator().form()).isInstanceOf(form);
    }

    @Test
    void ratedSpeedScalesTheSpeedsOfCoilsAlike() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "slitter.yaml"));

        Line line = accepted(file.with(List.of(setting("rated-speed", "200 ft/min"))))
                .line();

        assertThat(line.coils().get(0).processSpeed().orElseThrow())
                .isEqualTo(200 * 0.3048 / 60, Assertions.within(1e-12));
        assertThat(line.coils().get(2).processSpeed().orElseThrow())
                .isEqualTo(175 * 0.3048 / 60, Assertions.within(1e-12));
    }

    @Test
    void aLineWithoutAnAccumulatorHasNoCapacityToSet() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "perforating-line.yaml"));

        assertThat(file.inputs()).extracting(Input::path).doesNotContain("usable-capacity");
        assertThat(refusal(file, setting("usable-capacity", "20 m")))
                .containsExactly("--set usable-capacity = 20 m; is nothing that this line has. Leave it out.");
    }

    @Test
    void aFigureIsNeverCalledLikeAKey() {
        assertThat(ScenarioKeys.SCENARIO.keys())
                .extracting(key -> key.name())
                .doesNotContainAnyElementsOf(
                        Arrays.stream(LineFigure.values()).map(LineFigure::path).toList());
    }

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
    void theTimeOfARethreadIsAFigureOfItsOwn() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "stamping-rethread.yaml"));

        assertThat(file.inputs())
                .extracting(Input::path)
                .contains("rethread-time")
                .doesNotContain("joint-cycle-time");
        Line line =
                accepted(file.with(List.of(setting("rethread-time", "5 min")))).line();
        assertThat(line.practice())
                .isInstanceOfSatisfying(
                        Practice.Rethread.class,
                        rethread -> assertThat(rethread.time().mean()).isCloseTo(300, within(1e-9)));
        assertThat(refusal(file, setting("joint-cycle-time", "5 min")))
                .singleElement()
                .asString()
                .contains("is nothing that this line has");
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
    void whatIsNoSingleNumberIsSaidWithTheNumbersWithin() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));

        assertThat(noInput(file, "coil-change.join.fit up"))
                .isEqualTo("--x coil-change.join.fit up = 1; is not a single number. Name one within it:"
                        + " coil-change.join.fit up.lognormal.mean, coil-change.join.fit up.lognormal.sd.");
        assertThat(noInput(file, "title")).contains("is not a single number. Name a number of the line.");
        assertThat(noInput(file, "run.seed")).contains("is about how to run, not about the line");
        assertThat(noInput(file, "entry.creep.sped")).contains("Did you mean entry.creep.speed?");
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
    void aScheduleIsNotReadAgainUnlessTheChangeConcernsIt() throws IOException {
        Path schedule = folder.resolve("coils.csv");
        Files.writeString(schedule, "thickness [mm],width [mm],length [m]\n2,240,900\n2,240,800\n");
        ScenarioFile file = opened(Written.with("coils: {schedule: coils.csv, defaults: {density: 7850 kg/m3}}")
                .replaceAll("(?m)^coil:.*$", ""));
        accepted(file.read());
        Files.delete(schedule);

        Line line = accepted(file.with(List.of(setting("entry.top-speed", "100 m/min"))))
                .line();

        assertThat(line.coils()).hasSize(2);
        assertThat(refusal(file, setting("coils.defaults.density", "7.8 g/cm3")).get(0))
                .contains("coils.csv");
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

    private ScenarioFile good() {
        return opened(Written.with());
    }

    private ScenarioFile opened(String text) {
        return ScenarioFile.open(new Written(folder).file("line.yaml", text));
    }

    private static Setting setting(String path, String text) {
        return Setting.written(path, text, "--set", new Problems()).orElseThrow();
    }

    private static Input input(ScenarioFile file, String path) {
        return file.inputs().stream()
                .filter(input -> input.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static double meanJoin(ScenarioFile file, Setting setting) {
        return MeanWork.total(
                accepted(file.with(List.of(setting))).line().change().join(), Joints.only(STRIP));
    }

    private static String noInput(ScenarioFile file, String path) {
        Problems problems = new Problems();
        Setting asked = new Setting(path, new runthrough.scenario.source.Raw.Scalar("1", Place.whole("--x")));
        assertThat(file.input(asked, List.of(), problems)).isEmpty();
        return problems.errors().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    private static SimulationRequest accepted(ScenarioReading reading) {
        assertThat(reading).isInstanceOf(ScenarioReading.Accepted.class);
        return ((ScenarioReading.Accepted) reading).request();
    }

    private static List<String> refusal(ScenarioFile file, Setting setting) {
        return shown(file.with(List.of(setting)));
    }

    private static List<String> shown(ScenarioReading reading) {
        assertThat(reading).isInstanceOf(ScenarioReading.Refused.class);
        return ((ScenarioReading.Refused) reading)
                .problems().stream().map(Problem::toString).toList();
    }
}
