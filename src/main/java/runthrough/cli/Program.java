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

    /** Adds the commands that {@code args} take. */
    private void addCommands(CommandLine commandLine, List<String> args) {
        for (Commands.Maker maker : Commands.takenBy(args.isEmpty() ? "" : args.get(0))) {
            CommandLine command = new CommandLine(maker.command().apply(environment));
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
        if (Environment.isPiped()) {
            return ExitCode.NOBODY_READS;
        }
        environment
                .err()
                .println(
                        "standard output could not be written to the end: it is closed, or the disk is full. Files that were"
                                + " asked for are there.");
        return ExitCode.BAD_INPUT;
    }

    private Failures failures(List<String> args) {
        return new Failures(environment.err(), args.contains(DEBUG));
    }
}
