package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Alternative;
import runthrough.plant.SimulationRequest;
import runthrough.report.described.LineDifferences;
import runthrough.scenario.AlternativesReading;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;

/** What alternatives change, in the words of the trade. */
class ChangesInWordsTest {

    /** What a line that rethreads makes no use of. */
    private static final List<String> OF_A_JOINT = List.of("coil-change.join-shorter-by");

    @TempDir
    private Path folder;

    static List<Path> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static SimulationRequest accepted(ScenarioReading reading) {
        return ((ScenarioReading.Accepted) reading).request();
    }

    /** A change that a reader is not shown would be a trap: of every number, another value has a row with both. */
    @ParameterizedTest
    @MethodSource("shipped")
    void everyNumberOfAShippedLineThatIsChangedIsNamed(Path path) {
        ScenarioFile file = ScenarioFile.open(path);
        SimulationRequest request = accepted(file.read());

        assertThat(file.inputs()).allSatisfy(input -> {
            double present = input.present().orElseThrow();
            double other = input.numeric().isWhole() ? present + 1 : present == 0 ? 0.01 : 0.97 * present;
            if (file.with(List.of(input.setTo(other, "--set"))) instanceof ScenarioReading.Accepted accepted
                    && (request.line().practice().hasJoiner() || !OF_A_JOINT.contains(input.path()))
                    && !accepted.request().line().equals(request.line())) {
                assertThat(LineDifferences.of(request, List.of(accepted.request())))
                        .as(input.path())
                        .isNotEmpty();
            }
        });
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedAlternativeIsSetApartFromTheOthers(Path path) {
        List<Alternative> all = reading(path).alternatives();
        List<LineDifferences.Row> rows = rows(all);

        for (int other = 0; other < all.size() - 1; other++) {
            int column = other;
            assertThat(rows)
                    .as(all.get(other + 1).name())
                    .anySatisfy(row -> assertThat(row.others().get(column)).isNotEmpty());
        }
        assertThat(rows).noneMatch(row -> row.toString().contains("{"));
    }

    private static AlternativesReading reading(Path path) {
        ScenarioFile file = ScenarioFile.open(path);
        AlternativesReading reading = file.alternatives(List.of(), (ScenarioReading.Accepted) file.read());
        assertThat(reading.problems()).isEmpty();
        return reading;
    }

    /** What all have otherwise than the first. */
    private static List<LineDifferences.Row> rows(List<Alternative> all) {
        return LineDifferences.of(
                all.get(0).request(),
                all.stream().skip(1).map(Alternative::request).toList());
    }

    private List<LineDifferences.Row> changes(String alternatives) throws IOException {
        String line = """
                title: Line (invented)
                coil: {thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 600 m}
                entry: {top-speed: 90 m/min}
                accumulator: {capacity: 72 m}
                process: {speed: 60 m/min}
                coil-change:
                  join: [{weld: {travel: 600 mm/min}}, {fit up: 20 s}, {change electrodes: {constant: 90 s, every: 8}}]
                """;
        Path file = Files.writeString(folder.resolve("line.yaml"), line + "alternatives: " + alternatives + "\n");
        return rows(reading(file).alternatives());
    }

    @Test
    void aNumberIsNamedWithBothItsValues() throws IOException {
        assertThat(changes("{quicker: {coil-change.join.weld.travel: 900 mm/min, accumulator.capacity: 80 m}}"))
                .extracting(
                        LineDifferences.Row::what,
                        LineDifferences.Row::present,
                        row -> row.others().get(0))
                .containsExactly(
                        tuple("accumulator capacity", "72 m", "80 m"),
                        tuple("weld, time", "across the strip at 600 mm/min", "across the strip at 900 mm/min"));
    }

    /** Neither the crew nor the electrodes' people are written in the file: one person each. */
    @Test
    void whatIsNotWrittenStandsWithItsDefault() throws IOException {
        assertThat(changes("{two: {coil-change.crew: 2, coil-change.join.change electrodes.people: 2},"
                        + " random: {coil-change.join.fit up: {triangular: [20 s, 25 s, 40 s]}}}"))
                .containsExactly(
                        new LineDifferences.Row("crew", "1", List.of("2", "")),
                        new LineDifferences.Row(
                                "fit up, time", "20 s", List.of("", "triangular, 20 to 40 s, most often 25 s")),
                        new LineDifferences.Row("change electrodes, people", "1", List.of("2", "")));
    }

    @Test
    void anElementThatIsTakenOutOrPutInIsNamedWhole() throws IOException {
        assertThat(changes("{other: {coil-change.join: [{weld: {travel: 600 mm/min}}, {fit up: 20 s},"
                        + " {inspect: {constant: 30 s, chance: 10 %}}]}}"))
                .containsExactly(
                        new LineDifferences.Row("change electrodes, time", "90 s", List.of("none")),
                        new LineDifferences.Row("change electrodes, done", "every 8th", List.of("none")),
                        new LineDifferences.Row("inspect, time", "none", List.of("30 s")),
                        new LineDifferences.Row("inspect, done", "none", List.of("with a chance of 10 %")));
    }

    /** Weld 20 s, fit up 20 s, electrodes 90 s at every eighth coil change: 51.25 s on average. */
    @Test
    void ofAWholePartThatOneLineLacksTheMainValuesAreGiven() throws IOException {
        assertThat(changes("{rethread: {practice: rethread, coil-change.rethread: 9 min}}"))
                .containsExactly(
                        new LineDifferences.Row("practice", "join with accumulator", List.of("rethread")),
                        new LineDifferences.Row("uncoilers", "1", List.of("none")),
                        new LineDifferences.Row("entry top speed", "90 m/min", List.of("none")),
                        new LineDifferences.Row("accumulator capacity", "72 m", List.of("none")),
                        new LineDifferences.Row("accumulator reserve", "0 m", List.of("none")),
                        new LineDifferences.Row(
                                "mean time of the work on the standing strip", "51.3 s", List.of("none")),
                        new LineDifferences.Row("rethread, time", "none", List.of("9:00 min")));
    }
}
