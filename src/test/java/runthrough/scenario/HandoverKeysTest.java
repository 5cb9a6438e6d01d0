package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.handover.Handover;
import runthrough.plant.handover.Money;
import runthrough.scenario.source.Problem;

/** What a scenario says for its document: cover, drive, origins, money. */
class HandoverKeysTest {
    private static final String LINE = """
        title: Invented line
        coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, length: 700 m}
        entry: {top-speed: 90 m/min, acceleration: 0.3 m/s2, deceleration: 0.4 m/s2}
        accumulator: {capacity: 100 m}
        process: {speed: 45 m/min, acceleration: 0.2 m/s2, deceleration: 0.25 m/s2}
        coil-change: {join: [{weld: 40 s}]}
        """;

    @TempDir
    private Path folder;

    private ScenarioReading read(String more) throws IOException {
        Path file = folder.resolve("line.yaml");
        Files.writeString(file, LINE + more);
        return ScenarioFile.open(file).read();
    }

    private Handover handover(String more) throws IOException {
        return ((ScenarioReading.Accepted) read(more)).handover();
    }

    private List<String> problems(String more) throws IOException {
        return ((ScenarioReading.Refused) read(more))
                .problems().stream().map(Problem::toString).toList();
    }

    @Test
    void nothingNeedsToBeSaid() throws IOException {
        assertThat(handover("")).isEqualTo(Handover.NONE);
    }

    @Test
    void smallestPartAroundAValueSaysWhereItCameFrom() throws IOException {
        Handover handover = handover(
                "origins: {entry: vendor figure, entry.top-speed: nameplate, coil-change.join.weld: \"measured, n ="
                        + " 40\"}\n");

        assertThat(handover.originOf("entry.top-speed")).contains("nameplate");
        assertThat(handover.originOf("entry.acceleration")).contains("vendor figure");
        assertThat(handover.originOf("entrywide")).isEmpty();
        assertThat(handover.originOf("process.speed")).isEmpty();
        assertThat(handover.originOf("coil-change.join.weld")).contains("measured, n = 40");
    }

    @Test
    void originOfWhatIsNotThereIsRefusedWithThePlaceAndTheNearestThatIs() throws IOException {
        assertThat(problems("origins: {entry.top-sped: vendor figure}\n"))
                .singleElement()
                .asString()
                .contains(
                        "line.yaml:7:", "origins.entry.top-sped", "is not a part of this scenario", "entry.top-speed");
    }

    @Test
    void moneyIsReadInTheUsersCurrency() throws IOException {
        Money money = handover(
                        "money: {currency: CHF, line-hour: 900, scrap-per-tonne: 300, labour-hour: 45, rate: 8 %,"
                                + " least-certain: price, alternatives: {larger: {price: 180000, upkeep: 4000, life:"
                                + " 12}}}\n")
                .money()
                .orElseThrow();

        assertThat(money.currency()).isEqualTo("CHF");
        assertThat(money.output()).isEqualTo(new Money.Output.LineHour(900));
        assertThat(money.scrap()).hasValue(0.3);
        assertThat(money.rate()).isEqualTo(0.08);
        assertThat(money.leastCertain()).isEqualTo(Money.Uncertain.PRICE);
        assertThat(money.offers()).containsEntry("larger", new Money.Offer(180000, 4000, 12));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        price: -5, life: 10  | money.alternatives.larger.price | -5 | 0 or more
        price: 5, life: 0    | money.alternatives.larger.life  | 0  | from 1
        price: 5, life: 2.5  | money.alternatives.larger.life  | 2.5 | whole number
        life: 10             | money.alternatives.larger.price |    | is missing
        """)
    void costsThatCannotBeAreRefused(String offer, String path, String value, String rule) throws IOException {
        String money = "money: {currency: EUR, line-hour: 900, rate: 8 %, alternatives: {larger: {" + offer + "}}}\n";
        assertThat(problems(money)).singleElement().asString().contains("line.yaml:7:", path, rule);
    }

    @ParameterizedTest
    @CsvSource({"-100 %", "-150 %"})
    void rateThatTakesEverythingIsRefused(String rate) throws IOException {
        assertThat(problems("money: {currency: EUR, line-hour: 900, rate: " + rate + "}\n"))
                .singleElement()
                .asString()
                .contains("line.yaml:7:", "money.rate", rate, "more than -100 %");
    }

    @Test
    void outputIsValuedInOneWay() throws IOException {
        assertThat(problems("money: {currency: EUR, rate: 8 %}\n"))
                .singleElement()
                .asString()
                .contains("line-hour", "contribution-per-tonne");
        assertThat(problems("money: {currency: EUR, rate: 8 %, line-hour: 1, contribution-per-tonne: 2}\n"))
                .singleElement()
                .asString()
                .contains("line-hour", "contribution-per-tonne");
    }
}
