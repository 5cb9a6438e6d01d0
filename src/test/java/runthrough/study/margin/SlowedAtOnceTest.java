package runthrough.study.margin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.builder.LineBuilder;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Outcome;

/**
 * 100 m before a process of 1 m/s that slows to 0.2 m/s at once, without a ramp; entry 0.1 m/s2 both ways. The entry lets in 5 m
 * while it stops, and 5 m less than the process takes while it speeds up to it. The stop level is 0.
 */
class SlowedAtOnceTest {

    @Test
    void slowingThatBeginsWithTheEntryFasterThanTheSlowedSpeedEndsTheFall() {
        // Rule MARGIN-3. Joint 71 s: 100 - 5 - 71 = 24 m at the release; 24 - t + 0.05 t^2 = 20 at t = 10 - sqrt(20) =
        // 5.528 s, where
        // the entry has 0.553 m/s: the process is slower from there on, and the level rises. Lowest 20 m.
        assertThat(margin(71, 20)).isCloseTo(20, within(1e-9));
    }

    @Test
    void slowingThatBeginsWithTheEntrySlowerThanTheSlowedSpeedGoesOnFalling() {
        // Rule MARGIN-3. Joint 74.9 s: 20.1 m at the release, 20 m at t = 10 - sqrt(98) = 0.1005 s with 0.01005 m/s;
        // from there the
        // level falls by (0.2 - 0.01005)^2/(2 0.1) = 0.18040 m.
        double entry = 0.1 * (10 - Math.sqrt(98));
        assertThat(margin(74.9, 20)).isCloseTo(20 - (0.2 - entry) * (0.2 - entry) / 0.2, within(1e-9));
    }

    @Test
    void marginAndOutcomeAgree() {
        // Rules MARGIN-3, MARGIN-6. Below 0.5 m it slows; joint 90.5 s: 4.5 m at the release, 0.5 m at t = 10 -
        // sqrt(20) again.
        Line line = line(90.5, 0.5);
        assertThat(change(line).outcome()).isEqualTo(Outcome.SLOWED);
        assertThat(margin(90.5, 0.5)).isCloseTo(0.5, within(1e-9));
        // A level counts as crossed when it is 1e-10 of the capacity below (NUM-3).
        assertThat(change(line).lowestLevel()).isCloseTo(0.5, within(1.01e-10 * 100));
    }

    private static double margin(double joint, double level) {
        Line line = line(joint, level);
        return new StripMargin(line).metresWithoutStop(change(line));
    }

    private static ChangeRecord change(Line line) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(1), 0, 1, 1, 0.9);
        return LineSimulator.of(line, plan).run(0, Detail.CHANGES).changes().get(0);
    }

    private static Line line(double joint, double level) {
        return new LineBuilder()
                .coil("strip", 0.001, 1, 7850, Distribution.constant(2000))
                .entry(2, 0.1, 0.1)
                .capacity(100)
                .process(1, 0.1, Double.POSITIVE_INFINITY)
                .slowing(0.2, level, 30)
                .join("weld", Distribution.constant(joint))
                .describe();
    }
}
