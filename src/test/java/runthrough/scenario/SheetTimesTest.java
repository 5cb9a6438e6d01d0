package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import runthrough.plant.CoilChange;
import runthrough.plant.MeasuredRows;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.WorkTime;

class SheetTimesTest {
    @TempDir
    private Path folder;

    private Written written;

    @BeforeEach
    void writeASheet() {
        written = new Written(folder);
        written.file(
                "times.csv", "no,tail: shear [s],join: fit up [s],join: weld [s]\n1,8,20,1:10\n2,9,,1:20\n3,7,30,75\n");
    }

    private static String change(String join) {
        return Written.with("coil-change: {tail: [{shear: {sheet: times.csv}}], join: [" + join + "]}");
    }

    @Test
    void elementsOfOneSheetShareItsRows() {
        CoilChange change = written.request(
                        change("{fit up: {sheet: times.csv}}, {welding: {sheet: times.csv, column: weld, redo: no}}"))
                .line()
                .change();

        assertThat(MeasuredRows.in(change)).hasSize(1);
        MeasuredRows rows = MeasuredRows.in(change).get(0);
        assertThat(rows.count()).isEqualTo(3);
        assertThat(rows.source()).isEqualTo("times.csv");
        assertThat(change.tail()).extracting(WorkElement::name).containsExactly("shear");
        assertThat(((WorkTime.FromRows) change.join().get(1).time()).column()).isEqualTo(2);
        assertThat(change.join().get(1).time().drawn().mean()).isEqualTo(75);
        assertThat(change.join().get(1).redo()).isFalse();
        // The blank is left out.
        assertThat(change.join().get(0).time().drawn().mean()).isEqualTo(25);
        assertThat(rows.value(1, 1)).isNaN();
    }

    @Test
    void aColumnMayBeNamedWithItsPart() {
        written.file("times.csv", "tail: cut [s],join: cut [s]\n8,20\n");

        assertThat(written.request(Written.with(
                                "coil-change: {join: [{cutting: {sheet: times.csv, column: \"join: cut\"}}]}"))
                        .line()
                        .change()
                        .join()
                        .get(0)
                        .time()
                        .drawn()
                        .mean())
                .isEqualTo(20);
        assertThat(written.refusal(Written.with("coil-change: {join: [{cut: {sheet: times.csv}}]}")))
                .singleElement()
                .asString()
                .endsWith("the sheet has several columns cut. Give one of: tail: cut, join: cut.");
    }

    @Test
    void whatIsWrongWithASheetIsSaidOnceThoughSeveralElementsReferToIt() {
        written.file("times.csv", "tail: shear [s],join: fit up [s]\n8,twenty\n");

        assertThat(written.refusal(change("{fit up: {sheet: times.csv}}")))
                .singleElement()
                .asString()
                .startsWith("times.csv:2:3 ");
    }

    /** 300 cells that are wrong are 300 problems, however many elements look for their times there. */
    @Test
    @Timeout(20)
    void whatIsWrongWithASheetIsCountedOnceThoughManyElementsReferToIt() {
        written.file("times.csv", "weld\n" + "twenty\n".repeat(300));
        String elements = IntStream.rangeClosed(1, 100)
                .mapToObj(i -> "{weld " + i + ": {sheet: times.csv, column: weld}}")
                .collect(Collectors.joining(", "));

        ScenarioReading.Refused refused = (ScenarioReading.Refused)
                ScenarioFile.open(written.file("line.yaml", Written.with("coil-change: {join: [" + elements + "]}")))
                        .read();

        assertThat(refused.problems()).hasSize(100);
        assertThat(refused.further()).isEqualTo(200);
    }

    @Test
    void aColumnThatIsNotThereIsAnsweredWithTheNearest() {
        List<String> refusal = written.refusal(change("{fit: {sheet: times.csv, column: join wled}}"));

        assertThat(refusal)
                .containsExactly(
                        "line.yaml:6:92 coil-change.join[1].fit = join wled; the sheet has no column join wled. "
                                + "Did you mean join: weld?");
        assertThat(written.refusal(change("{polish: {sheet: times.csv}}")))
                .singleElement()
                .asString()
                .contains("Columns of the sheet are: tail: shear, join: fit up, join: weld.");
    }

    @Test
    void aSheetThatIsNotThereIsAnsweredWithTheNearestFile() {
        assertThat(written.refusal(Written.with("coil-change: {join: [{weld: {sheet: time.csv}}]}")))
                .containsExactly("line.yaml:6:37 coil-change.join[1].weld = time.csv; there is no such file. "
                        + "Did you mean times.csv?");
    }

    @Test
    void aSheetAndAnotherTimeAreOneTooMany() {
        assertThat(written.refusal(change("{weld: {sheet: times.csv, travel: 600 mm/min}}")))
                .isNotEmpty();
    }
}
