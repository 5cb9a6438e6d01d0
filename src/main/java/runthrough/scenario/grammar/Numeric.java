package runthrough.scenario.grammar;

import java.util.Optional;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Unit;
import runthrough.scenario.source.Raw;

/**
 * What a single number in a description may be.
 *
 * @param dimension what it measures; empty for a plain number
 * @param range which values (SI) are allowed
 * @param isWhole whether it counts something
 */
public record Numeric(Optional<Dimension> dimension, Range range, boolean isWhole) {

    /** A number with a unit. */
    static Numeric of(Dimension dimension, Range range) {
        return new Numeric(Optional.of(dimension), range, false);
    }

    /** A number without a unit. */
    static Numeric plain(Range range, boolean isWhole) {
        return new Numeric(Optional.empty(), range, isWhole);
    }

    /** The value (SI) that {@code text} writes, if it writes one of this dimension. */
    public Optional<Double> si(String text) {
        return dimension.isPresent()
                ? quantity(text, dimension.get()).map(Quantity::si)
                : QuantityParser.readNumber(text);
    }

    /** The unit in which {@code text} writes it. */
    public Optional<Unit> unit(String text) {
        return dimension.flatMap(wanted -> quantity(text, wanted)).map(Quantity::unit);
    }

    /** {@code raw} with a blank before its unit; empty where it is no single number with one. */
    public Optional<String> written(Raw raw) {
        return raw instanceof Raw.Scalar scalar
                ? dimension.flatMap(wanted -> quantity(scalar.text(), wanted)).map(Object::toString)
                : Optional.empty();
    }

    private static Optional<Quantity> quantity(String text, Dimension wanted) {
        return QuantityParser.read(text, wanted) instanceof Quantity quantity
                ? Optional.of(quantity)
                : Optional.empty();
    }

    /** What is allowed, to follow "must be": "more than 0 m", bounds in {@code unit} where there is one. */
    public String words(Optional<Unit> unit) {
        Optional<Unit> shown = unit.or(() -> dimension.map(Dimension::base));
        String bounds =
                shown.map(own -> range.words(own.symbol(), own.fromSi(1))).orElse(range.words("", 1));
        return (isWhole ? "a whole number, " : "") + bounds;
    }

    /** Whether the value {@code si} is allowed. */
    public boolean allows(double si) {
        return range.allows(si) && (!isWhole || si == Math.rint(si));
    }
}
