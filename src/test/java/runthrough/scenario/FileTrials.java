package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import runthrough.plant.Joint;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;

/** A scenario file with values set in it, and what comes of it. */
final class FileTrials {

    /** Of the line under test, joined to its like. */
    static final Joint STRIP = Joint.alike(0.24, 0.002);

    private FileTrials() {}

    static Setting setting(String path, String text) {
        return Setting.written(path, text, "--set", new Problems()).orElseThrow();
    }

    static Input input(ScenarioFile file, String path) {
        return file.inputs().stream()
                .filter(input -> input.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    static SimulationRequest accepted(ScenarioReading reading) {
        assertThat(reading).isInstanceOf(ScenarioReading.Accepted.class);
        return ((ScenarioReading.Accepted) reading).request();
    }

    static List<String> refusal(ScenarioFile file, Setting setting) {
        return shown(file.with(List.of(setting)));
    }

    static List<String> shown(ScenarioReading reading) {
        assertThat(reading).isInstanceOf(ScenarioReading.Refused.class);
        return ((ScenarioReading.Refused) reading)
                .problems().stream().map(Problem::toString).toList();
    }
}
