package runthrough.cli;

import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.OptionSpec;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.ProgramVersion;

/** One run of the program: a command line in, an exit code out. */
final class Program {
    private static final String DEBUG = "--debug";
    private static final Set<String> ASK_FOR_VERSION = Set.of("--version", "-V");

    /** In the order in which the help lists them. */
    private static final List<String> COMMANDS = List.of(
            "run",
            "size",
            "limits",
            "speeds",
            "compare",
            "log",
            "serve",
            "map",
            "times",
            "uncertainty",
            "sensitivity",
            "document",
            "check",
            "keys",
            "inputs",
            "schema",
            "draws",
            "completion",
            "validation",
            "samples");

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
                        .build());
    }

    /** The command {@code name}, made when it is asked for, with all that it brings along. */
    private static Object command(String name, Environment environment) {
        return switch (name) {
            case "run" -> new RunCommand(environment);
            case "size" -> new SizeCommand(environment);
            case "limits" -> new LimitsCommand(environment);
            case "speeds" -> new SpeedsCommand(environment);
            case "compare" -> new CompareCommand(environment);
            case "log" -> new LogCommand(environment);
            case "serve" -> new ServeCommand(environment);
            case "map" -> new MapCommand(environment);
            case "times" -> new TimesCommand(environment);
            case "uncertainty" -> new UncertaintyCommand(environment);
            case "sensitivity" -> new SensitivityCommand(environment);
            case "document" -> new DocumentCommand(environment);
            case "check" -> new CheckCommand(environment);
            case "keys" -> new KeysCommand(environment);
            case "inputs" -> new InputsCommand(environment);
            case "schema" -> new SchemaCommand(environment);
            case "draws" -> new DrawsCommand(environment);
            case "completion" -> new CompletionCommand(environment);
            case "validation" -> new ValidationCommand(environment);
            case "samples" -> new SamplesCommand(environment);
            default -> throw new IllegalArgumentException(name);
        };
    }

    private void configure(CommandLine commandLine) {
        commandLine
                .setOut(environment.out())
                .setErr(environment.err())
                .setColorScheme(Help.defaultColorScheme(environment.suitsColour() ? Help.Ansi.ON : Help.Ansi.OFF))
                .setUsageHelpAutoWidth(environment.terminal())
                // A file name may begin with @.
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(new UsageErrors())
                .setExecutionExceptionHandler((failure, command, parsed) ->
                        failures(parsed.originalArgs()).tell(failure));
    }

    /**
     * Adds the command that is asked for alone: the others would take half a second to be made. All where it takes all, as for the
     * help, the completion, and to say what somebody may have meant.
     */
    private void addCommands(CommandLine commandLine, List<String> args) {
        String first = args.isEmpty() ? "" : args.get(0);
        boolean one = !first.equals("completion") && COMMANDS.contains(first);
        for (String name : one ? List.of(first) : COMMANDS) {
            CommandLine command = new CommandLine(command(name, environment));
            addCommonOptions(command);
            commandLine.addSubcommand(command);
        }
    }

    /** Runs the command that {@code args} name and returns the exit code. */
    int run(String... args) {
        if (args.length == 1 && ASK_FOR_VERSION.contains(args[0])) {
            // Asked by scripts, and known without a look at the options.
            environment.out().println(ProgramVersion.text());
            return written(ExitCode.DONE);
        }
        try {
            return written(commandLine(args).execute(args));
        } catch (OutOfMemoryError | StackOverflowError e) {
            return failures(List.of(args)).tell(e);
        }
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
        environment.err().println("standard output could not be written to the end. Is the disk full?");
        return ExitCode.BAD_INPUT;
    }

    private Failures failures(List<String> args) {
        return new Failures(environment.err(), args.contains(DEBUG));
    }
}
