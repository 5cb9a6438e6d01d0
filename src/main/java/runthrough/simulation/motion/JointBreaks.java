package runthrough.simulation.motion;

import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.Queue;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.JointBreak;
import runthrough.simulation.account.RunStatistics;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.Sampler;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.random.SourceNumbers;

/**
 * Joints that break in the process section: which of them and where, and the repair, for which the process stands. Does nothing
 * where none breaks.
 *
 * <p>Rules BREAK-1, BREAK-2, BREAK-5.
 */
final class JointBreaks {
    private final LineState state;
    private final RunStatistics statistics;
    private final Runnable over;
    private final @Nullable Breaking breaking;
    private final EventCalendar.Timer repaired;
    private final Queue<Place> ahead = new PriorityQueue<>(Comparator.comparingDouble(Place::metres));
    private final Breaks breaks = new Breaks();
    /** The coil change whose joint is being repaired. */
    private int change;

    /** Breaks of the joints of {@code line}, at the end of whose repair {@code over} is called. */
    JointBreaks(
            Line line,
            LineState state,
            EventCalendar calendar,
            RunStatistics statistics,
            RandomNumbers numbers,
            Runnable over) {
        this.state = state;
        this.statistics = statistics;
        this.over = over;
        breaking = line.process()
                .jointBreak()
                .map(given -> new Breaking(
                        given,
                        numbers.source(SourceNames.BREAK),
                        numbers.source(SourceNames.BREAK_PLACE),
                        new Sampler(given.repair(), numbers.source(SourceNames.BREAK_REPAIR))))
                .orElse(null);
        repaired = calendar.step("repair of a joint ends", EventOrder.TIMER, this::repaired);
    }

    /** How joints break, with the random numbers for it. */
    private record Breaking(JointBreak given, SourceNumbers happens, SourceNumbers place, Sampler repair) {}

    /** Where the joint of coil change {@code change} will break: when so many metres are processed. */
    private record Place(double metres, int change) {}

    /** The joint of coil change {@code number} reaches the process section when {@code mark} metres are processed. */
    void release(int number, double mark) {
        if (breaking != null && breaking.happens.happens(breaking.given.chance(), number, 0)) {
            double share = breaking.place.uniform(number, 0);
            ahead.add(new Place(mark + share * breaking.given.length(), number));
        }
    }

    /** The process has come to rest: a joint that broke takes its repair from here. */
    void processRests() {
        if (state.broken && breaking != null) {
            repaired.start(breaking.repair.draw(change, 0));
        }
    }

    /** Offers that the next joint breaks, while the process moves. */
    void offerTo(NextEvent next) {
        if (!ahead.isEmpty() && !state.process.stands()) {
            next.offer(breaks);
        }
    }

    private void repaired() {
        state.broken = false;
        over.run();
    }

    private final class Breaks extends StateEvent {
        Breaks() {
            super(EventOrder.JOINT_BREAKS);
        }

        @Override
        double timeTo() {
            Place place = ahead.element();
            return Kinematics.travel(place.metres - state.processed(), state.process.speed, state.process.acceleration);
        }

        @Override
        void happen() {
            Place place = ahead.remove();
            // One that falls due before the repair of another has ended is mended with it.
            if (!state.broken && breaking != null) {
                state.broken = true;
                change = place.change;
                statistics.jointBroke(breaking.given.scrap());
            }
        }
    }
}
