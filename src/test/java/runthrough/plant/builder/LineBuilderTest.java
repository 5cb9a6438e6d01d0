package runthrough.plant.builder;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.plant.builder.BuiltLines.line;
import static runthrough.plant.builder.BuiltLines.loading;

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
import runthrough.plant.check.Message;

/** What is described in code is in the line. */
class LineBuilderTest {
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
    void formsOfAnAccumulatorAreGivenByTheirNumbers() {
        assertThat(line().strands(8, 9, 0.2, 0.3).build().line().accumulator().form())
                .isEqualTo(new StorageForm.Strands(8, 9, 0.2, 0.3, false));
        assertThat(line().loops(20, 4, 3.5, 0.5).build().line().accumulator().form())
                .isEqualTo(new StorageForm.FreeLoop(20, 4, 3.5, 0.5));
        assertThat(line().spiral(40, 4.2, 2.4).build().line().accumulator().form())
                .isEqualTo(new StorageForm.Spiral(40, 4.2, 2.4));
    }

    @Test
    void warningsDoNotFailTheBuild() {
        CheckedLine built = line().entry(1.5, 0.4, 0.5).build();

        assertThat(built.warnings()).extracting(Message::path).containsExactly("entry.top-speed");
    }
}
