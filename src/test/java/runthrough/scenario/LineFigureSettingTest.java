package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.scenario.FileTrials.STRIP;
import static runthrough.scenario.FileTrials.accepted;
import static runthrough.scenario.FileTrials.input;
import static runthrough.scenario.FileTrials.refusal;
import static runthrough.scenario.FileTrials.setting;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Joints;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.MeanWork;
import runthrough.plant.Practice;

/** Figures of a line as a whole, set in its file. */
class LineFigureSettingTest {

    @TempDir
    private Path folder;

    /** Rule LEVER-4. Tube line: 8 + 20 + 24 + 6 + 10 s once, and 2 in 98 times again; to 60 s it is 68 - 58.8 = 9.2 s a pass. */
    @Test
    void jointCycleTimeAsAWholeTakesSecondsOffEveryPass_andLeavesItsSpread() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"));
        Input joint = input(file, "joint-cycle-time");

        Line line = accepted(file.with(List.of(setting("joint-cycle-time", "60 s"))))
                .line();

        assertThat(joint.present().orElseThrow()).isEqualTo(68 / 0.98, Assertions.within(1e-12));
        assertThat(MeanWork.standing(line.change(), Joints.only(STRIP))).isEqualTo(60, Assertions.within(1e-12));
        assertThat(line.change().joinShorterBy()).isCloseTo(9.2, within(1e-9));
        assertThat(line.change().join())
                .isEqualTo(accepted(file.read()).line().change().join());
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
    void theTimeOfARethreadIsAFigureOfItsOwn() {
        ScenarioFile file = ScenarioFile.open(Path.of("scenarios", "stamping-rethread.yaml"));

        assertThat(file.inputs())
                .extracting(Input::path)
                .contains("rethread-time")
                .doesNotContain("joint-cycle-time");
        Line line =
                accepted(file.with(List.of(setting("rethread-time", "5 min")))).line();
        assertThat(LineFigure.RETHREAD_TIME.of(line).orElseThrow()).isCloseTo(300, within(1e-9));
        // Rule LEVER-4. It is triangular, 6, 9 and 15 min, 10 min on average: 5 min off every one, and 2 min more of
        // each.
        assertThat(line.change().joinShorterBy()).isCloseTo(245, within(1e-9));
        assertThat(accepted(file.with(List.of(setting("rethread-time", "12 min"))))
                        .line()
                        .practice())
                .isInstanceOfSatisfying(
                        Practice.Rethread.class,
                        rethread -> assertThat(rethread.time().lowest()).isCloseTo(589, within(1e-9)));
        assertThat(refusal(file, setting("joint-cycle-time", "5 min")))
                .singleElement()
                .asString()
                .contains("is nothing that this line has");
    }

    private ScenarioFile opened(String text) {
        return ScenarioFile.open(new Written(folder).file("line.yaml", text));
    }
}
