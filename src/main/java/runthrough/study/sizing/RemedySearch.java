package runthrough.study.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.study.Evaluator;
import runthrough.study.Goal;
import runthrough.study.TargetStatus;
import runthrough.study.lever.LeverList;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.LeverSearch;
import runthrough.study.lever.Varied;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Remedy.What;

/**
 * Looks for what would let some capacity be enough for a line for which none is: each change on its own. First the levers of
 * the line, which are those of every other study, then what is no lever: people of one shift, breaks, fill rate, preparation
 * as a whole.
 */
final class RemedySearch {
    /** How far a carriage may be speeded up. */
    private static final double MUCH_FASTER = 4;

    /** How far preparation may be shortened. */
    private static final double HARDLY_ANY = 0.01;

    /** Relative precision of what is needed, where a factor is varied. */
    private static final double PRECISION = 0.005;

    private final Line ample;
    private final SimulationRequest request;
    private final Goal goal;
    private final long seed;
    private final Evaluator evaluator;
    private final boolean isFeasible;
    private final LeverRun run;

    /**
     * Of {@code ample}, a line whose accumulator never runs empty soon; {@code run} knows the line as it is, which {@code request}
     * describes.
     *
     * @param target share of coil changes that should run through
     */
    RemedySearch(Line ample, SimulationRequest request, double target, long seed, Evaluator evaluator, LeverRun run) {
        this.run = run;
        this.ample = ample;
        this.request = request;
        this.goal = Goal.runThrough(target);
        this.seed = seed;
        this.evaluator = evaluator;
        this.isFeasible = LeverRun.isFeasible(ample);
    }

    /** All remedies that there are for this line, those that do not help included. */
    List<Remedy> remedies() {
        List<Supplier<Varied>> levers = LeverList.of(ample, request.resultsIn());
        List<Supplier<Varied>> own = LeverList.of(request.line(), request.resultsIn());
        List<Remedy> remedies = new ArrayList<>(IntStream.range(0, levers.size())
                .mapToObj(place -> moved(levers.get(place).get(), own.get(place)))
                .flatMap(Optional::stream)
                .toList());
        ample.change().shifts().ifPresent(shifts -> {
            if (shifts.list().size() > 1) {
                crews(shifts).forEach(remedies::add);
            }
            if (shifts.breakTime() > 0) {
                remedies.add(withoutBreaks(shifts));
            }
        });
        factors().forEach(remedies::add);
        return remedies;
    }

    /** A lever: what is needed is a step of its scale, or the value that asks least; with what it costs in the line that it is enough for. */
    private Optional<Remedy> moved(Varied varied, Supplier<Varied> withPresentAccumulator) {
        return What.of(varied.lever().what())
                .filter(what -> !varied.isNothing())
                .map(what -> moved(what, varied, withPresentAccumulator.get()));
    }

    private Remedy moved(What what, Varied varied, Varied own) {
        DoublePredicate lasts = value -> lasts(varied.variant().apply(value));
        OptionalDouble withLarge = nearest(varied, lasts);
        OptionalDouble withPresent = answer(own);
        OptionalDouble needed = easier(varied, withLarge, withPresent);
        Varied enoughFor = needed.equals(withPresent) ? own : varied;
        return new Remedy(
                what,
                varied.lever().element(),
                Optional.empty(),
                varied.present(),
                needed,
                varied.easiest(),
                needed.isPresent() ? run.cost(enoughFor, needed.getAsDouble()) : Optional.empty());
    }

    /** What lets the present accumulator be enough, as of a crew that must first refill a larger one. */
    private OptionalDouble answer(Varied own) {
        LeverSearch search = run.along(own);
        Crossing found = search.find(goal, own.present());
        return search.lasts(goal, found) ? found.answer() : OptionalDouble.empty();
    }

    /** Of two values that do, the one that changes less. */
    private static OptionalDouble easier(Varied varied, OptionalDouble one, OptionalDouble other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isPresent() ? one : other;
        }
        double now = varied.present();
        return Math.abs(other.getAsDouble() - now) < Math.abs(one.getAsDouble() - now) ? other : one;
    }

    /** The step nearest to the present value that lasts; it is known that the present one does not. */
    private static OptionalDouble nearest(Varied varied, DoublePredicate lasts) {
        double good = varied.easiest();
        if (!lasts.test(good)) {
            return OptionalDouble.empty();
        }
        double bad = varied.present();
        double step = varied.scale().step();
        double middle = Math.rint((good + bad) / 2 / step) * step;
        while (Math.min(good, bad) < middle && middle < Math.max(good, bad)) {
            if (lasts.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
            middle = Math.rint((good + bad) / 2 / step) * step;
        }
        return OptionalDouble.of(good);
    }

    /** More people in one shift alone. */
    private Stream<Remedy> crews(Shifts shifts) {
        int useful = ample.change().usefulCrew();
        return IntStream.range(0, shifts.list().size())
                .filter(place -> shifts.list().get(place).crew() < useful)
                .mapToObj(place -> {
                    int now = shifts.list().get(place).crew();
                    OptionalDouble needed = IntStream.rangeClosed(now + 1, useful)
                            .filter(people ->
                                    lasts(ample.with(ample.change().withShifts(shifts.withCrewOf(place, people)))))
                            .asDoubleStream()
                            .findFirst();
                    String name = shifts.list().get(place).name();
                    return new Remedy(
                            What.CREW_OF_SHIFT,
                            Optional.empty(),
                            Optional.of(name),
                            now,
                            needed,
                            useful,
                            Optional.empty());
                });
    }

    private Remedy withoutBreaks(Shifts shifts) {
        boolean helps = lasts(ample.with(ample.change().withShifts(shifts.withoutBreaks())));
        return new Remedy(What.BREAKS, shifts.breakTime(), helps ? OptionalDouble.of(0) : OptionalDouble.empty(), 0);
    }

    private Stream<Remedy> factors() {
        double fillRate = ample.accumulator().fillRateLimit();
        double preparation = HandCalculation.of(ample).preparation().needed();
        Stream<Remedy> filling = fillRate < Double.POSITIVE_INFINITY
                ? Stream.of(scaled(
                        What.FILL_RATE_LIMIT,
                        fillRate,
                        MUCH_FASTER,
                        (line, factor) -> line.with(line.accumulator().fillingTimesAsFast(factor))))
                : Stream.empty();
        Stream<Remedy> preparing = preparation > 0
                ? Stream.of(scaled(
                        What.PREPARATION_TIME,
                        preparation,
                        HARDLY_ANY,
                        (line, factor) -> line.with(line.change().withPreparationTimes(factor))))
                : Stream.empty();
        return Stream.concat(filling, preparing);
    }

    /** A line with something of it times a factor. */
    @FunctionalInterface
    private interface Scaled {
        Line of(Line line, double factor);
    }

    /** A remedy that consists of a factor, 1 now: with it the present accumulator is enough, or one that never runs empty lasts. */
    private Remedy scaled(What what, double now, double furthest, Scaled variant) {
        OptionalDouble factor = nearest(
                furthest,
                value -> lasts(variant.of(ample, value)) || meetsWithPresent(variant.of(request.line(), value)));
        return new Remedy(
                what, now, factor.isPresent() ? OptionalDouble.of(now * factor.getAsDouble()) : factor, now * furthest);
    }

    /** The factor nearest to 1 that lasts; it is known that 1 does not. */
    private OptionalDouble nearest(double furthest, DoublePredicate isEnough) {
        if (!isEnough.test(furthest)) {
            return OptionalDouble.empty();
        }
        double bad = 1;
        double good = furthest;
        while (Math.abs(good - bad) > PRECISION * good) {
            double middle = Math.sqrt(good * bad);
            if (isEnough.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return OptionalDouble.of(good);
    }

    private boolean meetsWithPresent(Line line) {
        return run.attempt(line)
                .filter(seen -> seen.answer(goal) == TargetStatus.MEETS && run.lasts(goal, line, seen))
                .isPresent();
    }

    /** As of a lever, what the carriage cannot follow is not enough, unless the line as it is goes beyond it already. */
    private boolean lasts(Line line) {
        return (!isFeasible || LeverRun.isFeasible(line)) && LongRunBalance.lasts(line, seed, evaluator);
    }
}
