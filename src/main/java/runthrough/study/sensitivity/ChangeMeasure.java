package runthrough.study.sensitivity;

import java.util.List;
import runthrough.plant.Line;

/** What a coil change gives that may be moved. */
public enum ChangeMeasure {
    /**
     * Strip left above the level at which the process slows or stops (m), negative for a shortfall, with the process
     * kept at its rated speed.
     */
    MARGIN,
    /** Whether it ran through: 1 if it did, 0 if not. */
    RUN_THROUGH,
    /** How long the strip stood at the joiner (s). */
    JOINT_CYCLE_TIME,
    /** Time at the rated speed that it cost the process (s). */
    LOST_TIME;

    /** What can be asked of {@code line}: without an accumulator there is no margin, and no coil change runs through. */
    public static List<ChangeMeasure> of(Line line) {
        return line.practice().isOneStrip()
                ? List.of(LOST_TIME, JOINT_CYCLE_TIME)
                : List.of(MARGIN, RUN_THROUGH, JOINT_CYCLE_TIME);
    }
}
