package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Trace.EntryState;

/**
 * The entry fills until the settled level X reaches the capacity C, then ramps to the process's speed and arrives full.
 *
 * <p>Unless said otherwise: process 1.5 m/s, entry up to 2.5 m/s at 0.4 m/s2 up and 0.5 m/s2 down, 200 m of accumulator,
 * coils of 600 m, a joint of 90 s. Then T0 is when 1.5^2/1.0 = 2.25 m are left, at 597.75/1.5 = 398.5 s; T1 = 401.5 s, T2 =
 * 491.5 s. Level at T2: 200 - (1.5 3 - 2.25) - 1.5 90 = 62.75 m; when v_e = 2.5 m/s, 6.25 s later: 62.75 + 7.8125 - 9.375 =
 * 61.1875 m; from there it rises by 1 m/s until X = x + 1^2/(2 0.5) = 200 m.
 */
class FillingTest {
    private static final double T2 = 491.5;

    private static PlainLine line() {
        return new PlainLine().entry(2.5, 0.4, 0.5).process(1.5, AT_ONCE, AT_ONCE);
    }

    @Test
    void s01_oneCoilChange_levelFallsByWhatIsDrawnAndIsFullAgainAfterRefill() {
        // Rules MOTION-1, ENTRY-2, ENTRY-20, REPORT-5.
        Replication run = line().join(90).run(1);
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), 398.5);
        assertNear(change.tailStopped(), 401.5);
        assertNear(change.released(), T2);
        assertThat(change.levelAtStart()).isEqualTo(200);
        // Lowest when v_e = v_p again, 3.75 s after T2: drawn 2.25 + 135 + 1.5^2/0.8 = 140.0625 m.
        assertNear(change.stripDrawn(), 140.0625);
        assertNear(change.lowestLevel(), 59.9375);
        // 6.25 s up, (199 - 61.1875)/1 = 137.8125 s, 2 s down.
        assertNear(change.refillTime(), 146.0625);
        assertThat(Course.of(run).level(T2 + 146.0625)).isEqualTo(200);
    }

    @Test
    void s02_entryStatesInOrder() {
        // Rule ENTRY-4.
        Course course = Course.of(line().join(90).run(1));

        assertNear(course.takesUp(EntryState.MATCHED, 1), 0);
        assertNear(course.takesUp(EntryState.RUNNING_OUT, 1), 398.5);
        assertNear(course.takesUp(EntryState.STANDING, 1), 401.5);
        assertNear(course.takesUp(EntryState.FILLING, 1), T2);
        assertNear(course.takesUp(EntryState.SETTLING, 1), T2 + 144.0625);
        assertNear(course.takesUp(EntryState.MATCHED, 2), T2 + 146.0625);
    }

    @Test
    void s03_fillRateLimit_entryRunsNoMoreThanThatAboveTheProcess() {
        // Rules ACC-6, ENTRY-3.
        // F = 0.5: 2.0 m/s after 5 s, level 62.75 + 5 - 7.5 = 60.25 m; settles at X = x + 0.25 = 200 after 139.5/0.5 =
        // 279 s.
        Replication run = line().fillRate(0.5).join(90).run(1);
        Course course = Course.of(run);

        assertNear(course.entrySpeed(T2 + 4), 1.6);
        assertNear(course.entrySpeed(T2 + 100), 2.0);
        assertNear(course.takesUp(EntryState.SETTLING, 1), T2 + 284);
        assertNear(run.changes().get(0).refillTime(), 285);
    }

    @Test
    void s04_littleDrawn_entrySettlesBeforeItReachesTopSpeed() {
        // Rule ENTRY-4.
        // Joint of 0 s: drawn 2.25 + 2.8125 = 5.0625 m. Above the process it peaks at u with u^2/0.8 + u^2/1.0 =
        // 5.0625: u = 1.5.
        Replication run = line().entry(4, 0.4, 0.5).join(0).run(1);
        double released = 401.5;

        assertNear(Course.of(run).takesUp(EntryState.SETTLING, 1), released + 3.75 + 3.75);
        assertNear(Course.of(run).entrySpeed(released + 7.5), 3.0);
        assertNear(run.changes().get(0).refillTime(), 3.75 + 3.75 + 3);
    }

    @Test
    void s05_stoppedProcessIsFilledAgainstAtMostAtTheFillRate() {
        // Rules ENTRY-3, DOWN-2.
        // At 500 s v_e = 2.0 = 1.5 + F. The process stops at once: v* + F = 0.5, reached at 0.5 m/s2 in 3 s; not
        // clipped before.
        Replication run = line().fillRate(0.5)
                .join(90)
                .downtime(Distribution.constant(500), Distribution.constant(100))
                .runFor(700);
        Course course = Course.of(run);

        assertNear(course.entrySpeed(500), 2.0);
        assertNear(course.entrySpeed(501), 1.5);
        assertNear(course.entrySpeed(503), 0.5);
        assertNear(course.entrySpeed(599), 0.5);
        // Released at 600 s: up at 0.4 m/s2 to 2.0 again.
        assertNear(course.entrySpeed(602), 1.3);
        assertNear(course.entrySpeed(603.75), 2.0);
        // Level at 500 s: 62.75 + 5 - 7.5 at 496.5 s, + 0.5 3.5 = 62.0; to 503 s + 0.5 (2.0 + 0.5) 3 = 3.75.
        assertNear(course.level(503), 65.75);
        assertNear(course.level(600), 65.75 + 48.5);
    }

    @Test
    void s06_processStopsFarFromFull_entryKeepsFillingAndSettlesToStanding() {
        // Rules ENTRY-4, DOWN-2, REPORT-11.
        // At 600 s x = 61.1875 + 102.25 = 163.4375, v_e = 2.5. To stand takes 2.5^2/1.0 = 6.25 m: from x = 193.75,
        // after
        // 30.3125/2.5 = 12.125 s; 5 s later it stands, full to the last millimetre.
        Replication run = line().join(90)
                .downtime(Distribution.constant(600), Distribution.constant(1000))
                .runFor(1000);
        Course course = Course.of(run);

        assertThat(course.entryState(611)).isEqualTo(EntryState.FILLING);
        assertNear(course.entrySpeed(612), 2.5);
        assertNear(course.takesUp(EntryState.SETTLING, 1), 612.125);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 617.125);
        assertThat(course.level(617.125)).isEqualTo(200);
        assertThat(course.entrySpeed(900)).isEqualTo(0);
        assertNear(run.totals().blockedSeconds(), 1000 - 617.125);
        assertThat(run.totals().overtravel()).isEqualTo(0);
    }

    @Test
    void s07_topSpeedBelowTheProcess_holdsTopSpeedAndFillsWithoutEnd() {
        // Rule ENTRY-4.
        // V_e = 1.25 < v* = 1.5, all at once: after a joint of 40 s x = 140 m, then 0.25 m/s less until the coil has
        // run 480 s.
        Replication run = line().entry(1.25, AT_ONCE, AT_ONCE).join(40).run(1);
        Course course = Course.of(run);

        assertThat(course.entryState(900)).isEqualTo(EntryState.FILLING);
        assertThat(course.entrySpeed(900)).isEqualTo(1.25);
        assertNear(course.level(440 + 480), 20);
        assertThat(run.changes().get(0).refillTime()).isNaN();
    }

    @Test
    void s08_withoutAcceleration_jumpsToTheLargestSpeedThatDoesNotOverfill() {
        // Rule ENTRY-22.
        // Joint of 0 s: 2.25 m are missing. From v the entry adds (v - 1.5)^2/1.0 in slowing to 1.5: v = 3.0, not 4.0.
        Replication run = line().entry(4, AT_ONCE, 0.5).join(0).run(1);
        Course course = Course.of(run);

        assertNear(course.entrySpeed(401.5), 3.0);
        assertNear(course.entrySpeed(402.5), 2.5);
        assertNear(run.changes().get(0).refillTime(), 3.0);
        assertThat(course.level(404.5)).isEqualTo(200);
    }

    @Test
    void s09_withoutAcceleration_jumpsToTheLargestSpeedFromWhichTheCoilCanBeStopped() {
        // Rule ENTRY-22.
        // Coil 2 has 2.25 m: v^2/1.0 = 2.25. It jumps to 1.5 m/s and starts running out at once.
        Replication run = line().coils(PlainLine.coil(600), PlainLine.coil(2.25))
                .entry(4, AT_ONCE, 0.5)
                .join(60)
                .run(2);
        ChangeRecord second = run.changes().get(1);

        assertNear(second.start(), 461.5);
        assertNear(Course.of(run).entrySpeed(461.5), 1.5);
        assertNear(second.tailStopped(), 464.5);
    }

    @Test
    void s10_withoutAcceleration_jumpsToTheLargestSpeedFromWhichItCanComeToCreep() {
        // Rule ENTRY-22.
        // Coil 2 has 3 m, creep 0.5 m/s over 1 m: 3 - 1 = (v^2 - 0.25)/1.0, v = 1.5; 2 s to creep, (1 - 0.25)/0.5 s, 1
        // s.
        Replication run = line().coils(PlainLine.coil(600), PlainLine.coil(3))
                .entry(4, AT_ONCE, 0.5)
                .creep(0.5, 1)
                .join(60)
                .run(2);
        double released = run.changes().get(0).released();
        ChangeRecord second = run.changes().get(1);

        assertNear(second.start(), released);
        assertNear(Course.of(run).entrySpeed(released), 1.5);
        assertNear(second.tailStopped(), released + 2 + 1.5 + 1);
    }

    @Test
    void s11_allAtOnce_entryFillsAtTopSpeedUntilFullToTheLastMillimetre() {
        // Rules MOTION-3, NUM-1.
        // Joint of 60 s draws 90 m, refilled at 1 m/s.
        Replication run = line().entry(2.5, AT_ONCE, AT_ONCE).join(60).run(1);

        assertNear(run.changes().get(0).stripDrawn(), 90);
        assertNear(run.changes().get(0).refillTime(), 90);
        assertThat(Course.of(run).level(700)).isEqualTo(200);
    }

    @Test
    void s12_withoutAcceleration_headsForAProcessThatSpeedsUp_noFasterThanTheCoilAllows() {
        // Rules ENTRY-6, ENTRY-22.
        // Downtime with 5.5 m left: down at 0.25 m/s2 with 4.5 m, up at 0.05 m/s2: T0 at 1 - v^2/0.1 = v^2/1.0. A joint
        // of 1 s draws
        // little, and the process has 22.5 m to gain: the entry would jump to its present speed, 1.1 v + 0.05 = 0.38
        // m/s, but coil 2
        // of 0.1 m can be stopped from sqrt(0.1) = 0.316 m/s only.
        Replication run = line().coils(PlainLine.coil(600), PlainLine.coil(0.1))
                .entry(2.5, AT_ONCE, 0.5)
                .process(1.5, 0.05, 0.25)
                .join(1)
                .downtime(Distribution.constant(594.5 / 1.5), Distribution.constant(10))
                .run(2);
        ChangeRecord first = run.changes().get(0);
        ChangeRecord second = run.changes().get(1);

        assertNear(first.start(), 594.5 / 1.5 + 16 + Math.sqrt(1 / 11.0) / 0.05);
        assertNear(second.start(), first.released());
        assertNear(Course.of(run).entrySpeed(second.start()), Math.sqrt(0.1));
        assertNear(second.tailStopped(), second.start() + Math.sqrt(0.1) / 0.5);
    }
}
