package runthrough.plant;

import java.util.Optional;

/**
 * The entry section: from the uncoilers to the joiner.
 *
 * <p>Rule ENTRY-2.
 *
 * @param uncoilers how many, {@code >= 1}
 * @param topSpeed greatest strip speed (m/s), {@code > 0}
 * @param acceleration (m/s2), {@code > 0}; infinite when the speed rises at once
 * @param deceleration (m/s2), {@code > 0}; infinite when the speed falls at once
 * @param creep slow running before the tail, if any
 * @param uncoilerPath strip path from uncoiler to joiner (m), {@code >= 0}
 */
public record Entry(
        int uncoilers,
        double topSpeed,
        double acceleration,
        double deceleration,
        Optional<Creep> creep,
        double uncoilerPath) {

    public Entry {
        Ranges.of("entry")
                .atLeastOne("uncoilers", uncoilers)
                .finitePositive("top speed", topSpeed, Ranges.Of.SPEED)
                .positive("acceleration", acceleration, Ranges.Of.ACCELERATION)
                .positive("deceleration", deceleration, Ranges.Of.ACCELERATION)
                .notNegative("uncoiler path", uncoilerPath, Ranges.Of.LENGTH)
                .refuse();
    }

    /** The same with another number of uncoilers, {@code >= 1}. */
    public Entry withUncoilers(int number) {
        return new Entry(number, topSpeed, acceleration, deceleration, creep, uncoilerPath);
    }

    /** The same with another top speed (m/s), {@code > 0}. */
    public Entry withTopSpeed(double speed) {
        return new Entry(uncoilers, speed, acceleration, deceleration, creep, uncoilerPath);
    }

    /**
     * Creep speed over the last metres of a coil.
     *
     * @param speed (m/s), {@code > 0}
     * @param length over which it is held (m), {@code > 0}
     */
    public record Creep(double speed, double length) {
        public Creep {
            Ranges.of("creep")
                    .finitePositive("speed", speed, Ranges.Of.SPEED)
                    .finitePositive("length", length, Ranges.Of.LENGTH)
                    .refuse();
        }
    }
}
