package runthrough.simulation.records;

/**
 * Sees each coil change that counts, in order, as soon as nothing can be lost to it any more. What it does not keep is forgotten, so
 * that a run may be as long as one likes.
 */
@FunctionalInterface
public interface ChangeEye {

    /** A coil change is over. */
    void saw(ChangeRecord change);
}
