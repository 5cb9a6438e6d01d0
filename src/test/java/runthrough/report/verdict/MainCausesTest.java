package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Table;
import runthrough.report.Value;
import runthrough.report.write.JsonWriter;
import runthrough.study.StudyListener;
import runthrough.study.lever.WorthStudy;
import runthrough.study.statistics.Interval;

/**
 * Joints of 48 s and a fit-up of 36 s on average, against 83 s that the accumulator bears by the hand calculation: many stop the
 * process, most of all where the joint is made again.
 */
class MainCausesTest {
    private static RunThroughResult failing() {
        RunThroughResult result = Invented.result(
                Invented.line("2.0 x 240", "fit up", Distribution.lognormal(36, 9), new Reject.Chance(0.2)));
        return result.with(new WorthStudy(result.study()).run(1, StudyListener.NONE));
    }

    @Test
    void everyCauseHasItsCoilChangesAndItsWorth() {
        RunThroughResult result = failing();
        Table table = MainCauses.of(result).orElseThrow();

        assertThat(table.caption())
                .isEqualTo("Causes of the " + result.verdict().changes().failed()
                        + " coil changes that did not run through, and what a year gains without each");
        assertThat(table.page().head())
                .containsExactly("Cause", "Coil changes", "Fewer stops", "Less time lost, h", "More good strip, km");
        assertThat(table.page().rows())
                .hasSizeBetween(2, 5)
                .allSatisfy(row -> assertThat(row).doesNotContain(""));
        assertThat(table.page().rows().get(0).get(0))
                .isEqualTo(result.verdict().namedCauses().get(0).reason().words());
    }

    /** As the table of all removals says it in words. */
    @Test
    void aGainThatIsNotShownIsNotGivenAsANumber() {
        Value open = new Value(10, Notation.PLAIN, Optional.of(new Interval(-90, 120, Interval.Method.STUDENT_T)));
        Value shown = new Value(10, Notation.PLAIN, Optional.of(new Interval(4, 16, Interval.Method.STUDENT_T)));

        assertThat(Cell.gainAlone(open).text()).isEqualTo("none shown");
        assertThat(Cell.gain(open).text()).startsWith("no difference shown (");
        assertThat(Cell.gainAlone(shown).text()).isEqualTo("10");
    }

    @Test
    void noneWhereTheTargetIsMetOrThePracticeIsTheOneCause() {
        assertThat(MainCauses.of(Invented.result(Invented.line(Distribution.constant(10)))))
                .isEmpty();
        assertThat(MainCauses.of(Invented.result(Invented.withoutAccumulator())))
                .isEmpty();
    }

    @Test
    void withoutKnownWorthTheTableSaysNothingOfIt() {
        RunThroughResult result = Invented.result(Invented.line(Distribution.lognormal(36, 9)));
        assertThat(MainCauses.of(result).orElseThrow().page().head()).containsExactly("Cause", "Coil changes");
    }

    @Test
    void jsonGivesCausesAndTheirWorthStraightAfterTheFiguresOfTheHeadline() throws Exception {
        List<String> members = new ArrayList<>();
        new ObjectMapper()
                .readTree(JsonWriter.render(VerdictAnswer.inWords(failing())))
                .fieldNames()
                .forEachRemaining(members::add);
        assertThat(members)
                .containsSubsequence(
                        "share_run_through",
                        "margin_at_target",
                        "stoppages",
                        "joint",
                        "output",
                        "causes",
                        "named_causes",
                        "worth_of_causes",
                        "joint_passages",
                        "storage",
                        "shifts",
                        "levers");
    }
}
