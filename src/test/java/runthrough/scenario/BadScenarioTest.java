package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is wrong with a scenario, in the words that the user reads. */
class BadScenarioTest {

    @TempDir
    private Path folder;

    private Written written = new Written(Path.of("."));

    @BeforeEach
    void writeIntoTheFolder() {
        written = new Written(folder);
    }

    private List<String> refusal(String... sections) {
        return written.refusal(Written.with(sections));
    }

    @Test
    void theScenarioThatTheseTestsSpoilIsGood() {
        assertThat(written.warnings(Written.with())).isEmpty();
    }

    @Test
    void aValueOutOfRangeIsAnsweredWithTheRangeInTheUsersUnit() {
        assertThat(refusal("accumulator: {strands: 8, stroke: -9 m}"))
                .containsExactly("line.yaml:4:35 accumulator.stroke = -9 m; must be more than 0 m. "
                        + "Give the carriage travel between its end positions, such as 9 m.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        45           | the unit is missing; allowed for speed are m/s, m/min,
        45 m         | m is a unit of length, not of speed; allowed are m/s,
        45 mpm       | unknown unit "mpm"; allowed for speed are
        .nan         | must be a finite number with a unit
        NaN m/min    | must be a finite number with a unit
        .inf         | must be a finite number with a unit
        -Infinity m/s| must be a finite number with a unit
        0x10 m/min   | a number is written in decimal digits
        0 m/min      | must be more than 0 m/min
        -45 m/min    | must be more than 0 m/min
        1e999 m/min  | must be a finite number with a unit
        1e9 m/min    | is beyond any strip line
        1e-30 m/min  | is beyond any strip line
        fast         | must be a number with a unit of speed
        ""           | has no value; must be a speed with its unit, more than 0
        [45 m/min]   | must be a speed with its unit, more than 0
        {a: 1}       | must be a speed with its unit, more than 0
        """)
    void aSpeedThatIsNoneIsRefused(String value, String rule) {
        assertThat(refusal("process: {speed: " + value + "}"))
                .singleElement()
                .asString()
                .startsWith("line.yaml:5:18 process.speed")
                .contains("; " + rule);
    }

    @Test
    void aDecimalCommaIsExplainedInsideBracesToo() {
        assertThat(refusal("process:\n  speed: 45,5 m/min"))
                .containsExactly(
                        "line.yaml:6:10 process.speed = 45,5 m/min; a number has a decimal point and no commas."
                                + " Write 45.5 m/min.");
        assertThat(refusal("process: {speed: 45,5 m/min}"))
                .hasSize(2)
                .last()
                .asString()
                .startsWith("line.yaml:5:21 process.5 m/min; is not a known key of process. "
                        + "A comma ends the value before it: write decimals with a point, thousands without a comma, and"
                        + " a text that holds a comma in quotes.");
    }

    @ParameterizedTest
    @CsvSource({
        "2.7, from 1 to 100",
        "0, from 1 to 100",
        "-1, from 1 to 100",
        "two, from 1 to 100",
        "1e1, from 1 to 100",
        "99999999999999999999, from 1 to 100"
    })
    void aCountThatIsNoneIsRefused(String value, String range) {
        assertThat(refusal("coil-change: {crew: " + value + ", join: [{join: 50 s}]}"))
                .containsExactly("line.yaml:6:21 coil-change.crew = " + value + "; must be a whole number " + range
                        + ". Give how many people, such as 2.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        target: 110 %    | run.target = 110 %; must be more than 0 % and at most 100 %
        target: 0 %      | run.target = 0 %; must be more than 0 % and at most 100 %
        target: 0.99     | run.target = 0.99; the unit is missing; allowed for share are %
        seed: -1         | run.seed = -1; must be a whole number from 0 to
        replications: 0  | run.replications = 0; must be a whole number from 1 to 100000
        replications: 1 000 | run.replications = 1 000; a number has no blanks between its digits. Write 1000.
        replications: 4-8 | run.replications = 4-8; is a range, and not one number. Write one number.
        replications: "1,000" | run.replications = 1,000; a number has a decimal point and no commas. Write 1000.
        replications: "2,5" | run.replications = 2,5; must be a whole number from 1 to 100000
        """)
    void aRunThatCannotBeIsRefused(String run, String message) {
        assertThat(refusal("run: {" + run + "}")).singleElement().asString().contains(message);
    }

    @Test
    void sharesOverAHundredPerCentAreRefused() {
        assertThat(refusal("coil-change: {join: [{join: {constant: 5 s, chance: 140 %}}], reject: {chance: 100 %}}"))
                .containsExactly(
                        "line.yaml:6:53 coil-change.join[1].join.chance = 140 %; must be at least 0 % and at most 100 %."
                                + " Give the share of coil changes at which it is done, drawn at random, such as 10 %.",
                        "line.yaml:6:80 coil-change.reject.chance = 100 %; must be at least 0 % and less than 100 %. "
                                + "Give the share of joints that are not good, such as 2 %.");
    }

    private static String mix(String first, String second) {
        String strip = "thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 900 m";
        return Written.without("coil")
                + String.format("coils: {mix: [{weight: %s, %s}, {weight: %s, %s}]}%n", first, strip, second, strip);
    }

    @ParameterizedTest
    @CsvSource({"60 %, 50 %, 110", "60 %, 30 %, 90"})
    void weightsInPerCentMustAddUpToAHundred(String first, String second, String sum) {
        assertThat(written.refusal(mix(first, second)))
                .containsExactly("line.yaml:8:15 coils.mix; the weights add up to " + sum + " %; must be 100 %. "
                        + "Give shares that add up to 100 %, or plain numbers such as 3 and 1.");
    }

    @Test
    void weightsInPerCentAndPlainOnesDoNotMix() {
        assertThat(written.refusal(mix("60 %", "4")))
                .singleElement()
                .asString()
                .contains("coils.mix; some weights are in percent and some are not");
        assertThat(written.warnings(mix("60 %", "40 %"))).isEmpty();
        assertThat(written.refusal(mix("0", "4")))
                .singleElement()
                .asString()
                .contains("coils.mix[1].weight = 0; must be");
    }

    @Test
    void valuesThatMustBeInOrderAreRefusedWhenTheyAreNot() {
        assertThat(refusal("coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, outer-diameter: 508 mm,"
                        + " inner-diameter: 50.8 cm}"))
                .containsExactly(
                        "line.yaml:2:77 coil.outer-diameter = 508 mm; must be more than inner-diameter = 50.8 cm."
                                + " Give the outer diameter of the coil, such as 1450 mm.");
        assertThat(refusal("accumulator: {loops: 1, span: 3 m, greatest-sag: 1 m, least-sag: 2 m}"))
                .singleElement()
                .asString()
                .contains("accumulator.greatest-sag = 1 m; must be at least least-sag = 2 m.");
        assertThat(refusal("accumulator: {wraps: 9, full-diameter: 1 m, empty-diameter: 2 m}"))
                .singleElement()
                .asString()
                .contains("accumulator.full-diameter = 1 m; must be at least empty-diameter = 2 m.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        {triangular: [60 s, 20 s, 90 s]} | triangular[2] = 20 s; must be at least the one before, 60 s
        {uniform: [60 s, 20 s]}          | uniform[2] = 20 s; must be at least the one before, 60 s
        {triangular: [60 s, 20 s]}       | triangular = [60 s, ...]; must be a list of 3 values in brackets
        {triangular: 60 s}               | triangular = 60 s; must be a list of 3 values in brackets
        {lognormal: [0 s, 2 s]}          | lognormal[1] = 0 s; must be more than 0 s
        {lognormal: [9 s, -2 s]}         | lognormal[2] = -2 s; must be 0 s or more
        {weibull: [2 s, 9 s]}            | weibull[1] = 2 s; must be a number without a unit, at least 0.1 and at most 1000
        {weibull: [0, 9 s]}              | weibull[1] = 0; must be a number without a unit, at least 0.1 and at most 1000
        {weibull: [2, 9]}                | weibull[2] = 9; the unit is missing
        {exponential: 0 s}               | exponential = 0 s; must be more than 0 s
        {observed: []}                   | observed = []; must be a list of measured values, at least 1
        {observed: [9 s, -1 s]}          | observed[2] = -1 s; must be 0 s or more
        {uniform: [1 s, 2 s], gamma: [1 s, 1 s]} | gamma = [1 s, ...]; which distribution it follows is already given by uniform
        {shift: 3 s}                     | does not say which distribution it follows
        {triangle: [1 s, 2 s, 3 s]}      | triangle = [1 s, ...]; is not a known key of random quantity. Did you mean triangular?
        [1 s, 2 s]                       | must be a time with its unit, 0 or more, or a random one
        """)
    void aDistributionThatIsNoneIsRefused(String distribution, String message) {
        assertThat(refusal("process: {speed: 45 m/min, restart: {delay: " + distribution + "}}"))
                .singleElement()
                .asString()
                .startsWith("line.yaml:5:")
                .contains(message);
    }

    @Test
    void aBareListOfTimesIsShownAsADistribution() {
        assertThat(refusal("process: {speed: 45 m/min, restart: {delay: [60 s, 120 s, 300 s]}}"))
                .singleElement()
                .asString()
                .endsWith(
                        "Say what the values are: {triangular: [60 s, 120 s, 300 s]} for the least, the most likely and the"
                                + " greatest, or {observed: [60 s, 120 s, 300 s]} for measured values, all equally likely.");
        assertThat(refusal("process: {speed: 45 m/min, restart: {delay: [60 s, 120 s]}}"))
                .singleElement()
                .asString()
                .contains("Say what the values are: {uniform: [60 s, 120 s]}");
    }

    @Test
    void aKeyThatGoesWithManyIsRefusedOnce() {
        assertThat(refusal("coil-change: {join: [{weld: {travel: 600 mm/min, shift: 3 s}}]}"))
                .singleElement()
                .asString()
                .contains("weld.shift = 3 s; only goes with one of: ", "Leave it out, or give one of these.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        weld                              | = weld; must be the name of a work element with its time
        {fit up: 10 s, weld: 20 s}        | must be the name of a work element with its time. Write it like "- inspect: 10 s"
        {cup test: 20 s, every: 8}        | Everything about an element stands behind its name: write "- cup test: {constant: 20 s, every: 8}".
        {cup test: {uniform: [9 s, 20 s]}, people: 2} | write "- cup test: {uniform: [9 s, 20 s], people: 2}".
        {}                                | must be the name of a work element with its time
        {weld: 20}                        | coil-change.join[1].weld = 20; the unit is missing
        {weld: {travel: 0 mm/min}}        | coil-change.join[1].weld.travel = 0 mm/min; must be more than 0 mm/min
        {weld: {plus: 6 s}}               | does not say how long the element takes
        {weld: {constant: 9 s, plus: 6 s}}| weld.plus = 6 s; only goes with travel
        {weld: {constant: 9 s, every: 0}} | weld.every = 0; must be a whole number from 1 to 1000000
        {weld: {constant: 9 s, every: 2, chance: 5 %}} | weld.chance = 5 %; when the element is done is already given by every
        {weld: {constant: 9 s, redo: maybe}} | weld.redo = maybe; must be one of: yes, no, true, false
        """)
    void aWorkElementThatIsNoneIsRefused(String element, String message) {
        assertThat(refusal("coil-change: {join: [" + element + "]}"))
                .singleElement()
                .asString()
                .startsWith("line.yaml:6:")
                .contains(message);
    }

    @Test
    void aWordThatIsNotAllowedIsAnsweredWithTheNearest() {
        assertThat(refusal("practice: join with acumulator"))
                .containsExactly(
                        "line.yaml:8:11 practice = join with acumulator; must be one of: join with accumulator,"
                                + " join without accumulator, rethread. Did you mean join with accumulator?");
        assertThat(refusal("accumulator: nothing"))
                .singleElement()
                .asString()
                .contains("accumulator = nothing; must be a group of keys, or the word none.");
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnceInTheOrderOfTheFile() {
        assertThat(refusal(
                        "coil: {thickness: 2, width: 240 mm, density: 7850 kg/m3, length: -1 m}",
                        "entry: {top-speed: 90 mm}",
                        "process: {sped: 45 m/min}",
                        "coil-change: {join: [{join: soon}]}",
                        "run: {target: 101 %}"))
                .extracting(problem -> problem.substring(0, problem.indexOf(';')))
                .containsExactly(
                        "line.yaml:2:19 coil.thickness = 2",
                        "line.yaml:2:66 coil.length = -1 m",
                        "line.yaml:3:20 entry.top-speed = 90 mm",
                        "line.yaml:5:11 process.sped = 45 m/min",
                        "line.yaml:6:29 coil-change.join[1].join = soon",
                        "line.yaml:7:15 run.target = 101 %");
    }

    @Test
    void aFaultInTheDefaultsIsNotRepeatedForEveryCoil() {
        String coils =
                "coils: {defaults: {density: 7850, thickness: 2 mm}, mix: [{weight: 1, width: 2 m, length: 9 m}]}";

        assertThat(written.refusal(Written.without("coil") + coils))
                .singleElement()
                .asString()
                .contains("coils.defaults.density = 7850; the unit is missing");
    }

    /** As it is while somebody types. */
    @ParameterizedTest
    @ValueSource(strings = {"", " 5", " y", " []"})
    void defaultsThatAreNoGroupAreSaidOnce(String defaults) {
        String coils = "coils: {defaults:" + defaults + ", mix: [{weight: 1}, {weight: 2}]}";

        assertThat(written.refusal(Written.without("coil") + coils))
                .singleElement()
                .asString()
                .contains("coils.defaults", "must be a group of keys");
    }

    @Test
    void moreProblemsThanAnybodyMendsAreOnlyCounted() {
        String items = "{weld: 1}, ".repeat(150);
        ScenarioReading reading = written.read(Written.with("coil-change: {join: [" + items + "]}"));

        assertThat(reading).isInstanceOfSatisfying(ScenarioReading.Refused.class, refused -> {
            assertThat(refused.problems()).hasSize(100);
            assertThat(refused.further()).isEqualTo(50);
        });
    }

    @Test
    void aLongValueIsCutShortAndControlCharactersAreNotPassedOn() {
        assertThat(refusal("process: {speed: \"" + "9".repeat(90) + "\"}"))
                .singleElement()
                .asString()
                .contains("process.speed = " + "9".repeat(60) + "...; ");
        assertThat(refusal("process: {speed: \"45\\u202E m/min\"}"))
                .singleElement()
                .asString()
                .contains("process.speed = 45? m/min; ")
                .doesNotContain("\u202E");
        assertThat(refusal("process: {speed: \"45\\e[31m m/min\"}"))
                .singleElement()
                .asString()
                .endsWith(": holds a control character (U+001B). Write it without.");
    }
}
