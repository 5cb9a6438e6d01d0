package runthrough.plant;

import java.util.List;
import java.util.Optional;

/**
 * A strip line as described.
 *
 * @param coilSource its coils
 * @param entry from uncoilers to joiner
 * @param process what must not stop
 * @param change the work of a coil change, as described; see {@link #work}
 * @param practice how the line gets from one coil to the next, and what only that practice needs
 * @param bending what the strip is bent over, where it is to be reported
 */
public record Line(
        CoilSource coilSource,
        Entry entry,
        ProcessSection process,
        CoilChange change,
        Practice practice,
        Optional<Bending> bending) {

    /** The same line with other coils. */
    public Line with(CoilSource other) {
        return new Line(other, entry, process, change, practice, bending);
    }

    /** The same line with another entry section. */
    public Line with(Entry other) {
        return new Line(coilSource, other, process, change, practice, bending);
    }

    /** The same line with another practice. */
    public Line with(Practice other) {
        return new Line(coilSource, entry, process, change, other, bending);
    }

    /** The same line joining with this accumulator. */
    public Line with(Accumulator other) {
        return with(new Practice.JoinWithAccumulator(other));
    }

    /** The same line with other work at a coil change. */
    public Line with(CoilChange other) {
        return new Line(coilSource, entry, process, other, practice, bending);
    }

    /**
     * The same line with {@code seconds} more in every pass of the join work, or in every rethread where it has no joiner; fewer
     * where they are negative.
     */
    public Line withEveryPassLongerBy(double seconds) {
        if (!(practice instanceof Practice.Rethread rethread)) {
            return with(change.withEveryPassLongerBy(seconds));
        }
        double net = rethread.added() - change.joinShorterBy() + seconds;
        return with(new Practice.Rethread(rethread.unshifted().shifted(Math.max(0, net))))
                .with(change.withJoinShorterBy(Math.max(0, -net)));
    }

    /** The same line with every rated speed, its own and those of its coils, times {@code factor}, {@code > 0}. */
    public Line withRatedSpeedsTimes(double factor) {
        return new Line(
                coilSource.withEach(coil -> coil.withSpeedTimes(factor)),
                entry,
                process.withDrive(process.drive().withSpeed(process.speed() * factor)),
                change,
                practice,
                bending);
    }

    /** The accumulator between joiner and process; {@link Accumulator#none()} where the two are one strip. */
    public Accumulator accumulator() {
        return practice.accumulator();
    }

    /** The work of a coil change that is done under the line's practice. */
    public CoilChange work() {
        return practice.work(change);
    }

    /** Creep before the tail of a coil, where the practice has it. */
    public Optional<Entry.Creep> creep() {
        return practice.creep(entry);
    }

    /** Mass (kg/s) that the process puts through while it runs at its rated speeds, over many coils. */
    public double ratedMassFlow() {
        double mass = coilSource.mean(
                kind -> coils().get(kind).meanLength() * coils().get(kind).massPerMetre());
        double time = coilSource.mean(kind -> coils().get(kind).meanLength() / ratedSpeed(coils().get(kind)));
        return mass / time;
    }

    /**
     * Rated process speed (m/s) with {@code coil} in the process section: the coil's own, or the line's.
     *
     * <p>Rules PROC-1, PRACTICE-1.
     */
    public double ratedSpeed(Coil coil) {
        double rated = coil.processSpeed().orElse(process.speed());
        return practice.ratedSpeed(rated, entry);
    }

    /** The largest rated speed (m/s) that any coil asks for. */
    public double fastestRatedSpeed() {
        return coilSource.kinds().stream().mapToDouble(this::ratedSpeed).max().orElseThrow();
    }

    /** The smallest rated speed (m/s) that any coil asks for. */
    public double slowestRatedSpeed() {
        return coilSource.kinds().stream().mapToDouble(this::ratedSpeed).min().orElseThrow();
    }

    /**
     * Whether nothing but the level depends on how much strip lies before the process, as long as that lasts: coils have one rated speed,
     * and joints neither slow nor stop the process as they pass.
     */
    public boolean isSameAtAnyCapacity() {
        return hasOneSpeed()
                && process.jointPassage().isEmpty()
                && process.jointBreak().isEmpty();
    }

    /** Whether all coils are processed at one rated speed. */
    public boolean hasOneSpeed() {
        return slowestRatedSpeed() == fastestRatedSpeed();
    }

    /**
     * The speed (m/s) that the fastest rated one must exceed, where all change by the same factor: then each coil runs faster than the
     * entry creeps, and the process faster than it is slowed to, and than joints pass.
     */
    public double ratedSpeedsMustExceed() {
        double creep = entry.creep().map(Entry.Creep::speed).orElse(0.0) * fastestRatedSpeed() / slowestRatedSpeed();
        double slowed = process.slowing().map(ProcessSection.Slowing::speed).orElse(0.0);
        double passage =
                process.jointPassage().map(ProcessSection.JointPassage::speed).orElse(0.0);
        return Math.max(creep, Math.max(slowed, passage));
    }

    /** The fastest (m/s) that the accumulator can give strip while the entry stands; infinite where nothing limits it. */
    public double emptyingRateLimit() {
        return practice.isOneStrip()
                ? Double.POSITIVE_INFINITY
                : accumulator().form().emptyingRateLimit();
    }

    /**
     * The level (m) below which a process running at {@code speed} (m/s) must stop: reserve and stopping distance.
     *
     * <p>Rule PROC-3.
     */
    public double stopLevel(double speed) {
        return accumulator().reserve() + speed * speed / (2 * process.deceleration());
    }

    /** The level (m) from which the process may restart when {@code rated} (m/s) is the rated speed. Rule PROC-5. */
    public double restartLevel(double rated) {
        double given = process.restartLevel();
        double capacity = accumulator().capacity();
        return Double.isNaN(given) ? Math.min(capacity, stopLevel(rated) + 0.1 * capacity) : given;
    }

    /** The level (m) at which a slowed process takes up full speed again, if it slows at all. Rule PROC-8. */
    public double resumeLevel(ProcessSection.Slowing slowing) {
        double given = slowing.resumeLevel();
        double capacity = accumulator().capacity();
        return Double.isNaN(given) ? Math.min(capacity, slowing.level() + 0.1 * capacity) : given;
    }

    /** Every kind of coil that may come. */
    public List<Coil> coils() {
        return coilSource.kinds();
    }

    /**
     * Deceleration (m/s2) at which the process section comes to rest: the lower of the two where they are one strip.
     *
     * <p>Rules PRACTICE-1, PRACTICE-6.
     */
    public double stoppingDeceleration() {
        return practice.stoppingDeceleration(entry, process);
    }

    /**
     * Acceleration (m/s2) at which the process section starts: the lower of the two where they are one strip.
     *
     * <p>Rules PRACTICE-1, PRACTICE-6.
     */
    public double startingAcceleration() {
        return practice.startingAcceleration(entry, process);
    }

    /** Deceleration (m/s2) at which the tail of a coil comes to rest. */
    public double tailDeceleration() {
        return practice.tailDeceleration(entry, process);
    }

    /** Acceleration (m/s2) at which the head of a coil starts. */
    public double headAcceleration() {
        return practice.headAcceleration(entry, process);
    }

    /**
     * Strip (m) that is left on a coil when its change must begin: what the entry takes to stop, and to creep where it
     * creeps.
     *
     * <p>Rules ENTRY-14, ENTRY-15.
     *
     * @param speed at which the entry runs (m/s), {@code >= 0}, not below the creep speed
     */
    public double runOutLength(double speed) {
        double stopping = speed * speed / (2 * tailDeceleration());
        return creep().map(creep ->
                        creep.length() + (speed - creep.speed()) * (speed + creep.speed()) / (2 * tailDeceleration()))
                .orElse(stopping);
    }

    /** Whether nothing is random, so that every replication is the same. */
    public boolean isDeterministic() {
        return !coilSource.isRandom()
                && process.restartDelay().isConstant()
                && process.downtime().map(ProcessSection.Downtime::isConstant).orElse(true)
                && process.jointBreak().map(breaks -> breaks.chance() == 0).orElse(true)
                && !work().isRandom();
    }
}
