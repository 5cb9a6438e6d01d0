package runthrough.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.OptionSpec;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.ProgramVersion;

/** One run of the program: a command line in, an exit code out. */
final class Program {
    private static final String DEBUG = "--debug";

    private final Environment environment;
    private final CommandLine commandLine;

    Program(Environment environment) {
        this.environment = environment;
        this.commandLine = new CommandLine(new RunthroughCommand())
                .addSubcommand(new RunCommand(environment))
                .addSubcommand(new SizeCommand(environment))
                .addSubcommand(new LimitsCommand(environment))
                .addSubcommand(new SpeedsCommand(environment))
                .addSubcommand(new CompareCommand(environment))
                .addSubcommand(new LogCommand(environment))
                .addSubcommand(new ServeCommand(environment))
                .addSubcommand(new MapCommand(environment))
                .addSubcommand(new TimesCommand(environment))
                .addSubcommand(new UncertaintyCommand(environment))
                .addSubcommand(new SensitivityCommand(environment))
                .addSubcommand(new DocumentCommand(environment))
                .addSubcommand(new CheckCommand(environment))
                .addSubcommand(new KeysCommand(environment))
                .addSubcommand(new InputsCommand(environment))
                .addSubcommand(new SchemaCommand(environment))
                .addSubcommand(new DrawsCommand(environment))
                .addSubcommand(new CompletionCommand(environment))
                .addSubcommand(new ValidationCommand(environment))
                .addSubcommand(new SamplesCommand(environment));
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

    /** Runs the command that {@code args} name and returns the exit code. */
    int run(String... args) {
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
