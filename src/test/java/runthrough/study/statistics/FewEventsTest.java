package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rule REPORT-17. */
class FewEventsTest {
    private static final double NO_END = Double.POSITIVE_INFINITY;

    /** Counts in ten replications of 100 trials, each event with an effect of {@code size}. */
    private static EventPart equal(double size, long... events) {
        long[] trials = new long[events.length];
        Arrays.fill(trials, 100);
        double[] effects =
                Arrays.stream(events).mapToDouble(number -> size * number).toArray();
        return EventPart.ofTrials(events, trials, effects, 7);
    }

    @Test
    void aRateOfIndependentEventsHasTheLimitsOfAPoissonCount() {
        // Ten events, one in each of ten exposures: no spread beyond chance. Limits of a Poisson count of 10 (E. S.
        // Pearson
        // and H. O. Hartley, Biometrika Tables for Statisticians, table 40, from memory): 4.80 and 18.39.
        long[] events = new long[10];
        double[] exposures = new double[10];
        Arrays.fill(events, 1);
        Arrays.fill(exposures, 1);
        Interval interval = Estimators.rate(events, exposures).interval().orElseThrow();

        assertThat(interval.method()).isEqualTo(Interval.Method.FEW_EVENTS);
        assertThat(interval.low()).isCloseTo(0.480, within(5e-4));
        assertThat(interval.high()).isCloseTo(1.839, within(5e-4));
    }

    @Test
    void effectsThatVaryAreWorthFewerEvents() {
        // Counts 1, 1, 1, 1 of 4 x 100 trials: no spread; least dispersion 1 - 4/400 = 0.99. Effects 1, 3, 1, 3: mean
        // 2,
        // squares of the excesses 4, divided by N - sum n_i^2/N = 3: variance 4/3, c^2 = 1/3; with one event of c^2 = 1
        // among
        // the four: (3/3 + 1)/4 = 1/2. n = 4/(0.99 + 0.5) = 2.684564.
        long[] trials = {100, 100, 100, 100};
        EventPart part = EventPart.ofTrials(new long[] {1, 1, 1, 1}, trials, new double[] {1, 3, 1, 3}, 0);

        assertThat(new FewEvents(0.95).equivalent(part)).isCloseTo(4 / 1.49, within(1e-12));
    }

    @Test
    void aSingleEventIsTakenToVaryAsMuchAsAnExponentialOne() {
        // Ten counts, one of them 1, expected 0.1 each: Pearson 9 x 0.1 + 0.9^2/0.1 = 9 over 9 degrees of freedom: f =
        // 1.
        // n = 1/(1 + 1).
        EventPart part = equal(5, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0);

        assertThat(new FewEvents(0.95).equivalent(part)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void eventsThatComeInBunchesCountForFewer() {
        // All 9 in one of ten: 9 x 0.9 + 8.1^2/0.9 = 81 over 9 degrees of freedom, f = 9, far beyond chance: times the
        // square of
        // 2.262157163/1.959963985 = 1.154183^2. The mean of their effects is that of one replication: c^2 = 1.
        EventPart part = equal(5, 0, 0, 0, 9, 0, 0, 0, 0, 0, 0);

        assertThat(new FewEvents(0.95).equivalent(part)).isCloseTo(9 / (9 * 1.154183 * 1.154183 + 1), within(1e-5));
    }

    @Test
    void whereNothingHappenedTheIntervalIsOneSided() {
        // Three events of an effect of 7 in one of ten replications: 3 x 7/10.
        EventPart part = equal(5, new long[10]);
        Estimate estimate = new SplitValues(new double[10], List.of(part)).mean(0, NO_END);

        assertThat(estimate.interval()).contains(new Interval(0, 2.1, Interval.Method.RULE_OF_THREE));
    }

    @Test
    void whatEventsMayTakeLiesBelowAValueThatNothingElseMoves() {
        // An output of 2 m/s that is never less; 3 events in 1000 trials might take 0.7 m/s each from one of ten
        // replications.
        double[] output = new double[10];
        Arrays.fill(output, 2);
        EventPart part =
                EventPart.ofTrials(new long[10], new long[] {9, 9, 9, 9, 9, 9, 9, 9, 9, 9}, new double[10], -0.7);
        Interval interval =
                new SplitValues(output, List.of(part)).mean(0, 2).interval().orElseThrow();

        assertThat(interval.low()).isCloseTo(2 - 0.21, within(1e-12));
        assertThat(interval.high()).isEqualTo(2);
        assertThat(interval.method()).isEqualTo(Interval.Method.FEW_EVENTS);
    }

    @Test
    void anIntervalStaysWithinWhatIsPossible() {
        EventPart part = equal(-0.4, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0);
        double[] output =
                DoubleStream.of(part.effects()).map(effect -> 1 + effect).toArray();
        Interval interval =
                new SplitValues(output, List.of(part)).mean(0.9, 1).interval().orElseThrow();

        assertThat(interval.low()).isEqualTo(0.9);
        assertThat(interval.high()).isLessThan(1);
    }

    @Test
    void theUpperLimitAllowsForOneMoreOfTheLargestEffect() {
        // Rule REPORT-17. One event in each of ten replications, nine of effect 1 and one of 31: mean 4, c^2 among ten
        // 5.625, with one more of 1 (9 x 5.625 + 1)/10 = 5.1625; f = 0.99; n = 10/6.1525. w = 31/40, more than 1/n.
        // The quantile 0.975 of a gamma distribution of mean 1.775 and variance 1/n + w^2 = 1.2159 is 4.49780 (worked
        // out
        // elsewhere).
        long[] once = new long[10];
        long[] trials = new long[10];
        double[] effects = new double[10];
        Arrays.fill(once, 1);
        Arrays.fill(trials, 100);
        Arrays.fill(effects, 1);
        effects[3] = 31;
        EventPart part = EventPart.ofTrials(once, trials, effects, 0);

        assertThat(new FewEvents(0.95).equivalent(part)).isCloseTo(10 / 6.1525, within(1e-9));
        assertThat(new FewEvents(0.95).limits(part).high()).isCloseTo(17.9912, within(1e-3));
    }

    @Test
    void fewAreLessThanThirty() {
        // Rule REPORT-17. Three in each of ten exposures, or nearly: no spread beyond chance, f = 1, and the events are
        // equal, c^2 = 0. n is their number, 29 or 30.
        double[] exposures = new double[10];
        Arrays.fill(exposures, 1);

        assertThat(Estimators.rate(new long[] {3, 3, 3, 3, 3, 3, 3, 3, 3, 2}, exposures)
                        .interval()
                        .orElseThrow()
                        .method())
                .isEqualTo(Interval.Method.FEW_EVENTS);
        assertThat(Estimators.rate(new long[] {3, 3, 3, 3, 3, 3, 3, 3, 4, 2}, exposures)
                        .interval()
                        .orElseThrow()
                        .method())
                .isEqualTo(Interval.Method.STUDENT_T);
    }

    @Test
    void manyEventsAreLeftToStudentsT() {
        EventPart part = equal(1, 20, 22, 18, 25, 15, 20, 21, 19, 24, 16);
        Estimate estimate = new SplitValues(part.effects(), List.of(part)).mean(0, NO_END);

        assertThat(estimate).isEqualTo(Estimators.amount(part.effects()));
    }

    @Test
    void whereEveryTrialIsAnEventTheirNumberIsCertain() {
        // As without an accumulator, where every coil change stops: few events, but none that might not have been.
        EventPart part = EventPart.ofTrials(new long[] {4, 4, 4}, new long[] {4, 4, 4}, new double[] {1, 1.1, 1.2}, 1);
        Estimate estimate = new SplitValues(new double[] {1, 1.1, 1.2}, List.of(part)).mean(0, NO_END);

        assertThat(estimate.interval().orElseThrow().high()).isLessThan(2);
    }

    @Test
    void aSingleReplicationWithMoreThanItsEventsHasNoInterval() {
        EventPart part = EventPart.ofTrials(new long[] {2}, new long[] {100}, new double[] {-0.1}, 0);

        assertThat(new SplitValues(new double[] {0.9}, List.of(part)).mean(0, 1).interval())
                .isEqualTo(Optional.empty());
    }

    /**
     * Over 1,000 seeds the standard error of a coverage of 95 % is 0.7 %; three of them are allowed. Student's t held the truth in
     * some 86 % of the first and 88 % of the last.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 20, 0.01, 0, 1",
        "50, 200, 0.0005, 0, 1",
        "50, 200, 0.001, 0, 1",
        "50, 200, 0.001, 1, 1",
        "10, 20, 0.05, 1, 1",
        "20, 100, 0.01, 1, 1",
        "5, 40, 0.5, 0, 1",
        "20, 100, 0.01, 0, 2",
        "20, 100, 0.01, 1, 4"
    })
    void ofManyIntervals95PercentHoldTheTruth(
            int replications, int trials, double chance, double variation, int bunch) {
        int held = 0;
        int seeds = 1000;
        for (int seed = 0; seed < seeds; seed++) {
            EventPart part = drawn(replications, trials, chance, variation, bunch, new SplittableRandom(seed));
            held += new SplitValues(part.effects(), List.of(part))
                            .mean(0, NO_END)
                            .interval()
                            .orElseThrow()
                            .contains(chance)
                    ? 1
                    : 0;
        }
        assertThat(held / (double) seeds).isGreaterThan(0.95 - 3 * 0.0069);
    }

    /** Events with effects of mean 1, equal (variation 0) or exponential (1), by trial; in one of {@code bunch} replications only. */
    private static EventPart drawn(
            int replications, int trials, double chance, double variation, int bunch, SplittableRandom random) {
        long[] events = new long[replications];
        long[] all = new long[replications];
        double[] effects = new double[replications];
        Arrays.fill(all, trials);
        for (int i = 0; i < replications; i++) {
            double here = random.nextInt(bunch) == 0 ? bunch * chance : 0;
            for (int k = 0; k < trials; k++) {
                if (random.nextDouble() < here) {
                    events[i]++;
                    effects[i] += (1 - variation - variation * Math.log(1 - random.nextDouble())) / trials;
                }
            }
        }
        return EventPart.ofTrials(events, all, effects, 1.0 / trials);
    }
}
