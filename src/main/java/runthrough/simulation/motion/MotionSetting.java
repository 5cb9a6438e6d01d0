package runthrough.simulation.motion;

import runthrough.plant.Line;

/**
 * What the motion of all runs of a line has in common, worked out once.
 *
 * @param line as described
 * @param coilsDiffer whether the process section sees any difference between its coils
 */
public record MotionSetting(Line line, boolean coilsDiffer) {

    /** For {@code line}. */
    public static MotionSetting of(Line line) {
        return new MotionSetting(line, JointTracker.coilsDiffer(line));
    }
}
