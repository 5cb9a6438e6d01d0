package runthrough.simulation.motion;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.JointPassage;
import runthrough.simulation.account.RunStatistics;
import runthrough.simulation.calendar.EventOrder;

/**
 * Joint passages: from when a ramp down to the speed that a joint allows must begin until the joint has passed, the process heads
 * for no more than that speed. First in, first out; several may be open. Does nothing where joints run like any other strip.
 *
 * <p>Rules PASS-1, PASS-2, PASS-3, PASS-6.
 */
final class JointPassages {
    private final LineState state;
    private final RunStatistics statistics;
    private final @Nullable JointPassage passage;
    /** Metres processed at which the joints on their way reach the process section: those whose passage is not open, */
    private final Deque<Double> ahead = new ArrayDeque<>();
    /** and those whose passage is. */
    private final Deque<Double> open = new ArrayDeque<>();

    private final Opens opens = new Opens();
    private final Closes closes = new Closes();

    JointPassages(Line line, LineState state, RunStatistics statistics) {
        this.state = state;
        this.statistics = statistics;
        passage = line.process().jointPassage().orElse(null);
    }

    /** A joint reaches the process section when {@code mark} metres are processed. */
    void release(double mark) {
        if (passage != null) {
            ahead.add(mark);
        }
    }

    /** Offers what begins or ends next. */
    void offerTo(NextEvent next) {
        if (!open.isEmpty()) {
            next.offer(closes);
        }
        if (!ahead.isEmpty()) {
            next.offer(opens);
        }
    }

    /** The ramp to the speed of the passage must begin, or without one its first metre is processed. */
    private final class Opens extends StateEvent {
        Opens() {
            super(EventOrder.JOINT_PASSES);
        }

        @Override
        double timeTo() {
            if (passage == null) {
                return Kinematics.NEVER;
            }
            double metres = ahead.element() - passage.before() - state.processed();
            double speed = state.process.speed;
            double acceleration = state.process.acceleration;
            double down = state.process.down;
            double margin =
                    metres - Kinematics.rampDistance(speed, down) + Kinematics.rampDistance(passage.speed(), down);
            if (metres <= 0 || (speed > passage.speed() && margin <= 0)) {
                return 0;
            }
            double arrives = Kinematics.travel(metres, speed, acceleration);
            // The margin shrinks by (1 + a/d) for each metre run, and stays the same while slowing at the full rate.
            double shrinkage = 1 + acceleration / down;
            return shrinkage > 0
                    ? Math.min(arrives, Kinematics.travel(margin / shrinkage, speed, acceleration))
                    : arrives;
        }

        @Override
        void happen() {
            open.add(ahead.remove());
            if (passage != null) {
                state.passageSpeed = passage.speed();
            }
            statistics.passageOpens();
        }
    }

    /** The last metre of the passage is processed. */
    private final class Closes extends StateEvent {
        Closes() {
            super(EventOrder.JOINT_PASSES);
        }

        @Override
        double timeTo() {
            double after = passage == null ? 0 : passage.after();
            return Kinematics.travel(
                    open.element() + after - state.processed(), state.process.speed, state.process.acceleration);
        }

        @Override
        void happen() {
            open.remove();
            if (open.isEmpty()) {
                state.passageSpeed = Double.POSITIVE_INFINITY;
            }
        }
    }
}
