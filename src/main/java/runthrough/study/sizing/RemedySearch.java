package runthrough.study.sizing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Line;
import runthrough.study.Evaluator;
import runthrough.study.sizing.Remedy.What;

/** Looks for what would let some capacity be enough for a line for which none is: each change on its own. */
final class RemedySearch {
    /** How far an entry or a carriage may be speeded up. */
    private static final double MUCH_FASTER = 4;

    /** How far work may be shortened. */
    private static final double HARDLY_ANY = 0.01;

    /** How far a process may be slowed. */
    private static final double MUCH_SLOWER = 0.2;

    private static final int MORE_UNCOILERS = 3;

    /** Relative precision of what is needed. */
    private static final double PRECISION = 0.005;

    private final Line ample;
    private final long seed;
    private final Evaluator evaluator;

    RemedySearch(Line ample, long seed, Evaluator evaluator) {
        this.ample = ample;
        this.seed = seed;
        this.evaluator = evaluator;
    }

    /** All remedies that there are for this line, those that do not help included. */
    List<Remedy> remedies() {
        HandCalculation hand = HandCalculation.of(ample);
        double fillRate = ample.accumulator().fillRateLimit();
        return Stream.of(
                        Stream.of(
                                scaled(What.ENTRY_TOP_SPEED, ample.entry().topSpeed(), MUCH_FASTER, this::entryFaster)),
                        fillRate < Double.POSITIVE_INFINITY
                                ? Stream.of(scaled(
                                        What.FILL_RATE_LIMIT,
                                        fillRate,
                                        MUCH_FASTER,
                                        f -> ample.with(ample.accumulator().fillingTimesAsFast(f))))
                                : Stream.<Remedy>empty(),
                        hand.preparation().needed() > 0
                                ? Stream.of(scaled(
                                        What.PREPARATION_TIME,
                                        hand.preparation().needed(),
                                        HARDLY_ANY,
                                        f -> ample.with(ample.change().withPreparationTimes(f))))
                                : Stream.<Remedy>empty(),
                        Stream.of(
                                scaled(
                                        What.JOINT_WORK,
                                        hand.joint().work(),
                                        HARDLY_ANY,
                                        f -> ample.with(ample.change().withStandingWorkTimes(f))),
                                uncoilers(),
                                scaled(
                                        What.PROCESS_SPEED,
                                        ample.fastestRatedSpeed(),
                                        MUCH_SLOWER,
                                        ample::withRatedSpeedsTimes)),
                        ample.change().crew() == 1 ? Stream.of(crew()) : Stream.<Remedy>empty())
                .flatMap(Function.identity())
                .toList();
    }

    private Line entryFaster(double factor) {
        return ample.with(ample.entry().withTopSpeed(ample.entry().topSpeed() * factor));
    }

    /** A remedy that consists of a factor, 1 now. */
    private Remedy scaled(What what, double now, double furthest, DoubleFunction<Line> variant) {
        OptionalDouble factor = nearest(furthest, variant);
        return new Remedy(
                what, now, factor.isPresent() ? OptionalDouble.of(now * factor.getAsDouble()) : factor, now * furthest);
    }

    /** The factor nearest to 1 that lasts; it is known that 1 does not. */
    private OptionalDouble nearest(double furthest, DoubleFunction<Line> variant) {
        if (!lasts(variant.apply(furthest))) {
            return OptionalDouble.empty();
        }
        double bad = 1;
        double good = furthest;
        while (Math.abs(good - bad) > PRECISION * good) {
            double middle = Math.sqrt(good * bad);
            if (lasts(variant.apply(middle))) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return OptionalDouble.of(good);
    }

    private Remedy uncoilers() {
        int now = ample.entry().uncoilers();
        for (int number = now + 1; number <= now + MORE_UNCOILERS; number++) {
            if (lasts(ample.with(ample.entry().withUncoilers(number)))) {
                return new Remedy(What.UNCOILERS, now, OptionalDouble.of(number), now + MORE_UNCOILERS);
            }
        }
        return new Remedy(What.UNCOILERS, now, OptionalDouble.empty(), now + MORE_UNCOILERS);
    }

    /** More than two people do no more than two. */
    private Remedy crew() {
        boolean helps = lasts(ample.with(ample.change().withCrew(2)));
        return new Remedy(What.CREW, 1, helps ? OptionalDouble.of(2) : OptionalDouble.empty(), 2);
    }

    private boolean lasts(Line line) {
        return LongRunBalance.lasts(line, seed, evaluator);
    }
}
