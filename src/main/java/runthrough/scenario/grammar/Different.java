package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import runthrough.scenario.source.Raw;

/**
 * A list in which nothing stands twice.
 *
 * @param list of what may stand in it
 */
public record Different<T>(Items<T> list) implements Shape<List<T>> {

    @Override
    public Optional<List<T>> read(Raw raw, Context context) {
        Optional<List<T>> read = list.read(raw, context);
        if (read.isPresent() && raw instanceof Raw.Sequence sequence) {
            List<T> items = read.get();
            for (int i = 0; i < items.size(); i++) {
                if (items.indexOf(items.get(i)) < i) {
                    context.item(i + 1)
                            .error(sequence.items().get(i), "must be listed once", "Leave one of the two out.");
                    return Optional.empty();
                }
            }
        }
        return read;
    }

    @Override
    public String allowed() {
        return list.allowed();
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        return list.schema(schemas);
    }

    @Override
    public List<Part> parts(Optional<Raw> written) {
        return list.parts(written);
    }

    @Override
    public List<Section> sections() {
        return list.sections();
    }
}
