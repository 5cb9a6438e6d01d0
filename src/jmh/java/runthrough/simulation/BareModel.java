package runthrough.simulation;

import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;
import umontreal.ssj.simevents.eventlist.DoublyLinked;

/**
 * The same coil changes as somebody who knows SSJ would write them down for this one line: a class for each kind of event,
 * whose action schedules the next. It knows nothing but a process that never stops, so that every ramp is known
 * beforehand; it keeps a level and a few sums, no records. Events are objects used over and over, in the calendar that is
 * fastest here: harder to beat than the usual style of a new object for each event in the default calendar.
 */
final class BareModel {
    private static final double STOP_DISTANCE =
            BenchmarkLine.PROCESS_SPEED * BenchmarkLine.PROCESS_SPEED / (2 * BenchmarkLine.ENTRY_DOWN);
    private static final double SURPLUS = BenchmarkLine.TOP_SPEED - BenchmarkLine.PROCESS_SPEED;

    private final Simulator simulator = new Simulator(new DoublyLinked());
    private final BareDraws draws;
    private final int changes;
    private final double capacity;

    private final Event tailRunsOut = new TailRunsOut();
    private final Event tailStops = new TailStops();
    private final Event topSpeedReached = new TopSpeedReached();
    private final Event settles = new Settles();
    private final Event matched = new Matched();
    private final PrepareDone prepareDone = new PrepareDone();
    private final TailDone tailDone = new TailDone();
    private final JoinDone joinDone = new JoinDone();

    private int running = 1;
    private int rejects;
    private int prepared = 1;
    private int gone;
    private boolean preparing;
    private boolean joinWaits;
    private double level;
    private double remaining;
    private double since;
    private double stoppedAt;
    private double jointSeconds;
    private double releasedAt;
    private double refillSeconds;

    BareModel(int replication, double capacity, int changes) {
        draws = new BareDraws(replication);
        this.capacity = capacity;
        this.changes = changes;
    }

    void run() {
        level = capacity;
        remaining = BenchmarkLine.COIL_LENGTH;
        prepareNext();
        matched.schedule(0);
        simulator.start();
    }

    double now() {
        return simulator.time();
    }

    double jointSeconds() {
        return jointSeconds;
    }

    double refillSeconds() {
        return refillSeconds;
    }

    /** Books the strip since the last event, over which the entry ran {@code metres} (m). */
    private void feed(double metres) {
        double now = simulator.time();
        level += metres - BenchmarkLine.PROCESS_SPEED * (now - since);
        remaining -= metres;
        since = now;
    }

    private void prepareNext() {
        if (!preparing && prepared + 1 <= gone + 2) {
            preparing = true;
            prepareDone.begin();
        }
    }

    /** T0. */
    private final class TailRunsOut extends Event {
        TailRunsOut() {
            super(simulator);
        }

        @Override
        public void actions() {
            feed(BenchmarkLine.PROCESS_SPEED * (simulator.time() - since));
            if (running > changes) {
                simulator.stop();
            } else {
                tailStops.schedule(BenchmarkLine.PROCESS_SPEED / BenchmarkLine.ENTRY_DOWN);
            }
        }
    }

    /** T1. */
    private final class TailStops extends Event {
        TailStops() {
            super(simulator);
        }

        @Override
        public void actions() {
            feed(STOP_DISTANCE);
            stoppedAt = simulator.time();
            gone = running;
            tailDone.begin();
            prepareNext();
        }
    }

    private final class PrepareDone extends Event {
        private int element;

        PrepareDone() {
            super(simulator);
        }

        void begin() {
            element = 0;
            schedule(draws.prepare(0, prepared));
        }

        @Override
        public void actions() {
            if (++element < BenchmarkLine.PREPARE.size()) {
                schedule(draws.prepare(element, prepared));
                return;
            }
            preparing = false;
            prepared++;
            if (joinWaits && prepared > running) {
                joinDone.begin();
            }
            prepareNext();
        }
    }

    private final class TailDone extends Event {
        private int element;

        TailDone() {
            super(simulator);
        }

        void begin() {
            element = 0;
            schedule(draws.tail(0, running, rejects));
        }

        @Override
        public void actions() {
            if (++element < BenchmarkLine.TAIL.size()) {
                schedule(draws.tail(element, running, rejects));
            } else if (prepared > running) {
                joinDone.begin();
            } else {
                joinWaits = true;
            }
        }
    }

    private final class JoinDone extends Event {
        private int element;

        JoinDone() {
            super(simulator);
        }

        void begin() {
            joinWaits = false;
            element = 0;
            schedule(draws.join(0, running, rejects));
        }

        @Override
        public void actions() {
            if (++element < BenchmarkLine.JOIN.size()) {
                schedule(draws.join(element, running, rejects));
            } else if (draws.isRejected(running, rejects)) {
                rejects++;
                tailDone.begin();
            } else {
                release();
            }
        }

        /** T2. */
        private void release() {
            feed(0);
            releasedAt = simulator.time();
            jointSeconds += releasedAt - stoppedAt;
            running++;
            rejects = 0;
            remaining = BenchmarkLine.COIL_LENGTH;
            topSpeedReached.schedule(BenchmarkLine.TOP_SPEED / BenchmarkLine.ENTRY_UP);
            prepareNext();
        }
    }

    private final class TopSpeedReached extends Event {
        TopSpeedReached() {
            super(simulator);
        }

        @Override
        public void actions() {
            feed(BenchmarkLine.TOP_SPEED * BenchmarkLine.TOP_SPEED / (2 * BenchmarkLine.ENTRY_UP));
            double room = capacity - level - SURPLUS * SURPLUS / (2 * BenchmarkLine.ENTRY_DOWN);
            settles.schedule(Math.max(0, room / SURPLUS));
        }
    }

    private final class Settles extends Event {
        Settles() {
            super(simulator);
        }

        @Override
        public void actions() {
            feed(BenchmarkLine.TOP_SPEED * (simulator.time() - since));
            matched.schedule(SURPLUS / BenchmarkLine.ENTRY_DOWN);
        }
    }

    private final class Matched extends Event {
        Matched() {
            super(simulator);
        }

        @Override
        public void actions() {
            refillSeconds += simulator.time() - releasedAt;
            double time = simulator.time() - since;
            feed(time * (BenchmarkLine.PROCESS_SPEED + time * BenchmarkLine.ENTRY_DOWN / 2));
            tailRunsOut.schedule((remaining - STOP_DISTANCE) / BenchmarkLine.PROCESS_SPEED);
        }
    }
}
