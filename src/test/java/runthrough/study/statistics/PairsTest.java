package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.study.statistics.Difference.Significance;

class PairsTest {
    private static final Pairs ONE = Pairs.of(1);

    @Test
    void theIntervalIsThatOfTheDifferences() {
        // Differences 1, 2, 3, 2: mean 2, sd sqrt(2/3), t(3, 0.975) = 3.182446; half 3.182446 * 0.816497 / 2 =
        // 1.299228.
        Difference difference = ONE.means(new double[] {101, 52, 13, 72}, new double[] {100, 50, 10, 70});

        assertThat(difference.mean()).isEqualTo(2);
        assertThat(difference.pairs()).isEqualTo(4);
        assertThat(difference.confidence()).isEqualTo(0.95);
        assertThat(difference.interval().orElseThrow().low()).isCloseTo(2 - 1.299228, within(1e-6));
        assertThat(difference.interval().orElseThrow().high()).isCloseTo(2 + 1.299228, within(1e-6));
        assertThat(difference.significance()).isEqualTo(Significance.SIGNIFICANT);
    }

    @Test
    void ofSeveralAtOnceEachIntervalIsWider_soThatAllHoldTogether() {
        // 1 - 0.05/5 = 0.99; t(3, 0.995) = 5.840909; half 5.840909 * 0.816497 / 2 = 2.384541: zero is within.
        Difference difference = Pairs.of(5).means(new double[] {101, 52, 13, 72}, new double[] {100, 50, 10, 70});

        assertThat(difference.confidence()).isCloseTo(0.99, within(1e-15));
        assertThat(difference.interval().orElseThrow().low()).isCloseTo(2 - 2.384541, within(1e-6));
        assertThat(difference.significance()).isEqualTo(Significance.NOT_SHOWN);
    }

    @Test
    void whatIsTheSameInEveryPairIsNoDifference_alsoWhenRoundingPartsIt() {
        Difference difference = ONE.means(new double[] {0.1 + 0.2, 5}, new double[] {0.3, 5});

        assertThat(difference.significance()).isEqualTo(Significance.NONE);
        assertThat(difference.mean()).isZero();
        assertThat(difference.interval()).isEmpty();
    }

    @Test
    void whereNothingIsRandomTheDifferenceIsExact() {
        assertThat(Difference.exact(5, 3, 0.95).significance()).isEqualTo(Significance.SIGNIFICANT);
        assertThat(Difference.exact(5, 3, 0.95).mean()).isEqualTo(2);
        assertThat(Difference.exact(5, 3, 0.95).interval()).isEmpty();
        assertThat(Difference.exact(3, 3, 0.95).significance()).isEqualTo(Significance.NONE);
        assertThat(Difference.exact(3, 3, 0.95).isExact()).isTrue();
        assertThat(ONE.means(new double[] {4}, new double[] {1}).isExact()).isFalse();
        assertThat(ONE.means(new double[] {4, 5}, new double[] {1, 2}).isExact())
                .isFalse();
    }

    @Test
    void inAnotherUnitAllOfItIsInThatUnit() {
        Difference metres = ONE.means(new double[] {101, 52, 13, 72}, new double[] {100, 50, 10, 70});

        assertThat(metres.times(1000).mean()).isEqualTo(2000);
        assertThat(metres.times(1000).interval().orElseThrow().low()).isCloseTo(2000 - 1299.228, within(1e-3));
    }

    @Test
    void onePairCannotTell() {
        Difference difference = ONE.means(new double[] {4}, new double[] {1});

        assertThat(difference.mean()).isEqualTo(3);
        assertThat(difference.significance()).isEqualTo(Significance.NOT_SHOWN);
        assertThat(difference.interval()).isEmpty();
    }

    @Test
    void replicationsWithoutAValueAreLeftOut() {
        Difference difference = ONE.means(new double[] {4, Double.NaN, 6}, new double[] {1, 2, Double.NaN});

        assertThat(difference.pairs()).isEqualTo(1);
        assertThat(difference.mean()).isEqualTo(3);
        assertThat(ONE.means(new double[] {Double.NaN}, new double[] {1}).significance())
                .isEqualTo(Significance.NOT_SHOWN);
    }

    @ParameterizedTest
    @CsvSource({"5, NOT_SHOWN", "6, SIGNIFICANT"})
    void aFewPairsThatDifferAmongManyThatDoNotAreNoProof(int differing, Significance significance) {
        // 100 pairs, of which k differ by 1 alike. t: mean k/100, sd about sqrt(k/100): k = 5 gives 0.05 - 1.98 *
        // 0.0219,
        // above zero; but 2^(1 - 5) = 0.0625 is more than 0.05 and 2^(1 - 6) is not.
        double[] here = new double[100];
        Arrays.fill(here, 0, differing, 1);
        Difference difference = ONE.means(here, new double[100]);

        assertThat(difference.significance()).isEqualTo(significance);
        assertThat(difference.interval().orElseThrow().contains(0)).isEqualTo(significance == Significance.NOT_SHOWN);
    }

    @Test
    void pairsThatAllDifferByTheSameAreSignificantWhenThereAreEnough() {
        double[] five = new double[5];
        double[] six = new double[6];
        Arrays.fill(five, 2);
        Arrays.fill(six, 2);

        assertThat(ONE.means(five, new double[5]).significance()).isEqualTo(Significance.NOT_SHOWN);
        assertThat(ONE.means(six, new double[6]).significance()).isEqualTo(Significance.SIGNIFICANT);
        assertThat(ONE.means(six, new double[6]).interval()).isEmpty();
    }

    /**
     * R. G. Newcombe, "Interval estimation for the difference between independent proportions: comparison of eleven methods",
     * Statistics in Medicine 17, 1998, Table II, method 10; values from memory, agreeing with the formula to four decimals.
     */
    @ParameterizedTest
    @CsvSource({
        "9, 10, 3, 10, 0.1705, 0.8090",
        "6, 7, 2, 7, 0.0582, 0.8062",
        "5, 56, 0, 29, -0.0381, 0.1926",
        "10, 10, 0, 20, 0.6791, 1.0000",
        "10, 10, 0, 10, 0.6075, 1.0000",
    })
    void sharesOfFewTrialsBySquareAndAdd(long a, long m, long b, long n, double low, double high) {
        Difference difference = ONE.shares(successes(a, m), successes(b, n));

        assertThat(difference.mean()).isCloseTo((double) a / m - (double) b / n, within(1e-15));
        Interval interval = difference.interval().orElseThrow();
        assertThat(interval.method()).isEqualTo(Interval.Method.SQUARE_AND_ADD);
        assertThat(interval.low()).isCloseTo(low, within(5e-5));
        assertThat(interval.high()).isCloseTo(high, within(5e-5));
    }

    private static Successes successes(long successes, long trials) {
        return new Successes(new long[] {successes}, new long[] {trials}, false);
    }

    @Test
    void sharesOfManyTrialsByT() {
        // Differences 0.10, 0.12, 0.08: mean 0.1, sd 0.02.
        Difference difference = ONE.shares(
                new Successes(new long[] {60, 72, 68}, new long[] {100, 100, 100}, false),
                new Successes(new long[] {50, 60, 60}, new long[] {100, 100, 100}, false));

        // t(2, 0.975) = 4.302653; 4.302653 * 0.02 / sqrt(3) = 0.049683.
        assertThat(difference.interval().orElseThrow().low()).isCloseTo(0.1 - 0.049683, within(1e-6));
        assertThat(difference.interval().orElseThrow().method()).isEqualTo(Interval.Method.STUDENT_T);
    }

    @Test
    void sharesThatAreTheSameInEveryPairDoNotDiffer() {
        Successes all = new Successes(new long[] {50, 50}, new long[] {50, 50}, false);

        assertThat(ONE.shares(all, all).significance()).isEqualTo(Significance.NONE);
        assertThat(ONE.shares(all, all).interval()).isEmpty();
    }

    @Test
    void anExactShareIsHeldAgainstEveryReplication() {
        Successes none = new Successes(new long[] {0}, new long[] {10}, true);
        Successes some = new Successes(new long[] {40, 60, 50}, new long[] {100, 100, 100}, false);

        Difference difference = ONE.shares(some, none);
        assertThat(difference.mean()).isCloseTo(0.5, within(1e-15));
        assertThat(difference.pairs()).isEqualTo(3);
        assertThat(difference.significance()).isEqualTo(Significance.SIGNIFICANT);
        Successes all = new Successes(new long[] {10}, new long[] {10}, true);
        assertThat(ONE.shares(all, none)).isEqualTo(Difference.exact(1, 0, 0.95));
    }

    @Test
    void onlyAsManyReplicationsCanBePaired() {
        assertThatThrownBy(() -> ONE.means(new double[3], new double[2]))
                .hasMessage("3 replications cannot be paired with 2");
    }

    @Test
    void ofTwoThousandIntervals95PercentHoldTheTrueDifference() {
        // Two values that share random numbers: the true difference is 0.3. 2000 times, binomial error sqrt(0.05 * 0.95
        // / 2000).
        SplittableRandom random = new SplittableRandom(20);
        int held = 0;
        for (int i = 0; i < 2000; i++) {
            held += together(random, 1, ONE)[0].interval().orElseThrow().contains(0.3) ? 1 : 0;
        }
        assertThat(held / 2000.0).isCloseTo(0.95, within(3 * Math.sqrt(0.05 * 0.95 / 2000)));
    }

    @Test
    void ofTwoThousandSetsOfFiveAtLeast95PercentHoldAllTrueDifferences() {
        SplittableRandom random = new SplittableRandom(21);
        Pairs five = Pairs.of(5);
        int held = 0;
        for (int i = 0; i < 2000; i++) {
            held += Arrays.stream(together(random, 5, five))
                            .allMatch(difference ->
                                    difference.interval().orElseThrow().contains(0.3))
                    ? 1
                    : 0;
        }
        // Bonferroni promises at least 95 %, and with a reference in common it is a little more.
        assertThat(held / 2000.0).isBetween(0.95 - 3 * Math.sqrt(0.05 * 0.95 / 2000), 0.985);
    }

    /** Differences of several alternatives to one reference, in 15 replications that share some of their random numbers. */
    private static Difference[] together(SplittableRandom random, int alternatives, Pairs pairs) {
        double[] shared = normals(random);
        double[] reference = sum(shared, normals(random), 0);
        return IntStream.range(0, alternatives)
                .mapToObj(i -> pairs.means(sum(shared, normals(random), 0.3), reference))
                .toArray(Difference[]::new);
    }

    private static double[] sum(double[] shared, double[] own, double more) {
        return IntStream.range(0, own.length)
                .mapToDouble(i -> 3 * shared[i] + own[i] + more)
                .toArray();
    }

    private static double[] normals(SplittableRandom random) {
        return IntStream.range(0, 15).mapToDouble(i -> random.nextGaussian()).toArray();
    }
}
