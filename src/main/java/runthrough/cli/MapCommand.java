package runthrough.cli;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Problems;
import runthrough.study.map.MapPlan;
import runthrough.study.map.MapStudy;
import runthrough.study.map.MapVariants;
import runthrough.study.map.MapVariants.Variant;

/** Where, over two numbers of the line, does it run through? */
@Command(
        name = "map",
        description =
                "Runs the line with many pairs of values of two inputs, and draws where the target is met: by default joint cycle time "
                        + "against process speed. When interrupted, the same command continues where it stopped.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough map scenarios/tube-line.yaml",
            "  runthrough map my-line.yaml --x joint-cycle-time=30s..150s \\",
            "      --y usable-capacity=40m..120m",
            "  runthrough map my-line.yaml --x entry.top-speed=60m/min..120m/min \\",
            "      --points 10000"
        })
final class MapCommand extends StudyCommand {
    /** Where both numbers are set, at once. */
    private static final String MAP = "map";

    /** A map is a little wider than it is high. */
    private static final double ASPECT = 1.25;

    private static final long USUAL_POINTS = 2000;
    private static final int STRIDE = 8;

    private final Environment environment;

    @Option(
            names = "--x",
            paramLabel = "PATH=FROM..TO",
            description = {
                "What changes from left to right, such as joint-cycle-time=30s..150s; a path alone takes a usual range.",
                "The command inputs lists the numbers of a scenario by their paths."
            })
    private @Nullable String x;

    @Option(names = "--y", paramLabel = "PATH=FROM..TO", description = "What changes from bottom to top.")
    private @Nullable String y;

    @Option(
            names = "--points",
            paramLabel = "N",
            converter = Points.class,
            description = "How many points in all; 2000 by default. They are run where the answer changes.")
    private long points = USUAL_POINTS;

    @Option(names = "--every-point", description = "Run every point in full, also where the answer does not change.")
    private boolean everyPoint;

    MapCommand(Environment environment) {
        super(environment, "map");
        this.environment = environment;
    }

    @Override
    Study study(Scenario asked, double target) {
        Problems problems = new Problems();
        List<Optional<AxisOption.Side>> sides =
                AxisOption.of(
                                Optional.ofNullable(x),
                                Optional.ofNullable(y),
                                asked.request().line())
                        .stream()
                        .map(option -> option.side(asked, problems))
                        .toList();
        BadInputException.throwIfAny(problems);
        AxisOption.Side across = sides.get(0).orElseThrow();
        AxisOption.Side up = sides.get(1).orElseThrow();
        if (across.input().path().equals(up.input().path())) {
            throw new BadInputException("--y " + up.input().path()
                    + "; is on the other side of the map already. Name two different numbers.");
        }
        int columns = Math.toIntExact(Math.min(500, Math.max(2, Math.round(Math.sqrt(points * ASPECT)))));
        MapPlan plan = new MapPlan(
                across.axis(columns),
                up.axis(Math.toIntExact(Math.max(2, points / columns))),
                across.input().present(),
                up.input().present(),
                everyPoint ? 1 : STRIDE);
        MapStudy study = new MapStudy(asked.request(), target, plan, variants(asked, across, up));
        return new MapJob(environment, study, asked, target, plan);
    }

    /** The scenario with two numbers more set in it. */
    private static MapVariants variants(Scenario asked, AxisOption.Side across, AxisOption.Side up) {
        return (x, y) -> {
            List<Setting> both =
                    List.of(across.input().setTo(x, MAP), up.input().setTo(y, MAP));
            ScenarioReading reading = asked.file().with(asked.file().replacing(both, asked.settings()));
            return reading instanceof ScenarioReading.Accepted accepted
                    ? new Variant.Possible(accepted.request().line())
                    : new Variant.Refused(why((ScenarioReading.Refused) reading));
        };
    }

    private static String why(ScenarioReading.Refused refused) {
        return refused.problems().get(0).reason();
    }

    static final class Points extends WholeNumber {
        Points() {
            super(4, 250_000);
        }
    }
}
