package runthrough.plant.builder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;
import static runthrough.plant.builder.BuiltLines.line;
import static runthrough.plant.builder.BuiltLines.refusals;

import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.Distribution;
import runthrough.plant.StorageForm;
import runthrough.plant.check.LineRefusedException;
import runthrough.plant.check.Message;

/** Numbers and parts that the builder does not take are named, all at once. */
class BuilderRangesTest {
    private static final double NOT_GIVEN = Double.NaN;

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

    @Test
    void formsOfAnAccumulatorNameTheirNumbersToo() {
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
}
