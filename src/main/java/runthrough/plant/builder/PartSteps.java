package runthrough.plant.builder;

/**
 * What each part of a description has: the refusals of the whole, and the builder to go on with.
 *
 * @param <B> the builder
 */
abstract class PartSteps<B> {
    static final double AT_ONCE = Double.POSITIVE_INFINITY;

    /** What is refused, of all parts. */
    final Refusals refusals = new Refusals();

    /** The builder itself, which every step returns. */
    abstract B self();
}
