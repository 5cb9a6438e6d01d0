package runthrough.study.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.study.limits.LimitsRun.limits;
import static runthrough.study.limits.LimitsRun.request;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.plant.WorkElement;
import runthrough.simulation.PlainLine;

/**
 * The fewest people and uncoilers that do. The plain line of {@link PlainLine}: coils of 600 m, entry 2.5 m/s, process 1.5 m/s,
 * 200 m of accumulator, speeds change at once.
 */
class CountedLimitsTest {

    @Test
    void anElementForTwoBesideAnElementForOneTakesAThirdPerson() {
        // Coil 2000 m, entry 2.5 m/s, process 1.5 m/s, 150 m: 100 s at 1.5 m/s. One uncoiler: loading, 50 s for two,
        // begins with the
        // tail work, 50 s for one; then 20 s to join. Two people: 50 + 50 + 20 = 120 s > 100 s. Three: 50 + 20 = 70 s.
        WorkElement load = new WorkElement(
                "load",
                new WorkElement.WorkTime.Timed(Distribution.constant(50)),
                new WorkElement.Occurrence.Always(),
                false,
                2,
                true);
        Line line = new PlainLine()
                .coils(PlainLine.coil(2000))
                .uncoilers(1, 0)
                .capacity(150)
                .crew(2)
                .tail(50)
                .join(20)
                .build();
        CoilChange change = line.change();
        Line two = line.with(change.withWork(List.of(load), change.tail(), change.join()));

        CountLimit crew = limits(request(two, 10, 1), 1).counts().get(0);

        assertThat(crew.smallest()).hasValue(3);
        assertThat(crew.closedForm()).hasValue(3);
        assertThat(crew.tried()).extracting(CountLimit.Tried::count).containsExactly(2, 3);
    }

    @Test
    void byShifts_theLargestShiftIsCounted_andTheOthersFollowIt() {
        // One uncoiler: preparing, 200 s from T1 on, then joining, 60 s, take 260 s however many are there; 200 m last
        // 133 s at 1.5
        // m/s: no crew does. Two can be at work at once. Shifts of 3 and 1: two in the smaller one are four in the
        // larger.
        Line line = new PlainLine().uncoilers(1, 0).prepare(200).join(60).build();
        Shifts shifts = new Shifts(List.of(
                new Shifts.Shift("day", 28_800, 3, List.of()), new Shifts.Shift("night", 28_800, 1, List.of())));
        CountLimit crew = limits(request(line.with(line.change().withShifts(shifts)), 10, 1), 1)
                .counts()
                .get(0);

        assertThat(crew.present()).isEqualTo(3);
        assertThat(crew.smallest()).isEmpty();
        assertThat(crew.tried()).extracting(CountLimit.Tried::count).containsExactly(1, 2, 3, 4);
    }

    @Test
    void theSmallestCountsThatDo() {
        // One uncoiler: each joint would wait 300 s and take 540 m. One person has 300 + 60 s of work in 400 s.
        Line line = new PlainLine().prepare(300).join(60).build();
        Limits limits = limits(request(line, 50, 1), 0.9);

        CountLimit crew = limits.counts().get(0);
        assertThat(crew.what()).isEqualTo(CountLimit.What.CREW);
        assertThat(crew.present()).isEqualTo(2);
        assertThat(crew.smallest()).hasValue(1);
        assertThat(crew.sure()).hasValue(1);
        CountLimit uncoilers = limits.counts().get(1);
        assertThat(uncoilers.smallest()).hasValue(2);
        assertThat(uncoilers.tried()).extracting(CountLimit.Tried::count).containsExactly(1, 2, 3);
        assertThat(uncoilers.tried().get(0).evaluation().ranThrough()).isZero();
    }
}
