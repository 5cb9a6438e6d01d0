package runthrough.cli.terminal;

import java.io.BufferedOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What the program meets outside.
 *
 * @param out standard output: the answer
 * @param err standard error: warnings, problems, progress
 * @param terminal whether a person sits before it, so that colour and progress are of use
 * @param variables the environment's variables
 * @param folder where relative paths of files start
 */
public record Environment(
        PrintWriter out, PrintWriter err, boolean terminal, Map<String, String> variables, Path folder) {

    /** What it is, where the system says so. */
    private static final Path STANDARD_OUTPUT = Path.of("/proc/self/fd/1");

    public Environment {
        variables = Map.copyOf(variables);
    }

    public static Environment ofThisProcess() {
        return new Environment(
                writer(FileDescriptor.out, "stdout"),
                writer(FileDescriptor.err, "stderr"),
                isTerminal(),
                System.getenv(),
                Path.of(""));
    }

    /**
     * A writer in the encoding of the terminal. It is made anew because {@code System.out} would forget a write that failed, such
     * as on a full disk.
     */
    private static PrintWriter writer(FileDescriptor stream, String name) {
        Charset charset = Stream.of(name + ".encoding", "sun." + name + ".encoding", "native.encoding")
                .map(System::getProperty)
                .filter(Objects::nonNull)
                .findFirst()
                .map(Charset::forName)
                .orElse(StandardCharsets.UTF_8);
        return new PrintWriter(
                new OutputStreamWriter(new BufferedOutputStream(new FileOutputStream(stream)), charset), true);
    }

    /** Whether standard output is a pipe: one that cannot be written to has been closed by who reads it, such as {@code head}. */
    public static boolean isPiped() {
        try {
            return Files.readSymbolicLink(STANDARD_OUTPUT).toString().startsWith("pipe:");
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }

    /** Where {@code given} by the user is. */
    public Path path(Path given) {
        return folder.resolve(given);
    }

    /** Whether to print in colour when the user leaves it to us; see no-color.org for the variable. */
    public boolean suitsColour() {
        boolean isRefused = !variables.getOrDefault("NO_COLOR", "").isEmpty();
        boolean isDumb = "dumb".equals(variables.get("TERM"));
        return terminal && !isRefused && !isDumb;
    }

    /** A console exists where input and output are a terminal; from Java 22 on it always does and has to be asked. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }
}
