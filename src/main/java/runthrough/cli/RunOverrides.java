package runthrough.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import runthrough.plant.RunPlan;
import runthrough.quantity.UnitSystem;

/** What a command line may say otherwise than the scenario does. */
final class RunOverrides {

    @Option(
            names = "--coil-changes",
            paramLabel = "N",
            converter = CoilChanges.class,
            description = "Coil changes of each replication, instead of what the scenario says.")
    private @Nullable Long coilChanges;

    @Option(
            names = "--replications",
            paramLabel = "N",
            converter = Replications.class,
            description = "Independent repetitions, instead of what the scenario says.")
    private @Nullable Long replications;

    @Option(
            names = "--seed",
            paramLabel = "N",
            converter = Seed.class,
            description = "Seed of the random numbers, instead of the scenario's. The same seed gives the same bytes.")
    private @Nullable Long seed;

    @Option(
            names = "--results-in",
            paramLabel = "UNITS",
            converter = ResultsIn.class,
            completionCandidates = ResultsIn.class,
            description = "Units of the results: metric or us, instead of what the scenario says.")
    private @Nullable UnitSystem resultsIn;

    /** How to run, given how the scenario wants it. */
    RunPlan plan(RunPlan run) {
        RunPlan.Extent extent =
                coilChanges == null ? run.extent() : new RunPlan.Extent.Changes(Math.toIntExact(coilChanges));
        return new RunPlan(
                extent,
                run.leaveOut(),
                replications == null ? run.replications() : Math.toIntExact(replications),
                seed == null ? run.seed() : seed,
                run.target());
    }

    /** Units of the results, given those that the scenario wants. */
    UnitSystem units(UnitSystem system) {
        return resultsIn == null ? system : resultsIn;
    }

    static final class CoilChanges extends WholeNumber {
        CoilChanges() {
            super(1, 1_000_000);
        }
    }

    static final class Replications extends WholeNumber {
        Replications() {
            super(1, 100_000);
        }
    }

    /** Up to the largest whole number that JSON and every other tool can hold exactly. */
    static final class Seed extends WholeNumber {
        Seed() {
            super(0, (1L << 53) - 1);
        }
    }

    static final class ResultsIn extends Choice<UnitSystem> {
        ResultsIn() {
            or("metric", UnitSystem.METRIC).or("us", UnitSystem.US_CUSTOMARY);
        }
    }
}
