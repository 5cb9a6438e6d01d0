package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Section;

class ShippedScenariosTest {

    static List<Path> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedScenarioIsAcceptedWithoutAWarning(Path file) {
        ScenarioReading reading = ScenarioFile.open(file).read();

        assertThat(reading).isInstanceOfSatisfying(ScenarioReading.Accepted.class, accepted -> {
            assertThat(accepted.warnings()).isEmpty();
            assertThat(accepted.request().title()).endsWith("(invented)");
        });
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedScenarioNamesItsSchemaForEditors(Path file) throws IOException {
        assertThat(Files.readAllLines(file).get(0)).isEqualTo("# yaml-language-server: $schema=scenario.schema.json");
    }

    @Test
    void betweenThemTheShippedScenariosUseEveryKey() throws IOException {
        StringBuilder everything = new StringBuilder();
        for (Path file : shipped()) {
            everything.append(Files.readString(file));
        }
        everything.append(Files.readString(Path.of("scenarios", "slitter-coils.csv")));

        List<String> unused = keys(ScenarioKeys.SCENARIO)
                .map(Key::name)
                .distinct()
                .filter(key -> !Pattern.compile("(?m)(^|[\\s{,])" + key + "(:| \\[)")
                        .matcher(everything)
                        .find())
                .toList();

        assertThat(unused).isEmpty();
    }

    private static Stream<Key<?>> keys(Section section) {
        return Stream.concat(
                section.keys().stream(),
                section.keys().stream()
                        .flatMap(key -> key.shape().sections().stream().flatMap(inner -> keys(inner))));
    }
}
