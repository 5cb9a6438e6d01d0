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
import runthrough.simulation.records.SimulationException;

/** Prints what is random in one replication, for those who want to work it through by other means. */
@Command(
        name = "draws",
        description = {
            "Prints the random numbers of one replication as CSV: for each random source the values in the order in which a run "
                    + "draws them, in m and s. For checking a replication on paper or with a program of your own; the "
                    + "coil-changes.csv of a report holds the results to expect.",
            "A run may need fewer values than are printed."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough draws my-line.yaml > draws.csv",
            "  runthrough draws my-line.yaml --replication 3 --coil-changes 20 --draws 500"
        })
final class DrawsCommand implements Callable<Integer> {
    /** Values for each coil that a run with rejects and process downtime will hardly use up. */
    private static final int DRAWS_A_COIL = 4;

    private static final int DRAWS_MORE = 100;
    /** Coils beyond the last coil change that people may prepare meanwhile, for the longest run. */
    private static final int COILS_MORE = 10;
    /** Coil changes of a run of given time, whose number is not known before. */
    private static final int CHANGES_OF_A_TIME = 1000;

    private final Environment environment;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file.")
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
            description = "How many values of each source; enough for most lines by default.")
    private @Nullable Long draws;

    DrawsCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        Scenario read = Scenario.read(environment.path(scenario), overrides, environment);
        read.warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
        SimulationRequest request = read.request();
        RunPlan run = request.run();
        int coils = (run.extent() instanceof Extent.Changes extent ? extent.changes() : CHANGES_OF_A_TIME) + COILS_MORE;
        int values = draws == null ? DRAWS_A_COIL * coils + DRAWS_MORE : Math.toIntExact(draws);
        int index = Math.toIntExact(replication) - 1;
        try {
            new DrawTable(request.line(), run.seed(), index, coils, values).writeTo(environment.out());
        } catch (SimulationException e) {
            throw new BadInputException(scenario + ": " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        environment.out().flush();
        return ExitCode.DONE;
    }
}
