package runthrough.report;

import java.util.Optional;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Numbers of a result as text in the user's units, to three digits; shares near 1 to the digits that matter. Results are
 * estimates, and more digits would claim more than is known.
 */
final class Texts {
    private static final int DIGITS = 3;
    /** Times up to this many seconds are given in seconds, as the trade speaks of joint times. */
    private static final double MOST_SECONDS = 600;

    private static final double MOST_MINUTES = 3 * 3600;

    private final Units units;
    private final boolean chance;

    Texts(RunThroughResult result) {
        this(result.system(), result.verdict().chance());
    }

    /** Texts in the units of {@code system}; without {@code chance} no intervals are told, since then the numbers are exact. */
    Texts(UnitSystem system, boolean chance) {
        this.units = Units.of(system);
        this.chance = chance;
    }

    String length(double metres) {
        return text(metres, units.unit(Kind.LENGTH));
    }

    String speed(double metresPerSecond) {
        return text(metresPerSecond, units.unit(Kind.SPEED));
    }

    String time(double seconds) {
        return text(seconds, clock(seconds));
    }

    String share(double share) {
        return share > 0.9 && share <= 1 ? units.text(Kind.SHARE, share) : text(share, Unit.PERCENT);
    }

    /** A quantity (SI) in the unit that suits it. */
    String of(Kind kind, double si) {
        return switch (kind) {
            case SHARE -> share(si);
            case TIME -> time(si);
            default -> text(si, units.unitFor(kind, si));
        };
    }

    /** A quantity (SI) in a given unit. */
    String in(Unit unit, double si) {
        return unit == Unit.PERCENT ? share(si) : text(si, unit);
    }

    /** A plain number. */
    static String number(double value) {
        return Numbers.text(value, DIGITS);
    }

    /** A whole number, its thousands apart. */
    static String count(long number) {
        String digits = Long.toString(number);
        return number < 10_000 ? digits : digits.replaceAll("(?<=\\d)(?=(\\d{3})+$)", " ");
    }

    /** The unit for a quantity of this kind and size. */
    Unit unit(Kind kind, double si) {
        return kind == Kind.TIME ? clock(si) : units.unitFor(kind, si);
    }

    /** A mean in the unit that suits it, to the digits that its interval leaves certain. */
    String mean(Kind kind, Estimate estimate) {
        Unit unit = unit(kind, estimate.mean());
        return unit == Unit.PERCENT
                ? share(estimate.mean())
                : certain(unit.fromSi(estimate.mean()), halfWidth(estimate, unit)) + " " + unit.symbol();
    }

    /** Its interval in the same unit, such as "2.1 to 2.9 m"; empty without one. */
    Optional<String> interval(Kind kind, Estimate estimate) {
        Unit unit = unit(kind, estimate.mean());
        return known(estimate).map(interval -> {
            if (unit == Unit.PERCENT) {
                String low = share(interval.low());
                return low.substring(0, low.length() - 2) + " to " + share(interval.high());
            }
            double half = halfWidth(estimate, unit);
            String high = certain(unit.fromSi(interval.high()), half) + " " + unit.symbol();
            return range(interval, certain(unit.fromSi(interval.low()), half), high);
        });
    }

    /** The mean of a plain number, to the digits that its interval leaves certain. */
    String mean(Estimate estimate) {
        return certain(estimate.mean(), known(estimate).map(Interval::halfWidth).orElse(0.0));
    }

    /** The interval of a plain number, such as "0.8 to 1.4"; empty without one. */
    Optional<String> interval(Estimate estimate) {
        double half = known(estimate).map(Interval::halfWidth).orElse(0.0);
        return known(estimate)
                .map(interval -> range(interval, certain(interval.low(), half), certain(interval.high(), half)));
    }

    private static String range(Interval interval, String low, String high) {
        return interval.method() == Interval.Method.RULE_OF_THREE ? "at most " + high : low + " to " + high;
    }

    /** The interval; none where nothing is left to chance, since then the numbers are exact. */
    private Optional<Interval> known(Estimate estimate) {
        return estimate.interval().filter(interval -> chance);
    }

    private double halfWidth(Estimate estimate, Unit unit) {
        return unit.fromSi(known(estimate).map(Interval::halfWidth).orElse(0.0));
    }

    /**
     * A number with as many decimals as half its interval leaves certain, see {@link Numbers#lastCertain}; to three digits
     * without an interval.
     */
    static String certain(double value, double halfWidth) {
        if (!(halfWidth > 0) || value == 0) {
            return number(value);
        }
        return Numbers.fixed(value, Math.max(0, -Numbers.lastCertain(halfWidth)));
    }

    private static Unit clock(double seconds) {
        double size = Math.abs(seconds);
        return size <= MOST_SECONDS ? Unit.SECOND : size <= MOST_MINUTES ? Unit.MINUTE : Unit.HOUR;
    }

    private static String text(double si, Unit unit) {
        String number = Numbers.text(unit.fromSi(si), DIGITS);
        return Double.isFinite(si) ? number + " " + unit.symbol() : number;
    }
}
