package runthrough.report.lever;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.quantity.UnitSystem;
import runthrough.study.Goal;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.search.Crossing;

/** What is said of a single lever. */
class LeverWordsTest {
    private static LeverAnswer joint(double value, double low, double high) {
        Crossing crossing = new Crossing(
                Crossing.Found.CROSSED,
                Crossing.Harder.LARGER,
                -100,
                100,
                OptionalDouble.of(value),
                OptionalDouble.of(low),
                OptionalDouble.of(high),
                OptionalDouble.of(high + 1),
                1e-3,
                20,
                0,
                true);
        return new LeverAnswer(
                Lever.of(Lever.What.JOINT_CYCLE_TIME),
                Goal.runThrough(0.99),
                LeverAnswer.Status.ENOUGH,
                0,
                OptionalDouble.empty(),
                Optional.of(crossing),
                Optional.empty());
    }

    /** What comes off has no sign: an interval from what comes off to what may be added says so. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        -6 | -9 | -2  | 9 s off every pass of the join work (95 % interval 2 to 9 s)
         5 |  3 |  7  | 3 s more on every pass of the join work (95 % interval 3 to 7 s)
        -1 | -9 |  7  | 9 s off every pass of the join work (95 % interval 9 s off to 7 s more)
        """)
    void theIntervalOfATimeSaysWhichSideItsEndsAreOn(double value, double low, double high, String words) {
        assertThat(new LeverWords(UnitSystem.METRIC, false).sentence(joint(value, low, high)))
                .isEqualTo(words);
    }

    /** Where people come in shifts the number is that of the largest. */
    @Test
    void aCrewOfShiftsIsThatOfTheLargest() {
        Lever crew = Lever.of(Lever.What.CREW);

        assertThat(new LeverWords(UnitSystem.METRIC, false).change(crew, 3, 4)).isEqualTo("a crew of 4, instead of 3");
        assertThat(new LeverWords(UnitSystem.METRIC, true).change(crew, 3, 4))
                .isEqualTo("a crew of 4, instead of 3 in the largest shift, and as many more in every other");
    }
}
