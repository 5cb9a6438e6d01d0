package runthrough.study.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.check.LineCheck;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.Evaluator;
import runthrough.study.cause.Cause;
import runthrough.study.cause.Reason;
import runthrough.study.cause.Without;
import runthrough.study.lever.LevelDrift;

/**
 * Whether an accumulator, however large, lasts. In one that never runs empty a line is watched over many coil changes. If the
 * entry brings less in the long run than the process uses, the level falls from coil change to coil change and the
 * accumulator is never full again: no capacity is enough, it only takes longer to run empty.
 *
 * <p>Only what comes before such an accumulator runs empty is looked at: then the process waits, and the level falls no further.
 *
 * @param drift of the level
 * @param ranEmpty whether even such an accumulator ran empty
 * @param waitedForPreparation time (s) per coil change that joints waited for their coils
 * @param waitedForPeople the same for people (s)
 */
record LongRunBalance(LevelDrift drift, boolean ranEmpty, double waitedForPreparation, double waitedForPeople) {
    /** Long enough to tell a drift from a run of unfavourable random numbers, see {@link #lasts}. */
    private static final int CHANGES = 1000;

    private static final int REPLICATIONS = 4;

    /** A wait (s) less than this is rounding. */
    private static final double ROUNDING = 1e-6;

    /** What is seen in one replication. */
    private record Seen(
            List<ChangeRecord> later, boolean ranEmpty, double waitedForPreparation, double waitedForPeople) {}

    /** Watches {@code ample}, whose accumulator holds more than is ever drawn. */
    static LongRunBalance of(Line ample, long seed, Evaluator evaluator) {
        int replications = ample.isDeterministic() ? 1 : REPLICATIONS;
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(CHANGES), 0, replications, seed, 1);
        List<Seen> seen =
                evaluator.observe(ample, plan, IntStream.range(0, replications).toArray(), LongRunBalance::look);
        double changes = seen.stream().mapToInt(one -> one.later().size()).sum();
        return new LongRunBalance(
                LevelDrift.of(seen.stream().map(Seen::later).toList()),
                seen.stream().anyMatch(Seen::ranEmpty),
                seen.stream().mapToDouble(Seen::waitedForPreparation).sum() / changes,
                seen.stream().mapToDouble(Seen::waitedForPeople).sum() / changes);
    }

    private static Seen look(Replication replication) {
        List<ChangeRecord> all = replication.changes();
        List<ChangeRecord> changes = beforeEmpty(all);
        List<ChangeRecord> later = LevelDrift.laterHalf(changes);
        return new Seen(
                later,
                changes.size() < all.size(),
                later.stream().mapToDouble(ChangeRecord::waitingForPreparation).sum(),
                later.stream().mapToDouble(ChangeRecord::waitingForPeople).sum());
    }

    /** The coil changes up to the first starved stop, that one with them. */
    private static List<ChangeRecord> beforeEmpty(List<ChangeRecord> changes) {
        int first = IntStream.range(0, changes.size())
                .filter(i -> changes.get(i).starvedStops() > 0)
                .findFirst()
                .orElse(changes.size() - 1);
        return changes.subList(0, first + 1);
    }

    /** Whether {@code line} passes its own check and some capacity is enough for it. */
    static boolean lasts(Line line, long seed, Evaluator evaluator) {
        return LineCheck.accepts(line) && of(line, seed, evaluator).lasts();
    }

    /** Whether some capacity is enough. */
    boolean lasts() {
        return drift.isFullAgain() || (!drift.isFalling() && !ranEmpty);
    }

    /**
     * Why none is, when none is, found by taking out of {@code ample}, which this was seen of, what joints waited for: of one wait that
     * is enough by itself the longer, else both together, else the refill.
     */
    Cause cause(Line ample, long seed, Evaluator evaluator) {
        Comparator<Cause> longer = Comparator.comparingDouble(this::waited);
        return Stream.of(Cause.WAITING_FOR_PREPARATION, Cause.WAITING_FOR_PEOPLE)
                .filter(wait -> waited(wait) > ROUNDING && lastsWithout(wait, ample, seed, evaluator))
                .max(longer)
                .orElseGet(() -> waitedForPreparation > ROUNDING
                                && waitedForPeople > ROUNDING
                                && lastsWithout(Cause.BOTH_WAITS, ample, seed, evaluator)
                        ? Cause.BOTH_WAITS
                        : Cause.ACCUMULATOR_NOT_FULL);
    }

    private double waited(Cause wait) {
        return wait == Cause.WAITING_FOR_PEOPLE ? waitedForPeople : waitedForPreparation;
    }

    private static boolean lastsWithout(Cause cause, Line ample, long seed, Evaluator evaluator) {
        return Without.of(ample, new Reason(cause, Optional.empty()))
                .filter(line -> lasts(line, seed, evaluator))
                .isPresent();
    }
}
