package runthrough.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import runthrough.cli.option.QuantityConverter;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.plant.SimulationRequest;
import runthrough.report.sizing.SizingAnswer;
import runthrough.study.sizing.SizingOptions;
import runthrough.study.sizing.SizingStudy;

/** How large must the accumulator be? */
@Command(
        name = "size",
        description = {
            "Finds the smallest accumulator with which the target is met: as capacity, and as stroke, sag or diameter.",
            "Or says that no size is enough, why, and what would change that."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough size scenarios/tube-line.yaml",
            "  runthrough size my-line.yaml --target 99.9%% --precision 0.5%%",
            "  runthrough size my-line.yaml --json --no-report > size.json"
        })
final class SizeCommand extends StudyCommand {

    @Option(
            names = "--precision",
            paramLabel = "SHARE",
            converter = QuantityConverter.Part.class,
            description = "Run until the relative half-width of the capacity's interval is at most this; by default the"
                    + " replications of the scenario are run.")
    private @Nullable Double precision;

    @Option(
            names = "--max-replications",
            paramLabel = "N",
            converter = RunOverrides.Replications.class,
            description =
                    "Run at most this many replications; with --precision by default 10 times what the scenario says.")
    private @Nullable Long maxReplications;

    SizeCommand(Environment environment) {
        super(environment, "size");
    }

    @Override
    Study study(Scenario asked, double target) {
        SimulationRequest request = asked.request();
        int replications = request.run().replications();
        SizingOptions usual = precision == null
                ? SizingOptions.usual(target, replications)
                : SizingOptions.precise(target, precision, replications);
        SizingStudy study = new SizingStudy(
                request,
                new SizingOptions(
                        target,
                        usual.halfWidth(),
                        maxReplications == null ? usual.maxReplications() : Math.toIntExact(maxReplications)));
        return (threads, listener, warnings, provenance) ->
                SizingAnswer.of(study.run(threads, listener), warnings, provenance);
    }
}
