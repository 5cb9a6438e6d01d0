package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class EstimateTest {
    private static Estimate estimate(double low, double high) {
        return new Estimate(
                (low + high) / 2,
                9,
                OptionalDouble.of(0.5),
                Optional.of(new Interval(low, high, Interval.Method.STUDENT_T)));
    }

    @Test
    void inAnotherUnitAllOfItIsInThatUnit() {
        Estimate minutes = estimate(2, 6);

        assertThat(minutes.halfWidth()).hasValue(2);
        assertThat(minutes.times(60))
                .isEqualTo(new Estimate(
                        240, 9, OptionalDouble.of(30), Optional.of(new Interval(120, 360, Interval.Method.STUDENT_T))));
        Estimate single = new Estimate(4, 1, OptionalDouble.empty(), Optional.empty());
        assertThat(single.times(60)).isEqualTo(new Estimate(240, 1, OptionalDouble.empty(), Optional.empty()));
        assertThat(single.halfWidth()).isEmpty();
    }

    @Test
    void anIntervalEndsWhereWhatIsEstimatedDoes() {
        assertThat(estimate(-1, 0.5).notNegative().interval().orElseThrow().low())
                .isZero();
        assertThat(estimate(0.5, 1.5).within(0, 1).interval().orElseThrow().high())
                .isEqualTo(1);
    }

    /** To cut it would leave nothing: it shows what was calculated. */
    @Test
    void anIntervalBesideWhatIsPossibleStaysAsItIs() {
        for (Estimate beside : new Estimate[] {estimate(-2, 0), estimate(1, 3)}) {
            assertThat(beside.within(0, 1)).isEqualTo(beside);
        }
    }

    @Test
    void theEndsBelongToAnInterval() {
        Interval interval = new Interval(2, 6, Interval.Method.STUDENT_T);

        assertThat(interval.contains(2) && interval.contains(6)).isTrue();
        assertThat(interval.contains(1.99) || interval.contains(6.01)).isFalse();
    }

    @Test
    void halfTheWidthWantsFourTimesTheReplications_andATenthMore() {
        RelativeHalfWidth wide = RelativeHalfWidth.of(0.25, OptionalDouble.of(0.5), 20, 100);

        assertThat(wide.reached()).isFalse();
        assertThat(wide.wouldDo()).hasValue(88);
    }

    @Test
    void asNarrowAsAskedForIsEnough_andWithoutAnEndNothingIsKnown() {
        RelativeHalfWidth narrow = RelativeHalfWidth.of(0.25, OptionalDouble.of(0.25), 20, 100);
        assertThat(narrow.reached()).isTrue();
        assertThat(narrow.wouldDo()).isEmpty();

        RelativeHalfWidth endless = RelativeHalfWidth.of(0.25, OptionalDouble.empty(), 20, 100);
        assertThat(endless.reached()).isFalse();
        assertThat(endless.wouldDo()).isEqualTo(OptionalInt.empty());
        assertThat(RelativeHalfWidth.exact(0.25, 100).reached()).isTrue();
    }
}
