package runthrough.plant;

import java.util.Optional;

/**
 * The process section: what must not stop.
 *
 * @param speed rated strip speed (m/s), {@code > 0}, for coils without a speed of their own
 * @param acceleration (m/s2), {@code > 0}; infinite when the speed rises at once
 * @param deceleration (m/s2), {@code > 0}; infinite when the speed falls at once
 * @param restartLevel level from which it may restart after a starved stop (m); NaN for the default, see {@link
 *     Line#restartLevel}
 * @param restartDelay time from being allowed to restart until it does (s)
 * @param slowing running slower on a low level, if it can
 * @param downtime stops of the process for reasons of its own, if any
 * @param path fixed strip path from accumulator to process (m), {@code >= 0}
 * @param scrapPerStop strip scrapped each time the process stops (m), {@code >= 0}
 */
public record ProcessSection(
        double speed,
        double acceleration,
        double deceleration,
        double restartLevel,
        Distribution restartDelay,
        Optional<Slowing> slowing,
        Optional<Downtime> downtime,
        double path,
        double scrapPerStop) {

    public ProcessSection {
        Ranges.finitePositive("speed", speed);
        Ranges.positive("acceleration", acceleration);
        Ranges.positive("deceleration", deceleration);
        Ranges.optionalLevel("restart level", restartLevel);
        Ranges.notNegative("path", path);
        Ranges.notNegative("scrap per stop", scrapPerStop);
    }

    /** A process section that only runs: no restart delay, no slowing, no downtime. */
    public static ProcessSection running(double speed, double acceleration, double deceleration) {
        return new ProcessSection(
                speed,
                acceleration,
                deceleration,
                Double.NaN,
                Distribution.constant(0),
                Optional.empty(),
                Optional.empty(),
                0,
                0);
    }

    /** The same with another rated speed (m/s), {@code > 0}; what it slows to on a low level stays. */
    public ProcessSection withSpeed(double other) {
        return new ProcessSection(
                other, acceleration, deceleration, restartLevel, restartDelay, slowing, downtime, path, scrapPerStop);
    }

    /**
     * Running slower while little strip is left.
     *
     * @param speed slowed strip speed (m/s), {@code > 0}
     * @param level at which slowing begins (m), {@code >= 0}
     * @param resumeLevel from which full speed is taken up again (m); NaN for the default, see {@link Line#resumeLevel}
     */
    public record Slowing(double speed, double level, double resumeLevel) {
        public Slowing {
            Ranges.finitePositive("slowed speed", speed);
            Ranges.notNegative("slowing level", level);
            Ranges.optionalLevel("resume level", resumeLevel);
        }
    }

    /**
     * Process downtime: stops for reasons of the process itself, such as tool changes, jams, size changes.
     *
     * @param runningTime time from the end of one until the next falls due, counted while the process moves (s)
     * @param standingTime how long it stands, from coming to rest (s)
     */
    public record Downtime(Distribution runningTime, Distribution standingTime) {

        /** Whether they always come after the same time and last the same time. */
        public boolean isConstant() {
            return runningTime.isConstant() && standingTime.isConstant();
        }
    }
}
