package runthrough.study.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.study.Goal;
import runthrough.study.search.Crossing.Found;
import runthrough.study.search.Crossing.Harder;
import runthrough.study.search.Trials.Question;

/** Which values a search tries. */
class ScaleTest {
    /** From 0 to 10 in whole numbers. */
    private static final Scale WHOLE = new Scale(Harder.SMALLER, 0, 10, 1, 0);

    /** Values that are no multiples of the step lie at the ends of the range only. */
    @ParameterizedTest
    @CsvSource({
        "4.4, 2, 8, 4",
        "4.6, 2, 8, 5",
        "7.9, 2, 8, 7",
        "2.2, 2, 8, 3",
        "2.9, 2.5, 8, 3",
        "2.6, 2.5, 8, 3",
        "7.4, 2, 7.4, 7",
        "-3, -9, 8, 0",
        "15, 2, 30, 10"
    })
    void theNearestStepBetweenTheBadAndTheGoodIsTried(double wanted, double bad, double good, double tried) {
        assertThat(WHOLE.within(wanted, bad, good)).isEqualTo(tried);
    }

    @ParameterizedTest
    @CsvSource({"3, 2, true", "4, 2, false", "3.5, 3, true", "3.5, 2, false", "3.0000001, 2, true", "3, 1.9999999, true"
    })
    void neighboursHaveNoStepBetweenThem_butForRounding(double good, double bad, boolean neighbours) {
        assertThat(WHOLE.areNeighbours(good, bad)).isEqualTo(neighbours);
    }

    @Test
    void aDistanceIsRelativeToTheValue_orToTheReferenceWhereThatIsMore() {
        Scale scale = new Scale(Harder.SMALLER, 0, 1000, 1, 50);

        assertThat(scale.distance(100, 90)).isCloseTo(0.1, within(1e-12));
        assertThat(scale.distance(-100, -90)).isCloseTo(0.1, within(1e-12));
        assertThat(scale.distance(10, 5)).isCloseTo(0.1, within(1e-12));
        assertThat(scale.firstStep(0.1, 200)).isCloseTo(20, within(1e-12));
        assertThat(scale.firstStep(0.1, 3)).isCloseTo(5, within(1e-12));
        assertThat(scale.firstStep(0.001, 200)).isEqualTo(1);
    }

    @Test
    void aRangeOfOneValueIsSearched() {
        Scale one = new Scale(Harder.LARGER, 3, 3, 1, 0);
        Crossing crossing = new TargetSearch(value -> Optional.of(MadeUp.certain(10, 10)), 0.9, one)
                .from(TargetSearch.Guess.about(3));

        assertThat(crossing.value()).hasValue(3);
        assertThat(crossing.evaluations()).isEqualTo(1);
    }

    /** Shares 0.2 at 0 and 1 at 10: 0.9 lies 7/8 of the way; 0.21 of the way is nearer to the end than is of use. */
    @Test
    void theSlopeLeadsToTheTarget() {
        assertThat(part(0.9, 0.2)).isCloseTo(0.875, within(1e-9));
        assertThat(part(0.6, 0.2)).isCloseTo(0.5, within(1e-9));
        assertThat(part(0.999, 0.2)).isLessThan(0.95);
        assertThat(part(0.201, 0.2)).isGreaterThan(0.05);
        // Refused: nothing is known of its share.
        assertThat(part(0.9, -1)).isEqualTo(0.5);
    }

    private static double part(double target, double atZero) {
        Trials trials = new Trials(
                ease -> ease == 0 && atZero < 0
                        ? Optional.empty()
                        : Optional.of(MadeUp.certain(ease == 0 ? (int) (1000 * atZero) : 1000, 1000)),
                Goal.runThrough(target));
        trials.isGood(Question.SEEN, 0);
        trials.isGood(Question.SEEN, 10);
        return trials.partToTarget(Question.SEEN, 0, 10);
    }

    @Test
    void aRunTooShortToShowTheTargetIsAnsweredByTheShareSeen() {
        // Rule LEVER-2. Wilson: 20 of 20 show 83.9 %, 100 of 100 show 96.3 %.
        assertThat(crossing(20, 0.9).answer()).isEqualTo(crossing(20, 0.9).value());
        assertThat(crossing(20, 0.9).canBeShown()).isFalse();
        assertThat(crossing(100, 0.9).answer()).isEqualTo(crossing(100, 0.9).sure());
        assertThat(crossing(100, 0.9).canBeShown()).isTrue();
        assertThat(crossing(100, 0.9).answered()).isEqualTo(Found.CROSSED);
    }

    /** Wilson: 94 of 100 show 87.5 %. */
    @Test
    void whatIsSeenEverywhereAndShownNowhereCountsAsMissed() {
        Crossing crossing = new TargetSearch(
                        value -> Optional.of(MadeUp.random(94, 100, 1)), 0.9, new Scale(Harder.SMALLER, 0, 10, 1, 0))
                .from(TargetSearch.Guess.about(5));

        assertThat(crossing.found()).isEqualTo(Found.MET_THROUGHOUT);
        assertThat(crossing.answer()).isEqualTo(OptionalDouble.empty());
        assertThat(crossing.answered()).isEqualTo(Found.MISSED_THROUGHOUT);
    }

    private static Crossing crossing(int changes, double target) {
        return new TargetSearch(
                        value -> Optional.of(MadeUp.random(value >= 5 ? changes : changes / 2, changes, 1)),
                        target,
                        new Scale(Harder.SMALLER, 0, 10, 1, 0))
                .from(TargetSearch.Guess.about(4));
    }

    /** The share is the value itself, in thousandths. The numbers of trials are pinned against change: more take longer. */
    @ParameterizedTest
    @CsvSource({"0.5, 9", "0.89, 5", "0.97, 7", "0.1, 13"})
    void theBetterTheGuessTheFewerTheTrials(double guess, int most) {
        Crossing crossing = new TargetSearch(
                        value -> Optional.of(MadeUp.certain((int) Math.round(1000 * value), 1000)),
                        0.9,
                        new Scale(Harder.SMALLER, 0, 1, 0.001, 0))
                .from(TargetSearch.Guess.about(guess));

        assertThat(crossing.value().orElseThrow()).isCloseTo(0.9, within(1e-9));
        assertThat(crossing.evaluations()).isLessThanOrEqualTo(most);
    }

    /**
     * Of 1,000 coil changes: guesses at the ends of the interval cost few trials, also where all three are off by as much.
     * Their numbers are pinned against change.
     */
    @ParameterizedTest
    @CsvSource({"0, true, 9", "0.01, true, 13", "0.01, false, 13"})
    void guessesAtTheEndsOfTheIntervalMoveWithTheValue(double off, boolean isNear, int most) {
        Crossing crossing = new TargetSearch(
                        value -> Optional.of(MadeUp.random((int) Math.round(1000 * value), 1000, 1)),
                        0.9,
                        new Scale(Harder.SMALLER, 0, 1, 0.001, 0))
                .from(new TargetSearch.Guess(0.9 + off, 0.917 + off, 0.88 + off, isNear));

        assertThat(crossing.value().orElseThrow()).isCloseTo(0.9, within(1e-9));
        assertThat(crossing.evaluations()).isLessThanOrEqualTo(most);
    }

    @Test
    void thePrecisionIsTheDistanceToTheNextValueThatWasTried() {
        Crossing crossing = new TargetSearch(value -> Optional.of(MadeUp.certain(value >= 7 ? 10 : 0, 10)), 0.9, WHOLE)
                .from(TargetSearch.Guess.about(3));

        assertThat(crossing.precision()).isCloseTo(1 / 7.0, within(1e-12));
    }

    @Test
    void roughlyIsWhereTheShareSeenMeetsTheTarget_orTheGuessWhereItDoesNowhere() {
        assertThat(new TargetSearch(value -> Optional.of(MadeUp.certain(value >= 7 ? 10 : 0, 10)), 0.9, WHOLE)
                        .roughly(3))
                .isEqualTo(7);
        assertThat(new TargetSearch(value -> Optional.of(MadeUp.certain(0, 10)), 0.9, WHOLE).roughly(3))
                .isEqualTo(3);
    }
}
