package runthrough.simulation.work;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Joint;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.simulation.random.CoilFeed;
import runthrough.simulation.random.RowDraws;
import runthrough.simulation.random.Sampler;
import runthrough.simulation.random.Source;
import runthrough.simulation.random.SourceDraws;
import runthrough.simulation.random.Streams;
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

    /**
     * The queue of {@code elements}.
     *
     * @param list which list they are
     * @param elements in their order
     * @param feed the coils they are done on
     * @param streams random numbers of the run
     * @param rows draws for all measured rows that any element has
     */
    WorkQueue(WorkList list, List<WorkElement> elements, CoilFeed feed, Streams streams, List<RowDraws> rows) {
        this.list = list;
        this.feed = feed;
        items = IntStream.range(0, elements.size())
                .mapToObj(i -> item(elements.get(i), i, streams, rows))
                .toArray(Item[]::new);
    }

    private Item item(WorkElement element, int index, Streams streams, List<RowDraws> rows) {
        boolean isRandom = element.occurrence() instanceof Occurrence.Chance;
        return new Item(
                element,
                new Sampler(element.name(), element.time().drawn(), streams, Source.duration(list, index)),
                isRandom ? streams.draws(Source.chance(list, index)) : null,
                measured(element, rows));
    }

    private static @Nullable Measured measured(WorkElement element, List<RowDraws> rows) {
        return element.time() instanceof WorkElement.WorkTime.FromRows from
                ? rows.stream()
                        .filter(draws -> draws.rows().equals(from.rows()))
                        .findFirst()
                        .map(draws -> new Measured(draws, from))
                        .orElseThrow()
                : null;
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

    /** Whether element {@code index} is done in pass {@code pass} of coil change {@code change}; draws where that is random. */
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
        if (occurrence instanceof Occurrence.Chance chance && item.chance != null) {
            return item.chance.next(change, pass) < chance.p();
        }
        return true;
    }

    /** How long element {@code index} takes (s) in pass {@code pass} of coil change {@code change}, both from 1. */
    double draw(int index, int change, int pass) {
        Item item = items[index];
        if (item.measured != null) {
            double time = item.measured.time(change, pass);
            if (!Double.isNaN(time)) {
                return time;
            }
        }
        double drawn = item.time.next(change, pass);
        if (item.element.time() instanceof WorkElement.WorkTime.Travel travel) {
            Joint joint = feed.joint(change);
            return travel.duration(drawn, joint.width(), joint.thickness());
        }
        return drawn;
    }

    /** An element, and what it draws from; {@code chance} only where it is random whether it is done. */
    private record Item(
            WorkElement element,
            Sampler time,
            @Nullable SourceDraws chance,
            @Nullable Measured measured) {}

    /** A column of measured rows. */
    private record Measured(RowDraws draws, WorkElement.WorkTime.FromRows from) {

        /** In the row of this coil change and pass (s); NaN where it is blank. */
        double time(int change, int pass) {
            return from.factor() * from.rows().value(draws.row(change, pass), from.column());
        }
    }
}
