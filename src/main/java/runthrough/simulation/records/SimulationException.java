package runthrough.simulation.records;

import java.util.Optional;
import runthrough.quantity.Numbers;

/** A run that cannot go on: a coil shorter than its crops, a drawn time below zero, no progress. Says which and when. */
public final class SimulationException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private static final int DIGITS = 6;

    /** Path of the part that is to be mended, such as {@code process.restart.level}; empty where none is. */
    private final String part;

    /** To six digits: what an error message says of {@code value}. */
    public static String text(double value) {
        return Double.isFinite(value) ? Numbers.text(value, DIGITS) : String.valueOf(value);
    }

    /** An error with a message for the user. */
    public SimulationException(String message) {
        this(message, "");
    }

    /** The same, with the path of the part of the line that is to be mended; empty for none. */
    public SimulationException(String message, String part) {
        super(message);
        this.part = part;
    }

    /** The part of the line that is to be mended, by its path, where it is known. */
    public Optional<String> part() {
        return part.isEmpty() ? Optional.empty() : Optional.of(part);
    }
}
