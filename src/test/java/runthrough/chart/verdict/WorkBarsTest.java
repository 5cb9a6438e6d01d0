package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.chart.verdict.WorkBars.Sort;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.WorkList;

class WorkBarsTest {
    private final Replication run = HandMadeRun.of(60, 60, 60);

    @Test
    void everyElementHasARowInOrderOfTheLists() {
        assertThat(bars(0).rows())
                .containsExactly(
                        "fetch coil", "load, open and square the head", "shear tail", "fit up", "weld", "inspect");
    }

    @Test
    void barsStandWhereTheWorkWas() {
        ChangeRecord change = run.changes().get(0);
        WorkBars.Bar shear = bars(0).bars().stream()
                .filter(bar -> bar.sort() == Sort.TAIL)
                .findFirst()
                .orElseThrow();
        assertThat(shear.row()).isEqualTo(2);
        assertThat(shear.start()).isEqualTo(change.tailStopped());
        assertThat(shear.end()).isEqualTo(change.tailStopped() + 8);
    }

    @Test
    void waitingIsTheTimeBetweenTailWorkAndJoint() {
        // The hand-made third change waits 15 s: the tail work ends 8 s after the tail has stopped, the joint begins at
        // 23 s.
        ChangeRecord third = run.changes().get(2);
        List<WorkBars.Bar> waits = bars(2).bars().stream()
                .filter(bar -> bar.sort() == Sort.WAITING)
                .toList();
        assertThat(waits).hasSize(1);
        assertThat(waits.get(0).start()).isCloseTo(third.tailStopped() + 8, within(1e-9));
        assertThat(waits.get(0).end()).isCloseTo(third.tailStopped() + 23, within(1e-9));
        assertThat(bars(2).rows()).endsWith("waiting");
        assertThat(bars(2).waitedFor()).isEqualTo("preparation");
    }

    @Test
    void workDoneBeforeWhatIsShownIsSaidToBe() {
        ChangeRecord change = run.changes().get(0);
        WorkBars bars = new WorkBars(HandMadeRun.line(), change, run.work(), change.start() - 10, change.released());
        assertThat(bars.rowsDoneBefore()).containsExactly(0);
        assertThat(bars.rowsNotDone()).isEmpty();
    }

    @Test
    void workOfAnotherChangeIsDistinguished() {
        ChangeRecord first = run.changes().get(0);
        ChangeRecord second = run.changes().get(1);
        WorkBars bars = new WorkBars(HandMadeRun.line(), first, run.work(), first.start(), second.released());
        assertThat(bars.bars().stream().filter(bar -> bar.sort() == Sort.OTHER_CHANGE))
                .hasSize(6)
                .allMatch(bar -> bar.start() >= first.released());
    }

    @Test
    void workCutByTheEndOfTheRunReachesTheEdge() {
        ChangeRecord change = run.changes().get(0);
        WorkRecord open = new WorkRecord(1, 1, WorkList.PREPARE, 0, change.released(), Double.NaN, List.of());
        WorkBars bars = new WorkBars(HandMadeRun.line(), change, List.of(open), change.start(), change.released() + 50);
        assertThat(bars.bars())
                .containsExactly(new WorkBars.Bar(Sort.PREPARE, 0, change.released(), change.released() + 50));
    }

    private WorkBars bars(int index) {
        ChangeRecord change = run.changes().get(index);
        return new WorkBars(HandMadeRun.line(), change, run.work(), change.start() - 300, change.released() + 300);
    }
}
