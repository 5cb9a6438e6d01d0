package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.scenario.FileTrials.STRIP;
import static runthrough.scenario.FileTrials.accepted;
import static runthrough.scenario.FileTrials.refusal;
import static runthrough.scenario.FileTrials.setting;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.plant.CoilSize;
import runthrough.plant.Line;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;

/** A scenario file, read again with values and sections in the place of others. */
class ScenarioFileTest {

    @TempDir
    private Path folder;

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

    private ScenarioFile good() {
        return opened(Written.with());
    }

    private ScenarioFile opened(String text) {
        return ScenarioFile.open(new Written(folder).file("line.yaml", text));
    }
}
