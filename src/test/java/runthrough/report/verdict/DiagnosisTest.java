package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.StorageForm;
import runthrough.study.StudyListener;
import runthrough.study.cause.Cause;
import runthrough.study.lever.LeverStudy;

class DiagnosisTest {
    private static final Line LINE = Invented.line(Distribution.constant(25));

    @Test
    void nothingFailedNamesTheNearestLimit() {
        Diagnosis diagnosis = diagnosis(LINE);
        assertThat(diagnosis.limiting())
                .isEqualTo(
                        "no coil change failed; nearest to failing is the capacity of the accumulator, by the hand calculation.");
        assertThat(diagnosis.changes()).containsExactly("Nothing needs to change to meet the target.");
    }

    @Test
    void tooSmallAnAccumulatorIsSaidWithWhatIsMissing() {
        // 100 s of joint draw 0.75 * 100 + 1.6406 = 76.64 m, 7.77 m more than the 68.875 m there are: 10.4 s.
        Diagnosis diagnosis = diagnosis(Invented.line(Distribution.constant(52)));
        assertThat(diagnosis.limiting())
                .isEqualTo("usual joint too long, at all 200 coil changes that did not run through.");
        assertThat(diagnosis.margin().orElseThrow())
                .startsWith("Shortfall at the target of 99 %: 7.77 m of strip, which is 10.4 s of joint cycle time");
        assertThat(diagnosis.changes())
                .containsExactly(
                        "What would meet the target, each change on its own, is found by the study of limits.");
    }

    @Test
    void whatWouldMeetTheTargetIsGivenWhereItWasCalculated() {
        // 10.4 s off every pass, as the shortfall says; nothing is random.
        RunThroughResult result = Invented.result(Invented.line(Distribution.constant(52)));
        RunThroughResult known = result.with(new LeverStudy(result.study().request()).run(1, StudyListener.NONE));
        assertThat(new Diagnosis(known).changes())
                .anyMatch(way -> way.startsWith("On its own would meet the target: 10.3")
                        && way.endsWith(" s off every pass of the join work."))
                .anyMatch(way -> way.contains("an accumulator that holds ") && way.contains(", instead of 72 m"));
    }

    @Test
    void latePreparationAsksForASecondUncoilerAndASecondPerson() {
        // One uncoiler, one person: the joint waits for all of the 120 s of preparation.
        Line line = new Line(
                LINE.coilSource(),
                new Entry(1, 1.5, 0.3, 0.4, Optional.empty(), 0),
                LINE.process(),
                new CoilChange(
                        1,
                        LINE.change().prepare(),
                        LINE.change().tail(),
                        LINE.change().join(),
                        new Reject.Never()),
                LINE.practice(),
                Optional.empty());
        RunThroughResult result = Invented.result(line);
        assertThat(result.verdict().causes().main()).contains(Cause.WAITING_FOR_PREPARATION);
        Diagnosis diagnosis = new Diagnosis(result);
        assertThat(diagnosis.limiting())
                .startsWith("waiting for preparation: ")
                .endsWith(" coil changes that did not run through.");
        assertThat(diagnosis.changes().get(0)).startsWith("Have the next coil ready sooner: preparing takes 2:00 min");
        assertThat(diagnosis.changes())
                .contains(
                        "A second uncoiler lets the next coil be prepared while this one runs.",
                        "A second person lets preparing and joining overlap.");
    }

    @Test
    void slowRefillNamesWhatSetsItsPace() {
        // An overspeed of 0.02 m/s gains 56 m in 47 min; a coil lasts 16 min.
        Line slowEntry = with(new Entry(2, 0.77, 0.3, 0.4, Optional.empty(), 0), LINE.accumulator());
        assertThat(diagnosis(slowEntry).changes())
                .anyMatch(change -> change.startsWith(
                        "Fill faster: the entry's top speed is 46.2 m/min, the process runs at 45 m/min."));
        Accumulator limited = new Accumulator(new StorageForm.Direct(72), 0.02, 2, Double.POSITIVE_INFINITY);
        assertThat(diagnosis(with(LINE.entry(), limited)).changes())
                .anyMatch(
                        change -> change.startsWith(
                                "Fill faster: the accumulator's fill-rate limit of 1.2 m/min is the limiting factor, not the entry's top speed."));
    }

    @Test
    void rejectedJointsAreNamedWhenTheyAreMostOfTheFailures() {
        Line line = Invented.line("x", "fit up", Distribution.lognormal(20, 2), new Reject.Chance(0.1));
        assertThat(diagnosis(line).changes().get(0)).startsWith("Fewer rejected joints: ");
    }

    @Test
    void oneStripSaysHowMuchAccumulatorItWouldTake() {
        // 73 s: 0.75 * 73 + 1.6406 + 0.75^2 / (2 * 0.25) = 57.5 m.
        Diagnosis diagnosis = diagnosis(Invented.withoutAccumulator());
        assertThat(diagnosis.limiting()).startsWith("the practice; without an accumulator");
        assertThat(diagnosis.margin()).isEmpty();
        assertThat(diagnosis.changes())
                .containsExactly(
                        "An accumulator: to run through a joint of 73 s takes at least 57.5 m of strip, by the hand "
                                + "calculation, and an entry that is faster than the process.");
    }

    @Test
    void rethreadingAsksForAJoiner() {
        List<String> changes = diagnosis(Invented.rethread()).changes();
        assertThat(changes).singleElement().asString().startsWith("A joiner in place of rethreading");
    }

    private static Diagnosis diagnosis(Line line) {
        return new Diagnosis(Invented.result(line));
    }

    private static Line with(Entry entry, Accumulator accumulator) {
        return new Line(
                LINE.coilSource(),
                entry,
                LINE.process(),
                LINE.change(),
                new Practice.JoinWithAccumulator(accumulator),
                Optional.empty());
    }
}
