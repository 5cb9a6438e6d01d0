package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.report.Table;
import runthrough.report.write.CsvWriter;
import runthrough.report.write.TerminalWriter;
import runthrough.study.StudyListener;
import runthrough.study.lever.WorthStudy;

/**
 * One uncoiler: 907 s to prepare a coil, by the hand calculation, and 31.6 s more than that stop the process. Opening and turning
 * take 1300 s on average. Opening is waited for most where it takes longer than 907 s and turning together (1300 and 100 s),
 * turning in most other cases (900 and 300 s).
 */
class WorthTableTest {
    private static RunThroughResult result() {
        Line line = Invented.line(Distribution.constant(10));
        CoilChange change = new CoilChange(
                1,
                List.of(
                        Invented.timed("open", Distribution.uniform(800, 1300)),
                        Invented.timed("turn", Distribution.uniform(100, 400))),
                line.change().tail(),
                line.change().join(),
                new Reject.Never());
        RunThroughResult result = Invented.result(line.with(change));
        return result.with(new WorthStudy(result.study()).run(1, StudyListener.NONE));
    }

    @Test
    void captionSaysOfWhatAndOverWhat_andEveryNumberHasItsInterval() {
        String terminal = TerminalWriter.render(VerdictAnswer.inWords(result()), false);
        String known = " +[0-9.\\h]+ \\([0-9.\\h]+ to [0-9.\\h]+\\)";
        assertThat(terminal)
                .containsPattern("Worth of removing a cause, of [0-9\\h]+ stops in a year of [0-9]+ h; 5 replications");
        // Too wide for 80 columns by a few: the third number stands in a block of its own.
        assertThat(terminal)
                .containsPattern("\nall preparation" + known + known + "\n")
                .containsPattern("\nwithout \\(95 % interval\\) +more good strip, km\nall preparation" + known + "\n");
    }

    @Test
    void fileHasNumbersAndEndsApart() {
        Table table = WorthTable.of(result());
        assertThat(CsvWriter.render(table).lines())
                .hasSize(2)
                .first()
                .asString()
                .startsWith(
                        "without,fewer stops,fewer stops low,fewer stops high,less time lost (h),less time lost low (h)");
    }

    /** One removal is one row: the two elements together are all that failed. */
    @Test
    void aPageToDecideOnHasOneRowForAllPreparation() {
        RunThroughResult result = result();
        long failed = result.verdict().changes().failed();

        assertThat(MainCauses.of(result).orElseThrow().page().rows())
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.get(0))
                            .startsWith("waiting for preparation: ")
                            .contains("open")
                            .contains("turn");
                    assertThat(row.get(1).replace('\u00a0', ' ')).isEqualTo(failed + ", 100 %");
                });
    }

    @Test
    void bothElementsThatWereWaitedForSayThatAllPreparationGoes() {
        assertThat(CauseRows.of(result()))
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.worth()).get().asString().endsWith(", without all preparation"));
    }
}
