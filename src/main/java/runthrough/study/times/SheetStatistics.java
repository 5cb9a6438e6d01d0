package runthrough.study.times;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.timestudy.TimeSheet;

/**
 * What a sheet shows.
 *
 * @param sheet it is about
 * @param elements one for each of its elements, in order
 * @param correlations of pairs of elements, in order
 * @param tail what drawing elements on their own does to long joints; empty where that is not known
 */
public record SheetStatistics(
        TimeSheet sheet, List<ElementTimes> elements, List<Correlation> correlations, Optional<JointTail> tail) {

    public SheetStatistics {
        elements = List.copyOf(elements);
        correlations = List.copyOf(correlations);
    }

    /** The pairs of elements that go together, beyond what chance does; see {@link Correlation#isShown}. */
    public List<Correlation> together() {
        return correlations.stream().filter(Correlation::isShown).toList();
    }

    /**
     * The statistics of {@code sheet}.
     *
     * @param seed of the bootstrap
     */
    public static SheetStatistics of(TimeSheet sheet, long seed) {
        return new SheetStatistics(
                sheet,
                IntStream.range(0, sheet.elements().size())
                        .mapToObj(i -> ElementTimes.of(sheet, i))
                        .toList(),
                Correlation.of(sheet),
                JointTail.of(sheet, seed));
    }
}
