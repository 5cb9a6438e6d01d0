package runthrough.study.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Line;
import runthrough.plant.check.LineCheck;
import runthrough.study.Goal;
import runthrough.study.TargetStatus;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.LineLevers;
import runthrough.study.lever.Varied;
import runthrough.study.limits.CountLimit.Tried;
import runthrough.study.limits.CountLimit.What;

/** Tries every number of people and of uncoilers that could matter. */
final class CountSearch {
    private final double target;
    private final LeverRun variants;

    private CountSearch(double target, LeverRun variants) {
        this.target = target;
        this.variants = variants;
    }

    /** One limit for each of {@link What}, in that order. */
    static List<CountLimit> all(LineLevers levers, double target, LeverRun variants) {
        CountSearch search = new CountSearch(target, variants);
        return List.of(search.limit(What.CREW, levers.crew()), search.limit(What.UNCOILERS, levers.uncoilers()));
    }

    private CountLimit limit(What what, Varied varied) {
        int most = (int) varied.scale().to();
        IntFunction<Line> variant = number -> varied.variant().apply(number);
        List<Tried> tried = new ArrayList<>();
        for (int number = 1; number <= most; number++) {
            int count = number;
            variants.attempt(variant.apply(number)).ifPresent(evaluation -> tried.add(new Tried(count, evaluation)));
        }
        Goal goal = Goal.runThrough(target);
        OptionalInt smallest = first(tried, one -> goal.isSeenMet(one.evaluation()));
        OptionalInt closedForm = IntStream.rangeClosed(1, most)
                .filter(number -> ClosedFormLimit.isBorne(variant.apply(number)))
                .findFirst();
        return new CountLimit(
                what,
                (int) varied.present(),
                smallest,
                first(tried, one -> one.evaluation().answer(target) == TargetStatus.MEETS),
                closedForm,
                smallest.equals(closedForm) ? List.of() : differences(tried, smallest.orElse(most + 1), variant),
                tried);
    }

    /** What sets the line apart from its closed forms, looked at where the target is just missed. */
    private List<LineLimit.Difference> differences(List<Tried> tried, int smallest, IntFunction<Line> variant) {
        Optional<Tried> beyond =
                tried.stream().filter(one -> one.count() < smallest).reduce((first, second) -> second);
        Line line = variant.apply(beyond.map(Tried::count).orElse(1));
        return Differences.of(
                line,
                target,
                LineCheck.accepts(line) ? HandCalculation.of(line).limitingFactor() : Optional.empty(),
                beyond.flatMap(one -> variants.attemptWithCauses(line))
                        .flatMap(evaluation -> evaluation.causes().main()));
    }

    private static OptionalInt first(List<Tried> tried, Predicate<Tried> does) {
        return tried.stream().filter(does).mapToInt(Tried::count).findFirst();
    }
}
