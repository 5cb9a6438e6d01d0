package runthrough.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import runthrough.cli.terminal.ExitCode;

/** The bare command: alone it prints the help; the work is done by its subcommands. */
@Command(
        name = "runthrough",
        description = "Says whether a strip line can run through its coil changes without a stop.",
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            ExitCode.DONE_MEANS,
            ExitCode.INTERNAL_ERROR_MEANS,
            ExitCode.BAD_INPUT_MEANS,
            ExitCode.TARGET_NOT_MET_MEANS,
            ExitCode.CHECK_FAILED_MEANS,
            ExitCode.CASE_FAILED_MEANS,
            ExitCode.GIVEN_UP_MEANS,
            ExitCode.PIPE_CLOSED_MEANS
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough run scenarios/tube-line.yaml   simulate, print the verdict, report",
            "  runthrough check scenarios/*.yaml         read and check only",
            "  runthrough run --help                     what run understands"
        })
final class RunthroughCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
