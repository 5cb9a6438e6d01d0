package runthrough.scenario.grammar;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.Distribution;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Arguments.Rule;
import runthrough.scenario.grammar.Ways.Way;
import runthrough.scenario.source.Raw;

/**
 * The keys that describe a random quantity. They may stand alone or among other keys, as in a work element.
 *
 * @param kinds one key for each kind of distribution
 * @param shift what is added to each draw
 */
public record DistributionKeys(List<Key<Distribution>> kinds, Key<Double> shift) {

    /** Outside of this a Weibull distribution is hardly random, or its mean is beyond all that is likely to be drawn. */
    private static final Range WEIBULL_SHAPE = new Range(0.1, true, 1000, true);

    private static final List<String> MEAN_AND_SD = List.of("mean", "sd");

    /** The keys for quantities of {@code dimension} that are in {@code range}. */
    public static DistributionKeys of(Dimension dimension, Range range) {
        Amount given = new Amount(dimension, range);
        Amount least = new Amount(dimension, Range.NOT_NEGATIVE);
        Amount positive = new Amount(dimension, Range.POSITIVE);
        PlainNumber shape = new PlainNumber(WEIBULL_SHAPE);
        String[] unit = units(dimension);
        Key<Distribution> constant =
                Key.optional("constant", "always the same value", given.map(Distribution::constant), unit[1]);
        Key<Distribution> uniform = Key.optional(
                "uniform",
                "the least and the greatest value, all between equally likely",
                new Arguments(
                        List.of("least", "greatest"),
                        List.of(least, least),
                        Rule.RISING,
                        v -> Distribution.uniform(v.get(0), v.get(1))),
                list(unit[0], unit[2]));
        Key<Distribution> triangular = Key.optional(
                "triangular",
                "the least, the most likely and the greatest value",
                new Arguments(
                        List.of("least", "most-likely", "greatest"),
                        List.of(least, least, least),
                        Rule.RISING,
                        v -> Distribution.triangular(v.get(0), v.get(1), v.get(2))),
                list(unit[0], unit[1], unit[2]));
        Key<Distribution> normal = Key.optional(
                "normal",
                "mean and standard deviation of the normal distribution; only values above 0 are used",
                new Arguments(
                        MEAN_AND_SD, List.of(positive, least), Rule.NONE, v -> Distribution.normal(v.get(0), v.get(1))),
                list(unit[1], unit[3]));
        Key<Distribution> lognormal = Key.optional(
                "lognormal",
                "mean and standard deviation of the value itself, not of its logarithm; skewed to large values",
                new Arguments(
                        MEAN_AND_SD,
                        List.of(positive, least),
                        Rule.NONE,
                        v -> Distribution.lognormal(v.get(0), v.get(1))),
                list(unit[1], unit[3]));
        Key<Distribution> gamma = Key.optional(
                "gamma",
                "mean and standard deviation; skewed to large values, less than lognormal",
                new Arguments(
                        MEAN_AND_SD, List.of(positive, least), Rule.NONE, v -> Distribution.gamma(v.get(0), v.get(1))),
                list(unit[1], unit[3]));
        Key<Distribution> weibull = Key.optional(
                "weibull",
                "the shape (a plain number) and the scale",
                new Arguments(
                        List.of("shape", "scale"),
                        List.of(shape, positive),
                        Rule.NONE,
                        v -> Distribution.weibull(v.get(0), v.get(1))),
                list("1.5", unit[1]));
        Key<Distribution> exponential = Key.optional(
                "exponential",
                "the mean; no memory, as of breakdowns",
                positive.map(Distribution::exponential),
                unit[1]);
        Key<Distribution> observed = Key.optional(
                "observed",
                "measured values, all equally likely",
                new Items<>(least, "measured values", 1, false).map(Distribution::observed),
                list(unit[1], unit[2], unit[0]));
        Key<Double> shift = Key.optional(
                        "shift",
                        "what is added to each draw, may be negative",
                        new Amount(dimension, Range.ANY),
                        unit[3])
                .orElse("nothing", 0.0);
        return new DistributionKeys(
                List.of(constant, uniform, triangular, normal, lognormal, gamma, weibull, exponential, observed),
                shift);
    }

    /** {@code raw} as keys: a single value is that of a distribution that always gives the same. */
    public Raw asMapping(Raw raw) {
        return raw instanceof Raw.Scalar
                ? new Raw.Mapping(List.of(new Raw.Entry(kinds.get(0).name(), raw.place(), raw)), raw.place())
                : raw;
    }

    /** A section of these keys alone. */
    Section section() {
        Key<?>[] keys = Stream.concat(kinds.stream(), Stream.of(shift)).toArray(Key<?>[]::new);
        return Section.of("random quantity", "one that differs from draw to draw", keys)
                .with(Ways.oneOf("which distribution it follows", waysWith(shift.name())));
    }

    /** One way for each kind of distribution, to which a shift may be added. */
    public Way[] waysWith(String... optional) {
        return kinds.stream().map(kind -> Way.of(kind.name()).with(optional)).toArray(Way[]::new);
    }

    /** The distribution that {@code values} give, if they give one. */
    public Optional<Distribution> distribution(Values values) {
        return kinds.stream()
                .filter(values::has)
                .findFirst()
                .map(kind -> values.get(kind).shifted(values.get(shift)));
    }

    /** Least, usual, greatest value and spread, for examples. */
    private static String[] units(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> new String[] {"900 m", "1200 m", "1300 m", "80 m"};
            case MASS -> new String[] {"9 t", "12 t", "13 t", "1 t"};
            default -> new String[] {"60 s", "90 s", "240 s", "20 s"};
        };
    }

    private static String list(String... values) {
        return "[" + String.join(", ", values) + "]";
    }
}
