package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.cli.terminal.ExitCode;

/** What all commands have in common: help, version, and what is said of a mistyped command line. */
class CommandLineTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenario() {
        session = new Session(folder).write("line.yaml", Session.LINE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--version", "-V", "run --version", "check --version"})
    void versionIsTheOneOfTheBuild(String args) {
        Session.Done done = session.run(args.split(" "));

        assertThat(done.code()).isZero();
        assertThat(done.out().strip()).isEqualTo("Runthrough " + System.getProperty("project.version"));
    }

    @Test
    void helpSaysWhatTheProgramIsForWithoutColoursInAPipe() {
        Session.Done done = session.run("--help");

        assertThat(done.code()).isZero();
        assertThat(done.out())
                .startsWith("Usage: runthrough")
                .contains("run through its coil changes")
                .doesNotContain("\u001B[");
        assertThat(done.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"run", "size", "speeds", "sensitivity", "check", "keys", "schema", "completion"})
    void helpOfEveryCommandHasExamplesAndExitCodes(String command) {
        Session.Done done = session.run(command, "--help");

        assertThat(done.code()).isZero();
        assertThat(done.out()).contains("Exit codes:", "Examples:", "runthrough " + command);
    }

    @Test
    void helpFitsATerminalOf80Columns() {
        assertThat(session.run("--help").out().lines())
                .allSatisfy(
                        line -> assertThat(line).hasSizeLessThanOrEqualTo(80).doesNotStartWith("write"));
        assertThat(session.run("run", "--help").out().lines())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    /** What somebody copies: a path or an option in two halves would be refused, and a command in two would run without its end. */
    @ParameterizedTest
    @MethodSource("commands")
    void helpBreaksNoPathAndExamplesCanBeCopied(String command) {
        String help = session.run(command, "--help").out();

        assertThat(help).doesNotContainPattern("[a-z0-9][-.=/]\\n *[a-z0-9]");
        List<String> examples = help.substring(help.indexOf("\nExamples:\n") + 11)
                .lines()
                .filter(line -> !line.startsWith("  #"))
                .toList();
        assertThat(examples).isNotEmpty();
        for (int i = 0; i < examples.size(); i++) {
            String start = i > 0 && examples.get(i - 1).endsWith(" \\") ? "      " : "  [a-z]";
            assertThat(examples.get(i)).matches(start + "\\S.*|" + start + "--.*");
        }
    }

    /** All commands, as the help lists them. */
    static List<String> commands(@TempDir Path folder) {
        return new Session(folder)
                .run("--help")
                .out()
                .replaceAll("(?s).*\nCommands:\n|\n\nExit codes:.*", "")
                .lines()
                .filter(line -> line.matches("  [a-z].*"))
                .map(line -> line.strip().replaceAll(" .*", ""))
                .toList();
    }

    @Test
    void everyCommandIsListedWithAWholeSentence() {
        String help = session.run("--help").out();
        String commands = help.substring(help.indexOf("Commands:\n") + 10, help.indexOf("\nExit codes:"));

        assertThat(commands.split("\n(?=  \\w)"))
                .hasSizeGreaterThan(15)
                .allSatisfy(command -> assertThat(command.strip()).endsWith("."));
    }

    /** A line of the description ends where the next word does not fit, or with a sentence. */
    @ParameterizedTest
    @ValueSource(strings = {"size", "speeds", "compare", "log", "draws", "serve", "map"})
    void noSentenceOfADescriptionIsBrokenMidLine(String command) {
        List<String> lines = session.run(command, "--help")
                .out()
                .lines()
                .dropWhile(line -> line.startsWith("Usage") || line.startsWith("   "))
                .takeWhile(line -> !line.startsWith("   "))
                .toList();

        assertThat(lines).isNotEmpty();
        for (int i = 1; i < lines.size(); i++) {
            String next = lines.get(i).replaceAll(" .*", "");
            assertThat(lines.get(i - 1).length() + 1 + next.length() >= 80
                            || next.isEmpty()
                            || Character.isUpperCase(next.charAt(0)))
                    .as(lines.get(i - 1) + " | " + lines.get(i))
                    .isTrue();
        }
    }

    @Test
    void noArgumentsPrintTheHelp() {
        Session.Done done = session.run();

        assertThat(done.code()).isZero();
        assertThat(done.out()).startsWith("Usage: runthrough");
    }

    /** As of a variable of the shell that is not set; it would be the present folder. */
    @ParameterizedTest
    @CsvSource({
        "run line.yaml --out, --out",
        "run, SCENARIO",
        "sweep line.yaml --vary process.speed=30m/min --out, --out"
    })
    void aFileOrFolderHasAName(String command, String argument) {
        Session.Done done = session.run(
                Stream.concat(Stream.of(command.split(" ")), Stream.of("")).toArray(String[]::new));

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err())
                .startsWith(argument + " = \"\"; must be the name of a file or folder, such as . for this one");
        assertThat(session.files()).containsExactly("line.yaml");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    --vresion                             | --vresion is not an option of runthrough. Did you mean --version?
                    rnu line.yaml                         | rnu is not a command. Did you mean run?
                    frobnicate                            | frobnicate is not a command.
                    luck line.yaml                        | The command luck is now called draws.
                    run line.yaml --jsno                  | --jsno is not an option of runthrough run. Did you mean --json?
                    run line.yaml --replication=3         | --replication is not an option of runthrough run. Did you mean --replications?
                    run line.yaml -o                      | -o is not an option of runthrough run. Did you mean --out?
                    run line.yaml -j                      | -j is not an option of runthrough run. Did you mean --json?
                    run line.yaml -s=3                    | -s is not an option of runthrough run. Did you mean --seed or --set?
                    run line.yaml -x                      | -x is not an option of runthrough run.
                    run line.yaml other.yaml              | other.yaml is one argument too many for runthrough run.
                    run                                   | Missing required parameter: 'SCENARIO'
                    run line.yaml --replications 0        | --replications = 0; must be a whole number from 1 to 100000
                    run line.yaml --replications many     | --replications = many; must be a whole number from 1 to 100000
                    run line.yaml --coil-changes 1.5      | --coil-changes = 1.5; must be a whole number from 1 to 1000000
                    run line.yaml --seed -1               | --seed = -1; must be a whole number from 0 to 9007199254740991
                    run line.yaml --threads 0             | --threads = 0; must be a whole number from 1 to 1024
                    run line.yaml --results-in metirc     | --results-in = metirc; must be one of metric, us. Did you mean metric?
                    run line.yaml --colour sometimes      | --colour = sometimes; must be one of auto, always, never
                    """)
    void mistypedCommandLineIsBadInput_andSaysWhatWasMeant(String args, String message) {
        Session.Done done = session.run(args.strip().split(" +"));

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.errLines()).hasSize(2).first().isEqualTo(message);
        assertThat(done.errLines().get(1)).startsWith("See runthrough").endsWith(" --help");
        assertThat(done.out()).isEmpty();
        assertThat(session.files()).containsExactly("line.yaml");
    }
}
