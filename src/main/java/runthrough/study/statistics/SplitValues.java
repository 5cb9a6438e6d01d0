package runthrough.study.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * One value of each replication, and the parts of it that are due to events which may be few. Where those of a kind are few, the
 * interval stands on their count ({@link FewEvents}) and on Student's t for the rest of the value; the distances to the ends of
 * both are added in squares. Where they are many, and where there are none, Student's t takes in all.
 *
 * <p>Source: G. Y. Zou and A. Donner, "Construction of confidence limits about effect measures: a general approach", Statistics
 * in Medicine 27, 2008 (from memory): limits of a sum from those of its parts.
 */
public final class SplitValues {
    private final double[] values;
    private final List<EventPart> parts;

    /**
     * Values with their parts.
     *
     * @param values one of each replication
     * @param parts what events add to them, each kind in its place; a value less all its parts is what it would be without
     */
    public SplitValues(double[] values, List<EventPart> parts) {
        this.values = values.clone();
        this.parts = List.copyOf(parts);
    }

    /** Values of which nothing is known to be due to events. */
    public static SplitValues whole(double... values) {
        return new SplitValues(values, List.of());
    }

    /** The values. */
    public double[] values() {
        return values.clone();
    }

    List<EventPart> parts() {
        return parts;
    }

    /** The same in another unit, or counted otherwise. */
    public SplitValues times(double factor) {
        return new SplitValues(
                DoubleStream.of(values).map(value -> factor * value).toArray(),
                parts.stream().map(part -> part.times(factor)).toList());
    }

    /** Both together, replication by replication; of the same replications, the same kinds of events in the same places. */
    public SplitValues plus(SplitValues other) {
        double[] sums = IntStream.range(0, values.length)
                .mapToDouble(i -> values[i] + other.values[i])
                .toArray();
        return new SplitValues(
                sums,
                IntStream.range(0, Math.max(parts.size(), other.parts.size()))
                        .mapToObj(kind -> kind >= parts.size()
                                ? other.parts.get(kind)
                                : kind >= other.parts.size()
                                        ? parts.get(kind)
                                        : parts.get(kind).plus(other.parts.get(kind)))
                        .toList());
    }

    /** The values of replications in the order of {@code places}, one of which may come again. */
    public SplitValues at(int... places) {
        return new SplitValues(
                IntStream.of(places).mapToDouble(i -> values[i]).toArray(),
                parts.stream().map(part -> part.at(places)).toList());
    }

    /**
     * Their mean, its interval within what is possible.
     *
     * @param least that the mean can be
     * @param most that the mean can be
     */
    public Estimate mean(double least, double most) {
        FewEvents few = new FewEvents(Interval.CONFIDENCE);
        List<EventPart> rare = parts.stream()
                .filter(part -> part.isThere() && few.equivalent(part) < Estimators.FEW)
                .toList();
        Moments moments = Moments.of(values);
        if (rare.isEmpty()) {
            return Estimators.studentT(Interval.CONFIDENCE, moments, least, most);
        }
        OptionalDouble sd = moments.n() == 1 ? OptionalDouble.empty() : OptionalDouble.of(moments.sd());
        double[] rest = without(rare);
        boolean nothingElse = Arrays.stream(rest).allMatch(value -> value == 0);
        if (moments.n() == 1 && !nothingElse) {
            return new Estimate(moments.mean(), 1, sd, Optional.empty());
        }
        Reach reach = nothingElse ? Reach.NONE : Reach.byT(Interval.CONFIDENCE, rest);
        List<Reach> all = new ArrayList<>(List.of(reach));
        rare.forEach(part -> all.add(Reach.of(few.limits(part), part.mean())));
        boolean seen = rare.stream().anyMatch(part -> part.count() > 0);
        return new Estimate(
                moments.mean(),
                moments.n(),
                sd,
                Reach.together(all)
                        .around(
                                moments.mean(),
                                least,
                                most,
                                seen || !nothingElse ? Interval.Method.FEW_EVENTS : Interval.Method.RULE_OF_THREE));
    }

    /** The values without what the events of {@code some} parts came to; what is left of rounding alone is zero. */
    double[] without(List<EventPart> some) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> {
                    double events =
                            some.stream().mapToDouble(part -> part.effects()[i]).sum();
                    return Pairs.isSame(values[i], events) ? 0 : values[i] - events;
                })
                .toArray();
    }
}
