package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.plant.check.StandIn;
import runthrough.scenario.source.Raw;

/**
 * The fixed number of values that describe a distribution.
 *
 * @param names by which a path calls each, in order
 * @param each what each may be, in order
 * @param rule between them
 * @param distribution made of them
 */
record Arguments(
        List<String> names, List<Shape<Double>> each, Rule rule, Function<List<Double>, Distribution> distribution)
        implements Shape<Distribution> {

    /** The rule between the values. */
    enum Rule {
        NONE,
        /** None is smaller than the one before. */
        RISING
    }

    @Override
    public Optional<Distribution> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Sequence sequence) || sequence.items().size() != each.size()) {
            context.error(raw, "must be " + allowed());
            return Optional.empty();
        }
        List<Double> read = new ArrayList<>();
        for (int i = 0; i < each.size(); i++) {
            each.get(i).read(sequence.items().get(i), context.item(i + 1)).ifPresent(read::add);
        }
        if (read.size() < each.size()) {
            return Optional.empty();
        }
        for (int i = 1; rule == Rule.RISING && i < read.size(); i++) {
            if (read.get(i) < read.get(i - 1)) {
                Raw.Scalar before = (Raw.Scalar) sequence.items().get(i - 1);
                context.item(i + 1).error(sequence.items().get(i), "must be at least the one before, " + before.text());
                return Optional.empty();
            }
        }
        return Optional.of(distribution.apply(read));
    }

    /** One that is fixed or random, whatever the values; the last is a quantity of the distribution's own dimension. */
    @Override
    public Optional<Distribution> standIn(Raw raw, StandIn standIn) {
        return each.get(each.size() - 1).standIn(raw, standIn).map(standIn::spread);
    }

    @Override
    public List<Part> parts(Optional<Raw> written) {
        return written.filter(
                        raw -> raw instanceof Raw.Sequence list && list.items().size() == each.size())
                .map(raw -> (Raw.Sequence) raw)
                .map(list -> IntStream.range(0, each.size())
                        .mapToObj(i -> part(list, i))
                        .toList())
                .orElse(List.of());
    }

    private Part part(Raw.Sequence list, int index) {
        return new Part(
                List.of(names.get(index), "[" + (index + 1) + "]"),
                "",
                each.get(index),
                Optional.of(list.items().get(index)),
                raw -> list.with(index, raw));
    }

    @Override
    public String allowed() {
        return "a list of " + each.size() + " values in brackets";
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode schema = schemas.type("array");
        ArrayNode items = schema.putArray("items");
        each.forEach(shape -> items.add(shape.schema(schemas)));
        return schema.put("minItems", each.size()).put("maxItems", each.size());
    }
}
