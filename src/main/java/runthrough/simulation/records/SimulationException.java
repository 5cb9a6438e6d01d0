package runthrough.simulation.records;

/** A run that cannot go on: a coil shorter than its crops, a drawn time below zero, no progress. Says which and when. */
public final class SimulationException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** An error with a message for the user. */
    public SimulationException(String message) {
        super(message);
    }
}
