package runthrough.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The bare command: alone it prints the help; the work is done by its subcommands. */
@Command(
        name = "runthrough",
        description = "Says whether a strip line can run through its coil changes without a stop.",
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class)
final class RunthroughCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
