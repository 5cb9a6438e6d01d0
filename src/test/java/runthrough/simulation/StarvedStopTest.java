package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.SimulationException;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * The process stops in time for lack of strip and starts again by rule. Coils of 600 m, 200 m of accumulator, process 1.5
 * m/s, entry 2.5 m/s with speeds that jump: the tail stops at 400 s, and with a joint of 160 s T2 = 560 s.
 */
class StarvedStopTest {
    private static final double T2 = 560;

    private static PlainLine line(double processUp, double processDown) {
        return new PlainLine().process(1.5, processUp, processDown).join(160);
    }

    private static Distribution constant(double value) {
        return Distribution.constant(value);
    }

    @Test
    void s01_accumulatorRunsEmpty_processStopsAndStartsAgainWithATenthOfTheCapacity() {
        // Rules PROC-3, PROC-5.
        // Empty at 400 + 200/1.5 = 533.33 s. Restart from 20 m: 8 s after T2 at 2.5 m/s. Full 180 s later.
        Replication run = line(AT_ONCE, AT_ONCE).run(1);
        Course course = Course.of(run);
        ChangeRecord change = run.changes().get(0);

        assertNear(course.takesUp(ProcessState.STARVED, 1), 400 + 200 / 1.5);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), T2 + 8);
        assertNear(change.lostMetres(), 1.5 * (168 - 200 / 1.5));
        assertNear(run.totals().starvedSeconds(), 168 - 200 / 1.5);
        assertNear(change.lowestLevel(), 0);
        assertThat(change.outcome()).isEqualTo(Outcome.STOPPED);
        assertThat(change.starvedStops()).isEqualTo(1);
        assertNear(change.refillTime(), 188);
        assertThat(run.totals().stripBreaks()).isEqualTo(0);
    }

    @Test
    void s02_stopsInTimeToStandAtTheReserve() {
        // Rules PROC-3, ACC-8.
        // x_stop = 2 + 1.5^2/0.5 = 6.5: from 193.5/1.5 = 129 s after T1 in 6 s to x = 2. Restart from 6.5 + 20 = 26.5:
        // 24.5/2.5 =
        // 9.8 s after T2; 3 s up. Lost: 4.5 m down, 34.8 s standing, 2.25 m up.
        Replication run = line(0.5, 0.25).reserve(2).run(1);
        Course course = Course.of(run);
        ChangeRecord change = run.changes().get(0);

        assertNear(course.takesUp(ProcessState.STARVED, 1), 529);
        assertNear(course.processSpeed(532), 0.75);
        assertNear(course.level(535), 2);
        assertNear(course.processSpeed(535), 0);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), T2 + 9.8);
        assertNear(change.lowestLevel(), 2);
        assertNear(change.lowestAboveStopLevel(), -4.5);
        assertNear(change.lostMetres(), 4.5 + 1.5 * 34.8 + 2.25);
        assertNear(run.totals().starvedSeconds(), 34.8);
    }

    @Test
    void s03_entryAlreadyRunning_processComesToRestAllTheSame() {
        // Rule PROC-4.
        // Joint of 194/1.5 s: 6 m at T2. The entry at 0.4 m/s2 would catch up with 6 - 2.8125 m left, but 4.5 m is the
        // stop level:
        // 6 - 1.5 t + 0.2 t^2 = 4.5. Then 6 s down to rest, whatever the level does.
        Replication run = new PlainLine()
                .entry(2.5, 0.4, AT_ONCE)
                .process(1.5, 0.5, 0.25)
                .restart(5, constant(0))
                .join(194 / 1.5)
                .run(1);
        Course course = Course.of(run);
        double released = 400 + 194 / 1.5;
        double starves = released + (1.5 - Math.sqrt(2.25 - 1.2)) / 0.4;

        assertNear(course.takesUp(ProcessState.STARVED, 1), starves);
        // Above the restart level of 5 m again while still slowing: it starts only when it has come to rest.
        assertThat(course.level(starves + 5)).isGreaterThan(5);
        assertNear(course.processAcceleration(starves + 5), -0.25);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), starves + 6);
    }

    @Test
    void s04_processThatSpeedsUpCanStarveWhileTheLevelRises() {
        // Rule PROC-3.
        // d_p = 0.1: stops from x = 11.25 to 0 between 525.83 and 540.83 s. Restart from 5 m, at T2 + 2: with a_p = 0.5
        // g = 5 + 2.5 t - 0.25 t^2 - (0.5 t)^2/0.2 = 5 + 2.5 t - 1.5 t^2, 0 at t = (2.5 + sqrt(36.25))/3 < 3 s.
        Replication run = line(0.5, 0.1).restart(5, constant(0)).run(1);
        Course course = Course.of(run);
        double again = T2 + 2 + (2.5 + Math.sqrt(36.25)) / 3;

        assertNear(course.takesUp(ProcessState.RUNNING, 2), T2 + 2);
        assertNear(course.takesUp(ProcessState.STARVED, 2), again);
        assertThat(course.entrySpeed(again) - course.processSpeed(again)).isGreaterThan(1);
        assertThat(run.changes().get(0).starvedStops()).isGreaterThanOrEqualTo(2);
    }

    /**
     * The entry fills at 2.5 m/s and slows at 0.1 m/s2 over the last 31.25 m, to stand at 200 m, for the process stands. It is
     * at 199.5 m when it can still run 0.5 m: at sqrt(2 0.1 0.5) m/s, sqrt(10) s before it would stand.
     */
    @Test
    void s15_restartLevelReachedWhileTheEntrySettles() {
        Replication run = line(AT_ONCE, AT_ONCE)
                .entry(2.5, AT_ONCE, 0.1)
                .restart(199.5, constant(0))
                .run(1);
        Course course = Course.of(run);
        double released = run.changes().get(0).released();
        double empty = run.changes().get(0).lowestLevel();
        double filling = (200 - empty - 31.25) / 2.5;

        assertNear(course.takesUp(ProcessState.RUNNING, 2), released + filling + 25 - Math.sqrt(10));
    }

    @Test
    void s05_restartLevelIsNeverAboveTheCapacity() {
        // Rule PROC-5.
        // R = 190: x_stop + 10 % = 210; restarts when full. Stops at x = 190, 10/1.5 s after T1; from T2 4 s to full.
        Replication run = line(AT_ONCE, AT_ONCE).reserve(190).run(1);

        assertNear(Course.of(run).takesUp(ProcessState.STARVED, 1), 400 + 10 / 1.5);
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), T2 + 4);
    }

    @Test
    void s06_restartDelayRunsFromWhenItMayRestart() {
        // Rule PROC-4.
        Replication run = line(AT_ONCE, AT_ONCE).restart(50, constant(30)).run(1);

        // 50 m 20 s after T2; 30 s of delay.
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), T2 + 50);
    }

    @Test
    void s07_restartLevelReachedButJointNotReleased_waits() {
        // Rules PROC-2, PROC-4.
        // Coil 2 of 100 m is through at T2 + 40 s with x = 100: T0. It would be 110 m at T2 of change 2 only.
        Replication run = line(AT_ONCE, AT_ONCE)
                .coils(coil(600), coil(100), coil(600))
                .restart(110, constant(0))
                .run(2);

        assertNear(run.changes().get(1).start(), 600);
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 600 + 160 + 4);
    }

    @Test
    void s08_restartLevelReachedJustAsTheNextCoilChangeStarts_theChangeComesFirst() {
        // Rules ORDER-6, ORDER-11.
        // As 07 with the restart level at 100 m: T0 goes before the restart, which then waits for T2 = 760 s.
        Replication run = line(AT_ONCE, AT_ONCE)
                .coils(coil(600), coil(100), coil(600))
                .restart(100, constant(0))
                .run(2);

        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 760);
    }

    @Test
    void s09_restartDelayIsNotRevokedByALaterCoilChange() {
        // Rule PROC-4.
        // 20 m at 568 s; coil 2 of 50 m runs out at 580 s; the delay of 100 s ends at 668 s, the joint stands until 740
        // s.
        Replication run = line(AT_ONCE, AT_ONCE)
                .coils(coil(600), coil(50), coil(600))
                .restart(20, constant(100))
                .run(2);

        assertNear(run.changes().get(1).start(), 580);
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 668);
        // 50 m last 33.33 s: starved again before T2.
        assertNear(Course.of(run).takesUp(ProcessState.STARVED, 2), 668 + 50 / 1.5);
    }

    @Test
    void s10_restartedIntoTooLittleStrip_levelFallsBelowEmpty_isAStripBreak() {
        // Rule PROC-10.
        // Stops from 4.5 m to 0; restart from 2 m with 30 s of delay: at 590.8 s its speed jumps to 1.5. Coil 2 of 3 m
        // is through by
        // then and the level is 3 m: it stops at once, but takes 4.5 m.
        Replication run = line(AT_ONCE, 0.25)
                .coils(coil(600), coil(3), coil(600))
                .restart(2, constant(30))
                .run(2);

        assertThat(run.changes().get(1).starvedStops()).isEqualTo(1);
        assertNear(Course.of(run).processSpeed(590.8 + 3), 0.75);
        assertThat(run.totals().stripBreaks()).isEqualTo(1);
        assertNear(run.totals().lowestLevel(), -1.5);
        assertNear(run.changes().get(1).lowestLevel(), -1.5);
    }

    @Test
    void s11_lowestLevelTouchesTheStopLevel_isNoStop() {
        // Rule NUM-3.
        // Joint of 129 s leaves 6.5 m = 2 + 1.5^2/0.5 when the entry is at 2.5 m/s at once.
        Replication run =
                new PlainLine().process(1.5, 0.5, 0.25).reserve(2).join(129).run(1);

        assertNear(run.changes().get(0).lowestAboveStopLevel(), 0);
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.RAN_THROUGH);
        assertThat(run.totals().starvedStops()).isEqualTo(0);
    }

    @Test
    void s12_restartLevelAtTheReserve_startsAgainAtTheJoint() {
        // Restart level 0, no delay, speeds that jump: entry and process start together at T2, and nothing starves
        // again.
        Replication run = line(AT_ONCE, AT_ONCE).restart(0, constant(0)).run(1);

        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), T2);
        assertThat(run.changes().get(0).starvedStops()).isEqualTo(1);
    }

    @Test
    void s13_processStandsWhenTheTailStops_withTheAccumulatorEmpty_twoCoilChangesInARow() {
        // Coil 2 of 10 m: T2 = 560, through 4 s later; restart at 20 m is not reached, so the stop lasts over change 2.
        Replication run =
                line(AT_ONCE, AT_ONCE).coils(coil(600), coil(10), coil(600)).run(2);

        assertNear(run.changes().get(1).start(), 564);
        // 10 m at T2 of change 2, 724 s; 20 m 4 s later.
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 728);
        assertThat(run.totals().starvedStops()).isEqualTo(1);
    }

    @Test
    void s14_starvesWhileSpeedingUp_alsoWithSomethingElseHappeningMeanwhile() {
        // Rule PROC-3.
        // As 04, entry at 0.8 m/s2: x = 0.4 t^2 = 2.5 m at 2.5 s, v_e = 2.0: restart. 0.625 s on the entry has 2.5 m/s,
        // x = 3.80859375,
        // v_p = 0.3125. With t from the restart g = 3.80859375 + 2.5 (t - 0.625) - 0.25 (t^2 - 0.390625) - 1.25 t^2 =
        // 2.34375 + 2.5 t -
        // 1.5 t^2.
        Replication run = line(0.5, 0.1)
                .entry(2.5, 0.8, AT_ONCE)
                .restart(2.5, constant(0))
                .run(1);
        Course course = Course.of(run);

        assertNear(course.takesUp(ProcessState.RUNNING, 2), T2 + 2.5);
        assertNear(course.takesUp(ProcessState.STARVED, 2), T2 + 2.5 + (2.5 + Math.sqrt(6.25 + 6 * 2.34375)) / 3);
    }

    @Test
    void s20_restartIntoTheNextStopAgainAndAgain_isAnErrorThatSaysWhy() {
        // Rule PROC-11.
        // Restart at the stop level, 0 m, with an entry that takes 15 s to 1.5 m/s; the checks refuse such a line.
        PlainLine line = new PlainLine().join(160).entry(2.5, 0.1, AT_ONCE).restart(0, Distribution.constant(0));

        assertThatThrownBy(() -> line.run(1))
                .isInstanceOf(SimulationException.class)
                .hasMessageMatching(
                        "more than 1000 starved stops in coil change 1, at \\d+ s: the process restarts at a level of 0"
                                + " m and must stop at 0 m, so that it restarts into the next stop. Give a higher"
                                + " process.restart.level, or let the entry speed up faster.");
    }

    @Test
    void s21_defaultLevelThatRestartsIntoTheNextStop_isNotCalledGiven() {
        // Rule PROC-11.
        // Stop level at 1 m/s: 1/(2 * 1) = 0.5 m; default restart: 0.5 + 10 % of 30 m = 3.5 m. The entry fills at 0.05
        // m/s: within
        // the 20 s that it takes to 1 m/s at 0.05 m/s2 the process draws (1 m/s * 20 s)/2 = 10 m, more than the 3 m
        // between the two.
        PlainLine line = new PlainLine()
                .coils(PlainLine.coil(5000))
                .capacity(30)
                .fillRate(0.05)
                .entry(1.2, 0.05, 0.4)
                .process(1, 1, 1)
                .join(100);

        assertThatThrownBy(() -> line.run(3))
                .isInstanceOf(SimulationException.class)
                .hasMessageContaining(
                        "restarts at a level of 3.5 m (the default, as none is given) and must stop at 0.5 m")
                .hasMessageContaining("Give a process.restart.level, or let the entry speed up faster.");
    }
}
