package runthrough.report.described;

import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;

/** Numbers as the user described them: to six digits, so that nothing is rounded that was given. */
public final class InputTexts {
    private static final int DIGITS = 6;
    private static final double MOST_SECONDS = 600;

    private final Units units;

    public InputTexts(UnitSystem system) {
        this.units = Units.of(system);
    }

    /** A quantity (SI), or "no limit" for infinity. */
    public String text(Kind kind, double si) {
        if (Double.isInfinite(si)) {
            return "no limit";
        }
        Unit unit = kind == Kind.TIME && si <= MOST_SECONDS ? Unit.SECOND : units.unitFor(kind, si);
        return Numbers.text(unit.fromSi(si), DIGITS) + " " + raised(unit.symbol());
    }

    /** Powers in a unit's symbol raised: m/s² for m/s2. */
    public static String raised(String text) {
        return text.replaceAll("(?<=/(s|m|in|ft))2$", "²").replaceAll("(?<=/(s|m|in|ft))3$", "³");
    }

    /** An acceleration (m/s2); infinity is a speed that changes at once. */
    public String acceleration(double si) {
        return Double.isInfinite(si) ? "at once" : text(Kind.ACCELERATION, si);
    }
}
