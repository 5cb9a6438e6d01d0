package runthrough.scenario.grammar;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Raw;

/** A section that was read: for each key its value, where one was given. */
public final class Values {

    private final Map<String, Object> given;
    private final Raw.Mapping raw;

    Values(Map<String, Object> given, Raw.Mapping raw) {
        this.given = Map.copyOf(given);
        this.raw = raw;
    }

    /** A section in which nothing was given. */
    public static Values none() {
        return new Values(Map.of(), new Raw.Mapping(List.of(), Place.whole("")));
    }

    /** The value given for {@code key}, or its default; only for keys that have one or are required. */
    public <T> T get(Key<T> key) {
        return find(key)
                .or(key::fallbackValue)
                .orElseThrow(() -> new IllegalStateException(key.name() + " was not given"));
    }

    /** The value given for {@code key}, without its default. */
    @SuppressWarnings("unchecked") // Section puts under a key's name only what that key's shape has read.
    public <T> Optional<T> find(Key<T> key) {
        return Optional.ofNullable((T) given.get(key.name()));
    }

    /** Whether {@code key} was given. */
    public boolean has(Key<?> key) {
        return given.containsKey(key.name());
    }

    /** The section as it stands in the file. */
    public Raw.Mapping raw() {
        return raw;
    }
}
