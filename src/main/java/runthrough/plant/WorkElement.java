package runthrough.plant;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One element of the work of a coil change. The file is long because the three closed choices of an element stand in it, each
 * with what differs: at which coil changes it is done, how long it takes, what is taken off.
 *
 * @param name how the user calls it
 * @param time how long it takes
 * @param occurrence at which coil changes it is done
 * @param redo whether it is done again when the joint is rejected
 * @param people whom it takes, {@code >= 1}
 * @param putDown whether it may be put down for work on the joint and taken up again; of account for preparation only
 * @param shortening what is taken off its time
 */
public record WorkElement(
        String name,
        WorkTime time,
        Occurrence occurrence,
        boolean redo,
        int people,
        boolean putDown,
        Shortening shortening) {

    public WorkElement {
        Ranges.of("").atLeastOne("people", people).refuse();
    }

    /** An element that takes its whole time. */
    public WorkElement(String name, WorkTime time, Occurrence occurrence, boolean redo, int people, boolean putDown) {
        this(name, time, occurrence, redo, people, putDown, new Shortening.None());
    }

    /** An element for one person, who may put it down. */
    public WorkElement(String name, WorkTime time, Occurrence occurrence, boolean redo) {
        this(name, time, occurrence, redo, 1, true);
    }

    /** What is taken off the time of an element each time it is done. Rule LEVER-9. */
    public sealed interface Shortening {

        /** What is left (s) of {@code seconds} that {@code element} would take at {@code joint}. */
        double of(double seconds, WorkElement element, Joint joint);

        /** Nothing. */
        record None() implements Shortening {
            @Override
            public double of(double seconds, WorkElement element, Joint joint) {
                return seconds;
            }
        }

        /** So many seconds, {@code >= 0}; with infinitely many it takes no time. It never takes less than none. */
        record By(double off) implements Shortening {
            public By {
                Ranges.of("").notBelowZero("shorter by", off, Ranges.Of.TIME).refuse();
            }

            @Override
            public double of(double seconds, WorkElement element, Joint joint) {
                return Math.max(0, seconds - off);
            }
        }

        /** What is beyond its median at that joint, and so many seconds, {@code >= 0}, besides. */
        record ToMedian(double off) implements Shortening {
            @Override
            public double of(double seconds, WorkElement element, Joint joint) {
                double median =
                        element.time().duration(element.time().drawn().quantile(0.5), joint.width(), joint.thickness());
                return Math.max(0, Math.min(seconds, median) - off);
            }
        }
    }

    /** At which coil changes an element is done. Rule CHANGE-4. */
    public sealed interface Occurrence {

        /** The share of coil changes with joints like {@code joint} at which it is done, in [0, 1]. */
        double share(Joint joint);

        /** The share of all coil changes at which it is done when {@code coils} come, in [0, 1]. */
        default double share(CoilSource coils) {
            // Unless it says otherwise it is the same at every joint.
            return share(coils.joints(0).all().get(0).joint());
        }

        /** Whether chance decides. */
        default boolean isRandom() {
            return false;
        }

        /** Every time. */
        record Always() implements Occurrence {
            @Override
            public double share(Joint joint) {
                return 1;
            }
        }

        /** On coil changes n, 2n, 3n ...; {@code n >= 1}. */
        record Every(int n) implements Occurrence {
            public Every {
                Ranges.of("").atLeastOne("every", n).refuse();
            }

            @Override
            public double share(Joint joint) {
                return 1.0 / n;
            }
        }

        /** At random, with the chance {@code p} in [0, 1]. */
        record Chance(double p) implements Occurrence {
            public Chance {
                Ranges.of("").share("chance", p).refuse();
            }

            @Override
            public double share(Joint joint) {
                return p;
            }

            @Override
            public boolean isRandom() {
                return p > 0 && p < 1;
            }
        }

        /** When any of what is listed differs between the two coils; at least one. Rule CHANGE-12. */
        record When(Set<CoilDifference> differences) implements Occurrence {
            public When {
                if (differences.isEmpty()) {
                    throw new IllegalArgumentException("when without a difference; give at least one");
                }
                // In the order of the type, so that they are always listed alike.
                differences = Collections.unmodifiableSet(EnumSet.copyOf(differences));
            }

            /** What is listed, in words. */
            public String words() {
                return differences.stream().map(CoilDifference::words).collect(Collectors.joining(", "));
            }

            /** Whether it is done at {@code joint}. */
            public boolean isMetAt(Joint joint) {
                for (CoilDifference difference : joint.differences()) {
                    if (differences.contains(difference)) {
                        return true;
                    }
                }
                return false;
            }

            @Override
            public double share(Joint joint) {
                return isMetAt(joint) ? 1 : 0;
            }

            /** Counted over the neighbours of a schedule; exact for a mix, by its weights. */
            @Override
            public double share(CoilSource coils) {
                return coils.mean(kind -> coils.joints(kind).mean(this::share));
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

        /**
         * Time (s) when the drawn part is {@code drawn}.
         *
         * @param width of the wider of the two strips (m)
         * @param thickness of the thicker of the two strips (m)
         */
        double duration(double drawn, double width, double thickness);

        /** {@code factor} times as long, {@code factor > 0}. */
        WorkTime scaled(double factor);

        /** A time of its own. */
        record Timed(Distribution drawn) implements WorkTime {
            @Override
            public double duration(double drawn, double width, double thickness) {
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
         * @param speed travel speed of the torch, wheel or shear
         * @param drawn what is added (s)
         */
        record Travel(TravelSpeed speed, Distribution drawn) implements WorkTime {

            /** With one travel speed (m/s), {@code > 0}, for every strip. */
            public Travel(double speed, Distribution drawn) {
                this(TravelSpeed.of(speed), drawn);
            }

            @Override
            public double duration(double drawn, double width, double thickness) {
                return width / speed.at(thickness) + drawn;
            }

            @Override
            public Travel scaled(double factor) {
                return new Travel(speed.slower(factor), drawn.scaled(factor));
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
                Ranges.of("").finitePositive("factor", factor, Ranges.Of.NUMBER).refuse();
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
            public double duration(double drawn, double width, double thickness) {
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

    /** The same with another way to give its time. */
    public WorkElement with(WorkTime other) {
        return new WorkElement(name, other, occurrence, redo, people, putDown, shortening);
    }

    /** The same taking {@code factor} times as long, {@code factor > 0}. */
    public WorkElement takingTimes(double factor) {
        return with(time.scaled(factor));
    }

    /** The same for so many people, {@code >= 1}. */
    public WorkElement withPeople(int number) {
        return new WorkElement(name, time, occurrence, redo, number, putDown, shortening);
    }

    /** The same, once begun always finished: a coil on the hook is not put down. */
    public WorkElement notToBePutDown() {
        return new WorkElement(name, time, occurrence, redo, people, false, shortening);
    }

    /** How many seconds are taken off it each time that it is done, {@code >= 0}. */
    public double off() {
        return shortening instanceof Shortening.By by ? by.off() : 0;
    }

    /** The same with this taken off its time. */
    public WorkElement with(Shortening other) {
        return new WorkElement(name, time, occurrence, redo, people, putDown, other);
    }

    /** Whether chance decides if it is done or how long it takes. */
    public boolean isRandom() {
        return occurrence.isRandom() || !time.drawn().isConstant();
    }

    /** Mean time (s) that it takes at {@code joint} when it is done; of a shortened one what is left of its whole mean. */
    public double meanDuration(Joint joint) {
        return durationWith(time.drawn().mean(), joint);
    }

    /** How long it takes (s) at {@code joint} with {@code drawn} (s) as its drawn part. */
    public double durationWith(double drawn, Joint joint) {
        return shortening.of(time.duration(drawn, joint.width(), joint.thickness()), this, joint);
    }

    /** Mean time (s) that it adds to a coil change with {@code joint}. */
    public double meanTime(Joint joint) {
        return occurrence.share(joint) * meanDuration(joint);
    }
}
