package runthrough.chart.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Shift;
import runthrough.simulation.records.ChangeRecord;

/**
 * The order in which the coil changes of a run stand side by side: one after another as long as each has room; else those of each
 * shift together, what comes closest to the stop level first.
 *
 * @param groups those of one shift, or all
 * @param names of the shifts; one without words where there are none
 * @param inTime whether they stand in the order in which they came
 */
record RunOrder(List<List<ChangeRecord>> groups, List<String> names, boolean inTime) {

    /** Of {@code changes}, which have room for {@code most} in the order in which they came. */
    static RunOrder of(Line line, List<ChangeRecord> changes, int most) {
        List<Shift> shifts = line.change().shifts().map(Shifts::list).orElse(List.of());
        if (changes.size() <= most && shifts.isEmpty()) {
            return new RunOrder(List.of(changes), List.of(""), true);
        }
        List<List<ChangeRecord>> groups = new ArrayList<>();
        List<String> names = new ArrayList<>();
        IntStream.range(0, Math.max(1, shifts.size())).forEach(shift -> {
            List<ChangeRecord> group = changes.stream()
                    .filter(change -> change.shift() == shift)
                    .sorted(Comparator.comparingDouble(ChangeRecord::lowestAboveStopLevel))
                    .toList();
            if (!group.isEmpty()) {
                groups.add(group);
                names.add(shifts.isEmpty() ? "" : shifts.get(shift).name());
            }
        });
        return new RunOrder(groups, names, false);
    }

    /** Whether they stand in groups by shift. */
    boolean isByShift() {
        return !inTime && !names.get(0).isEmpty();
    }

    /** All of them, side by side. */
    List<ChangeRecord> all() {
        return groups.stream().flatMap(List::stream).toList();
    }

    /** What the axis along them is called. */
    String axis() {
        return inTime
                ? "coil change"
                : isByShift() ? "coil changes of each shift, lowest level first" : "coil changes, lowest level first";
    }
}
