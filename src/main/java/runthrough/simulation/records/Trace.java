package runthrough.simulation.records;

import java.util.List;

/**
 * Every breakpoint of a replication, in order of time. Between two points the speeds change at the accelerations of the
 * first, so that the level is a parabola; two points at one time show a jump of speed. The last point is the end of the run.
 *
 * @param points in order of time
 * @param capacity of the accumulator (m)
 */
public record Trace(List<Point> points, double capacity) {
    public Trace {
        points = List.copyOf(points);
    }

    /**
     * The line at one instant, just after what happened there.
     *
     * @param time (s)
     * @param level in the accumulator (m)
     * @param entrySpeed (m/s)
     * @param entryAcceleration from here on (m/s2), signed
     * @param processSpeed (m/s)
     * @param processAcceleration from here on (m/s2), signed
     * @param remaining usable strip of the running coil yet to pass the joiner (m)
     * @param ratedSpeed of the process in force (m/s)
     * @param entryState what the entry section is doing
     * @param processState what holds the process, if anything does
     */
    public record Point(
            double time,
            double level,
            double entrySpeed,
            double entryAcceleration,
            double processSpeed,
            double processAcceleration,
            double remaining,
            double ratedSpeed,
            EntryState entryState,
            ProcessState processState) {

        /** The level (m) {@code dt} seconds on, {@code dt >= 0} and no later than the next point. */
        public double levelAfter(double dt) {
            return level + dt * (entrySpeed - processSpeed) + dt * dt / 2 * (entryAcceleration - processAcceleration);
        }

        /** The entry speed (m/s) {@code dt} seconds on. */
        public double entrySpeedAfter(double dt) {
            return entrySpeed + entryAcceleration * dt;
        }

        /** The process speed (m/s) {@code dt} seconds on. */
        public double processSpeedAfter(double dt) {
            return processSpeed + processAcceleration * dt;
        }
    }

    /** What the entry section is doing. */
    public enum EntryState {
        /** Running faster than the process, or on its way there. */
        FILLING,
        /** Coming to the process's speed with the accumulator full. */
        SETTLING,
        /** At the process's speed, the accumulator full. */
        MATCHED,
        /** Slowing for the tail of the coil. */
        RUNNING_OUT,
        /** Standing for the joint. */
        STANDING
    }

    /** What holds the process. */
    public enum ProcessState {
        /** Running at, or on its way to, its rated speed. */
        RUNNING,
        /** Slowed on a low level. */
        SLOWED,
        /** Stopped because strip is lacking, and not for process downtime. */
        STARVED,
        /** Held by a stop of its own. */
        DOWNTIME,
        /** Held by a joint that broke in it, and not for process downtime. */
        JOINT_BREAK,
        /** Running, or on its way to run, no faster than a passing joint allows; not slowed. */
        JOINT_PASSAGE
    }
}
