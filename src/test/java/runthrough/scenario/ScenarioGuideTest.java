package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The listing of what a scenario may say. */
class ScenarioGuideTest {

    private static final String GUIDE = ScenarioGuide.text();

    @Test
    void aKeyIsListedWithMeaningRangeAndExample() {
        assertThat(GUIDE).contains("""
                          stroke: the carriage travel between its end positions
                              a length with its unit, more than 0; such as 9 m
                        """).contains("""
                          title: the title of the report
                              a title; required; such as Kestrel Road tube line (invented)
                        """);
    }

    @Test
    void aDefaultIsListedAsItHolds() {
        assertThat(GUIDE)
                .contains("a length with its unit, 0 or more; default: 0 m; such as 0.4 m")
                .contains("default: the speed changes at once; such as 0.3")
                .contains("a whole number from 1 to 100; default: 1; such as 2");
    }

    @Test
    void waysToChooseBetweenAreListed() {
        assertThat(GUIDE)
                .contains("  Give exactly one of: length; mass; outer-diameter with inner-diameter.\n")
                .contains("  Give at most one of: coil-changes; time.\n");
    }

    @Test
    void everySectionHasItsHeading() {
        assertThat(GUIDE.lines().filter(line -> line.matches("\\S.*: .*")).map(line -> line.replaceAll(": .*", "")))
                .containsExactly(
                        "random quantity",
                        "Top level",
                        "coil",
                        "coils",
                        "coils.mix",
                        "coils.defaults",
                        "entry",
                        "entry.creep",
                        "accumulator",
                        "process",
                        "process.restart",
                        "process.slowing",
                        "process.downtime",
                        "process.joint-passage",
                        "process.joint-break",
                        "coil-change",
                        "coil-change.shifts",
                        "coil-change.shifts.breaks",
                        "work element",
                        "travel",
                        "coil-change.reject",
                        "bending",
                        "run",
                        "document",
                        "drive",
                        "money",
                        "money.alternatives",
                        "money.levers");
    }

    @Test
    void unitsOfEveryKindAreListed() {
        assertThat(GUIDE)
                .contains("  mass          g, kg, t, lb, short ton, long ton\n")
                .contains("  share         %\n");
    }

    @Test
    void keysThatStandInSeveralSectionsAreExplainedOnce() {
        assertThat(GUIDE.split("winding-factor: ", -1)).hasSize(2);
        assertThat(GUIDE).contains("  and the keys of coil\n").contains("  and the keys of random quantity\n");
    }

    @Test
    void aKeyThatAnotherSectionHasTooIsListedWhereItsOthersAreNotAllowed() {
        // A row of travel speeds has a thickness, as a coil has, and nothing else of a coil.
        assertThat(ScenarioGuide.text("travel"))
                .contains("  thickness: ", "  speed: ")
                .doesNotContain("and the keys of");
    }

    @Test
    void aPartComesWithThoseWithinIt() {
        assertThat(ScenarioGuide.names()).contains("units", "top level", "process", "process.downtime", "run");
        assertThat(ScenarioGuide.text("process"))
                .startsWith("process: ")
                .contains("\n\nprocess.downtime: ")
                .doesNotContain("coil-change");
        assertThat(ScenarioGuide.text("process.slowing"))
                .startsWith("process.slowing: ")
                .doesNotContain("\n\n");
        assertThat(ScenarioGuide.text("proces")).isEmpty();
    }

    @Test
    void noLineIsWiderThanATerminal() {
        assertThat(GUIDE.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }
}
