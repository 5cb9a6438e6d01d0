package runthrough.simulation.account;

/** A level that is passed outwards now and then: upwards when overfull, downwards when the strip breaks. */
final class LevelBound {
    private final double bound;
    /** 1 when beyond is above, -1 when it is below. */
    private final double side;

    private boolean isBeyond;

    private LevelBound(double bound, double side) {
        this.bound = bound;
        this.side = side;
    }

    /** Passed by levels above {@code bound} (m). */
    static LevelBound above(double bound) {
        return new LevelBound(bound, 1);
    }

    /** Passed by levels below {@code bound} (m). */
    static LevelBound below(double bound) {
        return new LevelBound(bound, -1);
    }

    /**
     * Whether the level has just passed it outwards: from within, or having come back within between two events.
     *
     * @param lowest level since the last time (m)
     * @param highest level since then (m)
     * @param last level now (m)
     */
    boolean isPassed(double lowest, double highest, double last) {
        double furthest = side > 0 ? highest : lowest;
        if (side * (furthest - bound) <= 0) {
            isBeyond = false;
            return false;
        }
        double nearest = side > 0 ? lowest : highest;
        boolean wasBeyond = isBeyond;
        isBeyond = side * (last - bound) > 0;
        return !wasBeyond || (side * (nearest - bound) <= 0 && isBeyond);
    }
}
