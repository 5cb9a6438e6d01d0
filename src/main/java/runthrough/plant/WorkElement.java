package runthrough.plant;

import java.util.Objects;

/**
 * One element of the work of a coil change.
 *
 * @param name how the user calls it
 * @param time how long it takes
 * @param occurrence at which coil changes it is done
 * @param redo whether it is done again when the joint is rejected
 */
public record WorkElement(String name, WorkTime time, Occurrence occurrence, boolean redo) {

    /** At which coil changes an element is done. Rule CHANGE-4. */
    public sealed interface Occurrence {

        /** The share of coil changes at which it is done, in [0, 1]. */
        double share();

        /** Whether chance decides. */
        default boolean isRandom() {
            return false;
        }

        /** Every time. */
        record Always() implements Occurrence {
            @Override
            public double share() {
                return 1;
            }
        }

        /** On coil changes n, 2n, 3n ...; {@code n >= 1}. */
        record Every(int n) implements Occurrence {
            public Every {
                Ranges.atLeastOne("every", n);
            }

            @Override
            public double share() {
                return 1.0 / n;
            }
        }

        /** At random, with the chance {@code p} in [0, 1]. */
        record Chance(double p) implements Occurrence {
            public Chance {
                Ranges.share("chance", p);
            }

            @Override
            public double share() {
                return p;
            }

            @Override
            public boolean isRandom() {
                return p > 0 && p < 1;
            }
        }
    }

    /** How long an element takes. */
    public sealed interface WorkTime {

        /** What is drawn for it (s). */
        Distribution drawn();

        /** Whether the element draws random numbers that nothing else does. */
        default boolean hasOwnDraws() {
            return !drawn().isConstant();
        }

        /** Time (s) when the drawn part is {@code drawn} and the wider of the two strips is {@code width} (m). */
        double duration(double drawn, double width);

        /** {@code factor} times as long, {@code factor > 0}. */
        WorkTime scaled(double factor);

        /** A time of its own. */
        record Timed(Distribution drawn) implements WorkTime {
            @Override
            public double duration(double drawn, double width) {
                return drawn;
            }

            @Override
            public Timed scaled(double factor) {
                return new Timed(drawn.scaled(factor));
            }
        }

        /**
         * Welding or cutting across the strip: width over travel speed, and a part that does not depend on width.
         *
         * <p>Rule CHANGE-3.
         *
         * @param speed travel speed of the torch, wheel or shear (m/s), {@code > 0}
         * @param drawn what is added (s)
         */
        record Travel(double speed, Distribution drawn) implements WorkTime {
            public Travel {
                Ranges.finitePositive("travel speed", speed);
            }

            @Override
            public double duration(double drawn, double width) {
                return width / speed + drawn;
            }

            @Override
            public Travel scaled(double factor) {
                return new Travel(speed / factor, drawn.scaled(factor));
            }
        }

        /**
         * Measured together with other elements.
         *
         * @param rows that were measured
         * @param column of this element, from 0
         * @param factor on what was measured, {@code > 0}
         */
        record FromRows(MeasuredRows rows, int column, double factor) implements WorkTime {
            public FromRows {
                Objects.checkIndex(column, rows.width());
                Ranges.finitePositive("factor", factor);
            }

            /** The distribution of the element by itself; what is drawn where its row is blank. */
            @Override
            public Distribution drawn() {
                return rows.column(column).scaled(factor);
            }

            /** Only where its row may be blank. */
            @Override
            public boolean hasOwnDraws() {
                return rows.hasBlank(column) && WorkTime.super.hasOwnDraws();
            }

            @Override
            public double duration(double drawn, double width) {
                return drawn;
            }

            @Override
            public FromRows scaled(double times) {
                return new FromRows(rows, column, factor * times);
            }

            /** The same from other rows of the same columns. */
            public FromRows with(MeasuredRows others) {
                return new FromRows(others, column, factor);
            }
        }
    }

    /** The same with another way to tell its time. */
    public WorkElement with(WorkTime other) {
        return new WorkElement(name, other, occurrence, redo);
    }

    /** The same taking {@code factor} times as long, {@code factor > 0}. */
    public WorkElement takingTimes(double factor) {
        return new WorkElement(name, time.scaled(factor), occurrence, redo);
    }

    /** Whether chance decides if it is done or how long it takes. */
    public boolean isRandom() {
        return occurrence.isRandom() || !time.drawn().isConstant();
    }

    /** Mean time (s) that this element adds to a coil change between strips of which the wider has {@code width} (m). */
    public double meanTime(double width) {
        return occurrence.share() * time.duration(time.drawn().mean(), width);
    }
}
