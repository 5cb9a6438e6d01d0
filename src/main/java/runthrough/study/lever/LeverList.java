package runthrough.study.lever;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.records.WorkRecord.WorkList;
import runthrough.study.cause.Reason;

/**
 * All levers of a line, in the order in which they are given.
 *
 * <p>Rule LEVER-1.
 */
public final class LeverList {
    private LeverList() {}

    /** Those of {@code line}, which has an accumulator; each is made when it is asked for. */
    public static List<Supplier<Varied>> of(Line line, UnitSystem system) {
        LineLevers of = new LineLevers(line, system);
        Stream<Supplier<Varied>> general = Stream.of(
                of::capacity,
                of::jointCycleTime,
                of::processSpeed,
                of::rejects,
                of::crew,
                of::uncoilers,
                of::entryTopSpeed);
        return Stream.concat(general, elements(line).map(element -> () -> of.element(element)))
                .toList();
    }

    private static Stream<Reason.Element> elements(Line line) {
        return Stream.of(
                        elements(line, WorkList.PREPARE, line.change().prepare()),
                        elements(line, WorkList.TAIL, line.change().tail()),
                        elements(line, WorkList.JOIN, line.change().join()))
                .flatMap(list -> list);
    }

    private static Stream<Reason.Element> elements(Line line, WorkList list, List<WorkElement> elements) {
        List<String> names = SourceNames.elements(line.practice(), list, elements);
        return IntStream.range(0, names.size()).mapToObj(place -> new Reason.Element(list, place, names.get(place)));
    }
}
