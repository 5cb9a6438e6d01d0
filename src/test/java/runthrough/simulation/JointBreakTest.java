package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.cropped;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.ProcessedScrap;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * Joints that break in the process. Coils of 600 m, 200 m of accumulator, process 1.5 m/s, entry 2.5 m/s: the first joint reaches
 * the process at metre 800, and breaks 0.8752 of 40 m further on, at metre 835.0085.
 */
class JointBreakTest {
    private static final double LENGTH = 40;
    private static final double PLACE = 800 + LENGTH * share(1);

    /** Where in the process section the joint of coil change {@code change} breaks. */
    private static double share(int change) {
        return new RandomNumbers(7, 0).source(SourceNames.BREAK_PLACE).uniform(change, 0);
    }

    private static PlainLine line() {
        return new PlainLine().join(60).jointBreak(LENGTH, 100, 30);
    }

    @Test
    void s01_standsForItsRepair_andIsScrapOnTopOfThatOfTheStop() {
        // Rules BREAK-1, BREAK-2, BREAK-3, BREAK-6, REPORT-8, REPORT-9.
        // T0 of change 2 with 1200 m processed. Scrap: 30 m of the break, 2 m of its stop, 1 m of the joint, and the
        // crops of 3 m, all at 15.7 kg/m.
        Replication run = line().coils(cropped(603, 1, 2))
                .scrapPerStop(2)
                .scrapPerJoint(1)
                .run(1);

        assertNear(Course.of(run).takesUp(ProcessState.JOINT_BREAK, 1), PLACE / 1.5);
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), PLACE / 1.5 + 100);
        assertThat(run.totals().jointBreaks()).isEqualTo(1);
        assertNear(run.totals().breakSeconds(), 100);
        assertNear(run.totals().breakLostMetres(), 150);
        assertThat(run.totals().lostMetres()).isZero();
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.RAN_THROUGH);
        ProcessedScrap scrap = run.totals().processedScrap();
        assertNear(scrap.breakMetres(), 30);
        assertNear(scrap.stopMetres(), 2);
        assertNear(scrap.jointMetres(), 1);
        assertNear(scrap.kilograms(), 33 * 15.7);
        assertNear(run.totals().scrapMetres(), 36);
        assertNear(run.totals().cropMetres(), 3);
        assertNear(run.totals().cropKilograms(), 3 * 15.7);
        assertNear(run.totals().goodMetres(), 1200 - 33);
        assertNear(run.totals().goodKilograms(), 1167 * 15.7);
        assertNear(run.totals().scrapShare(), 36 / (36 + 1167.0));
    }

    @Test
    void s02_repairRunsFromRest_rampsAreLostToo() {
        // Rules BREAK-2, BREAK-6.
        // 6 s down, 100 s, 3 s up: 4.5 + 150 + 2.25 m.
        Replication run = line().process(1.5, 0.5, 0.25).run(1);
        Course course = Course.of(run);

        assertNear(course.processAcceleration(PLACE / 1.5 + 1), -0.25);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), PLACE / 1.5 + 106);
        assertNear(run.totals().breakSeconds(), 106);
        assertNear(run.totals().breakLostMetres(), 156.75);
    }

    @Test
    void s03_duringDowntime_bothRunFromRest_downtimeFirst() {
        // Rules BREAK-4, PASS-5.
        // Downtime due 2 m before the place; 6 s later at rest: 50 s of downtime, 100 s of repair. Lost by the break:
        // the
        // 50 s after the downtime, and 2.25 m speeding up.
        double due = (PLACE - 2) / 1.5;
        Replication run = line().process(1.5, 0.5, 0.25)
                .downtime(Distribution.constant(due), Distribution.constant(50))
                .run(1);
        Course course = Course.of(run);

        assertNear(course.takesUp(ProcessState.DOWNTIME, 1), due);
        assertNear(course.takesUp(ProcessState.JOINT_BREAK, 1), due + 56);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), due + 106);
        assertThat(run.totals().downtimes()).isEqualTo(1);
        assertThat(run.totals().jointBreaks()).isEqualTo(1);
        assertNear(run.totals().downtimeSeconds(), 56);
        assertNear(run.totals().breakSeconds(), 50);
        assertNear(run.totals().breakLostMetres(), 75 + 2.25);
        assertThat(run.totals().lostMetres()).isZero();
    }

    @Test
    void s04_runningTimeOfDowntimeGoesOnFromWhereItWas() {
        // Rules BREAK-2, DOWN-1.
        // 600 s of running: 100 s later than without the break.
        Replication run = line().downtime(Distribution.constant(600), Distribution.constant(10))
                .run(1);

        assertNear(Course.of(run).takesUp(ProcessState.DOWNTIME, 1), 700);
    }

    /**
     * T2 = 520 s; coil 2 is so long that its tail stops with {@code level} (m) left when the first joint breaks; joints of 120 s.
     * Down at 0.25 m/s2, which takes 6 s and 4.5 m, and up at 0.5; x_stop = 4.5 m, restart at 24.5 m.
     */
    private static PlainLine lowAtTheBreak(double level) {
        return new PlainLine()
                .coils(coil(600), coil(PLACE - 800 + level), coil(600))
                .process(1.5, 0.5, 0.25)
                .join(120)
                .jointBreak(LENGTH, 30, 0);
    }

    private static double restarts(double level, double levelAtRest) {
        double released = 520 + (PLACE - 800 + level) / 2.5 + 120;
        return released + (24.5 - levelAtRest) / 2.5;
    }

    @Test
    void s05_afterIt_isHeldAsStarvedWhereStripLacks_whichIsNoNewStop() {
        // Rules BREAK-4, DOWN-5, REPORT-7.
        // 6 m at the break, 1.5 m at rest: held from the end of the repair, 36 s after the break, until 24.5 m. The
        // latest
        // coil change begun is the second.
        Replication run = lowAtTheBreak(6).run(2);
        Course course = Course.of(run);
        double held = PLACE / 1.5 + 36;
        ChangeRecord first = run.changes().get(0);
        ChangeRecord second = run.changes().get(1);

        assertNear(course.takesUp(ProcessState.STARVED, 1), held);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), restarts(6, 1.5));
        assertThat(run.totals().starvedStops()).isZero();
        assertThat(first.outcome()).isEqualTo(Outcome.RAN_THROUGH);
        assertThat(second.outcome()).isEqualTo(Outcome.STOPPED);
        assertThat(second.starvedStops()).isZero();
        assertThat(first.lostMetres()).isZero();
        assertNear(second.lostMetres(), 1.5 * (restarts(6, 1.5) - held) + 2.25);
    }

    @Test
    void s06_whetherItIsHeld_isLookedAtWhenTheLastOfDowntimeAndRepairEnds() {
        // Rule BREAK-4.
        // As 05 with downtime due 2 s after the break: 80 s from rest.
        Replication run = lowAtTheBreak(6)
                .downtime(Distribution.constant(PLACE / 1.5 + 2), Distribution.constant(80))
                .run(2);
        double held = PLACE / 1.5 + 86;

        assertNear(Course.of(run).takesUp(ProcessState.STARVED, 1), held);
        assertNear(run.changes().get(1).lostMetres(), 1.5 * (restarts(6, 1.5) - held) + 2.25);
    }

    @Test
    void s07_duringTheRampOfAStarvedStop_theBreakComesFirstUntilItEnds() {
        // Rules PASS-5, BREAK-6, REPORT-6.
        // Starved at 4.5 m; the break falls due 1 m later, at v = sqrt(2.25 - 0.5). Lost for lack of strip: until then,
        // and
        // from the
        // end of the repair until it runs at 1.5 m/s again; what lies between by the break.
        // Until 5 s after the restart: then the next joint breaks.
        Replication run = lowAtTheBreak(3.5).runFor(restarts(3.5, 0) + 5);
        double starves = (PLACE - 1) / 1.5;
        double speed = Math.sqrt(1.75);
        double breaks = starves + (1.5 - speed) / 0.25;
        double repaired = starves + 6 + 30;

        assertNear(Course.of(run).takesUp(ProcessState.JOINT_BREAK, 1), breaks);
        assertThat(run.totals().starvedStops()).isEqualTo(1);
        assertNear(run.totals().breakSeconds(), repaired - breaks);
        assertNear(run.totals().breakLostMetres(), 1.5 * (repaired - breaks) - 3.5);
        assertNear(
                run.totals().lostMetres(), 1.5 * (breaks - starves) - 1 + 1.5 * (restarts(3.5, 0) - repaired) + 2.25);
    }

    @Test
    void s08_inAPassage_theRecoveryFromTheBreakIsItsOwn() {
        // Rule PASS-5.
        // 780 to 900 at 0.5 m/s: until the break 1 m/s is lost by the passage; then 150 m, and until metre 900 1 m/s by
        // the
        // break, for only there the process is back at 1.5 m/s.
        Replication run = line().jointPassage(0.5, 20, 100).run(1);

        assertNear(run.totals().passageLostMetres(), (PLACE - 780) / 0.5);
        assertNear(run.totals().breakLostMetres(), 150 + (900 - PLACE) / 0.5);
        assertThat(run.totals().lostMetres()).isZero();
    }

    @Test
    void s09_starvedWhileItRecoversFromTheBreak_isLostForLackOfStrip() {
        // Rules PASS-5, REPORT-7.
        // Joints of 130 s. The break at 50 m, x_stop 0, ends while the entry stands: up at 0.01 m/s2 the process has
        // used the
        // 50 m after 100 s, at 1.0 m/s. Recovery until then: the break's. Until the restart.
        Replication run = new PlainLine()
                .coils(coil(600), coil(PLACE - 800 + 50), coil(600))
                .process(1.5, 0.01, AT_ONCE)
                .join(130)
                .jointBreak(LENGTH, 1, 0)
                .runFor(530 + (PLACE - 750) / 2.5 + 130 + 8);
        double breaks = PLACE / 1.5;
        double starves = breaks + 1 + 100;
        double released = 530 + (PLACE - 750) / 2.5 + 130;

        assertThat(run.totals().starvedStops()).isEqualTo(1);
        assertNear(run.totals().breakLostMetres(), 1.5 + 150 - 50);
        assertNear(run.totals().lostMetres(), 1.5 * (released + 8 - starves));
    }

    @Test
    void s10_oneThatFallsDueDuringARepair_isIgnored() {
        // Rule BREAK-5.
        // Marks 800 and 810: the second joint breaks 3.2 m before the first, whose place is passed while the process
        // ramps
        // down over 4.5 m. Where it stops at once there are two breaks.
        PlainLine two =
                new PlainLine().coils(coil(600), coil(10), coil(600)).join(0).jointBreak(LENGTH, 100, 30);
        double second = 810 + LENGTH * share(2);

        assertThat(PLACE - second).isBetween(3.0, 3.5);
        assertThat(two.run(2).totals().jointBreaks()).isEqualTo(2);
        Replication run = two.process(1.5, 0.5, 0.25).run(2);
        assertThat(run.totals().jointBreaks()).isEqualTo(1);
        assertNear(run.totals().processedScrap().breakMetres(), 30);
        assertNear(Course.of(run).takesUp(ProcessState.JOINT_BREAK, 1), second / 1.5);
    }

    @Test
    void s11_placePassedWhileTheProcessStands_fallsDueWhenItNextMoves() {
        // Rule BREAK-5.
        // Starved at 2e-8 m below 0: at T2 = 560 s the joint is in the process already. Restart at 568 s, and the
        // break.
        Replication run = new PlainLine().join(160).jointBreak(1e-9, 100, 0).run(1);
        Course course = Course.of(run);

        assertThat(course.processState(564)).isEqualTo(ProcessState.STARVED);
        assertNear(course.takesUp(ProcessState.JOINT_BREAK, 1), 568);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 668);
        assertNear(run.totals().lostMetres(), 1.5 * (568 - 400 - 200 / 1.5));
        assertNear(run.totals().breakLostMetres(), 150);
    }

    @Test
    void s12_withoutAnAccumulator_theStripStands() {
        // Rules BREAK-1, BREAK-2.
        // T1 = 400 s, T2 = 460 s at metre 600, path of 100 m: at metre 700 and 0.8752 of 40 m more.
        Replication run = line().processPath(100).withoutAccumulator().run(1);
        double breaks = 460 + (PLACE - 700) / 1.5;

        assertNear(Course.of(run).takesUp(ProcessState.JOINT_BREAK, 1), breaks);
        assertNear(run.totals().breakSeconds(), 100);
        assertNear(run.changes().get(0).lostMetres(), 1.5 * 60);
    }
}
