package runthrough.study.map;

import java.util.Optional;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.study.StudyException;
import runthrough.study.lever.Lever;

/**
 * One side of a map.
 *
 * @param name of the number that changes along it, such as {@code entry.top-speed}
 * @param unit in which people read it; empty for a plain number
 * @param from least value (SI)
 * @param to greatest value (SI), {@code > from}
 * @param lever that it is, if any
 * @param points how many values, evenly spaced from end to end, {@value #FEWEST} to {@value #MOST}
 */
public record MapAxis(
        String name, Optional<Lever.What> lever, Optional<Unit> unit, double from, double to, int points) {
    /** The ends alone. */
    public static final int FEWEST = 2;

    /** More than any picture shows. */
    public static final int MOST = 1000;

    public MapAxis {
        if (!(from < to && Double.isFinite(from) && Double.isFinite(to))) {
            throw new StudyException(name + " from " + from + " to " + to + "; the range must rise");
        }
        if (points < FEWEST || points > MOST) {
            throw new StudyException(name + " at " + points + " values; must be " + FEWEST + " to " + MOST);
        }
    }

    /** An axis named like what changes along it. */
    public MapAxis(String path, Optional<Unit> unit, double from, double to, int points) {
        this(path, Lever.What.at(path), unit, from, to, points);
    }

    /** Value (SI) at {@code index}, from 0. */
    public double value(int index) {
        return index == points - 1 ? to : from + index * ((to - from) / (points - 1));
    }

    /** From one value to the next (SI). */
    public double step() {
        return (to - from) / (points - 1);
    }

    /** Where {@code value} (SI) lies among the points: 0 at the first, {@code points - 1} at the last. */
    public double position(double value) {
        return (value - from) / (to - from) * (points - 1);
    }

    /** Whether {@code value} (SI) is on the axis. */
    public boolean holds(double value) {
        return from <= value && value <= to;
    }

    /** {@code si} in the unit of the axis. */
    public double shown(double si) {
        return unit.map(own -> own.fromSi(si)).orElse(si);
    }

    /** {@code si} for people, with its unit. */
    public String text(double si) {
        return unit.map(own -> Units.of(UnitSystem.METRIC).text(si, own)).orElseGet(() -> Numbers.text(si));
    }

    /** The name with the unit. */
    public String label() {
        return name + unit.map(own -> ", " + own.symbol()).orElse("");
    }
}
