package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts.Shift;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.PlainLine;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;

class RunOrderTest {
    private static final Comparator<ChangeRecord> LOWEST_FIRST =
            Comparator.comparingDouble(ChangeRecord::lowestAboveStopLevel);

    private static PlainLine line() {
        return new PlainLine().capacity(100).join(Distribution.lognormal(45, 10));
    }

    private static List<ChangeRecord> changes(Line line, int count) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(count), 0, 1, 3, 0.9);
        return LineSimulator.of(line, plan).run(0, Detail.CHANGES).changes();
    }

    @Test
    void asLongAsThereIsRoom_theyStandInTheOrderInWhichTheyCame() {
        Line line = line().build();
        List<ChangeRecord> changes = changes(line, 40);
        RunOrder order = RunOrder.of(line, changes, 40);

        assertThat(order.inTime()).isTrue();
        assertThat(order.all()).isEqualTo(changes);
    }

    @Test
    void whereThereAreMore_theLowestComesFirst() {
        Line line = line().build();
        List<ChangeRecord> changes = changes(line, 41);
        RunOrder order = RunOrder.of(line, changes, 40);

        assertThat(order.inTime()).isFalse();
        assertThat(order.isByShift()).isFalse();
        assertThat(order.all()).containsExactlyInAnyOrderElementsOf(changes).isSortedAccordingTo(LOWEST_FIRST);
    }

    @Test
    void withShifts_thoseOfEachStandTogether() {
        // Some 70 coils of 400 s in 8 h, in two shifts of 4 h.
        Line line = line().shifts(new Shift("early", 4 * 3600, 2, List.of()), new Shift("late", 4 * 3600, 1, List.of()))
                .build();
        List<ChangeRecord> changes = changes(line, 70);
        RunOrder order = RunOrder.of(line, changes, 1000);

        assertThat(order.isByShift()).isTrue();
        assertThat(order.names()).containsExactly("early", "late");
        assertThat(order.all()).containsExactlyInAnyOrderElementsOf(changes);
        for (int shift = 0; shift < 2; shift++) {
            int place = shift;
            assertThat(order.groups().get(shift))
                    .isNotEmpty()
                    .allMatch(change -> change.shift() == place)
                    .isSortedAccordingTo(LOWEST_FIRST);
        }
    }
}
