package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Alternative;
import runthrough.plant.Practice;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;

/** Alternatives of a scenario: each is the scenario with the values that it changes. */
class AlternativesTest {

    @TempDir
    private Path folder;

    static List<Path> shipped() throws IOException {
        return ShippedScenariosTest.shipped();
    }

    private AlternativesReading read(String... sections) {
        ScenarioFile file = ScenarioFile.open(new Written(folder).file("line.yaml", Written.with(sections)));
        return file.alternatives(List.of(), (ScenarioReading.Accepted) file.read());
    }

    private List<String> problems(String... sections) {
        ScenarioFile file = ScenarioFile.open(new Written(folder).file("line.yaml", Written.with(sections)));
        List<Problem> problems = file.read() instanceof ScenarioReading.Accepted accepted
                ? file.alternatives(List.of(), accepted).problems()
                : Stream.concat(
                                ((ScenarioReading.Refused) file.read()).problems().stream(),
                                file.problemsOfAlternatives(List.of(), (ScenarioReading.Refused) file.read()).stream())
                        .toList();
        return problems.stream()
                .map(Problem::toString)
                .map(text -> text.replace(folder + "/", ""))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void alternativesOfTheShippedScenariosCanBeRunWithoutAWarning(Path path) {
        ScenarioFile file = ScenarioFile.open(path);
        AlternativesReading reading = file.alternatives(List.of(), (ScenarioReading.Accepted) file.read());

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.warnings()).isEmpty();
        assertThat(reading.alternatives()).hasSizeGreaterThan(2);
    }

    @Test
    void eachIsTheScenarioWithItsValues() {
        AlternativesReading reading = read(
                "alternatives: {third uncoiler: {entry.uncoilers: 3},"
                        + " rethread: {practice: rethread, coil-change.rethread: {uniform: [8 min, 10 min]}}}",
                "today: rethread");

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.today()).isEqualTo("rethread");
        assertThat(reading.alternatives())
                .extracting(Alternative::name)
                .containsExactly(Alternative.AS_WRITTEN, "third uncoiler", "rethread");
        Alternative third = reading.alternatives().get(1);
        assertThat(third.request().line().entry().uncoilers()).isEqualTo(3);
        Alternative rethread = reading.alternatives().get(2);
        assertThat(rethread.request().line().practice()).isInstanceOf(Practice.Rethread.class);
    }

    /** Of 500 alternatives with 50 slips each 100 are shown, and the others are not looked for. */
    @Test
    void moreProblemsThanAnybodyMendsAreCut() {
        String slips =
                IntStream.range(0, 50).mapToObj(i -> "no.such" + i + ": 1").collect(Collectors.joining(", "));
        String all = IntStream.range(0, 500)
                .mapToObj(i -> "a" + i + ": {" + slips + "}")
                .collect(Collectors.joining(", "));

        AlternativesReading cut = read("alternatives: {" + all + "}");
        AlternativesReading whole = read("alternatives: {a: {" + slips + "}, b: {" + slips + "}}");

        assertThat(cut.problems()).hasSize(100);
        assertThat(cut.isCut()).isTrue();
        assertThat(whole.problems()).hasSize(100);
        assertThat(whole.isCut()).isFalse();
    }

    @Test
    void withoutAnyTheScenarioStandsAlone() {
        assertThat(read().alternatives()).extracting(Alternative::name).containsExactly(Alternative.AS_WRITTEN);
        assertThat(read().today()).isEqualTo(Alternative.AS_WRITTEN);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "alternatives: {as now: {entry.uncoilers: 1}} | line.yaml:8:16 alternatives.as now; changes nothing",
                "alternatives: {empty: {}} | line.yaml:8:16 alternatives.empty; changes nothing",
                "alternatives: {blank: } | line.yaml:8:16 alternatives.blank; changes nothing",
                "alternatives: {a: {entry.uncoilers: 2}, a: {entry.uncoilers: 3}} | line.yaml:8:41 alternatives = a;"
                        + " is the name of two alternatives, first in line 8",
                "alternatives: {as written: {entry.uncoilers: 2}} | line.yaml:8:16 alternatives = as written; is what"
                        + " the",
                "alternatives: {a name that is far too long for a table: {entry.uncoilers: 2}} | must have 1 to 30"
                        + " characters",
                "alternatives: {a: {entry.uncoiler: 2}} | line.yaml:8:36 alternative \"a\": entry.uncoiler = 2; is not"
                        + " a part of this scenario. Did you mean entry.uncoilers?",
                "alternatives: {a: {entry.uncoilers: 0}} | line.yaml:8:37 alternative \"a\": entry.uncoilers = 0; must"
                        + " be a whole",
                "alternatives: {a: {entry.top-speed: 10 m}} | line.yaml:8:37 alternative \"a\": entry.top-speed = 10"
                        + " m;",
                "alternatives: {a: {practice: rethread}} | alternative \"a\": coil-change.rethread (line 6); is"
                        + " missing",
                "alternatives: {a: {process.speed: 95 m/min}} | alternative \"a\": entry.top-speed (line 3) = 90 m/min",
                "alternatives: {a: {run.seed: 3}} | line.yaml:8:20 alternatives.a.run.seed = 3; is the same for all",
                "alternatives: {a: {run: {seed: 3}}} | Name what is changed of it, such as run.coil-changes.",
                "alternatives: {a: {title: B}} | is the same for all alternatives",
                "alternatives: {a: 3} | line.yaml:8:19 alternatives.a = 3; must be values by their paths",
                "alternatives: 3 | line.yaml:8:15 alternatives = 3; must be names of alternatives",
                "today: rethraed | line.yaml:8:8 today = rethraed; is not the name of an alternative of this scenario."
                        + " There are: as written.",
            })
    void whatIsWrongIsSaidWithItsPlaceAndItsAlternative(String section, String message) {
        assertThat(problems(section)).hasSize(1).first().asString().contains(message);
    }

    @Test
    void theNearestNameOfTodayIsSaid() {
        assertThat(problems("alternatives: {rethread: {entry.uncoilers: 2}}", "today: rethraed"))
                .hasSize(1)
                .first()
                .asString()
                .contains("Did you mean rethread?");
    }

    @Test
    void everyProblemOfEveryAlternativeIsSaid() {
        assertThat(problems(
                        "alternatives: {a: {entry.uncoilers: 0, accumulator.capacity: -1 m}, b: {coil.width: 0 m}}"))
                .hasSize(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "today: rethraed | today = rethraed; is not the name of an alternative",
                "alternatives: {a: {entry.uncoiler: 2}} | alternative \"a\": entry.uncoiler = 2; is not a part of this",
                "alternatives: {a: {process.speed: 95 m/min}} | alternative \"a\": entry.top-speed (line 3) = 90 m/min",
                "alternatives: {as now: {process.speed: 45 m/min}} | alternatives.as now; changes nothing",
            })
    void anErrorOfTheScenarioHidesNoneOfItsAlternatives(String section, String message) {
        // Rule CHECK-35.
        assertThat(problems(section, "colour: blue"))
                .hasSize(2)
                .anyMatch(text -> text.contains("colour"))
                .anyMatch(text -> text.contains(message));
    }

    @Test
    void whatRestsOnAnErrorOfTheScenarioIsNotSaidOfItsAlternatives() {
        // Rule CHECK-35. The weld is there, but not where it should be; rethraed may stand among the alternatives.
        assertThat(problems(
                        "coil-change: {join: [{weld: 60 s, people: 2}]}",
                        "alternatives: {a: {coil-change.join.weld: 20 s}}"))
                .singleElement()
                .asString()
                .contains("coil-change.join[1] = {weld: ...}");
        assertThat(problems("alternatifs: {rethread: {entry.uncoilers: 2}}", "today: rethread"))
                .singleElement()
                .asString()
                .contains("Did you mean alternatives?");
        // The top speed is refused already.
        assertThat(problems("entry: {top-speed: 40 m/min}", "alternatives: {a: {process.speed: 95 m/min}}"))
                .singleElement()
                .asString()
                .contains("entry.top-speed = 40 m/min; must be more than the process speed, 45 m/min");
    }

    @Test
    void settingsBesidesHoldForAllButWhatAnAlternativeChanges() {
        ScenarioFile file = ScenarioFile.open(
                new Written(folder).file("line.yaml", Written.with("alternatives: {a: {entry.uncoilers: 3}}")));
        List<Setting> settings = List.of(
                Setting.written("entry.uncoilers", "2", "--set", new Problems()).orElseThrow(),
                Setting.written("accumulator.capacity", "90 m", "--set", new Problems())
                        .orElseThrow());
        AlternativesReading reading = file.alternatives(settings, (ScenarioReading.Accepted) file.with(settings));

        Alternative a = reading.alternatives().get(1);
        assertThat(a.request().line().entry().uncoilers()).isEqualTo(3);
        assertThat(a.request().line().accumulator().capacity()).isEqualTo(90);
        assertThat(file.alternative("a").orElseThrow()).hasSize(1);
        assertThat(file.alternative("b")).isEmpty();
    }

    /** Otherwise it would be refused as set twice. */
    @Test
    void whatAnAlternativeChangesIsReplacedHoweverItIsNamed() {
        ScenarioFile file = ScenarioFile.open(new Written(folder)
                .file("line.yaml", Written.with("alternatives: {a: {\"coil-change.join[1]\": 30 s}}")));
        List<Setting> settings = List.of(Setting.written("coil-change.join.join", "40 s", "--set", new Problems())
                .orElseThrow());

        AlternativesReading reading = file.alternatives(settings, (ScenarioReading.Accepted) file.with(settings));

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.alternatives()).hasSize(2);
    }

    /** One question, one answer: run by itself or held against others, with the same settings. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        {accumulator: {strands: 8, stroke: 6 m}} | accumulator.stroke | 4 m
        {accumulator.capacity: 60 m}             | accumulator        | {strands: 8, stroke: 6 m}
        {coil-change.join: [{weld: 20 s}]}       | coil-change.join.weld | 30 s
        """)
    void settingsAreOnTopOfAnAlternativeAsWhereItIsRunByItself(String alternative, String path, String value) {
        ScenarioFile file = ScenarioFile.open(new Written(folder)
                .file("line.yaml", Written.with("alternatives: {a: " + alternative + ", b: {entry.uncoilers: 3}}")));
        List<Setting> own = file.alternative("a").orElseThrow();
        Setting set = Setting.written(path, value, "--set", new Problems()).orElseThrow();
        ScenarioReading.Accepted alone = (ScenarioReading.Accepted)
                file.with(Stream.concat(own.stream(), Stream.of(set)).toList());

        AlternativesReading reading = file.alternatives(List.of(set), (ScenarioReading.Accepted) file.read());

        assertThat(reading.alternatives())
                .filteredOn(one -> one.name().equals("a"))
                .singleElement()
                .extracting(one -> one.request().line())
                .isEqualTo(alone.request().line());
    }

    /** Measured times are those of the scenario: an alternative may say otherwise. */
    @Test
    void whatIsSetUnderAnAlternativeGivesWay() {
        ScenarioFile file = ScenarioFile.open(new Written(folder)
                .file("line.yaml", Written.with("alternatives: {a: {coil-change.join: [{join: 20 s}]}}")));
        Setting timed = Setting.written("coil-change.join.join", "40 s", "--times", new Problems())
                .orElseThrow();

        AlternativesReading reading =
                file.alternatives(List.of(timed), (ScenarioReading.Accepted) file.with(List.of(timed)));

        ScenarioReading.Accepted alone =
                (ScenarioReading.Accepted) file.with(file.alternative("a").orElseThrow());
        assertThat(reading.alternatives().get(1).request().line())
                .isEqualTo(alone.request().line());
    }

    /** A line without an accumulator has none that could be made larger. */
    @Test
    void anAlternativeThatHasNotWhatIsSetIsRunWithout() {
        ScenarioFile file = ScenarioFile.open(
                new Written(folder)
                        .file(
                                "line.yaml",
                                Written.with(
                                        "alternatives: {one strip: {practice: join without accumulator}, two: {entry.uncoilers: 3}}")));
        List<Setting> settings = Setting.written("usable-capacity", "90 m", "--set", new Problems()).stream()
                .toList();

        AlternativesReading reading = file.alternatives(settings, (ScenarioReading.Accepted) file.with(settings));

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.warnings())
                .filteredOn(warning -> warning.toString().contains("one strip"))
                .singleElement()
                .asString()
                .contains("usable-capacity", "is nothing that this line has");
        assertThat(reading.alternatives().get(1).request().line())
                .isEqualTo(((ScenarioReading.Accepted)
                                file.with(file.alternative("one strip").orElseThrow()))
                        .request()
                        .line());
        assertThat(reading.alternatives().get(2).request().line().accumulator().capacity())
                .isCloseTo(90, within(1e-9));
    }

    /** 240 mm at 900 mm/min and 6 s besides are 22 s, whatever was measured of the weld as it is. */
    @Test
    void anElementThatIsGivenAnotherTimeGoesByTheFileAndNotByWhatWasMeasured() {
        ScenarioFile file = ScenarioFile.open(new Written(folder)
                .file(
                        "line.yaml",
                        Written.with(
                                "coil-change: {join: [{fit: 20 s}, {weld: {travel: 600 mm/min, plus: 6 s}}]}",
                                "alternatives: {quicker: {coil-change.join.weld.travel: 900 mm/min}}")));
        List<Setting> measured = Stream.of("fit.constant=25 s", "weld.lognormal=[33 s, 4 s]")
                .map(text -> text.split("="))
                .map(part -> Setting.written("coil-change.join." + part[0], part[1], Setting.MEASURED, new Problems())
                        .orElseThrow())
                .toList();
        Setting set = Setting.written("coil-change.join.weld.travel", "900 mm/min", "--set", new Problems())
                .orElseThrow();

        AlternativesReading reading = file.alternatives(measured, (ScenarioReading.Accepted) file.with(measured));

        assertThat(reading.alternatives().get(1).request().line().change().join())
                .extracting(element ->
                        element.time().duration(element.time().drawn().mean(), 0.240, 0.002))
                .satisfiesExactly(
                        fit -> assertThat(fit).isEqualTo(25),
                        weld -> assertThat(weld).isCloseTo(22, within(1e-9)));
        assertThat(reading.warnings()).singleElement().asString().contains("coil-change.join.weld", "not used");
        List<Setting> both = Stream.concat(measured.stream(), Stream.of(set)).toList();
        assertThat(((ScenarioReading.Accepted) file.with(both)).request().line())
                .isEqualTo(reading.alternatives().get(1).request().line());
        assertThat(file.givenUp(both)).containsExactly("coil-change.join.weld");
        List<Setting> longer = Stream.concat(
                        measured.stream(),
                        Setting.written("coil-change.join[2].plus", "8 s", "--set", new Problems()).stream())
                .toList();
        assertThat(file.givenUp(longer)).containsExactly("coil-change.join.weld");
    }

    /** The scenario itself is not wrong for what is set of it for a run. */
    @Test
    void anAlternativeThatChangesNothingOfWhatIsSetIsLeftOutWithAWarning() {
        ScenarioFile file = ScenarioFile.open(new Written(folder)
                .file(
                        "line.yaml",
                        Written.with(
                                "today: a",
                                "alternatives: {a: {entry.uncoilers: 3}, b: {accumulator.capacity: 90 m}}")));
        List<Setting> settings = List.of(
                Setting.written("entry.uncoilers", "3", "--set", new Problems()).orElseThrow());

        AlternativesReading reading = file.alternatives(settings, (ScenarioReading.Accepted) file.with(settings));

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.warnings())
                .extracting(Problem::toString)
                .containsExactly(folder.resolve("line.yaml")
                        + ":9:16 alternatives.a; changes nothing of what is set for this run. It is left out.");
        assertThat(reading.today()).isEqualTo(Alternative.AS_WRITTEN);
        assertThat(reading.alternatives()).extracting(Alternative::name).containsExactly(Alternative.AS_WRITTEN, "b");
    }

    private static final String THIRD = "alternatives: {third uncoiler: {entry.uncoilers: 3}}";

    private List<String> ofPrices(String prices, String... sections) {
        List<String> all = new ArrayList<>(List.of(THIRD));
        all.addAll(List.of(sections));
        all.add("money: {currency: EUR, line-hour: 100, rate: 8 %, alternatives: {" + prices + "}}");
        return problems(all.toArray(String[]::new));
    }

    @Test
    void whatIsBoughtIsAnAlternativeThatThereIs() {
        assertThat(ofPrices("third uncoilr: {price: 9000, life: 5}", "today: as written"))
                .singleElement()
                .satisfies(problem -> assertThat(problem)
                        .matches("line\\.yaml:\\d+:\\d+ .*")
                        .endsWith(
                                "money.alternatives.third uncoilr; is not an alternative of this scenario. Did you mean"
                                        + " third uncoiler?"));
    }

    @Test
    void whatIsBoughtIsHeldAgainstWhatIsCalledToday() {
        assertThat(ofPrices("third uncoiler: {price: 9000, life: 5}", "today: as written"))
                .isEmpty();
        assertThat(ofPrices("third uncoiler: {price: 9000, life: 5}"))
                .singleElement()
                .satisfies(problem ->
                        assertThat(problem).contains("today; is missing", "Name it, such as today: as written."));
    }

    @Test
    void whatIsThereTodayIsNotBought() {
        assertThat(ofPrices("third uncoiler: {price: 9000, life: 5}", "today: third uncoiler"))
                .singleElement()
                .satisfies(problem -> assertThat(problem)
                        .contains("has a price, but is the one called today", "call another one today"));
    }

    @Test
    void withoutPricesNobodyNeedSayWhatIsThereToday() {
        assertThat(problems(THIRD, "money: {currency: EUR, line-hour: 100, rate: 8 %}"))
                .isEmpty();
    }
}
