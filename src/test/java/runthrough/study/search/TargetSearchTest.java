package runthrough.study.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.search.Crossing.Found;
import runthrough.study.search.Crossing.Harder;
import runthrough.study.search.TargetSearch.Guess;
import runthrough.study.statistics.Wilson;

/** Searches of made-up lines whose share is known at every value. */
class TargetSearchTest {

    private final List<Double> tried = new ArrayList<>();

    /** A line without chance that runs through where {@code runs} says so. */
    private DoubleFunction<Optional<Evaluation>> certain(DoublePredicate runs) {
        return value -> {
            tried.add(value);
            return Optional.of(MadeUp.certain(runs.test(value) ? 10 : 0, 10));
        };
    }

    /** A line of 1,000 coil changes of which at {@code value} the share {@code value}, in [0, 1], runs through. */
    private static Optional<Evaluation> asTheShare(double value) {
        return Optional.of(MadeUp.random((int) Math.round(1000 * value), 1000, 1));
    }

    @ParameterizedTest
    @CsvSource({"80", "79.99", "100", "20", "150", "500", "0.5", "1000", "0.001"})
    void theSmallestGoodValueIsFound_whateverTheGuess(double guess) {
        Scale scale = new Scale(Harder.SMALLER, 0.001, 1000, 0.008, 0);
        Crossing crossing = new TargetSearch(certain(value -> value >= 80), 0.9, scale).from(Guess.about(guess));

        assertThat(crossing.found()).isEqualTo(Found.CROSSED);
        assertThat(crossing.value().orElseThrow()).isBetween(80.0, 80 * (1 + 1.01e-4));
        assertThat(crossing.missed().orElseThrow()).isBetween(80 * (1 - 1.01e-4), 80.0);
        assertThat(crossing.precision()).isLessThanOrEqualTo(1e-4);
        assertThat(crossing.sure()).isEqualTo(crossing.value());
        assertThat(crossing.possible()).isEqualTo(crossing.value());
        assertThat(crossing.evaluations()).isEqualTo(tried.size());
        assertThat(tried).doesNotHaveDuplicates().hasSizeLessThan(40);
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 2.9, 8, 0.1, 10})
    void theLargestGoodValueIsFoundWhereLargerIsHarder(double guess) {
        Scale scale = new Scale(Harder.LARGER, 0.1, 10, 3e-4, 0);
        Crossing crossing = new TargetSearch(certain(value -> value <= 3), 0.9, scale).from(Guess.about(guess));

        assertThat(crossing.value().orElseThrow()).isBetween(3 * (1 - 1.01e-4), 3.0);
        assertThat(crossing.missed().orElseThrow()).isBetween(3.0, 3 * (1 + 1.01e-4));
    }

    @Test
    void aGoodGuessCostsTwoTrials() {
        Scale scale = new Scale(Harder.SMALLER, 1, 1000, 0.2, 0);
        new TargetSearch(certain(value -> value >= 80), 0.9, scale).from(new Guess(80.01, 80.01, 80.01, true));

        assertThat(tried).hasSize(2);
    }

    @Test
    void goodThroughout_theHardEndIsTheValue() {
        Scale scale = new Scale(Harder.LARGER, 0, 10, 0.01, 0);
        Crossing crossing = new TargetSearch(certain(value -> true), 0.9, scale).from(Guess.about(5));

        assertThat(crossing.found()).isEqualTo(Found.MET_THROUGHOUT);
        assertThat(crossing.value()).hasValue(10);
        assertThat(crossing.missed()).isEmpty();
    }

    @Test
    void badThroughout_thereIsNoValue() {
        Scale scale = new Scale(Harder.LARGER, 0, 10, 0.01, 0);
        Crossing crossing = new TargetSearch(certain(value -> false), 0.9, scale).from(Guess.about(5));

        assertThat(crossing.found()).isEqualTo(Found.MISSED_THROUGHOUT);
        assertThat(crossing.value()).isEmpty();
        assertThat(crossing.sure()).isEmpty();
        assertThat(crossing.possible()).isEmpty();
        assertThat(tried).contains(0.0);
    }

    @Test
    void whatIsRefusedIsNotGoodEnough() {
        Scale scale = new Scale(Harder.LARGER, 0.1, 10, 3e-4, 0);
        DoubleFunction<Optional<Evaluation>> refusedBeyondThree =
                value -> value <= 3 ? Optional.of(MadeUp.certain(10, 10)) : Optional.empty();
        Crossing crossing = new TargetSearch(refusedBeyondThree, 0.9, scale).from(Guess.about(5));

        assertThat(crossing.value().orElseThrow()).isCloseTo(3, within(3e-4));
        assertThat(crossing.fall()).isZero();
    }

    @Test
    void aNumberThatIsZeroNowIsSearchedToAPartOfTheReference() {
        Scale scale = new Scale(Harder.LARGER, 0, 1000, 0.05, 50);
        Crossing crossing = new TargetSearch(certain(value -> value <= 0.5), 0.9, scale).from(Guess.about(0));

        // A step is 0.1 % of 50.
        assertThat(crossing.value().orElseThrow()).isBetween(0.45, 0.5);
    }

    @Test
    void theIntervalIsThatOfTheShareTurnedRound() {
        Scale scale = new Scale(Harder.SMALLER, 0.01, 1, 1e-4, 0);
        Crossing crossing = new TargetSearch(TargetSearchTest::asTheShare, 0.9, scale).from(Guess.about(0.5));

        // In steps of a thousandth: the share whose Wilson interval ends at the target, see WilsonTest for the
        // interval.
        double sure = Math.round(1000 * crossing.sure().orElseThrow()) / 1000.0;
        double possible = Math.round(1000 * crossing.possible().orElseThrow()) / 1000.0;
        assertThat(Wilson.interval(sure, 1000).low()).isGreaterThanOrEqualTo(0.9);
        assertThat(Wilson.interval(sure - 0.001, 1000).low()).isLessThan(0.9);
        assertThat(Wilson.interval(possible, 1000).high()).isGreaterThanOrEqualTo(0.9);
        assertThat(Wilson.interval(possible - 0.001, 1000).high()).isLessThan(0.9);
        assertThat(crossing.value().orElseThrow()).isCloseTo(0.9, within(6e-4));
        assertThat(crossing.low()).isEqualTo(crossing.possible());
        assertThat(crossing.high()).isEqualTo(crossing.sure());
    }

    @Test
    void aTargetBeyondTheRunIsNeverSure_andNoTrialIsSpentOnIt() {
        Scale scale = new Scale(Harder.SMALLER, 0.01, 1, 1e-3, 0);
        // Wilson: 1,000 of 1,000 show 99.62 %.
        Crossing crossing = new TargetSearch(TargetSearchTest::asTheShare, 0.999, scale).from(Guess.about(0.5));

        assertThat(crossing.value()).isPresent();
        assertThat(crossing.sure()).isEmpty();
        assertThat(crossing.high()).isEmpty();
        assertThat(crossing.possible().orElseThrow())
                .isLessThan(crossing.value().orElseThrow());
    }

    @Test
    void whereTheLineGetsWorseWhenItIsMadeEasier_noValueIsSaidThatWasNotSeenToBeGood() {
        // Good from 40 on, but for a hole from 42 to 48 in which only 8 of 10 run through.
        DoubleFunction<Optional<Evaluation>> holed =
                value -> Optional.of(MadeUp.certain(value < 40 ? 5 : value > 42 && value < 48 ? 8 : 10, 10));
        Scale scale = new Scale(Harder.SMALLER, 1, 100, 0.05, 0);

        // Which side of the hole is found depends on where the search begins.
        assertThat(new TargetSearch(holed, 0.9, scale)
                        .from(Guess.about(41.9))
                        .value()
                        .orElseThrow())
                .isCloseTo(40, within(0.05));
        assertThat(new TargetSearch(holed, 0.9, scale)
                        .from(Guess.about(47))
                        .value()
                        .orElseThrow())
                .isCloseTo(48, within(0.05));
    }

    @Test
    void theFallIsTheGreatestLossOnTheWayToEasierValues() {
        Trials trials = new Trials(
                ease -> Optional.of(MadeUp.certain(List.of(2, 6, 5, 9, 7).get((int) ease), 10)), Goal.runThrough(0.9));
        for (int ease = 0; ease < 5; ease++) {
            trials.isGood(Trials.Question.SEEN, ease);
        }

        assertThat(trials.fall()).isCloseTo(0.2, within(1e-12));
        assertThat(trials.hardestGood(Trials.Question.SEEN)).hasValue(3);
        assertThat(trials.easiestBad(Trials.Question.SEEN)).hasValue(2);
    }

    @Test
    void aScaleUpsideDownOrWithoutStepsIsRefused() {
        assertThatThrownBy(() -> new Scale(Harder.SMALLER, 2, 1, 1e-3, 0))
                .hasMessage("search from 2.0 to 1.0; must not be upside down");
        assertThatThrownBy(() -> new Scale(Harder.SMALLER, Double.NaN, 1, 1e-3, 0))
                .hasMessageContaining("must not be upside down");
        assertThatThrownBy(() -> new Scale(Harder.SMALLER, 1, 2, 0, 0)).hasMessage("step = 0.0; must be more than 0");
        assertThatThrownBy(() -> new Scale(Harder.SMALLER, 1, 2, 1e-3, Double.NaN))
                .hasMessage("reference = NaN; must be 0 or more");
    }
}
