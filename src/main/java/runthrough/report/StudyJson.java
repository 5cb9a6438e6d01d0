package runthrough.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import runthrough.plant.RunPlan;

/** A study's answer for machines: what all of them have in common, then what is its own. */
public final class StudyJson {
    private static final JsonShape<StudyAnswer> SCENARIO = JsonShape.<StudyAnswer>named("scenario")
            .text("title", "Title of the scenario.", answer -> answer.request().title())
            .optionalText(
                    "sha256",
                    "SHA-256 of the scenario file's bytes in hexadecimal.",
                    answer -> answer.provenance().fingerprint())
            .texts(
                    "changes",
                    "What was set otherwise than the scenario file says, in words.",
                    answer -> answer.provenance().changes())
            .optionalCount(
                    "coil_changes",
                    "Coil changes that end a replication; null when time does.",
                    answer -> coilChanges(answer.request().run()))
            .optionalNumber(
                    "duration_s",
                    "Time that ends a replication; null when coil changes do.",
                    answer -> duration(answer.request().run()))
            .count(
                    "left_out",
                    "First coil changes of each replication left out of all numbers.",
                    answer -> answer.request().run().leaveOut())
            .count(
                    "replications",
                    "Independent repetitions that the scenario asks for.",
                    answer -> answer.request().run().replications())
            .count(
                    "seed",
                    "Seed of the random numbers.",
                    answer -> answer.request().run().seed());

    private static final JsonShape<StudyAnswer> HEAD = JsonShape.<StudyAnswer>named("head")
            .text("format", "Name and version of this shape.", answer -> format(answer.study()))
            .text(
                    "program",
                    "Name and version of the program.",
                    answer -> answer.provenance().program())
            .in("scenario", "What was run.", SCENARIO, answer -> answer)
            .text("question", "The question that is answered.", StudyAnswer::question)
            .text(
                    "verdict",
                    "The answer in a word or two.",
                    answer -> answer.mark().word())
            .text(
                    "headline",
                    "The answer as a sentence, in the user's units.",
                    answer -> answer.mark().sentence())
            .texts("advice", "What else must be known, a paragraph each, in the user's units.", StudyAnswer::advice)
            .flag(
                    "left_to_chance",
                    "Whether anything is left to chance; if not, numbers are exact and have no intervals.",
                    StudyAnswer::chance);

    private static final JsonShape<StudyAnswer> TAIL = JsonShape.<StudyAnswer>named("tail")
            .texts("warnings", "What was warned of, in words.", StudyAnswer::warnings);

    private StudyJson() {}

    /** The whole document, indented by two spaces, ended by a line feed; ASCII, so that no encoding of a pipe can spoil it. */
    public static String render(StudyAnswer answer) {
        boolean chance = answer.chance();
        return text(HEAD.fields(answer, chance)
                .and(answer.document())
                .and(TAIL.fields(answer, chance))
                .map());
    }

    /** The JSON Schema (draft 7) of the answers of {@code study}, whose own members have the shape {@code own}. */
    static String schema(String study, JsonShape<?> own) {
        return schema(study, List.of(HEAD, own, TAIL));
    }

    /** The same of answers that have the members of {@code shapes} and no others. */
    static String schema(String study, List<JsonShape<?>> shapes) {
        ObjectNode schema = JsonNodeFactory.instance
                .objectNode()
                .put("$schema", "http://json-schema.org/draft-07/schema#")
                .put("title", "Answer of runthrough " + study + ", shape " + format(study))
                .put(
                        "description",
                        "Names carry SI units: _m metres, _s seconds, _kg kilograms, _m_per_s metres per second, _kg_per_s"
                                + " kilograms per second; _per_8_h is per eight hours of simulated time. Shares are from 0 to 1."
                                + " What is not known, not finite or does not apply is null.");
        Map<String, ObjectNode> definitions = new TreeMap<>();
        schema.setAll(JsonShape.schema(shapes, definitions));
        ((ObjectNode) schema.at("/properties/format")).put("const", format(study));
        ObjectNode shared = schema.putObject("definitions");
        definitions.forEach(shared::set);
        return text(schema);
    }

    static String format(String study) {
        return "runthrough-" + study + "/1";
    }

    private static Optional<Long> coilChanges(RunPlan run) {
        return run.extent() instanceof RunPlan.Extent.Changes changes
                ? Optional.of((long) changes.changes())
                : Optional.empty();
    }

    private static OptionalDouble duration(RunPlan run) {
        return run.extent() instanceof RunPlan.Extent.Time time
                ? OptionalDouble.of(time.duration())
                : OptionalDouble.empty();
    }

    static String text(Object document) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try {
            return JsonMapper.builder()
                            .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
                            .build()
                            .writer(new DefaultPrettyPrinter()
                                    .withObjectIndenter(indenter)
                                    .withArrayIndenter(indenter))
                            .writeValueAsString(document)
                    + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers and words are always written", e);
        }
    }
}
