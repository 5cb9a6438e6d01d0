package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.chart.verdict.DrawnRuns.LINE;
import static runthrough.chart.verdict.DrawnRuns.chart;
import static runthrough.chart.verdict.DrawnRuns.context;
import static runthrough.chart.verdict.DrawnRuns.rgb;
import static runthrough.chart.verdict.DrawnRuns.texts;

import java.util.Arrays;
import java.util.Optional;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.junit.jupiter.api.Test;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Palette;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.Replication;
import runthrough.study.Verdict;
import runthrough.study.statistics.Sample;

/** Margins of coil changes: how they are distributed, and in the order of the run. */
class MarginChartsTest {

    @Test
    void marginChartMarksTheRegionOfRunningOut() throws Exception {
        Chart chart = MarginChart.of(context(), Sample.of(-2, 1, 5, 7, 8, 9, 10, 12), new Verdict.Changes(8, 7, 0, 1));
        assertThat(chart.reading())
                .isEqualTo("The least margin is -2 m; 12.5 % of the coil changes stopped the process.");
        assertThat(texts(chart))
                .contains(
                        "stop level",
                        "too little strip at the rated speed",
                        "margin to the stop level, the process kept at its rated speed, m");
        assertThat(chart.svg()).contains(rgb(Palette.SHORT)).contains(rgb(Palette.RUN_OUT));
    }

    @Test
    void marginChartOfASafeRunHasNothingInTheColourOfRunningOut() {
        Chart chart = MarginChart.of(context(), Sample.of(61, 62, 63, 64, 65), new Verdict.Changes(5, 5, 0, 0));
        assertThat(chart.reading())
                .isEqualTo("The least margin is 61 m; no coil change slowed or stopped the process.");
        assertThat(chart.svg()).doesNotContain(rgb(Palette.SHORT)).doesNotContain(rgb(Palette.RUN_OUT));
    }

    @Test
    void drawnChartHoldsTheMostDrawnAgainstWhatAFullAccumulatorGives() {
        // 46.64 m as above; 72 - 3.125 = 68.875 m may be drawn.
        Chart chart = DrawnChart.of(context(), HandMadeRun.of(50, 60, 55).changes());
        assertThat(chart.reading())
                .isEqualTo(
                        "The most strip drawn at a coil change is 46.6 m; a full accumulator gives 68.9 m before the process "
                                + "must stop.");
    }

    @Test
    void runChartCountsWhatDidNotRunThrough() {
        Chart chart = RunChart.of(context(), HandMadeRun.of(50, 97, 60, 99).changes());
        assertThat(chart.reading())
                .isEqualTo(
                        "2 of 4 coil changes do not run through; the level comes closest to the stop level at coil change 2,"
                                + " 1.13 m below it.");
    }

    @Test
    void marginChartOfAProcessThatSlows_namesTheMarginToSlowing_andWhatReallyHappened() throws Exception {
        // Rule MARGIN-2. Below zero the process slows; only one of the two that did came to a stop.
        Line slows = new Line(
                LINE.coilSource(),
                LINE.entry(),
                LINE.process().withSlowing(Optional.of(new ProcessSection.Slowing(0.4, 20, 30))),
                LINE.change(),
                LINE.practice(),
                Optional.empty());
        ChartContext context = new ChartContext(new ChartStyle(), slows, ChartUnits.of(UnitSystem.METRIC), 1);
        Chart chart = MarginChart.of(context, Sample.of(-40, -3, 5, 9), new Verdict.Changes(4, 2, 1, 1));
        assertThat(chart.reading())
                .isEqualTo(
                        "The least margin is -40 m; 25 % of the coil changes stopped the process, 25 % only slowed it.");
        assertThat(texts(chart)).contains("slowing level", "margin to slowing, the process kept at its rated speed, m");
    }

    @Test
    void runChartPutsManyChangesIntoOneBarWithoutLosingTheLowest() {
        double[] joints = new double[1000];
        Arrays.fill(joints, 50);
        joints[777] = 85;
        Replication run = HandMadeRun.of(joints);
        Chart chart = RunChart.of(context(), run.changes());
        XYIntervalSeriesCollection bars =
                (XYIntervalSeriesCollection) chart.picture().chart().getXYPlot().getDataset(1);
        assertThat(bars.getItemCount(0)).isLessThanOrEqualTo(RunChart.MOST_BARS);
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bars.getItemCount(0); i++) {
            lowest = Math.min(lowest, bars.getStartYValue(0, i));
        }
        // More than have room stand lowest first, as heights above the stop level.
        assertThat(lowest).isEqualTo(run.changes().get(777).lowestAboveStopLevel());
        assertThat(bars.getStartYValue(0, 0)).isEqualTo(lowest);
    }
}
