package runthrough.study.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.study.limits.LimitsRun.RAMPED;
import static runthrough.study.limits.LimitsRun.high;
import static runthrough.study.limits.LimitsRun.limit;
import static runthrough.study.limits.LimitsRun.limits;
import static runthrough.study.limits.LimitsRun.low;
import static runthrough.study.limits.LimitsRun.parts;
import static runthrough.study.limits.LimitsRun.request;
import static runthrough.study.limits.LimitsRun.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.StorageForm;
import runthrough.simulation.PlainLine;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;
import runthrough.study.cause.Cause;
import runthrough.study.lever.Lever.What;
import runthrough.study.limits.LineLimit.Difference;
import runthrough.study.search.Crossing;
import runthrough.study.search.Crossing.Found;

/**
 * Limits of lines for which they are known. The plain line of {@link PlainLine}: coils of 600 m, entry 2.5 m/s, process 1.5
 * m/s, 200 m of accumulator, speeds change at once.
 */
class LimitsStudyTest {

    @Test
    void theFastestSpeedIsNoneThatTheCarriageCannotFollow() {
        // Rule CHECK-18. Four strands at 0.4 m/s when emptying: 1.6 m/s. Without that 200 m in 100 s of joint allow 2
        // m/s.
        Line line = new PlainLine().coils(PlainLine.coil(5000)).join(100).build();
        Line slowCarriage = line.with(new Accumulator(
                new StorageForm.Strands(4, 50, Double.POSITIVE_INFINITY, 0.4, false),
                line.accumulator().ownFillRateLimit(),
                line.accumulator().reserve(),
                line.accumulator().overtravelAllowance()));

        LineLimit free = limit(limits(request(line, 10, 1), 1), What.PROCESS_SPEED);
        LineLimit bound = limit(limits(request(slowCarriage, 10, 1), 1), What.PROCESS_SPEED);

        assertThat(value(free)).isCloseTo(2, parts(2, 1.1e-4));
        assertThat(free.notFeasible()).isEmpty();
        assertThat(value(bound)).isBetween(1.6 * (1 - 1.1e-4), 1.6);
        assertThat(bound.neighbour().orElseThrow().value()).isCloseTo(1.6, within(1e-9));
        assertThat(bound.notFeasible().orElseThrow().path()).isEqualTo("accumulator.emptying-speed");
    }

    @Test
    void aProcessThatMayRunAsFastAsTheEntry_meetsTheTargetThroughout() {
        // At 1.6 m/s ten joints of 60 s take 960 m; nothing is refilled, but 10,000 m last for that.
        Line line = new PlainLine()
                .coils(PlainLine.coil(20_000))
                .entry(1.6, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .capacity(1e4)
                .join(Distribution.uniform(59, 61))
                .build();
        LineLimit speed = limit(limits(request(line, 10, 1), 0.9), What.PROCESS_SPEED);

        assertThat(speed.crossing().found()).isEqualTo(Found.MET_THROUGHOUT);
        assertThat(value(speed)).isEqualTo(1.6);
        assertThat(speed.beyond()).isEmpty();
    }

    @Test
    void randomJoints_theIntervalHoldsTheExactSeconds_andTheMeanIsNotEnough() {
        // 200 m bear 133.3 s. 90 % of joints, uniform from 60 to 120 s, take up to 114 s; the mean is 90 s.
        Line line = new PlainLine()
                .coils(PlainLine.coil(5000))
                .join(Distribution.uniform(60, 120))
                .build();
        Limits limits = limits(request(line, 100, 20), 0.9);

        LineLimit added = limit(limits, What.JOINT_CYCLE_TIME);
        assertThat(200 / 1.5 - 114).isBetween(low(added), high(added));
        assertThat(added.neighbour().orElseThrow().value()).isCloseTo(200 / 1.5 - 90, within(1e-6));
        assertThat(added.differences()).containsExactly(Difference.CHANCE, Difference.TARGET);
        LineLimit speed = limit(limits, What.PROCESS_SPEED);
        assertThat(200 / 114.0).isBetween(low(speed), high(speed));
        assertThat(limits.chance()).isTrue();
        assertThat(limits.present().orElseThrow().answer(0.9)).isEqualTo(TargetStatus.MEETS);
    }

    @Test
    void aLineThatMissesItsTarget_saysHowMuchItWouldHaveToBeRelieved() {
        // 120 s take 180 m of 150 m: 1.25 m/s instead of 1.5 m/s, or 100 s.
        Line line = new PlainLine()
                .coils(PlainLine.coil(5000))
                .capacity(150)
                .join(120)
                .build();
        Limits limits = limits(request(line, 10, 1), 1);

        assertThat(value(limit(limits, What.PROCESS_SPEED))).isCloseTo(1.25, parts(1.25, 1.1e-4));
        // In steps of 0.01 s, which is 0.0001 of the work.
        assertThat(value(limit(limits, What.JOINT_CYCLE_TIME))).isCloseTo(-20, within(0.011));
        // No entry is fast enough, no coil long enough.
        for (What what : List.of(What.ENTRY_TOP_SPEED, What.COIL_LENGTH)) {
            assertThat(limit(limits, what).crossing().found()).isEqualTo(Found.MISSED_THROUGHOUT);
            assertThat(limit(limits, what).crossing().value()).isEmpty();
            assertThat(limit(limits, what).neighbour()).isEmpty();
        }
    }

    @Test
    void whereTheMeanWouldDoButTheTargetIsMissed_itSaysWhy() {
        // 150 m bear 100 s: more than the mean of 90 s, less than the 114 s that 90 % of joints take.
        Line line = new PlainLine()
                .coils(PlainLine.coil(5000))
                .capacity(150)
                .join(Distribution.uniform(60, 120))
                .build();
        LineLimit added = limit(limits(request(line, 50, 10), 0.9), What.JOINT_CYCLE_TIME);

        assertThat(-14.0).isBetween(low(added), high(added));
        assertThat(added.neighbour().orElseThrow().value()).isCloseTo(10, within(1e-6));
        assertThat(added.differences()).containsExactly(Difference.CHANCE, Difference.TARGET);
        assertThat(added.beyond().get(0).reason().cause()).isEqualTo(Cause.ELEMENT_TOOK_LONG);
    }

    @Test
    void coilsWithSpeedsAndLengthsOfTheirOwnAreScaledAlike() {
        // The faster coil limits: 200 m / 60 s = 3.333 m/s; entry 5 m/s.
        CoilSource coilSource =
                new CoilSource.Schedule(List.of(PlainLine.coilAt(6000, 1.5), PlainLine.coilAt(3000, 2)));
        Line line = new PlainLine()
                .coilSource(coilSource)
                .entry(5, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .join(60)
                .build();
        Limits limits = limits(request(line, 20, 1), 0.9);

        LineLimit speed = limit(limits, What.PROCESS_SPEED);
        assertThat(speed.scaledAlike()).isTrue();
        assertThat(speed.present()).isEqualTo(2);
        assertThat(value(speed)).isCloseTo(200 / 60.0, parts(3.333, 1.1e-4));
        LineLimit coil = limit(limits, What.COIL_LENGTH);
        assertThat(coil.scaledAlike()).isTrue();
        assertThat(coil.present()).isEqualTo(4500);
    }

    @Test
    void aMixHasTheMeanLengthOfItsWeights() {
        Coil shorter = PlainLine.coil(1000);
        Coil longer = PlainLine.coil(2000);
        Line line = new PlainLine()
                .coilSource(
                        new CoilSource.Mix(List.of(new CoilSource.Share(shorter, 3), new CoilSource.Share(longer, 1))))
                .join(60)
                .build();

        assertThat(limit(limits(request(line, 20, 2), 0.9), What.COIL_LENGTH).present())
                .isEqualTo(1250);
    }

    @Test
    void aProcessIsNotDrivenSlowerThanItIsSlowedTo() {
        Line line = new PlainLine().slowing(1, 100, 150).capacity(150).join(60).build();
        Crossing crossing =
                limit(limits(request(line, 10, 1), 1), What.PROCESS_SPEED).crossing();

        // 50 m above the level at which it slows bear 0.833 m/s only.
        assertThat(crossing.from()).isBetween(1.0, 1.01);
        assertThat(crossing.found()).isEqualTo(Found.MISSED_THROUGHOUT);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void oneStripHasNoLimitsThatItBeginsToMissTheTargetAt(boolean joins) {
        PlainLine line = new PlainLine().join(60);
        Line oneStrip = (joins ? line.withoutAccumulator() : line.rethread(Distribution.constant(600))).build();
        Limits limits = limits(request(oneStrip, 10, 1), 0.9);

        assertThat(limits.applicable()).isFalse();
        assertThat(limits.limits()).isEmpty();
        assertThat(limits.counts()).isEmpty();
        assertThat(limits.present()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void threadsChangeNothing(int threads) {
        Line line = new PlainLine()
                .coils(PlainLine.coil(400))
                .join(Distribution.lognormal(60, 20))
                .build();
        LimitsStudy study = new LimitsStudy(request(line, 30, 7), 0.9);

        Limits alone = study.run(1, StudyListener.NONE);
        Limits together = study.run(threads, StudyListener.NONE);
        assertThat(together.limits()).isEqualTo(alone.limits());
        assertThat(together.counts()).isEqualTo(alone.counts());
        assertThat(together.present()).isEqualTo(alone.present());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.5, 1.01, Double.NaN})
    void aTargetThatMakesNoSenseIsRefused(double target) {
        assertThatThrownBy(() -> new LimitsStudy(request(RAMPED, 10, 1), target))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("target = ")
                .hasMessageContaining("must be more than 0 % and at most 100 %");
    }
}
