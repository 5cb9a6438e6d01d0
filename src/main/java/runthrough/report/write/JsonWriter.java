package runthrough.report.write;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.JsonShape;

/** An answer for machines: what all of them have in common, then what is its own. */
public final class JsonWriter {
    private static final JsonShape<Answer> HEAD = JsonShape.<Answer>named("head")
            .text(
                    "format",
                    "Name and version of this shape.",
                    answer -> answer.question().format().name())
            .text(
                    "program",
                    "Name and version of the program.",
                    answer -> answer.provenance().program());

    private static final JsonShape<Answer> WORDS = JsonShape.<Answer>named("words")
            .text(
                    "question",
                    "The question that is answered.",
                    answer -> answer.question().text())
            .text(
                    "verdict",
                    "The answer in a word or two.",
                    answer -> answer.headline().word())
            .text(
                    "headline",
                    "The answer as a sentence, in the user's units.",
                    answer -> answer.headline().alone())
            .texts("advice", "What else must be known, a paragraph each, in the user's units.", Answer::advice)
            .flag(
                    "random",
                    "Whether anything is random; if not, numbers are exact and have no intervals.",
                    answer -> answer.question().random());

    private static final JsonShape<Answer> TAIL =
            JsonShape.<Answer>named("tail").texts("warnings", "What was warned of, in words.", Answer::warnings);

    private JsonWriter() {}

    /** The whole document, indented by two spaces, ended by a line feed; ASCII, so that no encoding of a pipe can spoil it. */
    public static String render(Answer answer) {
        return text(HEAD.fields(answer, true)
                .and(answer.question().subject().members())
                .and(WORDS.fields(answer, true))
                .and(answer.members().get())
                .and(TAIL.fields(answer, true))
                .map());
    }

    /** The JSON Schema (draft 7) of answers of {@code format}. */
    public static String schema(AnswerFormat format) {
        ObjectNode schema = JsonNodeFactory.instance
                .objectNode()
                .put("$schema", "http://json-schema.org/draft-07/schema#")
                .put("title", "Answer of runthrough " + format.study() + ", shape " + format.name())
                .put(
                        "description",
                        "Names carry SI units: _m metres, _s seconds, _kg kilograms, _m_per_s metres per second, _kg_per_s"
                                + " kilograms per second; _per_8_h is per eight hours of simulated time. Shares are from 0 to 1."
                                + " What is not known, not finite or does not apply is null.");
        Map<String, ObjectNode> definitions = new TreeMap<>();
        schema.setAll(JsonShape.schema(
                List.of(HEAD, format.subject(), WORDS, format.own().get(), TAIL), definitions));
        ((ObjectNode) schema.at("/properties/format")).put("const", format.name());
        ObjectNode shared = schema.putObject("definitions");
        definitions.forEach(shared::set);
        return text(schema);
    }

    /** {@code document} as text, indented, ended by a line feed. */
    public static String text(Object document) {
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
