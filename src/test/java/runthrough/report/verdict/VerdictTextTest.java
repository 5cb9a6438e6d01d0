package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.report.write.TerminalWriter;

class VerdictTextTest {
    private static final int SCREEN = 24;

    static Stream<RunThroughResult> results() {
        return Stream.of(
                Invented.result(Invented.line(Distribution.constant(25))),
                Invented.result(Invented.line(Distribution.lognormal(32, 8))),
                Invented.result(Invented.rethread()),
                Invented.result(Invented.withoutAccumulator()),
                manyThings());
    }

    /** All that can lengthen a verdict at once: a long title, rejects, slow refill, stops of its own, warnings, feet. */
    private static RunThroughResult manyThings() {
        Line line = Invented.line("a", "b", Distribution.lognormal(30, 10), new Reject.Chance(0.1));
        ProcessSection process = new ProcessSection(
                new ProcessSection.Drive(0.75, 0.2, 0.25),
                new ProcessSection.Restart(Double.NaN, Distribution.triangular(60, 120, 300)),
                Optional.of(new ProcessSection.Slowing(0.4, 20, Double.NaN)),
                Optional.of(new ProcessSection.Downtime(Distribution.exponential(900), Distribution.exponential(100))),
                0,
                new ProcessSection.Scrap(5, 0),
                new ProcessSection.JointsInProcess(Optional.empty(), Optional.empty()));
        Line busy = new Line(
                line.coilSource(),
                new Entry(1, 0.8, 0.3, 0.4, Optional.empty(), 0),
                process,
                line.change(),
                line.practice(),
                Optional.empty());
        SimulationRequest request = new SimulationRequest(
                "A title that is much longer than a terminal is wide, since users write what they like into it",
                List.of(),
                busy,
                new RunPlan(new RunPlan.Extent.Time(8 * 3600.0), 2, 12, Long.MIN_VALUE, 0.995),
                UnitSystem.US_CUSTOMARY);
        return Invented.result(request, List.of("one", "two", "three"));
    }

    @ParameterizedTest
    @MethodSource("results")
    void verdictFitsAScreen(RunThroughResult result) {
        List<String> lines = text(result, false).lines().toList();
        int hand = lines.indexOf("Hand calculation with mean times");
        assertThat(hand).isBetween(2, SCREEN + 1);
    }

    @ParameterizedTest
    @MethodSource("results")
    void noLineIsWiderThanATerminal(RunThroughResult result) {
        String text = text(result, false) + VerdictAnswer.working(result);
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @ParameterizedTest
    @MethodSource("results")
    void textIsPlainAscii(RunThroughResult result) {
        assertThat(text(result, false) + VerdictAnswer.working(result)).matches("[\\x20-\\x7e\\n]*");
    }

    @Test
    void deterministicLineRunsThroughWithoutAnInterval() {
        // 73 s of joint: 0.75 * 73 + 0.75^2 / 0.8 + 0.75^2 / 0.6 = 56.39 m drawn of 72 - 3.125 = 68.875 m: a margin of
        // 12.48 m, which is 16.6 s at 0.75 m/s. Margins are rounded down.
        Line line = Invented.line(Distribution.constant(25));
        String text = text(Invented.result(line), false);
        assertThat(text)
                .contains(
                        "RUNS THROUGH. No stop at any coil change; target 1 in 100. 100 % run through;\nthis meets the target of 99 %.")
                .contains("200: 200 ran through, 0 slowed, 0 stopped")
                .containsPattern("margin at the target +12.4 m")
                .contains("16.6 s of joint cycle time")
                .containsPattern("joint cycle time, mean +73 s \\(90 % at most 73 s, 95 % 73 s, 99 % 73 s\\)");
    }

    @Test
    void shareIsGivenWithItsIntervalAgainstTheTarget() {
        String text = text(Invented.result(Invented.line(Distribution.lognormal(40, 8))), false)
                .replaceAll("\\s+", " ");
        assertThat(text)
                .containsPattern(
                        "STOPS at about [0-9]+ in [0-9]+ coil changes; target 1 in 100\\. [0-9.]+ % \\(95 % interval "
                                + "[0-9.]+ to [0-9.]+ %\\) of coil changes run through; this misses the target of 99 %\\.")
                .contains("element took long: fit up, at all 81 coil changes")
                .contains("shortfall at the target ");
    }

    @Test
    void whatPassagesBreaksWaitsAndShiftsCostIsSaid() {
        // Rules CREW-16, CREW-17. Two people day and night are 16 paid hours in 8 h.
        String text = text(Invented.result(Invented.inShifts()), false);
        assertThat(text)
                .containsPattern("joint passages +[0-9.]+ m of strip not run per 8 h, [0-9.]+ % of rated\n")
                .containsPattern("joint breaks +[0-9.]+ \\(.*\\) per 8 h, repair [0-9:.]+ (s|min)\n")
                .containsPattern("lost time \\(joint breaks\\) +[0-9:.]+ (s|min) per 8 h \\([0-9.]+ m of strip\\)\n")
                .containsPattern("waiting for people +mean [0-9:.]+ (s|min), at [0-9.]+ % of coil changes\n")
                .containsPattern("paid hours +16 per 8 h\n")
                .containsPattern(
                        "(?s)Coil changes by the shift in which they begin; shares and means are those over\\s+replications\n.*\nday +123 .*\n\n.*\nday +0 ")
                .doesNotContain("waiting for preparation  ");
    }

    @Test
    void bothSetsOfAProcessThatSlowsAreGiven() {
        // Rules FORM-7, FORM-13. Joint of 20 s, 600 m; V^2/(2 d_e) = V^2/(2 a_e) = x_stop = 1 m; slowing at 100 m to
        // 0.5 m/s. Without slowing C = 20 + 2 + 100 = 122 m and T = 600 - 100 - 2 = 498 s. Without a stop
        // T = 499 + 0.5/0.5 + (100 - 1 - 0.25)/0.5 = 697.5 s; C = 600 - (697.5 - 20) is below the 100 m, where no form
        // holds.
        String text = text(Invented.result(Invented.inShifts()), false);
        assertThat(text)
                .containsPattern("accumulator capacity, without slowing +600 m +122 m +478 m\n")
                .containsPattern("longest joint cycle time, without slowing +8:18 min +20 s +7:58 min\n")
                .containsPattern("longest joint cycle time, without a stop +11:37 min +20 s +11:17 min\n")
                .containsPattern("accumulator capacity, without a stop +no closed form\n");
    }

    @Test
    void timesOfUpTo90SecondsAreInSeconds_alsoBesideLongerOnes() {
        // 25 s of 48 s apart from it in 19 of 20 joints, 125 s in the last: 73 s or 173 s, 78 s on average.
        List<Double> times = new ArrayList<>(Collections.nCopies(19, 25.0));
        times.add(125.0);
        String text = text(Invented.result(Invented.line(Distribution.observed(times))), false)
                .replaceAll("\\s+", " ");
        assertThat(text)
                .containsPattern("joint cycle time, mean [78][0-9.]* s \\([0-9.]+ to [0-9.]+ s; 90 % at most 73 s, "
                        + "95 % (73 s|2:53 min), 99 % 2:53 min\\)");
    }

    @Test
    void grossOutputHasTheDigitsOfGoodOutput() {
        SimulationRequest request = new SimulationRequest(
                "Line (invented)",
                List.of(),
                Invented.line(Distribution.lognormal(40, 8)),
                new RunPlan(new RunPlan.Extent.Changes(400), 0, 20, 7, 0.99),
                UnitSystem.METRIC);
        String text = text(Invented.result(request, List.of()), false).replaceAll("\\s+", " ");
        // Half an interval of some 0.5 m/h leaves the tenths certain.
        assertThat(text).containsPattern("good output [0-9]+\\.[0-9] m/h .* gross [0-9]+\\.[0-9] m/h");
    }

    @Test
    void namesOfCausesStandInFull() {
        // Two long elements, each of which alone takes too long at times: 69 m above the stop level bear 89 s at 0.75
        // m/s.
        Line line = Invented.line(Distribution.constant(5));
        Distribution times = Distribution.observed(List.of(10.0, 10.0, 10.0, 10.0, 100.0));
        CoilChange change = new CoilChange(
                2,
                line.change().prepare(),
                line.change().tail(),
                List.of(
                        Invented.timed("set the spare trimmer heads of the left", times),
                        Invented.timed("set the spare trimmer heads of the right", times)),
                new Reject.Never());
        List<String> lines =
                text(Invented.result(line.with(change)), false).lines().toList();
        int head = lines.indexOf("Causes of the coil changes that did not run through") + 1;
        // A long name goes on below; numbers stand on its first line.
        assertThat(String.join("\n", lines.subList(head, head + 8)))
                .containsPattern("set the spare +[0-9].*\n +trimmer heads of the left\n")
                .containsPattern("set the spare +[0-9].*\n +trimmer heads of the right\n");
        // Above 3 h of lost time in hours, above 90 s in minutes and seconds.
        assertThat(lines.get(head)).containsPattern("Lost time, (h|min:s)$");
    }

    @Test
    void limitsOfTheHandCalculationFollow() {
        String text = text(Invented.result(Invented.line(Distribution.constant(25))), false);
        assertThat(text).containsPattern("accumulator capacity +72 m +59.6 m +12.4 m\n");
    }

    @Test
    void handCalculationIsWorkedWithItsNumbers() {
        String text = VerdictAnswer.working(Invented.result(Invented.line(Distribution.constant(25))));
        assertThat(text)
                .startsWith("Hand calculation:\nV = 0.75 m/s            process speed\n")
                .containsSubsequence(
                        "strip drawn\n",
                        "  D = V * T + V^2 / (2 * d_e) + V^2 / (2 * a_e)\n",
                        "    = 0.75 * 73 + 0.75^2 / (2 * 0.4) + 0.75^2 / (2 * 0.3)\n",
                        "    = 56.3906 m\n");
    }

    @Test
    void coloursAreThereOnlyWhenAskedFor() {
        RunThroughResult result = Invented.result(Invented.rethread());
        String plain = text(result, false);
        String coloured = text(result, true);
        assertThat(plain).doesNotContain("\u001b");
        assertThat(coloured).contains("\u001b[1;31mSTOPS\u001b[0m");
        assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain);
    }

    @Test
    void titleCannotSendCommandsToTheTerminal() {
        SimulationRequest request =
                Invented.request("red \u001b[31malert\u0007\r\n", Invented.rethread(), UnitSystem.METRIC, 0.99);
        assertThat(text(Invented.result(request), false))
                .doesNotContain("\u001b")
                .doesNotContain("\u0007")
                .doesNotContain("\r")
                .startsWith("red  [31malert");
    }

    @Test
    void warningsAreCounted() {
        RunThroughResult result = Invented.result(
                Invented.request(Invented.line(Distribution.constant(25))), List.of("line.yaml:3:1 never refills."));
        assertThat(text(result, false)).contains("1 warning\n").doesNotContain("never refills");
    }

    private static String text(RunThroughResult result, boolean colour) {
        return TerminalWriter.render(VerdictAnswer.inWords(result), colour);
    }
}
