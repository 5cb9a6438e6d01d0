package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who names an item of a list by its number still means the same one when an item before it is gone. */
class RemovedItemTest {
    private static ScenarioText line(String... sections) {
        return new ScenarioText(
                Path.of("line.yaml"),
                Written.with("coil-change: {join: [{fit up: 20 s}, {weld: 15 s}, {grind: 10 s}]}")
                        + String.join("\n", sections) + "\n");
    }

    private static ScenarioText.Changed without(ScenarioText text, int number) {
        return text.with(List.of(new ScenarioText.Change.Remove("coil-change.join[" + number + "]")));
    }

    @Test
    void thoseBehindItKeepTheirAlternativesAndOrigins() {
        ScenarioText.Changed changed = without(
                line(
                        "alternatives: {a: {\"coil-change.join[2]\": 12 s}, b: {\"coil-change.join[3].grind\": 5 s}}",
                        "origins: {\"coil-change.join[1]\": guess, coil-change.join.weld: timed, \"coil-change.join[3]\": said}"),
                1);

        assertThat(changed.problems()).isEmpty();
        assertThat(changed.text().text())
                .contains("\"coil-change.join[1]\": 12 s", "\"coil-change.join[2].grind\": 5 s")
                .contains("coil-change.join.weld: timed", "\"coil-change.join[2]\": said")
                .doesNotContain("guess");
        assertThat(changed.text().open().read()).isInstanceOf(ScenarioReading.Accepted.class);
    }

    /** What an alternative changes is named as what is gone, and not taken for what stands in its place. */
    @ParameterizedTest
    @ValueSource(strings = {"coil-change.join[2]", "coil-change.join.weld", "coil-change.join[2].weld"})
    void whoNamesWhatIsGoneIsToBeMended(String path) {
        ScenarioText text = without(line("alternatives: {faster: {\"" + path + "\": 12 s}}"), 2)
                .text();

        assertThat(text.open().read()).isInstanceOf(ScenarioReading.Accepted.class);
        assertThat(text.open().astrayAlternatives())
                .singleElement()
                .asString()
                .startsWith("line.yaml:8:")
                .contains("alternative \"faster\": coil-change.join.weld = 12 s; is not a part of this scenario.");
    }

    @Test
    void aCoilWithoutANameIsNotTakenForAnother() {
        String coil = "thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 900 m";
        ScenarioText mix = new ScenarioText(
                Path.of("line.yaml"),
                Written.without("coil") + "coils: {mix: [{weight: 1, " + coil + "}, {weight: 2, " + coil + "}]}\n"
                        + "alternatives: {a: {\"coils.mix[1].weight\": 4}, b: {\"coils.mix[2].weight\": 4}}\n");

        ScenarioText text = mix.with(List.of(new ScenarioText.Change.Remove("coils.mix[1]")))
                .text();

        assertThat(text.text()).contains("\"coils.mix[0].weight\": 4", "\"coils.mix[1].weight\": 4");
        assertThat(text.open().astrayAlternatives()).hasSize(1);
    }

    /** Where values came from is said of the scenario as written; an alternative may do without them. */
    @Test
    void anAlternativeMayReplaceWhatOriginsAreSaidOf() {
        ScenarioFile file = line(
                        "alternatives: {clinch: {coil-change.join: [{clinch: 15 s}]}}",
                        "origins: {coil-change.join.weld: timed}")
                .open();
        ScenarioReading.Accepted written = (ScenarioReading.Accepted) file.read();
        List<Setting> clinch = file.alternative("clinch").orElseThrow();

        assertThat(file.alternatives(List.of(), written).problems()).isEmpty();
        assertThat(file.with(clinch)).isInstanceOf(ScenarioReading.Accepted.class);
        assertThat(file.saying(clinch).read()).isInstanceOf(ScenarioReading.Accepted.class);
    }

    @Test
    void originsThatLeadNowhereInTheFileAreRefusedAsBefore() {
        ScenarioFile file = line(
                        "alternatives: {clinch: {coil-change.join: [{clinch: 15 s}]}}",
                        "origins: {coil-change.join.rivet: timed}")
                .open();

        assertThat(file.with(file.alternative("clinch").orElseThrow())).isInstanceOf(ScenarioReading.Refused.class);
    }

    /** Paths by its name would lead nowhere. */
    @Test
    void noElementTakesTheNameOfAnother() {
        ScenarioText text = line("origins: {coil-change.join.weld: timed}");

        ScenarioText.Changed changed =
                text.with(List.of(new ScenarioText.Change.Rename("coil-change.join[1]", "weld")));

        assertThat(changed.text()).isEqualTo(text);
        assertThat(changed.problems())
                .singleElement()
                .asString()
                .endsWith("coil-change.join[1] = weld; is what another element of coil-change.join is called. Call it"
                        + " otherwise.");
    }
}
