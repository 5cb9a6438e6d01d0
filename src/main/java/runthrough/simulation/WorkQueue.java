package runthrough.simulation;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.simulation.WorkRecord.WorkList;
import umontreal.ssj.rng.MRG32k3a;

/** One list of work elements with the random streams of each. */
final class WorkQueue {
    private final WorkList list;
    private final Item[] items;

    WorkQueue(WorkList list, List<WorkElement> elements, Streams streams) {
        this.list = list;
        items = IntStream.range(0, elements.size())
                .mapToObj(i -> new Item(
                        elements.get(i),
                        new Sampler(
                                elements.get(i).name(),
                                elements.get(i).time().drawn(),
                                streams.stream(Source.duration(list, i))),
                        streams.stream(Source.chance(list, i))))
                .toArray(Item[]::new);
    }

    WorkList list() {
        return list;
    }

    int size() {
        return items.length;
    }

    /** Whether element {@code index} is done on coil change {@code change}; draws where that is left to chance. */
    boolean isDone(int index, int change, boolean redoing) {
        Item item = items[index];
        if (redoing && !item.element.redo()) {
            return false;
        }
        Occurrence occurrence = item.element.occurrence();
        if (occurrence instanceof Occurrence.Every every) {
            return change % every.n() == 0;
        }
        return !(occurrence instanceof Occurrence.Chance chance) || item.chance.nextDouble() < chance.p();
    }

    /** How long element {@code index} takes this time (s), the wider of the two strips being {@code width} (m). */
    double draw(int index, double width) {
        Item item = items[index];
        return item.element.time().duration(item.time.next(), width);
    }

    private record Item(WorkElement element, Sampler time, MRG32k3a chance) {}
}
