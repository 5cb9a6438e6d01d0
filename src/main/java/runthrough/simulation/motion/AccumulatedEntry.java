package runthrough.simulation.motion;

import runthrough.plant.Line;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.motion.EntryOutlook.Condition;

/**
 * An entry section that feeds an accumulator. It fills until the settled level reaches the capacity C; then it ramps to the
 * speed v* that the process is heading for, and is matched when both have it. What leads from one of its modes to the next
 * stands in {@link EntryTransition}; here stand the ramp of each mode, and what is watched in it. All in SI units.
 *
 * <p>Rules ENTRY-2, ENTRY-3, ENTRY-10, ENTRY-13, ENTRY-22, ACC-6, NUM-1.
 */
final class AccumulatedEntry implements EntrySection {
    /** How far (m/s) the exact end of a ramp that both have run may lie from where it took them. */
    private static final double ROUNDING = 1e-9;

    private final LineState state;
    private final StripEnd entry;
    private final StripEnd process;
    private final TailWatch tail;
    private final RunOut runOut;
    private final SettledLevel settled;
    private final EntryOutlook outlook;
    private final double fillRateLimit;
    private final double topSpeed;
    private final RampEnds rampEnds = new RampEnds();
    private final MeetsProcess meetsProcess = new MeetsProcess();
    private final BecomesFull becomesFull = new BecomesFull();
    private final ExcessIsUsed excessIsUsed = new ExcessIsUsed();

    private EntryMode mode = EntryMode.MATCHED;
    private double targetSeen;

    AccumulatedEntry(Line line, LineState state, TailWatch tail) {
        this.state = state;
        this.tail = tail;
        entry = state.entry;
        process = state.process;
        runOut = tail.runOut();
        settled = new SettledLevel(state);
        outlook = new EntryOutlook(state, settled);
        fillRateLimit = line.accumulator().fillRateLimit();
        topSpeed = line.entry().topSpeed();
    }

    @Override
    public void begin() {
        state.level = state.capacity;
        entry.hold(process.speed);
        targetSeen = state.target();
    }

    @Override
    public void release() {
        runOut.newCoil(state.remaining);
        entry.hold(0);
        targetSeen = state.target();
        take(EntryTransition.JOINT_RELEASED);
    }

    @Override
    public void runOut() {
        runOut.start(entry.speed);
        take(EntryTransition.CHANGE_STARTS);
    }

    EntryMode mode() {
        return mode;
    }

    void take(EntryTransition transition) {
        mode = transition.next(outlook);
        state.entryState = mode.traced;
    }

    @Override
    public void plan() {
        if (mode == EntryMode.MATCHED) {
            if (!keepsUp()) {
                take(EntryTransition.CANNOT_FOLLOW);
            }
        } else if (state.target() != targetSeen && EntryTransition.TARGET_CHANGES.countsIn(mode)) {
            take(EntryTransition.TARGET_CHANGES);
        }
        targetSeen = state.target();
        ramp();
        if (isAllAtTarget() && EntryTransition.ALL_AT_TARGET.countsIn(mode)) {
            if (mode == EntryMode.ARRIVING_FULL) {
                state.level = state.capacity;
            }
            take(EntryTransition.ALL_AT_TARGET);
            ramp();
        }
    }

    private boolean isAllAtTarget() {
        return entry.speed == process.speed && process.speed == state.target();
    }

    /** Whether a matched entry can go on sharing the speed of the process. */
    private boolean keepsUp() {
        if (process.acceleration == 0 && Math.abs(process.speed - entry.speed) <= ROUNDING) {
            return true;
        }
        boolean canFollow =
                outlook.holds(Condition.PROCESS_SLOWS) ? entry.down >= process.down : entry.up >= process.up;
        return canFollow && process.speed <= Math.max(entry.speed, runOut.jumpCeiling(state.remaining));
    }

    /** Sets the entry's ramp for its mode. */
    private void ramp() {
        switch (mode) {
            case FILLING -> rampTo(Math.min(fillingSpeed(), runOut.ceiling()), true);
            case ARRIVING_FULL, ARRIVING_ABOVE ->
                rampTo(Math.min(state.target(), Math.max(entry.speed, runOut.ceiling())), false);
            case HEADING_FOR_PROCESS -> headForProcess();
            case FOLLOWING, MATCHED -> entry.follow(process);
            case RUNNING_OUT -> entry.rampTo(runOut.goal());
            case HOLDING, STANDING -> entry.hold(entry.speed);
        }
    }

    /** The speed (m/s) at which it fills. */
    double fillingSpeed() {
        return Math.min(topSpeed, state.target() + fillRateLimit);
    }

    /** Ramps to {@code target}; a jump upwards stops short of what would overrun the tail, or overfill. */
    private void rampTo(double target, boolean filling) {
        double reachable = target;
        if (entry.speed < target && entry.up == Double.POSITIVE_INFINITY) {
            double jump = runOut.jumpCeiling(state.remaining);
            if (filling) {
                jump = Math.min(jump, settled.highestJump(state.capacity));
            }
            reachable = Math.max(entry.speed, Math.min(target, jump));
        }
        entry.rampTo(reachable);
    }

    private void headForProcess() {
        boolean tooFast = entry.speed > process.speed;
        double rate = tooFast ? entry.down : entry.up;
        if (rate < Double.POSITIVE_INFINITY && entry.speed != process.speed) {
            entry.rampTo(process.speed);
        } else if (tooFast || process.speed <= runOut.jumpCeiling(state.remaining)) {
            meetProcess();
            ramp();
        } else {
            rampTo(process.speed, false);
        }
    }

    private void meetProcess() {
        entry.speed = process.speed;
        take(EntryTransition.MEETS_PROCESS);
    }

    @Override
    public void offerTo(NextEvent next) {
        switch (mode) {
            case FILLING -> {
                tail.offerBeforeChange(next);
                next.offer(becomesFull);
                next.offer(rampEnds);
            }
            case ARRIVING_FULL, ARRIVING_ABOVE -> {
                tail.offerBeforeChange(next);
                next.offer(rampEnds);
            }
            case HEADING_FOR_PROCESS -> {
                tail.offerBeforeChange(next);
                next.offer(meetsProcess);
            }
            case HOLDING -> {
                tail.offerBeforeChange(next);
                next.offer(excessIsUsed);
            }
            case FOLLOWING, MATCHED -> tail.offerBeforeChange(next);
            case RUNNING_OUT -> {
                tail.offerInRunOut(next);
                next.offer(rampEnds);
            }
            case STANDING -> {}
        }
    }

    @Override
    public boolean isTailAtRest() {
        return mode == EntryMode.RUNNING_OUT && !runOut.isCreeping() && !(entry.speed > 0);
    }

    @Override
    public boolean tailHasStopped() {
        if (!isTailAtRest()) {
            return false;
        }
        take(EntryTransition.TAIL_STOPS);
        entry.acceleration = 0;
        state.remaining = 0;
        return true;
    }

    @Override
    public boolean isMatched() {
        return mode == EntryMode.MATCHED;
    }

    private final class RampEnds extends StateEvent {
        RampEnds() {
            super(EventOrder.RAMP_ENDS);
        }

        @Override
        double timeTo() {
            return entry.timeToGoal();
        }

        @Override
        void happen() {
            entry.arrive();
        }
    }

    /** v_e = v_p. */
    private final class MeetsProcess extends StateEvent {
        MeetsProcess() {
            super(EventOrder.RAMP_ENDS);
        }

        @Override
        double timeTo() {
            double closing = process.acceleration - entry.acceleration;
            double time = (entry.speed - process.speed) / closing;
            return time >= 0 ? time : Kinematics.NEVER;
        }

        @Override
        void happen() {
            meetProcess();
        }
    }

    /** X rises to C with v_e >= v*. */
    private final class BecomesFull extends StateEvent {
        BecomesFull() {
            super(EventOrder.SETTLES);
        }

        @Override
        double timeTo() {
            return settled.timeToRise(state.capacity, state.tolerance);
        }

        @Override
        void happen() {
            take(EntryTransition.REACHES_CAPACITY);
        }
    }

    /** X falls to C, the entry holding a speed below v*. */
    private final class ExcessIsUsed extends StateEvent {
        ExcessIsUsed() {
            super(EventOrder.SETTLES);
        }

        @Override
        double timeTo() {
            return settled.timeToFall(state.capacity);
        }

        @Override
        void happen() {
            take(EntryTransition.REACHES_CAPACITY);
        }
    }
}
