package runthrough.cli.terminal;

import java.io.BufferedOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What the program meets outside.
 *
 * @param in standard input
 * @param out standard output: the answer
 * @param err standard error: warnings, problems, progress
 * @param terminal whether a person sits before it, so that colour and progress are of use
 * @param variables the environment's variables
 * @param folder where relative paths of files start
 */
public record Environment(
        InputStream in,
        PrintWriter out,
        PrintWriter err,
        boolean terminal,
        Map<String, String> variables,
        Path folder) {

    public Environment {
        variables = Map.copyOf(variables);
    }

    /** One with nothing to read from standard input. */
    public Environment(PrintWriter out, PrintWriter err, boolean terminal, Map<String, String> variables, Path folder) {
        this(InputStream.nullInputStream(), out, err, terminal, variables, folder);
    }

    public static Environment ofThisProcess() {
        boolean terminal = isTerminal();
        return new Environment(
                System.in,
                writer(FileDescriptor.out, terminal ? ofTerminal("stdout") : StandardCharsets.UTF_8),
                writer(FileDescriptor.err, ofTerminal("stderr")),
                terminal,
                System.getenv(),
                Path.of(""));
    }

    /** The encoding of the terminal; what is no terminal reads UTF-8. */
    private static Charset ofTerminal(String name) {
        return Stream.of(name + ".encoding", "sun." + name + ".encoding", "native.encoding")
                .map(System::getProperty)
                .filter(Objects::nonNull)
                .findFirst()
                .map(Charset::forName)
                .orElse(StandardCharsets.UTF_8);
    }

    /** Made anew because {@code System.out} would forget a write that failed, such as on a full disk. */
    private static PrintWriter writer(FileDescriptor stream, Charset charset) {
        return new PrintWriter(
                new OutputStreamWriter(
                        new BufferedOutputStream(new PipedStream(new FileOutputStream(stream))), charset),
                true);
    }

    /** The same without warnings and progress. */
    public Environment quiet() {
        return new Environment(in, out, new PrintWriter(Writer.nullWriter()), false, variables, folder);
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
