package runthrough.study.margin;

import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.simulation.motion.Kinematics;
import runthrough.simulation.records.ChangeFacts;

/**
 * The level through a coil change if nothing but the coil change held the process: it runs at the rated speed of T0 until the
 * level falls through that of slowing, then ramps to its slowed speed. The entry moves as it did until T2, then speeds up. The
 * course ends when the entry has the speed of the process. SI units.
 *
 * <p>Rule MARGIN-3.
 */
final class SlowedCourse {
    private final Line line;
    private final ChangeFacts change;
    private final double slowLevel;
    private final double slowSpeed;
    private final double slack;

    private double level;
    private double entrySpeed;
    private double processSpeed;
    private boolean slowed;
    private double lowest = Double.POSITIVE_INFINITY;

    SlowedCourse(Line line, Slowing slowing, ChangeFacts change) {
        this.line = line;
        this.change = change;
        slowLevel = slowing.level();
        slowSpeed = Math.min(slowing.speed(), change.ratedSpeed());
        slack = line.accumulator().levelTolerance();
        level = change.levelAtStart();
        processSpeed = change.ratedSpeed();
    }

    /** The lowest level above the stop level of the present speed (m). */
    double lowest() {
        if (level < slowLevel) {
            slow();
        }
        look();
        runOut();
        entrySpeed = 0;
        pass(change.released() - change.tailStopped(), 0);
        double acceleration = line.entry().acceleration();
        if (acceleration < Double.POSITIVE_INFINITY) {
            pass(Double.POSITIVE_INFINITY, acceleration);
        }
        return lowest;
    }

    /** From T0 to T1, by what remained of the coil: down to creep speed, if there is creep and it was not so slow yet; creep; down. */
    private void runOut() {
        double deceleration = line.entry().deceleration();
        double remaining = change.remainingAtStart();
        double creepSpeed = line.entry().creep().map(Entry.Creep::speed).orElse(0.0);
        double creepLength = line.entry().creep().map(Entry.Creep::length).orElse(0.0);
        double stopping = creepSpeed * creepSpeed / (2 * deceleration);
        double beforeCreep = remaining - creepLength;
        if (beforeCreep > 0 && deceleration < Double.POSITIVE_INFINITY) {
            entrySpeed = Math.sqrt(creepSpeed * creepSpeed + 2 * deceleration * beforeCreep);
            pass((entrySpeed - creepSpeed) / deceleration, -deceleration);
            remaining = creepLength;
        }
        if (creepSpeed > 0 && remaining > stopping) {
            entrySpeed = creepSpeed;
            pass((remaining - stopping) / creepSpeed, 0);
            remaining = stopping;
        }
        if (remaining > 0 && deceleration < Double.POSITIVE_INFINITY) {
            entrySpeed = Math.sqrt(2 * deceleration * remaining);
            pass(entrySpeed / deceleration, -deceleration);
        }
    }

    private void slow() {
        slowed = true;
        if (line.process().deceleration() == Double.POSITIVE_INFINITY) {
            processSpeed = slowSpeed;
        }
    }

    /** So many seconds of the entry's motion; where they are endless, until the entry has the speed of the process. */
    private void pass(double duration, double entryAcceleration) {
        boolean untilTheyMeet = duration == Double.POSITIVE_INFINITY;
        double left = duration;
        while (left > 0) {
            boolean ramping = slowed && processSpeed > slowSpeed;
            double acceleration = ramping ? -line.process().deceleration() : 0;
            double rate = entrySpeed - processSpeed;
            double bend = (entryAcceleration - acceleration) / 2;
            // A process that slows at once may be slower than the entry then: they have met.
            double step = untilTheyMeet ? Math.max(0, -rate / (2 * bend)) : left;
            boolean isLast = true;
            if (!slowed) {
                double above = level - slowLevel;
                // A touch is no crossing; what falls deeper began to slow at the level of slowing.
                if (Kinematics.fallBelow(above, rate, bend, slack) < step) {
                    step = Math.min(step, Kinematics.fallBelow(above, rate, bend, 0));
                    isLast = false;
                }
            } else if (ramping && (processSpeed - slowSpeed) / -acceleration < step) {
                step = (processSpeed - slowSpeed) / -acceleration;
                isLast = false;
            }
            turn(step, acceleration, rate, bend);
            level += step * (rate + step * bend);
            entrySpeed += entryAcceleration * step;
            processSpeed += acceleration * step;
            left -= step;
            if (!isLast && slowed) {
                processSpeed = slowSpeed;
            } else if (!isLast) {
                slow();
            }
            look();
            if (isLast) {
                return;
            }
        }
    }

    /** Looks at the lowest point within a step: the level above the stop level is a parabola there. */
    private void turn(double step, double acceleration, double rate, double bend) {
        double deceleration = line.process().deceleration();
        double slope = rate - processSpeed * acceleration / deceleration;
        double curve = bend - acceleration * acceleration / (2 * deceleration);
        double at = -slope / (2 * curve);
        if (curve != 0 && at > 0 && at < step) {
            lowest = Math.min(lowest, level - line.stopLevel(processSpeed) + at * (slope + at * curve));
        }
    }

    private void look() {
        lowest = Math.min(lowest, level - line.stopLevel(processSpeed));
    }
}
