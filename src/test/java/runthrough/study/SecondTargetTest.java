package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;

/**
 * The target to go without a stop beside that to run through. At 2 m/s the level of 300 m falls to 100 m in 100 s; below, the process
 * takes 1 m/s, so that a joint of 120 s slows it and one of 210 s stops it.
 */
class SecondTargetTest {
    private static Verdict verdict(double join, boolean slows, OptionalDouble second) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(5), 0, 1, 1, 0.9);
        return verdict(Distribution.constant(join), slows, plan.withTargetWithoutStop(second));
    }

    /** One in four joints is short enough to run through, three in four to go without a stop. */
    private static Verdict atRandom(double first, double second) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(50), 0, 4, 1, first);
        return verdict(Distribution.uniform(50, 250), true, plan.withTargetWithoutStop(OptionalDouble.of(second)));
    }

    private static Verdict verdict(Distribution join, boolean slows, RunPlan plan) {
        PlainLine line = new PlainLine()
                .coils(PlainLine.coil(4000))
                .capacity(300)
                .entry(4, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .process(2, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .join(join);
        return new RunThroughStudy(new SimulationRequest(
                        "x", List.of(), (slows ? line.slowing(1, 100, 200) : line).build(), plan, UnitSystem.METRIC))
                .run(StudyOptions.plain().withThreads(1), StudyListener.NONE)
                .verdict();
    }

    @Test
    void slowedIsWithoutAStop_andMeetsThatTargetAlone() {
        Verdict slowed = verdict(120, true, OptionalDouble.of(0.95));

        assertThat(slowed.answer()).isEqualTo(TargetStatus.MISSES);
        assertThat(slowed.withoutStop().flatMap(Verdict.WithoutStop::answer)).contains(TargetStatus.MEETS);
        assertThat(slowed.withoutStop().orElseThrow().share().mean()).isEqualTo(1);
        assertThat(slowed.withoutStop().orElseThrow().spare()).isPresent();
        assertThat(slowed.storage().orElseThrow().marginToSlowing()).isPresent();
        assertThat(slowed.meetsAll()).isFalse();
    }

    @Test
    void allTargetsAreMetWhereBothAre() {
        assertThat(verdict(90, true, OptionalDouble.of(0.95)).meetsAll()).isTrue();
        assertThat(verdict(90, true, OptionalDouble.empty()).meetsAll()).isTrue();
        assertThat(verdict(90, false, OptionalDouble.empty()).meetsAll()).isTrue();
        assertThat(verdict(210, true, OptionalDouble.of(0.95)).withoutStop().flatMap(Verdict.WithoutStop::answer))
                .contains(TargetStatus.MISSES);
    }

    @Test
    void itIsSpokenOfWhereTheProcessCanSlowOrATargetIsSet() {
        assertThat(verdict(90, false, OptionalDouble.empty()).withoutStop()).isEmpty();
        assertThat(verdict(90, false, OptionalDouble.of(0.95)).withoutStop()).isPresent();
        assertThat(verdict(90, true, OptionalDouble.empty())
                        .withoutStop()
                        .orElseThrow()
                        .answer())
                .isEmpty();
    }

    @Test
    void slowedItHasWhatSlowingLeaves() {
        // 200 m in 100 s at 2 m/s, then 20 m in 20 s at 1 m/s: 80 m are left, where 240 m would have left 60 m.
        Verdict slowed = verdict(120, true, OptionalDouble.of(0.95));

        assertThat(slowed.storage()
                        .orElseThrow()
                        .marginWithoutStop()
                        .orElseThrow()
                        .mean()
                        .mean())
                .isCloseTo(80, within(1e-6));
        assertThat(slowed.storage().orElseThrow().margin().mean().mean()).isCloseTo(60, within(1e-6));
        assertThat(slowed.withoutStop().orElseThrow().spare().orElseThrow().metres())
                .isCloseTo(80, within(1e-6));
    }

    @Test
    void theMoreMayStopTheMoreIsLeftAtTheTarget() {
        assertThat(spare(atRandom(0.1, 0.5))).isPositive();
        assertThat(spare(atRandom(0.1, 0.95))).isNegative();
    }

    private static double spare(Verdict verdict) {
        return verdict.withoutStop().orElseThrow().spare().orElseThrow().metres();
    }

    @Test
    void theFirstTargetMetAndTheSecondMissedIsNotAll() {
        assertThat(atRandom(0.1, 0.5).meetsAll()).isTrue();
        assertThat(atRandom(0.1, 0.95).answer()).isEqualTo(TargetStatus.MEETS);
        assertThat(atRandom(0.1, 0.95).meetsAll()).isFalse();
    }
}
