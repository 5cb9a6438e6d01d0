package runthrough.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import runthrough.cli.option.QuantityConverter;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.plant.SimulationRequest;
import runthrough.report.speeds.SpeedAnswer;
import runthrough.study.speed.SpeedRange;
import runthrough.study.speed.SpeedStudy;

/** What comes out at which process speed? */
@Command(
        name = "speeds",
        description =
                "Runs the line slower and faster than it is, and shows what comes out: where output peaks, and beyond"
                        + " which speed the target is lost.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough speeds scenarios/tube-line.yaml",
            "  runthrough speeds my-line.yaml --from 30m/min --to 80m/min --points 26",
            "  runthrough speeds my-line.yaml --json --no-report > speeds.json"
        })
final class SpeedsCommand extends StudyCommand {

    @Option(
            names = "--from",
            paramLabel = "SPEED",
            converter = QuantityConverter.Speed.class,
            description = "Slowest rated process speed, such as 30m/min; by default 0.6 times what it is.")
    private @Nullable Double from;

    @Option(
            names = "--to",
            paramLabel = "SPEED",
            converter = QuantityConverter.Speed.class,
            description = "Fastest; by default 1.4 times what it is, or as fast as the entry allows.")
    private @Nullable Double to;

    @Option(
            names = "--points",
            paramLabel = "N",
            converter = Points.class,
            description = "How many speeds, evenly spaced; 15 by default.")
    private @Nullable Long points;

    SpeedsCommand(Environment environment) {
        super(environment, "speeds");
    }

    @Override
    Study study(Scenario asked, double target) {
        SimulationRequest request = asked.request();
        SpeedRange usual = SpeedRange.usual(request.line());
        SpeedRange range = new SpeedRange(
                from == null ? usual.from() : from,
                to == null ? usual.to() : to,
                points == null ? usual.points() : Math.toIntExact(points));
        SpeedStudy study = new SpeedStudy(request, target, range);
        return (threads, listener, warnings, provenance) ->
                SpeedAnswer.of(study.run(threads, listener), warnings, provenance);
    }

    static final class Points extends WholeNumber {
        Points() {
            super(SpeedRange.FEWEST, SpeedRange.MOST);
        }
    }
}
