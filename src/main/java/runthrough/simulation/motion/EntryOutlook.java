package runthrough.simulation.motion;

/** The conditions by which an entry section that feeds an accumulator chooses what to do. Levels within rounding are equal. */
final class EntryOutlook {
    private final LineState state;
    private final SettledLevel settled;

    EntryOutlook(LineState state, SettledLevel settled) {
        this.state = state;
        this.settled = settled;
    }

    /** X < C. */
    boolean settlesBelow() {
        return !(settled.now() >= state.capacity - state.tolerance);
    }

    /** X > C. */
    boolean settlesAbove() {
        return !(settled.now() <= state.capacity + state.tolerance);
    }

    /** X = C with v_e >= v*. */
    boolean slowsToFull() {
        return isNoSlowerThanTarget() && Math.abs(settled.now() - state.capacity) <= state.tolerance;
    }

    /** x >= C. */
    boolean isFull() {
        return state.level >= state.capacity - state.tolerance;
    }

    /** x > C. */
    boolean isAboveCapacity() {
        return state.level > state.capacity + state.tolerance;
    }

    /** x > C and X < C. */
    boolean isAboveAndSettlesBelow() {
        return isAboveCapacity() && settlesBelow();
    }

    /** v_e >= v*. */
    boolean isNoSlowerThanTarget() {
        return state.entry.speed >= state.target();
    }

    /** v_e = v_p. */
    boolean hasProcessSpeed() {
        return state.entry.speed == state.process.speed;
    }

    /** v_e = v_p and a_e >= a_p. */
    boolean canFollowUpwards() {
        return hasProcessSpeed() && state.entry.up >= state.process.up;
    }

    /** v* < v_e. */
    boolean processSlows() {
        return state.target() < state.entry.speed;
    }
}
