package runthrough.plant.handover;

import java.util.OptionalDouble;

/**
 * What the drive of an uncoiler can deliver, as far as given.
 *
 * @param torque at the mandrel (N m), {@code > 0}
 * @param power (W), {@code > 0}
 */
public record Drive(OptionalDouble torque, OptionalDouble power) {
    /** Nothing is known of it. */
    public static final Drive UNKNOWN = new Drive(OptionalDouble.empty(), OptionalDouble.empty());
}
