package runthrough.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How numbers of one kind are written for people: in which unit, and with how many digits. Every result that people read is
 * written here, by one rule: the digits that its interval leaves certain ({@link Numbers#lastCertain}), else three significant
 * digits. Shares near 0 and 1 keep the digits that tell them from none and all. Times above 90 s are minutes and seconds,
 * above 3 h hours. What the user gave keeps its digits, see {@link Rounding}.
 *
 * @param unit of the number; empty for a plain number
 * @param symbol behind the number; empty for none
 * @param rounding how many digits it has
 * @param mode to which side a result is rounded: {@link RoundingMode#FLOOR} for what must not be exceeded, {@link
 *     RoundingMode#CEILING} for the least that is enough, so that whoever sets the number that is written is on the safe side
 */
public record Notation(Optional<Unit> unit, String symbol, Rounding rounding, RoundingMode mode) {
    /** Numbers without a unit. */
    public static final Notation PLAIN = new Notation(Optional.empty(), "", Rounding.CERTAIN, RoundingMode.HALF_UP);
    /** A share from 0 to 1 as a percentage. */
    public static final Notation SHARE = of(Unit.PERCENT);
    /** A share from 0 to 1 that the user gave, such as a target, as a percentage with all its digits. */
    public static final Notation GIVEN_SHARE = SHARE.with(Rounding.GIVEN_SHARE);
    /** A difference of two shares. */
    public static final Notation POINTS = of(Unit.PERCENT).called("points");
    /** Times up to 90 s, and columns of short times. */
    public static final Notation SECONDS = of(Unit.SECOND);
    /** Probabilities of a test. */
    public static final Notation PROBABILITY = PLAIN.with(Rounding.PROBABILITY);

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** Less than this part of an interval is the rounding of the computer's own. */
    private static final double NEGLIGIBLE = 1e-9;

    private static final int DIGITS = 3;
    private static final double MOST_COUNT = 1e15;
    private static final double MOST_SECONDS = 90;
    /** Times up to this (s) are minutes and seconds, longer ones hours. */
    public static final double MOST_MINUTES = 3 * 3600;

    private static final Notation CLOCK =
            new Notation(Optional.of(Unit.SECOND), "min", Rounding.CLOCK, RoundingMode.HALF_UP);

    /** Numbers of {@code unit}. */
    public static Notation of(Unit unit) {
        return new Notation(Optional.of(unit), unit.shown(), Rounding.CERTAIN, RoundingMode.HALF_UP);
    }

    /** The usual one for a quantity of {@code kind} whose values go up to {@code greatest} (SI). */
    public static Notation of(Kind kind, double greatest, UnitSystem system) {
        return kind == Kind.TIME ? time(greatest) : of(Units.of(system).unitFor(kind, greatest));
    }

    /** Times of up to {@code greatest} (s): seconds, minutes and seconds, or hours. */
    public static Notation time(double greatest) {
        double size = Math.abs(greatest);
        return size <= MOST_SECONDS || !Double.isFinite(size) ? SECONDS : size <= MOST_MINUTES ? CLOCK : of(Unit.HOUR);
    }

    /** Of what the user gave, up to {@code greatest} (SI): the usual unit, with all digits that were given. */
    public static Notation given(Kind kind, double greatest, UnitSystem system) {
        Notation usual = of(kind, greatest, system);
        return usual.with(usual.isClock() ? Rounding.GIVEN_CLOCK : Rounding.GIVEN);
    }

    /** The same with another symbol, such as {@code person-min}. */
    public Notation called(String other) {
        return new Notation(unit, other, rounding, mode);
    }

    /** The same with other digits. */
    public Notation with(Rounding other) {
        return new Notation(unit, symbol, other, mode);
    }

    /** The same for what must not be exceeded: rounded down. */
    public Notation atMost() {
        return towards(RoundingMode.FLOOR);
    }

    /** The same for the least that is enough: rounded up. */
    public Notation atLeast() {
        return towards(RoundingMode.CEILING);
    }

    /** The same rounded to the side that {@code side} says. */
    public Notation towards(RoundingMode side) {
        return new Notation(unit, symbol, rounding, side);
    }

    /** The same for a value to be set that was found by trying it; minutes and seconds stay. */
    public Notation setting() {
        return isClock() ? this : with(Rounding.SETTING);
    }

    /** Whether a time is written as minutes and seconds, such as 2:05. */
    public boolean isClock() {
        return rounding == Rounding.CLOCK || rounding == Rounding.GIVEN_CLOCK;
    }

    /** Of a file of values: times in seconds, shares from 0 to 1, all else in the same unit, which is always named. */
    public Notation ofFile() {
        if (unit.filter(Unit.PERCENT::equals).isPresent()) {
            return PLAIN;
        }
        return isClock() ? SECONDS : symbol.isEmpty() ? unit.map(Notation::of).orElse(this) : this;
    }

    /** {@code si} in the unit. */
    public double value(double si) {
        return unit.map(given -> given.fromSi(si)).orElse(si);
    }

    /** The value (SI) that {@link #text(double)} writes of a time {@code si} (s). */
    public double rounded(double si) {
        return isClock() ? Math.floor(si + 0.5) : unit.orElse(Unit.SECOND).toSi(Numbers.rounded(value(si), DIGITS));
    }

    /** The number without its unit, to three digits. */
    public String number(double si) {
        return number(si, 0);
    }

    /**
     * The number without its unit.
     *
     * @param half half the width of its interval (SI); 0 for none
     */
    public String number(double si, double half) {
        if (!Double.isFinite(si)) {
            return Numbers.text(si);
        }
        if (this.equals(SHARE)) {
            return share(si, half);
        }
        boolean isCount = unit.isEmpty()
                && rounding == Rounding.CERTAIN
                && si == Math.rint(si)
                && Math.abs(si) < MOST_COUNT
                && !(half > 0);
        return isCount ? Numbers.count((long) si) : rounding.text(value(si), value(half), mode);
    }

    /** The number with its unit. */
    public String text(double si) {
        return text(si, 0);
    }

    /** The number with its unit; {@code half} as for {@link #number(double, double)}. */
    public String text(double si, double half) {
        return Double.isFinite(si) ? written(number(si, half)) : number(si);
    }

    /** From {@code low} to {@code high}, in digits that tell the two apart: "2.1 to 2.9 m". */
    public String range(double low, double high) {
        return range(low, high, Math.abs(high - low) / 2);
    }

    /** The same in digits for an interval of half the width {@code half}. */
    public String range(double low, double high, double half) {
        return end(low, half) + " to " + written(end(high, half));
    }

    /** An end of an interval without its unit: never none for what is not, since its sign may decide. */
    public String end(double si, double half) {
        boolean seemsNone = rounding == Rounding.CERTAIN
                && Numbers.roundsToNothing(value(si), value(half))
                && Math.abs(si) > NEGLIGIBLE * half;
        return seemsNone && !this.equals(SHARE) ? Numbers.text(value(si), 1) : number(si, half);
    }

    /** The unit behind a number that was written. */
    private String written(String number) {
        return symbol.isEmpty() ? number : number + ' ' + symbol;
    }

    /** Never none or all for what is neither. */
    private static String share(double share, double half) {
        if (half > 0 && Double.isFinite(half)) {
            int decimals = Math.max(0, -Numbers.lastCertain(100 * half));
            BigDecimal percent = BigDecimal.valueOf(100 * share).setScale(decimals, RoundingMode.HALF_UP);
            boolean isPlain = percent.signum() != 0 && percent.compareTo(HUNDRED) != 0;
            if (isPlain || share == 0 || share == 1) {
                return percent.signum() == 0 ? "0" : percent.compareTo(HUNDRED) == 0 ? "100" : percent.toPlainString();
            }
        }
        return share > 0.9 && share <= 1 ? Numbers.percent(share) : Numbers.text(100 * share, DIGITS);
    }
}
