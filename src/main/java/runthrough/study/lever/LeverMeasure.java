package runthrough.study.lever;

import java.util.OptionalDouble;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.study.cause.Without;
import runthrough.study.search.Crossing.Harder;
import runthrough.study.search.Scale;

/**
 * How much a lever is changed, held against what it is now.
 *
 * <p>Rule LEVER-16.
 *
 * @param varied the lever
 * @param whole what a change by a part of 1 comes to, in its unit, {@code > 0}
 */
record LeverMeasure(Varied varied, double whole) {
    /** What rounding does to a number of steps. */
    private static final double ROUNDING = 1e-6;

    /** Less than any time that counts (s). */
    private static final double NO_TIME = 1e-9;

    static LeverMeasure of(Varied varied) {
        Line line = varied.line();
        double whole = switch (varied.lever().what()) {
            case JOINT_CYCLE_TIME ->
                LineFigure.JOINT_CYCLE_TIME.of(line).orElse(NO_TIME)
                        / (1 + line.work().reject().meanExtraPasses());
            case ELEMENT ->
                meanTime(
                        line,
                        Without.element(line.change(), varied.lever().element().orElseThrow()));
            default -> varied.present();
        };
        return new LeverMeasure(varied, Math.max(whole, NO_TIME));
    }

    private static double meanTime(Line line, WorkElement element) {
        return line.coilSource().mean(kind -> line.coilSource().joints(kind).mean(element::meanDuration));
    }

    /** Which part of what it is now a change to {@code value} is, {@code >= 0}. */
    double part(double value) {
        return Math.abs(value - varied.present()) / whole;
    }

    LeverChange to(double value) {
        boolean isStrands = varied.lever().what() == Lever.What.CAPACITY && isCounted();
        return new LeverChange(
                varied.lever(),
                varied.present(),
                value,
                isStrands ? OptionalDouble.of(varied.scale().step()) : OptionalDouble.empty(),
                part(value));
    }

    /** Whether it comes in pieces: people, uncoilers, strands. */
    boolean isCounted() {
        return switch (varied.lever().what()) {
            case CREW, UNCOILERS -> true;
            case CAPACITY -> varied.line().accumulator().form() instanceof StorageForm.Strands;
            default -> false;
        };
    }

    /** One person, uncoiler or strand more than there is. */
    double oneMore() {
        return varied.present() + varied.scale().step();
    }

    /** The value that asks less of the line by {@code part}, and by no more than a step besides; within what is tried. */
    double at(double part) {
        return stepped(part, true);
    }

    /** The same by no more than {@code part}. */
    double atMost(double part) {
        return stepped(part, false);
    }

    private double stepped(double part, boolean further) {
        Scale scale = varied.scale();
        boolean up = scale.harder() == Harder.SMALLER;
        double steps = (varied.present() + (up ? part : -part) * whole) / scale.step();
        double whole = up == further ? Math.ceil(steps - ROUNDING) : Math.floor(steps + ROUNDING);
        return Math.min(scale.to(), Math.max(scale.from(), whole * scale.step()));
    }

    /** The greatest part by which it can be changed. */
    double most() {
        return part(varied.easiest());
    }
}
