package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.util.DoubleComparator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.CoilSource;
import runthrough.scenario.source.Problems;

/** Of a mix, each share can be changed by itself. */
class MixSharesTest {
    private static final String COIL = "thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 900 m";

    private static ScenarioText mix(String weights) {
        return new ScenarioText(
                Path.of("line.yaml"),
                Written.without("coil") + "coils: {mix: ["
                        + List.of(weights.split(", ")).stream()
                                .map(weight -> "{weight: " + weight + ", " + COIL + "}")
                                .collect(Collectors.joining(", "))
                        + "]}\n");
    }

    private static ScenarioText changed(ScenarioText text, String path, String to) {
        return changed(text, List.of(new ScenarioText.Change.Write(path, to)));
    }

    private static ScenarioText changed(ScenarioText text, List<ScenarioText.Change> changes) {
        ScenarioText.Changed changed = text.with(changes);
        assertThat(changed.problems()).isEmpty();
        return changed.text().withRoom(changes);
    }

    private static String weights(ScenarioText text) {
        return Pattern.compile("weight: ([^,]*),")
                .matcher(text.text())
                .results()
                .map(weight -> weight.group(1))
                .collect(Collectors.joining(", "));
    }

    private static Setting set(String path, String value) {
        return Setting.written(path, value, "--set", new Problems()).orElseThrow();
    }

    private static List<Double> shares(ScenarioReading reading) {
        return ((CoilSource.Mix)
                        ((ScenarioReading.Accepted) reading).request().line().coilSource())
                .shares().stream().map(CoilSource.Share::weight).toList();
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
        ScenarioText edited = changed(mix(before), "coils.mix[" + changed + "].weight", to);

        assertThat(weights(edited)).isEqualTo(after);
        assertThat(edited.open().read()).isInstanceOf(ScenarioReading.Accepted.class);
    }

    /** Those that are set stay as they are set, however many. Hand calculation: 40 and 40 leave 20, in equal parts for equal shares. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        50 %, 30 %, 20 %       | 20 %, 30 %, 50 % | 20 %, 30 %, 50 %
        50 %, 30 %, 20 %       | 40 %, 40 %       | 40 %, 40 %, 20 %
        40 %, 20 %, 20 %, 20 % | 40 %, 40 %       | 40 %, 40 %, 10 %, 10 %
        50 %, 30 %, 20 %       | 70 %, 40 %       | 70 %, 40 %, 20 %
        """)
    void severalSharesStayAsTheyAreSet(String before, String set, String after) {
        List<String> values = List.of(set.split(", "));
        List<ScenarioText.Change> asked = IntStream.range(0, values.size())
                .<ScenarioText.Change>mapToObj(
                        i -> new ScenarioText.Change.Write("coils.mix[" + (i + 1) + "].weight", values.get(i)))
                .toList();

        assertThat(weights(changed(mix(before), asked))).isEqualTo(after);
    }

    /** As with --set, in a map or a sweep: one answer, whoever asks. */
    @Test
    void whereOneShareIsSetAloneTheOthersMakeRoom() {
        ScenarioFile file = mix("50 %, 30 %, 20 %").open();

        List<Setting> set = List.of(set("coils.mix[1].weight", "60 %"));

        assertThat(shares(file.with(set))).containsExactly(0.6, 0.24, 0.16);
        assertThat(shares(file.saying(set).read())).containsExactly(0.6, 0.24, 0.16);
        assertThat(file.saying(set).inputs())
                .filteredOn(input -> input.path().endsWith("].weight"))
                .extracting(Input::text)
                .containsExactly("60 %", "24 %", "16 %");
    }

    /** What an alternative sets, and what is set besides, stays; where it brings a mix of its own, that one makes room. */
    @Test
    void sharesOfAnAlternativeAndSharesSetBesidesStay() {
        ScenarioFile file = ScenarioFile.of(
                Path.of("line.yaml"),
                mix("50 %, 30 %, 20 %").text()
                        + "alternatives:\n  one share: {\"coils.mix[1].weight\": 40 %}\n"
                        + "  other mix: {coils.mix: [{weight: 60 %, " + COIL + "}, {weight: 30 %, " + COIL
                        + "}, {weight: 10 %, " + COIL + "}]}\n");
        Setting one = set("coils.mix[2].weight", "40 %");

        assertThat(shares(file.with(Stream.concat(file.alternative("one share").orElseThrow().stream(), Stream.of(one))
                        .toList())))
                .containsExactly(0.4, 0.4, 0.2);
        assertThat(shares(file.with(Stream.concat(
                                file.alternative("other mix").orElseThrow().stream(),
                                Stream.of(set("coils.mix[1].weight", "50 %")))
                        .toList())))
                .containsExactly(0.5, 0.375, 0.125);
        assertThat(file.alternatives(List.of(one), (ScenarioReading.Accepted) file.with(List.of(one))))
                .satisfies(all -> assertThat(all.problems()).isEmpty())
                .satisfies(all -> assertThat(all.alternatives()).hasSize(3));
    }

    /** Who sets a share last has it; of those that were set at once each stays, or all are refused. */
    @Test
    void whereThereIsNoRoomBesideAllThatAreSetTheLastOnesStay() {
        ScenarioFile two = mix("50 %, 50 %").open();
        ScenarioFile three = mix("50 %, 30 %, 20 %").open();
        Setting first = set("coils.mix[1].weight", "70 %");
        Setting second = Setting.written("coils.mix[2].weight", "40 %", "map", new Problems())
                .orElseThrow();

        assertThat(shares(two.with(List.of(first, second)))).containsExactly(0.6, 0.4);
        assertThat(shares(three.with(List.of(first, second))))
                .usingComparatorForType(new DoubleComparator(1e-9), Double.class)
                .containsExactly(0.466667, 0.4, 0.133333);
        assertThat(three.with(List.of(first, set("coils.mix[2].weight", "40 %"))))
                .isInstanceOf(ScenarioReading.Refused.class);
    }

    /** Run alone or held against others, an alternative has the same shares under the same settings. */
    @Test
    void whatIsSetBesidesStaysInEveryAlternative() {
        ScenarioFile file = ScenarioFile.of(
                Path.of("line.yaml"),
                mix("50 %, 30 %, 20 %").text()
                        + "alternatives:\n  both: {\"coils.mix[1].weight\": 50 %, \"coils.mix[2].weight\": 20 %}\n");
        Setting third = set("coils.mix[3].weight", "30 %");
        List<Setting> both = file.alternative("both").orElseThrow();
        Setting other = set("coils.mix[3].weight", "65 %");

        assertThat(shares(
                        file.with(Stream.concat(both.stream(), Stream.of(third)).toList())))
                .containsExactly(0.5, 0.2, 0.3);
        for (List<Setting> order : List.of(
                Stream.concat(both.stream(), Stream.of(other)).toList(),
                Stream.concat(Stream.of(other), both.stream()).toList())) {
            assertThat(shares(file.with(order))).containsExactly(0.25, 0.1, 0.65);
        }
    }

    @Test
    void aShareMayBeSetWithItsCoil() {
        ScenarioFile file = mix("50 %, 30 %, 20 %").open();

        assertThat(shares(file.with(List.of(set("coils.mix[1]", "{weight: 60 %, " + COIL + "}")))))
                .containsExactly(0.6, 0.24, 0.16);
        assertThat(shares(file.with(List.of(set("coils.mix[1].weight", "60 %"), set("coils.mix[1].name", "other")))))
                .containsExactly(0.6, 0.24, 0.16);
    }

    @Test
    void whatElseIsWrongMakesNoSharesWrong() {
        ScenarioFile file = ScenarioFile.of(
                Path.of("line.yaml"),
                mix("50 %, 30 %, 20 %").text().replace("speed: 45 m/min", "speed: 45")
                        + "alternatives:\n  one share: {\"coils.mix[1].weight\": 40 %}\n");
        List<Setting> set = List.of(set("coils.mix[2].weight", "40 %"));

        ScenarioReading.Refused refused = (ScenarioReading.Refused) file.with(set);

        assertThat(refused.problems())
                .isNotEmpty()
                .noneMatch(problem -> problem.path().startsWith("coils"));
        assertThat(file.problemsOfAlternatives(set, refused)).isEmpty();
    }

    /** The page names a coil of a mix as the file does, a person may count it. */
    @ParameterizedTest
    @CsvSource({"coils.mix.1.5 x 200.weight", "coils.mix[2].weight"})
    void aCoilIsNamedOrCounted(String path) {
        ScenarioText named = new ScenarioText(
                Path.of("line.yaml"),
                mix("50 %, 30 %, 20 %").text().replace("{weight: 30 %", "{name: 1.5 x 200, weight: 30 %"));

        assertThat(changed(named, path, "60 %").text())
                .contains("weight: 28.5714 %", "weight: 60 %", "weight: 11.4286 %");
    }

    /** Nothing is left for the others: that is said as of any mix. */
    @ParameterizedTest
    @CsvSource({"100 %", "140 %", "0 %"})
    void aShareThatLeavesNoOtherIsRefused(String to) {
        assertThat(changed(mix("50 %, 50 %"), "coils.mix[1].weight", to).open().read())
                .isInstanceOf(ScenarioReading.Refused.class);
    }
}
