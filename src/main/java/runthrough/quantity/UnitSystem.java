package runthrough.quantity;

/** The units in which people read results. */
public enum UnitSystem {
    /** Metres, metres per minute, kilograms and tonnes. */
    METRIC,
    /** Feet, feet per minute, pounds and short tons. */
    US_CUSTOMARY
}
