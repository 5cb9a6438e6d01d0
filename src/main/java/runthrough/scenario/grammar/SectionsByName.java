package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import runthrough.scenario.source.Raw;

/**
 * Sections of one kind under names that are the user's own.
 *
 * @param what they are, to follow "must be"
 * @param section each of them
 */
public record SectionsByName(String what, Section section) implements Shape<Map<String, Values>> {

    @Override
    public Optional<Map<String, Values>> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Mapping mapping)) {
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        Map<String, Values> read = new LinkedHashMap<>();
        if (!Items.areFew(mapping, context)) {
            return Optional.empty();
        }
        Section.refuseSeconds(mapping, context);
        for (Raw.Entry entry : mapping.entries()) {
            Context own = context.named(entry.key()).withRemedy("Give what it needs, such as " + needed() + ".");
            section.read(entry.value(), own).ifPresent(values -> read.put(entry.key(), values));
        }
        return read.size() == mapping.entries().size() ? Optional.of(read) : Optional.empty();
    }

    /** What one of them must hold, as a file has it. */
    private String needed() {
        return section.keys().stream()
                .filter(key -> key.need() == Key.Need.REQUIRED)
                .map(key -> key.name() + ": " + key.example())
                .collect(Collectors.joining(", ", "{", "}"));
    }

    @Override
    public String allowed() {
        return what;
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode schema = schemas.type("object");
        schema.set("additionalProperties", section.schema(schemas));
        return schema;
    }

    @Override
    public List<Section> sections() {
        return List.of(section);
    }
}
