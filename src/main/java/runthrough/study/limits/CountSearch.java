package runthrough.study.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.plant.check.LineCheck;
import runthrough.study.TargetStatus;
import runthrough.study.limits.CountLimit.Tried;
import runthrough.study.limits.CountLimit.What;

/** Tries every number of people and of uncoilers that could matter. */
final class CountSearch {
    /** So many uncoilers are tried at least, and one more than there are. */
    private static final int SOME_UNCOILERS = 3;

    private final double target;
    private final LineTrials variants;

    private CountSearch(double target, LineTrials variants) {
        this.target = target;
        this.variants = variants;
    }

    /** One limit for each of {@link What}, in that order. */
    static List<CountLimit> all(Line line, double target, LineTrials variants) {
        CountSearch search = new CountSearch(target, variants);
        int crew = line.change().crew();
        int uncoilers = line.entry().uncoilers();
        return List.of(
                search.limit(
                        What.CREW,
                        crew,
                        mostPeople(line.change()),
                        n -> line.with(line.change().withCrew(n))),
                search.limit(
                        What.UNCOILERS,
                        uncoilers,
                        Math.max(SOME_UNCOILERS, uncoilers + 1),
                        n -> line.with(line.entry().withUncoilers(n))));
    }

    /** More people than this do no more, in any shift: every shift gets as many more as the largest one. */
    private static int mostPeople(CoilChange change) {
        return change.usefulCrew() + change.shifts().map(Shifts::greatestLack).orElse(0);
    }

    private CountLimit limit(What what, int present, int most, IntFunction<Line> variant) {
        List<Tried> tried = new ArrayList<>();
        for (int number = 1; number <= most; number++) {
            int count = number;
            variants.attempt(variant.apply(number)).ifPresent(evaluation -> tried.add(new Tried(count, evaluation)));
        }
        OptionalInt smallest = first(
                tried,
                one -> one.evaluation().ranThrough()
                        >= target * one.evaluation().changes());
        OptionalInt closedForm = IntStream.rangeClosed(1, most)
                .filter(number -> ClosedFormLimit.isBorne(variant.apply(number)))
                .findFirst();
        return new CountLimit(
                what,
                present,
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
                beyond.map(one -> one.evaluation().causes()));
    }

    private static OptionalInt first(List<Tried> tried, Predicate<Tried> does) {
        return tried.stream().filter(does).mapToInt(Tried::count).findFirst();
    }
}
