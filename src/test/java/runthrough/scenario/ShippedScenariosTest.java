package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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
        ScenarioReading reading = ScenarioReader.read(file);

        assertThat(reading).isInstanceOfSatisfying(ScenarioReading.Accepted.class, accepted -> {
            assertThat(accepted.warnings()).isEmpty();
            assertThat(accepted.brief().title()).endsWith("(invented)");
        });
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedScenarioNamesItsSchemaForEditors(Path file) throws IOException {
        assertThat(Files.readAllLines(file).get(0)).isEqualTo("# yaml-language-server: $schema=scenario.schema.json");
    }
}
