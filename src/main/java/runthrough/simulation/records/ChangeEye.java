package runthrough.simulation.records;

/**
 * Sees each coil change that counts, in order, as soon as nothing can be lost to it any more. What it is shown says something else
 * once the next one is shown, so that a run may be as long as one likes; {@link ChangeRecord#of} keeps one.
 */
@FunctionalInterface
public interface ChangeEye {

    /** A coil change is over. */
    void saw(ChangeFacts change);
}
