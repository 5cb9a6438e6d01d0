package runthrough.report.verdict;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * The verdict for machines, as JSON of the shape {@code runthrough-verdict/1}. The shape is described by the JSON Schema
 * that ships beside this class, {@code verdict-1.schema.json}.
 */
public final class JsonReport {
    private JsonReport() {}

    /** The whole document, indented by two spaces, ended by a line feed. */
    public static String render(RunThroughResult result) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        ObjectWriter writer = JsonMapper.builder()
                .build()
                .writer(new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
        try {
            return writer.writeValueAsString(VerdictMapping.document(result)) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers and words are always written", e);
        }
    }
}
