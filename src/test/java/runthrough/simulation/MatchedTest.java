package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.coilAt;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.Trace.EntryState;

/**
 * A matched entry and the process's ramps: it follows them exactly where its own rates allow. Downtimes after 100 s of
 * running, long before the coil of 600 m ends, make the process ramp from 1.5 m/s to 0 and up again. Entry 2.5 m/s, 0.4 m/s2
 * up, 0.5 m/s2 down, unless said otherwise.
 */
class MatchedTest {

    private static PlainLine line(double processUp, double processDown, double standing) {
        return new PlainLine()
                .entry(2.5, 0.4, 0.5)
                .process(1.5, processUp, processDown)
                .downtime(Distribution.constant(100), Distribution.constant(standing));
    }

    @Test
    void s01_slowerRampsThanItsOwn_areFollowedExactly_levelStaysFull() {
        // Rule ENTRY-10.
        // Down at 0.25 m/s2 in 6 s, stand for 20 s, up at 0.1 m/s2 in 15 s; nothing but a matched entry all the while.
        Replication run = line(0.1, 0.25, 20).runFor(180);
        Course course = Course.of(run);

        assertNear(course.entrySpeed(104), 0.5);
        assertNear(course.entrySpeed(136), 1.0);
        assertThat(course.points())
                .allMatch(point -> point.level() == 200)
                .allMatch(point -> point.entryState() == EntryState.MATCHED)
                .allMatch(point -> point.entrySpeed() == point.processSpeed());
        assertNear(run.totals().blockedSeconds(), 20);
    }

    @Test
    void s02_rampsAsSteepAsItsOwn_areFollowedExactly() {
        // Rule ENTRY-10.
        Replication run = line(0.4, 0.5, 20).runFor(180);

        assertThat(Course.of(run).points())
                .allMatch(point -> point.level() == 200 && point.entryState() == EntryState.MATCHED);
    }

    @Test
    void s03_processSlowsFasterThanTheEntryCan_excessIsOvertravel() {
        // Rules ENTRY-11, ENTRY-23.
        // 1.5^2/2 (1/0.5 - 1/1.5) = 2.25 - 0.75 = 1.5 m; the entry stands 3 s after the stop fell due.
        Replication run = line(0.4, 1.5, 20).runFor(110);
        Course course = Course.of(run);

        assertNear(course.entryAcceleration(100), -0.5);
        assertThat(course.entryState(101)).isEqualTo(EntryState.SETTLING);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 103);
        assertNear(course.level(105), 201.5);
        assertNear(run.totals().overtravel(), 1.5);
    }

    @Test
    void overtravelOfNoMoreThanTenTimesTheToleranceIsNotReported() {
        // Rule NUM-3. Of 200 m the tolerance is 2e-8 m. An entry that slows at 0.5 m/s2 while the process slows at d_p
        // brings 2.25 -
        // 2.25/(2 d_p) m too much: 1.5e-7 m with d_p = 0.5 (1 + 6.7e-8), 3e-7 m with twice as much.
        assertThat(overtravel(1.5e-7)).isZero();
        assertThat(overtravel(3e-7)).isCloseTo(3e-7, within(1e-12));
    }

    private static double overtravel(double excess) {
        return line(0.4, 2.25 / (2 * (2.25 - excess)), 20).runFor(110).totals().overtravel();
    }

    @Test
    void s04_overtravelledEntryThatCanFollow_followsWhateverTheSettledLevelSays() {
        // Rule ENTRY-10.
        // As 03: at 121 s the process starts at 0.4 m/s2, which the entry can do: the 1.5 m stay.
        Course course = Course.of(line(0.4, 1.5, 20).runFor(180));

        assertNear(course.entrySpeed(122), 0.4);
        assertThat(course.entryState(122)).isEqualTo(EntryState.MATCHED);
        assertNear(course.level(150), 201.5);
    }

    @Test
    void s05_processSpeedsUpFasterThanTheEntryCan_entryFillsWhatItFellBehind() {
        // Rule ENTRY-12.
        // At 0.8 m/s2: behind by 1.5^2/2 (1/0.4 - 1/0.8) = 1.40625 m when it has 1.5 m/s after 3.75 s. Peak above:
        // u^2/0.8 + u^2/1.0 =
        // 1.40625, u = 0.7905694.
        Replication run = line(0.8, 0.5, 20).runFor(180);
        Course course = Course.of(run);
        double peak = Math.sqrt(1.40625 / 2.25);

        assertNear(course.takesUp(EntryState.FILLING, 1), 123);
        assertNear(course.level(126.75), 198.59375);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 126.75 + peak / 0.4 + peak / 0.5);
        assertThat(course.level(150)).isEqualTo(200);
    }

    @Test
    void s06_cannotFollowUpButEnoughStripIsStored_staysSettledAndKeepsTheRestOfItsOvertravel() {
        // Rule ENTRY-12.
        // Down at once: 1.5^2/1.0 = 2.25 m of overtravel. Up at 0.8 m/s2 the entry falls behind by 1.40625 m: X =
        // 200.84375.
        Replication run = line(0.8, AT_ONCE, 20).runFor(180);
        Course course = Course.of(run);

        assertNear(course.level(119), 202.25);
        assertThat(course.entryState(122)).isEqualTo(EntryState.SETTLING);
        assertNear(course.entryAcceleration(122), 0.4);
        assertNear(course.takesUp(EntryState.MATCHED, 3), 120 + 3.75);
        assertNear(course.level(150), 200.84375);
    }

    @Test
    void s07_settlesAtOnceWhereSpeedsMayJump() {
        // All at once: entry and process stop and start together.
        Replication run =
                line(AT_ONCE, AT_ONCE, 20).entry(2.5, AT_ONCE, AT_ONCE).runFor(180);

        assertThat(Course.of(run).points())
                .allMatch(point -> point.level() == 200 && point.entryState() == EntryState.MATCHED);
        assertNear(run.totals().blockedSeconds(), 20);
    }

    @Test
    void s08_slowerCoil_isFollowedDown_fasterCoil_isFollowedUp() {
        // Coil 2 asks for 0.5 m/s. Its joint, made at 400 s without drawing strip, has 200 m of accumulator to run:
        // 533.33 s.
        Replication run = new PlainLine()
                .coils(coilAt(600, 1.5), coilAt(300, 0.5))
                .entry(2.5, AT_ONCE, AT_ONCE)
                .process(1.5, 0.1, 0.2)
                .join(0)
                .run(3);
        Course course = Course.of(run);
        double reaches = 400 + 200 / 1.5;

        assertNear(course.processSpeed(reaches + 5), 0.5);
        assertNear(course.entrySpeed(reaches + 2.5), 1.0);
        assertThat(course.points()).allMatch(point -> point.level() == 200);
    }

    @Test
    void s09_stopsAndStartsAgainBeforeTheEntryStands_isLookedAtAgain() {
        // Rule ENTRY-7.
        // Process down at once at 100 s, up at 0.1 m/s2 at 101 s. Then v_e = 1.0, x = 200 + 1.25 and X = x - 0.25/0.8 +
        // 11.25 > 200:
        // above the capacity, so the entry holds 1.0 until X = 200: 12.1875/0.5 = 24.375 s, and has 1.5 m/s 1.25 s
        // later.
        Course course = Course.of(line(0.1, AT_ONCE, 1).runFor(180));

        assertNear(course.level(101), 201.25);
        assertNear(course.entrySpeed(125), 1.0);
        assertNear(course.takesUp(EntryState.MATCHED, 2), 101 + 24.375 + 1.25);
        assertThat(course.level(150)).isEqualTo(200);
    }

    @Test
    void s10_unlimitedCoilsStopAtTheEndOfTheCoilOnly() {
        // A matched line at rest for longer than a coil would last: the coil change comes later by that time.
        Replication run = new PlainLine()
                .coils(coil(600))
                .join(60)
                .downtime(Distribution.constant(300), Distribution.constant(1000))
                .run(1);

        assertNear(run.changes().get(0).start(), 1400);
    }

    @Test
    void s11_roundingDoesNotPartTheTwoSpeeds_matchedToTheEndOfTheRamp() {
        // Rule ENTRY-10.
        // Numbers that are not exact in binary; the entry could not follow upwards, but it need not.
        for (int i = 1; i <= 50; i++) {
            Replication run = new PlainLine()
                    .entry(2.5, 0.1, 0.7)
                    .process(1 + i / 93.0, 0.6, 0.2 + i / 107.0)
                    .downtime(Distribution.constant(101 + i / 7.0), Distribution.constant(100))
                    .runFor(130);

            assertThat(Course.of(run).points()).allMatch(point -> point.entryState() == EntryState.MATCHED);
        }
    }

    @Test
    void s12_roundingDoesNotPartTheTwoSpeeds_alsoWhereTheRampEndsAtASpeed() {
        // Rule ENTRY-10.
        // Down to a slower coil's speed, 200 m after its joint; the entry, up at 0.1 m/s2, has long refilled what that
        // drew.
        for (int i = 1; i <= 50; i++) {
            double slower = 0.5 + i / 111.0;
            Replication run = new PlainLine()
                    .coils(coilAt(600, slower), coilAt(900, slower / 2))
                    .entry(2.5, 0.1, AT_ONCE)
                    .process(slower, 0.6, 0.2 + i / 107.0)
                    .join(0)
                    .runFor((800 + 4) / slower);
            assertThat(Course.of(run).processSpeed(803 / slower)).isEqualTo(slower / 2);
            assertThat(Course.of(run).points())
                    .filteredOn(point -> point.time() > 790 / slower)
                    .allMatch(point -> point.entryState() == EntryState.MATCHED);
        }
    }
}
