package runthrough.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.quantity.UnitSystem;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Numbers of an answer in the user's units: as values with their notation, or written at once for a sentence. How many digits
 * they have is the rule of {@link Notation}.
 *
 * @param system the units of the user
 * @param random whether anything is random; without it numbers are exact and have no interval
 */
public record Texts(UnitSystem system, boolean random) {
    /** From here on a share is more than one in three. */
    private static final double MANY = 0.34;

    /** How a quantity of {@code kind} is written whose values go up to {@code greatest} (SI). */
    public Notation notation(Kind kind, double greatest) {
        return Notation.of(kind, greatest, system);
    }

    /** The same for a kind that has one unit whatever the size. */
    public Notation notation(Kind kind) {
        return notation(kind, 1);
    }

    /** A quantity (SI). */
    public Value value(Kind kind, double si) {
        return Value.of(si, notation(kind, si));
    }

    /** A margin (SI): rounded down, so that all of it may be used; a shortfall is negative, and making it up is enough. */
    public Value margin(Kind kind, double si) {
        return Value.of(si, notation(kind, si).atMost());
    }

    /** What a margin or a shortfall comes to, without its sign, rounded like {@link #margin}. */
    public Value marginSize(Kind kind, double si) {
        return si < 0 ? Value.of(-si, notation(kind, si).atLeast()) : margin(kind, si);
    }

    /** A mean with its interval. */
    public Value value(Kind kind, Estimate estimate) {
        return value(notation(kind, kind == Kind.TIME ? longest(estimate) : estimate.mean()), estimate);
    }

    /** A mean time or the end of its interval, which has the same unit (s). */
    private double longest(Estimate time) {
        return known(time.interval())
                .map(Interval::high)
                .filter(Double::isFinite)
                .map(high -> Math.max(high, Math.abs(time.mean())))
                .orElse(time.mean());
    }

    /** A mean with its interval, in a given notation. */
    public Value value(Notation notation, Estimate estimate) {
        return new Value(estimate.mean(), notation, known(estimate.interval()));
    }

    /** A mean of plain numbers with its interval. */
    public Value plain(Estimate estimate) {
        return value(Notation.PLAIN, estimate);
    }

    /** A value that was searched for, with the ends of its interval where both are known. */
    public Value found(Notation notation, double si, OptionalDouble low, OptionalDouble high) {
        boolean isKnown = random && low.isPresent() && high.isPresent() && low.getAsDouble() < high.getAsDouble();
        return new Value(
                si,
                notation,
                isKnown
                        ? Optional.of(new Interval(low.getAsDouble(), high.getAsDouble(), Interval.Method.STUDENT_T))
                        : Optional.empty());
    }

    /** The interval; none where nothing is random, since then the numbers are exact. */
    public Optional<Interval> known(Optional<Interval> interval) {
        return interval.filter(any -> random);
    }

    /** A length of strip (m). */
    public String length(double metres) {
        return of(Kind.LENGTH, metres);
    }

    /** A speed of strip (m/s). */
    public String speed(double metresPerSecond) {
        return of(Kind.SPEED, metresPerSecond);
    }

    /** A time (s). */
    public String time(double seconds) {
        return of(Kind.TIME, seconds);
    }

    /** A share as a percentage. */
    public String share(double share) {
        return of(Kind.SHARE, share);
    }

    /** A target, or what it allows to fail, as a percentage with all digits that were given. */
    public static String target(double share) {
        return Notation.GIVEN_SHARE.text(share);
    }

    /** A share that need not be known closely: two digits. */
    public static String percent(double share) {
        return Numbers.text(100 * share, 2) + " %";
    }

    /** A quantity (SI) in the unit that suits it, to three digits. */
    public String of(Kind kind, double si) {
        return value(kind, si).text();
    }

    /** A range in one unit, such as "111.8 to 114.1 m". */
    public String range(Kind kind, double low, double high) {
        return notation(kind, high).range(low, high);
    }

    /** A mean in the unit that suits it, to the digits that its interval leaves certain. */
    public String mean(Kind kind, Estimate estimate) {
        return value(kind, estimate).text();
    }

    /** Its interval in the same unit, such as "2.1 to 2.9 m"; empty without one. */
    public Optional<String> interval(Kind kind, Estimate estimate) {
        return value(kind, estimate).range();
    }

    /** The mean of a plain number, to the digits that its interval leaves certain. */
    public String mean(Estimate estimate) {
        return plain(estimate).text();
    }

    /** A plain number to three digits. */
    public static String number(double value) {
        return Notation.PLAIN.number(value);
    }

    /** About how many: an estimate, rounded up to three digits. */
    public static String about(long number) {
        return count(new BigDecimal(number)
                .round(new MathContext(3, RoundingMode.CEILING))
                .longValueExact());
    }

    /** A whole number, its thousands apart. */
    public static String count(long number) {
        return Numbers.count(number);
    }

    /**
     * How often something happens, as people say it: "1 in 42", or "40 in 100" where it is more than every third time.
     *
     * @param share in (0, 1)
     */
    public static String odds(double share) {
        return share > MANY ? Math.round(100 * share) + " in 100" : "1 in " + roundedCount(1 / share);
    }

    /** A count to three digits. */
    private static String roundedCount(double number) {
        return count(new BigDecimal(number)
                .round(new MathContext(3, RoundingMode.HALF_UP))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    /** "no coil change", "1 coil change", "2 coil changes". */
    public static String count(long number, String one) {
        return (number == 0 ? "no" : count(number)) + " " + one + (number == 1 ? "" : "s");
    }
}
