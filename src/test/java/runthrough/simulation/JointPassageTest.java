package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.coilAt;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * Joints that pass the process at reduced speed. Coils of 600 m, 200 m of accumulator, process 1.5 m/s, entry 2.5 m/s: the first
 * joint reaches the process at metre 800 (its mark), however long it takes, for what is processed by T2 is missing in the
 * accumulator. Joints pass at 0.5 m/s.
 */
class JointPassageTest {

    private static PlainLine line(double before, double after) {
        return new PlainLine().join(60).jointPassage(0.5, before, after);
    }

    @Test
    void s01_fromBeforeTheJointUntilAfterIt_isNeitherSlowedNorStopped() {
        // Rules PASS-1, PASS-3, PASS-4.
        // Metres 780 to 810: from 520 s, 30 m at 0.5 in the place of 1.5 m/s take 60 s, in which 60 m less are
        // processed.
        Replication run = line(20, 10).run(1);
        Course course = Course.of(run);

        assertNear(course.takesUp(ProcessState.JOINT_PASSAGE, 1), 520);
        assertNear(course.processSpeed(521), 0.5);
        assertNear(course.processSpeed(579), 0.5);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 580);
        assertNear(course.processSpeed(581), 1.5);
        assertNear(run.totals().passageLostMetres(), 60);
        assertThat(run.totals().lostMetres()).isZero();
        assertThat(run.totals().slowings()).isZero();
        assertThat(run.totals().starvedStops()).isZero();
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.RAN_THROUGH);
    }

    @Test
    void s02_rampEndsWhereThePassageBegins_itsMetresAndThoseOfTheRampUpAreLostToo() {
        // Rules PASS-1, PASS-4.
        // Down at 0.25 m/s2: (1.5^2 - 0.5^2)/0.5 = 4 m in 4 s, from metre 776. Lost: 4 s at 0.5 on average, 60 s at 1,
        // then 2 s up at 0.5 m/s2 at 0.5 on average.
        Replication run = line(20, 10).process(1.5, 0.5, 0.25).run(1);
        Course course = Course.of(run);
        double begins = 776 / 1.5;

        assertNear(course.takesUp(ProcessState.JOINT_PASSAGE, 1), begins);
        assertNear(course.processAcceleration(begins), -0.25);
        assertNear(course.processSpeed(begins + 4), 0.5);
        assertNear(course.processAcceleration(begins + 64), 0.5);
        assertNear(course.processSpeed(begins + 66), 1.5);
        assertNear(run.totals().passageLostMetres(), 2 + 60 + 1);
    }

    @Test
    void s03_windowsThatOverlapAreOne() {
        // Rule PASS-2.
        // Joints of no time; coil 2 has 10 m, so that the marks are 800 and 810: 780 to 820 at 0.5 m/s, 80 s.
        Replication run =
                line(20, 10).coils(coil(600), coil(10), coil(600)).join(0).run(2);
        Replication noTime = new PlainLine()
                .coils(coil(600), coil(10), coil(600))
                .join(0)
                .jointPassage(0.5, 20, 10)
                .run(2);
        Course course = Course.of(noTime);

        assertNear(course.takesUp(ProcessState.JOINT_PASSAGE, 1), 520);
        assertNear(course.processSpeed(590), 0.5);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 600);
        assertNear(noTime.totals().passageLostMetres(), 80);
        assertNear(run.totals().passageLostMetres(), 80);
    }

    @Test
    void s04_processThatIsSlowerAlready_opensItWithoutARamp_andResumesNoFasterThanItAllows() {
        // Rules PASS-2, PASS-3, PASS-5.
        // Joint of 120 s: slowed to 0.4 m/s at 60 m, 400 + 140/1.5 s; T2 = 520 s with 60 - 0.4 * 26.67 = 49.33 m;
        // resumes
        // at 150 m, 100.67/2.1 s later, at metre 750.67 + 0.4 * 100.67/2.1, inside 760 to 810: to 0.5 m/s until metre
        // 810.
        Replication run = new PlainLine()
                .join(120)
                .slowing(0.4, 60, 150)
                .jointPassage(0.5, 40, 10)
                .run(1);
        Course course = Course.of(run);
        double slows = 400 + 140 / 1.5;
        double level = 60 - 0.4 * (520 - slows);
        double resumes = 520 + (150 - level) / 2.1;
        double metre = 1.5 * slows + 0.4 * (resumes - slows);
        double ends = resumes + (810 - metre) / 0.5;

        assertNear(course.takesUp(ProcessState.JOINT_PASSAGE, 1), resumes);
        assertNear(course.processSpeed(resumes + 1), 0.5);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), ends);
        // All of it is lost by the slowing, until the rated speed is back.
        assertNear(run.totals().lostMetres(), 1.1 * (resumes - slows) + 1.0 * (ends - resumes));
        assertThat(run.totals().passageLostMetres()).isZero();
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.SLOWED);
    }

    @Test
    void s05_beginPassedAlreadyAtT2_atOnce() {
        // Rule PASS-1.
        // From metre 600; T2 = 460 s at metre 690: 120 m at 0.5 m/s.
        Replication run = line(200, 10).run(1);
        Course course = Course.of(run);

        assertNear(course.takesUp(ProcessState.JOINT_PASSAGE, 1), 460);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 700);
        assertNear(run.totals().passageLostMetres(), 240);
    }

    @Test
    void s06_opensAlsoWhileTheProcessStands() {
        // Rules PASS-3, PASS-5, ORDER-5.
        // Starved from 533.33 s; T2 = 560 s at metre 800; restart 8 s later, to 0.5 m/s for the 10 m left: 20 s.
        Replication run = new PlainLine().join(160).jointPassage(0.5, 200, 10).run(1);
        Course course = Course.of(run);

        assertThat(course.processState(561)).isEqualTo(ProcessState.STARVED);
        assertNear(course.processSpeed(569), 0.5);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 588);
        assertNear(run.totals().lostMetres(), 1.5 * (568 - 400 - 200 / 1.5) + 1.0 * 20);
        assertThat(run.totals().passageLostMetres()).isZero();
    }

    @Test
    void s07_staysOpenThroughDowntime_whoseTimeIsNotLostByIt() {
        // Rules PASS-3, PASS-5.
        // Down from 540 to 570 s, at metre 790; the 20 m left then take 40 s more. Lost: 20 s and 40 s at 1 m/s.
        Replication run = line(20, 10)
                .downtime(Distribution.constant(540), Distribution.constant(30))
                .run(1);
        Course course = Course.of(run);

        assertThat(course.processState(550)).isEqualTo(ProcessState.DOWNTIME);
        assertNear(course.processSpeed(571), 0.5);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 610);
        assertNear(run.totals().passageLostMetres(), 60);
        assertThat(run.totals().lostMetres()).isZero();
    }

    @Test
    void s08_withoutAnAccumulator_theStripRampsAsOne() {
        // Rule PASS-6.
        // Down at the entry's 0.125 m/s2: stopped from 1.5 m/s in 9 m and 12 s: T0 = 394 s, T1 = 406 s, T2 = 466 s; up
        // in
        // 3 s and 2.25 m. Path of 100 m: mark 700; the ramp of 8 m begins at metre 672, 69.75 m further on.
        Replication run = line(20, 10)
                .entry(2.5, AT_ONCE, 0.125)
                .process(1.5, 0.5, 0.25)
                .processPath(100)
                .withoutAccumulator()
                .run(1);
        Course course = Course.of(run);
        double begins = 469 + 69.75 / 1.5;

        assertNear(course.takesUp(ProcessState.JOINT_PASSAGE, 1), begins);
        assertNear(course.processAcceleration(begins), -0.125);
        assertNear(course.processSpeed(begins + 8), 0.5);
        assertNear(run.totals().passageLostMetres(), 4 + 60 + 1);
    }

    @Test
    void s09_newRatedSpeedWhereThePassageEnds_isLostNoMore() {
        // Rules PASS-4, ORDER-5, SPEED-1.
        // 780 to 800, where coil 2 brings 1.0 m/s: 40 s at 0.5 below 1.5 m/s, and then the new rated speed at once.
        Replication run = line(20, 0).coils(coilAt(600, 1.5), coilAt(600, 1.0)).run(1);
        Course course = Course.of(run);

        assertNear(course.processSpeed(559), 0.5);
        assertNear(course.processSpeed(561), 1.0);
        assertNear(run.totals().passageLostMetres(), 40);
    }

    @Test
    void afterTheRatedSpeedIsReachedThePassageLosesNoMore() {
        // Rules PASS-4, PASS-5. As in s02 from 776/1.5 = 517 s to 583 s: 63 m. The process stops for 100 s once it has
        // run
        // for
        // 600 s, and speeds up at 0.5 m/s2 for 3 s, in which 2.25 m lack: these belong to the downtime.
        Replication run = line(20, 10)
                .process(1.5, 0.5, 0.25)
                .downtime(Distribution.constant(600), Distribution.constant(100))
                .run(1);

        assertThat(run.totals().downtimes()).isEqualTo(1);
        assertNear(run.totals().passageLostMetres(), 2 + 60 + 1);
    }

    @Test
    void s10_speedingUpTowardsAPassage_turnsWhereTheRampDownMustBegin() {
        // Rule PASS-1.
        // Starved as in 06; restart at metre 800 of a path of 25 m: mark 825, window from 805. Up at 0.5 and down at
        // 0.25
        // m/s2 to 0.5 m/s within 5 m: v^2 + 2 (v^2 - 0.25) = 5, v = 1.3540.
        Replication run = new PlainLine()
                .process(1.5, 0.5, 0.25)
                .join(160)
                .processPath(25 + 4.5)
                .jointPassage(0.5, 20 + 4.5, 10)
                .run(1);
        Course course = Course.of(run);
        double restarts = course.takesUp(ProcessState.RUNNING, 2);
        double speed = Math.sqrt(5.5 / 3);

        assertNear(course.takesUp(ProcessState.JOINT_PASSAGE, 1), restarts + speed / 0.5);
        assertNear(course.processSpeed(restarts + speed / 0.5), speed);
        assertNear(course.processAcceleration(restarts + speed / 0.5), -0.25);
    }
}
