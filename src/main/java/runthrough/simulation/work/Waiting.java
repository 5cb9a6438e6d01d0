package runthrough.simulation.work;

import java.util.Arrays;

/**
 * How long the strip has stood at a joint without work on it, and what it waited for. Times in seconds.
 *
 * <p>Rules CHANGE-11, CHANGE-14.
 */
public final class Waiting {
    /** What the standing strip waits for. */
    enum For {
        NOTHING,
        /** The next coil is not prepared, or its preparation is being done again. */
        PREPARATION,
        /** There is work to do, and people lack. */
        PEOPLE
    }

    private final double[] byElement;
    private double forPreparation;
    private double forPeople;
    private For present = For.NOTHING;
    private int element;
    private double since;

    /** Waiting for a list of so many elements of preparation. */
    Waiting(int elements) {
        byElement = new double[elements];
    }

    /** The strip stands from {@code now} on: the times begin anew. */
    void begin(double now) {
        forPreparation = 0;
        forPeople = 0;
        Arrays.fill(byElement, 0);
        from(now, For.NOTHING, 0);
    }

    /** Counts what has passed until {@code now}. */
    void until(double now) {
        double passed = now - since;
        if (present == For.PREPARATION) {
            forPreparation += passed;
            byElement[element] += passed;
        } else if (present == For.PEOPLE) {
            forPeople += passed;
        }
        since = now;
    }

    /** From {@code now} on it waits for {@code what}, of preparation for the element at {@code place} of its list. */
    void from(double now, For what, int place) {
        since = now;
        present = what;
        element = place;
    }

    /** For preparation. */
    public double forPreparation() {
        return forPreparation;
    }

    /** For people. */
    public double forPeople() {
        return forPeople;
    }

    /** For preparation, by the place in its list of the element that was waited for. */
    double[] byElement() {
        return byElement;
    }
}
