package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import runthrough.scenario.source.Raw;

/**
 * What a value may be.
 *
 * @param <T> what it is read into
 */
public interface Shape<T> {

    /** Reads {@code raw}; when it gives nothing it has told {@code context} why. */
    Optional<T> read(Raw raw, Context context);

    /** What is allowed, to follow "must be": "a length of more than 0". */
    String allowed();

    /** The same for editors, as a JSON Schema. */
    ObjectNode schema(Schemas schemas);

    /** The sections within, for the listing. */
    default List<Section> sections() {
        return List.of();
    }

    /** The same text read into something else. */
    default <U> Shape<U> map(Function<T, U> change) {
        Shape<T> parent = this;
        return new Shape<>() {
            @Override
            public Optional<U> read(Raw raw, Context context) {
                return parent.read(raw, context).map(change);
            }

            @Override
            public String allowed() {
                return parent.allowed();
            }

            @Override
            public ObjectNode schema(Schemas schemas) {
                return parent.schema(schemas);
            }

            @Override
            public List<Section> sections() {
                return parent.sections();
            }
        };
    }
}
