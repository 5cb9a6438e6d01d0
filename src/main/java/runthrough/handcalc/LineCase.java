package runthrough.handcalc;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Coil;
import runthrough.plant.Joints;
import runthrough.plant.Line;
import runthrough.plant.MeanWork;
import runthrough.quantity.Kind;

/**
 * The numbers of the hand calculation for one kind of coil, as if every coil were of that kind.
 *
 * @param work of a joint, without waiting for the next coil
 * @param idealCycle from one coil change to the next, without waiting for the next coil (s)
 * @param leaving time from when the tail leaves its uncoiler until it stops in the joiner (s)
 */
record LineCase(
        Line line,
        int kind,
        ClosedForms forms,
        JointCycleTime work,
        double idealCycle,
        double leaving,
        Preparation preparation) {

    static LineCase of(Line line, int kind) {
        ClosedForms forms = ClosedForms.of(line, line.coils().get(kind));
        Joints joints = line.coilSource().joints(kind);
        JointCycleTime work = JointCycleTime.of(line.work(), joints);
        double missed = line.practice().isOneStrip() ? forms.entry().missed(work.total() + delay(line)) : 0;
        double cycle = (forms.usable() + missed) / forms.entry().speed();
        double leaving = leaving(line, forms, cycle - work.total());
        double needed = MeanWork.total(line.change().prepare(), joints);
        Preparation preparation = Preparation.of(line, needed, cycle, work.total(), work.tail(), leaving);
        return new LineCase(line, kind, forms, work, cycle, leaving, preparation);
    }

    /** A coil no longer than the path counts as gone when the joint at its head is released. */
    private static double leaving(Line line, ClosedForms forms, double betweenJoints) {
        double path = line.entry().uncoilerPath();
        return path < forms.usable() ? forms.entry().timeOfLast(path) : Math.max(0, betweenJoints);
    }

    /** After a joint the strip stands for this, too (s), where entry and process are one strip. */
    double restartDelay() {
        return delay(line);
    }

    private static double delay(Line line) {
        return line.practice().waitsRestartDelayAfterJoint()
                ? line.process().restartDelay().mean()
                : 0;
    }

    /** At which a coil of this kind may end. */
    Joints joints() {
        return line.coilSource().joints(kind);
    }

    Coil coil() {
        return line.coils().get(kind);
    }

    boolean isOneStrip() {
        return line.practice().isOneStrip();
    }

    /** The joint cycle time with its waiting. */
    JointCycleTime joint() {
        return work.withWaiting(preparation.waiting());
    }

    /** From one coil change to the next (s). Waiting stretches it where the process waits, too. */
    double cycle() {
        return isOneStrip() ? idealCycle + preparation.waiting() : idealCycle;
    }

    /**
     * The time there is to prepare a coil before the process must stop (s), against what it takes: that before the joint
     * must wait, and as long as the accumulator bears the waiting.
     */
    Margin preparationTime() {
        double given = preparation.withoutWaiting();
        if (!isOneStrip()) {
            given = switch (preparation.rule()) {
                case WHOLE_CYCLE, BETWEEN_JOINTS -> given;
                case UNTIL_TAIL_WORK_DONE -> given + bearableWaiting();
                case UNTIL_TAIL_STOPS ->
                    line.entry().uncoilers() == 1
                            ? given + bearableWaiting()
                            : Math.min(given + bearableWaiting(), Math.max(0, idealCycle - work.total()));
            };
        }
        return new Margin(Kind.TIME, given, preparation.needed());
    }

    private double bearableWaiting() {
        OptionalDouble refilled = forms.longestRefilledJoint();
        double longest = Math.min(forms.longestJoint(), refilled.orElse(forms.longestJoint()));
        return Math.max(0, longest - work.total());
    }

    Storage storage() {
        double joint = joint().total();
        Optional<Refill> refill = forms.refill(joint);
        return new Storage(
                forms.stripDrawn(joint),
                bearable(joint, forms.capacityNeeded(joint), forms.longestJoint(), forms.fastestSpeed(joint)),
                withoutSlowing(joint),
                withoutStop(joint),
                refill,
                refill.map(this::coilStrip));
    }

    /** For the level to stay above that at which the process slows. Rule FORM-7. */
    private Optional<Bearable> withoutSlowing(double joint) {
        return slowing()
                .map(slowing -> bearable(
                        joint,
                        slowing.atRatedSpeed().capacityNeeded(joint),
                        slowing.atRatedSpeed().longestJoint(),
                        slowing.fastestAtRatedSpeed(joint)));
    }

    /** For the level to stay above the stop level, the process slowing. Rule FORM-13. */
    private Optional<BearableSlowed> withoutStop(double joint) {
        return slowing().map(slowing -> {
            double speed = forms.entry().speed();
            double capacity = slowing.capacityWithoutStop(joint);
            double fastest = slowing.fastestWithoutStop(joint);
            Bearable all = bearable(joint, capacity, slowing.longestWithoutStop(), fastest);
            return new BearableSlowed(
                    Optional.of(all.capacity()).filter(any -> slowing.holdsWithoutStop(capacity, speed)),
                    Optional.of(all.jointCycleTime()).filter(any -> slowing.holdsWithoutStop()),
                    Optional.of(all.speed()).filter(any -> slowing.isAnswerWithoutStop(fastest)));
        });
    }

    private Bearable bearable(double joint, double capacity, double longest, double fastest) {
        return new Bearable(
                new Margin(Kind.LENGTH, forms.capacity(), capacity),
                new Margin(Kind.TIME, longest, joint),
                new Margin(Kind.SPEED, fastest, forms.entry().speed()));
    }

    /** The closed forms with slowing, where the process slows. */
    Optional<SlowingForms> slowing() {
        return line.process().slowing().map(slowing -> SlowingForms.of(forms, slowing));
    }

    Standstill standstill() {
        StopAndGo strip = forms.entry();
        double standing = joint().total() + restartDelay();
        double lost = strip.missed(standing);
        double output = forms.usable() / cycle();
        return new Standstill(
                standing,
                strip.runOutTime() + standing + strip.speed() / strip.acceleration(),
                lost,
                cycle(),
                output,
                output / strip.speed());
    }

    /** The loads of the three limits. Waiting for the next coil is attributed to preparation alone: the other two are taken without it. */
    Loads loads() {
        double joint = work.total();
        double notToStop = new Margin(Kind.LENGTH, forms.capacity(), forms.capacityNeeded(joint)).load();
        double notToSlow =
                withoutSlowing(joint).map(all -> all.capacity().load()).orElse(0.0);
        double refill = forms.refill(joint).map(r -> coilStrip(r).load()).orElse(Double.POSITIVE_INFINITY);
        return new Loads(
                Math.max(notToStop, notToSlow), refill, preparationTime().load());
    }

    private Margin coilStrip(Refill refill) {
        return new Margin(Kind.LENGTH, forms.stripBeforeChange(), refill.entryStrip());
    }

    /** How hard this kind of coil is on the line: the greatest load, or the share of time lost. */
    double severity() {
        return isOneStrip() ? 1 - standstill().utilisation() : loads().greatest();
    }
}
