package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.CoilSource;
import runthrough.scenario.source.Problems;

/** Of a mix, each share can be changed by itself. */
class MixSharesTest {

    private static ScenarioText mix(String weights) {
        String coil = "thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 900 m";
        return new ScenarioText(
                Path.of("line.yaml"),
                Written.without("coil") + "coils: {mix: ["
                        + List.of(weights.split(", ")).stream()
                                .map(weight -> "{weight: " + weight + ", " + coil + "}")
                                .collect(Collectors.joining(", "))
                        + "]}\n");
    }

    private static ScenarioText.Changed changed(ScenarioText text, String path, String to) {
        return text.with(text.withRoom(List.of(new ScenarioText.Change.Write(path, to))));
    }

    /** Hand calculation: of 50, 30 and 20, 60 leaves 40, three fifths of it for the one of 30. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        50 %, 30 %, 20 % | 1 | 60 % | 60 %, 24 %, 16 %
        50 %, 30 %, 20 % | 3 | 51 % | 30.625 %, 18.375 %, 51 %
        40 %, 30 %, 30 % | 1 | 10 % | 10 %, 45 %, 45 %
        40 %, 20 %, 20 %, 20 % | 1 | 50 % | 50 %, 16.6667 %, 16.6667 %, 16.6666 %
        98 %, 1 %, 1 %   | 1 | 99.9999 % | 99.9999 %, 0.00005 %, 0.00005 %
        50, 30, 20       | 1 | 60   | 60, 30, 20
        """)
    void theOthersKeepTheirProportions(String before, int changed, String to, String after) {
        ScenarioText.Changed edited = changed(mix(before), "coils.mix[" + changed + "].weight", to);

        assertThat(edited.problems()).isEmpty();
        assertThat(Pattern.compile("weight: ([^,]*),")
                        .matcher(edited.text().text())
                        .results()
                        .map(weight -> weight.group(1))
                        .collect(Collectors.joining(", ")))
                .isEqualTo(after);
        assertThat(edited.text().open().read()).isInstanceOf(ScenarioReading.Accepted.class);
    }

    /** As an alternative writes them: what is asked for is written, and nothing made of it. */
    @Test
    void severalSharesAreWrittenAsTheyAreAskedFor() {
        List<ScenarioText.Change> asked = List.of(
                new ScenarioText.Change.Write("coils.mix[1].weight", "20 %"),
                new ScenarioText.Change.Write("coils.mix[2].weight", "30 %"),
                new ScenarioText.Change.Write("coils.mix[3].weight", "50 %"));

        assertThat(mix("50 %, 30 %, 20 %").withRoom(asked)).isEqualTo(asked);
    }

    /** As with --set, in a map or a sweep: one answer, whoever asks. */
    @Test
    void whereOneShareIsSetAloneTheOthersMakeRoom() {
        ScenarioFile file = mix("50 %, 30 %, 20 %").open();

        ScenarioReading set = file.with(List.of(Setting.written("coils.mix[1].weight", "60 %", "--set", new Problems())
                .orElseThrow()));

        assertThat(set)
                .isInstanceOfSatisfying(
                        ScenarioReading.Accepted.class,
                        accepted -> assertThat(((CoilSource.Mix)
                                                accepted.request().line().coilSource())
                                        .shares())
                                .extracting(CoilSource.Share::weight)
                                .containsExactly(0.6, 0.24, 0.16));
    }

    /** The page names a coil of a mix as the file does, a person may count it. */
    @ParameterizedTest
    @CsvSource({"coils.mix.1.5 x 200.weight", "coils.mix[2].weight"})
    void aCoilIsNamedOrCounted(String path) {
        ScenarioText named = new ScenarioText(
                Path.of("line.yaml"),
                mix("50 %, 30 %, 20 %").text().replace("{weight: 30 %", "{name: 1.5 x 200, weight: 30 %"));

        assertThat(changed(named, path, "60 %").text().text())
                .contains("weight: 28.5714 %", "weight: 60 %", "weight: 11.4286 %");
    }

    /** Nothing is left for the others: that is said as of any mix. */
    @ParameterizedTest
    @CsvSource({"100 %", "140 %", "0 %"})
    void aShareThatLeavesNoOtherIsRefused(String to) {
        assertThat(changed(mix("50 %, 50 %"), "coils.mix[1].weight", to)
                        .text()
                        .open()
                        .read())
                .isInstanceOf(ScenarioReading.Refused.class);
    }
}
