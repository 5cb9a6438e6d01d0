package runthrough.cli.option;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import runthrough.scenario.source.Nearest;

/**
 * Reads a word that stands for a value, and names the words for completion in a shell.
 *
 * @param <T> what the words stand for
 */
public abstract class Choice<T> implements ITypeConverter<T>, Iterable<String> {
    private final Map<String, T> values = new LinkedHashMap<>();

    /** Adds a word. */
    public final Choice<T> or(String word, T value) {
        values.put(word, value);
        return this;
    }

    @Override
    public T convert(String word) {
        T value = values.get(word);
        if (value == null) {
            String meant = Nearest.to(word, values.keySet())
                    .map(nearest -> ". Did you mean " + nearest + "?")
                    .orElse("");
            throw new TypeConversionException(word + "; must be one of " + String.join(", ", values.keySet()) + meant);
        }
        return value;
    }

    @Override
    public Iterator<String> iterator() {
        return values.keySet().iterator();
    }
}
