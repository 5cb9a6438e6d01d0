package runthrough.cli;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
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

    /** In the order in which the help lists them; each is made when it is asked for, with all that it brings along. */
    private static final List<Offer> COMMANDS = List.of(
            new Offer("run", RunCommand::new),
            new Offer("size", SizeCommand::new),
            new Offer("limits", LimitsCommand::new),
            new Offer("speeds", SpeedsCommand::new),
            new Offer("compare", CompareCommand::new),
            new Offer("log", LogCommand::new),
            new Offer("serve", ServeCommand::new),
            new Offer("map", MapCommand::new),
            new Offer("times", TimesCommand::new),
            new Offer("uncertainty", UncertaintyCommand::new),
            new Offer("sensitivity", SensitivityCommand::new),
            new Offer("document", DocumentCommand::new),
            new Offer("check", CheckCommand::new),
            new Offer("keys", KeysCommand::new),
            new Offer("inputs", InputsCommand::new),
            new Offer("schema", SchemaCommand::new),
            new Offer("draws", DrawsCommand::new),
            new Offer("completion", CompletionCommand::new),
            new Offer("validation", ValidationCommand::new),
            new Offer("samples", SamplesCommand::new));

    private record Offer(String name, Function<Environment, Object> maker) {}

    private final Environment environment;
    private final CommandLine commandLine;

    Program(Environment environment) {
        this.environment = environment;
        this.commandLine = new CommandLine(new RunthroughCommand());
        addCommonOptions(commandLine);
    }

    private static void addCommonOptions(CommandLine command) {
        command.getCommandSpec()
                .versionProvider(new ProgramVersion())
                .mixinStandardHelpOptions(true)
                .addOption(OptionSpec.builder(DEBUG)
                        .description("On an internal error, print the stack trace to send with your report.")
                        .build());
    }

    private void configure() {
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
    private void addCommands(List<String> args) {
        String first = args.isEmpty() ? "" : args.get(0);
        boolean one = !first.equals("completion") && COMMANDS.stream().anyMatch(offer -> offer.name.equals(first));
        COMMANDS.stream().filter(offer -> !one || offer.name.equals(first)).forEach(offer -> {
            CommandLine command = new CommandLine(offer.maker.apply(environment));
            addCommonOptions(command);
            commandLine.addSubcommand(command);
        });
    }

    /** Runs the command that {@code args} name and returns the exit code. */
    int run(String... args) {
        if (!(args.length == 1 && ASK_FOR_VERSION.contains(args[0]))) {
            addCommands(List.of(args));
        }
        configure();
        try {
            int code = commandLine.execute(args);
            return environment.out().checkError() ? outputLost() : code;
        } catch (OutOfMemoryError | StackOverflowError e) {
            return failures(List.of(args)).tell(e);
        }
    }

    private int outputLost() {
        environment.err().println("standard output could not be written to the end. Is the disk full?");
        return ExitCode.BAD_INPUT;
    }

    private Failures failures(List<String> args) {
        return new Failures(environment.err(), args.contains(DEBUG));
    }
}
