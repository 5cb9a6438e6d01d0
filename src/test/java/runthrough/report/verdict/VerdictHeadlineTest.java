package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.builder.LineBuilder;
import runthrough.quantity.UnitSystem;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Texts;
import runthrough.study.Verdict;

class VerdictHeadlineTest {
    private static final Line SAFE = Invented.line(Distribution.lognormal(20, 2));
    private static final Line RISKY = Invented.line(Distribution.lognormal(36, 8));

    @Test
    void allRunThroughButTooFewToShowTheTargetIsMarginalAndSaysHowManyItTakes() {
        // Wilson's lower end after n successes is n / (n + 1.96^2): 99.99 % takes 9999 * 3.8415 = 38411 coil changes.
        Headline headline = headline(SAFE, 0.9999);
        assertThat(headline.tone()).isEqualTo(Tone.MARGINAL);
        assertThat(headline.sentence())
                .isEqualTo(
                        "No stop in 200 coil changes; target 1 in 10 000. At least 98.1 % run through with 95 % confidence; "
                                + "too few were run to show the target of 99.99 %.");
        assertThat(headline.further())
                .isEqualTo("200 coil changes were run; it takes at least 38 500 to show a share of 99.99 %.");
    }

    @Test
    void allRunThroughAndEnoughOfThemMeetsTheTarget() {
        Headline headline = headline(SAFE, 0.98);
        assertThat(headline.tone()).isEqualTo(Tone.RUNS_THROUGH);
        assertThat(headline.sentence()).endsWith("; this meets the target of 98 %.");
        assertThat(headline.further()).isEmpty();
    }

    @Test
    void targetInsideTheIntervalIsMarginalAndSaysHowManyWouldDecide() {
        RunThroughResult seen = Invented.result(Invented.request("x", RISKY, UnitSystem.METRIC, 0.5));
        double share = Math.round(seen.verdict().shareRunThrough().mean() * 1000) / 1000.0 + 0.002;
        Headline headline = headline(RISKY, share);
        assertThat(headline.tone()).isEqualTo(Tone.MARGINAL);
        assertThat(headline.sentence()).contains("the interval holds the target of");
        assertThat(headline.further()).contains("would decide, if the share stays what it is");
    }

    @Test
    void missedTargetStops() {
        Headline headline = headline(RISKY, 0.9999);
        assertThat(headline.tone()).isEqualTo(Tone.STOPS);
        assertThat(headline.sentence()).endsWith("; this misses the target of 99.99 %.");
    }

    @Test
    void oneStripStopsAtEveryChange() {
        Line line = Invented.withoutAccumulator();
        Headline headline = VerdictHeadline.of(Invented.result(line));
        assertThat(headline.tone()).isEqualTo(Tone.STOPS);
        // The strip stands for 73 s; the ramps cost V/(2 d) + V/(2 a) besides, as the closed form has it (FORM-10).
        assertThat(headline.sentence()).isEqualTo("Every coil change stops the process, and costs 76.4 s on average.");
        double lost = HandCalculation.of(line).standstill().orElseThrow().lostMetres();
        assertThat(lost / line.fastestRatedSpeed()).isCloseTo(76.4, within(0.05));
    }

    /** Replications of equal time have unlike numbers of coil changes, so that the mean of their shares is not the share of all. */
    @Test
    void howOftenIsWhatWasCounted_failuresOfAllCoilChanges() {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Time(6000), 0, 60, 7, 0.99);
        Line line = new LineBuilder()
                .coil("strip", 0.002, 0.25, 8000, Distribution.uniform(300, 1800))
                .entry(2, 0.5, 0.5)
                .uncoilers(2)
                .capacity(100)
                .process(1, 0.5, 0.5)
                .join("weld", Distribution.uniform(60, 100))
                .describe();
        SimulationRequest request = new SimulationRequest("x", List.of(), line, plan, UnitSystem.METRIC);
        RunThroughResult result = Invented.result(request);

        Verdict.Changes changes = result.verdict().changes();
        String counted = Texts.odds((double) changes.failed() / changes.total());
        assertThat(Texts.odds(1 - result.verdict().shareRunThrough().mean())).isNotEqualTo(counted);
        assertThat(VerdictHeadline.of(result).sentence()).contains("at about " + counted + " coil changes; target");
    }

    private static Headline headline(Line line, double target) {
        SimulationRequest request = Invented.request("x", line, UnitSystem.METRIC, target);
        return VerdictHeadline.of(Invented.result(request));
    }
}
