package runthrough.study.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import runthrough.plant.Line;
import runthrough.study.Answer;
import runthrough.study.limits.CountLimit.Tried;
import runthrough.study.limits.CountLimit.What;

/** Tries every number of people and of uncoilers that could matter. */
final class CountSearch {
    /** More than two people do no more than two. */
    private static final int USEFUL_CREW = 2;

    /** So many uncoilers are tried at least, and one more than there are. */
    private static final int SOME_UNCOILERS = 3;

    private final double target;
    private final Variants variants;

    private CountSearch(double target, Variants variants) {
        this.target = target;
        this.variants = variants;
    }

    /** One limit for each of {@link What}, in that order. */
    static List<CountLimit> all(Line line, double target, Variants variants) {
        CountSearch search = new CountSearch(target, variants);
        int crew = line.change().crew();
        int uncoilers = line.entry().uncoilers();
        return List.of(
                search.limit(
                        What.CREW,
                        crew,
                        USEFUL_CREW,
                        n -> line.with(line.change().withCrew(n))),
                search.limit(
                        What.UNCOILERS,
                        uncoilers,
                        Math.max(SOME_UNCOILERS, uncoilers + 1),
                        n -> line.with(line.entry().withUncoilers(n))));
    }

    private CountLimit limit(What what, int present, int most, IntFunction<Line> variant) {
        List<Tried> tried = new ArrayList<>();
        for (int number = 1; number <= most; number++) {
            int count = number;
            variants.attempt(variant.apply(number)).ifPresent(evaluation -> tried.add(new Tried(count, evaluation)));
        }
        return new CountLimit(
                what,
                present,
                first(
                        tried,
                        one -> one.evaluation().ranThrough()
                                >= target * one.evaluation().changes()),
                first(tried, one -> one.evaluation().answer(target) == Answer.MEETS),
                tried);
    }

    private static OptionalInt first(List<Tried> tried, Predicate<Tried> does) {
        return tried.stream().filter(does).mapToInt(Tried::count).findFirst();
    }
}
