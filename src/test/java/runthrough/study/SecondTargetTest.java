package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
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
        PlainLine line = new PlainLine()
                .coils(PlainLine.coil(4000))
                .capacity(300)
                .entry(4, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .process(2, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .join(join);
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(5), 0, 1, 1, 0.9).withTargetWithoutStop(second);
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
}
