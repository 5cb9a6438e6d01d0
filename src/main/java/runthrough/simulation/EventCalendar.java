package runthrough.simulation;

import java.util.function.Supplier;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;
import umontreal.ssj.simevents.eventlist.DoublyLinked;

/**
 * The event calendar of one run, on SSJ's. Simultaneous events go by their order, then in the order in which they were set.
 * A doubly linked list is the fastest of SSJ's calendars with the handful of pending events that a line has.
 */
final class EventCalendar {
    /** So many events at one instant are no progress but a circle. */
    private static final int MOST_AT_ONE_INSTANT = 1000;

    private final Simulator simulator = new Simulator(new DoublyLinked());
    private final Supplier<String> state;
    private double instant = -1;
    private int atThisInstant;
    private String lastEvent = "start";

    /** A calendar of a run that describes its {@code state} in error messages. */
    EventCalendar(Supplier<String> state) {
        this.state = state;
    }

    /** The time of the event under way (s). */
    double now() {
        return simulator.time();
    }

    /** Runs until nothing is left or {@link #stop}. */
    void run() {
        simulator.start();
    }

    /** Ends the run with the event under way. */
    void stop() {
        simulator.stop();
    }

    /** A timer for use over and over; {@code name} says in error messages what it times. */
    Timer timer(String name, int order, Runnable action) {
        return new Timer(name, order, action);
    }

    private void count(String name) {
        double now = simulator.time();
        if (now > instant) {
            instant = now;
            atThisInstant = 0;
        } else if (++atThisInstant > MOST_AT_ONE_INSTANT) {
            throw new SimulationException("no progress: more than " + MOST_AT_ONE_INSTANT + " events at " + now
                    + " s, the last '" + lastEvent + "' and '" + name + "': " + state.get());
        }
        lastEvent = name;
    }

    /** One entry of the calendar, which can be set again after it went off or was cancelled. */
    final class Timer extends Event {
        private final String name;
        private final Runnable action;

        private Timer(String name, int order, Runnable action) {
            super(simulator);
            this.name = name;
            this.action = action;
            setPriority(order);
        }

        /** Goes off {@code delay} seconds from now, {@code >= 0}; must not be pending. */
        void start(double delay) {
            if (!(delay >= 0 && delay < Double.POSITIVE_INFINITY)) {
                throw new SimulationException(name + ": time " + delay + " s at " + now() + " s is not a time to wait");
            }
            schedule(delay);
        }

        /** As {@link #start(double)}, at an order of this time's own. */
        void start(double delay, int order) {
            priority = order;
            start(delay);
        }

        boolean isPending() {
            return eventTime >= 0;
        }

        void stopIfPending() {
            if (isPending()) {
                cancel();
            }
        }

        /** When it goes off (s); only while pending. */
        double dueAt() {
            return eventTime;
        }

        @Override
        public void actions() {
            count(name);
            action.run();
        }
    }
}
