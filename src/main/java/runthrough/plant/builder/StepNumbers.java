package runthrough.plant.builder;

import java.util.List;
import runthrough.plant.OutOfRangeException.Fault;
import runthrough.plant.check.StandIn;

/**
 * The numbers of one step, as a record takes them: those that it refused are stood in for.
 *
 * @param refused the numbers that the record does not take; none at the first try
 * @param standIn which of the two stands in for them
 */
record StepNumbers(List<Fault> refused, StandIn standIn) {
    static final StepNumbers AS_GIVEN = new StepNumbers(List.of(), StandIn.MILD);

    /** Whether nothing is refused. */
    boolean areAsGiven() {
        return refused.isEmpty();
    }

    /** The number that the record calls {@code key}. */
    double of(String key, double given) {
        return refused.stream()
                .filter(fault -> fault.key().equals(key))
                .mapToDouble(fault -> standIn == StandIn.MILD ? fault.mild() : fault.harsh())
                .findFirst()
                .orElse(given);
    }

    /** The same of a whole number. */
    int of(String key, int given) {
        return (int) of(key, (double) given);
    }
}
