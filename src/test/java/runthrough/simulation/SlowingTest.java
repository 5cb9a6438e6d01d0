package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.coilAt;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * Running slower on a low level, and taking up full speed again. Coils of 600 m, 200 m of accumulator, process 1.5 m/s slowed
 * to 0.5 m/s below 100 m, entry 2.5 m/s with speeds that jump: the tail stops at 400 s.
 */
class SlowingTest {

    private static PlainLine line(double joint) {
        return new PlainLine().slowing(0.5, 100, Double.NaN).join(joint);
    }

    private static Distribution constant(double value) {
        return Distribution.constant(value);
    }

    @Test
    void s01_slowsBelowTheSlowLevel_resumesATenthOfTheCapacityAboveIt() {
        // Rules PROC-7, PROC-8.
        // 100 m at 466.67 s; 100 - 0.5 53.33 = 73.33 m at T2 = 520 s; up by 2.0 m/s to 120 m in 23.33 s.
        Replication run = line(120).run(1);
        Course course = Course.of(run);
        double slows = 400 + 100 / 1.5;
        double resumes = 520 + (120 - (100 - 0.5 * (520 - slows))) / 2;

        assertNear(course.takesUp(ProcessState.SLOWED, 1), slows);
        assertNear(course.processSpeed(500), 0.5);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), resumes);
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.SLOWED);
        assertNear(run.changes().get(0).lostMetres(), 1.0 * (resumes - slows));
        assertThat(run.totals().slowings()).isEqualTo(1);
        assertThat(run.totals().starvedStops()).isEqualTo(0);
    }

    @Test
    void s02_slowsAndSpeedsUpOnItsRamps_lostMetresCountBoth() {
        // Rule REPORT-6.
        // d_p = 0.25: 4 s down, losing 1.0 4/2 = 2 m; a_p = 0.5: 2 s up, losing 1 m.
        Replication run = line(120).process(1.5, 0.5, 0.25).run(1);
        Course course = Course.of(run);
        double slows = 400 + 100 / 1.5;
        double atT2 = 100 - 4 - 0.5 * (520 - slows - 4);
        double resumes = 520 + (120 - atT2) / 2;

        assertNear(course.processSpeed(slows + 2), 1.0);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), resumes);
        assertNear(run.changes().get(0).lostMetres(), 2 + (resumes - slows - 4) + 1);
    }

    @Test
    void s03_latchHoldsUntilTheJointIsReleased() {
        // Rules PROC-2, PROC-8.
        // Coil 2 is at its end when x = 119: the entry runs out from 2.5 m/s at 0.5 m/s2, so that x passes 120 m before
        // T1.
        PlainLine line = line(120).entry(2.5, AT_ONCE, 0.5).process(1.5, AT_ONCE, AT_ONCE);
        Replication first = line.run(1);
        double slows = Course.of(first).takesUp(ProcessState.SLOWED, 1);
        double released = first.changes().get(0).released();
        double level = Course.of(first).level(released);
        // 2.5 m/s in, 0.5 out.
        double used = (119 - level) / 2 * 2.5;
        Replication run = line.coils(coil(600), coil(used + 6.25), coil(600)).run(2);
        Course course = Course.of(run);
        ChangeRecord second = run.changes().get(1);

        assertNear(course.takesUp(ProcessState.SLOWED, 1), slows);
        assertNear(course.level(second.start()), 119);
        assertThat(course.level(second.start() + 1)).isGreaterThan(120);
        // 119 + 6.25 - 0.5 5 when the tail stops, then down to 62.75 at T2, and up by 2.0 m/s to 120.
        assertNear(course.level(second.released()), 122.75 - 60);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), second.released() + (120 - 62.75) / 2);
        assertThat(run.totals().slowings()).isEqualTo(1);
    }

    @Test
    void s04_releasedAboveTheResumeLevel_resumesAtTheJoint() {
        // Rule PROC-8.
        // x_slow = 100, resume from 100.5: a joint that ends as the level has just been slowed at, x rises at 2.0 m/s.
        Replication run =
                new PlainLine().slowing(0.5, 100, 100.5).join(100 / 1.5 + 10).run(1);

        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 400 + 100 / 1.5 + 10 + 5.5 / 2);
    }

    @Test
    void s05_stopOutranksSlowing_restartsToTheSlowedSpeed_thenResumes() {
        // Rules PROC-6, PROC-9.
        // Slowed at 466.67 s, empty 200 s later, T2 = 700 s. Restart at 20 m, 8 s after, to 0.5 m/s; 120 m another 50 s
        // on.
        Replication run = line(300).run(1);
        Course course = Course.of(run);
        double slows = 400 + 100 / 1.5;

        assertNear(course.takesUp(ProcessState.STARVED, 1), slows + 200);
        assertNear(course.takesUp(ProcessState.SLOWED, 2), 708);
        assertNear(course.processSpeed(720), 0.5);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 758);
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.STOPPED);
        assertNear(run.changes().get(0).lostMetres(), 200 + 1.5 * (708 - slows - 200) + 50);
    }

    @Test
    void s06_restartAboveTheResumeLevel_startsToFullSpeed() {
        // Rule PROC-6.
        // Restart level 150 m: 60 s after T2; the latch has ended at 120 m while the process stood.
        Replication run = line(300).restart(150, constant(0)).run(1);
        Course course = Course.of(run);

        assertNear(course.takesUp(ProcessState.RUNNING, 2), 760);
        assertNear(course.processSpeed(761), 1.5);
    }

    @Test
    void s07_beginsAlsoDuringARamp_ofDowntime() {
        // Rule PROC-7.
        // d_p = 0.25: downtime due at 464 s with x = 104; 4.5 m to rest at 470 s: 99.5 m. After it the process starts
        // to 0.5 m/s.
        Replication run = line(120)
                .process(1.5, AT_ONCE, 0.25)
                .downtime(constant(464), constant(20))
                .run(1);
        Course course = Course.of(run);

        assertNear(course.level(470), 99.5);
        assertNear(course.takesUp(ProcessState.SLOWED, 1), 490);
        assertNear(course.processSpeed(495), 0.5);
        assertThat(run.totals().slowings()).isEqualTo(1);
        // Lost only from the downtime's end.
        double resumes = 520 + (120 - (99.5 - 0.5 * 30)) / 2;
        assertNear(run.changes().get(0).lostMetres(), 1.0 * (resumes - 490));
    }

    @Test
    void s08_resumesToTheSpeedOfTheCoilInTheProcess() {
        // Coil 2 asks for 0.4 m/s. Its joint is C + 0 metres ahead of the process at T2.
        Replication run = new PlainLine()
                .coils(coilAt(600, 1.5), coilAt(600, 0.4))
                .slowing(0.5, 100, 190)
                .join(120)
                .run(2);
        Course course = Course.of(run);
        double slows = 400 + 100 / 1.5;
        double atT2 = 100 - 0.5 * (520 - slows);
        // Resumes at 190 m, filled at 2.0 m/s; the joint, atT2 metres ahead at T2, reaches the process after that.
        double resumes = 520 + (190 - atT2) / 2;
        double processed = 0.5 * (resumes - 520);
        double reaches = resumes + (atT2 - processed) / 1.5;

        assertNear(course.takesUp(ProcessState.RUNNING, 2), resumes);
        assertNear(course.processSpeed(reaches + 1), 0.4);
    }

    @Test
    void s09_slowedWhileASlowerCoilArrives_runsAtTheLowerOfBoth() {
        // Rule PROC-7.
        // Accumulator of 200 m slowed from 195 m: at T2 = 460 s x = 195 - 0.5 (60 - 5/1.5). No resume below 200 m,
        // which takes long.
        double slows = 400 + 5 / 1.5;
        double atT2 = 195 - 0.5 * (460 - slows);
        Replication run = new PlainLine()
                .coils(coilAt(600, 1.5), coilAt(600, 0.4))
                .fillRate(0.05)
                .slowing(0.5, 195, 200)
                .join(60)
                .run(1);
        Course course = Course.of(run);
        double reaches = 460 + atT2 / 0.5;

        assertThat(course.processState(reaches + 1)).isEqualTo(ProcessState.SLOWED);
        assertNear(course.processSpeed(reaches - 1), 0.5);
        assertNear(course.processSpeed(reaches + 1), 0.4);
    }

    @Test
    void s10_defaultResumeLevelIsNeverAboveTheCapacity() {
        // Rule PROC-8.
        // 190 + 20 > 200: resumes when full.
        Replication run = new PlainLine().slowing(0.5, 190, Double.NaN).join(60).run(1);
        Course course = Course.of(run);
        double resumes = course.takesUp(ProcessState.RUNNING, 2);

        assertNear(course.level(resumes), 200);
        double slows = 400 + 10 / 1.5;
        assertNear(resumes, 460 + (10 + 0.5 * (460 - slows)) / 2);
    }

    @Test
    void s11_fallsThroughTheLevelOnEveryChange_isSlowedOnEveryChange() {
        Replication run = line(120).run(3);

        assertThat(run.totals().slowings()).isEqualTo(3);
        assertThat(run.totals().slowedChanges()).isEqualTo(3);
    }

    @Test
    void s12_levelTouchesTheSlowLevel_isNoSlowing() {
        // Rule NUM-3.
        // Joint of 100/1.5 s: 100 m at T2, when the entry jumps to 2.5 m/s.
        Replication run = line(100 / 1.5).run(1);

        assertThat(run.totals().slowings()).isEqualTo(0);
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.RAN_THROUGH);
    }
}
