package runthrough.simulation;

/**
 * The strip in motion: speeds, level and what is left of the running coil, between events integrated in closed form. SI
 * units; accelerations are signed.
 */
final class LineState {
    /** Entry speed and acceleration. */
    double entrySpeed;

    double entryAcceleration;
    /** Process speed and acceleration. */
    double processSpeed;

    double processAcceleration;
    /** Level above the accumulator's empty position. */
    double level;
    /** Usable strip of the running coil that has yet to pass the joiner. */
    double remaining;
    /** Strip past the joiner, and through the process section, since time 0. */
    double entered;

    double processed;
    /** Lowest and highest level of the last advance, its ends included. */
    double lowest;

    double highest;
    /** Integral of the level over the last advance (m s). */
    double levelIntegral;

    /** Rate of change of the level (m/s). */
    double levelRate() {
        return entrySpeed - processSpeed;
    }

    /** Half the rate of change of that rate (m/s2). */
    double levelBend() {
        return (entryAcceleration - processAcceleration) / 2;
    }

    /** Moves on by {@code dt} seconds, {@code >= 0}, at the present accelerations. */
    void advance(double dt) {
        double rate = levelRate();
        double bend = levelBend();
        double endLevel = level + dt * (rate + dt * bend);
        lowest = Math.min(level, endLevel);
        highest = Math.max(level, endLevel);
        double endRate = rate + 2 * bend * dt;
        if (rate * endRate < 0) {
            double turn = level - rate * rate / (4 * bend);
            lowest = Math.min(lowest, turn);
            highest = Math.max(highest, turn);
        }
        levelIntegral = dt * (level + dt * (rate / 2 + dt * bend / 3));
        level = endLevel;

        double in = dt * (entrySpeed + dt * entryAcceleration / 2);
        entered += in;
        remaining -= in;
        processed += dt * (processSpeed + dt * processAcceleration / 2);
        entrySpeed += dt * entryAcceleration;
        processSpeed += dt * processAcceleration;
    }

    /** Sets the entry going towards {@code goal}: at once where {@code rate} is infinite. */
    void rampEntry(double goal, double up, double down) {
        if (entrySpeed == goal) {
            entryAcceleration = 0;
        } else if (entrySpeed < goal) {
            entryAcceleration = finiteOrZero(up);
            entrySpeed = entryAcceleration == 0 ? goal : entrySpeed;
        } else {
            entryAcceleration = -finiteOrZero(down);
            entrySpeed = entryAcceleration == 0 ? goal : entrySpeed;
        }
    }

    /** Sets the process going towards {@code goal}: at once where the rate is infinite. */
    void rampProcess(double goal, double up, double down) {
        if (processSpeed == goal) {
            processAcceleration = 0;
        } else if (processSpeed < goal) {
            processAcceleration = finiteOrZero(up);
            processSpeed = processAcceleration == 0 ? goal : processSpeed;
        } else {
            processAcceleration = -finiteOrZero(down);
            processSpeed = processAcceleration == 0 ? goal : processSpeed;
        }
    }

    private static double finiteOrZero(double rate) {
        return rate < Double.POSITIVE_INFINITY ? rate : 0;
    }
}
