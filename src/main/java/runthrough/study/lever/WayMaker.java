package runthrough.study.lever;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.TargetStatus;

/** Makes ways to meet a target of what was found, with what they cost. */
final class WayMaker {
    private final Optional<WayCosts> costs;
    private final LeverRun run;

    WayMaker(Optional<WayCosts> costs, LeverRun run) {
        this.costs = costs;
        this.run = run;
    }

    /** The way of one lever, which is enough and gave {@code seen}. */
    Way alone(Varied varied, LeverAnswer answer, Evaluation seen) {
        List<LeverChange> changes =
                List.of(LeverMeasure.of(varied).to(answer.value().orElseThrow()));
        return new Way(
                answer.goal(),
                changes,
                OptionalDouble.empty(),
                answer.goal().share(seen),
                answer.isShown(),
                Optional.of(answer),
                answer.cost(),
                cost(changes, answer.cost()));
    }

    /** That of a pair whose number has {@code value}, with which {@code goal} is reached and which gave {@code seen}. */
    Way pair(LeverPair pair, double value, Goal goal, Evaluation seen) {
        List<LeverChange> changes = pair.changes(value);
        Optional<LeverAnswer.Cost> output =
                isSlower(changes) ? Optional.of(run.output(pair.variant().apply(value), seen)) : Optional.empty();
        return new Way(
                goal,
                changes,
                pair.isEven() ? OptionalDouble.of(value) : OptionalDouble.empty(),
                goal.share(seen),
                seen.answer(goal) == TargetStatus.MEETS,
                Optional.empty(),
                output,
                cost(changes, output));
    }

    /** About the rank of {@code changes} that were not tried: as if good output were what it is now. */
    Rank rank(List<LeverChange> changes) {
        Optional<YearlyCost> cost =
                isSlower(changes) ? cost(changes, Optional.of(run.outputNow())) : cost(changes, Optional.empty());
        return Rank.of(changes, cost);
    }

    private static boolean isSlower(List<LeverChange> changes) {
        return changes.stream().anyMatch(change -> change.lever().what() == Lever.What.PROCESS_SPEED);
    }

    private Optional<YearlyCost> cost(List<LeverChange> changes, Optional<LeverAnswer.Cost> output) {
        double good = output.map(cost -> cost.with().mean()).orElse(0.0);
        return costs.flatMap(known -> known.of(changes, good));
    }
}
