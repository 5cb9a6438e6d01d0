package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.report.Headline;
import runthrough.simulation.PlainLine;

/**
 * What is said of a line that may slow: three words, two targets, and no two figures that contradict each other. Process 1.5 m/s,
 * slowed 1 m/s; speeds change at once; coils of 5,000 m, so that the accumulator is always full again.
 *
 * <p>Rule REPORT-19.
 */
class SlowingWordsTest {

    private static PlainLine line() {
        return new PlainLine().coils(PlainLine.coil(5000));
    }

    private static RunThroughResult result(Line line, double target, OptionalDouble withoutStop) {
        RunPlan plan =
                new RunPlan(new RunPlan.Extent.Changes(200), 0, 10, 3, target).withTargetWithoutStop(withoutStop);
        return Invented.result(new SimulationRequest("Line (invented)", List.of(), line, plan, UnitSystem.METRIC));
    }

    /** 150 m, slowing at 50 m: joints above 66.7 s slow, which is half of them, and joints above 116.7 s stop, 1.3 %. */
    private static final Line HALF_SLOW = line().capacity(150)
            .slowing(1, 50, 100)
            .join(Distribution.uniform(16, 118))
            .build();

    @Test
    void aLineThatSlowsAtHalfItsChangesAndStopsAtAFewSlows() {
        Headline headline = VerdictHeadline.of(result(HALF_SLOW, 0.99, OptionalDouble.empty()));

        assertThat(headline.word()).isEqualTo("SLOWS");
        assertThat(headline.sentence()).startsWith("at about ").contains(" and stops at about 1 in ");
    }

    @Test
    void aLineThatStopsAtAsManyChangesAsItSlowsStops() {
        // 90 s slow it, and 60 s more at every second coil change stop it.
        Line half = line().capacity(150)
                .slowing(1, 50, 100)
                .join(90)
                .join(PlainLine.every(2, 60))
                .build();
        RunThroughResult result = result(half, 0.99, OptionalDouble.empty());

        assertThat(result.verdict().changes().stopped())
                .isPositive()
                .isEqualTo(result.verdict().changes().slowed());
        assertThat(VerdictHeadline.of(result).word()).isEqualTo("STOPS");
    }

    @Test
    void whereATargetWithoutAStopIsMissedItStops_whereItIsMetItSlows() {
        assertThat(VerdictHeadline.of(result(HALF_SLOW, 0.99, OptionalDouble.of(0.9999)))
                        .word())
                .isEqualTo("STOPS");
        assertThat(VerdictHeadline.of(result(HALF_SLOW, 0.99, OptionalDouble.of(0.9)))
                        .word())
                .isEqualTo("SLOWS");
    }

    /** 150 m and nothing that slows: joints above 100 s stop, which is 18 in 102. */
    @Test
    void whatNeverSlowsStops_alsoWhereThatIsSeldomEnough() {
        Line line = line().capacity(150).join(Distribution.uniform(16, 118)).build();
        Headline headline = VerdictHeadline.of(result(line, 0.99, OptionalDouble.of(0.5)));

        assertThat(headline.word()).isEqualTo("STOPS");
        assertThat(headline.sentence()).startsWith("at about ").doesNotContain(" and slows ");
    }

    /** Half its coil changes slow it, which is allowed; 1.3 % stop it, of which one in ten thousand is allowed. */
    @Test
    void aMissedTargetWithoutAStopIsNamedWhereTheOtherIsMet() {
        RunThroughResult result = result(HALF_SLOW, 0.4, OptionalDouble.of(0.9999));

        assertThat(VerdictHeadline.of(result).word()).isEqualTo("RUNS THROUGH");
        assertThat(VerdictHeadline.of(result).sentence())
                .endsWith("go without a stop, and the target of 99.99 % is missed.");
        assertThat(result.verdict().meetsAll()).isFalse();
        assertThat(new Diagnosis(result).remedies())
                .singleElement()
                .asString()
                .contains("the target without a stop is not met");
    }

    @Test
    void marginAndShortfallSayForWhichTargetTheyAre() {
        // 90 s take 135 m of 150 m: 35 m below the level of 50 m at which it slows. It slows after 66.7 s and draws
        // 23.3 m in the
        // 23.3 s that are left: 26.67 m remain. Margins are rounded down.
        RunThroughResult result =
                result(line().capacity(150).slowing(1, 50, 100).join(90).build(), 1, OptionalDouble.empty());

        assertThat(VerdictHeadline.of(result).word()).isEqualTo("SLOWS");
        assertThat(new Diagnosis(result).margin().orElseThrow())
                .startsWith("Shortfall at the target of 100 %: 35 m of strip, which is 23.4 s");
        assertThat(new VerdictFigures(result).all())
                .anySatisfy(figure -> {
                    assertThat(figure.name()).isEqualTo("shortfall at the target");
                    assertThat(figure.value().text()).isEqualTo("35 m");
                })
                .anySatisfy(figure -> {
                    assertThat(figure.name()).isEqualTo("margin without a stop");
                    assertThat(figure.value().text()).isEqualTo("26.6 m");
                });
        assertThat(row(result, "accumulator capacity, without slowing")).endsWith("-35 m");
        assertThat(row(result, "longest joint cycle time, without slowing")).endsWith("-23.4 s");
        // With 110 m it slows after 40 s, and the 50 s that are left draw the 50 m below: 40 m less would do.
        assertThat(row(result, "accumulator capacity, without a stop")).endsWith("40 m");
    }

    private static String row(RunThroughResult result, String name) {
        return new HandChapter(result)
                .limits().rows().stream()
                        .filter(row -> row.get(0).text().equals(name))
                        .map(row -> row.get(3).text())
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void whatAFullAccumulatorBearsIsWhatItBearsBeforeTheProcessSlows() {
        // 225 m of 300 m are drawn by 150 s; the process slows at 100 m, after 133.3 s.
        RunThroughResult result =
                result(line().capacity(300).slowing(1, 100, 200).join(150).build(), 1, OptionalDouble.empty());

        assertThat(new CoilTexts(result).why(0))
                .isEqualTo("The accumulator did not last: at 90 m/min it bears a joint of 2:13 min before the process"
                        + " slows, and the joint takes 2:30 min on average.");
    }

    @Test
    void aJointThatIsShorterOnAverageThanWhatIsBorneIsLongerAtTheChangesThatFail() {
        // 246 m bear 164 s; joints from 150 to 174 s take 162 s on average.
        RunThroughResult result =
                result(line().capacity(246).join(Distribution.uniform(150, 174)).build(), 0.99, OptionalDouble.empty());

        assertThat(new CoilTexts(result).why(0))
                .endsWith(
                        "it bears a joint of 2:44 min, and the joint takes 2:42 min on average and longer at the changes that"
                                + " failed.");
    }
}
