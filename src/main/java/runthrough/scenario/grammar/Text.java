package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.stream.Collectors;
import runthrough.plant.check.StandIn;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;

/**
 * A text that is not empty, in one line whatever lines it was written in.
 *
 * @param what it is, to follow "must be": "a title"
 */
public record Text(String what) implements Shape<String> {

    public static final int LONGEST = 2000;

    @Override
    public Optional<String> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Scalar scalar) || TextFile.isBlank(scalar.text())) {
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        String text = inOneLine(scalar.text());
        if (text.length() > LONGEST) {
            context.error(raw, "must be no longer than " + LONGEST + " characters");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** {@code text} without tabs and breaks of lines, nor blanks at their ends. */
    public static String inOneLine(String text) {
        return text.replace('\t', ' ')
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** A text of no meaning: a message that names it rests on it. */
    @Override
    public Optional<String> standIn(Raw raw, StandIn standIn) {
        return Optional.of(standIn.name());
    }

    @Override
    public String allowed() {
        return what;
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        // A coil may well be called 4711, which an editor takes for a number.
        ObjectNode schema = schemas.any();
        schema.putArray("type").add("string").add("number");
        return schema;
    }
}
