package runthrough.plant;

/**
 * Something found in a description before anything runs.
 *
 * @param severity whether it is refused or warned of
 * @param path of the key concerned, as in the scenario file, such as {@code accumulator.reserve}
 * @param what is wrong, naming each value concerned with its unit
 * @param remedy how to mend it
 */
public record Finding(Severity severity, String path, String what, String remedy) {

    /** How grave a finding is. */
    public enum Severity {
        /** Refused: nothing runs. */
        ERROR,
        /** Runs, and the report says so. */
        WARNING
    }
}
