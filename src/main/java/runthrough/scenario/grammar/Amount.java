package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import runthrough.plant.check.StandIn;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;
import runthrough.quantity.Unit;
import runthrough.scenario.source.Raw;

/**
 * A number with its unit, read into SI.
 *
 * @param dimension what it measures
 * @param range which values are allowed
 */
public record Amount(Dimension dimension, Range range) implements Shape<Double> {

    /** Smaller ones (SI) are slips of the exponent, and would only be divided by. */
    private static final double SMALLEST = 1e-9;

    /** More than 0. */
    public static Amount positive(Dimension dimension) {
        return new Amount(dimension, Range.POSITIVE);
    }

    /** 0 or more. */
    public static Amount notNegative(Dimension dimension) {
        return new Amount(dimension, Range.NOT_NEGATIVE);
    }

    @Override
    public Optional<Double> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Scalar scalar) || scalar.text().isBlank()) {
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        Reading reading = QuantityParser.read(scalar.text(), dimension);
        if (reading instanceof Reading.Unreadable unreadable) {
            context.error(raw, unreadable.rule(), unreadable.remedy());
            return Optional.empty();
        }
        Quantity quantity = (Quantity) reading;
        double si = quantity.si();
        if (!range.allows(si)) {
            context.error(
                    raw,
                    "must be "
                            + range.words(
                                    quantity.unit().symbol(), quantity.unit().fromSi(1)));
            return Optional.empty();
        }
        if (!isSensible(si)) {
            context.error(raw, "is beyond any strip line; must be " + allowed() + " of a sensible size");
            return Optional.empty();
        }
        return Optional.of(si);
    }

    @Override
    public Optional<Double> standIn(Raw raw, StandIn standIn) {
        return Optional.of(standIn(standIn));
    }

    /** What stands in for a number. What cannot change its speed fast demands much of the rest of the line. */
    double standIn(StandIn standIn) {
        StandIn end = dimension == Dimension.ACCELERATION ? standIn.other() : standIn;
        return range.standIn(end, SMALLEST, Range.largest(dimension));
    }

    /** Whether {@code si} would be taken, in the SI unit. */
    public boolean takes(double si) {
        return range.allows(si) && isSensible(si);
    }

    private boolean isSensible(double si) {
        return si == 0 || (Math.abs(si) >= SMALLEST && Math.abs(si) <= Range.largest(dimension));
    }

    @Override
    public String allowed() {
        String limits = dimension == Dimension.SHARE
                ? range.words("%", 100)
                : isBounded() || range.least() != 0
                        ? range.words(bounds().symbol(), bounds().fromSi(1))
                        : range.words("", 1);
        String article = dimension == Dimension.ACCELERATION ? "an " : "a ";
        return article + dimension.label() + " with its unit, " + limits;
    }

    private boolean isBounded() {
        return range.greatest() < Double.POSITIVE_INFINITY;
    }

    /** The unit of the bounds: hours for times as long. */
    private Unit bounds() {
        return dimension == Dimension.TIME && isBounded() && Unit.HOUR.fromSi(range.greatest()) >= 1
                ? Unit.HOUR
                : dimension.base();
    }

    @Override
    public Optional<Numeric> number(Optional<Raw> written) {
        return Optional.of(Numeric.of(dimension, range));
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        return schemas.quantity(dimension, range.least() < 0);
    }
}
