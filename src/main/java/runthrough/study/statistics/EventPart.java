package runthrough.study.statistics;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Events of one kind in each replication, and how much of a value is due to them. */
public final class EventPart {
    private final long[] events;
    private final double[] trials;
    private final boolean oncePerTrial;
    private final double[] effects;
    private final boolean equal;
    private final double effectOfOne;

    private EventPart(
            long[] events, double[] trials, boolean oncePerTrial, double[] effects, boolean equal, double effectOfOne) {
        this.events = events.clone();
        this.trials = trials.clone();
        this.oncePerTrial = oncePerTrial;
        this.effects = effects.clone();
        this.equal = equal;
        this.effectOfOne = effectOfOne;
    }

    /**
     * Events of which each trial has one at most.
     *
     * @param events of each replication; none where its effect is zero
     * @param trials of each replication
     * @param effects what they add to the value of each replication, all of one sign
     * @param effectOfOne what one is taken to add where none was seen, of the same sign
     */
    public static EventPart ofTrials(long[] events, long[] trials, double[] effects, double effectOfOne) {
        double[] all = LongStream.of(trials).mapToDouble(number -> number).toArray();
        return new EventPart(events, all, true, effects, false, effectOfOne);
    }

    /**
     * Events in time.
     *
     * @param exposures of each replication
     */
    public static EventPart ofTime(long[] events, double[] exposures, double[] effects, double effectOfOne) {
        return new EventPart(events, exposures, false, effects, false, effectOfOne);
    }

    /** Events that count for themselves: what they add is their number over the exposure. */
    static EventPart ofEqual(long[] events, double[] exposures, double[] rates) {
        double one = exposures.length / DoubleStream.of(exposures).sum();
        return new EventPart(events, exposures, false, rates, true, one);
    }

    /** The same in another unit, or counted otherwise. */
    EventPart times(double factor) {
        double[] other = DoubleStream.of(effects).map(effect -> factor * effect).toArray();
        return new EventPart(events, trials, oncePerTrial, other, equal, factor * effectOfOne);
    }

    /** What the same events add to two values together. */
    EventPart plus(EventPart other) {
        double[] sums = IntStream.range(0, effects.length)
                .mapToDouble(i -> effects[i] + other.effects[i])
                .toArray();
        return new EventPart(events, trials, oncePerTrial, sums, equal && other.equal, effectOfOne + other.effectOfOne);
    }

    /**
     * What these effects are more than those of {@code other}, replication by replication, as events that the other has not: as many as
     * there are more, or one, where the same number has more effect.
     */
    EventPart moreThan(EventPart other) {
        double[] more = IntStream.range(0, effects.length)
                .mapToDouble(i ->
                        Pairs.isSame(effects[i], other.effects[i]) ? 0 : Math.max(0, effects[i] - other.effects[i]))
                .toArray();
        long[] extra = IntStream.range(0, more.length)
                .mapToLong(i -> more[i] == 0 ? 0 : Math.max(1, Math.abs(events[i] - other.events[i])))
                .toArray();
        return new EventPart(extra, trials, false, more, false, 0);
    }

    /** The same; where it has no event, one is taken to have the effect of one of {@code opposite}, the other way. */
    EventPart orAsMuchAs(EventPart opposite) {
        return count() > 0
                ? this
                : new EventPart(
                        events,
                        trials,
                        oncePerTrial,
                        effects,
                        equal,
                        -DoubleStream.of(opposite.effects).sum() / opposite.count());
    }

    /** That of the replications in the order of {@code places}. */
    EventPart at(int[] places) {
        return new EventPart(
                IntStream.of(places).mapToLong(i -> events[i]).toArray(),
                IntStream.of(places).mapToDouble(i -> trials[i]).toArray(),
                oncePerTrial,
                IntStream.of(places).mapToDouble(i -> effects[i]).toArray(),
                equal,
                effectOfOne);
    }

    long[] events() {
        return events;
    }

    double[] trials() {
        return trials;
    }

    boolean isOncePerTrial() {
        return oncePerTrial;
    }

    double[] effects() {
        return effects;
    }

    /** Whether each adds the same. */
    boolean isEqual() {
        return equal;
    }

    double effectOfOne() {
        return effectOfOne;
    }

    /** Whether there is anything of it to be uncertain about. */
    boolean isThere() {
        return DoubleStream.of(effects).anyMatch(effect -> effect != 0) || (count() == 0 && effectOfOne != 0);
    }

    int replications() {
        return events.length;
    }

    long count() {
        return LongStream.of(events).sum();
    }

    /** What the events come to, on average over the replications. */
    double mean() {
        return DoubleStream.of(effects).sum() / effects.length;
    }
}
