package runthrough.simulation;

import java.util.ArrayDeque;
import java.util.Deque;
import runthrough.plant.Coil;
import runthrough.plant.Line;

/**
 * Joints on their way from the joiner to the process section, first in, first out. Where coils differ in rated speed or in
 * mass per metre, the process sees the next coil when the metres processed reach the joint's mark.
 */
final class JointTracker {
    private final boolean coilsDiffer;
    private final Deque<Mark> marks = new ArrayDeque<>();

    /** @param coilsDiffer what {@link #coilsDiffer(Line)} says of the line */
    JointTracker(boolean coilsDiffer) {
        this.coilsDiffer = coilsDiffer;
    }

    /** Whether the process sees any difference between the coils of {@code line}; asked once, for there may be many. */
    static boolean coilsDiffer(Line line) {
        Coil first = line.coils().get(0);
        return line.coils().stream()
                .anyMatch(coil ->
                        line.ratedSpeed(coil) != line.ratedSpeed(first) || coil.massPerMetre() != first.massPerMetre());
    }

    /** A joint before {@code coil} that the process sees when it has processed {@code metres}. */
    void add(double metres, Coil coil) {
        if (coilsDiffer) {
            marks.add(new Mark(metres, coil));
        }
    }

    /** Seconds until the next joint reaches the process. */
    double timeToNext(LineState strip) {
        Mark next = marks.peek();
        return next == null
                ? Kinematics.NEVER
                : Kinematics.travel(next.metres - strip.processed, strip.processSpeed, strip.processAcceleration);
    }

    /** The coil behind the joint that has reached the process. */
    Coil arrive() {
        return marks.remove().coil;
    }

    private record Mark(double metres, Coil coil) {}
}
