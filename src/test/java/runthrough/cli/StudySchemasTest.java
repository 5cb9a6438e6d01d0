package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Command;

/** What the studies give as JSON is what their schemas say. */
class StudySchemasTest {
    private static final JsonSchemaFactory SCHEMAS = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7);

    @TempDir
    private Path folder;

    private String schema(String study) {
        Session.Done done = new Session(folder).run("schema", study);
        assertThat(done.code()).as(done.err()).isZero();
        return done.out();
    }

    /** Answers of studies of a line; verdict and times have tests of their own. */
    static Stream<String> studies() {
        return StudySchemas.studies().stream()
                .filter(study -> !List.of("times", "verdict").contains(study));
    }

    static List<Arguments> studiesOfShippedLines() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .flatMap(file -> studies()
                            // Only a line whose times were observed has any to resample.
                            .filter(study -> !study.equals("uncertainty")
                                    || file.toString().contains("measured"))
                            .map(study -> Arguments.of(study, file)))
                    .toList();
        }
    }

    /** Few coil changes, so that the intervals are wide or lack an end: those must be described as well. */
    @ParameterizedTest
    @MethodSource("studiesOfShippedLines")
    void answerForAShippedLineIsWhatItsSchemaSays(String study, Path line) throws IOException {
        List<String> command =
                new ArrayList<>(List.of(study, line.toAbsolutePath().toString()));
        if (study.equals("log")) {
            command.add(Path.of("scenarios/tube-line-log.csv").toAbsolutePath().toString());
        }
        command.addAll(List.of("--json", "--no-report", "--coil-changes", "30", "--replications", "3"));
        Session.Done done = new Session(folder).run(command.toArray(String[]::new));
        assertThat(done.code()).as(done.err()).isZero();

        JsonNode answer = new ObjectMapper().readTree(done.out());

        JsonSchema schema = SCHEMAS.getSchema(schema(study));
        assertThat(schema.validate(answer)).isEmpty();
        // Members of these were renamed once more than those of the others.
        String version = List.of("compare", "limits", "size").contains(study) ? "3" : "2";
        assertThat(answer.path("format").asText()).isEqualTo("runthrough-" + study + "/" + version);
    }

    @ParameterizedTest
    @MethodSource("studies")
    void schemaIsAValidSchema_andSaysWhatEveryMemberIs(String study) throws IOException {
        JsonNode schema = new ObjectMapper().readTree(schema(study));

        assertThat(SCHEMAS.getSchema(SchemaLocation.of("http://json-schema.org/draft-07/schema#"))
                        .validate(schema))
                .isEmpty();
        assertThat(schema.findValues("properties"))
                .hasSizeGreaterThan(2)
                .allSatisfy(properties -> assertThat(properties)
                        .allSatisfy(member ->
                                assertThat(member.path("description").asText()).isNotEmpty()));
    }

    @Test
    void everyStudyHasASchema() {
        List<String> commands = new ClassFileImporter()
                .importPackagesOf(StudyCommand.class).stream()
                        .filter(type -> type.isAssignableTo(StudyCommand.class) && type.isAnnotatedWith(Command.class))
                        .map(StudySchemasTest::name)
                        .toList();

        assertThat(commands).contains("size", "speeds");
        assertThat(studies()).containsExactlyInAnyOrderElementsOf(commands);
    }

    private static String name(JavaClass type) {
        return type.getAnnotationOfType(Command.class).name();
    }

    @Test
    void schemaSaysWhatTheyWouldNot() throws IOException {
        Session session = new Session(folder).write("quick.yaml", Session.LINE);
        String answer =
                session.run("size", "quick.yaml", "--json", "--no-report").out();

        JsonSchema schema = SCHEMAS.getSchema(schema("size"));

        assertThat(schema.validate(new ObjectMapper().readTree(answer))).isEmpty();
        assertThat(schema.validate(new ObjectMapper().readTree(answer.replace("\"found\"", "\"lost\""))))
                .isNotEmpty();
        assertThat(schema.validate(new ObjectMapper().readTree(answer.replace("\"target\"", "\"aim\""))))
                .isNotEmpty();
    }
}
