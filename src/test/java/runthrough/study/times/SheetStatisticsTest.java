package runthrough.study.times;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Distribution;
import runthrough.simulation.random.Draws;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;

/** What a sheet says; hand calculation and against known truth. */
class SheetStatisticsTest {
    private static final long SEED = 1;

    private static ElementTimes only(double... times) {
        return SheetStatistics.of(MadeSheets.of(times), SEED).elements().get(0);
    }

    @Test
    void momentsAndPercentilesLeaveGapsOut() {
        ElementTimes times = only(40, Double.NaN, 44, 42, 50);

        // Mean 44; squares 16 + 0 + 4 + 36 = 56, over 3; 90 % at place 0.9 x 3 = 2.7: 44 + 0.7 x 6.
        assertThat(times.n()).isEqualTo(4);
        assertThat(times.gaps()).isEqualTo(1);
        assertThat(times.moments().mean()).isEqualTo(44);
        assertThat(times.moments().sd()).isCloseTo(Math.sqrt(56 / 3.0), within(1e-12));
        assertThat(times.cv()).isCloseTo(Math.sqrt(56 / 3.0) / 44, within(1e-12));
        assertThat(times.sample().percentile(0.5)).isEqualTo(43);
        assertThat(times.sample().percentile(0.9)).isCloseTo(48.2, within(1e-12));
    }

    @Test
    void theStepOfTheWatchIsSeen() {
        assertThat(ReadingStep.of(40, 45, 60)).isEqualTo(5);
        assertThat(ReadingStep.of(41, 45, 60)).isEqualTo(1);
        assertThat(ReadingStep.of(0.01 * 60 * 83, 0.01 * 60 * 84)).isEqualTo(0.6);
        assertThat(ReadingStep.of(41.37, 45.2)).isEqualTo(0.01);
        assertThat(ReadingStep.of(41.3712, 45.2)).isZero();
        assertThat(ReadingStep.of(60, 60)).isZero();
    }

    @Test
    void fencesAreDrawnOnLogarithms() {
        // Logarithms to base 2 of 1, 2, 4, 8, 16, 32, 64, 128, 65536 are 0 to 7 and 16. Quartiles 2 and 6, distance 4:
        // fences
        // at -4 and 12, far out beyond 18.
        ElementTimes times = only(1, 2, 4, 8, 65536, 16, 32, 64, 128);

        assertThat(times.outliers().low()).isCloseTo(1 / 16.0, within(1e-12));
        assertThat(times.outliers().high()).isCloseTo(4096, within(1e-8));
        assertThat(times.outliers().found()).singleElement().satisfies(outlier -> {
            assertThat(outlier.row().number()).isEqualTo(5);
            assertThat(outlier.time()).isEqualTo(65536);
            assertThat(outlier.farOut()).isFalse();
        });
    }

    @Test
    void equalTimesButOneAreNotAllOutliers() {
        // Quartiles 60 and 60, read to 5 s: they count as one step of 5 / 60 apart, so 65 = 60 exp(0.08) is within 1.5
        // of them.
        assertThat(only(60, 60, 60, 60, 60, 60, 60, 60, 65).outliers().found()).isEmpty();
        assertThat(only(60, 60, 60, 60, 60, 60, 60, 60, 95).outliers().found())
                .singleElement()
                .matches(Outliers.Outlier::farOut);
    }

    @Test
    void fewTimesHaveNoOutliersAndNoTrend() {
        ElementTimes times = only(1, 2, 3, 4, 5, 6, 700);

        assertThat(times.outliers().found()).isEmpty();
        assertThat(times.outliers().high()).isNaN();
        assertThat(times.trend()).isEmpty();
    }

    @Test
    void aCrewThatSpeedsUpIsSeen_asInTheHandCalculation() {
        // Ten times that fall without exception: score -45, variance 10 x 9 x 25 / 18 = 125, z = 44 / 11.180 = 3.9355;
        // the slopes
        // are -2 but across the one step of 1 from 92 to 91.
        Trend trend = only(100, 98, 96, 94, 92, 91, 89, 87, 85, 83).trend().orElseThrow();

        assertThat(trend.tau()).isEqualTo(-1);
        assertThat(trend.p()).isCloseTo(8.3e-5, within(1e-6));
        assertThat(trend.slope()).isBetween(-2.0, -1.8);
        assertThat(trend.isShown()).isTrue();
    }

    @Test
    void tiesAreCorrectedFor() {
        // 1 1 2 2 3 3 4 4: 24 pairs rise, 4 tie; variance (8 x 7 x 21 - 4 x 2 x 1 x 9) / 18 = 1104 / 18 = 61.333; z =
        // 23 / 7.8316.
        Trend trend = only(1, 1, 2, 2, 3, 3, 4, 4).trend().orElseThrow();

        assertThat(trend.tau()).isCloseTo(24 / 28.0, within(1e-12));
        assertThat(trend.p()).isCloseTo(0.003315, within(2e-6));
    }

    @Test
    void aGapCountsAsAStepOfTime() {
        double gap = Double.NaN;

        assertThat(only(10, gap, 12, gap, 14, 15, 16, gap, 18, 19, 20, 21)
                        .trend()
                        .orElseThrow()
                        .slope())
                .isEqualTo(1);
    }

    @Test
    void rankCorrelationAsInTheHandCalculation() {
        // Ranks of 10 20 30 40 50 60 70 80 and of 1 2 4 3 5 6 8 7: four differences of 1, so 1 - 6 x 4 / (8 x 63) =
        // 0.952381.
        double[] x = {10, 20, 30, 40, 50, 60, 70, 80};
        double[] y = {1, 2, 4, 3, 5, 6, 8, 7};
        Correlation pair =
                SheetStatistics.of(MadeSheets.of(x, y), SEED).correlations().get(0);

        assertThat(pair.spearman()).isCloseTo(1 - 24 / 504.0, within(1e-12));
        // t = 0.952381 sqrt(6 / (1 - 0.907029)) = 7.651 with 6 degrees of freedom.
        assertThat(pair.p()).isCloseTo(0.00026, within(1e-5));
        assertThat(pair.adjusted()).isEqualTo(pair.p());
        assertThat(pair.isShown()).isTrue();
    }

    @Test
    void tiesShareTheirRank() {
        assertThat(Correlation.ranks(new double[] {5, 3, 5, 1})).containsExactly(3.5, 2, 3.5, 1);
    }

    @Test
    void aConstantElementGoesWithNone() {
        double[] x = {8, 8, 8, 8, 8, 8, 8, 8};
        double[] y = {1, 2, 4, 3, 5, 6, 8, 7};

        assertThat(SheetStatistics.of(MadeSheets.of(x, y), SEED).correlations()).isEmpty();
    }

    @Test
    void manyPairsByChanceAreAllowedFor() {
        // 8 elements drawn apart make 28 pairs; some have p < 0.05, but hardly ever one that is shown.
        Draws draws = new Draws(3, 0, 0);
        int shown = 0;
        int small = 0;
        for (int sheet = 0; sheet < 40; sheet++) {
            double[][] columns = IntStream.range(0, 8)
                    .mapToObj(i -> MadeSheets.drawn(Distribution.lognormal(20, 6), 30, draws))
                    .toArray(double[][]::new);
            List<Correlation> pairs = Correlation.of(MadeSheets.of(columns));
            small += (int) pairs.stream().filter(pair -> pair.p() < 0.05).count();
            shown += (int) pairs.stream().filter(Correlation::isShown).count();
        }

        // 1120 pairs: 56 expected with p < 0.05, three standard errors of 7.3; about 40 x 5 % = 2 shown.
        assertThat(small).isBetween(34, 78);
        assertThat(shown).isLessThan(9);
    }

    /** Sheets of 30 rows, five elements: ten pairs. At 5 % of 1,000 the standard error is 0.7 %, and three of them are allowed. */
    @Test
    void ofThousandIndependentSheetsOneInTwentyAtMostIsWarnedOf_ofPairsAndOfTrends() {
        Draws draws = new Draws(14, 0, 0);
        List<Distribution> elements = List.of(
                Distribution.lognormal(20, 6),
                Distribution.gamma(90, 30),
                Distribution.exponential(15),
                Distribution.uniform(5, 9),
                Distribution.weibull(3, 40));
        int warned = 0;
        int trends = 0;
        for (int sheet = 0; sheet < 1000; sheet++) {
            double[][] columns = elements.stream()
                    .map(element -> MadeSheets.drawn(element, 30, draws))
                    .toArray(double[][]::new);
            TimeSheet made = MadeSheets.of(columns);
            warned += Correlation.of(made).stream().anyMatch(Correlation::isShown) ? 1 : 0;
            trends += IntStream.range(0, elements.size())
                            .anyMatch(i -> Trend.of(made, i).orElseThrow().isShown())
                    ? 1
                    : 0;
        }

        assertThat(trends).isBetween(1, 50 + 3 * 7);
        assertThat(warned).isLessThanOrEqualTo(50 + 3 * 7);
        // Nor is it so strict that it says nothing.
        assertThat(warned).isPositive();
    }

    /** A pace of sd 25 % over times of sd 13 %: correlation of logarithms 0.06/(0.06 + 0.018) = 0.78. */
    @Test
    void sheetsWhoseElementsGoTogetherAreWarnedOf() {
        int warned = 0;
        for (int seed = 100; seed < 200; seed++) {
            warned += Correlation.of(paced(0.25, 30, seed)).stream().anyMatch(Correlation::isShown) ? 1 : 0;
        }

        assertThat(warned).isGreaterThanOrEqualTo(98);
    }

    @Test
    void aTrendIsFoundWithItsSlopeAndChanceIsNotCalledOne() {
        Draws draws = new Draws(4, 0, 0);
        int covered = 0;
        int shown = 0;
        int falsely = 0;
        int sheets = 200;
        for (int sheet = 0; sheet < sheets; sheet++) {
            double[] still = MadeSheets.drawn(Distribution.gamma(90, 10), 40, draws);
            double[] faster =
                    IntStream.range(0, 40).mapToDouble(i -> still[i] - 0.7 * i).toArray();
            Trend trend = Trend.of(MadeSheets.of(faster), 0).orElseThrow();
            covered += trend.low() <= -0.7 && -0.7 <= trend.high() ? 1 : 0;
            shown += trend.isShown() ? 1 : 0;
            falsely += Trend.of(MadeSheets.of(still), 0).orElseThrow().isShown() ? 1 : 0;
        }

        // 95 % of 200 with three standard errors of 3.1; 5 % likewise.
        assertThat(covered).isBetween(180, 200);
        assertThat(falsely).isBetween(0, 20);
        assertThat(shown).isGreaterThan(190);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void plantedOutliersAreFoundAndKept(long seed) {
        double[] times = MadeSheets.drawn(Distribution.lognormal(40, 8), 60, new Draws(seed, 0, 0));
        times[17] = 160;
        times[41] = 9;
        ElementTimes found = only(times);

        assertThat(found.outliers().found())
                .extracting(outlier -> outlier.row().number())
                .contains(18, 42)
                .hasSizeLessThan(6);
        assertThat(found.n()).isEqualTo(60);
        assertThat(found.sample().percentile(1)).isEqualTo(160);
    }

    /** Three elements that a slow row makes slow together: each takes its own distribution times the same pace. */
    private static TimeSheet paced(double paceSd, int n, long seed) {
        Draws draws = new Draws(seed, 0, 0);
        double[] pace = paceSd == 0
                ? DoubleStream.generate(() -> 1).limit(n).toArray()
                : MadeSheets.drawn(Distribution.lognormal(1, paceSd), n, draws);
        return MadeSheets.of(IntStream.range(0, 3)
                .mapToObj(i -> MadeSheets.drawn(Distribution.lognormal(30, 4), n, draws))
                .map(column -> IntStream.range(0, n)
                        .mapToDouble(r -> column[r] * pace[r])
                        .toArray())
                .toArray(double[][]::new));
    }

    @Test
    void drawingElementsApartShortensTheTailWhenSlowRowsAreSlowEverywhere() {
        JointTail tail = JointTail.of(paced(0.25, 150, 5), SEED).orElseThrow();
        JointTail.Percentile far = tail.percentiles().get(1);

        // Sums: pace sd 22.5 s and own sd 7 s together, against sqrt(3) x 8.5 s apart.
        assertThat(tail.together().sd()).isCloseTo(24, within(6.0));
        assertThat(tail.apartSd()).isCloseTo(15, within(3.0));
        assertThat(far.p()).isEqualTo(0.95);
        assertThat(far.together()).isGreaterThan(far.apart());
        assertThat(far.low()).isPositive();
    }

    @Test
    void drawingElementsApartDoesNoHarmWhereTheyDoNotGoTogether() {
        int wrongly = 0;
        for (int seed = 20; seed < 40; seed++) {
            JointTail.Percentile far = JointTail.of(paced(0, 60, seed), SEED)
                    .orElseThrow()
                    .percentiles()
                    .get(1);
            wrongly += far.low() > 0 || far.high() < 0 ? 1 : 0;
        }

        // 5 % of 20 is 1; three standard errors are 3.
        assertThat(wrongly).isLessThanOrEqualTo(4);
    }

    @Test
    void theSameSeedGivesTheSameTail() {
        TimeSheet sheet = paced(0.2, 40, 6);

        assertThat(JointTail.of(sheet, 7)).isEqualTo(JointTail.of(sheet, 7));
        assertThat(JointTail.of(sheet, 7)).isNotEqualTo(JointTail.of(sheet, 8));
    }

    @Test
    void aTailNeedsTwoStandingElementsAndTwentyWholeRows() {
        assertThat(JointTail.of(
                        MadeSheets.of(IntStream.range(1, 50).asDoubleStream().toArray()), SEED))
                .isEmpty();
        assertThat(JointTail.of(paced(0.2, 19, 6), SEED)).isEmpty();
    }

    @Test
    void aLongSheetIsThinnedForItsTrendOnly() {
        double[] times =
                IntStream.range(0, 5000).mapToDouble(i -> 100 + 0.01 * i).toArray();
        ElementTimes found = only(times);

        assertThat(found.n()).isEqualTo(5000);
        assertThat(found.trend().orElseThrow().n()).isEqualTo(1667);
        assertThat(found.trend().orElseThrow().slope()).isCloseTo(0.01, within(1e-9));
    }

    @Test
    void leavingRowsOutIsAlwaysTheUsersOwnDoing() {
        double[] times = {40, 41, 42, 43, 44, 45, 46, 47, 400};
        TimeSheet sheet = MadeSheets.of(times);

        assertThat(SheetStatistics.of(sheet, SEED).elements().get(0).n()).isEqualTo(9);
        assertThat(SheetStatistics.of(sheet.without(List.of(9)), SEED)
                        .elements()
                        .get(0)
                        .sample()
                        .percentile(1))
                .isEqualTo(47);
        assertThat(sheet.rows())
                .extracting(Observation::number)
                .containsExactlyElementsOf(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9));
    }
}
