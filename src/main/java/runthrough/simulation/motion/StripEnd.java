package runthrough.simulation.motion;

/**
 * One of the two moving ends of the strip, at the entry or in the process: its speed, and the ramp that it is on. SI units;
 * the acceleration is signed.
 *
 * <p>Rules MOTION-3, NUM-1.
 */
final class StripEnd {
    /** At which it speeds up (m/s2), {@code > 0}, infinite for at once. */
    final double up;
    /** At which it slows down (m/s2), {@code > 0}, infinite for at once. */
    final double down;

    double speed;
    double acceleration;
    /** The speed that it is ramping to, or has. */
    double goal;

    StripEnd(double up, double down) {
        this.up = up;
        this.down = down;
    }

    /** Takes {@code at} as its speed at once, and keeps it. */
    void hold(double at) {
        speed = at;
        acceleration = 0;
        goal = at;
    }

    /** Goes towards {@code target}: at once where the rate is infinite. */
    void rampTo(double target) {
        goal = target;
        if (speed == target) {
            acceleration = 0;
        } else if (speed < target) {
            rampAt(up);
        } else {
            rampAt(-down);
        }
    }

    private void rampAt(double rate) {
        if (Double.isInfinite(rate)) {
            arrive();
        } else {
            acceleration = rate;
        }
    }

    /** Has the speed of {@code other} and shares its ramp. */
    void follow(StripEnd other) {
        speed = other.speed;
        acceleration = other.acceleration;
    }

    /** Seconds until the ramp ends. */
    double timeToGoal() {
        return acceleration == 0 ? Kinematics.NEVER : Math.max(0, (goal - speed) / acceleration);
    }

    /** The ramp has ended: the speed is exactly what it headed for. */
    void arrive() {
        speed = goal;
        acceleration = 0;
    }

    /** Whether it is at rest and will stay so until something moves it. */
    boolean stands() {
        return speed == 0 && acceleration == 0;
    }

    /** Moves on by {@code dt} seconds, {@code >= 0}, and gives the strip that passed (m). */
    double advance(double dt) {
        double metres = dt * (speed + dt * acceleration / 2);
        speed += dt * acceleration;
        return metres;
    }
}
