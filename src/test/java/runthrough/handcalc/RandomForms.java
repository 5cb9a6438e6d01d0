package runthrough.handcalc;

import java.util.Optional;
import java.util.Random;
import runthrough.plant.Entry.Creep;

/** Closed forms with random givens that meet what they assume; the same seed always gives the same. */
final class RandomForms {
    private final Random random;

    RandomForms(long seed) {
        random = new Random(seed);
    }

    double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    boolean chance(double p) {
        return random.nextDouble() < p;
    }

    int upTo(int greatest) {
        return 1 + random.nextInt(greatest);
    }

    /** An acceleration (m/s2); one in eight is at once. */
    double acceleration() {
        return chance(0.125) ? Double.POSITIVE_INFINITY : between(0.05, 2);
    }

    /** Creep below half of {@code speed} and long enough to stop from, for one in three. */
    Optional<Creep> creep(double speed, double deceleration) {
        if (!chance(1.0 / 3)) {
            return Optional.empty();
        }
        double creepSpeed = between(0.05, 0.5) * speed;
        return Optional.of(
                new Creep(creepSpeed, between(1.01, 5) * creepSpeed * creepSpeed / (2 * deceleration) + 0.2));
    }

    /** Anything from a slitter's loop to a galvanising line's tower. */
    ClosedForms forms() {
        double speed = between(0.2, 4);
        double deceleration = acceleration();
        return new ClosedForms(
                new StopAndGo(speed, acceleration(), deceleration, creep(speed, deceleration)),
                // One in eight so fast that its ramps alone fill the accumulator.
                speed + (chance(0.125) ? between(5, 40) : between(0.05, 3)),
                between(20, 900),
                between(0, 15),
                chance(0.5) ? Double.POSITIVE_INFINITY : between(0.02, 2),
                acceleration(),
                between(100, 3000));
    }
}
