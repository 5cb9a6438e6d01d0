package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import runthrough.plant.check.StandIn;
import runthrough.scenario.source.Raw;

/**
 * What a value may be.
 *
 * @param <T> what it is read into
 */
public interface Shape<T> {

    /** Reads {@code raw}; when it gives nothing it has given {@code context} the reason. */
    Optional<T> read(Raw raw, Context context);

    /**
     * What stands in for {@code raw}, which cannot be read, so that the rest of the line can still be checked; nothing where this
     * is neither a number nor holds any.
     */
    default Optional<T> standIn(Raw raw, StandIn standIn) {
        return Optional.empty();
    }

    /** What {@code raw} says to {@code shape}; what stands in for it where it cannot be read. */
    static <U> Optional<U> readOrStandIn(Shape<U> shape, Raw raw, StandIn standIn) {
        return shape.read(raw, Context.retold()).or(() -> shape.standIn(raw, standIn));
    }

    /** What is allowed, to follow "must be": "a length of more than 0". */
    String allowed();

    /** The same for editors, as a JSON Schema. */
    ObjectNode schema(Schemas schemas);

    /** The sections within, for the listing. */
    default List<Section> sections() {
        return List.of();
    }

    /** What stands or may stand within, given what is written; nothing within a single value. */
    default List<Part> parts(Optional<Raw> written) {
        return List.of();
    }

    /** What number this is when it is a single one, given what is written; empty where it never is. */
    default Optional<Numeric> number(Optional<Raw> written) {
        return Optional.empty();
    }

    /** What an item of a list is called and what of it may be replaced; by default it has no name and is replaced whole. */
    default Part item(Raw raw) {
        return new Part(List.of(), "", this, Optional.of(raw), UnaryOperator.identity());
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
            public Optional<U> standIn(Raw raw, StandIn standIn) {
                return parent.standIn(raw, standIn).map(change);
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

            @Override
            public List<Part> parts(Optional<Raw> written) {
                return parent.parts(written);
            }

            @Override
            public Optional<Numeric> number(Optional<Raw> written) {
                return parent.number(written);
            }

            @Override
            public Part item(Raw raw) {
                return parent.item(raw);
            }
        };
    }
}
