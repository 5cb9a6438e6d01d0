package runthrough.simulation.motion;

import java.util.ArrayDeque;
import java.util.Deque;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.simulation.account.RunStatistics;
import runthrough.simulation.calendar.EventOrder;

/**
 * Joints on their way from the joiner to the process section, first in, first out. Where coils differ in rated speed or in
 * mass per metre, the process sees the next coil when the metres processed reach the joint's mark. The same mark says where a
 * joint passage begins and ends, and where a joint breaks.
 *
 * <p>Rules SPEED-1, SPEED-2, SPEED-3.
 */
final class JointTracker {
    private final Line line;
    private final boolean coilsDiffer;
    private final LineState state;
    private final RunStatistics statistics;
    /** Strip (m) from the accumulator to the process section. */
    private final double path;

    private final Deque<Mark> marks = new ArrayDeque<>();
    private final Arrives arrives = new Arrives();
    private final JointPassages passages;
    private final JointBreaks breaks;

    /** @param coilsDiffer what {@link #coilsDiffer(Line)} says of the line */
    JointTracker(Line line, boolean coilsDiffer, LineState state, RunStatistics statistics, JointBreaks breaks) {
        this.line = line;
        this.coilsDiffer = coilsDiffer;
        this.state = state;
        this.statistics = statistics;
        this.breaks = breaks;
        passages = new JointPassages(line, state, statistics);
        path = line.practice().pathToProcess(line.process());
    }

    /** Whether the process sees any difference between the coils of {@code line}; asked once, for there may be many. */
    static boolean coilsDiffer(Line line) {
        Coil first = line.coils().get(0);
        return line.coils().stream()
                .anyMatch(coil ->
                        line.ratedSpeed(coil) != line.ratedSpeed(first) || coil.massPerMetre() != first.massPerMetre());
    }

    /** The joint before {@code coil} is released. */
    void release(Coil coil) {
        double mark = state.processed() + state.level + path;
        if (coilsDiffer) {
            marks.add(new Mark(mark, coil));
        }
        passages.release(mark);
        breaks.release(statistics.latestChange(), mark);
    }

    /** Whether a joint on its way ever brings something about. */
    boolean mayAct() {
        return coilsDiffer
                || line.process().jointPassage().isPresent()
                || line.process().jointBreak().isPresent();
    }

    /** Offers that the next joint reaches the process section, begins or ends to pass it, or breaks in it. */
    void offerTo(NextEvent next) {
        if (!marks.isEmpty()) {
            next.offer(arrives);
        }
        passages.offerTo(next);
        breaks.offerTo(next);
    }

    private record Mark(double metres, Coil coil) {}

    private final class Arrives extends StateEvent {
        Arrives() {
            super(EventOrder.JOINT_REACHES_PROCESS);
        }

        @Override
        double timeTo() {
            return Kinematics.travel(
                    marks.element().metres - state.processed(), state.process.speed, state.process.acceleration);
        }

        @Override
        void happen() {
            Coil coil = marks.remove().coil;
            statistics.weigh(coil.massPerMetre());
            state.rated = line.ratedSpeed(coil);
        }
    }
}
