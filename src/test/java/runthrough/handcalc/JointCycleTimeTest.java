package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.WORK;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Joint;
import runthrough.plant.Joints;
import runthrough.plant.SoundLine;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/** The mean time of a joint. */
@RecordsChecks
class JointCycleTimeTest {

    private static WorkElement element(WorkTime time, Occurrence occurrence, boolean redo) {
        return new WorkElement("element", time, occurrence, redo);
    }

    private static WorkElement seconds(double seconds, Occurrence occurrence, boolean redo) {
        return element(new WorkTime.Timed(Distribution.constant(seconds)), occurrence, redo);
    }

    private static WorkElement always(double seconds, boolean redo) {
        return seconds(seconds, new Occurrence.Always(), redo);
    }

    private static CoilChange change(
            List<WorkElement> prepare, List<WorkElement> tail, List<WorkElement> join, Reject reject) {
        return new CoilChange(2, prepare, tail, join, reject);
    }

    /** W4: 1250 mm welded at 1500 mm/min are 50 s, with 20 s, 15 s and 10 s of other work 95 s. Elementary arithmetic. */
    @Test
    void elementsAddUp(CheckBook book) {
        WorkElement weld =
                element(new WorkTime.Travel(1.5 / 60, Distribution.constant(0)), new Occurrence.Always(), true);
        JointCycleTime joint = JointCycleTime.of(
                change(
                        List.of(),
                        List.of(always(20, true)),
                        List.of(always(15, true), weld, always(10, true)),
                        new Reject.Never()),
                Joints.only(Joint.alike(1.25, 0.002)));
        assertThat(joint.tail()).isEqualTo(20);
        assertThat(joint.join()).isCloseTo(75, within(1e-12));
        assertThat(joint.redo()).isZero();
        book.check(WORK, "W4", "joint cycle time: 20 s, 15 s, weld of 1250 mm at 1500 mm/min, 10 s")
                .source(Sources.WELD_TRAVEL)
                .unit("s")
                .expected(95)
                .within(1e-12, "rounding")
                .got(joint.total());
    }

    @Test
    void meanOfALaw_countsAsOftenAsItIsDone() {
        // Triangular mean 130 s; on every 10th change 40 s, by a chance of 5 % 60 s.
        WorkElement distribution =
                element(new WorkTime.Timed(Distribution.triangular(60, 90, 240)), new Occurrence.Always(), true);
        JointCycleTime joint = JointCycleTime.of(
                change(
                        List.of(),
                        List.of(seconds(40, new Occurrence.Every(10), true)),
                        List.of(distribution, seconds(60, new Occurrence.Chance(0.05), true)),
                        new Reject.Never()),
                Joints.only(Joint.alike(1, 0.002)));
        assertThat(joint.total()).isCloseTo(4 + 130 + 3, within(1e-12));
    }

    @Test
    void rejectedJoint_costsWhatIsDoneAgain() {
        // Rule CHANGE-11. A fifth of passes rejected makes 0.25 extra passes; again are 10 s of tail and 40 s of join,
        // and
        // 30 s of prepare, which the joint waits for.
        JointCycleTime joint = JointCycleTime.of(
                change(
                        List.of(always(100, false), always(30, true)),
                        List.of(always(10, true)),
                        List.of(always(40, true), always(25, false)),
                        new Reject.Chance(0.2)),
                Joints.only(Joint.alike(1, 0.002)));
        assertThat(joint.work()).isCloseTo(10 + 65 + 0.25 * (10 + 40), within(1e-12));
        assertThat(joint.waiting()).isCloseTo(0.25 * 30, within(1e-12));
        assertThat(joint.total()).isCloseTo(10 + 65 + 0.25 * (30 + 10 + 40), within(1e-12));
    }

    /** An element on every mth change, a reject on every nth: counted out over all changes of the common period. */
    @ParameterizedTest
    @CsvSource({"1, 1", "10, 10", "10, 5", "4, 6", "6, 4", "7, 3", "1, 8", "8, 1"})
    void elementAndRejectBothByNumber_fallTogetherOnCommonMultiples(int elementEvery, int rejectEvery) {
        int period = elementEvery * rejectEvery;
        int together = 0;
        for (int change = 1; change <= period; change++) {
            together += change % elementEvery == 0 && change % rejectEvery == 0 ? 1 : 0;
        }
        JointCycleTime joint = JointCycleTime.of(
                change(
                        List.of(),
                        List.of(),
                        List.of(seconds(12, new Occurrence.Every(elementEvery), true)),
                        new Reject.Every(rejectEvery)),
                Joints.only(Joint.alike(1, 0.002)));
        assertThat(joint.redo()).isCloseTo(12.0 * together / period, within(1e-12));
    }

    @Test
    void rejectByNumberAndElementByChance_areIndependent() {
        JointCycleTime joint = JointCycleTime.of(
                change(
                        List.of(),
                        List.of(),
                        List.of(seconds(12, new Occurrence.Chance(0.5), true)),
                        new Reject.Every(4)),
                Joints.only(Joint.alike(1, 0.002)));
        assertThat(joint.redo()).isCloseTo(12 * 0.5 / 4, within(1e-12));
    }

    @Test
    void rethread_isTheOneElementOfItsJoint() {
        CoilChange change = SoundLine.line()
                .rethread(Distribution.uniform(300, 500))
                .build()
                .work();
        assertThat(JointCycleTime.of(change, Joints.only(Joint.alike(1, 0.002))))
                .isEqualTo(new JointCycleTime(0, 400, 0, 0));
    }

    @Test
    void waiting_comesOnTop() {
        JointCycleTime joint = new JointCycleTime(10, 70, 5, 0).withWaiting(15);
        assertThat(joint.work()).isEqualTo(85);
        assertThat(joint.total()).isEqualTo(100);
    }
}
