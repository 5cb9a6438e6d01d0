package runthrough.plant.builder;

import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.ProcessSection.Drive;
import runthrough.plant.check.LinePart;
import runthrough.plant.check.StandIn;

/** What must not stop: the process section. */
abstract class ProcessSteps<B> extends PracticeSteps<B> {
    private boolean hasProcess;
    private Twice<ProcessSection> process = Twice.alike(ProcessSection.running(1, AT_ONCE, AT_ONCE));

    /**
     * The drive of the process section.
     *
     * @param speed rated strip speed (m/s), {@code > 0}
     * @param acceleration (m/s2), {@code > 0}
     * @param deceleration (m/s2), {@code > 0}
     */
    public B process(double speed, double acceleration, double deceleration) {
        hasProcess = true;
        return say(
                LinePart.PROCESS,
                (now, numbers) -> now.withDrive(new Drive(
                        numbers.of("speed", speed),
                        numbers.of("acceleration", acceleration),
                        numbers.of("deceleration", deceleration))));
    }

    /** The process section as a whole, in the place of what was said of it. */
    public B process(ProcessSection whole) {
        Objects.requireNonNull(whole, "whole");
        hasProcess = true;
        process = Twice.alike(whole);
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
        return say(
                LinePart.RESTART,
                (now, numbers) -> now.withRestart(new ProcessSection.Restart(numbers.of("level", level), delay)));
    }

    /**
     * Running slower while little strip is left.
     *
     * @param speed slowed strip speed (m/s), {@code > 0}
     * @param level below which it begins (m), {@code >= 0}
     * @param resumeLevel from which full speed is taken up again (m); NaN for the usual one, see {@link Line#resumeLevel}
     */
    public B slowing(double speed, double level, double resumeLevel) {
        return say(
                LinePart.SLOWING,
                (now, numbers) -> now.withSlowing(Optional.of(new ProcessSection.Slowing(
                        numbers.of("speed", speed), numbers.of("level", level), numbers.of("resume", resumeLevel)))));
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
        return say(
                LinePart.PROCESS,
                (now, numbers) -> now.withDowntime(Optional.of(new ProcessSection.Downtime(running, standing))));
    }

    /** Fixed strip path from accumulator to process (m), {@code >= 0}. */
    public B processPath(double path) {
        return say(LinePart.PROCESS, (now, numbers) -> now.withPath(numbers.of("path", path)));
    }

    /** Strip scrapped by each stop of the process (m), {@code >= 0}. */
    public B scrapPerStop(double metres) {
        return say(
                LinePart.PROCESS,
                (now, numbers) -> now.withScrap(
                        new ProcessSection.Scrap(numbers.of("scrap per stop", metres), now.scrapPerJoint())));
    }

    /** Strip cut out with each joint after the process (m), {@code >= 0}, half of each coil. */
    public B scrapPerJoint(double metres) {
        return say(
                LinePart.PROCESS,
                (now, numbers) -> now.withScrap(
                        new ProcessSection.Scrap(now.scrapPerStop(), numbers.of("scrap per joint", metres))));
    }

    /**
     * Running slower while a joint passes the process section; a passage is planned and counts neither as slowed nor as stopped.
     *
     * @param speed at most, while it passes (m/s), {@code > 0} and below the rated speed
     * @param before so much of the strip before the joint (m), {@code >= 0}
     * @param after and so much behind it (m), {@code >= 0}
     */
    public B jointPassage(double speed, double before, double after) {
        return say(
                LinePart.JOINT_PASSAGE,
                (now, numbers) -> now.withJoints(new ProcessSection.JointsInProcess(
                        Optional.of(new ProcessSection.JointPassage(
                                numbers.of("speed", speed), numbers.of("before", before), numbers.of("after", after))),
                        now.jointBreak())));
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
        return say(
                LinePart.JOINT_BREAK,
                (now, numbers) -> now.withJoints(new ProcessSection.JointsInProcess(
                        now.jointPassage(),
                        Optional.of(new ProcessSection.JointBreak(
                                numbers.of("chance", chance),
                                numbers.of("length", length),
                                repair,
                                numbers.of("scrap", scrap))))));
    }

    private B say(LinePart path, BiFunction<ProcessSection, StepNumbers, ProcessSection> step) {
        process = refusals.step(path, process, step);
        return self();
    }

    /** Whether its drive was given. */
    final boolean hasProcess() {
        return hasProcess;
    }

    /** The process section as described; what stands in for it where its drive was not given. */
    final ProcessSection describedProcess(StandIn standIn) {
        return hasProcess ? process.with(standIn) : standIn.process();
    }
}
