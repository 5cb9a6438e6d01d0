package runthrough.plant.check;

/**
 * Something found in a description before anything runs.
 *
 * @param severity whether it is refused or warned of
 * @param path of the key concerned, as in the scenario file, such as {@code accumulator.reserve}
 * @param what the value given with its unit, a semicolon, and what is allowed or expected, with the value it is held
 *     against: {@code 30 m; must be at most the capacity, 24 m}
 * @param remedy how to mend it: one or more sentences
 */
public record Message(Severity severity, String path, String what, String remedy) {

    /** How grave a message is. */
    public enum Severity {
        /** Refused: nothing runs. */
        ERROR,
        /** Runs, and the report says so. */
        WARNING
    }

    /** Whether nothing may run before this is mended. */
    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** The whole message but for the place in the file: {@code path = value; what is allowed. How to mend it.} */
    public String text() {
        return path + " = " + what + ". " + remedy;
    }
}
