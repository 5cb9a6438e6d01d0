package runthrough.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One of the numbers that matter most.
 *
 * @param name of the number
 * @param value the number with its unit and its interval; a few are words
 * @param meaning what qualifies it; may be empty
 */
public record Figure(String name, Cell value, String meaning) {

    /** A number. */
    public static Figure of(String name, Value value, String meaning) {
        return new Figure(name, Cell.of(value), meaning);
    }

    /** A number that needs no further word. */
    public static Figure of(String name, Value value) {
        return of(name, value, "");
    }

    /** Words or a number that needs no further word. */
    public static Figure of(String name, Cell value) {
        return new Figure(name, value, "");
    }

    /** Its interval and what qualifies it, as people read them; may be empty. */
    public String note() {
        return Stream.of(value.value().flatMap(Value::range).orElse(""), meaning)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
    }
}
