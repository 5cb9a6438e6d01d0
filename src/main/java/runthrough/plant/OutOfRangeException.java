package runthrough.plant;

import java.util.List;
import java.util.stream.Collectors;

/** Numbers that a record of the description does not take: all of them, not the first alone. */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Not kept when it is serialized: the text says the same. */
    private final transient List<Fault> faults;

    /**
     * One number out of its range.
     *
     * @param part of the line whose record it is, such as "joint break"; empty for a record that may belong to any part
     * @param key by which the record calls the number, such as "chance"; the same as in a scenario file, but for its hyphens
     * @param what the value with its unit, a semicolon, and what is allowed
     * @param remedy how to mend it: a sentence
     * @param mild a value in the range, near the end that demands little of the rest of the line
     * @param harsh a value in the range, near the other end
     */
    public record Fault(String part, String key, String what, String remedy, double mild, double harsh) {
        /** The number and what is wrong with it: {@code joint break chance = 2; must be 0 or more and below 1}. */
        public String text() {
            return (part.isEmpty() ? "" : part + " ") + key + " = " + what;
        }
    }

    /** A refusal of {@code faults}, at least one. */
    OutOfRangeException(List<Fault> faults) {
        super(faults.stream().map(Fault::text).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    /** Every number that is refused, in the order of the record. */
    public List<Fault> faults() {
        return faults;
    }
}
