package runthrough.plant.builder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.Bending;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.check.CheckedLine;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.LineRefusedException;
import runthrough.plant.check.Message;

class LineBuilderTest {
    private static final double NOT_GIVEN = Double.NaN;

    /** A coil of 600 m, the entry up to 2.5 m/s, 200 m of strip, the process at 1.5 m/s, a joint of 80 s. */
    private static LineBuilder line() {
        return new LineBuilder()
                .coil("coil", 0.002, 1.25, 7850, Distribution.constant(600))
                .entry(2.5, 0.4, 0.5)
                .capacity(200)
                .process(1.5, 0.2, 0.5)
                .join("weld", Distribution.constant(80));
    }

    private static List<String> refusals(LineBuilder line) {
        LineRefusedException refused = catchThrowableOfType(LineRefusedException.class, line::build);
        assertThat(refused).isNotNull();
        return refused.messages().stream().map(Message::text).toList();
    }

    @Test
    void peopleByShiftsAndJointsOnTheirWay_areInTheLine() {
        Line built = line().shift("early", 28_800, 3, new Break(7200, 1800, 1))
                .shift("night", 28_800, 2)
                .jointPassage(0.5, 5, 10)
                .jointBreak(0.001, 40, Distribution.constant(1200), 30)
                .scrapPerJoint(1.5)
                // What is said of the work later leaves the shifts.
                .prepare(loading().withPeople(2).notToBePutDown())
                .rejectChance(0.02)
                .build()
                .line();

        assertThat(built.change().crew()).isEqualTo(3);
        assertThat(built.change().shifts().orElseThrow())
                .isEqualTo(new Shifts(List.of(
                        new Shift("early", 28_800, 3, List.of(new Break(7200, 1800, 1))),
                        new Shift("night", 28_800, 2, List.of()))));
        assertThat(built.change().prepare())
                .containsExactly(loading().withPeople(2).notToBePutDown());
        assertThat(built.process().jointPassage()).contains(new ProcessSection.JointPassage(0.5, 5, 10));
        assertThat(built.process().jointBreak())
                .contains(new ProcessSection.JointBreak(0.001, 40, Distribution.constant(1200), 30));
        assertThat(built.process().scrapPerJoint()).isEqualTo(1.5);
    }

    @Test
    void aCrewThatIsAlwaysThere_besideShifts_isRefused() {
        // Rule CHECK-27.
        Shifts shifts = new Shifts(List.of(new Shift("early", 28_800, 2, List.of())));
        for (LineBuilder both : List.of(
                line().shifts(shifts).crew(1),
                line().crew(1).shifts(shifts),
                line().crew(1).shift("early", 28_800, 2))) {
            assertThat(refusals(both))
                    .containsExactly(
                            "coil-change.crew = 1; must not stand beside coil-change.shifts. Leave out the crew, or"
                                    + " the shifts.");
        }
        // All work at once takes the place of what was said of it.
        CoilChange alone = line().crew(1).build().line().change();
        assertThat(line().crew(3).shifts(shifts).change(alone).build().line().change())
                .isEqualTo(alone);
    }

    @Test
    void aPartThatIsNull_isNamed() {
        Coil noCoil = missing();
        Distribution noTime = missing();
        assertThatThrownBy(() -> line().coil(noCoil))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("coil");
        assertThatThrownBy(() -> line().join("weld", noTime)).hasMessage("time");
        assertThatThrownBy(() -> line().jointBreak(0.001, 40, noTime, 0)).hasMessage("repair");
        assertThatThrownBy(() -> line().shifts(missing())).hasMessage("whole");
    }

    @SuppressWarnings({"NullAway", "TypeParameterUnusedInFormals"}) // what a caller without a null check may give
    private static <T> T missing() {
        return null;
    }

    @Test
    void shiftsAndJointsOutOfTheirRange_areRefusedWithTheRest() {
        assertThat(refusals(line().shift("early", 28_800, 2)
                        .shift("late", 0, 2)
                        .jointPassage(0, 5, 5)
                        .jointBreak(1, 40, Distribution.constant(1200), 0)))
                .containsExactly(
                        "coil-change.shifts[2].hours = 0 s; must be more than 0 and finite. Give a time in seconds.",
                        "process.joint-passage.speed = 0 m/s; must be more than 0 and finite. Give a speed in metres per"
                                + " second.",
                        "process.joint-break.chance = 1; must be 0 or more and below 1. Give a share of 1, such as 0.02 for 2 %.");
    }

    private static WorkElement loading() {
        return new WorkElement(
                "load",
                new WorkElement.WorkTime.Timed(Distribution.constant(90)),
                new WorkElement.Occurrence.Always(),
                false);
    }

    @Test
    void everyPartIsInTheLine() {
        Line built = new LineBuilder()
                .coil("strip", 0.002, 1.25, 7850, Distribution.constant(600))
                .entry(2.5, 0.4, 0.6)
                .uncoilers(2)
                .uncoilerPath(12)
                .creep(0.3, 5)
                .accumulator(new StorageForm.Direct(200))
                .fillRateLimit(0.8)
                .reserve(10)
                .overtravelAllowance(1)
                .process(1.5, 0.2, 0.5)
                .restart(60, Distribution.constant(7))
                .slowing(0.9, 40, 70)
                .downtime(Distribution.exponential(3600), Distribution.constant(120))
                .processPath(30)
                .scrapPerStop(2)
                .crew(2)
                .prepare("load", Distribution.constant(90))
                .tail("shear", Distribution.constant(10))
                .join("weld", Distribution.uniform(50, 60))
                .rejectChance(0.02)
                .bending(new Bending(210e9, 280e6, 0.4))
                .build()
                .line();

        assertThat(built)
                .isEqualTo(new Line(
                        new CoilSource.Repeated(new Coil(
                                "strip",
                                new Coil.Strip(0.002, 1.25, 7850),
                                new CoilSize.ByLength(Distribution.constant(600)))),
                        new Entry(2, 2.5, 0.4, 0.6, Optional.of(new Entry.Creep(0.3, 5)), 12),
                        new ProcessSection(
                                new ProcessSection.Drive(1.5, 0.2, 0.5),
                                new ProcessSection.Restart(60, Distribution.constant(7)),
                                Optional.of(new ProcessSection.Slowing(0.9, 40, 70)),
                                Optional.of(new ProcessSection.Downtime(
                                        Distribution.exponential(3600), Distribution.constant(120))),
                                30,
                                new ProcessSection.Scrap(2, 0),
                                new ProcessSection.JointsInProcess(Optional.empty(), Optional.empty())),
                        new CoilChange(
                                2,
                                List.of(element("load", Distribution.constant(90))),
                                List.of(element("shear", Distribution.constant(10))),
                                List.of(element("weld", Distribution.uniform(50, 60))),
                                new Reject.Chance(0.02)),
                        new Practice.JoinWithAccumulator(new Accumulator(new StorageForm.Direct(200), 0.8, 10, 1)),
                        Optional.of(new Bending(210e9, 280e6, 0.4))));
    }

    private static WorkElement element(String name, Distribution time) {
        return new WorkElement(name, new WorkElement.WorkTime.Timed(time), new WorkElement.Occurrence.Always(), true);
    }

    @Test
    void theOtherPracticesHoldWhatTheyNeed() {
        assertThat(line().withoutAccumulator().build().line().practice())
                .isEqualTo(new Practice.JoinWithoutAccumulator());
        assertThat(line().rethread(Distribution.constant(500)).build().line().practice())
                .isEqualTo(new Practice.Rethread(Distribution.constant(500)));
    }

    @Test
    void limitsOfTheAccumulatorMayBeSaidBeforeOrAfterItsCapacity() {
        assertThat(line().reserve(5).capacity(150).build().line())
                .isEqualTo(line().capacity(150).reserve(5).build().line());
    }

    @Test
    void whatIsMissingIsNamedAllAtOnce() {
        assertThat(refusals(new LineBuilder()))
                .containsExactly(
                        "coil = nothing; must be given. Give the coils.",
                        "accumulator = nothing; must be given. Give its capacity, or say how the line does without.",
                        "entry.top-speed = nothing; must be given. Give the drive of the entry.",
                        "process.speed = nothing; must be given. Give the drive of the process.");
    }

    @Test
    void numbersOutOfTheirRangesAreNamedAllAtOnce() {
        // Rule CHECK-1.
        LineBuilder wrong = line().coil("coil", -0.002, 1.25, 7850, Distribution.constant(600))
                .entry(-2.5, 0, NOT_GIVEN)
                .uncoilers(0)
                .uncoilerPath(-1)
                .creep(0, 5)
                .capacity(-200)
                .fillRateLimit(0)
                .reserve(-1)
                .overtravelAllowance(-1)
                .process(0, -0.2, 0)
                .restart(-1, Distribution.constant(0))
                .slowing(-1, 40, NOT_GIVEN)
                .processPath(-3)
                .scrapPerStop(-4)
                .crew(0)
                .rejectChance(1);
        LineRefusedException refused = catchThrowableOfType(LineRefusedException.class, wrong::build);

        assertThat(refused.messages()).allMatch(Message::isError);
        assertThat(refused.messages())
                .extracting(Message::path)
                .containsExactly(
                        "coil.thickness",
                        "entry.top-speed",
                        "entry.acceleration",
                        "entry.deceleration",
                        "entry.uncoilers",
                        "entry.uncoiler-path",
                        "entry.creep.speed",
                        "accumulator.capacity",
                        "accumulator.fill-rate-limit",
                        "accumulator.reserve",
                        "accumulator.overtravel-allowance",
                        "process.speed",
                        "process.acceleration",
                        "process.deceleration",
                        "process.restart.level",
                        "process.slowing.speed",
                        "process.path",
                        "process.scrap-per-stop",
                        "coil-change.crew",
                        "coil-change.reject.chance");
        assertThat(refused)
                .hasMessageContaining(
                        "entry.acceleration = 0 m/s2; must be more than 0. Give it in m/s2, infinite for a speed that"
                                + " changes at once.\n")
                .hasMessageContaining("coil-change.crew = 0; must be 1 or more. Give a whole number.\n");
    }

    @Test
    void whatRelatesThePartsIsNamedAllAtOnce_warningsWithIt() {
        // Rules CHECK-6, CHECK-7, CHECK-10.
        LineBuilder wrong =
                line().entry(1.2, 0.4, 0.5).creep(1.5, 9).reserve(250).join("set up", Distribution.constant(5));

        assertThat(refusals(wrong))
                .isEqualTo(LineCheck.check(wrong.describe()).stream()
                        .map(Message::text)
                        .toList())
                .hasSizeGreaterThanOrEqualTo(3);
        assertThatThrownBy(wrong::build)
                .isInstanceOf(LineRefusedException.class)
                .hasMessageStartingWith("entry.top-speed = 1.2 m/s; must be more than the process speed, 1.5 m/s.");
    }

    @Test
    void everyNumberOfAStepIsNamed_withItsUnit() {
        // Rule CHECK-1.
        assertThat(refusals(line().coil("coil", -0.003, 0, NOT_GIVEN, Distribution.constant(600))))
                .containsExactly(
                        "coil.thickness = -0.003 m; must be more than 0 and finite. Give a length in metres.",
                        "coil.width = 0 m; must be more than 0 and finite. Give a length in metres.",
                        "coil.density = NaN kg/m3; must be more than 0 and finite. Give a density in kg/m3.");
        assertThat(refusals(line().creep(-1, -2)
                        .slowing(-1, -2, -3)
                        .jointPassage(-1, -2, -3)
                        .jointBreak(2, 0, Distribution.constant(900), -1)
                        .shift("early", -8, 0)
                        .process(-1, -2, -3)))
                .extracting(text -> text.substring(0, text.indexOf(';')))
                .containsExactly(
                        "entry.creep.speed = -1 m/s",
                        "entry.creep.length = -2 m",
                        "process.slowing.speed = -1 m/s",
                        "process.slowing.level = -2 m",
                        "process.slowing.resume = -3 m",
                        "process.joint-passage.speed = -1 m/s",
                        "process.joint-passage.before = -2 m",
                        "process.joint-passage.after = -3 m",
                        "process.joint-break.chance = 2",
                        "process.joint-break.length = 0 m",
                        "process.joint-break.scrap = -1 m",
                        "coil-change.shifts[1].hours = -8 s",
                        "coil-change.shifts[1].crew = 0",
                        "process.speed = -1 m/s",
                        "process.acceleration = -2 m/s2",
                        "process.deceleration = -3 m/s2");
    }

    @Test
    void formsOfAnAccumulatorAreGivenByTheirNumbers() {
        assertThat(line().strands(8, 9, 0.2, 0.3).build().line().accumulator().form())
                .isEqualTo(new StorageForm.Strands(8, 9, 0.2, 0.3, false));
        assertThat(line().loops(20, 4, 3.5, 0.5).build().line().accumulator().form())
                .isEqualTo(new StorageForm.FreeLoop(20, 4, 3.5, 0.5));
        assertThat(line().spiral(40, 4.2, 2.4).build().line().accumulator().form())
                .isEqualTo(new StorageForm.Spiral(40, 4.2, 2.4));

        // Rule CHECK-1.
        assertThat(refusals(line().strands(0, -1, -1, 0)))
                .containsExactly(
                        "accumulator.strands = 0; must be 1 or more. Give a whole number.",
                        "accumulator.stroke = -1 m; must be more than 0 and finite. Give a length in metres.",
                        "accumulator.carriage-speed = -1 m/s; must be more than 0. Give it in m/s, infinite for no limit.",
                        "accumulator.emptying-speed = 0 m/s; must be more than 0. Give it in m/s, infinite for no limit.");
        assertThat(refusals(line().capacity(-1)))
                .containsExactly(
                        "accumulator.capacity = -1 m; must be more than 0 and finite. Give a length in metres.");
        assertThat(refusals(line().strands(8, 9, 1, 1).fillRateLimit(0).overtravelAllowance(-1)))
                .containsExactly(
                        "accumulator.fill-rate-limit = 0 m/s; must be more than 0. Give it in m/s, infinite for no limit.",
                        "accumulator.overtravel-allowance = -1 m; must be 0 or more. Give it in metres, infinite where"
                                + " overfull is not counted.");
        // Rule CHECK-9: without a stroke there is no accumulator; a file refuses 0 m too.
        assertThat(refusals(line().strands(8, 0, 1, 1)))
                .first(STRING)
                .isEqualTo("accumulator = 0 m of strip; must hold more than 0 to join while the process runs. Give the"
                        + " accumulator, or the practice of joining without one.");
        assertThat(refusals(line().loops(0, 0, 0.5, 0.6)))
                .containsExactly(
                        "accumulator.loops = 0; must be 1 or more. Give a whole number.",
                        "accumulator.span = 0 m; must be more than 0 and finite. Give a length in metres.",
                        "accumulator.greatest-sag = 0.5 m; must be the least sag, 0.6 m, or more. Give a length in metres.");
        assertThat(refusals(line().spiral(0, 2.3, -2.4)))
                .containsExactly(
                        "accumulator.wraps = 0; must be more than 0 and finite. Give a value in its range.",
                        "accumulator.empty-diameter = -2.4 m; must be more than 0 and finite. Give a length in metres.");
    }

    @Test
    void aRecordNamesAllThatItDoesNotTake() {
        assertThatThrownBy(() -> new StorageForm.Strands(0, -1, -1, 0, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("""
                        accumulator strands = 0; must be 1 or more
                        accumulator stroke = -1 m; must be more than 0 and finite
                        accumulator carriage speed = -1 m/s; must be more than 0
                        accumulator emptying speed = 0 m/s; must be more than 0""");
    }

    @Test
    void whatIsOutOfRangeHidesNoRelationBetweenTheOthers() {
        // Rule CHECK-35. The carriage travel is refused; the entry is slower than the process all the same.
        assertThat(refusals(line().strands(8, -9, 1, 1).entry(1.2, 0.4, 0.5)))
                .containsExactly(
                        "accumulator.stroke = -9 m; must be more than 0 and finite. Give a length in metres.",
                        "entry.top-speed = 1.2 m/s; must be more than the process speed, 1.5 m/s. The entry must outrun"
                                + " the process: give a higher speed here or a lower one there.");
        // Of one step the numbers that are taken are held against the others.
        assertThat(refusals(line().entry(1.2, -0.4, 0.5)))
                .extracting(text -> text.substring(0, text.indexOf(' ')))
                .containsExactly("entry.acceleration", "entry.top-speed");
        // What rests on the refused number is not known: whether 1.2 m/s suffice for a process without a speed.
        assertThat(refusals(line().entry(1.2, 0.4, 0.5).process(-1, 0.2, 0.5)))
                .containsExactly(
                        "process.speed = -1 m/s; must be more than 0 and finite. Give a speed in metres per second.");
    }

    @Test
    void whatIsMissingHidesNoRelationBetweenTheOthers() {
        // Rule CHECK-35.
        LineBuilder noCoil = new LineBuilder()
                .entry(1.2, 0.4, 0.5)
                .capacity(20)
                .reserve(30)
                .process(1.5, 0.2, 0.5)
                .join("weld", Distribution.constant(80));
        assertThat(refusals(noCoil))
                .extracting(text -> text.substring(0, text.indexOf(';')))
                .containsExactly("coil = nothing", "accumulator.reserve = 30 m");
    }

    @Test
    void seventeenMistakes_seventeenMessages() {
        // Rules CHECK-1, CHECK-7, CHECK-8, CHECK-14, CHECK-15, CHECK-26, CHECK-29, CHECK-35.
        // To stop from 2 m/s takes 2^2 / (2 * 0.5) = 4 m, more than the 3 m of creep.
        LineBuilder wrong = line().coil("coil", -0.002, -1.25, 7850, Distribution.constant(600))
                .entry(1.2, -0.4, 0.5)
                .creep(2, 3)
                .uncoilers(0)
                .capacity(50)
                .reserve(60)
                .fillRateLimit(-1)
                .process(1.5, -0.2, 0.5)
                .slowing(1.6, 70, 60)
                .jointPassage(1.5, 5, -5)
                .processPath(-1)
                .prepare(loading().withPeople(4))
                .crew(3);

        assertThat(refusals(wrong))
                .extracting(text -> text.substring(0, text.indexOf(" =")))
                .containsExactlyInAnyOrder(
                        "coil.thickness",
                        "coil.width",
                        "entry.acceleration",
                        "entry.uncoilers",
                        "accumulator.fill-rate-limit",
                        "process.acceleration",
                        "process.joint-passage.after",
                        "process.path",
                        "entry.top-speed",
                        "entry.creep.speed",
                        "entry.creep.length",
                        "accumulator.reserve",
                        "process.slowing.speed",
                        "process.slowing.level",
                        "process.slowing.resume",
                        "process.joint-passage.speed",
                        "coil-change.prepare[1].load.people");
    }

    @Test
    void aWrongNumberThatNothingElseDependsOnHidesNoRelation() {
        assertThat(refusals(line().crew(0).entry(1.2, 0.4, 0.5)))
                .containsExactly(
                        "coil-change.crew = 0; must be 1 or more. Give a whole number.",
                        "entry.top-speed = 1.2 m/s; must be more than the process speed, 1.5 m/s. The entry must outrun"
                                + " the process: give a higher speed here or a lower one there.");
    }

    @Test
    void warningsDoNotFailTheBuild() {
        CheckedLine built = line().entry(1.5, 0.4, 0.5).build();

        assertThat(built.warnings()).extracting(Message::path).containsExactly("entry.top-speed");
    }
}
