package runthrough.scenario;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Schemas;

/**
 * The JSON Schema of scenario files, with which editors complete and check them. It is made from the same keys as the
 * reading; where a schema cannot say what the reader checks (sums, orders, what another file holds), it allows more.
 */
public final class ScenarioSchema {

    private ScenarioSchema() {}

    /** The schema as text, the same bytes every time. */
    public static String text() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(
                Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        try {
            return JsonMapper.builder().build().writer(printer).writeValueAsString(schema()) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of nodes can always be written", e);
        }
    }

    private static ObjectNode schema() {
        Schemas schemas = new Schemas();
        ObjectNode schema = schemas.document(ScenarioKeys.SCENARIO, "Runthrough scenario");
        ArrayNode rules = schema.withArray("allOf");
        rules.add(accumulatorRule(schemas));
        rules.add(rethreadRule(schemas));
        return schema;
    }

    /** An accumulator is described unless another practice is chosen. */
    private static ObjectNode accumulatorRule(Schemas schemas) {
        ObjectNode rule = schemas.any();
        rule.putObject("if").set("not", practice(schemas, "join without accumulator", "rethread"));
        rule.set("then", requiring(schemas, ScenarioKeys.ACCUMULATOR));
        return rule;
    }

    /** Rethreading takes a time of its own and no joiner; every other practice has an entry section that runs. */
    private static ObjectNode rethreadRule(Schemas schemas) {
        ObjectNode rule = schemas.any();
        rule.set("if", practice(schemas, "rethread"));
        rule.putObject("then")
                .putObject("properties")
                .set(ScenarioKeys.CHANGE.name(), requiring(schemas, ChangeKeys.RETHREAD));
        ObjectNode otherwise = requiring(schemas, ScenarioKeys.ENTRY);
        otherwise.putObject("properties").set(ScenarioKeys.ENTRY.name(), requiring(schemas, EntryKeys.TOP_SPEED));
        rule.set("else", otherwise);
        return rule;
    }

    private static ObjectNode practice(Schemas schemas, String... words) {
        ObjectNode rule = requiring(schemas, ScenarioKeys.PRACTICE);
        ArrayNode allowed = rule.putObject("properties")
                .putObject(ScenarioKeys.PRACTICE.name())
                .putArray("enum");
        for (String word : words) {
            allowed.add(word);
        }
        return rule;
    }

    private static ObjectNode requiring(Schemas schemas, Key<?> key) {
        ObjectNode rule = schemas.any();
        rule.putArray("required").add(key.name());
        return rule;
    }
}
