package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coilAt;
import static runthrough.simulation.PlainLine.wide;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * Coils with speeds and masses of their own: both change when the joint reaches the process section. All speeds jump, entry up
 * to 2.5 m/s, accumulator of 200 m.
 */
class SpeedByCoilTest {

    private static PlainLine line() {
        return new PlainLine();
    }

    @Test
    void s01_severalJointsOnTheWay_eachChangesTheSpeedAfterAccumulatorAndPath() {
        // Rule SPEED-1.
        // Joints of no time every 100 m; each has 200 m of accumulator and 50 m of path to go: coil 2 is in the process
        // from
        // metre 350, coil 3 from metre 450, coil 4 from 550, three joints being on the way.
        Replication run = line().coils(coilAt(100, 1.5), coilAt(100, 1.0), coilAt(100, 2.0), coilAt(100, 0.5))
                .processPath(50)
                .join(0)
                .run(6);
        Course course = Course.of(run);
        double metre350 = 350 / 1.5;

        assertNear(course.processSpeed(metre350 - 1), 1.5);
        assertNear(course.processSpeed(metre350 + 99), 1.0);
        assertNear(course.processSpeed(metre350 + 101), 2.0);
        assertNear(course.processSpeed(metre350 + 151), 0.5);
        // The change at metre 600 comes 250 m after the first joint: (350 at 1.5) + (100 at 1.0) + (100 at 2.0) + (50
        // at 0.5).
        assertNear(run.changes().get(5).start(), metre350 + 100 + 50 + 100);
    }

    @Test
    void s02_jointReleasedWithLessInTheAccumulator_reachesTheProcessSooner() {
        // Rule SPEED-1.
        // Joint of 60 s: 110 m at T2 = 460 s, no path: at 1.5 m/s 73.33 s on.
        Replication run =
                line().coils(coilAt(600, 1.5), coilAt(600, 0.5)).join(60).run(1);
        Course course = Course.of(run);

        assertNear(course.processSpeed(460 + 110 / 1.5 - 0.001), 1.5);
        assertNear(course.processSpeed(460 + 110 / 1.5 + 0.001), 0.5);
    }

    @Test
    void s03_rampsToTheNewSpeedAtItsOwnRates() {
        // Rules SPEED-2, PROC-1.
        // Down at 0.25 m/s2: 4 s. The level does not matter: the entry follows at once.
        Replication run = line().coils(coilAt(600, 1.5), coilAt(600, 0.5))
                .process(1.5, 0.1, 0.25)
                .join(0)
                .run(3);
        Course course = Course.of(run);
        double reaches = 400 + 200 / 1.5;

        assertNear(course.processSpeed(reaches + 2), 1.0);
        assertNear(course.processSpeed(reaches + 5), 0.5);
        // 600 m of coil 2, of which 1.0 4 = 4 m were run on the ramp; then up at 0.1 m/s2.
        double faster = reaches + 4 + 596 / 0.5;
        assertNear(course.processSpeed(faster + 5), 1.0);
        assertNear(run.totals().lostMetres(), 0);
    }

    @Test
    void s04_reachesTheProcessWhileItStands_startsToTheNewSpeed() {
        // Rules SPEED-2, REPORT-6.
        // Joint of 160 s: starved with nothing between joiner and process: at T2 = 560 s the next coil's speed is in
        // force.
        Replication run =
                line().coils(coilAt(600, 1.5), coilAt(600, 0.5)).join(160).run(1);
        Course course = Course.of(run);

        assertThat(course.processState(565)).isEqualTo(ProcessState.STARVED);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 568);
        assertNear(course.processSpeed(569), 0.5);
        // Lost at 1.5 m/s until T2, at 0.5 m/s after it.
        assertNear(run.totals().lostMetres(), 1.5 * (160 - 200 / 1.5) + 0.5 * 8);
        assertNear(run.totals().lostTime(), 168 - 200 / 1.5);
    }

    @Test
    void s05_restartLevelIsThatOfTheNewSpeed() {
        // Rule SPEED-2.
        // d_p = 0.25, R = 0: at rest with x = 0 before T2, when coil 2's joint is there: x_restart = 0.5^2/0.5 + 20 =
        // 20.5 m.
        Replication run = line().coils(coilAt(600, 1.5), coilAt(600, 0.5))
                .process(1.5, AT_ONCE, 0.25)
                .join(160)
                .run(1);

        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 560 + 20.5 / 2.5);
    }

    @Test
    void s06_reachesTheProcessWhileItIsSlowed_isTheSpeedItReturnsTo() {
        // Rule SPEED-2.
        // Slowed to 0.5 below 150 m, at 433.33 s; T2 = 460 s with 136.67 m. Filled at 0.06 m/s above: no resume before
        // the joint is
        // there, 273.33 s on; then resumed from 160 m on, at 2.0 m/s.
        double slows = 400 + 50 / 1.5;
        double atT2 = 150 - 0.5 * (460 - slows);
        Replication run = line().coils(coilAt(600, 1.5), coilAt(600, 2.0))
                .fillRate(0.06)
                .slowing(0.5, 150, 160)
                .join(60)
                .run(1);
        Course course = Course.of(run);
        double reaches = 460 + atT2 / 0.5;
        double resumes = 460 + (160 - atT2) / 0.06;

        assertThat(resumes).isGreaterThan(reaches);
        assertNear(course.processSpeed(reaches + 1), 0.5);
        assertNear(course.processSpeed(resumes + 0.001), 2.0);
        // Lost against 1.5 m/s until the joint is there, against 2.0 m/s from there on.
        assertNear(run.changes().get(0).lostMetres(), 1.0 * (reaches - slows) + 1.5 * (resumes - reaches));
    }

    @Test
    void s07_duringDowntime_startsToTheNewSpeed() {
        // Rule SPEED-2.
        // The joint is 200 m from the process at 400 s; downtime at 500 s; it would reach the process at 533.33 s of
        // running.
        Replication run = line().coils(coilAt(600, 1.5), coilAt(600, 0.5))
                .downtime(Distribution.constant(500), Distribution.constant(100))
                .join(0)
                .runFor(700);
        Course course = Course.of(run);

        assertNear(course.processSpeed(600 + 33), 1.5);
        assertNear(course.processSpeed(600 + 34), 0.5);
    }

    @Test
    void s08_marginIsAgainstTheSpeedRatedWhenTheChangeBegins() {
        // x_stop = 1.5^2/0.5 = 4.5 m at change 1; at change 2 coil 2 is in the process: 0.5^2/0.5 = 0.5 m.
        Replication run = line().coils(coilAt(600, 1.5), coilAt(600, 0.5))
                .process(1.5, 0.5, 0.25)
                .join(60)
                .run(2);

        assertNear(run.changes().get(0).stopLevel(), 4.5);
        assertNear(run.changes().get(1).stopLevel(), 0.5);
        assertNear(
                run.changes().get(1).lowestAboveStopLevel(),
                run.changes().get(1).lowestLevel() - 0.5);
    }

    @Test
    void s09_massProcessedIsThatOfTheCoilInTheProcess() {
        // Rule SPEED-3.
        // 1.0 m wide: 15.7 kg/m, from metre 800 (600 + 200) on 0.5 m wide: 7.85 kg/m; ends at T0 of change 2, metre
        // 1200.
        Replication run = line().coils(wide(600, 1.0), wide(600, 0.5)).join(0).run(1);

        assertNear(run.totals().processedMetres(), 1200);
        assertNear(run.totals().processedKilograms(), 800 * 15.7 + 400 * 7.85);
    }

    @Test
    void s10_ratedMetresFollowTheSpeedInForce() {
        // Rule REPORT-8.
        Replication run =
                line().coils(coilAt(600, 1.5), coilAt(600, 0.5)).join(0).run(1);

        // 800 m at 1.5 m/s, 400 m at 0.5 m/s: never held back.
        assertNear(run.totals().ratedMetres(), 1200);
        assertNear(run.totals().utilisation(), 1);
    }

    @Test
    void s11_rethreadedCoilIsInTheProcessAtOnce() {
        // Rule PRACTICE-7.
        // There is no joint on its way: the line is threaded with the new coil throughout.
        Replication run = line().coils(coilAt(600, 1.5), coilAt(600, 0.5))
                .processPath(50)
                .rethread(Distribution.constant(600))
                .run(2);

        assertNear(run.changes().get(1).start(), 1000 + 600 / 0.5);
    }

    @Test
    void s12_slowedOnTheWayDownToASlowerCoilsSpeed_losesOnlyWhatIsBelowThatSpeed() {
        // Coil 2 (60 m, 1.0 m/s) is in the process at 460 + 110/1.5 = 533.33 s; coil 3 is being joined from 484 to 544
        // s: 134 - 74 = 60 m.
        // Down at 0.05 m/s2, 1.0 m/s 10 s later; slowed to 0.5 below 55 m before that, at 1.5 t - 0.025 t^2 = 5. Lost:
        // from 1.0 to 0.5 m/s in
        // 10 s 2.5 m, then 0.5 m/s until 580 s.
        Replication run = line().coils(coilAt(600, 1.5), coilAt(60, 1.0), coilAt(900, 1.0))
                .process(1.5, 0.05, 0.05)
                .slowing(0.5, 55, 150)
                .join(60)
                .runFor(580);
        Course course = Course.of(run);
        double reaches = 460 + 110 / 1.5;

        assertNear(course.takesUp(ProcessState.SLOWED, 1), reaches + (1.5 - Math.sqrt(2.25 - 0.5)) / 0.05);
        assertNear(course.processSpeed(reaches + 20), 0.5);
        assertNear(run.totals().lostMetres(), 2.5 + 0.5 * (580 - reaches - 20));
    }
}
