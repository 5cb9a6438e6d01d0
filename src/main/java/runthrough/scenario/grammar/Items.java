package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.scenario.source.Raw;

/**
 * A list.
 *
 * @param of what each item may be
 * @param what the items are, to follow "a list of"
 * @param least how many at least
 * @param mayBeSingle whether a single item may stand without its list
 */
public record Items<T>(Shape<T> of, String what, int least, boolean mayBeSingle) implements Shape<List<T>> {

    @Override
    public Optional<List<T>> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Sequence sequence)) {
            if (mayBeSingle) {
                return of.read(raw, context).map(List::of);
            }
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        if (sequence.items().size() < least) {
            context.error(raw, "must be " + allowed());
            return Optional.empty();
        }
        List<T> read = new ArrayList<>();
        for (int i = 0; i < sequence.items().size(); i++) {
            of.read(sequence.items().get(i), context.item(i + 1)).ifPresent(read::add);
        }
        return read.size() == sequence.items().size() ? Optional.of(List.copyOf(read)) : Optional.empty();
    }

    @Override
    public String allowed() {
        return "a list of " + what + (least > 0 ? ", at least " + least : "");
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode list = schemas.type("array");
        list.set("items", of.schema(schemas));
        if (least > 0) {
            list.put("minItems", least);
        }
        return mayBeSingle ? schemas.anyOf(of.schema(schemas), list) : list;
    }

    @Override
    public List<Section> sections() {
        return of.sections();
    }
}
