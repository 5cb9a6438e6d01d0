package runthrough.study.uncertainty;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.ObservedDistribution;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.random.Draws;

/**
 * What of a line is known from observations: the rows of its sheets, and lists of measured times.
 *
 * @param line as described
 */
public record MeasuredInputs(Line line) {

    /**
     * One of them.
     *
     * @param name of the sheet, or of the element
     * @param observations how many rows or values
     */
    public record Input(String name, int observations) {}

    /** All of them: sheets first. */
    List<Input> all() {
        List<Input> all = new ArrayList<>();
        MeasuredRows.in(line.change()).forEach(rows -> all.add(new Input(rows.source(), rows.count())));
        CoilChange change = line.change();
        Stream.of(change.prepare(), change.tail(), change.join())
                .flatMap(List::stream)
                .filter(element -> element.time().drawn() instanceof ObservedDistribution
                        && !(element.time() instanceof WorkTime.FromRows))
                .forEach(element -> all.add(new Input(
                        element.name(),
                        ((ObservedDistribution) element.time().drawn()).values().size())));
        if (line.practice() instanceof Practice.Rethread rethread
                && rethread.time() instanceof ObservedDistribution observed) {
            all.add(new Input("rethread", observed.values().size()));
        }
        return all;
    }

    /** The line as it would be described had other coil changes been observed: as many, drawn from those that were. */
    Line resampled(Draws random) {
        Map<MeasuredRows, MeasuredRows> drawn = new HashMap<>();
        UnaryOperator<WorkElement> resample = element -> {
            if (element.time() instanceof WorkTime.FromRows from) {
                MeasuredRows rows =
                        drawn.computeIfAbsent(from.rows(), known -> known.resampled(places(known.count(), random)));
                return element.with(from.with(rows));
            } else if (element.time() instanceof WorkTime.Timed timed) {
                return element.with(new WorkTime.Timed(resampled(timed.drawn(), random)));
            } else if (element.time() instanceof WorkTime.Travel travel) {
                return element.with(new WorkTime.Travel(travel.speed(), resampled(travel.drawn(), random)));
            }
            return element;
        };
        Line drawnAnew = line.with(line.change().withEach(resample));
        return line.practice() instanceof Practice.Rethread rethread
                ? drawnAnew.with(new Practice.Rethread(resampled(rethread.time(), random)))
                : drawnAnew;
    }

    private static Distribution resampled(Distribution distribution, Draws random) {
        if (!(distribution instanceof ObservedDistribution observed)) {
            return distribution;
        }
        List<Double> values = observed.values();
        return Distribution.observed(IntStream.of(places(values.size(), random))
                .mapToObj(values::get)
                .toList());
    }

    private static int[] places(int count, Draws random) {
        return IntStream.range(0, count).map(i -> random.below(count)).toArray();
    }
}
