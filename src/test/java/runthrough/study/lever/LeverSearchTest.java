package runthrough.study.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import runthrough.plant.Line;
import runthrough.simulation.PlainLine;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.search.Crossing;
import runthrough.study.search.Crossing.Found;
import runthrough.study.search.Crossing.Harder;
import runthrough.study.search.MadeUp;
import runthrough.study.search.Scale;

/** Where along a lever a target is met, of lines made up: with some capacities all coil changes run through, with others none. */
class LeverSearchTest {
    private static final Goal GOAL = Goal.runThrough(0.9);
    private static final double PRESENT = 500;
    private static final double STEP = 7;
    private static final double LARGEST = 10_000;
    private static final Varied CAPACITY = new Varied(
            Lever.of(Lever.What.CAPACITY),
            line(PRESENT),
            PRESENT,
            false,
            new Scale(Harder.SMALLER, 0, LARGEST, STEP, PRESENT),
            LeverSearchTest::line);
    private static final LeverSearch.Endurance NOT_ASKED = (goal, line, seen) -> {
        throw new AssertionError("less than there is has nothing to show");
    };

    private final List<Double> tried = new ArrayList<>();

    private static Line line(double capacity) {
        return new PlainLine().capacity(capacity).build();
    }

    private static Evaluation seen(boolean isGood) {
        return MadeUp.certain(isGood ? 10 : 0, 10);
    }

    private LineTrials where(DoublePredicate good) {
        return line -> {
            double capacity = line.accumulator().capacity();
            tried.add(capacity);
            return Optional.of(seen(good.test(capacity)));
        };
    }

    private Crossing found(DoublePredicate good, LeverSearch.Endurance endurance) {
        return new LeverSearch(CAPACITY, where(good), Optional.empty(), endurance).find(GOAL, PRESENT);
    }

    private static boolean isBetween(double low, double value, double high) {
        return value >= low && value <= high;
    }

    @Test
    void theSmallestThatIsEnoughAnswers() {
        Crossing crossing = found(capacity -> capacity >= 700, (goal, line, seen) -> true);

        assertThat(crossing.answer()).hasValue(700);
        assertThat(crossing.missed()).hasValue(693);
    }

    /** As where a crew has to refill it first. */
    @Test
    void whereMoreIsWorseWhatIsNearThePresentIsTried_inWholeSteps() {
        Crossing crossing = found(capacity -> isBetween(238, capacity, 400), NOT_ASKED);

        assertThat(crossing.answer()).hasValue(238);
        assertThat(tried)
                .filteredOn(capacity -> capacity != PRESENT && capacity != LARGEST)
                .allSatisfy(
                        capacity -> assertThat(capacity / STEP).isCloseTo(Math.rint(capacity / STEP), within(1e-9)));
    }

    @Test
    void whatThereIsIsTriedAsItIs() {
        assertThat(found(capacity -> isBetween(496, capacity, 504), NOT_ASKED).value())
                .isNotEmpty();
    }

    @Test
    void whereNothingIsEnoughNothingAnswers() {
        Crossing crossing = found(capacity -> false, NOT_ASKED);

        assertThat(crossing.answer()).isEmpty();
        assertThat(crossing.found()).isEqualTo(Found.MISSED_THROUGHOUT);
    }

    @Test
    void moreThanThereIsThatDoesNotLastGivesWayToLessThatDoes_orToNothing() {
        LeverSearch.Endurance ofSmallOnes =
                (goal, line, seen) -> line.accumulator().capacity() < 700;

        assertThat(found(capacity -> capacity >= 700 || isBetween(343, capacity, 360), ofSmallOnes)
                        .answer())
                .hasValue(343);
        Crossing none = found(capacity -> capacity >= 700, ofSmallOnes);
        assertThat(none.answered()).isEqualTo(Found.MISSED_THROUGHOUT);
        assertThat(none.value()).isEmpty();
    }

    /** Begun where fewer replications have it, it ends at once; begun far away it tries more. */
    @Test
    void aQuickSearchFirstSparesTrials() {
        DoublePredicate good = capacity -> capacity >= 4900;
        found(good, (goal, line, seen) -> true);
        int without = tried.size();
        tried.clear();
        Crossing crossing = new LeverSearch(
                        CAPACITY,
                        where(good),
                        Optional.of(line ->
                                Optional.of(seen(good.test(line.accumulator().capacity())))),
                        (goal, line, seen) -> true)
                .find(GOAL, PRESENT);

        assertThat(crossing.answer()).hasValue(4900);
        assertThat(tried).hasSizeLessThan(without);
    }

    /** Of another lever what there is may do where the easiest does not, and nothing else is tried, nor does it have to last. */
    @Test
    void ofAnotherLeverWhatThereIsMayDo() {
        Varied speed = new Varied(
                Lever.of(Lever.What.PROCESS_SPEED),
                line(PRESENT),
                PRESENT,
                false,
                new Scale(Harder.LARGER, 7, LARGEST, STEP, PRESENT),
                value -> line(PRESENT).withRatedSpeedsTimes(value / PRESENT));

        assertThat(new LeverSearch(speed, atSpeeds(400, 595), Optional.empty(), NOT_ASKED)
                        .find(GOAL, PRESENT)
                        .answer())
                .hasValue(595);
        assertThat(new LeverSearch(speed, atSpeeds(240, 260), Optional.empty(), NOT_ASKED)
                        .find(GOAL, PRESENT)
                        .answer())
                .isEmpty();
    }

    private static LineTrials atSpeeds(double low, double high) {
        double now = line(PRESENT).fastestRatedSpeed();
        return line -> Optional.of(seen(isBetween(low, Math.rint(line.fastestRatedSpeed() / now * PRESENT), high)));
    }
}
