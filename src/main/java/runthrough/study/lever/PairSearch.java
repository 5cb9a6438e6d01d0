package runthrough.study.lever;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runthrough.quantity.UnitSystem;
import runthrough.study.Goal;

/**
 * Finds pairs of levers that meet a target which each of them needs more for, or does not reach, alone.
 *
 * <p>Rule LEVER-15.
 */
final class PairSearch {
    /** So many pairs at most for one target. */
    static final int MOST = 5;

    /** Where a search begins of which no more is known, as a part of what is tried. */
    private static final double FAR_UP = 0.7;

    private final Goal goal;
    private final LeverRun run;
    private final UnitSystem system;
    private final WayMaker maker;

    PairSearch(Goal goal, LeverRun run, UnitSystem system, WayMaker maker) {
        this.goal = goal;
        this.run = run;
        this.system = system;
        this.maker = maker;
    }

    /** A pair, and about where along it the target is met. */
    private record Candidate(LeverPair pair, LeverSearch search, double about) {}

    /** The best of {@code halves}: those that by a short run come first. */
    List<Way> among(List<PairHalf> halves) {
        List<Candidate> candidates = pairs(halves)
                .map(pair -> new Candidate(pair, run.along(pair), guess(pair)))
                .flatMap(one -> one.search().roughly(goal, one.about()).stream()
                        .mapToObj(about -> new Candidate(one.pair(), one.search(), about)))
                .sorted(Comparator.comparing(one -> maker.rank(one.pair().changes(one.about()))))
                .toList();
        List<Way> ways = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (ways.size() < MOST) {
                way(candidate).ifPresent(ways::add);
            }
        }
        return ways;
    }

    private Optional<Way> way(Candidate candidate) {
        LeverPair pair = candidate.pair();
        OptionalDouble found = candidate.search().enoughNear(goal, candidate.about());
        return found.isPresent() && pair.isClearlyLess(found.getAsDouble())
                ? candidate
                        .search()
                        .attempt(found.getAsDouble())
                        .map(seen -> maker.pair(pair, found.getAsDouble(), goal, seen))
                : Optional.empty();
    }

    private Stream<LeverPair> pairs(List<PairHalf> halves) {
        List<LeverPair> pairs = new ArrayList<>();
        for (int i = 0; i < halves.size(); i++) {
            for (int j = i + 1; j < halves.size(); j++) {
                pair(halves.get(i), halves.get(j)).ifPresent(pairs::add);
            }
        }
        return pairs.stream();
    }

    private Optional<LeverPair> pair(PairHalf one, PairHalf other) {
        if (other.measure().isCounted() && !one.measure().isCounted()) {
            return pair(other, one);
        }
        if (one.measure().isCounted()) {
            double easiest = other.measure().atMost(other.most());
            return one.takesMoreThanOne() && other.measure().part(easiest) > 0
                    ? Optional.of(LeverPair.oneMore(one, other, easiest, system))
                    : Optional.empty();
        }
        double most = Math.min(one.most(), other.most());
        return most > LeverStep.ofParts(one.measure().varied().line().isDeterministic()) && isWorthATrial(one, other)
                ? Optional.of(LeverPair.even(one, other, most, system))
                : Optional.empty();
    }

    /** Where each is enough alone, together about that part is which adds up: if of either that is nearly all, it is alone as good. */
    private static boolean isWorthATrial(PairHalf one, PairHalf other) {
        double least = Math.min(one.alone().orElse(1), other.alone().orElse(1));
        return one.alone().isEmpty()
                || other.alone().isEmpty()
                || together(one, other) <= PairHalf.CLEARLY_LESS * least;
    }

    private static double together(PairHalf one, PairHalf other) {
        double a = one.alone().orElseThrow();
        double b = other.alone().orElseThrow();
        return a * b / (a + b);
    }

    private static double guess(LeverPair pair) {
        boolean areKnown =
                pair.first().alone().isPresent() && pair.second().alone().isPresent();
        return pair.isEven() && areKnown
                ? together(pair.first(), pair.second())
                : pair.present() + FAR_UP * (pair.easiest() - pair.present());
    }
}
