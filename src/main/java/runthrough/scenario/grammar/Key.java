package runthrough.scenario.grammar;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * A key of a section.
 *
 * @param name as it is written
 * @param meaning what to give, to follow "give": "the carriage travel between its end positions"; what
 *     stands behind a semicolon explains
 * @param shape what its value may be
 * @param need whether it must be given
 * @param example a value as a user would write it; may be empty
 * @param byDefault in words, what holds when it is not given; empty when nothing does
 * @param fallback the value when it is not given
 */
public record Key<T>(
        String name,
        String meaning,
        Shape<T> shape,
        Need need,
        String example,
        String byDefault,
        @Nullable T fallback) {

    /** Whether a key must be given. */
    public enum Need {
        REQUIRED,
        OPTIONAL,
        /** Required for some practices only, which the reader of the whole file decides. */
        DEPENDS
    }

    /** A key that must be given. */
    public static <T> Key<T> required(String name, String meaning, Shape<T> shape, String example) {
        return new Key<>(name, meaning, shape, Need.REQUIRED, example, "", null);
    }

    /** A key that may be given. */
    public static <T> Key<T> optional(String name, String meaning, Shape<T> shape, String example) {
        return new Key<>(name, meaning, shape, Need.OPTIONAL, example, "", null);
    }

    /** This key, required or not as the rest of the file decides; {@code when} says when. */
    public Key<T> depending(String when) {
        return new Key<>(name, meaning, shape, Need.DEPENDS, example, when, null);
    }

    /** This key with the default {@code text}, which is read like any other value. */
    public Key<T> orElse(String text) {
        Problems problems = new Problems();
        Raw raw = new Raw.Scalar(text, Place.whole("default"));
        T value = shape.read(raw, Context.top(problems).at(this))
                .orElseThrow(
                        () -> new IllegalArgumentException(problems.errors().toString()));
        return orElse(text, value);
    }

    /** This key with a default that is described in words. */
    public Key<T> orElse(String words, T value) {
        return new Key<>(name, meaning, shape, Need.OPTIONAL, example, words, value);
    }

    /** This key with a default that is described in words and lies elsewhere. */
    public Key<T> withDefaultWords(String words) {
        return new Key<>(name, meaning, shape, Need.OPTIONAL, example, words, null);
    }

    /** This key where another part of the file may give what it does not. */
    public Key<T> madeOptional() {
        return new Key<>(name, meaning, shape, Need.OPTIONAL, example, byDefault, fallback);
    }

    /** This key where it is not known here what holds when it is not given. */
    public Key<T> withoutDefault() {
        return new Key<>(name, meaning, shape, Need.OPTIONAL, example, "", null);
    }

    /** The value when it is not given. */
    public Optional<T> fallbackValue() {
        return Optional.ofNullable(fallback);
    }

    /** How to mend a wrong or missing value. */
    public String remedy() {
        String briefly = meaning.split(";", 2)[0];
        return "Give " + briefly + (example.isEmpty() ? "" : ", such as " + example) + ".";
    }
}
