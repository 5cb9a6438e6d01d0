package runthrough.plant;

import java.util.Optional;

/**
 * The process section: what must not stop.
 *
 * @param drive its speed and its ramps
 * @param restart how it starts again after a starved stop
 * @param slowing running slower on a low level, if it can
 * @param downtime stops of the process for reasons of its own, if any
 * @param path fixed strip path from accumulator to process (m), {@code >= 0}
 * @param scrap strip that its stops and the joints cost
 * @param joints what joints do in it
 */
public record ProcessSection(
        Drive drive,
        Restart restart,
        Optional<Slowing> slowing,
        Optional<Downtime> downtime,
        double path,
        Scrap scrap,
        JointsInProcess joints) {

    public ProcessSection {
        Ranges.of("process").notNegative("path", path, Ranges.Of.LENGTH).refuse();
    }

    /** A process section that only runs: no restart delay, no slowing, no downtime, no scrap; joints run like any other strip. */
    public static ProcessSection running(double speed, double acceleration, double deceleration) {
        return new ProcessSection(
                new Drive(speed, acceleration, deceleration),
                new Restart(Double.NaN, Distribution.constant(0)),
                Optional.empty(),
                Optional.empty(),
                0,
                new Scrap(0, 0),
                new JointsInProcess(Optional.empty(), Optional.empty()));
    }

    /** Rated strip speed (m/s), for coils without a speed of their own. */
    public double speed() {
        return drive.speed();
    }

    /** Acceleration (m/s2); infinite when the speed rises at once. */
    public double acceleration() {
        return drive.acceleration();
    }

    /** Deceleration (m/s2); infinite when the speed falls at once. */
    public double deceleration() {
        return drive.deceleration();
    }

    /** Level from which it may restart after a starved stop (m); NaN for the default, see {@link Line#restartLevel}. */
    public double restartLevel() {
        return restart.level();
    }

    /** Time from being allowed to restart until it does (s). */
    public Distribution restartDelay() {
        return restart.delay();
    }

    /** Strip scrapped each time the process stops (m). */
    public double scrapPerStop() {
        return scrap.perStop();
    }

    /** Strip cut out with each joint after the process (m). */
    public double scrapPerJoint() {
        return scrap.perJoint();
    }

    /** Running slower while a joint passes, if it does. */
    public Optional<JointPassage> jointPassage() {
        return joints.passage();
    }

    /** Joints that break in the process, if they do. */
    public Optional<JointBreak> jointBreak() {
        return joints.breaking();
    }

    /** The same with another drive; what it slows to on a low level stays. */
    public ProcessSection withDrive(Drive other) {
        return new ProcessSection(other, restart, slowing, downtime, path, scrap, joints);
    }

    /** The same with another way to start again after a starved stop. */
    public ProcessSection withRestart(Restart other) {
        return new ProcessSection(drive, other, slowing, downtime, path, scrap, joints);
    }

    /** The same with another way to run slower on a low level. */
    public ProcessSection withSlowing(Optional<Slowing> other) {
        return new ProcessSection(drive, restart, other, downtime, path, scrap, joints);
    }

    /** The same with other downtime. */
    public ProcessSection withDowntime(Optional<Downtime> other) {
        return new ProcessSection(drive, restart, slowing, other, path, scrap, joints);
    }

    /** The same with another strip path from the accumulator (m), {@code >= 0}. */
    public ProcessSection withPath(double other) {
        return new ProcessSection(drive, restart, slowing, downtime, other, scrap, joints);
    }

    /** The same with other scrap. */
    public ProcessSection withScrap(Scrap other) {
        return new ProcessSection(drive, restart, slowing, downtime, path, other, joints);
    }

    /** The same with another way for joints to pass and to break. */
    public ProcessSection withJoints(JointsInProcess other) {
        return new ProcessSection(drive, restart, slowing, downtime, path, scrap, other);
    }

    /**
     * Speed and ramps.
     *
     * @param speed rated strip speed (m/s), {@code > 0}, for coils without a speed of their own
     * @param acceleration (m/s2), {@code > 0}; infinite when the speed rises at once
     * @param deceleration (m/s2), {@code > 0}; infinite when the speed falls at once
     */
    public record Drive(double speed, double acceleration, double deceleration) {
        public Drive {
            Ranges.of("process")
                    .finitePositive("speed", speed, Ranges.Of.SPEED)
                    .positive("acceleration", acceleration, Ranges.Of.ACCELERATION)
                    .positive("deceleration", deceleration, Ranges.Of.ACCELERATION)
                    .refuse();
        }

        /** The same with another rated speed (m/s), {@code > 0}. */
        public Drive withSpeed(double other) {
            return new Drive(other, acceleration, deceleration);
        }
    }

    /**
     * Starting again after a starved stop.
     *
     * @param level from which it may (m); NaN for the default, see {@link Line#restartLevel}
     * @param delay time from being allowed to until it does (s)
     */
    public record Restart(double level, Distribution delay) {
        public Restart {
            Ranges.of("restart").optionalLevel("level", level).refuse();
        }
    }

    /**
     * Strip scrapped in the process section or behind it.
     *
     * @param perStop each time the process stops (m), {@code >= 0}
     * @param perJoint cut out with each joint after the process (m), {@code >= 0}, half of each coil
     */
    public record Scrap(double perStop, double perJoint) {
        public Scrap {
            Ranges.of("process")
                    .notNegative("scrap per stop", perStop, Ranges.Of.LENGTH)
                    .notNegative("scrap per joint", perJoint, Ranges.Of.LENGTH)
                    .refuse();
        }
    }

    /**
     * What joints do in the process section.
     *
     * @param passage running slower while one passes, if it does
     * @param breaking that they break, if they do
     */
    public record JointsInProcess(Optional<JointPassage> passage, Optional<JointBreak> breaking) {}

    /**
     * Running slower while little strip is left.
     *
     * @param speed slowed strip speed (m/s), {@code > 0}
     * @param level at which slowing begins (m), {@code >= 0}
     * @param resumeLevel from which full speed is taken up again (m); NaN for the default, see {@link Line#resumeLevel}
     */
    public record Slowing(double speed, double level, double resumeLevel) {
        public Slowing {
            Ranges.of("slowing")
                    .finitePositive("speed", speed, Ranges.Of.SPEED)
                    .notNegative("level", level, Ranges.Of.LENGTH)
                    .optionalLevel("resume", resumeLevel)
                    .refuse();
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
            Ranges.of("joint passage")
                    .finitePositive("speed", speed, Ranges.Of.SPEED)
                    .notNegative("before", before, Ranges.Of.LENGTH)
                    .notNegative("after", after, Ranges.Of.LENGTH)
                    .refuse();
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
            Ranges.of("joint break")
                    .shareBelowOne("chance", chance)
                    .finitePositive("length", length, Ranges.Of.LENGTH)
                    .notNegative("scrap", scrap, Ranges.Of.LENGTH)
                    .refuse();
        }
    }
}
