package runthrough.study.lever;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.study.Goal;
import runthrough.study.statistics.Estimate;

/**
 * A way to meet a target: one lever or two, set to values with which it is met.
 *
 * @param goal that is reached
 * @param changes one, or two that are made together
 * @param evenly the part by which two levers are changed alike; empty of others
 * @param share of coil changes that do with it what the goal asks
 * @param isShown whether the target is shown to be met with it, rather than seen in a run too short to show it
 * @param alone the answer of the lever; empty of two
 * @param output good output with it, and now; of what slows the process
 * @param cost of it in a year; empty where it is not known of every change
 */
public record Way(
        Goal goal,
        List<LeverChange> changes,
        OptionalDouble evenly,
        Estimate share,
        boolean isShown,
        Optional<LeverAnswer> alone,
        Optional<LeverAnswer.Cost> output,
        Optional<YearlyCost> cost) {

    public Way {
        changes = List.copyOf(changes);
    }

    /** What it is ranked by. */
    public Rank rank() {
        return Rank.of(changes, cost);
    }

    /** Whether two levers are changed together. */
    public boolean isPair() {
        return changes.size() > 1;
    }
}
