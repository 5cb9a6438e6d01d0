package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import runthrough.scenario.source.Raw;

/**
 * A section whose keys are read later, when it is known what they default to.
 *
 * @param section what may stand in it
 */
public record Deferred(Section section) implements Shape<Raw.Mapping> {

    @Override
    public Optional<Raw.Mapping> read(Raw raw, Context context) {
        if (raw instanceof Raw.Mapping mapping) {
            return Optional.of(mapping);
        }
        context.wrongShape(raw, allowed());
        return Optional.empty();
    }

    @Override
    public String allowed() {
        return section.allowed();
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        return schemas.section(section);
    }

    @Override
    public List<Part> parts(Optional<Raw> written) {
        return section.parts(written);
    }

    /** An item may be called by the name that it gives itself. */
    @Override
    public Part item(Raw raw) {
        return new Part(section.item(raw).names(), "", this, Optional.of(raw), UnaryOperator.identity());
    }

    @Override
    public List<Section> sections() {
        return List.of(section);
    }
}
