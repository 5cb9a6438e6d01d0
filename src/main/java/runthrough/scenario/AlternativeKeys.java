package runthrough.scenario;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import runthrough.plant.Alternative;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Schemas;
import runthrough.scenario.grammar.Shape;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Raw;

/** Names of alternatives, each with the values that it changes: {@code second uncoiler: {entry.uncoilers: 2}}. */
record AlternativeKeys() implements Shape<List<AlternativeKeys.Written>> {

    /** So many characters stand in a column of a table. */
    private static final int LONGEST_NAME = 30;

    /** What all alternatives have in common. */
    private static final Set<String> IN_COMMON = Set.of(
            "title",
            "notes",
            "results-in",
            "today",
            "alternatives",
            "run",
            "run.seed",
            "run.replications",
            "run.target",
            "run.target-without-stop",
            "run.hours-per-year");

    /**
     * An alternative as written.
     *
     * @param place of its name
     * @param values that it changes, by their paths
     */
    record Written(String name, Place place, Raw.Mapping values) {

        List<Setting> settings() {
            return values.entries().stream()
                    .map(entry -> new Setting(entry.key(), entry.value()))
                    .toList();
        }
    }

    @Override
    public Optional<List<Written>> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Mapping mapping)) {
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        if (!Items.areFew(mapping, context)) {
            return Optional.empty();
        }
        List<Written> read = readable(mapping, context);
        return read.size() == mapping.entries().size() ? Optional.of(read) : Optional.empty();
    }

    /** Those of {@code mapping} that can be read; {@code context} knows what is wrong with the others. */
    static List<Written> readable(Raw.Mapping mapping, Context context) {
        List<Written> read = new ArrayList<>();
        Map<String, Raw.Entry> seen = new HashMap<>();
        for (Raw.Entry entry : mapping.entries()) {
            Optional<String> wrong = wrongName(
                    entry, Optional.ofNullable(seen.putIfAbsent(entry.key().strip(), entry)));
            if (wrong.isPresent()) {
                tell(entry.place(), context.path(), entry.key(), wrong.get(), "Call it otherwise.", context);
            } else {
                values(entry, context.named(entry.key()))
                        .ifPresent(values -> read.add(new Written(entry.key().strip(), entry.place(), values)));
            }
        }
        return List.copyOf(read);
    }

    private static Optional<String> wrongName(Raw.Entry entry, Optional<Raw.Entry> earlier) {
        String name = entry.key().strip();
        if (name.isEmpty() || name.length() > LONGEST_NAME) {
            return Optional.of("the name of an alternative must have 1 to " + LONGEST_NAME + " characters");
        }
        if (name.equals(Alternative.AS_WRITTEN)) {
            return Optional.of("is what the scenario without any change is called");
        }
        return earlier.map(first -> "is the name of two alternatives, first in line "
                + first.place().line());
    }

    private static Optional<Raw.Mapping> values(Raw.Entry entry, Context context) {
        boolean isBlank =
                entry.value() instanceof Raw.Scalar scalar && scalar.text().isBlank();
        if (isBlank
                || (entry.value() instanceof Raw.Mapping given
                        && given.entries().isEmpty())) {
            tell(
                    entry.place(),
                    context.path(),
                    "",
                    "changes nothing",
                    "Give the values that it changes, such as {entry.uncoilers: 2}.",
                    context);
            return Optional.empty();
        }
        if (!(entry.value() instanceof Raw.Mapping mapping)) {
            context.wrongShape(entry.value(), "values by their paths, such as {entry.uncoilers: 2}");
            return Optional.empty();
        }
        if (!Items.areFew(mapping, context)) {
            return Optional.empty();
        }
        int before = context.problems().count();
        mapping.entries().stream()
                .filter(value -> IN_COMMON.contains(value.key().strip()))
                .forEach(value -> tell(
                        value.place(),
                        context.pathTo(value.key()),
                        value.value().shown(),
                        "is the same for all alternatives",
                        value.key().strip().equals("run")
                                ? "Name what is changed of it, such as run.coil-changes."
                                : "Change it for the scenario as a whole.",
                        context));
        return context.problems().count() == before ? Optional.of(mapping) : Optional.empty();
    }

    private static void tell(Place place, String path, String value, String rule, String remedy, Context context) {
        context.problems().error(place, path, value, rule, remedy);
    }

    @Override
    public String allowed() {
        return "names of alternatives, each with the values that it changes";
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode values = schemas.type("object").put("minProperties", 1);
        ObjectNode schema = schemas.type("object");
        schema.set("propertyNames", schemas.any().put("minLength", 1).put("maxLength", LONGEST_NAME));
        schema.set("additionalProperties", values);
        return schema;
    }
}
