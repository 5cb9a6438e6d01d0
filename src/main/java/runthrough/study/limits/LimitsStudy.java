package runthrough.study.limits;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.check.LineCheck;
import runthrough.quantity.UnitSystem;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.ProgressCounter;
import runthrough.study.Share;
import runthrough.study.StudyListener;

/**
 * Drives each number of a line to the limit at which its target is lost, and holds that against the closed forms. A line in
 * which nothing is random is driven in the long run, whatever its plan says: there the share is exact, and what would
 * run short after the end of a short run is seen.
 */
public final class LimitsStudy {
    /**
     * Where nothing is random a lack that grows from coil change to coil change ends in a stop for certain. A lack
     * that takes longer than this to use up the accumulator is a few ten-thousandths of what a joint takes.
     */
    private static final int LONG_RUN = 10_000;

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
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        RunPlan plan = chance ? request.run() : longRun(request.run());
        ProgressCounter steps = new ProgressCounter(listener, EXPECTED_TRIALS * LineLimit.What.values().length);
        Evaluation present = evaluator.evaluate(line, plan);
        boolean isFeasible = isFeasible(line);
        LineTrials variants = variant -> {
            steps.next();
            return isFeasible && !isFeasible(variant) ? Optional.empty() : evaluator.attempt(variant, plan);
        };
        List<LineLimit> limits = VariedInput.all(line).stream()
                .map(driven -> new LimitSearch(driven, target, variants, request.resultsIn()).limit())
                .toList();
        List<CountLimit> counts = CountSearch.all(line, target, variants);
        steps.finish();
        return new Limits(request, target, true, chance, Optional.of(present), limits, counts, handCalculation);
    }

    /** Rule CHECK-18: what the carriage cannot follow is no limit to go to, unless the line as it is goes beyond it already. */
    static boolean isFeasible(Line line) {
        return LineCheck.notFeasible(line, UnitSystem.METRIC).isEmpty();
    }

    private static RunPlan longRun(RunPlan plan) {
        int asked = plan.extent() instanceof RunPlan.Extent.Changes changes ? changes.changes() : 0;
        RunPlan.Extent extent = new RunPlan.Extent.Changes(Math.max(asked, plan.leaveOut() + LONG_RUN));
        return plan.withExtent(extent);
    }
}
