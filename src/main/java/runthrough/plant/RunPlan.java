package runthrough.plant;

import java.util.OptionalDouble;

/**
 * How long and how often to run, and what is asked of the answer.
 *
 * @param extent what ends a replication
 * @param leaveOut the first coil changes left out of the totals, {@code >= 0}; fewer than are run, or the plan is refused when a
 *     line is to be run under it
 * @param replications independent repetitions, {@code >= 1}
 * @param seed of the random numbers; any number, also a negative one: its 64 bits are their key
 * @param target share of coil changes that should run through at rated speed, in (0, 1]
 * @param yearlyTime running time that is scheduled in a year (s), in (0, {@link #LONGEST_YEAR}]; only yearly results
 *     depend on it
 * @param targetWithoutStop share of coil changes that should go without a stop, run through or slowed, in (0, 1]; empty where
 *     that is not asked
 */
public record RunPlan(
        Extent extent,
        int leaveOut,
        int replications,
        long seed,
        double target,
        double yearlyTime,
        OptionalDouble targetWithoutStop) {
    /** What a year is taken for where nothing is said: two shifts of 8 h on 250 days, 4000 h (s). */
    public static final double USUAL_YEAR = 4000 * 3600.0;

    /** All hours of a leap year (s). */
    public static final double LONGEST_YEAR = 366 * 24 * 3600.0;

    /** A plan with the usual year. */
    public RunPlan(Extent extent, int leaveOut, int replications, long seed, double target) {
        this(extent, leaveOut, replications, seed, target, USUAL_YEAR);
    }

    /** A plan with one target. */
    public RunPlan(Extent extent, int leaveOut, int replications, long seed, double target, double yearlyTime) {
        this(extent, leaveOut, replications, seed, target, yearlyTime, OptionalDouble.empty());
    }

    public RunPlan {
        Ranges.of("")
                .atLeastOne("replications", replications)
                .count("leave-out", leaveOut)
                .positiveShare("target", target)
                .positiveShare("target without a stop", targetWithoutStop.orElse(1))
                .upTo(LONGEST_YEAR, "time per year", yearlyTime, Ranges.Of.TIME)
                .refuse();
    }

    /** The same with another number of replications, {@code >= 1}; those that both plans have are the same. */
    public RunPlan withReplications(int number) {
        return new RunPlan(extent, leaveOut, number, seed, target, yearlyTime, targetWithoutStop);
    }

    /** The same with another end of a replication. */
    public RunPlan withExtent(Extent other) {
        return new RunPlan(other, leaveOut, replications, seed, target, yearlyTime, targetWithoutStop);
    }

    /** The same with a second target, see {@link #targetWithoutStop}. */
    public RunPlan withTargetWithoutStop(OptionalDouble share) {
        return new RunPlan(extent, leaveOut, replications, seed, target, yearlyTime, share);
    }

    /** What ends a replication. */
    public sealed interface Extent {

        /**
         * At the start of coil change {@code changes + 1}, so that the last record is complete; {@code >= 1}.
         *
         * <p>Rule TIME-2.
         */
        record Changes(int changes) implements Extent {
            public Changes {
                Ranges.of("").atLeastOne("coil changes", changes).refuse();
            }
        }

        /** At a given time (s), {@code > 0}; a coil change under way is cut. Rule TIME-4. */
        record Time(double duration) implements Extent {
            public Time {
                Ranges.of("")
                        .finitePositive("run time", duration, Ranges.Of.TIME)
                        .refuse();
            }
        }
    }
}
