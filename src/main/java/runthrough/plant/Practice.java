package runthrough.plant;

import java.util.List;
import java.util.Optional;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/**
 * How the line gets from one coil to the next. Each practice holds what only it needs, and what differs between them stands
 * here, so that nobody else has to ask which one it is.
 */
public sealed interface Practice {

    /** Name as in a scenario file. */
    String words();

    /** Whether entry and process are one strip with one speed. */
    default boolean isOneStrip() {
        return true;
    }

    /** Whether the new head is joined to the old tail. */
    default boolean hasJoiner() {
        return true;
    }

    /** The accumulator between joiner and process; {@link Accumulator#none()} for one strip. */
    default Accumulator accumulator() {
        return Accumulator.none();
    }

    /** The work of a coil change that is done under this practice, of all that is {@code described}. */
    default CoilChange work(CoilChange described) {
        return described;
    }

    /** Creep before the tail of a coil, if any. */
    default Optional<Entry.Creep> creep(Entry entry) {
        return entry.creep();
    }

    /** Greatest speed (m/s) at which strip can be taken from the uncoilers; infinite where the process alone sets it. */
    default double topSpeed(Entry entry) {
        return entry.topSpeed();
    }

    /** Rated process speed (m/s) where {@code asked} (m/s) is asked for. */
    default double ratedSpeed(double asked, Entry entry) {
        return asked;
    }

    /** Deceleration (m/s2) at which the process comes to rest. */
    default double stoppingDeceleration(Entry entry, ProcessSection process) {
        return process.deceleration();
    }

    /** Acceleration (m/s2) at which the process starts. */
    default double startingAcceleration(Entry entry, ProcessSection process) {
        return process.acceleration();
    }

    /** Deceleration (m/s2) at which the tail of a coil comes to rest. */
    default double tailDeceleration(Entry entry, ProcessSection process) {
        return stoppingDeceleration(entry, process);
    }

    /** Acceleration (m/s2) at which the head of a coil starts. */
    default double headAcceleration(Entry entry, ProcessSection process) {
        return startingAcceleration(entry, process);
    }

    /** Whether the strip stands for the restart delay as well after each joint. */
    default boolean waitsRestartDelayAfterJoint() {
        return false;
    }

    /** Fixed strip path (m) that a new coil has to run before it is in the process. */
    default double pathToProcess(ProcessSection process) {
        return process.path();
    }

    /**
     * The new head is joined to the old tail while the process runs on stored strip.
     *
     * @param accumulator between joiner and process
     */
    record JoinWithAccumulator(Accumulator accumulator) implements Practice {

        @Override
        public String words() {
            return "join with accumulator";
        }

        @Override
        public boolean isOneStrip() {
            return false;
        }

        @Override
        public double tailDeceleration(Entry entry, ProcessSection process) {
            return entry.deceleration();
        }

        @Override
        public double headAcceleration(Entry entry, ProcessSection process) {
            return entry.acceleration();
        }
    }

    /**
     * The new head is joined to the old tail; entry and process are one strip and stand meanwhile. The slower of both counts.
     *
     * <p>Rules PRACTICE-1, PRACTICE-2.
     */
    record JoinWithoutAccumulator() implements Practice {

        @Override
        public String words() {
            return "join without accumulator";
        }

        @Override
        public double ratedSpeed(double asked, Entry entry) {
            return Math.min(asked, entry.topSpeed());
        }

        @Override
        public double stoppingDeceleration(Entry entry, ProcessSection process) {
            return Math.min(entry.deceleration(), process.deceleration());
        }

        @Override
        public double startingAcceleration(Entry entry, ProcessSection process) {
            return Math.min(entry.acceleration(), process.acceleration());
        }

        @Override
        public boolean waitsRestartDelayAfterJoint() {
            return true;
        }
    }

    /**
     * No joiner: the line stops, the tail is pulled out and the new head is threaded through.
     *
     * <p>Rules PRACTICE-6, PRACTICE-7.
     *
     * @param time that it takes to thread the line anew (s)
     */
    record Rethread(Distribution time) implements Practice {
        /** Name of the one element of work that a rethread is. */
        public static final String ELEMENT = "rethread";

        /** Seconds added to each, {@code >= 0}. */
        public double added() {
            return time instanceof DerivedDistributions.Shifted shifted && shifted.shift() > 0 ? shifted.shift() : 0;
        }

        /** The time without them. */
        Distribution unshifted() {
            return time instanceof DerivedDistributions.Shifted shifted && shifted.shift() > 0
                    ? shifted.parent()
                    : time;
        }

        @Override
        public String words() {
            return "rethread";
        }

        @Override
        public boolean hasJoiner() {
            return false;
        }

        /** Preparation as described; then the rethread stands in the place of the work on tail and joint. */
        @Override
        public CoilChange work(CoilChange described) {
            WorkElement threading = new WorkElement(ELEMENT, new WorkTime.Timed(time), new Occurrence.Always(), false);
            return described
                    .withWork(described.prepare(), List.of(), List.of(threading))
                    .withReject(new CoilChange.Reject.Never());
        }

        @Override
        public Optional<Entry.Creep> creep(Entry entry) {
            return Optional.empty();
        }

        @Override
        public double topSpeed(Entry entry) {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double pathToProcess(ProcessSection process) {
            return 0;
        }
    }
}
