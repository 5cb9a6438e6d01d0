package runthrough.study.sizing;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.StorageForm;
import runthrough.plant.check.LineCheck;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.StudyException;

/** A line tried with other capacities under the same random numbers; what was tried once is not run again. */
final class Capacities {
    private final Line line;
    private final Evaluator evaluator;
    private final StripDemand needs;
    private final Map<Double, Evaluation> tried = new HashMap<>();

    Capacities(Line line, Evaluator evaluator, StripDemand needs) {
        this.line = line;
        this.evaluator = evaluator;
        this.needs = needs;
    }

    /** The accumulator of {@code capacity} (m). */
    Size size(double capacity) {
        return new Size(form().resizedTo(capacity));
    }

    private StorageForm form() {
        return line.accumulator().form();
    }

    /**
     * What {@code capacity} (m) gives under {@code plan}, which differs from others only in its replications; empty when refused, or
     * when a run with it cannot go on.
     *
     * @throws StudyException when a run of the line as it is cannot go on
     */
    Optional<Evaluation> evaluate(double capacity, RunPlan plan) {
        Line variant = line.with(line.accumulator().resizedTo(capacity));
        if (!LineCheck.accepts(variant)) {
            return Optional.empty();
        }
        Evaluation before = tried.getOrDefault(capacity, Evaluation.none(variant));
        if (before.replications().size() >= Evaluator.replications(variant, plan)) {
            return Optional.of(before.first(plan.replications()));
        }
        try {
            Evaluation evaluation = evaluator.evaluate(
                    variant, plan, index -> before.replication(index).or(() -> needs.known(index, capacity)));
            tried.put(capacity, evaluation);
            return Optional.of(evaluation);
        } catch (StudyException e) {
            if (capacity == line.accumulator().capacity()) {
                throw e;
            }
            return Optional.empty();
        }
    }
}
