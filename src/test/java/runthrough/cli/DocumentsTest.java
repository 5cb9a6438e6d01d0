package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What README.md and DEVELOPERS.md show can be done, and where they point to there is something. */
class DocumentsTest {
    private static final List<Path> DOCUMENTS = List.of(Path.of("README.md"), Path.of("DEVELOPERS.md"));
    /** A line of a code block that runs the program; what a shell does with its output is left out. */
    private static final Pattern COMMAND =
            Pattern.compile("(?m)^    .*java -jar target/runthrough\\.jar *([^|>&)\\n]*)");

    private static final Pattern LINK = Pattern.compile("]\\(([^)#:]+)\\)");

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void copyScenarios() throws IOException {
        session = new Session(folder);
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            for (Path file : files.toList()) {
                session.write(file.toString(), Files.readString(file));
            }
        }
        session.write("my-line.yaml", shownScenario());
    }

    /** The scenario that README.md shows. */
    private static String shownScenario() throws IOException {
        Matcher matcher = Pattern.compile("(?s)```yaml\\n(.*?)```").matcher(Files.readString(Path.of("README.md")));
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    static Stream<String> commands() throws IOException {
        return all(COMMAND).map(String::strip);
    }

    private static Stream<String> all(Pattern pattern) throws IOException {
        Stream.Builder<String> found = Stream.builder();
        for (Path document : DOCUMENTS) {
            Matcher matcher = pattern.matcher(Files.readString(document));
            while (matcher.find()) {
                found.add(matcher.group(1));
            }
        }
        return found.build();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandShownCanBeRun(String command) throws IOException {
        if (command.startsWith("merge ")) {
            // What it puts together is made by the commands above it, here in short.
            commands()
                    .filter(other -> other.contains("--shard"))
                    .forEach(other -> session.run((other + " --replications 2").split(" +")));
        }
        Session.Done done = session.run(command.split(" +"));

        assertThat(done.code()).as(done.err()).isIn(command.contains("--require-target") ? List.of(0, 3) : List.of(0));
        assertThat(done.out()).isNotEmpty();
    }

    @Test
    void everyCommandThereIsIsShown() throws IOException {
        assertThat(commands().map(command -> command.replaceFirst(" .*", "")))
                .contains(
                        "run",
                        "check",
                        "keys",
                        "inputs",
                        "schema",
                        "completion",
                        "size",
                        "speeds",
                        "log",
                        "map",
                        "times",
                        "uncertainty",
                        "compare",
                        "sensitivity",
                        "draws",
                        "document",
                        "sweep",
                        "merge",
                        "limits");
    }

    @Test
    void relativeLinksLeadSomewhere() throws IOException {
        assertThat(all(LINK))
                .isNotEmpty()
                .allSatisfy(link -> assertThat(Path.of(link)).exists());
    }
}
