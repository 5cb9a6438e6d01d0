package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.study.statistics.Difference.Significance;

/**
 * What two variants differ by where the events that one has and the other has not are few. Rule REPORT-17.
 *
 * <p>One stop in one of ten replications that the other has not, each replication of 100 coil changes: no spread beyond chance, f = 1;
 * of a single event c^2 = 1; n = 1/2. Its limits are those of a mean of one times the quantiles 0.025 of chi-squared with 1 degree of
 * freedom, 0.000982, and 0.975 with 3 degrees, 9.348404 (tables). The other way none was seen: up to 3 of the same effect in ten
 * replications.
 */
class FewEventsApartTest {
    private static final Pairs ONE = Pairs.of(1);

    /** Outputs of {@code full}, less {@code lost} for each stop. */
    private static SplitValues output(double full, double lost, long... stops) {
        long[] trials = new long[stops.length];
        Arrays.fill(trials, 100);
        double[] effects = IntStream.range(0, stops.length)
                .mapToDouble(i -> -lost * stops[i])
                .toArray();
        double[] values = DoubleStream.of(effects).map(effect -> full + effect).toArray();
        return new SplitValues(values, List.of(EventPart.ofTrials(stops, trials, effects, -lost)));
    }

    private static SplitValues without(int replications) {
        return output(2, 0.4, new long[replications]);
    }

    private static void isThatOfOneStop(Difference difference, double lost) {
        double mean = -lost / 10;
        Interval interval = difference.interval().orElseThrow();
        assertThat(difference.mean()).isCloseTo(mean, within(1e-12));
        assertThat(difference.significance()).isEqualTo(Significance.NOT_SHOWN);
        assertThat(interval.method()).isEqualTo(Interval.Method.FEW_EVENTS);
        assertThat(interval.low()).isCloseTo(mean * 9.348404, within(1e-6));
        assertThat(interval.high()).isCloseTo(mean + Math.hypot(mean * (1 - 0.000982), 3 * mean), within(1e-6));
    }

    @Test
    void oneStopThatTheOtherHasNotShowsNothing() {
        isThatOfOneStop(ONE.means(output(2, 0.4, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0), without(10)), 0.4);
    }

    @Test
    void stopsThatBothHaveFallOut() {
        isThatOfOneStop(
                ONE.means(output(2, 0.4, 3, 0, 2, 1, 0, 7, 0, 0, 0, 1), output(2, 0.4, 3, 0, 2, 0, 0, 7, 0, 0, 0, 1)),
                0.4);
    }

    /** Stops as many but longer in one replication: as one of what they are longer by. */
    @Test
    void longerStopsCountByWhatTheyAreLonger() {
        SplitValues longer = output(2, 0.5, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0);

        isThatOfOneStop(ONE.means(longer, output(2, 0.4, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0)), 0.1);
    }

    @Test
    void whichOfTheTwoIsTheFirstTurnsTheSignsAlone() {
        SplitValues some = output(2, 0.4, 0, 1, 0, 1, 0, 0, 0, 0, 2, 0);
        SplitValues others = output(2, 0.4, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0);
        Difference difference = ONE.means(some, others);
        Difference turned = ONE.means(others, some);

        assertThat(turned.mean()).isCloseTo(-difference.mean(), within(1e-12));
        assertThat(turned.interval().orElseThrow().low())
                .isCloseTo(-difference.interval().orElseThrow().high(), within(1e-12));
    }

    @Test
    void twelveStopsThatTheOtherHasNotShowIt() {
        long[] stops = new long[100];
        Arrays.fill(stops, 0, 12, 1);
        Difference difference = ONE.means(output(2, 0.4, stops), without(100));

        assertThat(difference.interval().orElseThrow().method()).isEqualTo(Interval.Method.FEW_EVENTS);
        assertThat(difference.significance()).isEqualTo(Significance.SIGNIFICANT);
    }

    @Test
    void whatElseTheyDifferByAddsItsOwnWidth() {
        // 0.1 m/s more in all ten replications: the mean moves, the reach of a stop stays.
        double[] more = new double[10];
        Arrays.fill(more, 0.1);
        SplitValues some = output(2, 0.4, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0);
        Interval alike = ONE.means(some, without(10)).interval().orElseThrow();
        Interval moved = ONE.means(some.plus(SplitValues.whole(more)), without(10))
                .interval()
                .orElseThrow();
        assertThat(moved.low()).isCloseTo(alike.low() + 0.1, within(1e-12));
        assertThat(moved.high()).isCloseTo(alike.high() + 0.1, within(1e-12));

        more[0] = 0.5;
        Interval wider = ONE.means(SplitValues.whole(more).plus(some), without(10))
                .interval()
                .orElseThrow();
        assertThat(wider.halfWidth()).isGreaterThan(alike.halfWidth());
    }

    @Test
    void whereNeitherStoppedEitherMightHave() {
        // Three stops of 0.4 m/s in ten replications: 0.12 m/s, either way.
        Difference difference = ONE.means(without(10), without(10));

        assertThat(difference.significance()).isEqualTo(Significance.NONE);
        assertThat(difference.mean()).isZero();
        assertThat(difference.interval().orElseThrow().low()).isCloseTo(-0.12, within(1e-12));
        assertThat(difference.interval().orElseThrow().high()).isCloseTo(0.12, within(1e-12));
        assertThat(ONE.means(output(2.1, 0.4, new long[10]), without(10)).significance())
                .isEqualTo(Significance.NOT_SHOWN);
    }

    @Test
    void whereStopsCostNothingThereIsNothingToAllowFor() {
        assertThat(ONE.means(output(2, 0, new long[10]), output(2, 0, new long[10]))
                        .interval())
                .isEmpty();
    }

    @Test
    void manyStopsAreLeftToStudentsT_asAreThoseOfEveryReplication() {
        long[] many = {9, 4, 6, 5, 8, 3, 0, 4, 6, 5};
        long[] inAll = {1, 2, 1, 1, 1, 2, 1, 1, 1, 2};

        for (long[] stops : List.of(many, inAll)) {
            assertThat(ONE.means(output(2, 0.4, stops), without(10)))
                    .isEqualTo(ONE.means(
                            output(2, 0.4, stops).values(), without(10).values()));
        }
    }

    @Test
    void aValueInAnotherUnitHasTheSameIntervalInThatUnit() {
        SplitValues some = output(2, 0.4, 0, 0, 0, 1, 0, 0, 0, 0, 2, 0);
        Estimate perSecond = some.mean(0, 2);
        Estimate perMinute = some.times(60).mean(0, 120);

        assertThat(perMinute.mean()).isCloseTo(60 * perSecond.mean(), within(1e-12));
        assertThat(perMinute.interval().orElseThrow().low())
                .isCloseTo(60 * perSecond.interval().orElseThrow().low(), within(1e-9));
        Estimate twice = some.plus(some).mean(0, 4);
        assertThat(twice.interval().orElseThrow().low())
                .isCloseTo(2 * perSecond.interval().orElseThrow().low(), within(1e-12));
        assertThat(without(10)
                        .plus(without(10))
                        .mean(0, 4)
                        .interval()
                        .orElseThrow()
                        .low())
                .isCloseTo(4 - 0.24, within(1e-12));
    }

    @Test
    void replicationsDrawnAnewBringTheirStopsAlong() {
        SplitValues drawn = output(2, 0.4, 0, 5, 1).at(0, 2, 0, 0, 1);

        assertThat(drawn.values()).containsExactly(2, 1.6, 2, 2, 0);
        assertThat(drawn.mean(0, 2)).isEqualTo(output(2, 0.4, 0, 1, 0, 0, 5).mean(0, 2));
    }
}
