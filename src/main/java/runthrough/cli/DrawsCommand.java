package runthrough.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.random.DrawTable;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.records.SimulationException;

/** Prints what is random in one replication, for those who want to work it through by other means. */
@Command(
        name = "draws",
        description = {
            "Prints the random numbers of one replication as CSV: for each random source the uniform number and the value that is "
                    + "made of it, in m, kg and s, by what they are for. For checking a replication on paper or with a "
                    + "program of your own; the coil-changes.csv of a report holds the results to expect.",
            "The index is the number of the coil change, of the coil, or of the process downtime. The repeat is 0 at first and "
                    + "counts what is done again at that index: passes of a rejected joint, further restarts.",
            "What is always the same is not printed. A run may need fewer values than are printed."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough draws my-line.yaml > draws.csv",
            "  runthrough draws my-line.yaml --replication 3 --coil-changes 20 --repeats 5"
        })
final class DrawsCommand implements Callable<Integer> {
    /** Beyond the last coil change: coils that people may prepare meanwhile. */
    private static final int COILS_MORE = 10;
    /** Coil changes of a run of given time, whose number is not known before. */
    private static final int CHANGES_OF_A_TIME = 1000;

    private final Environment environment;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file, or - for standard input.")
    private Path scenario;

    @Mixin
    private RunOverrides overrides;

    @Option(
            names = "--replication",
            paramLabel = "N",
            converter = RunOverrides.Replications.class,
            defaultValue = "1",
            description = "Which of the replications; ${DEFAULT-VALUE} by default.")
    private long replication;

    @Option(
            names = "--draws",
            paramLabel = "N",
            converter = RunOverrides.CoilChanges.class,
            description = "The last index of each source; somewhat beyond the coil changes of the run by default.")
    private @Nullable Long draws;

    @Option(
            names = "--repeats",
            paramLabel = "N",
            converter = RunOverrides.Repeats.class,
            defaultValue = "3",
            description = "The last repeat at each index; ${DEFAULT-VALUE} by default.")
    private long repeats;

    DrawsCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        Scenario read = Scenario.read(scenario, overrides, environment);
        read.warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
        SimulationRequest request = read.request();
        RunPlan run = request.run();
        int changes = run.extent() instanceof Extent.Changes extent ? extent.changes() : CHANGES_OF_A_TIME;
        int last = draws == null ? changes + COILS_MORE : Math.toIntExact(draws);
        int index = Math.toIntExact(replication) - 1;
        try {
            RandomNumbers numbers = new RandomNumbers(run.seed(), index);
            new DrawTable(request.line(), numbers, last, Math.toIntExact(repeats)).writeTo(environment.out());
        } catch (SimulationException e) {
            throw new BadInputException(scenario + ": " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        environment.out().flush();
        return ExitCode.DONE;
    }
}
