package runthrough.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.OptionSpec;

/** One run of the program: a command line in, an exit code out. */
final class Program {
    private static final String DEBUG = "--debug";

    private final Surroundings surroundings;
    private final CommandLine commandLine;

    Program(Surroundings surroundings) {
        this.surroundings = surroundings;
        this.commandLine = new CommandLine(new RunthroughCommand())
                .addSubcommand(new RunCommand(surroundings))
                .addSubcommand(new SizeCommand(surroundings))
                .addSubcommand(new LimitsCommand(surroundings))
                .addSubcommand(new SpeedsCommand(surroundings))
                .addSubcommand(new CompareCommand(surroundings))
                .addSubcommand(new LogCommand(surroundings))
                .addSubcommand(new ServeCommand(surroundings))
                .addSubcommand(new MapCommand(surroundings))
                .addSubcommand(new TimesCommand(surroundings))
                .addSubcommand(new UncertaintyCommand(surroundings))
                .addSubcommand(new SensitivityCommand(surroundings))
                .addSubcommand(new DocumentCommand(surroundings))
                .addSubcommand(new CheckCommand(surroundings))
                .addSubcommand(new KeysCommand(surroundings))
                .addSubcommand(new InputsCommand(surroundings))
                .addSubcommand(new SchemaCommand(surroundings))
                .addSubcommand(new LuckCommand(surroundings))
                .addSubcommand(new CompletionCommand(surroundings))
                .addSubcommand(new ValidationCommand(surroundings))
                .addSubcommand(new SamplesCommand(surroundings));
        addCommonOptions(commandLine);
        commandLine.getSubcommands().values().forEach(Program::addCommonOptions);
        configure();
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
                .setOut(surroundings.out())
                .setErr(surroundings.err())
                .setColorScheme(Help.defaultColorScheme(surroundings.suitsColour() ? Help.Ansi.ON : Help.Ansi.OFF))
                .setUsageHelpAutoWidth(surroundings.terminal())
                // A file name may begin with @.
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(new UsageErrors())
                .setExecutionExceptionHandler((failure, command, parsed) ->
                        failures(parsed.originalArgs()).tell(failure));
    }

    /** Runs the command that {@code args} name and returns the exit code. */
    int run(String... args) {
        try {
            int code = commandLine.execute(args);
            return surroundings.out().checkError() ? outputLost() : code;
        } catch (OutOfMemoryError | StackOverflowError e) {
            return failures(List.of(args)).tell(e);
        }
    }

    private int outputLost() {
        surroundings.err().println("standard output could not be written to the end. Is the disk full?");
        return ExitCode.BAD_INPUT;
    }

    private Failures failures(List<String> args) {
        return new Failures(surroundings.err(), args.contains(DEBUG));
    }
}
