package runthrough.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import runthrough.cli.failure.Failures;
import runthrough.cli.failure.UsageErrors;
import runthrough.cli.option.PathConverter;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.ClosedPipeException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.scenario.source.TextFile;

/** One run of the program: a command line in, an exit code out. */
final class Program {
    private static final String DEBUG = "--debug";

    /** Between two attempts to say that memory is short (ns), and how many there are. */
    private static final long A_MOMENT = 50_000_000;

    private static final int MOST_WAITS = 60;
    /** Bytes of a file of arguments. */
    private static final long MOST_ARGUMENTS = 1_000_000;

    /** In the place of what cannot be decoded. */
    private static final char ILLEGIBLE = '\uFFFD';

    private static final String QUIET = "--quiet";
    private static final Set<String> ASK_FOR_VERSION = Set.of("--version", "-V");

    private final Environment environment;

    Program(Environment environment) {
        this.environment = environment;
    }

    private static void addCommonOptions(CommandLine command) {
        command.getCommandSpec()
                .versionProvider(new ProgramVersion())
                .mixinStandardHelpOptions(true)
                .addOption(OptionSpec.builder(DEBUG)
                        .description("On an internal error, print the stack trace to send with your report.")
                        .build())
                .addOption(OptionSpec.builder(QUIET)
                        .description("Print no warnings and no progress; errors and the answer stay.")
                        .build());
    }

    private void configure(CommandLine commandLine) {
        commandLine
                .setErr(environment.err())
                .setColorScheme(Help.defaultColorScheme(environment.suitsColour() ? Help.Ansi.ON : Help.Ansi.OFF))
                .setUsageHelpAutoWidth(environment.terminal())
                .registerConverter(Path.class, new PathConverter())
                // They are expanded before the command is chosen.
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(new UsageErrors())
                // What names a file is known by now, and has a message of its own.
                .setExecutionStrategy(parsed -> illegible(parsed.originalArgs())
                        .map(failures(parsed.originalArgs())::tell)
                        .orElseGet(() -> new CommandLine.RunLast().execute(parsed)))
                .setExecutionExceptionHandler((failure, command, parsed) ->
                        failures(parsed.originalArgs()).tell(failure));
    }

    /** Adds the commands that {@code args} take. */
    private void addCommands(CommandLine commandLine, List<String> args) {
        Environment heard = args.contains(QUIET) ? environment.quiet() : environment;
        for (Commands.Maker maker : Commands.takenBy(args.isEmpty() ? "" : args.get(0))) {
            CommandLine command = new CommandLine(maker.command().apply(heard));
            addCommonOptions(command);
            commandLine.addSubcommand(command);
        }
    }

    /** Runs the command that {@code args} name and returns the exit code. */
    int run(String... args) {
        try {
            refuseFolderWithoutName();
            return runExpanded(expanded(args));
        } catch (ClosedPipeException | BadInputException e) {
            return failures(List.of(args)).tell(e);
        }
    }

    /** Where the locale cannot write the name of the present folder, files would be looked for, and put, into another. */
    private void refuseFolderWithoutName() {
        if (!Files.isDirectory(environment.path(Path.of("")))) {
            throw new BadInputException(
                    "the present folder is gone, or has a name that the present locale cannot write. Set LC_ALL=C.UTF-8, or go to"
                            + " a folder with a plain name.");
        }
    }

    /** Letters that the locale does not have came as something else, and would be looked for, or written, as that. */
    private static Optional<BadInputException> illegible(List<String> args) {
        CharsetEncoder locale = Charset.forName(System.getProperty("sun.jnu.encoding", StandardCharsets.UTF_8.name()))
                .newEncoder();
        return args.stream()
                .filter(arg -> arg.indexOf(ILLEGIBLE) >= 0 && !locale.canEncode(ILLEGIBLE))
                .findFirst()
                .map(
                        arg -> new BadInputException(
                                arg
                                        + "; has letters that the present locale cannot read. Set LC_ALL=C.UTF-8, or write it in plain letters."));
    }

    /**
     * {@code args} with the words of the file in the place of {@code @file}: separated by white space, in quotes where they hold
     * any; lines that begin with # are left out. {@code @@name} is the word {@code @name}.
     */
    private static String[] expanded(String... args) {
        if (Stream.of(args).noneMatch(arg -> arg.startsWith("@"))) {
            return args;
        }
        Stream.of(args)
                .filter(arg -> arg.startsWith("@") && !arg.startsWith("@@"))
                .forEach(Program::refuseOddFile);
        CommandSpec words = CommandSpec.create()
                .addPositional(PositionalParamSpec.builder()
                        .arity("0..*")
                        .type(String[].class)
                        .build());
        words.parser().unmatchedOptionsArePositionalParams(true);
        try {
            String[] all = new CommandLine(words)
                    .setExpandAtFiles(true)
                    .parseArgs(args)
                    .matchedPositionalValue(0, new String[0]);
            return Stream.of(all).map(TextFile::withoutMark).toArray(String[]::new);
        } catch (CommandLine.PicocliException e) {
            throw new BadInputException("a file of arguments cannot be read. Give a text file, as @FILE.");
        }
    }

    /** One that is not there is a word like any other. */
    private static void refuseOddFile(String word) {
        Path file = Path.of(word.substring(1));
        if (Files.exists(file)) {
            TextFile.hindrance(file, "argument", MOST_ARGUMENTS).ifPresent(hindrance -> {
                throw new BadInputException(word + ": " + hindrance.rule() + ". " + hindrance.remedy());
            });
        }
    }

    private int runExpanded(String... args) {
        if (args.length == 1 && ASK_FOR_VERSION.contains(args[0])) {
            // Asked by scripts, and known without a look at the options.
            environment.out().println(ProgramVersion.text());
            return written(ExitCode.DONE);
        }
        // Made while there is room: once memory is short, not even a list of the words can be had.
        Failures failures = failures(List.of(args));
        if (args.length > 0) {
            WarmUp.begin(args[0]);
        }
        try {
            StringWriter help = new StringWriter();
            int code = commandLine(args).setOut(new PrintWriter(help)).execute(args);
            // Here and not within: a reader who has gone is none of the library's faults.
            environment.out().print(help);
            return written(code);
        } catch (OutOfMemoryError | StackOverflowError e) {
            return shownOnceThereIsRoom(e, failures);
        }
    }

    /** Threads that are being given up may hold all memory for a moment more. */
    private static int shownOnceThereIsRoom(Error failure, Failures failures) {
        for (int wait = 0; wait < MOST_WAITS; wait++) {
            try {
                return failures.tell(failure);
            } catch (OutOfMemoryError again) {
                LockSupport.parkNanos(A_MOMENT);
            }
        }
        return ExitCode.INTERNAL_ERROR;
    }

    private CommandLine commandLine(String... args) {
        CommandLine commandLine = new CommandLine(new RunthroughCommand());
        addCommonOptions(commandLine);
        addCommands(commandLine, List.of(args));
        configure(commandLine);
        return commandLine;
    }

    /** {@code code}, unless what was answered got lost. */
    private int written(int code) {
        return environment.out().checkError() ? outputLost() : code;
    }

    private int outputLost() {
        environment
                .err()
                .println(
                        "standard output could not be written to the end: it is closed, or the disk is full. Files that were"
                                + " asked for, if any, are there.");
        return ExitCode.BAD_INPUT;
    }

    private Failures failures(List<String> args) {
        return new Failures(environment.err(), args.contains(DEBUG));
    }
}
