package runthrough.plant.builder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static runthrough.plant.builder.BuiltLines.line;
import static runthrough.plant.builder.BuiltLines.loading;
import static runthrough.plant.builder.BuiltLines.refusals;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.LineRefusedException;
import runthrough.plant.check.Message;

/** What is wrong between the parts of a described line is named, too, whatever else is wrong. */
class BuilderRelationsTest {
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
    void eighteenMistakes_eighteenMessages() {
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
                        // Above the capacity, and below the level at which slowing begins.
                        "process.slowing.resume",
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
}
