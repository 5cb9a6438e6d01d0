package runthrough.chart;

import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;

/**
 * The units of a chart's axes and of its reading. A reading has three digits: nobody reads more off a picture.
 *
 * @param length of axes of strip
 * @param speed of axes of speed
 */
public record ChartUnits(Unit length, Unit speed, Units units) {
    private static final int DIGITS = 3;
    private static final double MOST_SECONDS = 90;
    private static final double MOST_MINUTES = 3 * 3600;

    public static ChartUnits of(UnitSystem system) {
        Units units = Units.of(system);
        return new ChartUnits(units.unit(Kind.LENGTH), units.unit(Kind.SPEED), units);
    }

    /** The unit of an axis of times up to {@code greatest} (s): seconds up to 90 s, as in texts, then minutes, then hours. */
    public static Unit clock(double greatest) {
        return greatest <= MOST_SECONDS ? Unit.SECOND : greatest <= MOST_MINUTES ? Unit.MINUTE : Unit.HOUR;
    }

    /** A length of strip (m) for a sentence. */
    public String length(double metres) {
        return text(metres, length);
    }

    /** A margin (m) for a sentence, rounded down as in texts: there is no more than that. */
    public String margin(double metres) {
        return Notation.of(length).atMost().text(metres);
    }

    /** A time (s) for a sentence, by the rule of all texts: above 90 s as min:s. */
    public String time(double seconds) {
        return Notation.time(seconds).text(seconds);
    }

    /** A quantity (SI) for a sentence. */
    public static String text(double si, Unit unit) {
        return Numbers.thousandsApart(Numbers.text(unit.fromSi(si), DIGITS)) + " " + unit.symbol();
    }

    /** A target, or what it allows to fail, with all digits that were given. */
    public static String target(double share) {
        return Notation.GIVEN_SHARE.text(share);
    }

    /** A share for a sentence. */
    public String share(double share) {
        // Near 1 the digits that matter are those of what is missing.
        return share < 0.9 ? text(share, Unit.PERCENT) : units.text(Kind.SHARE, share);
    }
}
