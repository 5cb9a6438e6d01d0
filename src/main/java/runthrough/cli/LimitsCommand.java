package runthrough.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.plant.SimulationRequest;
import runthrough.report.limits.LimitsAnswer;
import runthrough.study.Goal;
import runthrough.study.StudyListener;
import runthrough.study.lever.LeverStudy;
import runthrough.study.lever.Levers;
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
        return (threads, listener, warnings, provenance) -> LimitsAnswer.of(
                study.run(threads, listener), withoutStop(asked.request(), threads, listener), warnings, provenance);
    }

    /** What would meet the target without a stop, where the line has one: the answers of the levers, as everywhere. */
    private static Optional<Levers> withoutStop(SimulationRequest request, int threads, StudyListener listener) {
        return request.run().targetWithoutStop().stream()
                .mapToObj(target -> new LeverStudy(request, List.of(Goal.withoutStop(target))).run(threads, listener))
                .findFirst();
    }
}
