package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import runthrough.plant.check.StandIn;
import runthrough.quantity.QuantityParser;
import runthrough.scenario.source.Raw;

/**
 * A number that has no unit.
 *
 * @param range which values are allowed
 */
public record PlainNumber(Range range) implements Shape<Double> {

    /** Beyond any factor, weight or shape that a line can have. */
    private static final double LARGEST = 1e9;

    @Override
    public Optional<Double> read(Raw raw, Context context) {
        Optional<Double> value =
                raw instanceof Raw.Scalar scalar ? QuantityParser.readNumber(scalar.text()) : Optional.empty();
        if (value.isEmpty()) {
            context.wrongNumber(raw, text -> QuantityParser.readNumber(text).isPresent(), allowed());
            return Optional.empty();
        }
        if (!takes(value.get())) {
            boolean isAllowed = range.allows(value.get());
            context.error(
                    raw,
                    isAllowed
                            ? "is beyond any strip line; must be " + allowed() + ", of a sensible size"
                            : "must be " + allowed());
            return Optional.empty();
        }
        return value;
    }

    @Override
    public Optional<Double> standIn(Raw raw, StandIn standIn) {
        return Optional.of(range.standIn(standIn, 1 / LARGEST, LARGEST));
    }

    /** Whether {@code value} would be taken. */
    public boolean takes(double value) {
        return range.allows(value) && (value == 0 || isSensible(Math.abs(value)));
    }

    private static boolean isSensible(double size) {
        return size >= 1 / LARGEST && size <= LARGEST;
    }

    @Override
    public String allowed() {
        return "a number without a unit, " + range.words("", 1);
    }

    @Override
    public Optional<Numeric> number(Optional<Raw> written) {
        return Optional.of(Numeric.plain(range, false));
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode schema = schemas.type("number");
        schema.put(range.leastIncluded() ? "minimum" : "exclusiveMinimum", range.least());
        if (range.greatest() < Double.POSITIVE_INFINITY) {
            schema.put(range.greatestIncluded() ? "maximum" : "exclusiveMaximum", range.greatest());
        }
        return schema;
    }
}
