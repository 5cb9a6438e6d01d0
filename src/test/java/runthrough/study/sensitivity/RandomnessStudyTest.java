package runthrough.study.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.simulation.PlainLine;
import runthrough.simulation.random.RandomSource;
import runthrough.simulation.random.RandomSource.Kind;
import runthrough.study.Evaluator;
import runthrough.study.sensitivity.VarianceShares.Share;
import runthrough.study.statistics.Estimate;

/** Shares of variance on the simulator, where they are known. The plain line of {@link PlainLine} runs at 1.5 m/s. */
class RandomnessStudyTest {
    private static final Distribution FIT = Distribution.lognormal(30, 12);
    private static final Distribution WELD = Distribution.triangular(20, 25, 45);
    private static final Distribution SHEAR = Distribution.uniform(5, 11);

    private static List<VarianceShares> shares(Line line, Extent extent, int samples) {
        return new RandomnessStudy(line, new RunPlan(extent, 0, 10, 11, 0.9), samples)
                .run(new Evaluator(2, () -> false), () -> {});
    }

    private static VarianceShares of(ChangeMeasure measure, List<VarianceShares> all) {
        return all.stream()
                .filter(shares -> shares.measure() == measure)
                .findFirst()
                .orElseThrow();
    }

    private static Share of(Kind kind, VarianceShares shares) {
        return shares.sources().stream()
                .filter(share -> share.source().kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static void assertNear(Estimate estimate, double exact) {
        double error = estimate.sd().orElseThrow() / Math.sqrt(estimate.replications());
        assertThat(error).isLessThan(0.03);
        assertThat(estimate.mean()).isCloseTo(exact, within(3.5 * error + 1e-9));
    }

    private static double variance(Distribution distribution) {
        return distribution.sd() * distribution.sd();
    }

    /**
     * Always refilled: the joint cycle time is the sum of its independent elements, and the margin is 500 m - 1.5 m/s x joint cycle time.
     * So each element carries its own variance over the sum of all, by itself and in all, of the one as of the other.
     */
    @Test
    void alwaysRefilled_anElementCarriesItsVarianceOverTheSum() {
        Line line = new PlainLine()
                .capacity(500)
                .coils(PlainLine.coil(2000))
                .tail(PlainLine.element(SHEAR))
                .join(FIT)
                .join(WELD)
                .prepare(PlainLine.element(Distribution.uniform(50, 100)))
                .build();
        double sum = variance(FIT) + variance(WELD) + variance(SHEAR);

        List<VarianceShares> all = shares(line, new Extent.Changes(20), 400);

        for (ChangeMeasure measure : List.of(ChangeMeasure.MARGIN, ChangeMeasure.JOINT_CYCLE_TIME)) {
            VarianceShares shares = of(measure, all);
            List<Distribution> distributions = List.of(FIT, WELD, SHEAR);
            List<RandomSource> sources = RandomSource.of(line);
            for (int i = 0; i < 3; i++) {
                // Sources come as prepare, tail, join; shares with the greatest first, as the distributions stand here.
                Share share = shares.sources().get(i);
                assertThat(share.source()).isEqualTo(sources.get(new int[] {2, 3, 1}[i]));
                assertNear(share.index().first(), variance(distributions.get(i)) / sum);
                assertNear(share.index().total(), variance(distributions.get(i)) / sum);
                assertThat(share.index().isFirstShown()).isTrue();
            }
            // The next coil is always ready: preparing it moves nothing.
            assertThat(shares.sources().get(3).index().total().mean()).isCloseTo(0, within(1e-9));
            assertThat(shares.sources().get(3).index().isShown()).isFalse();
            assertThat(shares.isTogetherShown()).isFalse();
            assertNear(shares.firstOrders(), 1);
        }
        assertThat(of(ChangeMeasure.MARGIN, all).sd()).isCloseTo(1.5 * Math.sqrt(sum), within(0.5));
        assertThat(of(ChangeMeasure.RUN_THROUGH, all).varies()).isFalse();
    }

    /**
     * A good joint takes T = fit; a rejected one (p) as much again. With N passes, N - 1 geometric, and fits of mean m and
     * variance v: V = v E(N) + m^2 V(N). Rejects alone carry m^2 V(N); fits alone V(E(T|fits)) = v (1 + p^2 + p^4 + ...) = v/(1 -
     * p^2), for fit k counts with the chance p^(k - 1) of being made.
     */
    @Test
    void rejectsAndTheWorkDoneAgainActTogether() {
        double p = 0.3;
        Line line = new PlainLine()
                .capacity(5000)
                .coils(PlainLine.coil(20_000))
                .join(FIT)
                .reject(new Reject.Chance(p))
                .build();
        double v = variance(FIT);
        double passes = 1 / (1 - p);
        double rejects = 30 * 30 * p / ((1 - p) * (1 - p));
        double whole = v * passes + rejects;
        double fits = v / (1 - p * p);

        VarianceShares shares = of(ChangeMeasure.JOINT_CYCLE_TIME, shares(line, new Extent.Changes(20), 2000));

        assertNear(of(Kind.REJECT, shares).index().first(), rejects / whole);
        assertNear(of(Kind.DURATION, shares).index().first(), fits / whole);
        assertNear(of(Kind.REJECT, shares).index().total(), 1 - fits / whole);
        assertNear(of(Kind.DURATION, shares).index().total(), 1 - rejects / whole);
        assertThat(shares.isTogetherShown()).isTrue();
        assertNear(shares.firstOrders(), (rejects + fits) / whole);
    }

    @Test
    void withoutAccumulator_theTimeLostIsTheJointAndTheRestartDelay() {
        Distribution delay = Distribution.uniform(10, 70);
        Line line = new PlainLine()
                .withoutAccumulator()
                .join(FIT)
                .restart(Double.NaN, delay)
                .build();
        double sum = variance(FIT) + variance(delay);

        List<VarianceShares> all = shares(line, new Extent.Changes(20), 400);

        assertThat(all)
                .extracting(VarianceShares::measure)
                .containsExactly(ChangeMeasure.LOST_TIME, ChangeMeasure.JOINT_CYCLE_TIME);
        assertNear(of(Kind.DURATION, all.get(0)).index().first(), variance(FIT) / sum);
        assertNear(of(Kind.RESTART_DELAY, all.get(0)).index().total(), variance(delay) / sum);
        assertThat(all.get(0).mean()).isCloseTo(30 + 40, within(2.0));
        assertThat(of(Kind.RESTART_DELAY, all.get(1)).index().isShown()).isFalse();
    }

    /** 200 m at 1.5 m/s last 133.3 s: what fails is what takes longer, and one element alone decides it. */
    @Test
    void runningThroughIsDecidedByTheJoint_whetherRunByChangesOrForATime() {
        Line line = new PlainLine()
                .coils(PlainLine.coil(2000))
                .join(Distribution.lognormal(120, 20))
                .prepare(PlainLine.element(Distribution.uniform(50, 100)))
                .build();

        for (Extent extent : List.of(new Extent.Changes(20), new Extent.Time(30_000))) {
            VarianceShares shares = of(ChangeMeasure.RUN_THROUGH, shares(line, extent, 200));

            assertNear(shares.sources().get(0).index().first(), 1);
            assertNear(shares.sources().get(0).index().total(), 1);
            assertThat(shares.mean()).isBetween(0.6, 0.95);
        }
    }

    @Test
    void theNumberOfThreadsChangesNothing() {
        Line line = new PlainLine().join(FIT).reject(new Reject.Chance(0.2)).build();
        RandomnessStudy study = new RandomnessStudy(line, new RunPlan(new Extent.Changes(10), 2, 10, 11, 0.9), 30);

        assertThat(study.run(new Evaluator(3, () -> false), () -> {}))
                .isEqualTo(study.run(new Evaluator(1, () -> false), () -> {}));
        assertThat(study.changes()).isEqualTo(8);
    }
}
