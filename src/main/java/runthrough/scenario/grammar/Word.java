package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Raw;

/** One of a few words, each with what it stands for. */
public final class Word<T> implements Shape<T> {

    private final Map<String, T> words;

    private Word(Map<String, T> words) {
        this.words = words;
    }

    /** A choice that has no words yet. */
    public static <T> Word<T> choice() {
        return new Word<>(new LinkedHashMap<>());
    }

    /** Yes or no. */
    public static Word<Boolean> yesOrNo() {
        return Word.<Boolean>choice()
                .or("yes", true)
                .or("no", false)
                .or("true", true)
                .or("false", false);
    }

    /** This choice with one more word. */
    public Word<T> or(String word, T meaning) {
        Map<String, T> more = new LinkedHashMap<>(words);
        more.put(word, meaning);
        return new Word<>(more);
    }

    @Override
    public Optional<T> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Scalar scalar) || scalar.text().isBlank()) {
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        T meaning = words.get(scalar.text().strip());
        if (meaning == null) {
            String hint = Nearest.to(scalar.text(), words.keySet())
                    .map(nearest -> "Did you mean " + nearest + "?")
                    .orElse(context.remedy());
            context.error(raw, "must be " + allowed(), hint);
        }
        return Optional.ofNullable(meaning);
    }

    @Override
    public String allowed() {
        return "one of: " + String.join(", ", words.keySet());
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode schema = schemas.any();
        ArrayNode allowed = schema.putArray("enum");
        for (String word : words.keySet()) {
            // The YAML of editors reads a bare true or false as what it is, not as a word.
            if (word.equals("true") || word.equals("false")) {
                allowed.add(Boolean.parseBoolean(word));
            } else {
                allowed.add(word);
            }
        }
        return schema;
    }
}
