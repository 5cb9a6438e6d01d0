package runthrough.study.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.Practice;
import runthrough.plant.RunPlan;
import runthrough.plant.WorkElement;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.PlainLine;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;

/** A line figure and a lever of one name are one thing. */
class StandingTimeTest {
    /** Every second joint is made twice, 50 s each: 75 s on average, of 1.5 passes. */
    private static final Line TWICE =
            new PlainLine().join(50).reject(new Reject.Every(2)).build();

    private static Line line(Line line, double value) {
        return LineFigure.JOINT_CYCLE_TIME.with(line, value);
    }

    @Test
    void theMeanIsTheOneAskedFor_byTheSameSecondsOffEveryPassAsTheLeverTakes() {
        // Rule LEVER-4. 15 s less on average are 10 s off each of 1.5 passes.
        assertThat(line(TWICE, 60))
                .isEqualTo(new LineLevers(TWICE, UnitSystem.METRIC)
                        .jointCycleTime()
                        .variant()
                        .apply(-10));
        assertThat(LineFigure.JOINT_CYCLE_TIME.of(line(TWICE, 60)).orElseThrow())
                .isCloseTo(60, within(1e-9));
        assertThat(LineFigure.JOINT_CYCLE_TIME.of(line(TWICE, 90)).orElseThrow())
                .isCloseTo(90, within(1e-9));
        assertThat(line(TWICE, 75)).isEqualTo(TWICE);
    }

    @Test
    void whatVariesKeepsItsSpread_thatAFactorWouldNarrow() {
        Line random = new PlainLine().join(Distribution.lognormal(90, 20)).build();
        Line shorter = line(random, 45);
        assertThat(shorter.change().join()).isEqualTo(random.change().join());
        assertThat(shorter.change().joinShorterBy()).isCloseTo(45, within(1e-9));
    }

    @Test
    void theWorkOnTheTailStays_andIsTheLeast() {
        CoilChange change = new PlainLine().join(50).build().change();
        Line both =
                new PlainLine().join(50).build().with(change.withWork(change.prepare(), change.join(), change.join()));
        assertThat(LineFigure.JOINT_CYCLE_TIME.least(both)).isEqualTo(50);
        assertThat(LineFigure.JOINT_CYCLE_TIME.with(both, 60).change().joinShorterBy())
                .isCloseTo(40, within(1e-9));
        assertThatThrownBy(() -> LineFigure.JOINT_CYCLE_TIME.with(both, 40)).hasMessageContaining("more than 50");
    }

    /** Every second joint is made again, and only the last 10 s of 50: to 40 s of 55 it is 10 s off one pass and 5 more off the first. */
    @Test
    void wherePassesAreShorterThanWhatGoesOffThem_moreGoesOff() {
        CoilChange change = TWICE.change();
        WorkElement once = new WorkElement(
                "fit up",
                new WorkElement.WorkTime.Timed(Distribution.constant(40)),
                new WorkElement.Occurrence.Always(),
                false);
        WorkElement again = new WorkElement(
                "weld",
                new WorkElement.WorkTime.Timed(Distribution.constant(10)),
                new WorkElement.Occurrence.Always(),
                true);
        Line line = TWICE.with(change.withWork(change.prepare(), List.of(), List.of(once, again)));
        assertThat(LineFigure.JOINT_CYCLE_TIME.of(line)).hasValue(55);
        // 15 s a pass: 15 off 50 and 10 / 2 off the second pass are 20 off the mean.
        assertThat(LineFigure.JOINT_CYCLE_TIME.with(line, 35).change().joinShorterBy())
                .isCloseTo(15, within(1e-6));
    }

    /** 400 coil changes with 60 to 120 s each, 45 s off: 45 s on average, standard deviation 17.3 s / sqrt(400) = 0.87 s. */
    @Test
    void theMeanThatIsSimulatedIsTheOneAskedFor_ofAJointAndOfARethread() {
        Distribution time = Distribution.uniform(60, 120);
        Line joined = new PlainLine().join(time).build();
        Line threaded = joined.with(new Practice.Rethread(time));

        assertThat(simulated(LineFigure.JOINT_CYCLE_TIME.with(joined, 45))).isCloseTo(45, within(3.5));
        assertThat(simulated(LineFigure.RETHREAD_TIME.with(threaded, 45))).isCloseTo(45, within(3.5));
        assertThat(simulated(LineFigure.RETHREAD_TIME.with(threaded, 135))).isCloseTo(135, within(3.5));
    }

    private static double simulated(Line line) {
        return LineSimulator.of(line, new RunPlan(new RunPlan.Extent.Changes(400), 0, 1, 1, 1))
                .run(0, Detail.CHANGES)
                .changes()
                .stream()
                .mapToDouble(ChangeRecord::jointCycleTime)
                .average()
                .orElseThrow();
    }
}
