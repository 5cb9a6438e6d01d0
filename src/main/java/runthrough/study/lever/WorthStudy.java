package runthrough.study.lever;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.study.Evaluator;
import runthrough.study.StudyListener;
import runthrough.study.StudyResult;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.cause.Without;

/**
 * What it would be worth to remove each cause of a verdict: its replications are run again for each, all of them unless that took
 * much longer than the verdict did.
 *
 * <p>Rules WORTH-3, WORTH-4.
 */
public final class WorthStudy {
    /** So many causes at most. */
    public static final int MOST = 5;
    /** So many coil changes take no time worth saving. */
    private static final long FEW = 100_000;
    /** So many replications at least, for an interval. */
    private static final int LEAST = 10;

    private final StudyResult result;

    /** A study of the causes that {@code result} has found. */
    public WorthStudy(StudyResult result) {
        this.result = result;
    }

    /**
     * Runs it; none where no coil change failed, or nothing could be removed.
     *
     * @param threads how many replications run at once, {@code >= 1}; does not change the answer
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public List<CauseWorth> run(int threads, StudyListener listener) {
        Line line = result.request().line();
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        List<Reason> reasons = reasons();
        int replications = replications(reasons.size());
        Savings savings = new Savings(result, replications);
        RunPlan plan = result.request().run().withReplications(replications);
        List<CauseWorth> worths = new ArrayList<>();
        for (Reason reason : reasons) {
            Optional<Line> without = Without.of(line, reason);
            without.flatMap(one -> evaluator.attempt(one, plan))
                    .ifPresent(evaluation -> worths.add(savings.by(reason, evaluation)));
        }
        return worths;
    }

    /** How many are run again for each of so many causes: together as many coil changes as the verdict has, or few. */
    private int replications(int causes) {
        int all = result.totals().size();
        long changes = Math.max(1, result.verdict().changes().total());
        double share = (double) Math.max(FEW, changes) / (changes * Math.max(1, causes));
        return (int) Math.max(Math.min(all, LEAST), Math.min(all, Math.floor(share * all)));
    }

    /** What is removed, that of most coil changes first. Several causes may go with it. */
    private List<Reason> reasons() {
        Map<Reason, Long> changes = new LinkedHashMap<>();
        for (NamedCauses.Count count : result.verdict().namedCauses()) {
            changes.merge(count.reason().removed(), count.changes(), Long::sum);
        }
        return changes.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .limit(MOST)
                .map(Map.Entry::getKey)
                .toList();
    }
}
