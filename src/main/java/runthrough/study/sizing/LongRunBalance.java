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
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Interval;

/**
 * Whether an accumulator, however large, lasts. In one that never runs empty a line is watched over many coil changes. If the
 * entry brings less in the long run than the process uses, the level falls from coil change to coil change and the
 * accumulator is never full again: no capacity is enough, it only takes longer to run empty.
 *
 * <p>Only what comes before such an accumulator runs empty is looked at: then the process waits, and the level falls no further.
 *
 * @param growth how much lower the level is at the start of a coil change than at that before (m), over the later half
 * @param refilled share of coil changes of the later half after which the accumulator was full again
 * @param ranEmpty whether even such an accumulator ran empty
 * @param waitedForPreparation time (s) per coil change that joints waited for their coils
 * @param waitedForPeople the same for people (s)
 */
record LongRunBalance(
        Estimate growth, double refilled, boolean ranEmpty, double waitedForPreparation, double waitedForPeople) {
    /** Long enough to tell a drift from a run of unfavourable random numbers, see {@link #lasts}. */
    private static final int CHANGES = 1000;

    private static final int REPLICATIONS = 4;

    /** When the accumulator is full again more often than this, a falling level is chance. */
    private static final double SELDOM = 0.01;

    /** A drift (m), or a wait (s), less than this is rounding. */
    private static final double ROUNDING = 1e-6;

    /** What is seen in one replication. */
    private record Seen(
            double growth,
            int refilled,
            int changes,
            boolean ranEmpty,
            double waitedForPreparation,
            double waitedForPeople) {}

    /** Watches {@code ample}, whose accumulator holds more than is ever drawn. */
    static LongRunBalance of(Line ample, long seed, Evaluator evaluator) {
        int replications = ample.isDeterministic() ? 1 : REPLICATIONS;
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(CHANGES), 0, replications, seed, 1);
        List<Seen> seen =
                evaluator.observe(ample, plan, IntStream.range(0, replications).toArray(), LongRunBalance::look);
        double changes = seen.stream().mapToInt(Seen::changes).sum();
        return new LongRunBalance(
                Estimators.mean(seen.stream().mapToDouble(Seen::growth).toArray()),
                seen.stream().mapToInt(Seen::refilled).sum() / changes,
                seen.stream().anyMatch(Seen::ranEmpty),
                seen.stream().mapToDouble(Seen::waitedForPreparation).sum() / changes,
                seen.stream().mapToDouble(Seen::waitedForPeople).sum() / changes);
    }

    private static Seen look(Replication replication) {
        List<ChangeRecord> all = replication.changes();
        List<ChangeRecord> changes = beforeEmpty(all);
        List<ChangeRecord> later = changes.subList(changes.size() / 2, changes.size());
        double fallen =
                later.get(0).levelAtStart() - later.get(later.size() - 1).levelAtStart();
        int refilled = (int) later.stream()
                .filter(change -> !Double.isNaN(change.refillTime()))
                .count();
        return new Seen(
                fallen / Math.max(1, later.size() - 1),
                refilled,
                later.size(),
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
        double least = growth.interval().map(Interval::low).orElse(growth.mean());
        return refilled >= SELDOM || (least <= ROUNDING && !ranEmpty);
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
