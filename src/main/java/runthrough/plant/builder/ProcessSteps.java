package runthrough.plant.builder;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.ProcessSection.Drive;
import runthrough.plant.check.LinePart;

/** What must not stop: the process section. */
abstract class ProcessSteps<B> extends PracticeSteps<B> {
    private boolean hasProcess;
    private ProcessSection process = ProcessSection.running(1, AT_ONCE, AT_ONCE);

    /**
     * The drive of the process section.
     *
     * @param speed rated strip speed (m/s), {@code > 0}
     * @param acceleration (m/s2), {@code > 0}
     * @param deceleration (m/s2), {@code > 0}
     */
    public B process(double speed, double acceleration, double deceleration) {
        hasProcess = true;
        refusals.tell(LinePart.PROCESS_SPEED, () -> drive(process.drive().withSpeed(speed)));
        refusals.tell(
                LinePart.PROCESS_ACCELERATION,
                () -> drive(new Drive(process.speed(), acceleration, process.deceleration())));
        refusals.tell(
                LinePart.PROCESS_DECELERATION,
                () -> drive(new Drive(process.speed(), process.acceleration(), deceleration)));
        return self();
    }

    /** The process section as a whole, in the place of what was said of it. */
    public B process(ProcessSection whole) {
        Objects.requireNonNull(whole, "whole");
        hasProcess = true;
        process = whole;
        return self();
    }

    /**
     * When the process starts again after a starved stop.
     *
     * @param level from which it may (m), {@code >= 0}; NaN for the usual one, see {@link Line#restartLevel}
     * @param delay from being allowed to until it does (s)
     */
    public B restart(double level, Distribution delay) {
        Objects.requireNonNull(delay, "delay");
        refusals.tell(
                LinePart.RESTART_LEVEL, () -> process = process.withRestart(new ProcessSection.Restart(level, delay)));
        return self();
    }

    /**
     * Running slower while little strip is left.
     *
     * @param speed slowed strip speed (m/s), {@code > 0}
     * @param level below which it begins (m), {@code >= 0}
     * @param resumeLevel from which full speed is taken up again (m); NaN for the usual one, see {@link Line#resumeLevel}
     */
    public B slowing(double speed, double level, double resumeLevel) {
        refusals.tell(
                LinePart.SLOWING,
                () -> process =
                        process.withSlowing(Optional.of(new ProcessSection.Slowing(speed, level, resumeLevel))));
        return self();
    }

    /**
     * Stops of the process that have nothing to do with coil changes.
     *
     * @param running time from the end of one until the next falls due, counted while the process moves (s)
     * @param standing how long it stands, from coming to rest (s)
     */
    public B downtime(Distribution running, Distribution standing) {
        Objects.requireNonNull(running, "running");
        Objects.requireNonNull(standing, "standing");
        process = process.withDowntime(Optional.of(new ProcessSection.Downtime(running, standing)));
        return self();
    }

    /** Fixed strip path from accumulator to process (m), {@code >= 0}. */
    public B processPath(double path) {
        refusals.tell(LinePart.PROCESS_PATH, () -> process = process.withPath(path));
        return self();
    }

    /** Strip scrapped by each stop of the process (m), {@code >= 0}. */
    public B scrapPerStop(double metres) {
        refusals.tell(LinePart.SCRAP_PER_STOP, () -> scrap(metres, process.scrapPerJoint()));
        return self();
    }

    /** Strip cut out with each joint after the process (m), {@code >= 0}, half of each coil. */
    public B scrapPerJoint(double metres) {
        refusals.tell(LinePart.SCRAP_PER_JOINT, () -> scrap(process.scrapPerStop(), metres));
        return self();
    }

    /**
     * Running slower while a joint passes the process section; a passage is planned and counts neither as slowed nor as stopped.
     *
     * @param speed at most, while it passes (m/s), {@code > 0} and below the rated speed
     * @param before so much of the strip before the joint (m), {@code >= 0}
     * @param after and so much behind it (m), {@code >= 0}
     */
    public B jointPassage(double speed, double before, double after) {
        refusals.tell(
                LinePart.JOINT_PASSAGE,
                () -> joints(Optional.of(new ProcessSection.JointPassage(speed, before, after)), process.jointBreak()));
        return self();
    }

    /**
     * Joints that break in the process section, for which it stops.
     *
     * @param chance that a joint breaks, in [0, 1)
     * @param length of the process section, anywhere in which it may break (m), {@code > 0}
     * @param repair how long the process stands, from coming to rest (s)
     * @param scrap strip scrapped by a break on top of that of a stop (m), {@code >= 0}
     */
    public B jointBreak(double chance, double length, Distribution repair, double scrap) {
        Objects.requireNonNull(repair, "repair");
        refusals.tell(
                LinePart.JOINT_BREAK,
                () -> joints(
                        process.jointPassage(),
                        Optional.of(new ProcessSection.JointBreak(chance, length, repair, scrap))));
        return self();
    }

    private void drive(Drive other) {
        process = process.withDrive(other);
    }

    private void scrap(double perStop, double perJoint) {
        process = process.withScrap(new ProcessSection.Scrap(perStop, perJoint));
    }

    private void joints(Optional<ProcessSection.JointPassage> passage, Optional<ProcessSection.JointBreak> breaking) {
        process = process.withJoints(new ProcessSection.JointsInProcess(passage, breaking));
    }

    /** The process section as described; none when its drive was not given. */
    final @Nullable ProcessSection describedProcess() {
        return hasProcess ? process : null;
    }
}
