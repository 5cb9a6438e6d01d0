package runthrough.simulation.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;
import umontreal.ssj.simevents.eventlist.DoublyLinked;
import umontreal.ssj.simevents.eventlist.EventList;

/** The list of pending events against that of the event library, and in the order that the library's interface asks for. */
class PendingEventsTest {
    private final Simulator simulator = new Simulator();
    private final PendingEvents pending = new PendingEvents();

    private static class Named extends Event {
        private final String name;

        Named(Simulator simulator, String name, double time) {
            super(simulator);
            this.name = name;
            setTime(time);
        }

        @Override
        public void actions() {}

        @Override
        public String toString() {
            return name;
        }
    }

    /** Of a class of its own. */
    private static final class Other extends Named {
        Other(Simulator simulator) {
            super(simulator, "other", 2);
        }
    }

    private Named event(String name, double time) {
        return new Named(simulator, name, time);
    }

    private static List<String> names(EventList events) {
        List<String> names = new ArrayList<>();
        events.forEach(event -> names.add(event.toString()));
        return names;
    }

    @Test
    void theyComeInOrderOfTime_ofEqualOnesTheFirstAdded() {
        pending.add(event("b", 2));
        pending.add(event("c", 3));
        pending.add(event("b later", 2));
        pending.add(event("a", 1));

        assertThat(names(pending)).containsExactly("a", "b", "b later", "c");
        assertThat(pending.getFirst()).hasToString("a");
        assertThat(pending.removeFirst()).hasToString("a");
        assertThat(pending.removeFirst()).hasToString("b");
        assertThat(pending.removeFirst()).hasToString("b later");
        assertThat(pending.removeFirst()).hasToString("c");
        assertThat(pending.removeFirst()).isNull();
        assertThat(pending.getFirst()).isNull();
        assertThat(pending.isEmpty()).isTrue();
    }

    @Test
    void theyArePutBesideOneAnother_whateverTheirTimes() {
        Named middle = event("middle", 5);
        pending.add(middle);
        pending.addBefore(event("before", 9), middle);
        pending.addAfter(event("after", 1), middle);
        pending.addFirst(event("first", 7));

        assertThat(names(pending)).containsExactly("first", "before", "middle", "after");
        assertThatThrownBy(() -> pending.addAfter(event("lost", 1), event("nowhere", 1)))
                .isInstanceOf(NoSuchElementException.class);
    }

    @Test
    void theyAreFoundByTheirClass() {
        Other other = new Other(simulator);
        pending.add(event("a", 1));
        pending.add(other);

        assertThat(pending.getFirstOfClass(Other.class)).isSameAs(other);
        assertThat(pending.getFirstOfClass(Other.class.getName())).isSameAs(other);
        pending.clear();
        assertThat(pending.getFirstOfClass(Other.class)).isNull();
        assertThat(pending.getFirstOfClass(Other.class.getName())).isNull();
        assertThat(pending.isEmpty()).isTrue();
    }

    @Test
    void ofManyTheySayWhatTheLibrarysListSays() {
        EventList reference = new DoublyLinked();
        Random random = new Random(3);
        List<Named> known = IntStream.range(0, 40)
                .mapToObj(i -> event("e" + i, random.nextInt(6)))
                .toList();
        for (Named event : known) {
            pending.add(event);
            reference.add(event);
            if (random.nextInt(3) == 0) {
                Named some = known.get(random.nextInt(known.size()));
                assertThat(pending.remove(some)).isEqualTo(reference.remove(some));
            }
            assertThat(names(pending)).isEqualTo(names(reference));
        }
    }
}
