package runthrough.study.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.builder.LineBuilder;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Detail;

class CrewByShiftTest {

    @Test
    void crewTimeAtTheJointGoesByTheCrewOfTheShift() {
        // Five people by day, one by night, 100 s at every joint: 500 or 100 person-seconds.
        Line line = new LineBuilder()
                .coil("strip", 0.001, 1, 7850, Distribution.constant(2000))
                .entry(4, 0.2, 0.2)
                .capacity(300)
                .process(1.5, 0.3, 0.4)
                .join("weld", Distribution.constant(100))
                .shifts(new Shifts(List.of(
                        new Shifts.Shift("day", 12 * 3600.0, 5, List.of()),
                        new Shifts.Shift("night", 12 * 3600.0, 1, List.of()))))
                .describe();
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(100), 0, 1, 1, 0.9);
        Replication run = LineSimulator.of(line, plan).run(0, Detail.CHANGES);
        long byDay =
                run.changes().stream().filter(change -> change.shift() == 0).count();
        assertThat(byDay).isBetween(20L, 80L);
        assertThat(run.totals().crewSeconds()).isCloseTo(500 * byDay + 100.0 * (100 - byDay), within(1e-6));
    }
}
