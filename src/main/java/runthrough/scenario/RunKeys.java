package runthrough.scenario;

import java.util.OptionalDouble;
import runthrough.plant.RunPlan;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Count;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.grammar.Ways.Way;

/** What may be said of the run. */
final class RunKeys {

    private static final int DEFAULT_CHANGES = 200;
    /** The largest whole number that JSON and every other tool can hold exactly. */
    private static final long LARGEST_SEED = 9_007_199_254_740_991L;

    static final Key<Integer> COIL_CHANGES = Key.optional(
                    "coil-changes",
                    "how many coil changes a replication runs",
                    new Count(1, 1_000_000).map(Math::toIntExact),
                    "200")
            .withDefaultWords(DEFAULT_CHANGES + " when no time is given");
    static final Key<Double> TIME =
            Key.optional("time", "how long a replication runs", Amount.positive(Dimension.TIME), "8 h");
    static final Key<Integer> LEAVE_OUT = Key.optional(
                    "leave-out",
                    "how many coil changes at the beginning are left out of the totals",
                    new Count(0, 1_000_000).map(Math::toIntExact),
                    "1")
            .orElse("0");
    static final Key<Integer> REPLICATIONS = Key.optional(
                    "replications",
                    "how often the run is repeated with other random numbers",
                    new Count(1, 100_000).map(Math::toIntExact),
                    "50")
            .orElse("20");
    static final Key<Long> SEED = Key.optional(
                    "seed",
                    "the number that the random numbers depend on; the same seed gives the same results",
                    new Count(0, LARGEST_SEED),
                    "7")
            .orElse("1");
    static final Key<Double> TARGET = Key.optional(
                    "target",
                    "the share of coil changes that should run through at rated speed",
                    new Amount(Dimension.SHARE, Range.POSITIVE_SHARE),
                    "99.5 %")
            .orElse("99 %");
    static final Key<Double> TARGET_WITHOUT_STOP = Key.optional(
            "target-without-stop",
            "the share of coil changes in which the process should not stop, though it may slow down",
            new Amount(Dimension.SHARE, Range.POSITIVE_SHARE),
            "99.9 %");
    static final Key<Double> HOURS_PER_YEAR = Key.optional(
                    "hours-per-year",
                    "the running time that is scheduled in a year; results per year are for this time",
                    new Amount(Dimension.TIME, new Range(0, false, RunPlan.LONGEST_YEAR, true)),
                    "6000 h")
            .orElse("4000 h, two shifts of 8 h on 250 days", RunPlan.USUAL_YEAR);

    static final Section RUN = Section.of(
                    "run",
                    "how long and how often to run, and what is asked of the answer",
                    COIL_CHANGES,
                    TIME,
                    LEAVE_OUT,
                    REPLICATIONS,
                    SEED,
                    TARGET,
                    TARGET_WITHOUT_STOP,
                    HOURS_PER_YEAR)
            .with(Ways.atMostOneOf("the length of a run", Way.of(COIL_CHANGES.name()), Way.of(TIME.name())));

    private RunKeys() {}

    /** The run of a scenario that says nothing about it. */
    static RunPlan defaultRun() {
        return run(Values.none());
    }

    /** The run that {@code values} describe. */
    static RunPlan run(Values values) {
        RunPlan.Extent extent = values.has(TIME)
                ? new RunPlan.Extent.Time(values.get(TIME))
                : new RunPlan.Extent.Changes(values.find(COIL_CHANGES).orElse(DEFAULT_CHANGES));
        return new RunPlan(
                extent,
                values.get(LEAVE_OUT),
                values.get(REPLICATIONS),
                values.get(SEED),
                values.get(TARGET),
                values.get(HOURS_PER_YEAR),
                values.find(TARGET_WITHOUT_STOP).map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }
}
