package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
    void anOriginStandsInOneLine() throws IOException {
        Handover handover = handover("origins:\n  entry: |\n    vendor figure\n\n    of last year\n");

        assertThat(handover.originOf("entry.top-speed")).contains("vendor figure of last year");
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
    void moreThanAnybodyWritesIsRefusedAtOnce() throws IOException {
        assertThat(problems("origins: {"
                        + IntStream.range(0, 501)
                                .mapToObj(i -> "a" + i + ": guess")
                                .collect(Collectors.joining(", ")) + "}\n"))
                .singleElement()
                .asString()
                .contains("line.yaml:7:", "has 501 entries; at most 500 are read");
        assertThat(problems("notes: [" + "a, ".repeat(500) + "a]\n"))
                .singleElement()
                .asString()
                .contains("line.yaml:7:", "has 501 items; at most 500 are read");
        for (String priced : List.of("levers", "alternatives")) {
            assertThat(problems("money: {" + priced + ": {"
                            + IntStream.range(0, 501)
                                    .mapToObj(i -> "a" + i + ": {price: 1}")
                                    .collect(Collectors.joining(", "))
                            + "}}\n"))
                    .as(priced)
                    .anySatisfy(problem -> assertThat(problem.toString()).contains("has 501 entries; at most 500"))
                    .hasSizeLessThan(6);
        }
    }

    @Test
    void secondOriginOfOnePartIsRefused() throws IOException {
        assertThat(problems("origins: {entry: nameplate, process: estimate, entry: vendor figure}\n"))
                .singleElement()
                .asString()
                .contains("line.yaml:7:", "origins.entry", "is given twice, first in line 7. Leave out one.");
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

    @Test
    void whatChangesCostIsReadUnderThePathsOfTheirNumbers() throws IOException {
        Money money = handover(
                        "money: {currency: EUR, line-hour: 900, rate: 8 %, levers: {accumulator.capacity: {per: 10 m,"
                                + " price: 30000, upkeep: 200, life: 15}, joint-cycle-time: {per: 1 min, price: 60000, life: 8},"
                                + " coil-change.crew: {price: 1500, life: 3}, coil-change.join.weld: {per: 2 s, price: 9000,"
                                + " life: 10}}}\n")
                .money()
                .orElseThrow();

        assertThat(money.prices().levers())
                .containsOnly(
                        Map.entry("usable-capacity", new Money.UnitPrice(10, new Money.Offer(30000, 200, 15))),
                        Map.entry("joint-cycle-time", new Money.UnitPrice(60, new Money.Offer(60000, 0, 8))),
                        Map.entry("coil-change.crew", new Money.UnitPrice(1, new Money.Offer(1500, 0, 3))),
                        Map.entry("coil-change.join.weld", new Money.UnitPrice(2, new Money.Offer(9000, 0, 10))));
        assertThat(new Money.UnitPrice(10, new Money.Offer(30000, 200, 15)).of(25))
                .isEqualTo(new Money.Offer(75000, 500, 15));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        usable-capacity: {per: 1 s, price: 5, life: 10}       | usable-capacity.per       | is a unit of time, not of length | Write it like 12.5 m
        usable-capacity: none                                 | usable-capacity           | must be a group of keys       | such as {price: 180000, life: 10}.
        usable-capacity: {price: 5, life: 10}                 | usable-capacity.per       | is missing; must be a length  | such as 1 m.
        accumulator.strands: {per: 2, price: 5, life: 10}     | accumulator.strands.per   | must be a length with its unit | how much of usable-capacity that pays for, such as 1 m.
        usable-capacity: {per: 0 m, price: 5, life: 10}       | usable-capacity.per       | more than 0                   | such as 1 m.
        joint-cycle-time: {per: 1 s, price: -5, life: 10}     | joint-cycle-time.price    | 0 or more                     | at time zero
        joint-cycle-time: {per: 1 s, price: 5}                | joint-cycle-time.life     | is missing                    | such as 10.
        entry.uncoilers: {per: 1.5, price: 5, life: 10}       | entry.uncoilers.per       | a whole number from 1         | such as 1.
        joint-cycle-tim: {per: 1 s, price: 5, life: 10}       | joint-cycle-tim           | has no price                  | Did you mean joint-cycle-time?
        process.speed: {per: 1 m/min, price: 5, life: 10}     | process.speed             | has no price                  | There are: usable-capacity
        joint-cycle-time: {per: 1 s, price: 5, cost: 5, life: 10} | joint-cycle-time.cost     | is not a known key of money.levers | Allowed here are
        joint-cycle-time: {per: 1 s, price: 5, life: 9}, joint-cycle-time: {per: 2 s, price: 5, life: 9} | joint-cycle-time | is given twice, first in line 7 | Leave out one.
        usable-capacity: {per: 1 m, price: 5, life: 9}, accumulator.capacity: {per: 2 m, price: 5, life: 9} | accumulator.capacity | is another name of usable-capacity, which has a price already | Leave out one.
        """)
    void pricesOfChangesThatCannotBeAreRefused(String lever, String path, String rule, String remedy)
            throws IOException {
        String money = "money: {currency: EUR, line-hour: 900, rate: 8 %, levers: {" + lever + "}}\n";
        assertThat(problems(money)).first().asString().contains("line.yaml:7:", "money.levers." + path, rule, remedy);
    }

    @Test
    void oneWrongPriceHidesNoOther() throws IOException {
        assertThat(
                        problems(
                                "money: {currency: EUR, line-hour: 900, rate: 8 %, levers: {usable-capacity: {per: 1 s, price: 5,"
                                        + " life: 9}, joint-cycle-time: {per: 1 s, price: -1, life: 9}, crow: {price: 5, life: 9}}}\n"))
                .hasSize(3);
    }

    /** So that an element can be removed, or an alternative be without it. */
    @Test
    void aPriceOfAnElementThatIsNotThereIsWarnedOf() throws IOException {
        ScenarioReading.Accepted read = (ScenarioReading.Accepted) read(
                "money: {currency: EUR, line-hour: 900, rate: 8 %, levers: {coil-change.join.wled: {per: 1 s, price: 5, life:"
                        + " 10}}}\n");

        assertThat(read.warnings())
                .singleElement()
                .asString()
                .contains(
                        "line.yaml:7:",
                        "money.levers.coil-change.join.wled",
                        "is ignored",
                        "Did you mean coil-change.join.weld?");
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
