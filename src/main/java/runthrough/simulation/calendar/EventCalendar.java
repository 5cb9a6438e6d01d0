package runthrough.simulation.calendar;

import java.util.concurrent.CancellationException;
import runthrough.simulation.records.SimulationException;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;

/**
 * The event calendar of one run, on SSJ's. Simultaneous events go by their {@link EventOrder}, then in the order in which
 * they were set. A doubly linked list is the fastest of SSJ's calendars with the handful of pending events that a line has.
 *
 * <p>Rules NUM-5, ORDER-14.
 */
public final class EventCalendar {
    /** More events at one instant than this make no progress. */
    private static final int MOST_AT_ONE_INSTANT = 1000;

    private final Clock simulator = new Clock();
    private final Watched line;
    /** An interrupt is looked for once in so many events, less one: a power of two. */
    private static final int LOOKS = 0xFFF;

    private int events;
    private double instant = -1;
    private int atThisInstant;
    private String lastEvent = "start";

    /** A calendar of what happens to {@code line}. */
    public EventCalendar(Watched line) {
        this.line = line;
    }

    /** The time of the event under way (s). */
    public double now() {
        return simulator.time();
    }

    /**
     * Runs until nothing is left or {@link #stop}.
     *
     * @throws CancellationException when its thread is interrupted
     */
    public void run() {
        simulator.start();
    }

    /** When the next event is due (s); infinite when none is pending. */
    public double nextDue() {
        Event first = simulator.getEventList().getFirst();
        return first == null ? Double.POSITIVE_INFINITY : first.time();
    }

    /**
     * Lets the event under way go on at {@code time} (s), not before now and before {@link #nextDue}, with the line up to date:
     * what happens there, called {@code name}, needs no event of its own.
     */
    public void goOnAt(double time, String name) {
        simulator.moveTo(time);
        count(name);
        line.catchUp();
    }

    /** Ends the run with the event under way. */
    public void stop() {
        simulator.stop();
    }

    /** A timer for use over and over; {@code name} says in error messages what it times. */
    public Timer timer(String name, EventOrder order, Runnable action) {
        return new Timer(name, order, false, action);
    }

    /** The same with an action that changes the motion: it finds the line up to date, and plans are made anew after it. */
    public Timer step(String name, EventOrder order, Runnable action) {
        return new Timer(name, order, true, action);
    }

    /** The error {@code what}, with time and state. */
    public SimulationException error(String what) {
        return new SimulationException(what + " at " + SimulationException.text(now()) + " s: " + line.describe());
    }

    private void count(String name) {
        if ((++events & LOOKS) == 0 && Thread.currentThread().isInterrupted()) {
            throw new CancellationException("given up at " + SimulationException.text(simulator.time()) + " s");
        }
        double now = simulator.time();
        if (now > instant) {
            instant = now;
            atThisInstant = 0;
            return;
        }
        if (++atThisInstant > MOST_AT_ONE_INSTANT) {
            throw new SimulationException(
                    "no progress: more than " + MOST_AT_ONE_INSTANT + " events at " + SimulationException.text(now)
                            + " s, the last '" + lastEvent + "' and '" + name + "': " + line.describe());
        }
        lastEvent = name;
    }

    /** SSJ's simulator with a clock that an event may move on. */
    private static final class Clock extends Simulator {
        Clock() {
            super(new PendingEvents());
        }

        void moveTo(double time) {
            currentTime = time;
        }
    }

    /** One entry of the calendar, which can be set again after it went off or was cancelled. */
    public final class Timer extends Event {
        private final String name;
        private final boolean isStep;
        private final Runnable action;

        private Timer(String name, EventOrder order, boolean isStep, Runnable action) {
            super(simulator);
            this.name = name;
            this.isStep = isStep;
            this.action = action;
            setPriority(order.place());
        }

        /** Goes off {@code delay} seconds from now, {@code >= 0}; must not be pending. */
        public void start(double delay) {
            if (!(delay >= 0 && delay < Double.POSITIVE_INFINITY)) {
                throw new SimulationException(name + ": time " + SimulationException.text(delay) + " s at "
                        + SimulationException.text(now()) + " s is not a time to wait");
            }
            schedule(delay);
        }

        /** As {@link #start(double)}, at an order of this time's own. */
        public void start(double delay, EventOrder order) {
            priority = order.place();
            start(delay);
        }

        /** Goes off at {@code time} (s), not before now; must not be pending. */
        public void startAt(double time) {
            eventTime = time;
            simulator.getEventList().add(this);
        }

        /** Whether it is set and has not gone off. */
        public boolean isPending() {
            return eventTime >= 0;
        }

        /** Takes it out of the calendar, if it is set. */
        public void stopIfPending() {
            if (isPending()) {
                cancel();
            }
        }

        /** When it goes off (s); only while pending. */
        public double dueAt() {
            return eventTime;
        }

        @Override
        public void actions() {
            count(name);
            if (isStep) {
                line.catchUp();
                action.run();
                line.replan();
            } else {
                action.run();
            }
        }
    }
}
