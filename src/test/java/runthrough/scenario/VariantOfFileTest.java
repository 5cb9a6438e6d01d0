package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Raw;

/** A variant of a file that was read before gives what it gives when it is read for the first time. */
class VariantOfFileTest {

    @ParameterizedTest
    @ValueSource(strings = {"tube-line", "slitter", "slitter-widths", "coating-line", "stamping-rethread"})
    void everyNumberSetAnewOrWrong(String line) {
        Path path = Path.of("scenarios", line + ".yaml");
        ScenarioFile known = ScenarioFile.open(path);
        ScenarioReading written = known.read();

        for (Input input : known.inputs()) {
            Setting larger = input.setTo(1.25 * input.present().orElse(1), "--set");
            Setting wrong = new Setting(input.path(), new Raw.Scalar("wrong", Place.whole("--set")));
            for (Setting setting : List.of(larger, wrong)) {
                assertThat(known.with(List.of(setting)))
                        .as(setting.toString())
                        .isEqualTo(ScenarioFile.open(path).with(List.of(setting)));
            }
        }
        assertThat(known.read()).isEqualTo(written);
    }
}
