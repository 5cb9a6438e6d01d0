package runthrough.plant.check;

import runthrough.plant.Line;

/** Whether the accumulator can hold what stopping and restarting the process take, and give it as fast as asked. */
final class AccumulatorCheck {
    private final Line line;
    private final Messages messages;
    private final Wording in;
    private final double capacity;
    private final double fastest;
    private final double stopLevel;

    private AccumulatorCheck(Line line, Messages messages) {
        this.line = line;
        this.messages = messages;
        this.in = messages.in();
        this.capacity = line.accumulator().capacity();
        this.fastest = line.fastestRatedSpeed();
        this.stopLevel = line.stopLevel(fastest);
    }

    static void check(Line line, Messages messages) {
        AccumulatorCheck check = new AccumulatorCheck(line, messages);
        check.capacity();
        check.restartLevel();
        check.emptying();
    }

    /** Rules CHECK-9, CHECK-10, CHECK-11. */
    private void capacity() {
        double reserve = line.accumulator().reserve();
        if (capacity == 0) {
            messages.error(
                    LinePart.ACCUMULATOR,
                    in.length(0) + " of strip; must hold more than 0 to join while the process runs",
                    "Give the accumulator, or the practice of joining without one.");
        } else if (Excess.isMore(reserve, capacity)) {
            messages.error(
                    LinePart.RESERVE,
                    in.length(reserve) + "; must be at most the accumulator's capacity, " + in.mostLength(capacity),
                    "Give a smaller reserve or a larger accumulator.");
        } else if (Excess.isMore(stopLevel, capacity)) {
            messages.error(
                    LinePart.ACCUMULATOR,
                    in.length(capacity) + " of strip; must hold at least " + in.leastLength(stopLevel)
                            + ": the reserve, " + in.length(reserve) + ", and what the process takes to stop from "
                            + in.speed(fastest),
                    "Give a larger accumulator, a smaller reserve, a lower process speed or a faster stop.");
        }
    }

    /** Rules CHECK-12, CHECK-13. */
    private void restartLevel() {
        double given = line.process().restartLevel();
        // See SlowingCheck.
        if (isTooLow(given) && Excess.isAtLeast(capacity, stopLevel)) {
            messages.error(
                    LinePart.RESTART_LEVEL,
                    in.length(given) + "; must be "
                            + (speedsUpAtOnce() ? "at least" : "more than")
                            + " the level at which the process must stop from " + in.speed(fastest) + ", "
                            + in.leastLength(stopLevel),
                    "The process would restart into its next stop, again and again: give a higher level, or leave it out"
                            + " for the stop level plus 10 % of the capacity.");
        }
        if (Excess.isMore(given, capacity)) {
            messages.error(
                    LinePart.RESTART_LEVEL,
                    in.length(given) + "; must be at most the accumulator's capacity, " + in.mostLength(capacity),
                    "Give a level that the accumulator can reach, or the process never restarts.");
        }
    }

    /** From the stop level itself the process may restart only where the entry gives strip at once. */
    private boolean isTooLow(double restart) {
        boolean isStopLevel = Math.abs(restart - stopLevel) <= Wording.MICROMETRE;
        return isStopLevel ? !speedsUpAtOnce() : restart < stopLevel;
    }

    private boolean speedsUpAtOnce() {
        return Double.isInfinite(line.entry().acceleration());
    }

    /** Rules CHECK-18, ACC-7. */
    private void emptying() {
        double limit = line.emptyingRateLimit();
        if (Excess.isMore(fastest, limit)) {
            messages.warning(
                    LinePart.EMPTYING_SPEED,
                    in.speed(limit) + " of strip from all strands; should be at least the process speed, "
                            + in.leastSpeed(fastest),
                    "While the entry stands the carriage cannot follow, so the line is not feasible as given: let the"
                            + " carriage run faster or the process slower.");
        }
    }
}
