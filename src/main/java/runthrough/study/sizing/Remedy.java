package runthrough.study.sizing;

import java.util.OptionalDouble;

/**
 * One change of a line for which no capacity is enough.
 *
 * @param what is changed
 * @param now its present value, in the unit given at {@link What}; may be infinite for "no limit"
 * @param needed the value nearest to the present one with which some capacity is enough; empty when {@code tried} does not do
 *     either
 * @param tried the furthest value that was tried
 */
public record Remedy(What what, double now, OptionalDouble needed, double tried) {

    /** What is changed. */
    public enum What {
        /** The entry's top speed (m/s). */
        ENTRY_TOP_SPEED,
        /** How much faster than the process the entry may fill (m/s). */
        FILL_RATE_LIMIT,
        /** The mean time to prepare a coil (s); every element is quicker by the same factor. */
        PREPARATION_TIME,
        /** The mean work at a joint (s), redone work included; every element is quicker by the same factor. */
        JOINT_WORK,
        /** How many uncoilers. */
        UNCOILERS,
        /** How many people. */
        CREW,
        /** The fastest rated process speed (m/s); coils with speeds of their own are slowed by the same factor. */
        PROCESS_SPEED
    }
}
