package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.cli.terminal.ExitCode;
import runthrough.fuzz.RandomScenario;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;

/** Every study of a line that passes its check ends with an answer, whatever the line is, and every picture has a place for what it shows. */
class StudiesOfRandomLinesTest {
    private static final long FIRST = 970_001;
    private static final int LINES = 12;

    private static final List<String> STUDIES = List.of(
            "run --levers", "size", "limits", "speeds", "compare", "map --points 16", "sensitivity", "document");

    /** Not part of a longer word, such as a picture's bytes in letters. */
    private static final Pattern NO_NUMBER = Pattern.compile("(?<![A-Za-z0-9+/])(?:NaN|Infinity)(?![A-Za-z0-9+/])");

    @TempDir
    private Path folder;

    /** Of lines that can be run. */
    static LongStream seeds() {
        return LongStream.iterate(FIRST, seed -> seed + 1)
                .filter(seed -> ScenarioFile.of(Path.of("line.yaml"), RandomScenario.of(seed))
                                .read()
                        instanceof ScenarioReading.Accepted)
                .limit(LINES);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyStudyEndsWithAnAnswer(long seed) throws IOException {
        Session session = new Session(folder).write("line.yaml", RandomScenario.of(seed));

        for (String study : STUDIES) {
            String command =
                    study.replaceFirst(" |$", " line.yaml --out report ").strip();
            Session.Done done = session.run(command.split(" "));

            // There may be no alternatives.
            int orElse = study.equals("compare") ? ExitCode.BAD_INPUT : ExitCode.DONE;
            assertThat(done.code())
                    .as(study + "\n" + RandomScenario.of(seed) + done.err())
                    .isIn(ExitCode.DONE, orElse);
        }
        for (String file : session.files()) {
            if (file.matches(".*\\.(html|csv|json|svg)")) {
                assertThat(NO_NUMBER
                                .matcher(Files.readString(folder.resolve(file)))
                                .results())
                        .as(file + "\n" + RandomScenario.of(seed))
                        .isEmpty();
            }
        }
    }
}
