package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.Trace.EntryState;
import runthrough.simulation.records.Trace.Point;
import runthrough.simulation.records.Trace.ProcessState;

/** Judges totals and records by working them out once more from the trace, stretch by stretch. */
final class AccountReferee {
    private final Replication run;
    private final List<Point> points;
    private final Totals totals;
    private final boolean oneStrip;
    private final double slowLevel;

    private double processed;
    private double rated;
    private double lost;
    private double levelIntegral;
    private double starved;
    private double downtime;
    private double blocked;
    private boolean losing;
    /** Starved or slowed, as far as was seen before any downtime. */
    private boolean isHeld;

    AccountReferee(Line line, Replication run) {
        this.run = run;
        oneStrip = line.practice().isOneStrip();
        slowLevel = line.process()
                .slowing()
                .filter(slowing -> !oneStrip)
                .map(Slowing::level)
                .orElse(Double.NaN);
        points = run.trace().orElseThrow().points();
        totals = run.totals();
    }

    void judge() {
        for (int i = 0; i < points.size(); i++) {
            double end = i + 1 < points.size() ? points.get(i + 1).time() : totals.duration();
            add(points.get(i), end - points.get(i).time());
        }
        assertThat(totals.processedMetres()).as("processedMetres").isCloseTo(processed, near(processed));
        assertThat(totals.ratedMetres()).as("ratedMetres").isCloseTo(rated, near(rated));
        assertThat(totals.levelIntegral()).as("levelIntegral").isCloseTo(levelIntegral, near(levelIntegral));
        assertThat(totals.starvedSeconds()).as("starvedSeconds").isCloseTo(starved, near(totals.duration()));
        assertThat(totals.downtimeSeconds()).as("downtimeSeconds").isCloseTo(downtime, near(totals.duration()));
        assertThat(totals.blockedSeconds()).as("blockedSeconds").isCloseTo(blocked, near(totals.duration()));
        assertThat(totals.lostMetres()).as("lostMetres").isCloseTo(lost, near(rated));
        judgeRecords();
    }

    private static Offset<Double> near(double value) {
        return within(1e-7 * Math.max(1, Math.abs(value)));
    }

    private void add(Point point, double time) {
        boolean held = point.processState() == ProcessState.STARVED || point.processState() == ProcessState.SLOWED;
        if (held || slowsUnseen(point)) {
            losing = true;
            isHeld = true;
        } else if (point.processState() == ProcessState.RUNNING) {
            isHeld = false;
        }
        // Also where the rated speed falls while downtime begins.
        if (!isHeld && point.processSpeed() >= point.ratedSpeed()) {
            losing = false;
        }
        if (time == 0) {
            return;
        }
        double end = point.processSpeedAfter(time);
        processed += time * (point.processSpeed() + end) / 2;
        rated += time * point.ratedSpeed();
        levelIntegral += time * (point.level() + 4 * point.levelAfter(time / 2) + point.levelAfter(time)) / 6;
        if (point.processState() == ProcessState.DOWNTIME) {
            downtime += time;
        } else if (losing) {
            lost += shortfall(point.ratedSpeed() - point.processSpeed(), point.ratedSpeed() - end, time);
        }
        if (point.processState() == ProcessState.STARVED && point.processSpeed() == 0 && end == 0) {
            starved += time;
        }
        if (!oneStrip
                && point.entryState() != EntryState.RUNNING_OUT
                && point.entryState() != EntryState.STANDING
                && point.entrySpeed() == 0
                && point.entryAcceleration() == 0) {
            blocked += time;
        }
    }

    /** Slowing that begins during a downtime, which the trace shows instead: the level falls through the slow level. */
    private boolean slowsUnseen(Point point) {
        return point.processState() == ProcessState.DOWNTIME
                && Math.abs(point.level() - slowLevel) < 1e-6
                && point.entrySpeed() < point.processSpeed();
    }

    /** What lies below the rated speed where the speed goes from {@code first} to {@code last} below it. */
    private static double shortfall(double first, double last, double time) {
        if (first * last >= 0) {
            return time * Math.max(0, first + last) / 2;
        }
        double high = Math.max(first, last);
        return time * high * high / (2 * Math.abs(first - last));
    }

    private void judgeRecords() {
        List<ChangeRecord> changes = run.changes();
        assertThat(changes.stream().mapToDouble(ChangeRecord::lostMetres).sum())
                .isLessThanOrEqualTo(totals.lostMetres() + 1e-6);
        assertThat(changes.stream().mapToInt(ChangeRecord::starvedStops).sum())
                .isLessThanOrEqualTo(totals.starvedStops());
        assertThat(totals.ranThrough() + totals.slowedChanges() + totals.stoppedChanges())
                .isEqualTo(totals.changes());
        for (int i = 0; i < changes.size(); i++) {
            ChangeRecord change = changes.get(i);
            double next = i + 1 < changes.size() ? changes.get(i + 1).start() : totals.duration();
            assertThat(change.tailStopped()).isBetween(change.start(), change.released());
            assertThat(change.released()).isLessThanOrEqualTo(next);
            double matched = Double.isNaN(change.refillTime()) ? next : change.released() + change.refillTime();
            assertThat(matched).isLessThanOrEqualTo(next + 1e-9);
            assertThat(change.lowestLevel()).isCloseTo(lowest(change.start(), matched), within(1e-6));
            judgeOutcome(change, next);
        }
    }

    private double lowest(double from, double until) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            double end = i + 1 < points.size() ? points.get(i + 1).time() : totals.duration();
            double first = Math.max(from, point.time()) - point.time();
            double last = Math.min(until, end) - point.time();
            if (last >= first) {
                double rate = point.entrySpeed() - point.processSpeed();
                double bend = point.entryAcceleration() - point.processAcceleration();
                double turn = bend > 0 ? Math.min(last, Math.max(first, -rate / bend)) : first;
                lowest = Math.min(lowest, point.levelAfter(first));
                lowest = Math.min(lowest, point.levelAfter(last));
                lowest = Math.min(lowest, point.levelAfter(turn));
            }
        }
        return lowest;
    }

    /** A change that ran through saw no state but running and downtimes, unless those were there before the first change. */
    private void judgeOutcome(ChangeRecord change, double next) {
        boolean starvedSeen = seen(ProcessState.STARVED, change.start(), next);
        boolean slowedSeen = seen(ProcessState.SLOWED, change.start(), next);
        if (change.outcome() == Outcome.RAN_THROUGH && change.number() > 1) {
            boolean sinceBefore = seen(
                            ProcessState.SLOWED, 0, run.changes().get(0).start())
                    || seen(ProcessState.STARVED, 0, run.changes().get(0).start());
            assertThat(starvedSeen || slowedSeen).isEqualTo(sinceBefore && (starvedSeen || slowedSeen));
        }
        if (starvedSeen && change.outcome() != Outcome.STOPPED) {
            assertThat(seen(ProcessState.STARVED, 0, run.changes().get(0).start()))
                    .isTrue();
        }
        if (change.outcome() == Outcome.STOPPED && !starvedSeen) {
            // It starved while a downtime hid it.
            assertThat(seen(ProcessState.DOWNTIME, change.start(), next)).isTrue();
        }
        assertThat(change.starvedStops() == 0 || change.outcome() == Outcome.STOPPED)
                .isTrue();
    }

    private boolean seen(ProcessState state, double from, double until) {
        for (int i = 0; i < points.size(); i++) {
            double end = i + 1 < points.size() ? points.get(i + 1).time() : totals.duration();
            Point point = points.get(i);
            if (point.processState() == state && Math.min(end, until) - Math.max(point.time(), from) > 1e-9) {
                return true;
            }
        }
        return false;
    }
}
