package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.coilAt;

import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.StorageForm;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Trace.EntryState;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * Practices in which entry and process are one strip with one speed: joining without an accumulator, and rethreading. Coils of
 * 600 m, process 1.5 m/s.
 */
class OneStripTest {

    private static PlainLine join() {
        return new PlainLine().withoutAccumulator().entry(2.5, 0.4, 0.5).process(1.5, 0.3, 0.25);
    }

    private static PlainLine rethread() {
        return new PlainLine().entry(2.5, 0.4, 0.5).process(1.5, 0.3, 0.25).rethread(Distribution.constant(600));
    }

    private static Distribution constant(double value) {
        return Distribution.constant(value);
    }

    @Test
    void s01_join_stopsAtTheLowerDecelerationAndStartsAtTheLowerAcceleration() {
        // Rules PRACTICE-1, PRACTICE-2.
        // d = 0.25: T0 at r = 4.5, 397 s; 6 s; joint 60 s; up at 0.3 m/s2 in 5 s.
        Replication run = join().join(60).run(1);
        Course course = Course.of(run);
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), 397);
        assertNear(change.tailStopped(), 403);
        assertNear(change.released(), 463);
        assertNear(course.processSpeed(465), 0.6);
        assertNear(course.processSpeed(468), 1.5);
        assertNear(run.totals().duration(), 468 + (600 - 3.75 - 4.5) / 1.5);
        assertThat(course.points()).allMatch(point -> point.entrySpeed() == point.processSpeed());
    }

    @Test
    void s02_join_entryMayBeTheOneThatIsSlow() {
        // Rule PRACTICE-1.
        // a = 0.2 and d = 0.1 are the entry's: T0 at r = 11.25; 15 s; 7.5 s up.
        Replication run = join().entry(2.5, 0.2, 0.1).join(60).run(1);

        assertNear(run.changes().get(0).start(), 588.75 / 1.5);
        assertNear(run.changes().get(0).tailStopped(), 588.75 / 1.5 + 15);
        assertNear(Course.of(run).processSpeed(run.changes().get(0).released() + 5), 1.0);
    }

    @Test
    void s03_join_speedIsTheLowerOfTheTwo() {
        // Rule PRACTICE-1.
        Replication run = join().entry(1.0, 0.4, 0.5).join(60).run(1);

        assertNear(Course.of(run).processSpeed(100), 1.0);
        // r = 1.0^2/0.5 = 2 m.
        assertNear(run.changes().get(0).start(), 598);
    }

    @Test
    void s04_join_everyChangeIsAStop() {
        // Rules PRACTICE-3, PRACTICE-5.
        Replication run = join().join(60).run(3);

        assertThat(run.totals().starvedStops()).isEqualTo(3);
        assertThat(run.changes()).allMatch(change -> change.outcome() == Outcome.STOPPED && change.starvedStops() == 1);
        // Per change: 4.5 m slowing, 60 s of 1.5 m/s, 1.5^2/0.6 = 3.75 m speeding up.
        assertThat(run.changes()).allSatisfy(change -> assertNear(change.lostMetres(), 98.25));
        assertThat(run.changes()).allMatch(change -> Double.isNaN(change.refillTime()) && change.stripDrawn() == 0);
        assertNear(run.totals().starvedSeconds(), 180);
    }

    @Test
    void s05_join_waitsForTheRestartDelayAfterTheJoint() {
        // Rule PRACTICE-2.
        Replication run = join().restart(Double.NaN, constant(45)).join(60).run(1);

        assertNear(run.changes().get(0).released(), 463);
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 508);
        assertNear(run.changes().get(0).lostMetres(), 4.5 + 1.5 * 105 + 3.75);
    }

    @Test
    void s06_join_creepsWithBoth() {
        // Rule PRACTICE-2.
        // 0.5 m/s over 10 m, d = 0.25: T0 at r = 10 + (2.25 - 0.25)/0.5 = 14; 4 s; (10 - 0.5)/0.5 = 19 s; 2 s.
        Replication run = join().creep(0.5, 10).join(60).run(1);
        Course course = Course.of(run);
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), 586 / 1.5);
        assertNear(course.processSpeed(change.start() + 10), 0.5);
        assertNear(change.tailStopped(), change.start() + 25);
        // Lost: 1.0 4/2 slowing, 1.0 19 creeping, 1.5 2 - 0.5 stopping, 90 standing, 3.75 starting.
        assertNear(change.lostMetres(), 2 + 19 + 2.5 + 90 + 3.75);
    }

    @Test
    void s07_join_downtimeStopsBothAndPutsTheChangeOff() {
        // Rule PRACTICE-4.
        // At 300 s: 6 s down with 4.5 m, 100 s, 5 s up with 3.75 m.
        Replication run = join().join(60).downtime(constant(300), constant(100)).run(1);

        assertNear(run.changes().get(0).start(), 300 + 6 + 100 + 5 + (600 - 450 - 4.5 - 3.75 - 4.5) / 1.5);
        assertThat(run.totals().downtimes()).isGreaterThanOrEqualTo(1);
    }

    @Test
    void s08_join_downtimeWhileSlowingForTheChange_isTakenAtOnce_andStandsBesideTheJoint() {
        // Rule PRACTICE-4.
        // Due 3 s after T0 = 397 s; at rest at 403 s, downtime until 503 s, joint until 463 s.
        Replication run = join().join(60).downtime(constant(400), constant(100)).run(1);
        Course course = Course.of(run);

        assertNear(course.takesUp(ProcessState.DOWNTIME, 1), 400);
        assertNear(run.changes().get(0).tailStopped(), 403);
        assertNear(run.changes().get(0).released(), 463);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 503);
        // Lost for lack of strip: 3 s of slowing, 0.25 9/2; after the downtime 3.75 m.
        assertNear(run.changes().get(0).lostMetres(), 1.125 + 3.75);
    }

    @Test
    void s09_join_downtimeWhileCreeping_isTakenAtOnce_andTheTailIsBroughtOnAfterIt() {
        // T0 = 390.67 s; creeping 4 s later; due 10 s after T0 with r = 10 - 0.5 6 = 7: 2 s down to r = 6.5; 50 s; up
        // at 0.3 m/s2 to
        // 0.5 m/s: 1.667 s, 0.41667 m; creeps (6.5 - 0.41667 - 0.5)/0.5 s; 2 s down.
        double start = 586 / 1.5;
        Replication run = join().creep(0.5, 10)
                .join(60)
                .downtime(constant(start + 10), constant(50))
                .run(1);
        Course course = Course.of(run);

        assertNear(course.processSpeed(start + 11), 0.25);
        assertThat(course.processSpeed(start + 30)).isEqualTo(0);
        assertThat(course.entryState(start + 30)).isEqualTo(EntryState.RUNNING_OUT);
        double up = 0.5 / 0.3;
        double creeps = (6.5 - 0.25 * up - 0.5) / 0.5;
        assertNear(run.changes().get(0).tailStopped(), start + 12 + 50 + up + creeps + 2);
        assertThat(run.changes().get(0).starvedStops()).isEqualTo(1);
    }

    @Test
    void s10_join_startsAgainWithinTheCreepLength_noFasterThanCreepSpeed() {
        // Downtime at r = 14.25, before T0 at 14: 6 s and 4.5 m later r = 9.75. Up to 0.5 m/s, which is T0.
        double due = 585.75 / 1.5;
        Replication run = join().creep(0.5, 10)
                .join(60)
                .downtime(constant(due), constant(50))
                .run(1);
        double up = 0.5 / 0.3;
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), due + 6 + 50 + up);
        assertNear(Course.of(run).processSpeed(change.start() + 3), 0.5);
        assertNear(change.tailStopped(), change.start() + (9.75 - 0.25 * up - 0.5) / 0.5 + 2);
    }

    @Test
    void s11_join_allAtOnce() {
        Replication run = join().entry(2.5, AT_ONCE, AT_ONCE)
                .process(1.5, AT_ONCE, AT_ONCE)
                .join(60)
                .run(3);

        assertThat(run.changes()).extracting(ChangeRecord::start).containsExactly(400.0, 860.0, 1320.0);
        assertThat(run.totals().duration()).isEqualTo(1780);
    }

    @Test
    void s12_join_speedByCoilAfterThePath() {
        // Coil 2 at 0.5 m/s is in the process 30 m after its joint: 60 s, 5 s up with 3.75 m, 26.25 m.
        Replication run = join().coils(coilAt(600, 1.5), coilAt(600, 0.5))
                .processPath(30)
                .join(60)
                .run(1);
        Course course = Course.of(run);

        assertNear(course.processSpeed(468 + 26.25 / 1.5 - 0.001), 1.5);
        assertNear(course.processSpeed(468 + 26.25 / 1.5 + 2), 1.0);
    }

    @Test
    void s13_join_rejectsAndWaitingAsWithAnAccumulator() {
        Replication run = join().uncoilers(1, 0)
                .prepare(PlainLine.once(100))
                .tail(10)
                .join(60)
                .reject(new Reject.Every(1))
                .run(1);

        // 100 s of preparation beside 10 s of tail work; then 60 s, and again 70 s.
        assertNear(run.changes().get(0).waiting(), 90);
        assertNear(run.changes().get(0).jointCycleTime(), 100 + 60 + 70);
    }

    @Test
    void s14_rethread_stopsAndStartsAtTheProcessRates_withoutRestartDelay() {
        // Rule PRACTICE-6.
        // Process 0.25 down, 0.3 up, whatever the entry could: T0 at r = 4.5.
        Replication run = rethread()
                .entry(2.5, 0.1, 0.1)
                .restart(Double.NaN, constant(45))
                .run(1);
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), 397);
        assertNear(change.tailStopped(), 403);
        assertNear(change.released(), 1003);
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 1003);
        assertNear(Course.of(run).processSpeed(1005), 0.6);
        assertThat(change.outcome()).isEqualTo(Outcome.STOPPED);
        assertNear(change.lostMetres(), 4.5 + 900 + 3.75);
    }

    @Test
    void s15_rethread_neitherCreepsNorJoins() {
        // Rules PRACTICE-6, PRACTICE-7.
        Replication run = rethread()
                .creep(0.5, 10)
                .tail(30)
                .join(60)
                .reject(new Reject.Every(1))
                .run(1);

        assertNear(run.changes().get(0).start(), 397);
        assertNear(run.changes().get(0).jointCycleTime(), 600);
        assertThat(run.changes().get(0).passes()).isEqualTo(1);
    }

    @Test
    void s16_rethread_runsAtTheProcessSpeedWhateverTheEntryCould() {
        Replication run = rethread().entry(1.0, 0.4, 0.5).run(1);

        assertNear(Course.of(run).processSpeed(100), 1.5);
    }

    @Test
    void s17_rethread_cropsAreScrapOncePerChange() {
        // Rule PRACTICE-7.
        Replication run = rethread().coils(PlainLine.cropped(640, 10, 30)).run(2);

        assertNear(run.totals().scrapMetres(), 80);
        assertNear(run.changes().get(0).start(), 397);
    }

    @Test
    void s18_coilTooShortToReachSpeed_stopsFromWhereItGot() {
        // Coil 2 of 6 m: v^2/0.6 + v^2/0.5 = 6.
        Replication run = join().coils(coil(600), coil(6)).join(60).run(2);
        double peak = Math.sqrt(6 / (1 / 0.6 + 1 / 0.5));

        assertNear(run.changes().get(1).start(), 463 + peak / 0.3);
        assertNear(run.changes().get(1).tailStopped(), 463 + peak / 0.3 + peak / 0.25);
    }

    @Test
    void s19_levelsAreNought() {
        // Rules ACC-5, PRACTICE-5.
        Replication run = join().join(60).run(2);

        assertThat(run.totals().levelIntegral()).isEqualTo(0);
        assertThat(run.totals().overtravel()).isEqualTo(0);
        assertThat(run.changes()).allMatch(change -> change.lowestAboveStopLevel() == 0);
        assertNear(run.totals().enteredMetres(), run.totals().processedMetres());
    }

    @Test
    void s20_startsAtOnce_noFasterThanTheCoilCanBeStoppedFrom() {
        // Coil 2 of 2 m, down at 0.25 m/s2: 1.0 m/s, and 4 s to stand, from the release of the joint on.
        Replication run = join().coils(coil(600), coil(2))
                .entry(2.5, AT_ONCE, 0.5)
                .process(1.5, AT_ONCE, 0.25)
                .join(60)
                .run(2);
        ChangeRecord second = run.changes().get(1);

        assertNear(second.start(), 463);
        assertNear(Course.of(run).processSpeed(463), 1.0);
        assertNear(second.tailStopped(), 467);
    }

    @Test
    void s21_anEntryThatIsOneStripWithTheProcess_isNeverBlocked() {
        Replication run = join().join(60).downtime(constant(300), constant(100)).run(2);

        assertThat(run.totals().blockedSeconds()).isEqualTo(0);
        assertThat(run.totals().refilledChanges()).isEqualTo(0);
    }

    /** The same line with an accumulator for a while, and then without it, is held against itself. */
    @Test
    void s22_anAccumulatorThatIsNotUsedChangesNothing() {
        // Rule PRACTICE-5.
        Line without = new PlainLine().rethread(Distribution.uniform(300, 600)).build();
        Line with = without.with(new Accumulator(new StorageForm.Direct(300), 0.5, 20, 1))
                .with(without.practice());
        RunPlan plan = new RunPlan(new Extent.Changes(20), 0, 1, 7, 0.995);

        assertThat(LineSimulator.of(with, plan).run(0, Detail.TRACE))
                .isEqualTo(LineSimulator.of(without, plan).run(0, Detail.TRACE));
    }
}
