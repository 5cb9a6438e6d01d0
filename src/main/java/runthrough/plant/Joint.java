package runthrough.plant;

import java.util.Set;

/**
 * What the work of a coil change depends on of its two coils.
 *
 * @param width of the wider strip (m), {@code > 0}
 * @param thickness of the thicker strip (m), {@code > 0}
 * @param differences between the two coils
 */
public record Joint(double width, double thickness, Set<CoilDifference> differences) {

    /** The joint at which {@code ending} ends and {@code beginning} begins. */
    public static Joint between(Coil ending, Coil beginning) {
        return new Joint(
                Math.max(ending.width(), beginning.width()),
                Math.max(ending.thickness(), beginning.thickness()),
                CoilDifference.between(ending, beginning));
    }

    /** A joint of a strip to its like. */
    public static Joint alike(double width, double thickness) {
        return new Joint(width, thickness, Set.of());
    }
}
