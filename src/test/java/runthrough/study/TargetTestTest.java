package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.simulation.records.Outcome;
import runthrough.study.search.MadeUp;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;

class TargetTestTest {

    @Test
    void meets_whenTheWholeIntervalIsAtOrAboveTheTarget() {
        // Rule REPORT-16.
        // 10,000 of 10,000: low end 10000 / 10003.84 = 0.99962
        assertThat(held(0.995, 10_000, 0).answer()).isEqualTo(TargetStatus.MEETS);
    }

    @Test
    void misses_whenTheWholeIntervalIsBelowTheTarget() {
        // Rule REPORT-16.
        // 980 of 1,000: high end 0.98700
        assertThat(held(0.995, 1000, 20).answer()).isEqualTo(TargetStatus.MISSES);
    }

    @Test
    void undecided_whenTheIntervalHoldsTheTarget() {
        // Rule REPORT-16.
        // 200 of 200: low end 200 / 203.84 = 0.98115
        assertThat(held(0.995, 200, 0).answer()).isEqualTo(TargetStatus.UNDECIDED);
    }

    @Test
    void undecidedWithoutFailure_saysHowManyWouldShowIt() {
        // z^2 t/(1 - t) = 3.841459 * 199 = 764.45
        TargetTest test = held(0.995, 200, 0);

        assertThat(test.resolution().leastToShow()).contains(765L);
        assertThat(test.resolution().toDecide()).contains(765L);
        assertThat(held(0.995, 765, 0).answer()).isEqualTo(TargetStatus.MEETS);
        assertThat(held(0.995, 764, 0).answer()).isEqualTo(TargetStatus.UNDECIDED);
    }

    @Test
    void ninetyNinePointNineNinePercentIsBeyondAThousandCoilChanges() {
        // 3.841459 * 9999 = 38410.7
        TargetTest test = held(0.9999, 1000, 0);

        assertThat(test.answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(test.resolution().leastToShow()).contains(38_411L);
    }

    @Test
    void undecidedWithFewFailures_saysHowManyWouldTell() {
        // 4 of 1,000 failed: 3.841459 * 0.995 * 0.005 / 0.001^2 = 19111.3
        TargetTest test = held(0.995, 1000, 4);

        assertThat(test.answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(test.resolution().toDecide()).contains(19_112L);
    }

    @Test
    void failuresThatComeInBunchesTakeMoreCoilChangesToTell() {
        // Four failures, all in one of ten replications of 100: shares nine times 1 and once 0.96, variance 0.04^2 / 10
        // =
        // 1.6e-4 over 0.996 * 0.004 / 999 * 10 = 3.98799e-5, a factor of 4.012048; times 19111.3, as for single
        // failures;
        // times 1.332138, the square of Student's t with 9 degrees of freedom over the normal deviate, for a factor
        // that
        // is known from ten replications only.
        long[] trials = new long[10];
        Arrays.fill(trials, 100);
        long[] successes = trials.clone();
        successes[6] = 96;
        TargetTest test = new TargetTest(0.995, Estimators.share(successes, trials), 1000, 4, true);

        assertThat(test.resolution().toDecide().orElseThrow()).isBetween(102_141L, 102_144L);
    }

    @Test
    void nothingRanThroughAtAll_stillUndecidedWhileTooFew() {
        // 0 of 3: high end z^2 / (3 + z^2) = 0.5615; 3.841459 * 0.5 * 0.5 / 0.5^2 = 3.84
        TargetTest test = new TargetTest(0.5, Estimators.share(new long[] {0}, new long[] {3}), 3, 3, true);

        assertThat(test.answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(test.resolution().toDecide()).contains(4L);
    }

    @Test
    void undecidedByStudentsInterval_moreReplicationsNarrowIt() {
        // Shares 0.82, 0.86, 0.93 of 100: mean 0.87, sd 0.0556776, half width 4.302653 * 0.0556776 / sqrt 3 =
        // 0.1383111, cut to
        // 0.13 by the upper end of 1. To reach from 0.87 to 0.9 it takes (0.13 / 0.03)^2 = 18.78 times the 300 coil
        // changes.
        Estimate share = Estimators.share(new long[] {82, 86, 93}, new long[] {100, 100, 100});
        TargetTest test = new TargetTest(0.9, share, 300, 39, true);

        assertThat(test.answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(test.resolution().toDecide()).contains(5634L);
    }

    @Test
    void aShareEqualToTheTargetIsNeverDistinguishedFromIt() {
        TargetTest test = held(0.995, 1000, 5);

        assertThat(test.answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(test.resolution().toDecide()).isEmpty();
    }

    @Test
    void decidedAnswersNeedNoMoreCoilChanges() {
        assertThat(held(0.995, 10_000, 0).resolution().toDecide()).isEmpty();
    }

    @Test
    void aTargetOfOneIsMissedByOneFailure() {
        // Rule REPORT-16.
        assertThat(held(1, 100_000, 1).answer()).isEqualTo(TargetStatus.MISSES);
    }

    @Test
    void aTargetOfOneCannotBeShownMetByAnyNumberWhereChancePlays() {
        TargetTest test = held(1, 100_000, 0);

        assertThat(test.answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(test.resolution().leastToShow()).isEmpty();
        assertThat(test.resolution().toDecide()).isEmpty();
    }

    @Test
    void withNothingRandomTheShareIsExact() {
        // Rule REPORT-16.
        Estimate all = Estimators.share(new long[] {5}, new long[] {5});
        Estimate most = Estimators.share(new long[] {4}, new long[] {5});

        assertThat(new TargetTest(1, all, 5, 0, false).answer()).isEqualTo(TargetStatus.MEETS);
        assertThat(new TargetTest(0.8, most, 5, 1, false).answer()).isEqualTo(TargetStatus.MEETS);
        assertThat(new TargetTest(0.81, most, 5, 1, false).answer()).isEqualTo(TargetStatus.MISSES);
        assertThat(new TargetTest(0.81, most, 5, 1, false).resolution())
                .isEqualTo(new Verdict.Resolution(Optional.empty(), Optional.empty()));
    }

    @Test
    void studentsIntervalSaysHowManyMoreWouldTell_onEitherSideOfTheTarget() {
        // Shares 0.4, 0.5, 0.6: half width 0.248414, see EstimatorsTest; 300 x (0.248414/0.1)^2 = 1851.3.
        assertThat(middling(0.6).resolution().toDecide()).contains(1852L);
        assertThat(middling(0.4).resolution().toDecide()).contains(1852L);
        assertThat(middling(0.5).answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(middling(0.5).resolution().toDecide()).isEmpty();
    }

    private static TargetTest middling(double target) {
        Estimate share = Estimators.share(new long[] {40, 50, 60}, new long[] {100, 100, 100});
        return new TargetTest(target, share, 300, 150, true);
    }

    @Test
    void anIntervalThatEndsAtTheTargetShowsItMet_oneThatBeginsThereDoesNotShowItMissed() {
        Estimate share = middling(0.5).share();

        assertThat(middling(share.interval().orElseThrow().low()).answer()).isEqualTo(TargetStatus.MEETS);
        assertThat(middling(share.interval().orElseThrow().high()).answer()).isEqualTo(TargetStatus.UNDECIDED);
    }

    @Test
    void aGoalIsReachedByWhatItAsksFor() {
        assertThat(Goal.runThrough(0.9).isReachedBy(Outcome.RAN_THROUGH)).isTrue();
        assertThat(Goal.runThrough(0.9).isReachedBy(Outcome.SLOWED)).isFalse();
        assertThat(Goal.withoutStop(0.9).isReachedBy(Outcome.SLOWED)).isTrue();
        assertThat(Goal.withoutStop(0.9).isReachedBy(Outcome.STOPPED)).isFalse();
    }

    @Test
    void aGoalIsSeenMetWhenAsManyAsAskedForReachIt() {
        assertThat(Goal.runThrough(0.9).isSeenMet(MadeUp.random(90, 100, 1))).isTrue();
        assertThat(Goal.runThrough(0.9).isSeenMet(MadeUp.random(89, 100, 1))).isFalse();
        assertThat(Goal.withoutStop(0.9).reached(MadeUp.random(90, 100, 2))).isEqualTo(180);
        assertThat(Goal.withoutStop(0.9).share(MadeUp.random(90, 100, 1)).mean())
                .isEqualTo(0.9);
    }

    /** Ten replications with the failures spread as evenly as can be. */
    private static TargetTest held(double target, int trials, int failures) {
        long[] all = new long[10];
        Arrays.fill(all, trials / 10);
        all[0] += trials % 10;
        long[] successes = all.clone();
        for (int i = 0; i < failures; i++) {
            successes[i % 10]--;
        }
        return new TargetTest(target, Estimators.share(successes, all), trials, failures, true);
    }
}
