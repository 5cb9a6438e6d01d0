package runthrough.simulation.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.simulation.records.SimulationException;

class EventCalendarTest {
    private final EventCalendar calendar = new EventCalendar(() -> "state of the line");
    private final List<String> seen = new ArrayList<>();

    private EventCalendar.Timer timer(String name, int place) {
        EventOrder order = Arrays.stream(EventOrder.values())
                .filter(one -> one.place() == place)
                .findFirst()
                .orElseThrow();
        return calendar.timer(name, order, () -> seen.add(name + " " + calendar.now()));
    }

    @Test
    void earliestFirst() {
        timer("late", 1).start(2);
        timer("early", 9).start(1);
        calendar.run();

        assertThat(seen).containsExactly("early 1.0", "late 2.0");
    }

    @Test
    void atOneInstantTheLowerOrderFirst_howeverTheyWereSet() {
        for (int order : new int[] {7, 2, 12, 3, 1, 11}) {
            timer("order " + order, order).start(5);
        }
        calendar.run();

        assertThat(seen)
                .containsExactly(
                        "order 1 5.0", "order 2 5.0", "order 3 5.0", "order 7 5.0", "order 11 5.0", "order 12 5.0");
    }

    @Test
    void atOneInstantAndOrderTheOneSetFirst() {
        // Rule ORDER-3.
        timer("first", 3).start(5);
        timer("second", 3).start(5);
        EventCalendar.Timer setAnew = timer("third", 3);
        setAnew.start(1);
        setAnew.stopIfPending();
        setAnew.start(5);
        calendar.run();

        assertThat(seen).containsExactly("first 5.0", "second 5.0", "third 5.0");
    }

    @Test
    void timersSetDuringAnEventJoinThatInstantByTheirOrder() {
        EventCalendar.Timer low = timer("low", 2);
        calendar.timer("sets", EventOrder.DOWNTIME_DUE, () -> {
                    seen.add("sets");
                    low.start(0);
                })
                .start(3);
        timer("high", 6).start(3);
        calendar.run();

        assertThat(seen).containsExactly("sets", "low 3.0", "high 3.0");
    }

    @Test
    void pendingTimerSaysWhenItIsDue() {
        EventCalendar.Timer timer = timer("once", 3);
        assertThat(timer.isPending()).isFalse();
        timer.start(4);

        assertThat(timer.isPending()).isTrue();
        assertThat(timer.dueAt()).isEqualTo(4);
        calendar.run();
        assertThat(timer.isPending()).isFalse();
    }

    @Test
    void moreThanAThousandEventsAtOneInstant_areAnErrorThatNamesTimeAndState() {
        // Rule NUM-5.
        List<EventCalendar.Timer> ring = new ArrayList<>();
        ring.add(calendar.timer("stop", EventOrder.STARVES, () -> ring.get(1).start(0)));
        ring.add(calendar.timer("start", EventOrder.RESTARTS, () -> ring.get(0).start(0)));
        ring.get(0).start(7);

        assertThatThrownBy(calendar::run)
                .isInstanceOf(SimulationException.class)
                .hasMessage(
                        "no progress: more than 1000 events at 7 s, the last 'stop' and 'start': state of the line");
    }

    @Test
    void aThousandEventsAtOneInstantAreNot() {
        for (int i = 0; i < 1000; i++) {
            timer("event", 3).start(7);
        }
        timer("later", 3).start(8);
        calendar.run();

        assertThat(seen).hasSize(1001);
    }

    @Test
    void timeThatIsNone_isAnErrorThatNamesTheTimer() {
        EventCalendar.Timer timer = timer("weld", 3);

        assertThatThrownBy(() -> timer.start(Double.NaN))
                .isInstanceOf(SimulationException.class)
                .hasMessage("weld: time NaN s at 0 s is not a time to wait");
        assertThatThrownBy(() -> timer.start(-1)).hasMessageContaining("-1 s");
        assertThatThrownBy(() -> timer.start(Double.POSITIVE_INFINITY)).hasMessageContaining("Infinity");
    }
}
