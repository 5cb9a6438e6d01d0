package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.chart.verdict.DrawnRuns.LINE;
import static runthrough.chart.verdict.DrawnRuns.chart;
import static runthrough.chart.verdict.DrawnRuns.context;
import static runthrough.chart.verdict.DrawnRuns.study;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.chart.Chart;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.Line;
import runthrough.quantity.UnitSystem;
import runthrough.study.statistics.Sample;

/** Joint cycle times against what the accumulator bears. */
class JointCycleTimeChartTest {

    @Test
    void jointCycleTimeChartSaysWhatTheStorageBridges() {
        // Of 0, 1 .. 100 s the median is 50 s, the 95th percentile 95 s; 20 of 101 are longer than 80 s.
        double[] times = IntStream.rangeClosed(0, 100).asDoubleStream().toArray();
        Chart chart = JointCycleTimeChart.of(context(), Sample.of(times), OptionalDouble.of(80));
        assertThat(chart.reading())
                .isEqualTo(
                        "Half of the joints take at most 50 s, 95 % at most 1:35 min; a full accumulator bridges 80 s, and "
                                + "19.8 % take longer.");
    }

    @Test
    void withCoilsOfDifferentSpeedsTheLimitIsThatOfTheFastest() {
        // At 0.75 m/s (72 - 2)/0.75 - 0.75 (1/0.8 + 1/0.6 + 1/0.5) = 89.65 s; at 1 m/s 70 - 4.917 = 65.08 s.
        Coil coil = LINE.coils().get(0);
        Coil fast =
                new Coil("fast", coil.strip(), coil.size()).withCrops(0.4, 0.3).withProcessSpeed(1);
        Line mixed = new Line(
                new CoilSource.Schedule(List.of(coil, fast)),
                LINE.entry(),
                LINE.process(),
                LINE.change(),
                LINE.practice(),
                LINE.bending());
        assertThat(chart(study(mixed, UnitSystem.METRIC), "joint-cycle-time").reading())
                .contains("; a full accumulator bridges 65.1 s at the fastest process speed, and ");
        assertThat(chart(study(LINE, UnitSystem.METRIC), "joint-cycle-time").reading())
                .contains("; a full accumulator bridges 89.6 s, and ");
    }

    @Test
    void jointCycleTimeChartOfEqualTimesSaysSo() {
        Chart chart = JointCycleTimeChart.of(context(), Sample.of(95, 95), OptionalDouble.of(90.5));
        assertThat(chart.reading())
                .isEqualTo(
                        "Each of the joints takes 1:35 min; a full accumulator bridges 1:31 min, and all take longer.");
    }

    @Test
    void jointCycleTimeChartWithoutRoomForAnyJointSaysSo() {
        Chart chart = JointCycleTimeChart.of(context(), Sample.of(95, 95), OptionalDouble.of(-3));
        assertThat(chart.reading()).endsWith("; at this speed the accumulator bridges no joint at all.");
    }
}
