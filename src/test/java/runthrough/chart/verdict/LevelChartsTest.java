package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.chart.verdict.DrawnRuns.LINE;
import static runthrough.chart.verdict.DrawnRuns.chart;
import static runthrough.chart.verdict.DrawnRuns.context;
import static runthrough.chart.verdict.DrawnRuns.study;
import static runthrough.chart.verdict.DrawnRuns.texts;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.chart.Chart;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.plant.builder.LineBuilder;
import runthrough.quantity.Numbers;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.Replication;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;

/** The level over a replication, and the close-up of one coil change. */
class LevelChartsTest {

    @Test
    void levelChartSaysHowLowTheLevelFellAndWhatWasLeft() {
        // Strip drawn: 0.75 * 60 + 0.75^2 / 0.8 + 0.75^2 / 0.6 = 46.64 m, so 25.36 m are left; stop level 2 + 0.75^2 /
        // 0.5 =
        // 3.125 m.
        Chart chart = LevelChart.of(context(), HandMadeRun.of(50, 60, 55));
        assertThat(chart.reading())
                .isEqualTo(
                        "At coil change 2 the level falls to 25.4 m, 22.2 m above the level at which the process must stop.");
    }

    @Test
    void levelChartOfAStarvedRunSaysHowFarBelowTheStopLevel() {
        // Starved at 3.125 m while the entry stands: the process stops after 0.75^2 / 0.5 = 1.125 m more.
        Chart chart = LevelChart.of(context(), HandMadeRun.of(60, 97));
        assertThat(chart.reading())
                .isEqualTo(
                        "At coil change 2 the level falls to 2 m, 1.13 m below the level at which the process must stop (3.13 m).");
    }

    @Test
    void levelChartShowsTheNeighboursOfTheWorstChange() throws Exception {
        Chart chart = LevelChart.of(context(), HandMadeRun.of(50, 50, 50, 50, 50, 80, 50, 50, 50));
        assertThat(chart.title()).endsWith("coil changes 4 to 8");
        assertThat(texts(chart)).contains("4", "5", "6", "7", "8");
    }

    @Test
    void closeUpIsOfTheCostliestChange() {
        Replication run = HandMadeRun.of(50, 97, 60);
        assertThat(CloseUpChart.of(context(), run).title()).isEqualTo("Coil change 2 in close-up, the costliest");
        assertThat(CloseUpChart.of(context(), HandMadeRun.of(50, 80, 60)).title())
                .isEqualTo("Coil change 2 in close-up, the one closest to the stop level");
    }

    @Test
    void closeUpSaysWhatWasWaitedFor() throws Exception {
        // T0 at 1999 s, T1 at 2001 s; the weld takes two people, and one is away until 2400 s.
        Line line = new LineBuilder()
                .coil("strip", 0.002, 0.25, 8000, Distribution.constant(1000))
                .entry(2, 0.5, 0.5)
                .capacity(600)
                .process(1, 0.5, 0.5)
                .join(new WorkElement(
                                "weld",
                                new WorkElement.WorkTime.Timed(Distribution.constant(20)),
                                new WorkElement.Occurrence.Always(),
                                true)
                        .withPeople(2))
                .shift("day", 1500, 2)
                .shift("night", 1000, 2, new Shifts.Break(450, 450, 1))
                .describe();
        Chart chart = chart(study(line, UnitSystem.METRIC), "close-up");
        assertThat(chart.reading())
                .startsWith("The strip stands at the joiner for 6:59 min, 6:39 min of it waiting for people;");
        assertThat(texts(chart)).contains("waiting for people").doesNotContain("waiting for preparation");
    }

    /** Of a long replication only the beginning is traced; its worst coil change may come long after. */
    @Test
    void ofALongReplicationTheWorstChangeThatWasTracedIsShown() {
        WorkElement once = new WorkElement(
                "a slow day",
                new WorkElement.WorkTime.Timed(Distribution.constant(300)),
                new WorkElement.Occurrence.Every(2500),
                true);
        CoilChange change = new CoilChange(
                2,
                List.of(),
                List.of(),
                java.util.stream.Stream.concat(LINE.change().join().stream(), java.util.stream.Stream.of(once))
                        .toList(),
                new CoilChange.Reject.Never());
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(2600), 0, 1, 7, 0.99);
        StudyResult study = new RunThroughStudy(
                        new SimulationRequest("invented", List.of(), LINE.with(change), plan, UnitSystem.METRIC))
                .run(StudyOptions.forReport(), StudyListener.NONE);

        Chart closeUp = Charts.of(study).stream()
                .filter(chart -> chart.id().equals("close-up"))
                .findFirst()
                .orElseThrow();

        assertThat(closeUp.title()).doesNotContain("Coil change 2500 ");
    }

    @Test
    void closeUpSaysHowLongTheJointTookAndTheRefill() {
        // Refill as drawn: to V + u = 1.5 m/s in 5 s, hold, and back to 0.75 m/s in 1.875 s.
        Replication run = HandMadeRun.of(60);
        double refill = run.changes().get(0).refillTime();
        assertThat(CloseUpChart.of(context(), run).reading())
                .isEqualTo("The strip stands at the joiner for 60 s; the accumulator is full again "
                        + Numbers.text(refill, 3) + " s after release.");
    }
}
