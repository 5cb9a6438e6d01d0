package runthrough.handcalc;

/**
 * How much of what there is each limit takes, see {@link Margin#load}.
 *
 * <p>Rule FORM-12.
 *
 * @param capacity strip in the accumulator
 * @param refill strip of a coil
 * @param preparation time to prepare a coil
 */
record Loads(double capacity, double refill, double preparation) {

    /** The greatest of them. */
    double greatest() {
        return Math.max(capacity, Math.max(refill, preparation));
    }

    /**
     * What keeps the line from running through, or is nearest to it. Too little strip for the work of a joint comes first,
     * since nothing else would help; then too slow a refill; then the limit with the greatest load, of equals the first.
     */
    Limit binding() {
        if (capacity > 1 || capacity >= greatest()) {
            return Limit.CAPACITY;
        }
        return refill > 1 || refill >= preparation ? Limit.REFILL : Limit.PREPARATION;
    }
}
