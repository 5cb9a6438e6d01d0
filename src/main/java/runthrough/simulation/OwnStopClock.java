package runthrough.simulation;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.plant.ProcessSection.Downtime;

/** When stops of the process's own fall due, counted while it moves, and when they end. Does nothing where there are none. */
final class OwnStopClock {
    private final EventCalendar calendar;
    private final EventCalendar.Timer due;
    private final EventCalendar.Timer ends;
    private final @Nullable Sampler running;
    private final @Nullable Sampler standing;
    private double left;
    private int drawn;
    private int stood;

    OwnStopClock(
            Optional<Downtime> stops,
            EventCalendar calendar,
            TimerFactory steps,
            Streams streams,
            Runnable onDue,
            Runnable onEnd) {
        this.calendar = calendar;
        running = stops.map(
                        own -> new Sampler("time between own stops", own.runningTime(), streams, Source.OWN_RUNNING))
                .orElse(null);
        standing = stops.map(own -> new Sampler("own stop", own.standingTime(), streams, Source.OWN_STANDING))
                .orElse(null);
        due = steps.timer("own stop due", StateEvent.OWN_STOP_ORDER, onDue);
        ends = steps.timer("own stop ends", StateEvent.TIMER_ORDER, onEnd);
    }

    /** Draws the running time until the next stop falls due. */
    void draw() {
        if (running != null) {
            left = running.next(++drawn, 1);
        }
    }

    /** The process moves: the clock runs. */
    void run() {
        if (running != null) {
            due.start(left);
        }
    }

    /** The process has come to rest: the clock stands, and what is left of it is kept, be it nothing. */
    void pause() {
        if (due.isPending()) {
            left = due.dueAt() - calendar.now();
            due.cancel();
        }
    }

    /** The process has come to rest in a stop of its own, which now takes its time. */
    void stand() {
        if (standing != null) {
            ends.start(standing.next(++stood, 1));
        }
    }
}
