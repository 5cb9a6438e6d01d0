package runthrough.simulation.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.records.SimulationException;

class NextEventTest {
    private final EventCalendar calendar = new EventCalendar(() -> "state of the line");
    private final NextEvent next = new NextEvent(calendar);
    private final List<String> seen = new ArrayList<>();

    private StateEvent event(EventOrder order, double time) {
        return new StateEvent(order) {
            @Override
            double timeTo() {
                return time;
            }

            @Override
            void happen() {
                seen.add(order + " " + calendar.now());
            }
        };
    }

    private void runWith(StateEvent... events) {
        next.clear();
        for (StateEvent event : events) {
            next.offer(event);
        }
        next.schedule();
        calendar.run();
    }

    @Test
    void earliestComes() {
        // Rule MOTION-2.
        runWith(event(EventOrder.STARVES, 3), event(EventOrder.SLOWS, 2), event(EventOrder.RESUMES, 4));

        assertThat(seen).containsExactly("SLOWS 2.0");
    }

    @Test
    void atOneTimeTheLowerOrderComes_howeverTheyWereOffered() {
        // Rules ORDER-8, ORDER-9.
        runWith(event(EventOrder.SLOWS, 2), event(EventOrder.STARVES, 2));
        runWith(event(EventOrder.STARVES, 2), event(EventOrder.SLOWS, 2));

        assertThat(seen).containsExactly("STARVES 2.0", "STARVES 4.0");
    }

    @Test
    void whatNeverComesIsNotScheduled() {
        calendar.timer("other", EventOrder.TIMER, () -> seen.add("other")).start(5);
        runWith(event(EventOrder.STARVES, Double.POSITIVE_INFINITY));

        assertThat(seen).containsExactly("other");
    }

    @Test
    void timeThatIsNotANumber_isAnErrorThatNamesEventTimeAndState() {
        next.clear();

        assertThatThrownBy(() -> next.offer(event(EventOrder.STARVES, Double.NaN)))
                .isInstanceOf(SimulationException.class)
                .hasMessage("the time until STARVES is not a number at 0 s: state of the line");
    }
}
