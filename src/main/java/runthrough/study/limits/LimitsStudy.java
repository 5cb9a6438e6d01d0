package runthrough.study.limits;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Brief;
import runthrough.plant.Line;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.Share;
import runthrough.study.Steps;
import runthrough.study.StudyListener;

/** Drives each number of a line to the limit at which its target is lost, and holds that against the closed forms. */
public final class LimitsStudy {
    /** About so many variants are tried for one limit. */
    private static final int EXPECTED_TRIALS = 15;

    private final Brief brief;
    private final double target;

    /**
     * A study of {@code brief}, whose line must have passed its check.
     *
     * @param target share of coil changes that should run through, in (0, 1]
     * @throws runthrough.study.StudyException when it is not
     */
    public LimitsStudy(Brief brief, double target) {
        this.brief = brief;
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
        Line line = brief.line();
        HandCalculation handCalculation = HandCalculation.of(line);
        boolean chance = !line.isDeterministic();
        if (line.practice().isOneStrip()) {
            return new Limits(brief, target, false, chance, Optional.empty(), List.of(), List.of(), handCalculation);
        }
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        Steps steps = new Steps(listener, EXPECTED_TRIALS * LineLimit.What.values().length);
        Evaluation present = evaluator.evaluate(line, brief.run());
        Variants variants = variant -> {
            steps.next();
            return evaluator.attempt(variant, brief.run());
        };
        List<LineLimit> limits = Driven.all(line).stream()
                .map(driven -> new LimitSearch(driven, target, variants).limit())
                .toList();
        List<CountLimit> counts = CountSearch.all(line, target, variants);
        steps.finish();
        return new Limits(brief, target, true, chance, Optional.of(present), limits, counts, handCalculation);
    }
}
