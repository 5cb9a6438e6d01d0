package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.Trace.EntryState;

/**
 * What an entry does that is filling or settled when the speed v* that the process is heading for changes: the settled level
 * X decides.
 *
 * <p>The line is that of {@link FillingTest}: from 497.75 s on the entry fills at 2.5 m/s, the level then being 61.1875 m and
 * rising by 1 m/s. Downtimes change v*: they fall due once, after {@code stopAt} seconds of running, and stand for {@code
 * standing} seconds.
 */
class SettlingTest {

    private static PlainLine line(double stopAt, double standing, double processUp) {
        return new PlainLine()
                .entry(2.5, 0.4, 0.5)
                .process(1.5, processUp, AT_ONCE)
                .join(90)
                .downtime(Distribution.constant(stopAt), Distribution.constant(standing));
    }

    @Test
    void s01_processStopsNearlyFull_entrySlowsAtOnceAndWhatRisesAboveIsOvertravel() {
        // Rule ENTRY-5.
        // At 635 s x = 198.4375 and X = x + 2.5^2/1.0 = 204.6875 > 200: it ramps to 0 in 5 s.
        Replication run = line(635, 50, AT_ONCE).runFor(800);
        Course course = Course.of(run);

        assertNear(course.takesUp(EntryState.SETTLING, 1), 635);
        assertNear(course.entrySpeed(636), 2.0);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 640);
        assertNear(course.level(640), 204.6875);
        assertNear(run.totals().overtravel(), 4.6875);
        // Matched above the capacity is matched: T2 = 491.5 s.
        assertNear(run.changes().get(0).refillTime(), 148.5);
    }

    @Test
    void s02_processStartsAgainWhileEntrySettles_settledLevelBelowFull_entryFillsAgain() {
        // Rules ENTRY-1, ENTRY-5.
        // Stop at 600 s: settles at 612.125 s from x = 193.75 (FillingTest 06). At 614 s v_e = 1.5625 and
        // x = 193.75 + 2.5 1.875 - 0.25 1.875^2 = 197.55859375. Now v* = 1.5: X = x + 0.0625^2 = 197.5625 < 200.
        Replication run = line(600, 14, AT_ONCE).runFor(800);
        Course course = Course.of(run);

        assertNear(course.takesUp(EntryState.SETTLING, 1), 612.125);
        assertNear(course.takesUp(EntryState.FILLING, 2), 614);
        assertNear(course.entryAcceleration(614), 0.4);
        // To 2.5 m/s in 2.34375 s; while it speeds up X rises at (1 + 0.4/0.5)(v_e - 1.5), to
        // 197.5625 + 1.8 (0.0625 2.34375 + 0.2 2.34375^2) = 199.8037109375; then at 1 m/s to 200.
        double settles = 614 + 2.34375 + 0.1962890625;
        assertNear(course.takesUp(EntryState.SETTLING, 2), settles);
        assertNear(course.takesUp(EntryState.MATCHED, 2), settles + 2);
        assertThat(course.level(settles + 2)).isEqualTo(200);
    }

    @Test
    void s03_slowerThanTheProcessWillBe_notAboveCapacity_headsForItsPresentSpeedAndFollowsIt() {
        // Rule ENTRY-6.
        // Stop at 600 s, settling from 612.125 s. At 615.125 s v_e = 1.0, x = 200 - 1.0 = 199. The process starts at
        // 0.05 m/s2:
        // X = 199 - 0.5^2/0.8 + 1.5^2/0.1 > 200 though v_e < v* = 1.5. The entry slows at 0.5 until 1.0 - 0.5 t = 0.05
        // t.
        Replication run = line(600, 15.125, 0.05).runFor(700);
        Course course = Course.of(run);
        double meets = 1.0 / 0.55;

        assertNear(course.entryAcceleration(615.125), -0.5);
        assertNear(course.entrySpeed(615.125 + meets), 0.05 * meets);
        // Gained meanwhile: half the speed difference of 1.0 times the time. Then it follows exactly, until both have
        // 1.5.
        double level = 199 + 0.5 * meets;
        assertNear(course.level(615.125 + meets), level);
        assertNear(course.entryAcceleration(620), 0.05);
        assertNear(course.entrySpeed(630), course.processSpeed(630));
        assertNear(course.level(640), level);
        // At 645.125 s X = x < 200: it is filling, with a peak of sqrt(2 D 0.4 0.5/0.9) above the process.
        assertThat(course.entryState(645)).isEqualTo(EntryState.SETTLING);
        assertNear(course.takesUp(EntryState.FILLING, 2), 645.125);
        double peak = Math.sqrt(2 * (200 - level) * 0.4 * 0.5 / 0.9);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 645.125 + peak / 0.4 + peak / 0.5);
    }

    @Test
    void s04_slowerThanTheProcessWillBe_cannotFollow_fillsOnceItHasItsPresentSpeed() {
        // Rule ENTRY-6.
        // As before, but the process starts at 0.5 m/s2, faster than the entry's 0.4: X = 199 - 0.3125 + 2.25 =
        // 200.9375. They
        // meet after 1 s at 0.5 m/s, x = 199.5. Then X = 199.5 - 1/0.8 + 1/1.0 = 199.25: filling.
        Replication run = line(600, 15.125, 0.5).runFor(700);
        Course course = Course.of(run);

        assertNear(course.entryAcceleration(615.125), -0.5);
        assertNear(course.level(616.125), 199.5);
        assertNear(course.takesUp(EntryState.FILLING, 2), 616.125);
        assertNear(course.entryAcceleration(616.125), 0.4);
        // At v_e = 1.5, 2.5 s on, x = X = 199.25. Peak above the process: u^2/0.8 + u^2/1.0 = 0.75.
        assertNear(course.level(618.625), 199.25);
        double peak = Math.sqrt(0.75 / 2.25);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 618.625 + peak / 0.4 + peak / 0.5);
        assertThat(course.level(640)).isEqualTo(200);
    }

    @Test
    void s05_slowerThanTheProcessWillBe_aboveCapacity_storedOvertravelIsDrawnFirst() {
        // Rule ENTRY-7.
        // Stop at 635 s (case 01). At 638 s v_e = 1.0, x = 204.6875 - 1.0 = 203.6875. The process is at 1.5 at once:
        // X = x - 0.5^2/0.8 = 203.375 falls by 0.5 m/s while the entry holds 1.0: 6.75 s; then 1.25 s up to 1.5. "Does
        // not speed
        // up" is read as holding the speed that it has, not as going on to slow down.
        Replication run = line(635, 3, AT_ONCE).runFor(800);
        Course course = Course.of(run);

        assertNear(course.entryAcceleration(638), 0);
        assertNear(course.entrySpeed(644.5), 1.0);
        assertNear(course.entryAcceleration(644.75), 0.4);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 646);
        assertThat(course.level(646)).isEqualTo(200);
        assertNear(run.changes().get(0).refillTime(), 646 - 491.5);
    }

    @Test
    void s06_aboveCapacityWithASlowlyStartingProcess_excessIsCountedWithItsRamp() {
        // Rules ENTRY-1, ENTRY-7.
        // As 05 with 0.05 m/s2: X = 203.6875 - 0.3125 + 22.5 = 225.875; 25.875/0.5 = 51.75 s at 1.0 m/s, then 1.25 s
        // up.
        Replication run = line(635, 3, 0.05).runFor(800);
        Course course = Course.of(run);

        assertNear(course.entrySpeed(689), 1.0);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 638 + 51.75 + 1.25);
        assertThat(course.level(700)).isEqualTo(200);
        // Highest when the process has 1.0 m/s, 20 s on: 203.6875 + 1.0 20/2 = 213.6875.
        assertNear(run.totals().overtravel(), 13.6875);
    }

    @Test
    void s07_levelRisesThroughCapacityWhileHeadingForTheProcess_isLookedAtAgainWhenTheSpeedsMeet() {
        // Rule ENTRY-8.
        // Stop when x = 194.25, at 630.8125 s. 3 s later v_e = 1.0, x = 194.25 + 5.25 = 199.5; process starts at 0.05
        // m/s2.
        // They meet 1/0.55 s on at v with x = 199.5 + 0.5/0.55 > 200: it holds v until X = 200, then ramps to 1.5.
        double stop = 497.75 + 194.25 - 61.1875;
        Replication run = line(stop, 3, 0.05).runFor(800);
        Course course = Course.of(run);
        double meets = stop + 3 + 1 / 0.55;
        double speed = 0.05 / 0.55;
        double below = 1.5 - speed;

        assertNear(course.level(stop + 3), 199.5);
        assertNear(course.level(meets), 199.5 + 0.5 / 0.55);
        assertNear(course.entrySpeed(meets + 5), speed);
        double settled = 199.5 + 0.5 / 0.55 - below * below / 0.8 + below * below / 0.1;
        double holds = (settled - 200) / below;
        assertNear(course.entryAcceleration(meets + holds), 0.4);
        assertNear(course.entrySpeed(meets + holds + below / 0.4), 1.5);
        // It has v* before the process, which takes 30 s: matched, and full, only then.
        assertNear(course.takesUp(EntryState.MATCHED, 2), stop + 33);
        assertThat(course.level(stop + 33)).isEqualTo(200);
    }

    @Test
    void s08_levelRoseThroughCapacityButWillNotStayThere_fillsWhenTheSpeedsMeet() {
        // Rule ENTRY-8.
        // Stop when x = 194.35: 3 s later x = 199.6. Process at 0.5 m/s2: they meet 1 s on at 0.5 m/s, x = 200.1, and
        // X = 200.1 - 1/0.8 + 1/1.0 = 199.85 < 200.
        double stop = 497.75 + 194.35 - 61.1875;
        Replication run = line(stop, 3, 0.5).runFor(700);
        Course course = Course.of(run);

        assertNear(course.level(stop + 4), 200.1);
        assertNear(course.takesUp(EntryState.FILLING, 2), stop + 4);
        assertNear(course.entryAcceleration(stop + 4), 0.4);
    }

    @Test
    void s09_levelRoseThroughCapacityAndStays_cannotFollow_holdsAndArrivesFull() {
        // Rule ENTRY-8.
        // Stop when x = 194.55: 3 s later x = 199.8; they meet 1 s on at 0.5 m/s with x = 200.3, X = 200.05: 0.05 s at
        // 0.5 m/s
        // (v* - v_e = 1.0), then 2.5 s up to 1.5.
        double stop = 497.75 + 194.55 - 61.1875;
        Replication run = line(stop, 3, 0.5).runFor(700);
        Course course = Course.of(run);

        assertNear(course.entryAcceleration(stop + 4), 0);
        assertNear(course.takesUp(EntryState.MATCHED, 2), stop + 4 + 0.05 + 2.5);
        assertThat(course.level(stop + 7)).isEqualTo(200);
    }

    @Test
    void s10_releasedWhileTheProcessSpeedsUp_headsForItsPresentSpeedFromBelow() {
        // Rules ENTRY-6, ENTRY-21.
        // Coil of 602 m, entry stops at once. Downtime at 400 s, 2 m being left; the process starts again at 410 s at
        // 0.01 m/s2,
        // the matched entry with it: 2 = 0.005 t^2, T0 = 430 s at 0.2 m/s. Joint 5 s: drawn 0.2 5 + 0.005 25 = 1.125 m.
        // At T2 X = 198.875 - 1.5^2/0.8 + 1.25^2/0.02 > 200: it speeds up at 0.4 until 0.4 t = 0.25 + 0.01 t, and
        // follows.
        Replication run = new PlainLine()
                .coils(PlainLine.coil(602))
                .entry(2.5, 0.4, AT_ONCE)
                .process(1.5, 0.01, AT_ONCE)
                .join(5)
                .downtime(Distribution.constant(400), Distribution.constant(10))
                .runFor(600);
        Course course = Course.of(run);
        double meets = 435 + 0.25 / 0.39;

        assertNear(run.changes().get(0).start(), 430);
        assertNear(course.level(435), 198.875);
        assertNear(course.entryAcceleration(435), 0.4);
        assertNear(course.entryAcceleration(meets), 0.01);
        double level = 198.875 - 0.25 * 0.25 / (2 * 0.39);
        assertNear(course.level(500), level);
        assertNear(course.entrySpeed(500), 0.9);
        // Both have 1.5 at 560 s; then what is missing is filled.
        assertNear(course.takesUp(EntryState.FILLING, 1), 560);
    }

    @Test
    void s11_settledEntryHoldsTheProcessSpeedToBeUntilTheProcessHasIt() {
        // Rule ENTRY-9.
        // Process slows to its stop at 0.05 m/s2 (30 s, 22.5 m), entry at 0.5 m/s2, filling at 2.5 m/s when the stop
        // falls due at
        // 600 s: X = 163.4375 + 6.25 - 22.5. X rises at 2.5 m/s: settles when X = 200, at 600 + 52.8125/2.5 = 621.125
        // s;
        // it stands at 626.125 s with x = 200 + what the process has still to run, (1.5 - 0.05 26.125)^2/0.1.
        Replication run = new PlainLine()
                .entry(2.5, 0.4, 0.5)
                .process(1.5, AT_ONCE, 0.05)
                .join(90)
                .downtime(Distribution.constant(600), Distribution.constant(100))
                .runFor(650);
        Course course = Course.of(run);

        assertNear(course.takesUp(EntryState.SETTLING, 1), 621.125);
        assertThat(course.entrySpeed(626.125)).isEqualTo(0);
        double left = 1.5 - 0.05 * 26.125;
        assertNear(course.level(626.125), 200 + left * left / 0.1);
        assertThat(course.entryState(629)).isEqualTo(EntryState.SETTLING);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 630);
        assertThat(course.level(630)).isEqualTo(200);
    }

    @Test
    void s12_fillingSlowerThanTheProcessWillBe_headsForItsPresentSpeedToo() {
        // Rules ENTRY-6, ENTRY-9.
        // F = 0.5 (FillingTest 05): from 503 s on the entry fills at 0.5 m/s against the standing process, x = 65.75 +
        // 0.5 (t - 503).
        // At 751.5 s x = 190 and the process starts at 0.05 m/s2: X = 190 - 1.0^2/0.8 + 22.5 > 200: 0.5 - 0.5 t = 0.05
        // t.
        Replication run = line(500, 251.5, 0.05).fillRate(0.5).runFor(790);
        Course course = Course.of(run);
        double meets = 0.5 / 0.55;

        assertNear(course.level(751.5), 190);
        assertNear(course.entryAcceleration(751.5), -0.5);
        assertNear(course.entryAcceleration(751.5 + meets), 0.05);
        assertNear(course.level(770), 190 + 0.25 * meets);
        assertNear(course.takesUp(EntryState.FILLING, 2), 781.5);
    }

    @Test
    void s13_headsForTheProcessAtOnceWhereItsSpeedMayFallAtOnce() {
        // Entry down at once, F = 0.5: T1 = 400, T2 = 490 s with 65 m; 2.0 m/s 5 s later with 62.5 m; 65 m at 500 s,
        // when the process
        // stops; then 0.5 m/s, 190 m at 750 s. The process starts at 0.05 m/s2: X > 200, v_e = 0 at once and 0.05 t
        // from there.
        Replication run =
                line(500, 250, 0.05).entry(2.5, 0.4, AT_ONCE).fillRate(0.5).runFor(800);
        Course course = Course.of(run);

        assertNear(course.level(750), 190);
        assertThat(course.entrySpeed(750)).isEqualTo(0);
        assertNear(course.entryAcceleration(750), 0.05);
        assertNear(course.level(775), 190);
        assertNear(course.takesUp(EntryState.FILLING, 2), 780);
    }

    @Test
    void s14_fillsAgainFasterThanTheProcess_settlesWhileStillSpeedingUp() {
        // Rules ENTRY-1, ENTRY-5.
        // As 02 with V_e = 4: that from 501.5 s on with 67.75 m, rising by 2.5 m/s. Stop at 540 s: X = 180, settles at
        // x = 184, at 545 s;
        // at 549.875 s v_e = 1.5625, x = 200 - 1.5625^2. Again X = 197.5625, and 1.8 (0.0625 t + 0.2 t^2) = 2.4375.
        Replication run = line(540, 9.875, AT_ONCE).entry(4, 0.4, 0.5).runFor(700);
        Course course = Course.of(run);
        double rises = (-0.0625 + Math.sqrt(0.0625 * 0.0625 + 0.8 * 2.4375 / 1.8)) / 0.4;
        double over = 0.0625 + 0.4 * rises;

        assertNear(course.takesUp(EntryState.SETTLING, 1), 545);
        assertNear(course.takesUp(EntryState.FILLING, 2), 549.875);
        assertNear(course.takesUp(EntryState.SETTLING, 2), 549.875 + rises);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 549.875 + rises + over / 0.5);
    }

    @Test
    void s15_standingBesideTheStandingProcess_bothStartTogether() {
        // Rules ENTRY-6, ENTRY-21.
        // 1 m/s: T0 = T1 = 512; downtime from 520 to 576 s; joint until 576 s, which ends first: x = 192, v_e = v_p =
        // 0. Then the process
        // starts at 0.05 m/s2 and X = 192 - 1/0.8 + 1/0.1 > 200: the entry follows from the start.
        Replication run = new PlainLine()
                .coils(PlainLine.coil(512))
                .entry(2.5, 0.4, AT_ONCE)
                .process(1, 0.05, AT_ONCE)
                .join(64)
                .downtime(Distribution.constant(520), Distribution.constant(56))
                .runFor(620);
        Course course = Course.of(run);

        assertNear(course.entrySpeed(586), 0.5);
        assertNear(course.level(595), 192);
        assertNear(course.takesUp(EntryState.FILLING, 1), 596);
    }
}
