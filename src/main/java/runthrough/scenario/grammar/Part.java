package runthrough.scenario.grammar;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import runthrough.scenario.source.Raw;

/**
 * Something that stands, or may stand, within a value, and how the value looks with something else in its place.
 *
 * @param names by which a path may call it, the usual one first
 * @param meaning what to give, to follow "give"; empty where its name says it
 * @param shape what it may be
 * @param written what stands there; empty for nothing
 * @param fallback gives what holds when nothing stands there, in words or as it would be written; may be empty
 * @param put the whole value with another part in the place of this one; what says the same in another way is left out
 */
public record Part(
        List<String> names,
        String meaning,
        Shape<?> shape,
        Optional<Raw> written,
        Supplier<String> fallback,
        UnaryOperator<Raw> put) {

    public Part {
        names = List.copyOf(names);
    }

    /** A part of which nothing holds when nothing stands there. */
    public Part(List<String> names, String meaning, Shape<?> shape, Optional<Raw> written, UnaryOperator<Raw> put) {
        this(names, meaning, shape, written, () -> "", put);
    }

    /** What holds when nothing stands there, in words or as it would be written; may be empty. */
    public String byDefault() {
        return fallback.get();
    }

    /** The usual name. */
    public String name() {
        return names.get(0);
    }

    /** Whether a path begins with one of the names; the longest that it does, or empty. */
    Optional<String> nameAtStartOf(String path) {
        return names.stream()
                .filter(name -> path.startsWith(name)
                        && (path.length() == name.length() || ".[".indexOf(path.charAt(name.length())) >= 0))
                .max((one, other) -> Integer.compare(one.length(), other.length()));
    }

    /** This part where the value it stands in is itself put somewhere by {@code outer}. */
    Part within(UnaryOperator<Raw> outer) {
        return new Part(names, meaning, shape, written, fallback, raw -> outer.apply(put.apply(raw)));
    }
}
