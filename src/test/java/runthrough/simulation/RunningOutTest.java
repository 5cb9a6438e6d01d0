package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Trace;
import runthrough.simulation.records.Trace.EntryState;

/**
 * How the tail comes to rest in the joiner, without and with creep, and when the coil change starts (T0). Process 1.5 m/s;
 * entry up to 2.5 m/s, 0.4 m/s2 up, 0.5 m/s2 down; coils of 600 m; creep, where there is any, at 0.5 m/s over 10 m.
 */
class RunningOutTest {

    private static PlainLine line() {
        return new PlainLine().entry(2.5, 0.4, 0.5).process(1.5, AT_ONCE, AT_ONCE);
    }

    private static Distribution constant(double value) {
        return Distribution.constant(value);
    }

    @Test
    void s01_withoutCreep_slowsInTimeToStandWithNothingLeft() {
        // Rules ENTRY-14, ENTRY-20, NUM-1.
        Replication run = line().join(90).run(1);
        ChangeRecord change = run.changes().get(0);

        // 1.5^2/1.0 = 2.25 m before the end; 3 s to stand.
        assertNear(change.start(), (600 - 2.25) / 1.5);
        assertNear(change.tailStopped(), change.start() + 3);
        Trace.Point standing = Course.of(run).points().stream()
                .filter(point -> point.entryState() == EntryState.STANDING)
                .findFirst()
                .orElseThrow();
        assertThat(standing.remaining()).isEqualTo(0);
    }

    @Test
    void s02_coilTooShortToReachSpeed_runsOutWhileSpeedingUp() {
        // Coil 2 of 9 m: v^2/0.8 + v^2/1.0 = 9 gives v = 2.0, 5 s after T2; 4 s down.
        Replication run = line().coils(coil(600), coil(9)).join(60).run(2);
        ChangeRecord second = run.changes().get(1);
        double released = run.changes().get(0).released();

        assertNear(second.start(), released + 5);
        assertNear(Course.of(run).entrySpeed(released + 5), 2.0);
        assertNear(second.tailStopped(), released + 9);
    }

    @Test
    void s03_coilEndsWhileFilling_runsOutFromTopSpeed() {
        // Rule ENTRY-14.
        // Coil 2 of 100 m: 7.8125 m to 2.5 m/s in 6.25 s; 6.25 m to stand; between them 85.9375/2.5 s.
        Replication run = line().coils(coil(600), coil(100)).join(60).run(2);

        assertNear(run.changes().get(1).start(), run.changes().get(0).released() + 6.25 + 34.375);
        assertNear(run.changes().get(1).tailStopped(), run.changes().get(1).start() + 5);
    }

    @Test
    void s04_coilEndsJustAfterSettling_noRunOutIsSeenInTheSettlingRamp() {
        // Rule NUM-4.
        // Joint 0: T2 = 401.5; speeds up to 2.5 m/s in 6.25 s, 7.8125 m. Missing: 2.25 - (9.375 - 7.8125) ... = 200 - x
        // = 3.8125 m
        // at 2.5 m/s, X = 200 when 1 m is missing: 2.8125 s. Then 2 s down to 1.5, using 4 m. Coil 2 has 0.75 m more
        // than that and
        // the 2.25 m to stop: 0.5 s at 1.5 m/s.
        double settles = 6.25 + 2.8125;
        double used = 7.8125 + 2.5 * 2.8125 + 4;
        Replication run =
                line().coils(coil(600), coil(used + 0.75 + 2.25)).join(0).run(2);
        ChangeRecord first = run.changes().get(0);

        assertNear(Course.of(run).takesUp(EntryState.SETTLING, 1), 401.5 + settles);
        assertNear(first.refillTime(), settles + 2);
        assertNear(run.changes().get(1).start(), 401.5 + settles + 2 + 0.5);
    }

    @Test
    void s05_coilEndsWhileSettlingBegins_runningOutOutranksSettling() {
        // Rule ENTRY-18.
        // As 04, but coil 2 ends in time to stand from 2.5 m/s (6.25 m) 1 s before the entry would settle.
        double used = 7.8125 + 2.5 * 1.8125;
        Replication run = line().coils(coil(600), coil(used + 6.25)).join(0).run(2);
        ChangeRecord second = run.changes().get(1);

        assertNear(second.start(), 401.5 + 6.25 + 1.8125);
        assertNear(second.tailStopped(), second.start() + 5);
        assertThat(run.changes().get(0).refillTime()).isNaN();
    }

    @Test
    void s06_processStandsWhileTheTailRunsOut_whatIsPushedAboveIsOvertravel() {
        // Rules ENTRY-18, ENTRY-23.
        // Downtime at 399 s, 0.5 s after T0: x = 200 - 0.5 0.5^2/2 = 199.9375, v_e = 1.25: 1.25^2/1.0 = 1.5625 m more.
        Replication run = line().join(90).downtime(constant(399), constant(60)).runFor(420);

        assertNear(run.totals().overtravel(), 1.5);
        assertNear(Course.of(run).takesUp(EntryState.STANDING, 1), 401.5);
    }

    @Test
    void s07_processStoppedAndFull_entryStandsAndTheCoilChangeComesLater() {
        // Rule ENTRY-19.
        Replication run = line().process(1.5, 0.1, 0.1)
                .join(90)
                .downtime(constant(300), constant(100))
                .run(1);

        // 300 s to 450 m; 15 s down and 15 s up with 11.25 m each, 100 s standing; then (600 - 472.5 - 2.25)/1.5 s.
        assertNear(run.changes().get(0).start(), 300 + 15 + 100 + 15 + 83.5);
    }

    @Test
    void s08_creep_reachesCreepSpeedAtTheCreepLengthAndHoldsIt() {
        // Rule ENTRY-15.
        // T0 at r = 10 + (1.5^2 - 0.5^2)/1.0 = 12: 392 s; 0.5 m/s 2 s later; (10 - 0.25)/0.5 = 19.5 s; 1 s to stand.
        Replication run = line().creep(0.5, 10).join(90).run(1);
        Course course = Course.of(run);
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), 392);
        assertNear(course.entrySpeed(393), 1.0);
        assertNear(course.entrySpeed(394), 0.5);
        assertNear(course.entrySpeed(413), 0.5);
        assertNear(course.entrySpeed(414), 0.25);
        assertNear(change.tailStopped(), 414.5);
        // Drawn: 140.0625 as without creep, and (1.5 - 0.5)(10 - 0.25)/0.5 = 19.5 m.
        assertNear(change.stripDrawn(), 159.5625);
    }

    @Test
    void s09_creepLengthJustEnoughToStandFromCreepSpeed_isOneRampInAll() {
        // l_c = 0.5^2/1.0 = 0.25: T0 at r = 0.25 + 2 = 2.25, and 3 s to stand.
        ChangeRecord change = line().creep(0.5, 0.25).join(90).run(1).changes().get(0);

        assertNear(change.start(), 398.5);
        assertNear(change.tailStopped(), 401.5);
    }

    @Test
    void s10_creepWithoutDeceleration_jumpsToCreepSpeedAtTheCreepLength() {
        ChangeRecord change = line().entry(2.5, AT_ONCE, AT_ONCE)
                .creep(0.5, 10)
                .join(90)
                .run(1)
                .changes()
                .get(0);

        assertNear(change.start(), 590 / 1.5);
        assertNear(change.tailStopped(), 590 / 1.5 + 20);
    }

    @Test
    void s11_coilShorterThanTheCreepLength_startsWithinIt_coilChangeBeginsWhenCreepSpeedIsHeld() {
        // Rule ENTRY-17.
        // Coil 2 of 6 m: 1.25 s and 0.3125 m to 0.5 m/s, which is T0; (6 - 0.3125 - 0.25)/0.5 = 10.875 s; 1 s.
        Replication run =
                line().coils(coil(600), coil(6)).creep(0.5, 10).join(30).run(2);
        double released = run.changes().get(0).released();
        ChangeRecord second = run.changes().get(1);

        assertNear(second.start(), released + 1.25);
        assertNear(Course.of(run).entrySpeed(released + 5), 0.5);
        assertNear(second.tailStopped(), released + 1.25 + 10.875 + 1);
    }

    @Test
    void s12_coilTooShortToReachCreepSpeed_coilChangeBeginsWithItsFirstDownwardRamp() {
        // Rule ENTRY-17.
        // Coil 2 of 0.2 m: v^2/0.8 + v^2/1.0 = 0.2.
        Replication run =
                line().coils(coil(600), coil(0.2)).creep(0.5, 10).join(30).run(2);
        double released = run.changes().get(0).released();
        double peak = Math.sqrt(0.2 / 2.25);
        ChangeRecord second = run.changes().get(1);

        assertNear(second.start(), released + peak / 0.4);
        assertNear(second.tailStopped(), released + peak / 0.4 + peak / 0.5);
    }

    @Test
    void s13_coilLongerThanTheCreepLengthButTooShortToReachMore_comesToCreepFromBelowItsPeak() {
        // Coil 2 of 12 m: from v back to 0.5 at r = 10: v^2/0.8 + (v^2 - 0.25)/1.0 = 2, v = 1.0, after 2.5 s.
        Replication run =
                line().coils(coil(600), coil(12)).creep(0.5, 10).join(30).run(2);
        double released = run.changes().get(0).released();

        assertNear(run.changes().get(1).start(), released + 2.5);
        assertNear(Course.of(run).entrySpeed(released + 3.5), 0.5);
        assertNear(run.changes().get(1).tailStopped(), released + 3.5 + 19.5 + 1);
    }

    @Test
    void s14_tailComesNearWhileTheLineSlows_entrySpeedsUpToNoMoreThanCreepSpeed() {
        // Rule ENTRY-16.
        // Downtime at r = 14.25; down at 0.25 m/s2: r = 9.75 + 2 v^2 stays above what creep needs, 9.75 + v^2, and
        // passes 10 m at
        // v^2 = 0.125, below creep speed. It stands with 9.75 m. Up at 0.2 m/s2: creep speed after 2.5 s with 9.125 m:
        // T0.
        double due = (600 - 14.25) / 1.5;
        Replication run = line().process(1.5, 0.2, 0.25)
                .creep(0.5, 10)
                .join(90)
                .downtime(constant(due), constant(100))
                .run(1);
        Course course = Course.of(run);
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), due + 6 + 100 + 2.5);
        assertNear(course.entrySpeed(change.start() + 5), 0.5);
        assertNear(course.processSpeed(change.start() + 5), 1.5);
        assertNear(change.tailStopped(), change.start() + 17.75 + 1);
    }

    @Test
    void s15_sameWithASpeedThatJumps_entryJumpsToCreepSpeedOnly() {
        // Rules ENTRY-13, ENTRY-16.
        double due = (600 - 14.25) / 1.5;
        Replication run = line().entry(2.5, AT_ONCE, 0.5)
                .process(1.5, AT_ONCE, 0.25)
                .creep(0.5, 10)
                .join(90)
                .downtime(constant(due), constant(100))
                .run(1);
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), due + 106);
        assertNear(Course.of(run).entrySpeed(due + 106), 0.5);
        assertNear(change.tailStopped(), due + 106 + (9.75 - 0.25) / 0.5 + 1);
    }

    /** Slowed to 0.3 m/s and filled against at {@code fillRate} above it, with 15 m of coil 2. */
    private static Replication slowed(double fillRate) {
        // T1 = 414.5 with x = 200 - (1.5 22.5 - 12) = 178.25; at 150 m, 18.8333 s on, slowed; T2 = 444.5.
        return line().coils(coil(600), coil(15))
                .fillRate(fillRate)
                .creep(0.5, 10)
                .join(30)
                .slowing(0.3, 150, 190)
                .run(2);
    }

    @Test
    void s16_slowerThanCreepAllTheWay_coilChangeBeginsWithItsFirstDownwardRamp() {
        // Rule ENTRY-17.
        // v = 0.3 + 0.1 after 1 s, 0.2 m; it passes l_c at 0.4 and stands from r = 0.4^2/1.0 = 0.16: 14.64/0.4 = 36.6
        // s.
        Replication run = slowed(0.1);
        ChangeRecord second = run.changes().get(1);

        assertNear(run.changes().get(0).released(), 444.5);
        assertNear(second.start(), 444.5 + 1 + 36.6);
        assertNear(second.tailStopped(), 444.5 + 1 + 36.6 + 0.8);
    }

    @Test
    void s17_runningAtCreepSpeedAnyway_coilChangeBeginsAtTheCreepLength() {
        // Rule ENTRY-17.
        // v = 0.3 + 0.2 = v_c after 1.25 s, 0.3125 m; r = 10 after 4.6875/0.5 s: T0; (10 - 0.25)/0.5 s; 1 s.
        ChangeRecord second = slowed(0.2).changes().get(1);

        assertNear(second.start(), 444.5 + 1.25 + 9.375);
        assertNear(second.tailStopped(), 444.5 + 1.25 + 9.375 + 19.5 + 1);
    }

    @Test
    void s18_downtimeAtTheVeryEndOfTheCoil_coilChangeStartsWhenTheLineRunsAgain() {
        // Rules ORDER-4, ORDER-6.
        // Speeds jump: T0 would be at 400 s with nothing left, but the downtime due then comes first.
        Replication run = line().entry(2.5, AT_ONCE, AT_ONCE)
                .join(60)
                .downtime(constant(400), constant(50))
                .run(1);
        ChangeRecord change = run.changes().get(0);

        assertNear(change.start(), 450);
        assertNear(change.tailStopped(), 450);
        assertNear(change.released(), 510);
    }

    @Test
    void s19_downtimeAtTheVeryEndOfTheCoil_entryThatMustSlow_isAlreadyRunningOut() {
        // T0 = 398.5 s = downtime due; the process stops at once, the entry runs out in 3 s with 2.25 m of overtravel.
        Replication run =
                line().join(60).downtime(constant(398.5), constant(50)).runFor(440);

        assertNear(Course.of(run).takesUp(EntryState.STANDING, 1), 401.5);
        assertNear(run.totals().overtravel(), 2.25);
    }

    @Test
    void s20_stripThatPassedTheJoinerIsTheCoils() {
        // Rule ENTRY-21.
        Replication run = line().coils(coil(600), coil(9), coil(700)).join(60).run(3);

        // Ends at T0 of change 4, with 2.25 m of the first coil's 600 left, come round again.
        assertNear(run.totals().enteredMetres(), 600 + 9 + 700 + 597.75);
    }
}
