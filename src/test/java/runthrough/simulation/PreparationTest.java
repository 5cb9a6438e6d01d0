package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.every;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * Who prepares which coil when: uncoilers, the strip path to the joiner, a crew of one or more.
 *
 * <p>All speeds jump; the process runs 1.5 m/s and never stops, so that without waiting the n-th coil change of coils of 600
 * m starts at n 400 s. The accumulator is large enough for any wait.
 */
class PreparationTest {

    private static PlainLine line() {
        return new PlainLine().capacity(10_000);
    }

    /** Start and end of each piece of work in {@code list}, as "change: start-end" in whole seconds. */
    private static List<String> work(Replication run, WorkList list) {
        return run.work().stream()
                .filter(piece -> piece.list() == list)
                .map(piece -> piece.change() + ": " + Math.round(piece.start()) + "-" + Math.round(piece.end()))
                .collect(Collectors.toList());
    }

    @Test
    void s01_twoUncoilers_nextCoilIsPreparedFromTimeZero_theOneAfterWhenAnUncoilerIsFree() {
        // Rule CHANGE-6.
        Replication run = line().uncoilers(2, 0).prepare(100).join(60).run(3);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 0-100", "2: 400-500", "3: 800-900", "4: 1200-1300");
        assertThat(run.changes()).allMatch(change -> change.waiting() == 0 && change.jointCycleTime() == 60);
    }

    @Test
    void s02_oneUncoiler_preparesWithTheStripStanding() {
        // Rules CHANGE-6, CHANGE-11.
        Replication run = line().uncoilers(1, 0).prepare(100).join(60).run(1);
        ChangeRecord change = run.changes().get(0);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 400-500");
        assertThat(work(run, WorkList.JOIN)).containsExactly("1: 500-560");
        assertNear(change.waiting(), 100);
        assertNear(change.jointCycleTime(), 160);
    }

    @Test
    void s03_threeUncoilers_twoCoilsAreMadeReadyOneAfterAnother() {
        // Rule CHANGE-6.
        Replication run = line().uncoilers(3, 0).prepare(150).join(60).run(2);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 0-150", "2: 150-300", "3: 400-550", "4: 800-950");
    }

    @Test
    void s04_threeUncoilers_slowPreparation_oneAtATimeWithNothingBetween() {
        // Rule CHANGE-6.
        // 450 s each: ready at 450, 900, 1350. Changes start at 400 (waits 50, T2 = 510), 800 (waits 100, T2 = 960),
        // 1200 (150).
        Replication run = line().uncoilers(3, 0).prepare(450).join(60).run(3);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 0-450", "2: 450-900", "3: 900-1350");
        assertThat(run.changes()).extracting(ChangeRecord::waiting).containsExactly(50.0, 100.0, 150.0);
    }

    @Test
    void s05_oneUncoilerWithAPath_preparationBeginsWhenTheTailHasLeftTheUncoiler() {
        // Rule CHANGE-7.
        // r = 75 m at 350 s; the tail stops at 400 s.
        Replication run = line().uncoilers(1, 75).prepare(100).join(60).run(1);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 350-450");
        assertNear(run.changes().get(0).waiting(), 50);
    }

    @Test
    void s06_pathIsPassedDuringRunOut_atTheInstantTheStripHasMovedThatFar() {
        // Rule CHANGE-7.
        // Entry slows at 0.5 m/s2 from r = 2.25: r = v^2 = 1.0 when v = 1.0, 1 s after T0 at 398.5 s.
        Replication run = line().entry(2.5, 0.4, 0.5)
                .uncoilers(1, 1)
                .prepare(100)
                .join(60)
                .run(1);

        assertNear(run.work().get(0).start(), 399.5);
    }

    @Test
    void s07_coilNoLongerThanThePath_countsAsGoneWhenItsJointIsReleased() {
        // Rule CHANGE-7.
        // Coil 2 has 50 m, path 75 m: with one uncoiler coil 3 may be prepared from T2 of change 1 on.
        Replication run = line().coils(coil(600), coil(50))
                .uncoilers(1, 75)
                .prepare(100)
                .join(60)
                .run(2);
        double released = run.changes().get(0).released();

        assertNear(released, 510);
        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 350-450", "2: 510-610");
        assertNear(run.changes().get(1).waiting(), 610 - run.changes().get(1).tailStopped());
    }

    @Test
    void s08_crewOfTwo_preparesWhileTheTailIsWorkedOn() {
        // Rules CHANGE-2, CREW-1.
        // Tail work 30 s and preparation 100 s both from 400 s: the joint waits 70 s after the tail work.
        Replication run = line().uncoilers(1, 0).prepare(100).tail(30).join(60).run(1);

        assertThat(work(run, WorkList.TAIL)).containsExactly("1: 400-430");
        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 400-500");
        assertThat(work(run, WorkList.JOIN)).containsExactly("1: 500-560");
        assertNear(run.changes().get(0).waiting(), 70);
    }

    @Test
    void s09_crewOfOne_tailWorkIsBegunBeforeAPreparationThatBecomesPossibleAtTheSameInstant() {
        // Rule CREW-2.
        Replication run =
                line().crew(1).uncoilers(1, 0).prepare(100).tail(30).join(60).run(1);

        assertThat(work(run, WorkList.TAIL)).containsExactly("1: 400-430");
        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 430-530");
        assertThat(work(run, WorkList.JOIN)).containsExactly("1: 530-590");
        assertNear(run.changes().get(0).waiting(), 100);
    }

    @Test
    void s10_crewOfOne_preparationIsPutDownForTheTail_thenTheJointWaitsForTheRest() {
        // Rules CREW-3, CREW-4, CREW-5, CHANGE-11.
        // Path 75 m, one uncoiler: preparing 60 s begins at 350, is put down at T1 = 400 for the tail of 30 s, and goes
        // on from
        // 430 to 440; then 40 s more. The joint waits 430-480 and takes 60 s.
        Replication run = line().crew(1)
                .uncoilers(1, 75)
                .prepare(60, 40)
                .tail(30)
                .join(60)
                .run(1);
        ChangeRecord change = run.changes().get(0);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 350-440", "1: 440-480");
        assertThat(work(run, WorkList.TAIL)).containsExactly("1: 400-430");
        assertThat(work(run, WorkList.JOIN)).containsExactly("1: 480-540");
        assertNear(change.waitingForPreparation(), 50);
        assertThat(change.waitingForPeople()).isZero();
        assertNear(change.jointCycleTime(), 140);
    }

    @Test
    void s11_crewOfOne_preparingACoilNobodyWaitsForIsPutDown_andTakenUpAtT2() {
        // Rules CREW-4, CREW-5.
        // Three uncoilers: coil 2 is prepared 0-250, coil 3 from 250 on. T1 = 400: put down with 100 s left, taken up
        // at T2 = 490,
        // ends at 590; coil 4 (uncoiler of coil 1, free since 400) 590-840. Change 2: coil 2 refills 135 m, full again
        // at 625;
        // it ends at T1 = 800, where coil 4 is put down with 40 s left; T2 = 890, so coil 4 ends at 930.
        Replication run =
                line().crew(1).uncoilers(3, 0).prepare(250).tail(30).join(60).run(2);

        assertThat(work(run, WorkList.PREPARE)).startsWith("1: 0-250", "2: 250-590", "3: 590-930");
        assertThat(work(run, WorkList.TAIL)).containsExactly("1: 400-430", "2: 800-830");
        assertThat(run.changes()).extracting(ChangeRecord::waiting).containsExactly(0.0, 0.0);
    }

    @Test
    void s12_crewOfOne_doesNotBeginAPreparationTheJointDoesNotWaitFor() {
        // Rule CREW-3.
        // Two uncoilers, coil 2 ready at 100 s: between T1 and T2 nothing is prepared; coil 3 at T2 = 490.
        Replication run =
                line().crew(1).uncoilers(2, 0).prepare(100).tail(30).join(60).run(1);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 0-100", "2: 490-590");
    }

    @Test
    void s13_crewOfTwo_sameLine_preparesMeanwhile() {
        // Rule CREW-2.
        Replication run =
                line().crew(2).uncoilers(2, 0).prepare(100).tail(30).join(60).run(1);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 0-100", "2: 400-500");
    }

    @Test
    void s14_crewOfOne_theVeryCoilTheJointWaitsForIsFinishedAfterTheTail() {
        // Rules CREW-4, CREW-8.
        // Two uncoilers with a path of 150 m: coil 2 is prepared from 0, put down at T1 = 400 with 50 s left for the
        // tail work
        // 400-430, and finished 430-480 while the joint waits for it: joint 480-540. Coil 3 is begun at T2 = 540 and
        // put down at
        // T1 = 800 with 190 s left; tail 800-830, prepared 830-1020.
        Replication run =
                line().crew(1).uncoilers(2, 150).prepare(450).tail(30).join(60).run(2);

        assertThat(work(run, WorkList.PREPARE)).startsWith("1: 0-480", "2: 540-1020");
        assertThat(work(run, WorkList.TAIL)).containsExactly("1: 400-430", "2: 800-830");
        assertThat(run.changes())
                .extracting(ChangeRecord::waitingForPreparation)
                .containsExactly(50.0, 190.0);
    }

    @Test
    void s15_prepareElementEveryN_countsByTheChangeThatConsumesItsCoil() {
        // Rule CHANGE-4.
        // An extra 20 s for coil 3, consumed by change 2, and for coil 5 by change 4, whenever they are prepared.
        Replication run = line().uncoilers(3, 0)
                .prepare(10)
                .prepare(every(2, 20))
                .join(60)
                .run(4);

        assertThat(work(run, WorkList.PREPARE))
                .startsWith("1: 0-10", "2: 10-20", "2: 20-40", "3: 400-410", "4: 800-810", "4: 810-830");
    }

    @Test
    void s16_nothingToDo_jointTakesNoTime() {
        ChangeRecord change = line().uncoilers(1, 0).run(1).changes().get(0);

        assertThat(change.jointCycleTime()).isEqualTo(0);
        assertThat(change.waiting()).isEqualTo(0);
    }

    @Test
    void s17_nothingToPrepare_nothingToWaitFor() {
        ChangeRecord change = line().crew(1)
                .uncoilers(1, 0)
                .tail(10)
                .join(60)
                .run(1)
                .changes()
                .get(0);

        assertNear(change.jointCycleTime(), 70);
        assertThat(change.waiting()).isEqualTo(0);
    }

    @Test
    void s18_rethreadWaitsForPreparationLikeAJoint() {
        // Rule PRACTICE-6.
        // One uncoiler: process stands from 400 s, coil prepared 400-500, rethread of 600 s until 1100.
        Replication run = new PlainLine()
                .rethread(Distribution.constant(600))
                .crew(1)
                .uncoilers(1, 0)
                .prepare(100)
                .run(1);

        assertThat(work(run, WorkList.PREPARE)).containsExactly("1: 400-500");
        assertThat(work(run, WorkList.JOIN)).containsExactly("1: 500-1100");
        assertNear(run.changes().get(0).waiting(), 100);
        assertNear(run.changes().get(0).jointCycleTime(), 700);
    }

    @Test
    void s19_rethreadByOnePersonPutsThePreparationDown() {
        // Rules PRACTICE-6, CREW-4.
        Replication run = new PlainLine()
                .rethread(Distribution.constant(600))
                .crew(1)
                .uncoilers(3, 0)
                .prepare(250)
                .run(1);

        // As in 11: coil 3 is being prepared at T1 = 400; it is put down for the rethread.
        assertThat(run.changes().get(0).waiting()).isZero();
        assertThat(work(run, WorkList.PREPARE)).contains("1: 0-250");
    }

    @Test
    void s20_preparationWhileTheProcessStandsGoesOn_joinWithoutAccumulator() {
        Replication run = new PlainLine()
                .withoutAccumulator()
                .uncoilers(2, 0)
                .prepare(100)
                .join(60)
                .run(2);

        assertThat(work(run, WorkList.PREPARE)).startsWith("1: 0-100", "2: 400-500");
    }

    @Test
    void s21_workIsListedInTheOrderInWhichItBegan() {
        // Rule REPORT-1.
        // A preparation of 500 s begins before, and ends after, the tail work of the change before.
        Replication run =
                line().uncoilers(3, 0).prepare(300, 500).tail(10).join(60).run(2);

        assertThat(run.work()).extracting(WorkRecord::start).isSorted();
        assertThat(run.work())
                .extracting(WorkRecord::end)
                .isNotEqualTo(run.work().stream().map(WorkRecord::end).sorted().toList());
    }

    @Test
    void s22_preparingAcrossTheStrip_takesTheWiderOfTheTwoThatWillBeJoined() {
        // Rule CHANGE-3.
        // 0.01 m/s: coils 1.0, 0.5, 1.5, 0.25 m wide: changes 1, 2, 3 take 100, 150, 150 s.
        Replication run = line().coils(
                        PlainLine.wide(600, 1.0),
                        PlainLine.wide(600, 0.5),
                        PlainLine.wide(600, 1.5),
                        PlainLine.wide(600, 0.25))
                .prepare(PlainLine.weld(0.01, 0))
                .join(60)
                .run(3);

        assertThat(work(run, WorkList.PREPARE)).startsWith("1: 0-100", "2: 400-550", "3: 800-950");
    }
}
