package runthrough.handcalc;

import runthrough.plant.Entry;
import runthrough.plant.ProcessSection.Slowing;

/**
 * What an accumulator bears where the process slows on a low level, in closed form: for the target to run through at the rated
 * speed V, and for the target without a stop. Assumed as in {@link ClosedForms}; without a stop also that slowing begins while the
 * entry stands and that the slowed speed is reached before the joint is released.
 *
 * <p>Rules FORM-7, FORM-13.
 *
 * @param forms without slowing
 * @param level at which slowing begins x_slow (m)
 * @param slowedSpeed V_slow (m/s); a V that is no faster is not slowed
 */
public record SlowingForms(ClosedForms forms, double level, double slowedSpeed) {
    /** Of the speed, relative. */
    private static final double EXACT = 1e-14;

    /** Beyond so many times the slowed speed nothing limits it: neither ramps nor the joint take any time. */
    private static final double ENDLESS = 1e6;

    /** The forms of {@code forms} with {@code slowing}. */
    public static SlowingForms of(ClosedForms forms, Slowing slowing) {
        return new SlowingForms(forms, slowing.level(), slowing.speed());
    }

    /** The closed forms with x_slow in the place of {@code R + V^2/(2 d_p)}. */
    public ClosedForms atRatedSpeed() {
        return new ClosedForms(
                forms.entry(),
                forms.topSpeed(),
                forms.capacity(),
                level,
                forms.fillRateLimit(),
                Double.POSITIVE_INFINITY,
                forms.usable());
    }

    /** Whether {@link #longestWithoutStop} holds. */
    public boolean holdsWithoutStop() {
        return holdsWithoutStop(forms.capacity(), forms.entry().speed());
    }

    /**
     * Whether the forms without a stop hold with a capacity of {@code capacity} (m) and a V of {@code speed} (m/s): the process slows
     * while the entry stands, and has its slowed speed before the joint is released. Of a V that is not slowed nothing is assumed.
     */
    public boolean holdsWithoutStop(double capacity, double speed) {
        return speed <= slowedSpeed || (untilSlowed(capacity, at(speed)) >= 0 && atSlowedSpeed(speed) >= 0);
    }

    /**
     * Whether {@code fastest} (m/s) is an answer without a stop: the form holds at it, and a process that slows stays faster than its
     * slowed speed.
     */
    public boolean isAnswerWithoutStop(double fastest) {
        boolean slows = forms.entry().speed() > slowedSpeed;
        return (!slows || fastest > slowedSpeed) && holdsWithoutStop(forms.capacity(), fastest);
    }

    /** The fastest V (m/s) at which a joint of {@code joint} seconds runs through. */
    public double fastestAtRatedSpeed(double joint) {
        return atRatedSpeed().fastestSpeed(joint);
    }

    /**
     * The longest joint cycle time (s) without a stop: {@code (C - x_slow - V^2/(2 d_e))/V + (V - V_slow)/d_p + (x_slow -
     * x_stop(V) - V_slow^2/(2 a_e))/V_slow}; creep takes {@code (V - v_c) t_c} off the first part. Where V is no faster than V_slow
     * it is the form without slowing.
     */
    public double longestWithoutStop() {
        double speed = forms.entry().speed();
        return speed <= slowedSpeed ? forms.longestJoint() : longestWithoutStop(speed);
    }

    /**
     * The capacity (m) at which a joint of {@code joint} seconds is the longest without a stop: with V metres less it is a second less.
     */
    public double capacityWithoutStop(double joint) {
        return forms.capacity() - forms.entry().speed() * (longestWithoutStop() - joint);
    }

    private double longestWithoutStop(double speed) {
        double ramp = (speed - slowedSpeed) / forms.processDeceleration();
        return untilSlowed(forms.capacity(), at(speed)) + ramp + atSlowedSpeed(speed);
    }

    private StopAndGo at(double speed) {
        StopAndGo strip = forms.entry();
        return new StopAndGo(speed, strip.acceleration(), strip.deceleration(), strip.creep());
    }

    /** From T1 until the process slows (s), while the entry stands. */
    double untilSlowed() {
        return untilSlowed(forms.capacity(), forms.entry());
    }

    private double untilSlowed(double capacity, StopAndGo at) {
        return (capacity - level - at.stoppingLength() - at.missedCreeping()) / at.speed();
    }

    /** At V_slow until T2 (s), after slowing from {@code speed} (m/s). */
    double atSlowedSpeed(double speed) {
        double stopLevel = forms.reserve() + speed * speed / (2 * forms.processDeceleration());
        double start = slowedSpeed * slowedSpeed / (2 * forms.entry().acceleration());
        return (level - stopLevel - start) / slowedSpeed;
    }

    /**
     * The fastest V (m/s) at which a joint of {@code joint} seconds goes without a stop: that at which {@link #longestWithoutStop}
     * is the joint cycle time. It falls as V rises; at V_slow it is the form without slowing, which holds below. By Newton's steps
     * from the present V, and by halves where one would leave where the answer lies.
     */
    public double fastestWithoutStop(double joint) {
        if (longestWithoutStop(slowedSpeed) <= joint) {
            return forms.fastestSpeed(joint);
        }
        double low = slowedSpeed;
        double high = ENDLESS * slowedSpeed;
        if (longestWithoutStop(high) > joint) {
            return Double.POSITIVE_INFINITY;
        }
        double speed = Math.max(low, Math.min(forms.entry().speed(), high));
        while (true) {
            double spare = longestWithoutStop(speed) - joint;
            if (spare > 0) {
                low = speed;
            } else {
                high = speed;
            }
            double next = speed - spare / lengthening(speed);
            if (Math.abs(next - speed) <= EXACT * speed || high - low <= EXACT * high) {
                return next;
            }
            speed = next > low && next < high ? next : (low + high) / 2;
        }
    }

    /** What 1 m/s more of V adds to {@link #longestWithoutStop} (s for each m/s): its derivative. */
    private double lengthening(double speed) {
        StopAndGo strip = forms.entry();
        double creeping = strip.creep().map(Entry.Creep::speed).orElse(0.0) * strip.creepTime();
        double slowing = 1 - speed / slowedSpeed;
        return -(forms.capacity() - level + creeping) / (speed * speed)
                - 1 / (2 * strip.deceleration())
                + slowing / forms.processDeceleration();
    }
}
