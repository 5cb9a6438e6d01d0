package runthrough.plant;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import runthrough.quantity.Kind;

/**
 * A number that people ask for although no single key of a description holds it: how long a joint takes as a whole, how much
 * an accumulator of any form holds, how long coils are that were given by mass. Setting a time at which strip stands takes so
 * many seconds off every pass of that work; any other scales all that is behind it alike.
 */
public enum LineFigure {
    /** Mean time (s) of the work on the standing strip at a joint, rejects included. */
    JOINT_CYCLE_TIME(
            "joint-cycle-time",
            Kind.TIME,
            "the mean time of the work on the standing strip; as many seconds as that takes go off every pass of the join work,"
                    + " or are added to it") {
        @Override
        OptionalDouble in(Line line) {
            return line.practice().hasJoiner() ? OptionalDouble.of(standing(line)) : OptionalDouble.empty();
        }

        @Override
        public double least(Line line) {
            return leastStanding(line);
        }

        @Override
        Line changed(Line line, double value) {
            return withStanding(line, value);
        }
    },
    /** Mean time (s) of a rethread. */
    RETHREAD_TIME(
            "rethread-time",
            Kind.TIME,
            "the mean time to feed the next coil through the line; as many seconds as that takes go off every rethread, or are"
                    + " added to it") {
        @Override
        OptionalDouble in(Line line) {
            return line.practice().hasJoiner() ? OptionalDouble.empty() : OptionalDouble.of(standing(line));
        }

        @Override
        Line changed(Line line, double value) {
            return withStanding(line, value);
        }
    },
    /** Mean time (s) of the work on the next coil while the line runs. */
    PREPARATION_TIME(
            "preparation-time",
            Kind.TIME,
            "the mean time to prepare the next coil; all of it is scaled by the same factor") {
        @Override
        OptionalDouble in(Line line) {
            return OptionalDouble.of(
                    meanOverJoints(line, joints -> MeanWork.total(line.change().prepare(), joints)));
        }

        @Override
        Line changed(Line line, double value) {
            return line.with(line.change().withPreparationTimes(value / of(line).orElseThrow()));
        }
    },
    /** The greatest rated process speed (m/s). */
    RATED_SPEED(
            "rated-speed",
            Kind.SPEED,
            "the rated process speed; where coils have speeds of their own, the fastest, and all are scaled by the same factor") {
        @Override
        OptionalDouble in(Line line) {
            return OptionalDouble.of(Stream.concat(
                            Stream.of(line.process().speed()).filter(speed -> asksForNone(line)),
                            line.coils().stream()
                                    .flatMap(
                                            coil -> coil.processSpeed().stream().boxed()))
                    .max(Double::compare)
                    .orElseThrow());
        }

        private boolean asksForNone(Line line) {
            return line.coils().stream().anyMatch(coil -> coil.processSpeed().isEmpty());
        }

        @Override
        Line changed(Line line, double value) {
            return line.withRatedSpeedsTimes(value / of(line).orElseThrow());
        }
    },
    /** Usable capacity (m) of the accumulator. */
    USABLE_CAPACITY(
            "usable-capacity",
            Kind.LENGTH,
            "the strip that the accumulator holds, whatever its form; its stroke, sag or full diameter goes with it") {
        @Override
        OptionalDouble in(Line line) {
            boolean isThere = !line.practice().isOneStrip()
                    && line.accumulator().form().adjustable().isPresent();
            return isThere ? OptionalDouble.of(line.accumulator().capacity()) : OptionalDouble.empty();
        }

        @Override
        Line changed(Line line, double value) {
            return line.with(line.accumulator().resizedTo(value));
        }
    },
    /** Mean length (m) of the coils. */
    COIL_LENGTH(
            "coil-length",
            Kind.LENGTH,
            "the mean length of the coils, crops included; all are scaled by the same factor") {
        @Override
        OptionalDouble in(Line line) {
            return OptionalDouble.of(
                    line.coilSource().mean(kind -> line.coils().get(kind).meanLength()));
        }

        @Override
        Line changed(Line line, double value) {
            return withLengths(line, value / of(line).orElseThrow());
        }
    },
    /** Mean mass (kg) of the coils. */
    COIL_MASS(
            "coil-mass",
            Kind.MASS,
            "the mean mass of the coils, crops included; their lengths are scaled by the same factor") {
        @Override
        OptionalDouble in(Line line) {
            return OptionalDouble.of(line.coilSource().mean(kind -> {
                Coil coil = line.coils().get(kind);
                return coil.meanLength() * coil.massPerMetre();
            }));
        }

        @Override
        Line changed(Line line, double value) {
            return withLengths(line, value / of(line).orElseThrow());
        }
    };

    /** Longer than any pass (s). */
    private static final double FOREVER = 1e15;

    private static final double ROUNDING = 1e-9;

    private final String path;
    private final Kind kind;
    private final String meaning;

    LineFigure(String path, Kind kind, String meaning) {
        this.path = path;
        this.kind = kind;
        this.meaning = meaning;
    }

    /** The figure for the time that the strip stands at a coil change of {@code line}. */
    public static LineFigure standingTime(Line line) {
        return line.practice().hasJoiner() ? JOINT_CYCLE_TIME : RETHREAD_TIME;
    }

    /** The figure called {@code path}. */
    public static Optional<LineFigure> called(String path) {
        return Arrays.stream(values())
                .filter(figure -> figure.path.equals(path))
                .findFirst();
    }

    /** As it is named beside the keys of a description, none of which is called so. */
    public String path() {
        return path;
    }

    /** What it is about, and so its units. */
    public Kind kind() {
        return kind;
    }

    /** In words, to follow "give". */
    public String meaning() {
        return meaning;
    }

    /** The figure of {@code line} (SI); empty where the line has none that can be changed. */
    public OptionalDouble of(Line line) {
        OptionalDouble value = in(line);
        return value.isPresent() && value.getAsDouble() > least(line) ? value : OptionalDouble.empty();
    }

    /** What the figure of {@code line} must be more than (SI), {@code >= 0}. */
    public double least(Line line) {
        return 0;
    }

    /**
     * {@code line} with another value of this figure.
     *
     * @param value (SI), more than {@link #least}
     * @throws IllegalArgumentException when the line has no such figure, or the value is not allowed
     */
    public Line with(Line line, double value) {
        OptionalDouble present = of(line);
        if (present.isEmpty() || !(value > least(line) && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(path + " = " + value + "; must be more than " + least(line)
                    + " and stand for something in the line");
        }
        return value == present.getAsDouble() ? line : changed(line, value);
    }

    abstract OptionalDouble in(Line line);

    abstract Line changed(Line line, double value);

    private static double meanOverJoints(Line line, ToDoubleFunction<Joints> number) {
        CoilSource coils = line.coilSource();
        return coils.mean(kind -> number.applyAsDouble(coils.joints(kind)));
    }

    private static double standing(Line line) {
        return meanOverJoints(line, joints -> MeanWork.standing(line.work(), joints));
    }

    /** What is left of it (s) when no pass takes any time. */
    private static double leastStanding(Line line) {
        return standing(line.with(line.change().withJoinShorterBy(FOREVER)));
    }

    /**
     * {@code line} with so many seconds off every pass, or added to it, as give the mean {@code value} (s). Where kinds of joints
     * have shorter passes than others, more have to go off all of them.
     *
     * <p>Rule LEVER-4.
     */
    private static Line withStanding(Line line, double value) {
        double more = (value - standing(line)) / (1 + line.work().reject().meanExtraPasses());
        double close = ROUNDING * value;
        double from = 0;
        double to = more;
        while (away(line, to, value) * Math.signum(more) < -close) {
            from = to;
            to *= 2;
        }
        for (double half = (from + to) / 2; away(line, to, value) * Math.signum(more) > close; half = (from + to) / 2) {
            if (half == from || half == to) {
                break;
            }
            if (away(line, half, value) * Math.signum(more) < 0) {
                from = half;
            } else {
                to = half;
            }
        }
        return line.withEveryPassLongerBy(to);
    }

    /** How far the mean (s) is beyond {@code value} when every pass takes {@code more} (s). */
    private static double away(Line line, double more, double value) {
        return standing(line.withEveryPassLongerBy(more)) - value;
    }

    private static Line withLengths(Line line, double factor) {
        return line.with(line.coilSource().withEach(coil -> coil.withLengthTimes(factor)));
    }
}
