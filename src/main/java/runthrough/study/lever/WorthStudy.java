package runthrough.study.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.simulation.records.Totals;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.StudyListener;
import runthrough.study.StudyResult;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.cause.Without;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;

/**
 * What it would be worth to remove each cause of a verdict. It costs about as much again as the verdict, however many causes
 * there are.
 *
 * <p>Rules WORTH-1, WORTH-2, WORTH-3, WORTH-4.
 */
public final class WorthStudy {
    /** So many causes at most. */
    public static final int MOST = 5;

    /** Fewer replications do not show how much they differ. */
    private static final int LEAST_REPLICATIONS = 2;

    private final StudyResult result;

    /** A study of the causes that {@code result} has found. */
    public WorthStudy(StudyResult result) {
        this.result = result;
    }

    /** A cause, and the line without it. */
    private record Removed(Reason reason, Line line) {}

    /**
     * Runs it; none where no coil change failed, or nothing could be removed.
     *
     * @param threads how many replications run at once, {@code >= 1}; does not change the answer
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public List<CauseWorth> run(int threads, StudyListener listener) {
        List<Removed> removed = result.verdict().namedCauses().stream()
                .limit(MOST)
                .map(NamedCauses.Count::reason)
                .flatMap(reason ->
                        Without.of(result.request().line(), reason).stream().map(line -> new Removed(reason, line)))
                .toList();
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        List<CauseWorth> worths = new ArrayList<>();
        for (Removed one : removed) {
            evaluator.attempt(one.line(), plan(removed.size())).ifPresent(without -> worths.add(worth(one, without)));
        }
        return worths;
    }

    private RunPlan plan(int causes) {
        int all = result.totals().size();
        int each = Math.min(all, Math.max(LEAST_REPLICATIONS, all / causes));
        return result.request().run().withReplications(each);
    }

    private CauseWorth worth(Removed removed, Evaluation without) {
        double year = result.request().run().yearlyTime();
        return new CauseWorth(
                removed.reason(),
                pairs(without),
                less(without, totals -> totals.starvedStops() / totals.duration() * year),
                more(without, Totals::shareRunThrough),
                less(without, totals -> totals.lostTime() / totals.duration() * year),
                more(without, totals -> totals.goodSpeed() * year));
    }

    /** How many replications with the cause there are to hold it against; where nothing is random without it, all. */
    private int pairs(Evaluation without) {
        return without.chance()
                ? without.replications().size()
                : result.totals().size();
    }

    private Estimate more(Evaluation without, ToDoubleFunction<Totals> value) {
        return difference(without, value, 1);
    }

    private Estimate less(Evaluation without, ToDoubleFunction<Totals> value) {
        return difference(without, value, -1);
    }

    /** Without the cause less with it, times {@code sign}. Where the variant is not random, its one replication stands for all. */
    private Estimate difference(Evaluation without, ToDoubleFunction<Totals> value, int sign) {
        double[] one = without.each(value);
        return Estimators.mean(IntStream.range(0, pairs(without))
                .mapToDouble(i -> sign
                        * (one[Math.min(i, one.length - 1)]
                                - value.applyAsDouble(result.totals().get(i))))
                .filter(Double::isFinite)
                .toArray());
    }
}
