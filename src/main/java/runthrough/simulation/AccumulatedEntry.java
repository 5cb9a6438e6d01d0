package runthrough.simulation;

import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.simulation.Trace.EntryState;

/**
 * An entry section that feeds an accumulator.
 *
 * <p>It fills until the <em>settled level</em> reaches the capacity C: the level at which strip would come to rest if the
 * entry now ramped to the speed v* that the process is heading for. Then it ramps to v* and is matched when both have it.
 * All in SI units. A long file, because each mode of the entry hands over to the next and they are read together.
 */
final class AccumulatedEntry implements EntrySection {

    private enum Mode {
        /** Ramps to, and holds, the greatest speed allowed. */
        FILLING,
        /** Ramps to v* and holds it until the process has it too. */
        SETTLING,
        /** Full, with the process speeding up: ramps to the process's present speed, to follow it from there. */
        HEADING_FOR_PROCESS,
        /** Has the process's speed and shares its ramp; not matched before both have v*. */
        FOLLOWING,
        /** Above capacity and slower than v*: holds its speed until the excess is used up. */
        HOLDING,
        MATCHED,
        RUNNING_OUT,
        STANDING
    }

    /** How far (m/s) the exact end of a ramp that both have run may lie from where it took them. */
    private static final double ROUNDING = 1e-9;

    private final LineState strip;
    private final ProcessControl process;
    private final RunOut tail;
    private final SettledLevel settled;
    private final double capacity;
    private final double tolerance;
    private final double fillRateLimit;
    private final double topSpeed;
    private final double up;
    private final double down;
    private final double processUp;
    private final double processDown;

    private Mode mode = Mode.MATCHED;
    private double goal;
    private double headingSeen;
    private boolean arrivesFull;

    AccumulatedEntry(Line line, LineState strip, ProcessControl process, RunOut tail, double tolerance) {
        this.strip = strip;
        this.process = process;
        this.tail = tail;
        settled = new SettledLevel(line, strip, process);
        this.tolerance = tolerance;
        Entry entry = line.entry();
        capacity = line.accumulator().capacity();
        fillRateLimit = line.accumulator().fillRateLimit();
        topSpeed = entry.topSpeed();
        up = entry.acceleration();
        down = entry.deceleration();
        processUp = line.process().acceleration();
        processDown = line.process().deceleration();
    }

    @Override
    public void begin() {
        strip.level = capacity;
        strip.entrySpeed = strip.processSpeed;
        headingSeen = process.heading();
        mode = Mode.MATCHED;
    }

    @Override
    public void release() {
        tail.newCoil(strip.remaining);
        strip.entrySpeed = 0;
        strip.entryAcceleration = 0;
        headingSeen = process.heading();
        assess();
    }

    @Override
    public void runOut() {
        tail.start(strip.entrySpeed);
        mode = Mode.RUNNING_OUT;
    }

    private boolean isFull(double level) {
        return level >= capacity - tolerance;
    }

    /** Chooses what to do after the process changed its mind, or a joint was released. */
    private void assess() {
        double settledLevel = settled.now();
        arrivesFull = Math.abs(settledLevel - capacity) <= tolerance;
        if (!isFull(settledLevel)) {
            mode = Mode.FILLING;
        } else if (strip.entrySpeed >= process.heading()) {
            mode = Mode.SETTLING;
        } else if (strip.level > capacity + tolerance) {
            mode = Mode.HOLDING;
        } else if (strip.entrySpeed == strip.processSpeed) {
            mode = up >= processUp ? Mode.FOLLOWING : Mode.FILLING;
        } else {
            mode = Mode.HEADING_FOR_PROCESS;
        }
    }

    /** The entry has come to the process's present speed, which is below v*. */
    private void meetProcess() {
        strip.entrySpeed = strip.processSpeed;
        if (strip.level > capacity + tolerance) {
            mode = isFull(settled.now()) ? Mode.HOLDING : Mode.FILLING;
        } else {
            mode = up >= processUp ? Mode.FOLLOWING : Mode.FILLING;
        }
    }

    @Override
    public void plan() {
        if (mode == Mode.MATCHED) {
            stayMatched();
        } else if (mode != Mode.RUNNING_OUT && mode != Mode.STANDING && process.heading() != headingSeen) {
            assess();
        }
        headingSeen = process.heading();
        ramp();
        noticeMatch();
    }

    /** A matched entry follows the process's ramps where its own acceleration allows. */
    private void stayMatched() {
        boolean together = Math.abs(strip.processSpeed - strip.entrySpeed) <= ROUNDING;
        if (strip.processAcceleration == 0 && together) {
            return;
        }
        boolean slowing = process.heading() < strip.entrySpeed;
        boolean canFollow = slowing ? down >= processDown : up >= processUp;
        if (canFollow && strip.processSpeed <= Math.max(strip.entrySpeed, tail.jumpCeiling(strip.remaining))) {
            return;
        }
        arrivesFull = false;
        mode = slowing || isFull(settled.now()) ? Mode.SETTLING : Mode.FILLING;
    }

    /** A settled entry is matched when both have v*, unless strip lacks after all. */
    private void noticeMatch() {
        boolean isSettled = mode == Mode.SETTLING || mode == Mode.FOLLOWING;
        boolean together = strip.entrySpeed == strip.processSpeed && strip.processSpeed == process.heading();
        if (!isSettled || !together) {
            return;
        }
        if (mode == Mode.SETTLING && arrivesFull) {
            strip.level = capacity;
        }
        if (isFull(strip.level)) {
            mode = Mode.MATCHED;
            follow();
        } else {
            mode = Mode.FILLING;
            ramp();
        }
    }

    /** Sets the entry's ramp for its mode. */
    private void ramp() {
        switch (mode) {
            case FILLING -> {
                goal = Math.min(Math.min(topSpeed, process.heading() + fillRateLimit), tail.ceiling());
                rampTo(goal, true);
            }
            case SETTLING -> {
                goal = Math.min(process.heading(), Math.max(strip.entrySpeed, tail.ceiling()));
                rampTo(goal, false);
            }
            case HEADING_FOR_PROCESS -> headForProcess();
            case FOLLOWING, MATCHED -> follow();
            case RUNNING_OUT -> {
                goal = tail.goal();
                strip.rampEntry(goal, up, down);
            }
            case HOLDING, STANDING -> strip.entryAcceleration = 0;
        }
    }

    private void follow() {
        strip.entrySpeed = strip.processSpeed;
        strip.entryAcceleration = strip.processAcceleration;
    }

    /** Ramps to {@code target}; a jump upwards stops short of what would overfill or overrun the tail. */
    private void rampTo(double target, boolean filling) {
        double reachable = target;
        if (strip.entrySpeed < target && up == Double.POSITIVE_INFINITY) {
            double jump = tail.jumpCeiling(strip.remaining);
            if (filling) {
                jump = Math.min(jump, settled.highestJump(capacity));
            }
            reachable = Math.max(strip.entrySpeed, Math.min(target, jump));
        }
        strip.rampEntry(reachable, up, down);
    }

    private void headForProcess() {
        goal = strip.processSpeed;
        boolean tooFast = strip.entrySpeed > strip.processSpeed;
        double rate = tooFast ? down : up;
        if (rate < Double.POSITIVE_INFINITY && strip.entrySpeed != strip.processSpeed) {
            strip.entryAcceleration = tooFast ? -rate : rate;
        } else if (tooFast || strip.processSpeed <= tail.jumpCeiling(strip.remaining)) {
            meetProcess();
            ramp();
        } else {
            rampTo(goal, false);
        }
    }

    @Override
    public void offerTo(NextEvent next) {
        double speed = strip.entrySpeed;
        double acceleration = strip.entryAcceleration;
        switch (mode) {
            case STANDING -> {
                return;
            }
            case RUNNING_OUT ->
                next.offer(StateEvent.CREEP_ENDS, tail.timeToEndCreep(speed, acceleration, strip.remaining));
            default -> {
                next.offer(StateEvent.CHANGE_STARTS, tail.timeToStart(speed, acceleration, strip.remaining));
                next.offer(StateEvent.CREEP_ZONE, tail.timeToComeNear(speed, acceleration, strip.remaining));
            }
        }
        switch (mode) {
            case HEADING_FOR_PROCESS -> next.offer(StateEvent.ENTRY_MEETS_PROCESS, timeToMeet());
            case FILLING -> {
                next.offer(StateEvent.SETTLES, settled.timeToRise(capacity, tolerance));
                next.offer(StateEvent.ENTRY_RAMP, rampTime());
            }
            case SETTLING, RUNNING_OUT -> next.offer(StateEvent.ENTRY_RAMP, rampTime());
            case HOLDING -> next.offer(StateEvent.SETTLES, settled.timeToFall(capacity));
            case FOLLOWING, MATCHED, STANDING -> {}
        }
    }

    private double rampTime() {
        return strip.entryAcceleration == 0
                ? Kinematics.NEVER
                : Math.max(0, (goal - strip.entrySpeed) / strip.entryAcceleration);
    }

    private double timeToMeet() {
        double closing = strip.processAcceleration - strip.entryAcceleration;
        double time = (strip.entrySpeed - strip.processSpeed) / closing;
        return time >= 0 ? time : Kinematics.NEVER;
    }

    @Override
    public void perform(StateEvent event) {
        switch (event) {
            case ENTRY_RAMP -> {
                strip.entrySpeed = goal;
                strip.entryAcceleration = 0;
            }
            case ENTRY_MEETS_PROCESS -> meetProcess();
            case CREEP_ZONE -> tail.comeNearTail();
            case CREEP_ENDS -> tail.endCreep();
            case SETTLES -> {
                // An entry that jumps or speeds up while full to begin with may settle above the capacity.
                arrivesFull = settled.now() <= capacity + tolerance;
                mode = Mode.SETTLING;
            }
            default -> throw new IllegalArgumentException("not an event of the entry: " + event);
        }
    }

    @Override
    public boolean tailHasStopped() {
        if (mode != Mode.RUNNING_OUT || tail.isCreeping() || strip.entrySpeed > 0) {
            return false;
        }
        mode = Mode.STANDING;
        strip.entryAcceleration = 0;
        strip.remaining = 0;
        return true;
    }

    @Override
    public boolean isMatched() {
        return mode == Mode.MATCHED;
    }

    @Override
    public boolean isBlocked() {
        boolean free = mode != Mode.RUNNING_OUT && mode != Mode.STANDING;
        return free && strip.entrySpeed == 0 && strip.entryAcceleration == 0;
    }

    @Override
    public EntryState state() {
        return switch (mode) {
            case FILLING -> EntryState.FILLING;
            case SETTLING, HEADING_FOR_PROCESS, FOLLOWING, HOLDING -> EntryState.SETTLING;
            case MATCHED -> EntryState.MATCHED;
            case RUNNING_OUT -> EntryState.RUNNING_OUT;
            case STANDING -> EntryState.STANDING;
        };
    }
}
