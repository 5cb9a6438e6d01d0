package runthrough.simulation.work;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Joint;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.simulation.random.CoilFeed;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.Sampler;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.random.SourceNumbers;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * One list of work elements with the random numbers of each: whether it is done, and how long it takes.
 *
 * <p>Rules CHANGE-3, CHANGE-4, CHANGE-5, CHANGE-9.
 */
final class WorkQueue {
    private final WorkList list;
    private final CoilFeed feed;
    private final Item[] items;
    private final double shorterBy;

    /**
     * The queue of {@code elements}.
     *
     * @param practice that they are done under
     * @param list which list they are
     * @param elements in their order
     * @param shorterBy seconds off every pass of the list, {@code >= 0}
     * @param feed the coils they are done on
     * @param numbers random numbers of the run
     */
    WorkQueue(
            Practice practice,
            WorkList list,
            List<WorkElement> elements,
            double shorterBy,
            CoilFeed feed,
            RandomNumbers numbers) {
        this.list = list;
        this.shorterBy = shorterBy;
        this.feed = feed;
        List<SourceNames.OfElement> names = SourceNames.of(practice, list, elements);
        items = IntStream.range(0, elements.size())
                .mapToObj(i -> item(elements.get(i), names.get(i), numbers))
                .toArray(Item[]::new);
    }

    private static Item item(WorkElement element, SourceNames.OfElement names, RandomNumbers numbers) {
        return new Item(
                element,
                new Sampler(element.time().drawn(), numbers.source(names.time())),
                numbers.source(names.chance()),
                element.time() instanceof WorkElement.WorkTime.FromRows from
                        ? new Measured(numbers.source(SourceNames.sheet(from.rows())), from)
                        : null);
    }

    /** How many people element {@code index} takes. */
    int people(int index) {
        return items[index].element.people();
    }

    /** The most people that any element takes; 0 of an empty list. */
    int mostPeople() {
        return Arrays.stream(items)
                .mapToInt(item -> item.element.people())
                .max()
                .orElse(0);
    }

    /** Whether element {@code index} may be put down for work on the joint. */
    boolean mayBePutDown(int index) {
        return items[index].element.putDown();
    }

    /** Whether anything is done again after a rejected joint. */
    boolean hasRedo() {
        return Arrays.stream(items).anyMatch(item -> item.element.redo());
    }

    /** Mean duration (s) of element {@code index} in coil change {@code change}, where it is done. */
    double meanTime(int index, int change) {
        return items[index].element.meanDuration(feed.joint(change));
    }

    WorkList list() {
        return list;
    }

    int size() {
        return items.length;
    }

    /** Whether element {@code index} is done in pass {@code pass} of coil change {@code change}. */
    boolean isDone(int index, int change, int pass) {
        Item item = items[index];
        if (pass > 1 && !item.element.redo()) {
            return false;
        }
        Occurrence occurrence = item.element.occurrence();
        if (occurrence instanceof Occurrence.Every every) {
            return change % every.n() == 0;
        }
        if (occurrence instanceof Occurrence.When when) {
            return when.isMetAt(feed.joint(change));
        }
        if (occurrence instanceof Occurrence.Chance chance) {
            return item.chance.happens(chance.p(), change, pass - 1);
        }
        return true;
    }

    /** Seconds off every pass of the list. */
    double shorterBy() {
        return shorterBy;
    }

    /** How long element {@code index} takes (s) in pass {@code pass} of coil change {@code change}, both from 1. */
    double draw(int index, int change, int pass) {
        WorkElement element = items[index].element;
        double whole = whole(index, change, pass);
        return element.shortening() instanceof WorkElement.Shortening.None
                ? whole
                : element.shortening().of(whole, element, feed.joint(change));
    }

    private double whole(int index, int change, int pass) {
        Item item = items[index];
        if (item.measured != null) {
            double time = item.measured.time(change, pass);
            if (!Double.isNaN(time)) {
                return time;
            }
        }
        double drawn = item.time.draw(change, pass - 1);
        if (item.element.time() instanceof WorkElement.WorkTime.Travel travel) {
            Joint joint = feed.joint(change);
            return travel.duration(drawn, joint.width(), joint.thickness());
        }
        return drawn;
    }

    /** An element, and what it draws from. */
    private record Item(
            WorkElement element,
            Sampler time,
            SourceNumbers chance,
            @Nullable Measured measured) {}

    /** A column of measured rows. All elements that are measured by the same rows meet the same number, and so the same row. */
    private record Measured(SourceNumbers numbers, WorkElement.WorkTime.FromRows from) {

        /** In the row of this coil change and pass (s); NaN where it is blank. */
        double time(int change, int pass) {
            int row = numbers.place(from.rows().count(), change, pass - 1);
            return from.factor() * from.rows().value(row, from.column());
        }
    }
}
