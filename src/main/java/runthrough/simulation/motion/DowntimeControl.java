package runthrough.simulation.motion;

import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Downtime;
import runthrough.simulation.account.RunStatistics;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.Sampler;
import runthrough.simulation.random.SourceNames;

/**
 * Process downtime: when it falls due, counted while the process moves, when it ends, and what holds the process while it lasts.
 * Does nothing where there is none.
 *
 * <p>Rules DOWN-1, DOWN-2, DOWN-3, DOWN-4, DOWN-5, DOWN-6, PRACTICE-4.
 */
final class DowntimeControl {
    private final EventCalendar calendar;
    private final LineState state;
    private final RunStatistics statistics;
    private final Runnable over;
    private final EventCalendar.Timer due;
    private final EventCalendar.Timer ends;
    private final @Nullable Sampler running;
    private final @Nullable Sampler standing;
    private double left;
    /** Of the downtime that is next or under way, from 1. */
    private int number;

    /** Downtime of {@code line}, at whose end {@code over} is called. */
    DowntimeControl(
            Line line,
            LineState state,
            EventCalendar calendar,
            RunStatistics statistics,
            RandomNumbers numbers,
            Runnable over) {
        this.calendar = calendar;
        this.state = state;
        this.statistics = statistics;
        this.over = over;
        Downtime downtime = line.process().downtime().orElse(null);
        running = downtime == null
                ? null
                : new Sampler(downtime.runningTime(), numbers.source(SourceNames.DOWNTIME_RUNNING));
        standing = downtime == null
                ? null
                : new Sampler(downtime.standingTime(), numbers.source(SourceNames.DOWNTIME_STANDING));
        due = calendar.step("downtime due", EventOrder.DOWNTIME_DUE, this::fallDue);
        ends = calendar.step("downtime ends", EventOrder.TIMER, this::end);
    }

    /** The process moves at time 0, with a whole running time before it. */
    void begin() {
        draw();
        processMoves();
    }

    private void draw() {
        if (running != null) {
            left = running.draw(++number, 0);
        }
    }

    /** The process moves: the clock runs. */
    void processMoves() {
        if (running != null) {
            due.start(left);
        }
    }

    /** The process has come to rest: the clock stands, what is left of it is kept, be it nothing; downtime takes its time. */
    void processRests() {
        if (due.isPending()) {
            left = due.dueAt() - calendar.now();
            due.stopIfPending();
        }
        if (state.down && standing != null) {
            ends.start(standing.draw(number, 0));
        }
    }

    private void fallDue() {
        state.down = true;
        statistics.downtime();
    }

    private void end() {
        state.down = false;
        draw();
        over.run();
    }
}
