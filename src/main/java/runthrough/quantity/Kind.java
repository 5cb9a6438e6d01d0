package runthrough.quantity;

import java.util.List;

/** What a result is about, which decides the units it is shown in. */
public enum Kind {
    /** Levels, coil lengths, metres processed (m). */
    LENGTH,
    /** Strip thickness (m). */
    THICKNESS,
    /** Strip width (m). */
    WIDTH,
    /** Diameters and radii of coils, rolls and wraps (m). */
    DIAMETER,
    /** Strip speed (m/s). */
    SPEED,
    /** Speed of a weld torch or shear across the strip (m/s). */
    TRAVEL_SPEED,
    /** Acceleration and deceleration (m/s2). */
    ACCELERATION,
    /** Durations (s). */
    TIME,
    /** Mass of coils and of scrap (kg). */
    MASS,
    /** Density (kg/m3). */
    DENSITY,
    /** Modulus and yield stress (Pa). */
    STRESS,
    /** Force in the strip (N). */
    FORCE,
    /** Torque at a mandrel (N m). */
    TORQUE,
    /** Power of a drive (W). */
    POWER,
    /** A share from 0 to 1. */
    SHARE,
    /** Output as strip length over time (m/s). */
    RATE_LENGTH,
    /** Output as mass over time (kg/s). */
    RATE_MASS;

    /** The units it is shown in, of rising size; the first is the usual one. */
    List<Unit> units(UnitSystem system) {
        boolean metric = system == UnitSystem.METRIC;
        return switch (this) {
            case LENGTH -> List.of(metric ? Unit.METRE : Unit.FOOT);
            case THICKNESS, WIDTH, DIAMETER -> List.of(metric ? Unit.MILLIMETRE : Unit.INCH);
            case SPEED -> List.of(metric ? Unit.METRE_PER_MINUTE : Unit.FOOT_PER_MINUTE);
            case TRAVEL_SPEED -> List.of(metric ? Unit.MILLIMETRE_PER_MINUTE : Unit.INCH_PER_MINUTE);
            case ACCELERATION -> List.of(metric ? Unit.METRE_PER_SECOND_SQUARED : Unit.FOOT_PER_SECOND_SQUARED);
            case TIME -> List.of(Unit.SECOND, Unit.MINUTE, Unit.HOUR);
            case MASS -> metric ? List.of(Unit.KILOGRAM, Unit.TONNE) : List.of(Unit.POUND, Unit.SHORT_TON);
            case DENSITY -> List.of(metric ? Unit.KILOGRAM_PER_CUBIC_METRE : Unit.POUND_PER_CUBIC_INCH);
            case STRESS -> metric ? List.of(Unit.MEGAPASCAL, Unit.GIGAPASCAL) : List.of(Unit.KILOPOUND_PER_SQUARE_INCH);
            case FORCE -> metric ? List.of(Unit.NEWTON, Unit.KILONEWTON) : List.of(Unit.POUND_FORCE);
            case TORQUE -> metric ? List.of(Unit.NEWTON_METRE, Unit.KILONEWTON_METRE) : List.of(Unit.POUND_FORCE_FOOT);
            case POWER -> metric ? List.of(Unit.KILOWATT) : List.of(Unit.HORSEPOWER);
            case SHARE -> List.of(Unit.PERCENT);
            case RATE_LENGTH -> List.of(metric ? Unit.METRE_PER_HOUR : Unit.FOOT_PER_HOUR);
            case RATE_MASS -> List.of(metric ? Unit.TONNE_PER_HOUR : Unit.SHORT_TON_PER_HOUR);
        };
    }
}
