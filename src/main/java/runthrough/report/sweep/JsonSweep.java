package runthrough.report.sweep;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;
import java.util.regex.Pattern;
import runthrough.report.JsonShape;
import runthrough.study.sweep.CaseResult;

/** JSON Lines: an object for each case; ASCII, so that no encoding of a pipe can spoil it. */
public final class JsonSweep implements SweepLines {
    /** Begins every line. */
    static final JsonShape<Part> HEAD = JsonShape.<Part>named("head")
            .count("case", "Number of the case, from 1.", part -> part.result().number())
            .count("of", "How many cases the sweep has.", part -> part.name().cases())
            .text(
                    "sweep",
                    "What the sweep is known by, the same in all its lines: made of the scenario, its tables, all cases and the"
                            + " version of the program.",
                    part -> part.name().id())
            .optionalText(
                    "error",
                    "Why the case could not be run; null where it was.",
                    part -> Optional.of(part.result().failure()).filter(why -> !why.isEmpty()))
            .textsByName(
                    "values",
                    "What the case sets, by path.",
                    part -> part.result().values());

    /** Ends it. */
    static final JsonShape<String> TAIL = JsonShape.<String>named("tail")
            .text("check", "CRC-32 of the line up to the comma before this member.", sum -> sum);

    private static final Pattern START =
            Pattern.compile("\\{\"case\":(\\d{1,9}),\"of\":(\\d{1,9}),\"sweep\":\"([0-9a-f]+)\",\"error\":(null|\").*");
    private static final Pattern END = Pattern.compile("(.*),\"check\":\"([0-9a-f]{8})\"}");

    private final SweepName name;
    private final JsonMapper mapper =
            JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    public JsonSweep(SweepName name) {
        this.name = name;
    }

    /** A case of a sweep. */
    record Part(SweepName name, CaseResult result) {}

    /** The JSON Schema of a line. */
    public static String schema() {
        return CaseDocument.schema();
    }

    @Override
    public String start() {
        return "{\"case\":";
    }

    @Override
    public Optional<String> header() {
        return Optional.empty();
    }

    @Override
    public String line(CaseResult result) {
        try {
            String whole = mapper.writeValueAsString(HEAD.fields(new Part(name, result), true)
                    .and(CaseDocument.of(name).fields(result, true))
                    .map());
            String text = whole.substring(0, whole.length() - 1);
            return text + ",\"check\":\"" + SweepLines.checkSum(text) + "\"}";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers and words are always written", e);
        }
    }

    /** What {@code line} of any sweep says of itself; empty where it is damaged. */
    static Optional<Stamp> stamp(String line) {
        return Stamp.read(line, START, END, "null");
    }

    @Override
    public Optional<Stamp> read(String line) {
        return stamp(line);
    }
}
