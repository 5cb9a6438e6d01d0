package runthrough.simulation.calendar;

import java.util.Arrays;
import java.util.Collections;
import java.util.Iterator;
import java.util.ListIterator;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.eventlist.EventList;

/**
 * The few events of a line that are pending, in their order; of equal ones the one added first comes first. They lie in an array,
 * the next one last, so that an event comes and goes without an object being made for it.
 */
final class PendingEvents implements EventList {
    /** More than a line has at once. */
    private static final int USUAL = 8;

    private Event[] events = new Event[USUAL];
    private int size;

    @Override
    public boolean isEmpty() {
        return size == 0;
    }

    @Override
    public void clear() {
        Arrays.fill(events, 0, size, null);
        size = 0;
    }

    @Override
    public void add(Event event) {
        int place = size;
        while (place > 0 && event.compareTo(events[place - 1]) >= 0) {
            place--;
        }
        insert(place, event);
    }

    @Override
    public void addFirst(Event event) {
        insert(size, event);
    }

    @Override
    public void addBefore(Event event, Event other) {
        insert(known(other) + 1, event);
    }

    @Override
    public void addAfter(Event event, Event other) {
        insert(known(other), event);
    }

    private void insert(int place, Event event) {
        if (size == events.length) {
            events = Arrays.copyOf(events, 2 * size);
        }
        System.arraycopy(events, place, events, place + 1, size - place);
        events[place] = event;
        size++;
    }

    @Override
    public @Nullable Event getFirst() {
        return size == 0 ? null : events[size - 1];
    }

    @Override
    public @Nullable Event getFirstOfClass(String name) {
        for (Event event : this) {
            if (event.getClass().getName().equals(name)) {
                return event;
            }
        }
        return null;
    }

    @Override
    public <E extends Event> @Nullable E getFirstOfClass(Class<E> type) {
        for (Event event : this) {
            if (event.getClass() == type) {
                return type.cast(event);
            }
        }
        return null;
    }

    @Override
    public boolean remove(Event event) {
        int place = place(event);
        if (place < 0) {
            return false;
        }
        size--;
        System.arraycopy(events, place + 1, events, place, size - place);
        return true;
    }

    @Override
    public @Nullable Event removeFirst() {
        return size == 0 ? null : events[--size];
    }

    @Override
    public Iterator<Event> iterator() {
        return listIterator();
    }

    /** Of the events as they are now, in their order. */
    @Override
    public ListIterator<Event> listIterator() {
        Event[] ordered = Arrays.copyOf(events, size);
        Collections.reverse(Arrays.asList(ordered));
        return Collections.unmodifiableList(Arrays.asList(ordered)).listIterator();
    }

    private int known(Event event) {
        int place = place(event);
        if (place < 0) {
            throw new NoSuchElementException("an event that is not pending");
        }
        return place;
    }

    /** Where {@code event} lies; -1 if it is not pending. */
    @SuppressWarnings("ReferenceEquality") // the very event, whatever others are equal to it
    private int place(Event event) {
        int place = size - 1;
        while (place >= 0 && events[place] != event) {
            place--;
        }
        return place;
    }
}
