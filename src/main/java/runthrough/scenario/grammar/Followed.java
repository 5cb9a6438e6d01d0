package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import runthrough.scenario.source.Raw;

/**
 * A shape that a path is followed into by other rules than it is read by, because it is read together with another part of
 * the file.
 *
 * @param shape by which it is read
 * @param inside what a path finds in it
 */
public record Followed<T>(Shape<T> shape, Section inside) implements Shape<T> {

    @Override
    public Optional<T> read(Raw raw, Context context) {
        return shape.read(raw, context);
    }

    @Override
    public String allowed() {
        return shape.allowed();
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        return shape.schema(schemas);
    }

    @Override
    public List<Section> sections() {
        return shape.sections();
    }

    @Override
    public List<Part> parts(Optional<Raw> written) {
        return inside.parts(written);
    }

    @Override
    public Part item(Raw raw) {
        Part item = shape.item(raw);
        return new Part(item.names(), item.meaning(), this, item.written(), item.fallback(), item.put());
    }
}
