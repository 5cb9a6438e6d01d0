package runthrough.study.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.simulation.PlainLine;
import runthrough.study.Evaluator;
import runthrough.study.cause.Cause;
import runthrough.study.lever.LevelDrift;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Whether an accumulator that never runs empty lasts. The plain line of {@link PlainLine}: a coil of 600 m at 2.5 m/s against 1.5 m/s
 * gains 240 m, which is 160 s of joint.
 */
class LongRunBalanceTest {
    private static final int SEED = 5;
    private static final Evaluator EVALUATOR = new Evaluator(2, () -> false);

    private static PlainLine ample() {
        return new PlainLine().capacity(1e6);
    }

    private static LongRunBalance balance(Line line) {
        return LongRunBalance.of(line, SEED, EVALUATOR);
    }

    private static Cause cause(Line line) {
        return balance(line).cause(line, SEED, EVALUATOR);
    }

    @Test
    void whatAJointTakesMoreThanACoilGainsIsLackingAtEachChange() {
        // 170 s x 1.5 m/s less 240 m.
        LongRunBalance lacking = balance(ample().join(170).build());
        assertThat(lacking.drift().growth().mean()).isCloseTo(15, within(1e-9));
        assertThat(lacking.drift().growth().replications()).isOne();
        assertThat(lacking.drift().refilled()).isZero();
        assertThat(lacking.ranEmpty()).isFalse();
        assertThat(lacking.lasts()).isFalse();
        // Of 700 m, 255 m a joint, 15 m a coil change are gone in some 30.
        assertThat(balance(new PlainLine().capacity(700).join(170).build()).ranEmpty())
                .isTrue();

        LongRunBalance enough = balance(ample().join(150).build());
        assertThat(enough.drift().growth().mean()).isZero();
        assertThat(enough.drift().refilled()).isOne();
        assertThat(enough.lasts()).isTrue();
    }

    @Test
    void aLineThatBringsOnAverageWhatItUsesLasts() {
        LongRunBalance even =
                balance(ample().join(Distribution.uniform(110, 210)).build());

        assertThat(even.drift().growth().replications()).isGreaterThan(1);
        assertThat(even.lasts()).isTrue();
        assertThat(balance(ample().join(Distribution.uniform(120, 220)).build()).lasts())
                .isFalse();
    }

    @Test
    void waitsAreThoseOfACoilChange() {
        // One uncoiler: each joint waits for 200 s of preparation, and nobody waits for people. 260 s x 1.5 m/s less
        // 240 m.
        Line line = ample().uncoilers(1, 0).prepare(200).join(60).build();

        assertThat(balance(line).waitedForPreparation()).isCloseTo(200, within(1e-9));
        assertThat(balance(line).waitedForPeople()).isZero();
        assertThat(balance(line).drift().growth().mean()).isCloseTo(150, within(1e-9));
        assertThat(cause(line)).isEqualTo(Cause.WAITING_FOR_PREPARATION);
    }

    /** Half of all hours the second person of a joint is away; and one uncoiler waits for 200 s of preparation. */
    @ParameterizedTest
    @CsvSource({"60, BOTH_WAITS", "170, ACCUMULATOR_NOT_FULL"})
    void whereNoWaitAloneIsEnoughBothAreNamed_orTheRefill(double joint, Cause cause) {
        Line line = ample().crew(2)
                .uncoilers(1, 0)
                .prepare(200)
                .join(PlainLine.once(joint).withPeople(2))
                .shifts(new Shift("day", 2000, 2, List.of(new Break(1000, 1000, 1))))
                .build();

        // A joint waits for the end of a break, and no longer.
        assertThat(balance(line).waitedForPeople()).isBetween(1.0, 1000.0);
        assertThat(cause(line)).isEqualTo(cause);
    }

    @ParameterizedTest
    @CsvSource({
        "-1, 3, 0, false, true",
        "-1, 3, 0, true, false",
        "1, 3, 0, false, false",
        "1, 3, 0.005, false, false",
        "1, 3, 0.02, true, true"
    })
    void someCapacityIsEnoughWhereNothingIsShownToBeLacking_orWhereItIsFullAgainNowAndThen(
            double low, double high, double refilled, boolean ranEmpty, boolean lasts) {
        Estimate growth = new Estimate(
                (low + high) / 2,
                4,
                OptionalDouble.of(1),
                Optional.of(new Interval(low, high, Interval.Method.STUDENT_T)));

        assertThat(new LongRunBalance(new LevelDrift(growth, refilled), ranEmpty, 0, 0).lasts())
                .isEqualTo(lasts);
    }
}
