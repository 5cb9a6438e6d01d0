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
 * @param scrapPerJoint strip cut out with each joint after the process (m), {@code >= 0}, half of each coil
 * @param jointPassage running slower while a joint passes, if it does
 * @param jointBreak joints that break in the process, if they do
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
        double scrapPerStop,
        double scrapPerJoint,
        Optional<JointPassage> jointPassage,
        Optional<JointBreak> jointBreak) {

    public ProcessSection {
        Ranges.finitePositive("speed", speed);
        Ranges.positive("acceleration", acceleration);
        Ranges.positive("deceleration", deceleration);
        Ranges.optionalLevel("restart level", restartLevel);
        Ranges.notNegative("path", path);
        Ranges.notNegative("scrap per stop", scrapPerStop);
        Ranges.notNegative("scrap per joint", scrapPerJoint);
    }

    /** A process section in which joints run like any other strip and never break. */
    public ProcessSection(
            double speed,
            double acceleration,
            double deceleration,
            double restartLevel,
            Distribution restartDelay,
            Optional<Slowing> slowing,
            Optional<Downtime> downtime,
            double path,
            double scrapPerStop) {
        this(
                speed,
                acceleration,
                deceleration,
                restartLevel,
                restartDelay,
                slowing,
                downtime,
                path,
                scrapPerStop,
                0,
                Optional.empty(),
                Optional.empty());
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
                other,
                acceleration,
                deceleration,
                restartLevel,
                restartDelay,
                slowing,
                downtime,
                path,
                scrapPerStop,
                scrapPerJoint,
                jointPassage,
                jointBreak);
    }

    /** The same with other ramps (m/s2), both {@code > 0}; infinite where the speed changes at once. */
    public ProcessSection withRamps(double up, double down) {
        return new ProcessSection(
                speed,
                up,
                down,
                restartLevel,
                restartDelay,
                slowing,
                downtime,
                path,
                scrapPerStop,
                scrapPerJoint,
                jointPassage,
                jointBreak);
    }

    /** The same with another way to start again after a starved stop. */
    public ProcessSection withRestart(double level, Distribution delay) {
        return new ProcessSection(
                speed,
                acceleration,
                deceleration,
                level,
                delay,
                slowing,
                downtime,
                path,
                scrapPerStop,
                scrapPerJoint,
                jointPassage,
                jointBreak);
    }

    /** The same with another way to run slower on a low level. */
    public ProcessSection withSlowing(Optional<Slowing> other) {
        return new ProcessSection(
                speed,
                acceleration,
                deceleration,
                restartLevel,
                restartDelay,
                other,
                downtime,
                path,
                scrapPerStop,
                scrapPerJoint,
                jointPassage,
                jointBreak);
    }

    /** The same with other downtime. */
    public ProcessSection withDowntime(Optional<Downtime> other) {
        return new ProcessSection(
                speed,
                acceleration,
                deceleration,
                restartLevel,
                restartDelay,
                slowing,
                other,
                path,
                scrapPerStop,
                scrapPerJoint,
                jointPassage,
                jointBreak);
    }

    /** The same with another strip path from the accumulator (m), {@code >= 0}. */
    public ProcessSection withPath(double other) {
        return new ProcessSection(
                speed,
                acceleration,
                deceleration,
                restartLevel,
                restartDelay,
                slowing,
                downtime,
                other,
                scrapPerStop,
                scrapPerJoint,
                jointPassage,
                jointBreak);
    }

    /** The same with other scrap (m), {@code >= 0}: of each stop, and cut out with each joint. */
    public ProcessSection withScrap(double perStop, double perJoint) {
        return new ProcessSection(
                speed,
                acceleration,
                deceleration,
                restartLevel,
                restartDelay,
                slowing,
                downtime,
                path,
                perStop,
                perJoint,
                jointPassage,
                jointBreak);
    }

    /** The same with another way for joints to pass and to break. */
    public ProcessSection withJoints(Optional<JointPassage> passage, Optional<JointBreak> breaking) {
        return new ProcessSection(
                speed,
                acceleration,
                deceleration,
                restartLevel,
                restartDelay,
                slowing,
                downtime,
                path,
                scrapPerStop,
                scrapPerJoint,
                passage,
                breaking);
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

    /**
     * Running slower while a joint passes.
     *
     * @param speed at most, while it passes (m/s), {@code > 0}
     * @param before so much of the strip before the joint (m), {@code >= 0}
     * @param after and so much behind it (m), {@code >= 0}
     */
    public record JointPassage(double speed, double before, double after) {
        public JointPassage {
            Ranges.finitePositive("joint passage speed", speed);
            Ranges.notNegative("strip before the joint", before);
            Ranges.notNegative("strip after the joint", after);
        }
    }

    /**
     * Joints that break in the process. Rule CHECK-30.
     *
     * @param chance that a joint breaks, in [0, 1)
     * @param length of the process section, anywhere in which it may break (m), {@code > 0}
     * @param repair how long the process stands, from coming to rest (s)
     * @param scrap strip scrapped by a break on top of that of a stop (m), {@code >= 0}
     */
    public record JointBreak(double chance, double length, Distribution repair, double scrap) {
        public JointBreak {
            if (!(chance >= 0 && chance < 1)) {
                throw new IllegalArgumentException("break chance = " + chance + "; must be 0 or more and below 1");
            }
            Ranges.finitePositive("length of the process section", length);
            Ranges.notNegative("scrap of a break", scrap);
        }
    }
}
