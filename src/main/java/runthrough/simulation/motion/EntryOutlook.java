package runthrough.simulation.motion;

/** How the line stands, for an entry section that feeds an accumulator and chooses what to do. Levels within rounding are equal. */
final class EntryOutlook {
    private final LineState state;
    private final SettledLevel settled;

    EntryOutlook(LineState state, SettledLevel settled) {
        this.state = state;
        this.settled = settled;
    }

    /** What the entry chooses by: level x, settled level X, capacity C, speeds v_e and v_p, the speed v* that the process heads for. */
    enum Condition {
        /** X < C. */
        SETTLES_BELOW,
        /** X > C. */
        SETTLES_ABOVE,
        /** X = C with v_e >= v*. */
        SLOWS_TO_FULL,
        /** x >= C. */
        IS_FULL,
        /** x > C. */
        IS_ABOVE_CAPACITY,
        /** x > C and X < C. */
        IS_ABOVE_AND_SETTLES_BELOW,
        /** v_e >= v*. */
        IS_NO_SLOWER_THAN_TARGET,
        /** v_e = v_p. */
        HAS_PROCESS_SPEED,
        /** v_e = v_p and a_e >= a_p. */
        CAN_FOLLOW_UPWARDS,
        /** v* < v_e. */
        PROCESS_SLOWS,
        /** In all other cases. */
        OTHERWISE
    }

    boolean holds(Condition condition) {
        return switch (condition) {
            case SETTLES_BELOW -> settlesBelow();
            case SETTLES_ABOVE -> !(settled.now() <= state.capacity + state.tolerance);
            case SLOWS_TO_FULL -> isNoSlowerThanTarget() && Math.abs(settled.now() - state.capacity) <= state.tolerance;
            case IS_FULL -> state.level >= state.capacity - state.tolerance;
            case IS_ABOVE_CAPACITY -> isAboveCapacity();
            case IS_ABOVE_AND_SETTLES_BELOW -> isAboveCapacity() && settlesBelow();
            case IS_NO_SLOWER_THAN_TARGET -> isNoSlowerThanTarget();
            case HAS_PROCESS_SPEED -> hasProcessSpeed();
            case CAN_FOLLOW_UPWARDS -> hasProcessSpeed() && state.entry.up >= state.process.up;
            case PROCESS_SLOWS -> state.target() < state.entry.speed;
            case OTHERWISE -> true;
        };
    }

    private boolean settlesBelow() {
        return !(settled.now() >= state.capacity - state.tolerance);
    }

    private boolean isAboveCapacity() {
        return state.level > state.capacity + state.tolerance;
    }

    private boolean isNoSlowerThanTarget() {
        return state.entry.speed >= state.target();
    }

    private boolean hasProcessSpeed() {
        return state.entry.speed == state.process.speed;
    }
}
