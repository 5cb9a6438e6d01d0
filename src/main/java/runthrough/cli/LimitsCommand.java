package runthrough.cli;

import picocli.CommandLine.Command;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.report.limits.LimitsAnswer;
import runthrough.study.limits.LimitsStudy;

/** How far can the line be driven? */
@Command(
        name = "limits",
        description =
                "Finds, for the line as it is, the fastest process, the longest joint, the slowest entry, the shortest coil and the "
                        + "fewest people and uncoilers with which the target is met, and compares them with the closed forms.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough limits scenarios/tube-line.yaml",
            "  runthrough limits my-line.yaml --target 99%% --replications 200",
            "  runthrough limits my-line.yaml --json --no-report > limits.json"
        })
final class LimitsCommand extends StudyCommand {

    LimitsCommand(Environment environment) {
        super(environment, "limits");
    }

    @Override
    Study study(Scenario asked, double target) {
        LimitsStudy study = new LimitsStudy(asked.request(), target);
        return (threads, listener, warnings, provenance) ->
                LimitsAnswer.of(study.run(threads, listener), warnings, provenance);
    }
}
