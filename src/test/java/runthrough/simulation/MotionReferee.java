package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.simulation.records.Trace.EntryState;
import runthrough.simulation.records.Trace.Point;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * Judges a trace by the rules of motion, knowing nothing of how the engine finds it: strip is neither made nor lost, nothing
 * jumps that may not, and every state is taken up, held and left only as its rule says.
 */
final class MotionReferee {
    private final Line line;
    private final Replication run;
    private final List<Point> points;
    private final double capacity;
    private final double entryUp;
    private final double entryDown;
    private final double processUp;
    private final double processDown;
    /** What rounding, and the slack that a crossing is given, may do to a level. */
    private final double slack;

    MotionReferee(Line line, Replication run) {
        this.line = line;
        this.run = run;
        points = run.trace().orElseThrow().points();
        boolean oneStrip = line.practice().isOneStrip();
        capacity = oneStrip ? 0 : line.accumulator().capacity();
        entryUp = oneStrip ? line.startingAcceleration() : line.entry().acceleration();
        entryDown = oneStrip ? line.stoppingDeceleration() : line.entry().deceleration();
        processUp = line.startingAcceleration();
        processDown = line.stoppingDeceleration();
        slack = 1e-7 * Math.max(1, capacity);
    }

    void judge() {
        for (int i = 0; i < points.size(); i++) {
            judgePoint(points.get(i));
            if (i > 0) {
                judgeStep(points.get(i - 1), points.get(i));
            }
        }
        judgeConservation();
    }

    private Offset<Double> nearly() {
        return within(slack);
    }

    /** Holds within the stretch that begins at {@code point}. */
    private void judgePoint(Point point) {
        // Where two ramps end at one instant, the second may be past its end by rounding until its turn comes.
        assertThat(point.entrySpeed()).isGreaterThan(-1e-12);
        assertThat(point.processSpeed()).isGreaterThan(-1e-12);
        assertThat(point.remaining()).isGreaterThan(-1e-6);
        assertThat(point.level()).isLessThan(capacity + run.totals().overtravel() + slack);
        assertThat(point.level()).isGreaterThan(Math.min(0, run.totals().lowestLevel()) - slack);
        boolean together = point.entryAcceleration() == point.processAcceleration();
        assertThat(together || isOneOf(point.entryAcceleration(), entryUp, entryDown))
                .as("entry acceleration %s", point.entryAcceleration())
                .isTrue();
        assertThat(isOneOf(point.processAcceleration(), processUp, processDown))
                .as("process acceleration %s", point.processAcceleration())
                .isTrue();
        if (point.entryState() == EntryState.STANDING) {
            assertThat(point.entrySpeed()).isEqualTo(0);
            assertThat(point.remaining()).isEqualTo(0);
        }
        if (point.entryState() == EntryState.MATCHED) {
            assertThat(point.entrySpeed()).isEqualTo(point.processSpeed());
        }
    }

    private static boolean isOneOf(double acceleration, double up, double down) {
        return acceleration == 0 || acceleration == up || acceleration == -down;
    }

    private void judgeStep(Point from, Point to) {
        double time = to.time() - from.time();
        assertThat(time).isGreaterThanOrEqualTo(0);
        assertThat(to.level()).isCloseTo(from.levelAfter(time), nearly());
        judgeSpeed(from.entrySpeedAfter(time), to.entrySpeed(), entryUp, entryDown);
        judgeSpeed(from.processSpeedAfter(time), to.processSpeed(), processUp, processDown);
        double left = from.remaining() - time * (from.entrySpeed() + time * from.entryAcceleration() / 2);
        boolean newCoil = to.remaining() > left + 1e-6;
        assertThat(newCoil ? left : to.remaining()).as("strip left").isCloseTo(newCoil ? 0 : left, within(1e-6));
        if (!line.practice().isOneStrip()) {
            judgeEntry(from, to, time);
            judgeProcess(from, to, time);
        }
    }

    /** A speed goes on as it went, but where a missing acceleration lets it jump. */
    private static void judgeSpeed(double before, double after, double up, double down) {
        if (up < Double.POSITIVE_INFINITY) {
            assertThat(after).isLessThan(before + 1e-6);
        }
        if (down < Double.POSITIVE_INFINITY) {
            assertThat(after).isGreaterThan(before - 1e-6);
        }
    }

    /** The speed v* that the process is heading for, read off its state. */
    private double heading(Point point) {
        return switch (point.processState()) {
            case DOWNTIME, JOINT_BREAK, STARVED -> 0;
            case JOINT_PASSAGE ->
                Math.min(line.process().jointPassage().orElseThrow().speed(), point.ratedSpeed());
            case SLOWED -> Math.min(line.process().slowing().orElseThrow().speed(), point.ratedSpeed());
            case RUNNING -> point.ratedSpeed();
        };
    }

    /** The settled level X {@code dt} after {@code point}, with the process heading for {@code target}. */
    private double settled(Point point, double dt, double target) {
        double entry = point.entrySpeedAfter(dt) - target;
        double process = point.processSpeedAfter(dt) - target;
        return point.levelAfter(dt)
                + (entry >= 0 ? entry * entry / (2 * entryDown) : -entry * entry / (2 * entryUp))
                - (process >= 0 ? process * process / (2 * processDown) : -process * process / (2 * processUp));
    }

    private void judgeEntry(Point from, Point to, double time) {
        double target = heading(from);
        if (from.entryState() == EntryState.FILLING && time > 0) {
            double fastest = Math.max(
                    from.entrySpeed(),
                    Math.min(
                            line.entry().topSpeed(), target + line.accumulator().fillRateLimit()));
            assertThat(from.entrySpeedAfter(time)).isLessThan(fastest + 1e-6);
        }
        boolean follows = from.entryAcceleration() != 0 && from.entryAcceleration() == from.processAcceleration();
        for (double dt : new double[] {0, time / 2, time}) {
            double settled = settled(from, dt, target);
            if (from.entryState() == EntryState.FILLING && time > 0) {
                assertThat(settled).as("X while filling").isLessThan(capacity + slack);
            } else if (from.entryState() == EntryState.SETTLING && !follows && from.entrySpeedAfter(dt) >= target) {
                assertThat(settled).as("X while settling").isGreaterThan(capacity - slack);
            } else if (from.entryState() == EntryState.MATCHED) {
                assertThat(from.levelAfter(dt)).as("level while matched").isGreaterThan(capacity - slack);
            }
        }
        boolean matches = from.entryState() != EntryState.MATCHED && to.entryState() == EntryState.MATCHED;
        if (matches) {
            assertThat(to.level()).as("level when matched").isGreaterThan(capacity - slack);
            assertThat(to.processSpeed()).isEqualTo(heading(to));
        }
        if (from.entryState() == EntryState.FILLING && to.entryState() == EntryState.SETTLING) {
            assertThat(settled(from, time, heading(to)))
                    .as("X when settling begins")
                    .isGreaterThan(capacity - slack);
        }
        boolean runsOut = from.entryState() != EntryState.RUNNING_OUT && to.entryState() == EntryState.RUNNING_OUT;
        if (runsOut && line.entry().creep().isEmpty()) {
            // What it has left is what it takes to stand, from the speed it had.
            double speed = from.entrySpeedAfter(time);
            assertThat(to.remaining()).isCloseTo(speed * speed / (2 * entryDown), within(1e-6));
        }
        if (runsOut && line.entry().creep().isPresent()) {
            double speed = from.entrySpeedAfter(time);
            double creep = line.entry().creep().orElseThrow().speed();
            double length = line.entry().creep().orElseThrow().length();
            double toCreep = length + (speed * speed - creep * creep) / (2 * entryDown);
            double toStand = speed * speed / (2 * entryDown);
            boolean fast = speed > creep - 1e-6 && Math.abs(to.remaining() - toCreep) < 1e-5;
            boolean slow = speed < creep && Math.abs(to.remaining() - toStand) < 1e-6;
            boolean holds = Math.abs(speed - creep) < 1e-6 && to.remaining() < length + 1e-6;
            assertThat(fast || slow || holds)
                    .as("run-out with creep from %s m/s, %s m left", speed, to.remaining())
                    .isTrue();
        }
    }

    private double spare(Point point, double dt) {
        double speed = point.processSpeedAfter(dt);
        return point.levelAfter(dt) - line.accumulator().reserve() - speed * speed / (2 * processDown);
    }

    private void judgeProcess(Point from, Point to, double time) {
        boolean free = from.processState() == ProcessState.RUNNING || from.processState() == ProcessState.SLOWED;
        if (free) {
            // Below its stop level a process that runs on is coming out of it.
            for (double dt : new double[] {0, time / 2, time}) {
                double later = Math.min(time, dt + 1e-3);
                assertThat(spare(from, dt) > -slack || spare(from, later) >= spare(from, dt) - slack)
                        .as("g = %s at %s s", spare(from, dt), from.time() + dt)
                        .isTrue();
            }
        }
        boolean starves = from.processState() != ProcessState.STARVED && to.processState() == ProcessState.STARVED;
        if (starves && from.processState() == ProcessState.DOWNTIME && to.processSpeed() == 0) {
            // Held after a downtime, or a starved stop that outlasts it.
            assertThat(to.entryState()).isNotNull();
        } else if (starves) {
            assertThat(spare(from, time)).as("g at a starved stop").isLessThan(slack);
        }
        boolean restarts = from.processState() == ProcessState.STARVED
                && to.processState() != ProcessState.STARVED
                && to.processState() != ProcessState.DOWNTIME;
        if (restarts) {
            assertThat(from.processSpeedAfter(time))
                    .as("at rest before a restart")
                    .isCloseTo(0, within(1e-6));
            if (line.process().restartDelay().highest() == 0) {
                assertThat(to.level()).isGreaterThan(line.restartLevel(to.ratedSpeed()) - slack);
                assertThat(to.entryState()).isNotIn(EntryState.RUNNING_OUT, EntryState.STANDING);
            }
        }
        line.process().slowing().ifPresent(slowing -> judgeSlowing(slowing, from, to));
    }

    private void judgeSlowing(Slowing slowing, Point from, Point to) {
        if (from.processState() == ProcessState.RUNNING && to.processState() == ProcessState.SLOWED) {
            assertThat(to.level()).isCloseTo(slowing.level(), nearly());
        }
        if (to.processState() == ProcessState.RUNNING) {
            assertThat(to.level()).isGreaterThan(slowing.level() - slack);
        }
        if (from.processState() == ProcessState.SLOWED && to.processState() == ProcessState.RUNNING) {
            assertThat(to.level()).isGreaterThan(line.resumeLevel(slowing) - slack);
            assertThat(to.entryState()).isNotIn(EntryState.RUNNING_OUT, EntryState.STANDING);
        }
    }

    private void judgeConservation() {
        Point last = points.get(points.size() - 1);
        double end = last.levelAfter(run.totals().duration() - last.time());
        double entered = run.totals().enteredMetres();
        assertThat(capacity + entered - run.totals().processedMetres() - end)
                .as("strip entered less processed and stored")
                .isCloseTo(0, within(1e-9 * Math.max(capacity, entered)));
    }
}
