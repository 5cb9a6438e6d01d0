package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilDifference;
import runthrough.plant.Distribution;
import runthrough.plant.ProcessSection.JointBreak;
import runthrough.plant.ProcessSection.JointPassage;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.scenario.source.Problems;

/** People, shifts, conditions of elements, and joints on their way, as a scenario says them. */
class PeopleAndJointsTest {

    @TempDir
    private Path folder;

    private Written written = new Written(Path.of("."));

    @BeforeEach
    void writeIntoTheFolder() {
        written = new Written(folder);
    }

    private CoilChange change(String value) {
        return written.line("coil-change: " + value).change();
    }

    private List<String> refusal(String... sections) {
        return written.refusal(Written.with(sections));
    }

    private List<String> warnings(String... sections) {
        return written.warnings(Written.with(sections));
    }

    @Test
    void elementMayTakeSeveralPeopleAndNotBePutDown() {
        CoilChange change = change("{crew: 2, prepare: [{load coil: {triangular: [60 s, 90 s, 120 s], people: 2,"
                + " put-down: no}}, {fetch coil: 90 s}], join: [{join: 50 s}]}");
        WorkElement load = change.prepare().get(0);
        assertThat(load.people()).isEqualTo(2);
        assertThat(load.putDown()).isFalse();
        WorkElement fetch = change.prepare().get(1);
        assertThat(fetch.people()).isEqualTo(1);
        assertThat(fetch.putDown()).isTrue();
    }

    @Test
    void elementMayBeDoneWhenSomethingDiffers() {
        CoilChange change = change("{join: [{join: 50 s}, {set up: {constant: 3 min, when: width}},"
                + " {change tools: {constant: 5 min, when: [thickness, product]}}]}");
        assertThat(change.join().get(1).occurrence()).isEqualTo(new Occurrence.When(Set.of(CoilDifference.WIDTH)));
        assertThat(change.join().get(2).occurrence())
                .isEqualTo(new Occurrence.When(Set.of(CoilDifference.THICKNESS, CoilDifference.PRODUCT)));
    }

    @Test
    void travelSpeedMayDependOnThickness() {
        CoilChange change =
                change("{join: [{weld: {travel: [{thickness: 1 mm, speed: 6 m/min}, {thickness: 3 mm, speed:"
                        + " 1.5 m/min}], plus: 6 s}}]}");
        assertThat(change.join().get(0).time())
                .isEqualTo(new WorkTime.Travel(
                        new TravelSpeed.ByThickness(
                                List.of(new TravelSpeed.Row(0.001, 0.1), new TravelSpeed.Row(0.003, 0.025))),
                        Distribution.constant(6)));
    }

    @Test
    void shiftsHaveCrewsAndBreaks() {
        CoilChange change = change("{shifts: [{name: early, hours: 8 h, crew: 2, breaks: [{begin: 4 h, length: 30 min,"
                + " crew: 1}]}, {hours: 6 h, crew: 3, breaks: [{begin: 2 h, length: 10 min}]}], join: [{join: 50 s}]}");
        assertThat(change.shifts())
                .contains(new Shifts(List.of(
                        new Shift("early", 28_800, 2, List.of(new Break(14_400, 1800, 1))),
                        new Shift("shift 2", 21_600, 3, List.of(new Break(7200, 600, 0))))));
        assertThat(change.crew()).isEqualTo(3);
    }

    @Test
    void processMaySlowForJointsAndJointsMayBreak() {
        var process = written.line(
                        "process: {speed: 45 m/min, joint-passage: {speed: 18 m/min, before: 5 m, after: 10 m},"
                                + " joint-break: {chance: 0.1 %, length: 40 m, repair: 20 min, scrap: 30 m}}")
                .process();
        assertThat(process.jointPassage()).contains(new JointPassage(0.3, 5, 10));
        assertThat(process.jointBreak()).contains(new JointBreak(0.001, 40, Distribution.constant(1200), 30));
    }

    @Test
    void runMayHaveASecondTarget() {
        RunPlan run = written.request(Written.with("run: {coil-changes: 100, target-without-stop: 95 %}"))
                .run();
        assertThat(run.targetWithoutStop()).hasValue(0.95);
        assertThat(written.request(Written.with()).run().targetWithoutStop()).isEmpty();
    }

    @Test
    void shiftsAndRowsAreFollowedByPath() {
        ScenarioFile file = ScenarioFile.open(written.file(
                "line.yaml",
                Written.with("coil-change: {shifts: [{name: early, hours: 8 h, crew: 2}], join: [{weld: {travel:"
                        + " [{thickness: 2 mm, speed: 1.2 m/min}]}}]}")));
        CoilChange change = changed(file, "coil-change.shifts.early.crew", "4");
        assertThat(change.crew()).isEqualTo(4);
        assertThat(changed(file, "coil-change.shifts[1].hours", "6 h")
                        .shifts()
                        .orElseThrow()
                        .length())
                .isEqualTo(21_600);
        // 0.24 m at 0.6 m/min.
        assertThat(changed(file, "coil-change.join.weld.travel[1].speed", "0.6 m/min")
                        .join()
                        .get(0)
                        .time()
                        .duration(0, 0.24, 0.002))
                .isEqualTo(24);
        assertThat(changed(file, "coil-change.crew", "1").shifts()).isEmpty();
        assertThat(changed(file, "coil-change.join.weld.people", "2")
                        .join()
                        .get(0)
                        .people())
                .isEqualTo(2);
    }

    private static CoilChange changed(ScenarioFile file, String path, String value) {
        ScenarioReading reading = file.with(
                List.of(Setting.written(path, value, "--set", new Problems()).orElseThrow()));
        assertThat(reading).isInstanceOf(ScenarioReading.Accepted.class);
        return ((ScenarioReading.Accepted) reading).request().line().change();
    }

    @Test
    void twoConditionsOnOneElementAreRefused() {
        // Rule CHECK-32.
        assertThat(refusal("coil-change: {join: [{weld: {constant: 50 s, every: 3, when: width}}]}"))
                .containsExactly(
                        "line.yaml:6:56 coil-change.join[1].weld.when = width; when the element is done is already"
                                + " given by every; allowed is one of: every; chance; when. Leave out all but one.");
        assertThat(refusal("coil-change: {join: [{weld: {constant: 50 s, when: [width], chance: 10 %}}]}"))
                .containsExactly("line.yaml:6:61 coil-change.join[1].weld.chance = 10 %; when the element is done is"
                        + " already given by when; allowed is one of: every; chance; when. Leave out all but one.");
    }

    @Test
    void unknownDifferenceIsAnsweredWithThoseThereAre() {
        assertThat(refusal("coil-change: {join: [{weld: {constant: 50 s, when: [width, width]}}]}"))
                .containsExactly(
                        "line.yaml:6:60 coil-change.join[1].weld.when[2] = width; must be listed once. Leave one of"
                                + " the two out.");
        assertThat(refusal("coil-change: {join: [{weld: {constant: 50 s, when: widht}}]}"))
                .containsExactly(
                        "line.yaml:6:52 coil-change.join[1].weld.when = widht; must be one of: width, thickness,"
                                + " product. Did you mean width?");
    }

    @Test
    void thicknessTwiceOrFallingIsRefusedWithItsRow() {
        // Rule CHECK-31.
        assertThat(refusal("coil-change: {join: [{weld: {travel: [{thickness: 1 mm, speed: 4 m/min}, {thickness: 1 mm,"
                        + " speed: 3 m/min}]}}]}"))
                .containsExactly(
                        "line.yaml:6:86 coil-change.join[1].weld.travel[2].thickness = 1 mm; must be more than in"
                                + " the row before, 1 mm. Give each thickness once, the thinnest strip first.");
        assertThat(refusal("coil-change: {join: [{weld: {travel: [{thickness: 3 mm, speed: 2 m/min}, {thickness: 1 mm,"
                        + " speed: 4 m/min}]}}]}"))
                .containsExactly(
                        "line.yaml:6:86 coil-change.join[1].weld.travel[2].thickness = 1 mm; must be more than in"
                                + " the row before, 3 mm. Give each thickness once, the thinnest strip first.");
    }

    @Test
    void travelTableThatTheCoilsLeaveIsWarnedOf() {
        assertThat(warnings("coil-change: {join: [{weld: {travel: [{thickness: 3 mm, speed: 1 m/min}, {thickness: 4 mm,"
                        + " speed: 0.5 m/min}]}}]}"))
                .containsExactly(
                        "line.yaml:6:38 coil-change.join[1].weld.travel = 3 mm to 4 mm of strip; should cover the"
                                + " thicker strip of every joint, 2 mm. Outside of the table the speed of its nearest row is"
                                + " taken: add rows.");
    }

    @Test
    void emptyTravelTableIsRefused() {
        assertThat(refusal("coil-change: {join: [{weld: {travel: []}}]}"))
                .singleElement()
                .asString()
                .startsWith("line.yaml:6:38 coil-change.join[1].weld.travel")
                .contains("must be a list of speeds by thickness, at least 1.");
    }

    @Test
    void crewBesideShiftsIsRefused() {
        // Rule CHECK-27.
        assertThat(refusal("coil-change: {crew: 2, shifts: [{hours: 8 h, crew: 2}], join: [{join: 50 s}]}"))
                .singleElement()
                .asString()
                .startsWith("line.yaml:6:24 coil-change.shifts")
                .endsWith("; who is there is already given by crew; allowed is one of: crew; shifts. Leave out all but"
                        + " one.");
    }

    @Test
    void shiftWithoutHoursOrCrewIsRefused() {
        assertThat(refusal("coil-change: {shifts: [{name: early}], join: [{join: 50 s}]}"))
                .containsExactly(
                        "line.yaml:6:24 coil-change.shifts[1].hours; is missing; must be a time with its unit, more than"
                                + " 0. Give how long the shift lasts, such as 8 h.",
                        "line.yaml:6:24 coil-change.shifts[1].crew; is missing; must be a whole number from 1 to 100. Give"
                                + " how many people attend to coil changes in this shift, such as 2.");
        assertThat(refusal("coil-change: {shifts: [{hours: 0 h, crew: 1}], join: [{join: 50 s}]}"))
                .containsExactly(
                        "line.yaml:6:32 coil-change.shifts[1].hours = 0 h; must be more than 0 h. Give how long the"
                                + " shift lasts, such as 8 h.");
        assertThat(refusal("coil-change: {shifts: [], join: [{join: 50 s}]}"))
                .singleElement()
                .asString()
                .startsWith("line.yaml:6:23 coil-change.shifts")
                .contains("must be a list of shifts, at least 1.");
    }

    @Test
    void breaksThatOverlapOrLeaveTheirShiftAreRefusedWithTheirPlace() {
        assertThat(refusal("coil-change: {shifts: [{hours: 8 h, crew: 2, breaks: [{begin: 2 h, length: 30 min}, {begin:"
                        + " 135 min, length: 30 min}]}], join: [{join: 50 s}]}"))
                .containsExactly("line.yaml:6:85 coil-change.shifts[1].breaks[2] = 2.25 h to 2.75 h after the start of"
                        + " shift 1; must begin when the break before it has ended, at 2.5 h or later. Give breaks that do"
                        + " not overlap.");
        assertThat(refusal(
                        "coil-change: {shifts: [{hours: 8 h, crew: 2, breaks: [{begin: 8 h, length: 30 min}]}], join:"
                                + " [{join: 50 s}]}"))
                .containsExactly(
                        "line.yaml:6:55 coil-change.shifts[1].breaks[1] = 8 h to 8.5 h after the start of shift 1;"
                                + " must end within the shift, which lasts 8 h. Let the break begin earlier, or give a shorter"
                                + " one.");
    }

    @Test
    void elementForMorePeopleThanThereEverAreIsRefusedWithItsPlace() {
        assertThat(refusal("coil-change: {join: [{join: {constant: 50 s, people: 2}}]}"))
                .containsExactly(
                        "line.yaml:6:54 coil-change.join[1].join.people = 2 people; must be at most the crew, 1 person."
                                + " Give a larger crew, or fewer people for the element.");
    }

    @Test
    void shiftThatIsTooSmallForAJointIsWarnedOfWithItsPlace() {
        assertThat(warnings("coil-change: {shifts: [{hours: 8 h, crew: 2}, {hours: 8 h, crew: 1}], join: [{join:"
                        + " {constant: 50 s, people: 2}}]}"))
                .containsExactly(
                        "line.yaml:6:66 coil-change.shifts[2].crew = 1 person in shift 2; should be at least those"
                                + " that join takes, 2 people. A joint waits for a larger crew to come: give a larger crew here, or"
                                + " fewer people for the element.");
    }

    @Test
    void jointPassageThatCannotBeIsRefusedOrWarnedOfWithItsPlace() {
        assertThat(refusal("process: {speed: 45 m/min, joint-passage: {speed: 45 m/min}}"))
                .containsExactly("line.yaml:5:51 process.joint-passage.speed = 45 m/min; must be less than the process"
                        + " speed, 45 m/min. Give a lower speed, or leave the joint passage out.");
        assertThat(refusal("process: {speed: 45 m/min, joint-passage: {speed: 20 m/min, before: -1 m}}"))
                .containsExactly(
                        "line.yaml:5:69 process.joint-passage.before = -1 m; must be 0 m or more. Give the metres"
                                + " of strip before the joint that run at this speed, too, such as 5 m.");
        assertThat(warnings("process: {speed: 45 m/min, joint-passage: {speed: 20 m/min, after: 901 m}}"))
                .containsExactly(
                        "line.yaml:5:43 process.joint-passage = 901 m of strip before and after the joint; should"
                                + " be at most the usable strip of the shortest coil, 900 m. The process is slowed for the next"
                                + " joint before this one has passed: give fewer metres.");
    }

    @Test
    void jointBreakThatCannotBeIsRefusedWithItsPlace() {
        // Rule CHECK-30.
        assertThat(refusal("process: {speed: 45 m/min, joint-break: {chance: 100 %, length: 40 m, repair: 20 min}}"))
                .containsExactly(
                        "line.yaml:5:50 process.joint-break.chance = 100 %; must be at least 0 % and less than 100"
                                + " %. Give the share of joints that break in the process, such as 0.1 %.");
        assertThat(refusal("process: {speed: 45 m/min, joint-break: {chance: 1 %, length: -40 m, repair: 20 min, scrap:"
                        + " -1 m}}"))
                .containsExactly(
                        "line.yaml:5:63 process.joint-break.length = -40 m; must be more than 0 m. Give the length of the"
                                + " process section, anywhere in which a joint may break, such as 40 m.",
                        "line.yaml:5:93 process.joint-break.scrap = -1 m; must be 0 m or more. Give the metres of strip"
                                + " that a break scraps on top of that of a stop, such as 30 m.");
    }

    @Test
    void jointPassageOrBreakWithRethreadingIsRefusedWithItsPlace() {
        assertThat(refusal(
                        "practice: rethread",
                        "process: {speed: 45 m/min, joint-passage: {speed: 20 m/min}, joint-break: {chance: 1 %, length: 40"
                                + " m, repair: 20 min}}",
                        "coil-change: {rethread: 9 min}"))
                .containsExactly(
                        "line.yaml:5:43 process.joint-passage = 20 m/min; must not be given with the practice of"
                                + " rethreading, which makes no joint. Leave it out, or choose another practice.",
                        "line.yaml:5:75 process.joint-break = 1 % of joints; must not be given with the practice of"
                                + " rethreading, which makes no joint. Leave it out, or choose another practice.");
    }

    @Test
    void restartLevelAtOrBelowTheStopLevelIsRefusedWithItsPlace() {
        // x_stop = 0.75^2/(2 * 0.25) = 1.125 m
        assertThat(refusal("process: {speed: 45 m/min, deceleration: 0.25 m/s2, restart: {level: 1.125 m}}"))
                .containsExactly(
                        "line.yaml:5:70 process.restart.level = 1.125 m; must be more than the level at which the"
                                + " process must stop from 45 m/min, 1.125 m. The process would restart into its next stop, again"
                                + " and again: give a higher level, or leave it out for the stop level plus 10 % of the"
                                + " capacity.");
        assertThat(refusal("process: {speed: 45 m/min, deceleration: 0.25 m/s2, restart: {level: 1 m}}"))
                .containsExactly("line.yaml:5:70 process.restart.level = 1 m; must be more than the level at which the"
                        + " process must stop from 45 m/min, 1.125 m. The process would restart into its next stop, again"
                        + " and again: give a higher level, or leave it out for the stop level plus 10 % of the"
                        + " capacity.");
    }
}
