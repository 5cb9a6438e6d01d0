package runthrough.study.limits;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.ProgressCounter;
import runthrough.study.Share;
import runthrough.study.StudyListener;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.LineLevers;
import runthrough.study.lever.Varied;

/**
 * Drives each number of a line to the limit at which its target is lost, and holds that against the closed forms. A line in
 * which nothing is random is driven in the long run, whatever its plan says: there the share is exact, and what would
 * run short after the end of a short run is seen.
 */
public final class LimitsStudy {
    /** About so many variants are tried for one limit. */
    private static final int EXPECTED_TRIALS = 15;

    private final SimulationRequest request;
    private final double target;

    /**
     * A study of {@code request}, whose line must have passed its check.
     *
     * @param target share of coil changes that should run through, in (0, 1]
     * @throws runthrough.study.StudyException when it is not
     */
    public LimitsStudy(SimulationRequest request, double target) {
        this.request = request;
        this.target = Share.target(target);
    }

    /**
     * Runs it.
     *
     * @param threads how many replications run at once, {@code >= 1}; does not change the answer
     * @throws runthrough.study.StudyException when a replication of the line as it is cannot go on
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public Limits run(int threads, StudyListener listener) {
        Line line = request.line();
        HandCalculation handCalculation = HandCalculation.of(line);
        boolean chance = !line.isDeterministic();
        if (line.practice().isOneStrip()) {
            return new Limits(request, target, false, chance, Optional.empty(), List.of(), List.of(), handCalculation);
        }
        LineLevers levers = new LineLevers(line, request.resultsIn());
        List<Varied> numbers = levers.numbers();
        ProgressCounter steps = new ProgressCounter(listener, EXPECTED_TRIALS * numbers.size());
        LeverRun run = new LeverRun(request, new Evaluator(threads, listener::cancelled), steps);
        Evaluation present = run.present();
        List<LineLimit> limits = numbers.stream()
                .map(driven -> new LimitSearch(driven, target, run, request.resultsIn()).limit())
                .toList();
        List<CountLimit> counts = CountSearch.all(levers, target, run);
        steps.finish();
        return new Limits(request, target, true, chance, Optional.of(present), limits, counts, handCalculation);
    }
}
