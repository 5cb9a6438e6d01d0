package runthrough.study.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static runthrough.study.sizing.SizingStudyTest.size;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.WorkElement;
import runthrough.simulation.PlainLine;
import runthrough.simulation.records.WorkRecord.WorkList;
import runthrough.study.cause.Cause;
import runthrough.study.sizing.Sizing.Answer;

/**
 * Lines for which no accumulator is large enough, and what would free them. The plain line of {@link PlainLine}: coils of 600 m,
 * entry 2.5 m/s, process 1.5 m/s, speeds change at once.
 */
class NoCapacityIsEnoughTest {

    @Test
    void anEntryNoFasterThanTheProcessNeverRefills_whateverTheCapacity() {
        // With the joint the process uses 600 m of strip and 90 m more for each coil. The entry would have to gain 90 m
        // while
        // 600 m run: 600 (1 - 1.5/v) = 90 at v = 1.7647 m/s.
        Line line = new PlainLine()
                .entry(1.5, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .join(60)
                .build();
        Sizing sizing = size(line, 0.9);

        assertThat(sizing.answer()).isEqualTo(Answer.NONE_IS_ENOUGH);
        assertThat(sizing.capacity()).isEmpty();
        assertThat(sizing.curve()).isEmpty();
        Sizing.NoneEnough none = sizing.noneEnough().orElseThrow();
        assertThat(none.cause()).isEqualTo(Cause.ACCUMULATOR_NOT_FULL);
        assertThat(none.growth().mean()).isCloseTo(90, within(1e-6));
        assertThat(remedy(none, Remedy.What.ENTRY_TOP_SPEED).now()).isEqualTo(1.5);
        assertThat(remedy(none, Remedy.What.ENTRY_TOP_SPEED).needed().orElseThrow())
                .isBetween(1.7647, 1.7647 * 1.006);
        // Uncoilers do not make an entry faster that is no faster than the process, nor does quicker work, but for no
        // work at all.
        assertThat(remedy(none, Remedy.What.UNCOILERS).needed()).isEmpty();
        assertThat(remedy(none, Remedy.What.JOINT_CYCLE_TIME).needed()).hasValue(-60);
        // 600 (1 - v/1.5) = 60 v at v = 30/23 m/s; in steps of 0.01 m/min.
        assertThat(remedy(none, Remedy.What.PROCESS_SPEED).needed().orElseThrow())
                .isBetween(30 / 23.0 - 0.0101 / 60, 30 / 23.0);
        assertThat(none.remedies()).extracting(Remedy::what).doesNotContain(Remedy.What.FILL_RATE_LIMIT);
    }

    /**
     * The same line with downtime of 1 h after 20 000 s on average: about 45 coils of 400 s with 90 m lacking at each, 4 km from one
     * downtime to the next, which the entry brings back meanwhile (5400 m). An accumulator of kilometres is no answer.
     */
    @Test
    void whatOnlyDowntimeFillsAgainIsNotSized() {
        Line line = new PlainLine()
                .entry(1.5, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .join(60)
                .downtime(Distribution.exponential(20_000), Distribution.constant(3600))
                .build();
        Sizing sizing = size(line, 0.9);

        assertThat(sizing.answer()).isEqualTo(Answer.NONE_IS_ENOUGH);
        assertThat(sizing.noneEnough().orElseThrow().byDowntime()).isTrue();
        assertThat(sizing.noneEnough().orElseThrow().growth().mean()).isCloseTo(90, within(1e-6));
    }

    @Test
    void aCarriageTooSlowToRefillIsNamed() {
        // Coils of 600 m, 1.5 m/s: with an overspeed of F the coil takes 600/(1.5 + F) s and gains 600 F/(1.5 + F) m:
        // 90 m at F
        // = 0.2647 m/s.
        Line line = new PlainLine().fillRate(0.2).join(60).build();
        Sizing.NoneEnough none = size(line, 0.9).noneEnough().orElseThrow();

        assertThat(none.cause()).isEqualTo(Cause.ACCUMULATOR_NOT_FULL);
        assertThat(remedy(none, Remedy.What.FILL_RATE_LIMIT).needed().orElseThrow())
                .isBetween(0.2647, 0.2647 * 1.006);
        assertThat(remedy(none, Remedy.What.ENTRY_TOP_SPEED).needed()).isEmpty();
    }

    @Test
    void preparationLongerThanACoilLastsIsNamed() {
        // A coil lasts 600 m / 1.5 m/s = 400 s, and takes 500 s to prepare: two uncoilers or five, one person prepares
        // at a
        // time. Every 500 s 600 m come and 750 m are used.
        Line line = new PlainLine().prepare(500).join(60).build();
        Sizing sizing = size(line, 0.9);

        assertThat(sizing.answer()).isEqualTo(Answer.NONE_IS_ENOUGH);
        Sizing.NoneEnough none = sizing.noneEnough().orElseThrow();
        assertThat(none.cause()).isEqualTo(Cause.WAITING_FOR_PREPARATION);
        assertThat(none.growth().mean()).isCloseTo(150, within(1e-6));
        assertThat(remedy(none, Remedy.What.PREPARATION_TIME).now()).isEqualTo(500);
        assertThat(remedy(none, Remedy.What.PREPARATION_TIME).needed().orElseThrow())
                .isBetween(400 / 1.006, 400.0);
        assertThat(remedy(none, Remedy.What.ENTRY_TOP_SPEED).needed()).isEmpty();
        assertThat(remedy(none, Remedy.What.UNCOILERS).needed()).isEmpty();
    }

    /**
     * The same at random: 0 to 2400 s to prepare, 1200 s on average, where a coil lasts 400 s: 800 s x 1.5 m/s = 1200 m are lacking at
     * each change. Even 200 km run empty in some 170 of them, and after that nothing is lacking any more.
     */
    @Test
    void whatEmptiesEvenAHugeAccumulatorSoonIsNotSized() {
        Line line = new PlainLine()
                .prepare(new WorkElement(
                        "prepare",
                        new WorkElement.WorkTime.Timed(Distribution.uniform(0, 2400)),
                        new WorkElement.Occurrence.Always(),
                        false))
                .join(60)
                .build();
        Sizing sizing = size(line, 0.9);

        assertThat(sizing.answer()).isEqualTo(Answer.NONE_IS_ENOUGH);
        Sizing.NoneEnough none = sizing.noneEnough().orElseThrow();
        assertThat(none.cause()).isEqualTo(Cause.WAITING_FOR_PREPARATION);
        // A standard deviation of 693 s x 1.5 m/s over some 4 x 85 coil changes: three standard errors of 56 m.
        assertThat(none.growth().mean()).isCloseTo(1200, within(169.0));
        assertThat(remedy(none, Remedy.What.JOINT_CYCLE_TIME).needed()).isEmpty();
        assertThat(remedy(none, Remedy.What.ENTRY_TOP_SPEED).needed()).isEmpty();
    }

    @Test
    void aSecondUncoilerIsNamedWhereItHelps() {
        // One uncoiler: every joint waits for 200 s of preparation. 260 s take 390 m, and a coil gains 600 (1 -
        // 1.5/2.5) =
        // 240 m.
        Line line = new PlainLine().uncoilers(1, 0).prepare(200).join(60).build();
        Sizing.NoneEnough none = size(line, 0.9).noneEnough().orElseThrow();

        assertThat(none.cause()).isEqualTo(Cause.WAITING_FOR_PREPARATION);
        assertThat(remedy(none, Remedy.What.UNCOILERS).needed()).hasValue(2);
        // 600 (1 - 1.5/v) = 390 at v = 4.2857 m/s.
        assertThat(remedy(none, Remedy.What.ENTRY_TOP_SPEED).needed().orElseThrow())
                .isBetween(4.2857, 4.2857 * 1.006);
    }

    @Test
    void aSecondPersonIsNamedWhereOneIsTooBusy() {
        // Alone: preparing 350 s and joining 60 s are 410 s of a cycle of 400 s. Two do both at once.
        Line line = new PlainLine().crew(1).prepare(350).join(60).build();
        Sizing.NoneEnough none = size(line, 0.9).noneEnough().orElseThrow();

        assertThat(none.cause()).isEqualTo(Cause.WAITING_FOR_PREPARATION);
        assertThat(remedy(none, Remedy.What.CREW).needed()).hasValue(2);
    }

    /**
     * The joint takes two people and 60 s; 1000 s with two of them, then 1000 s with one. In 2000 s 3000 m are used, and come: no
     * more than 2.5 m/s x 1000 s and a coil of 600 m on its way when the second leaves, less 2.5 m/s x 60 s for each of three joints
     * at least. With two at all hours 600 m come in 240 s + 60 s, 2 m/s.
     */
    @Test
    void jointsThatWaitForPeople_areHeldApartFromThoseThatWaitForTheirCoils() {
        Line line = new PlainLine()
                .crew(2)
                .prepare(10)
                .join(PlainLine.once(60).withPeople(2))
                .shifts(new Shift("day", 1000, 2, List.of()), new Shift("night", 1000, 1, List.of()))
                .build();
        Sizing.NoneEnough none = size(line, 0.9).noneEnough().orElseThrow();

        assertThat(none.cause()).isEqualTo(Cause.WAITING_FOR_PEOPLE);
        // Rule LEVER-7: the largest crew; two by night are three by day.
        assertThat(remedy(none, Remedy.What.CREW).now()).isEqualTo(2);
        assertThat(remedy(none, Remedy.What.CREW).needed()).hasValue(3);
        assertThat(none.remedies())
                .filteredOn(remedy -> remedy.what() == Remedy.What.CREW_OF_SHIFT)
                .extracting(
                        remedy -> remedy.shift().orElseThrow(),
                        remedy -> remedy.needed().orElse(Double.NaN))
                .containsExactly(tuple("day", Double.NaN), tuple("night", 2.0));
        assertThat(none.remedies()).extracting(Remedy::what).doesNotContain(Remedy.What.BREAKS);
    }

    @Test
    void breaksThatAreTooLong_areNamed() {
        // The same, but the second person is on a break of 1000 s.
        Line line = new PlainLine()
                .crew(2)
                .join(PlainLine.once(60).withPeople(2))
                .shifts(new Shift("day", 2000, 2, List.of(new Break(1000, 1000, 1))))
                .build();
        Sizing.NoneEnough none = size(line, 0.9).noneEnough().orElseThrow();

        assertThat(none.cause()).isEqualTo(Cause.WAITING_FOR_PEOPLE);
        assertThat(remedy(none, Remedy.What.BREAKS).now()).isEqualTo(1000);
        assertThat(remedy(none, Remedy.What.BREAKS).needed()).hasValue(0);
        assertThat(none.remedies()).extracting(Remedy::what).doesNotContain(Remedy.What.CREW_OF_SHIFT);
    }

    @Test
    void workOfAJointThatTakesTooLong_isGivenAsSecondsOffEveryPass() {
        // Rules LEVER-4, LEVER-9. A coil gains 600 (1 - 1.5/2.5) = 240 m, 160 s of standing; 200 s of work: 40 s off
        // it, in steps of
        // 0.01 s.
        // Of the tail alone not even all of it is enough.
        Line line = new PlainLine().crew(5).tail(30).join(100, 70).build();
        Sizing.NoneEnough none = size(line, 0.9).noneEnough().orElseThrow();

        assertThat(none.cause()).isEqualTo(Cause.ACCUMULATOR_NOT_FULL);
        Remedy joint = remedy(none, Remedy.What.JOINT_CYCLE_TIME);
        assertThat(joint.now()).isZero();
        assertThat(joint.needed().orElseThrow()).isBetween(-40.0101, -40.0);
        assertThat(joint.tried()).isEqualTo(-170);
        assertThat(none.remedies())
                .filteredOn(remedy -> remedy.what() == Remedy.What.ELEMENT)
                .extracting(
                        remedy -> remedy.element().orElseThrow().list(),
                        remedy -> remedy.needed().isPresent())
                .containsExactly(tuple(WorkList.TAIL, false), tuple(WorkList.JOIN, true), tuple(WorkList.JOIN, true));
    }

    private static Remedy remedy(Sizing.NoneEnough none, Remedy.What what) {
        return none.remedies().stream()
                .filter(one -> one.what() == what)
                .findFirst()
                .orElseThrow();
    }
}
