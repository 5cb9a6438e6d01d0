package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Shift;
import runthrough.report.Table;

/** What the table of the hand calculation says of preparation and people. */
class HandChapterTest {

    private static Table limits(Line line) {
        return new HandChapter(Invented.result(line)).limits();
    }

    private static List<String> rows(Table table) {
        return table.page().rows().stream()
                .map(row -> row.stream().map(String::valueOf).collect(Collectors.joining(" | ")))
                .filter(row -> row.startsWith("time to prepare"))
                .toList();
    }

    @Test
    void withOneUncoiler_theTimeUntilTheJointWaitsIsSaidBesideThatUntilTheProcessStops() {
        // Rules FORM-9, FORM-12. Crew of 2, no strip path: until the joint waits there are p + t = 0 + 8 s of tail work
        // for 120 s of
        // preparing, 112 s short. Longest joint: (72 - 2)/0.75 - 0.75/0.8 - 0.75/0.6 - 0.75/0.5 = 89.646 s; beside the
        // 73 s of
        // work the joint may wait 16.646 s, so that the process stops after 24.646 s, 95.354 s short.
        Line line = Invented.line(Distribution.constant(25));
        assertThat(rows(limits(line.with(line.entry().withUncoilers(1)))))
                .hasSize(2)
                .satisfiesExactly(
                        row -> assertThat(row)
                                .startsWith("time to prepare before the joint waits | 8 s")
                                .endsWith("-1:52 min"),
                        row -> assertThat(row)
                                .startsWith("time to prepare before the process stops | 24.6 s")
                                .contains("-1:36"));
    }

    @Test
    void withTwoUncoilers_bothAreTheSameTime() {
        // Rule FORM-9: K, or K - W, whichever it is; in the long run no accumulator bears more.
        assertThat(rows(limits(Invented.line(Distribution.constant(25)))))
                .singleElement()
                .satisfies(row -> assertThat(row).startsWith("time to prepare a coil |"));
    }

    @Test
    void withShifts_itSaysThatTheLargestCrewIsTaken() {
        // Rule FORM-9.
        Line line = Invented.line(Distribution.constant(25));
        CoilChange change = line.change()
                .withShifts(new Shifts(
                        List.of(new Shift("day", 28_800, 3, List.of()), new Shift("night", 28_800, 2, List.of()))));
        assertThat(limits(line).caption()).isEqualTo("Hand calculation with mean times");
        assertThat(limits(line.with(change)).caption())
                .isEqualTo("Hand calculation with mean times, with the largest crew of any shift, 3");
    }
}
