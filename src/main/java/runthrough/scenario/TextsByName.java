package runthrough.scenario;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Schemas;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Shape;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.source.Raw;

/**
 * Texts under names that are the user's own.
 *
 * @param what they are, to follow "must be"
 * @param text what each may be
 */
record TextsByName(String what, Text text) implements Shape<List<Raw.Entry>> {

    @Override
    public Optional<List<Raw.Entry>> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Mapping mapping)) {
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        if (!Items.areFew(mapping, context)) {
            return Optional.empty();
        }
        Section.refuseSeconds(mapping, context);
        long good = mapping.entries().stream()
                .filter(entry ->
                        text.read(entry.value(), context.named(entry.key())).isPresent())
                .count();
        return good == mapping.entries().size() ? Optional.of(mapping.entries()) : Optional.empty();
    }

    @Override
    public String allowed() {
        return what;
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode schema = schemas.type("object");
        schema.set("additionalProperties", text.schema(schemas));
        return schema;
    }
}
