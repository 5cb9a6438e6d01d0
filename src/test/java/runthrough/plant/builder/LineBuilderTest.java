package runthrough.plant.builder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

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
                        "coil-change.shifts[2].hours = 0.0; must be more than 0 and finite. Give a value in its range.",
                        "process.joint-passage.speed = 0.0; must be more than 0 and finite. Give a value in its range.",
                        "process.joint-break.chance = 1.0; must be 0 or more and below 1. Give a value in its range.");
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
                        "accumulator",
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
                        "coil-change.reject");
        assertThat(refused)
                .hasMessageContaining("entry.acceleration = 0.0; must be more than 0. Give a value in its range.\n")
                .hasMessageContaining("coil-change.crew = 0; must be 1 or more. Give a value in its range.\n");
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
                .hasMessageStartingWith("entry.top-speed = 72 m/min; must be more than the process speed, 90 m/min.");
    }

    @Test
    void aWrongNumberThatNothingElseDependsOnHidesNoRelation() {
        assertThat(refusals(line().crew(0).entry(1.2, 0.4, 0.5)))
                .containsExactly(
                        "coil-change.crew = 0; must be 1 or more. Give a value in its range.",
                        "entry.top-speed = 72 m/min; must be more than the process speed, 90 m/min. The entry must outrun"
                                + " the process: give a higher speed here or a lower one there.");
    }

    @Test
    void warningsDoNotFailTheBuild() {
        CheckedLine built = line().entry(1.5, 0.4, 0.5).build();

        assertThat(built.warnings()).extracting(Message::path).containsExactly("entry.top-speed");
    }
}
