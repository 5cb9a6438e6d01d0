package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Distribution;
import runthrough.plant.check.StandIn;
import runthrough.quantity.Dimension;
import runthrough.scenario.source.Raw;

/**
 * A quantity that is fixed ({@code 90 s}) or random ({@code {triangular: [60 s, 90 s, 240 s]}}).
 *
 * @param dimension what it measures
 * @param range which values are allowed
 */
public record DistributionShape(Dimension dimension, Range range) implements Shape<Distribution> {

    @Override
    public Optional<Distribution> read(Raw raw, Context context) {
        if (raw instanceof Raw.Scalar) {
            return new Amount(dimension, range).read(raw, context).map(Distribution::constant);
        }
        if (!(raw instanceof Raw.Mapping)) {
            if (raw instanceof Raw.Sequence list && !list.items().isEmpty()) {
                int before = context.problems().count();
                list.items().forEach(item -> new Amount(dimension, range).read(item, context));
                if (context.problems().count() == before) {
                    context.error(raw, "must be " + allowed(), "Say what the values are: " + kindOf(list));
                }
            } else {
                context.wrongShape(raw, allowed());
            }
            return Optional.empty();
        }
        DistributionKeys keys = DistributionKeys.of(dimension, range);
        return keys.section().read(raw, context).flatMap(keys::distribution);
    }

    /** One that is fixed and small, and one that is random and nowhere near. */
    @Override
    public Optional<Distribution> standIn(Raw raw, StandIn standIn) {
        return Optional.of(standIn.spread(new Amount(dimension, range).standIn(standIn)));
    }

    private static String kindOf(Raw.Sequence list) {
        String observed = "{observed: " + list.text() + "} for measured values, all equally likely";
        return switch (list.items().size()) {
            case 2 -> "{uniform: " + list.text() + "} for the least and the greatest, or " + observed + ".";
            case 3 ->
                "{triangular: " + list.text() + "} for the least, the most likely and the greatest, or " + observed
                        + ".";
            default -> observed + ".";
        };
    }

    @Override
    public String allowed() {
        return new Amount(dimension, range).allowed() + ", or a random one";
    }

    @Override
    public Optional<Numeric> number(Optional<Raw> written) {
        return Optional.of(Numeric.of(dimension, range));
    }

    /** The numbers of the distribution; a single value stands for one that is always the same. */
    @Override
    public List<Part> parts(Optional<Raw> written) {
        DistributionKeys keys = DistributionKeys.of(dimension, range);
        return keys.section().parts(written.map(keys::asMapping));
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode fixed = new Amount(dimension, range).schema(schemas);
        ObjectNode random = schemas.shared(
                "random-" + dimension.label(),
                () -> schemas.section(DistributionKeys.of(dimension, range).section()));
        return schemas.anyOf(fixed, random);
    }

    /** How a random quantity is written, for the listing. */
    public static List<Section> listed() {
        return List.of(DistributionKeys.of(Dimension.TIME, Range.NOT_NEGATIVE).section());
    }
}
