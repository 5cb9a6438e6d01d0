package runthrough.study.map;

import java.util.OptionalDouble;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.quantity.Kind;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.study.map.MapVariants.Variant;

/**
 * Joint cycle time along a map: as everywhere where it is varied, so many seconds are taken off every pass of the join work,
 * or added to it, as give the mean asked for. The work on the tail stays, and so do occasional elements.
 */
public final class JointAxis {
    private static final double ROUNDING = 1e-9;
    private static final String PATH = LineFigure.JOINT_CYCLE_TIME.path();

    private JointAxis() {}

    /** Whether the number called {@code path} is the joint cycle time. */
    public static boolean isNamed(String path) {
        return path.equals(PATH);
    }

    /** {@code variant} with the mean {@code value} (s), where {@code path} names the joint cycle time; else as it is. */
    public static Variant along(String path, double value, Variant variant) {
        return isNamed(path) && variant instanceof Variant.Possible possible ? with(possible.line(), value) : variant;
    }

    private static Variant with(Line line, double value) {
        OptionalDouble present = LineFigure.JOINT_CYCLE_TIME.of(line);
        if (present.isEmpty()) {
            return new Variant.Refused(PATH + "; is nothing that this line has");
        }
        CoilChange change = line.change();
        double more = (value - present.getAsDouble()) / (1 + change.reject().meanExtraPasses());
        if (more >= 0) {
            return new Variant.Possible(more == 0 ? line : line.with(change.withJoinLongerBy(more)));
        }
        Line shorter = line.with(change.withJoinShorterBy(change.joinShorterBy() - more));
        double mean = LineFigure.JOINT_CYCLE_TIME.of(shorter).orElse(0);
        return mean <= value * (1 + ROUNDING)
                ? new Variant.Possible(shorter)
                : new Variant.Refused(PATH + " = " + Units.of(UnitSystem.METRIC).text(Kind.TIME, value)
                        + "; a pass of the join work would take less than no time");
    }
}
