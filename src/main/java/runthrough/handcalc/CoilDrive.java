package runthrough.handcalc;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Coil;
import runthrough.plant.Line;

/**
 * What it takes to speed up a full coil on its uncoiler with the entry's acceleration: the coil is a solid of revolution that
 * turns with its mandrel, and the strip leaves it at its outer radius.
 *
 * <p>Moment of inertia of a hollow cylinder about its axis, {@code J = m (Ro^2 + Ri^2)/2}; torque {@code M = J a/Ro}, since the
 * strip speed is {@code omega Ro}; force in the strip {@code F = M/Ro}; power {@code P = F v}, most at the speed at which the
 * ramp ends. Source: elementary mechanics of rotation about a fixed axis, as in D. Halliday, R. Resnick and J. Walker,
 * Fundamentals of Physics, chapter on rotation (moments of inertia of solids, Newton's second distribution for rotation, power); cited
 * from memory. Left out: mandrel and drive, friction, strip tension, bending, and the strip that is already off the coil.
 *
 * @param coil the heaviest to turn of the line
 * @param mass m (kg), of a coil of mean size
 * @param outer outer diameter (m)
 * @param inner inner diameter (m)
 * @param acceleration a of the strip (m/s2), finite
 * @param speed v at which the ramp ends (m/s)
 */
public record CoilDrive(Coil coil, double mass, double outer, double inner, double acceleration, double speed) {

    /**
     * The kind of coil that takes the most force.
     *
     * @return empty where speeds change at once, which no drive does, or where no coil has diameters
     */
    public static Optional<CoilDrive> of(Line line) {
        double acceleration = line.headAcceleration();
        if (Double.isInfinite(acceleration)) {
            return Optional.empty();
        }
        return line.coils().stream()
                .flatMap(coil -> of(line, coil, acceleration).stream())
                // The first of equals, so that the same line always shows the same coil.
                .reduce((most, other) -> other.force() > most.force() ? other : most);
    }

    private static Optional<CoilDrive> of(Line line, Coil coil, double acceleration) {
        OptionalDouble inner = coil.coreDiameter();
        OptionalDouble outer = coil.outerDiameter();
        if (inner.isEmpty() || outer.isEmpty()) {
            return Optional.empty();
        }
        double mass = coil.meanLength() * coil.massPerMetre();
        double top = line.practice().isOneStrip()
                ? line.ratedSpeed(coil)
                : line.entry().topSpeed();
        return Optional.of(new CoilDrive(coil, mass, outer.getAsDouble(), inner.getAsDouble(), acceleration, top));
    }

    /** Moment of inertia J about the mandrel (kg m2). */
    public double inertia() {
        return mass * (outer * outer + inner * inner) / 8;
    }

    /** Torque M at the mandrel (N m). */
    public double torque() {
        return inertia() * acceleration / (outer / 2);
    }

    /** Force F in the strip, the same by either end (N). */
    public double force() {
        return torque() / (outer / 2);
    }

    /** Power P at the end of the ramp (W). */
    public double power() {
        return force() * speed;
    }
}
