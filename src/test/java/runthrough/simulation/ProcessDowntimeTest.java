package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * Process downtime. Coils of 600 m, 200 m of accumulator, process 1.5 m/s, entry 2.5 m/s with speeds that jump: the
 * tail stops after 400 s of running; with a joint of 160 s T2 = 560 s.
 */
class ProcessDowntimeTest {

    private static Distribution constant(double value) {
        return Distribution.constant(value);
    }

    private static PlainLine line(double running, double standing) {
        return new PlainLine().join(160).downtime(constant(running), constant(standing));
    }

    private static void assertTimes(List<Double> actual, double... expected) {
        assertThat(actual).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertNear(actual.get(i), expected[i]);
        }
    }

    @Test
    void s01_comeAfterTheirRunningTime_whichBeginsAnewWhenAStopEnds() {
        // Rules DOWN-1, DOWN-6.
        Replication run = line(100, 40).runFor(400);

        assertTimes(Course.of(run).times(ProcessState.DOWNTIME), 100, 240, 380);
        assertThat(run.totals().downtimes()).isEqualTo(3);
        assertNear(run.totals().downtimeSeconds(), 40 + 40 + 20);
        assertThat(run.totals().starvedStops()).isEqualTo(0);
    }

    @Test
    void s01a_runningTimeIsDrawnAnewWhenAStopEnds() {
        // Rule DOWN-6. Each of 30 running times is 100 or 300 s; of one draw for all of them they would be alike.
        Replication run = new PlainLine()
                .coils(PlainLine.coil(100_000))
                .join(160)
                .downtime(Distribution.observed(List.of(100.0, 300.0)), constant(40))
                .runFor(10_000);
        List<Double> times = Course.of(run).times(ProcessState.DOWNTIME);

        assertThat(times).hasSizeGreaterThan(29);
        List<Long> running = IntStream.range(1, times.size())
                .mapToObj(i -> Math.round(times.get(i) - times.get(i - 1) - 40))
                .toList();
        assertThat(running).contains(100L, 300L).containsOnly(100L, 300L);
    }

    @Test
    void s02_standingTimeRunsFromWhenItCameToRest() {
        // Rule DOWN-1.
        // 6 s down, 20 s, 3 s up, of which running time: due 100 s later counting the ramp up.
        Replication run =
                line(100, 20).entry(2.5, 0.5, 0.25).process(1.5, 0.5, 0.25).runFor(300);
        Course course = Course.of(run);

        assertNear(course.processSpeed(103), 0.75);
        assertNear(course.processAcceleration(126), 0.5);
        assertTimes(course.times(ProcessState.DOWNTIME), 100, 226);
        assertNear(run.totals().downtimeSeconds(), 26 + 26);
    }

    @Test
    void s03_clockStandsWhileTheProcessStarves() {
        // Rule DOWN-1.
        // Starved from 533.33 to 568 s. 540 s of running time: 6.67 s after that.
        Replication run = line(540, 40).runFor(700);

        assertTimes(Course.of(run).times(ProcessState.DOWNTIME), 568 + 540 - 400 - 200 / 1.5);
    }

    @Test
    void s04_clockRunsDuringRamps() {
        // Rule DOWN-1.
        // As 02: 3 s of ramp up and 97 s.
        Replication run =
                line(100, 20).entry(2.5, 0.5, 0.25).process(1.5, 0.5, 0.25).runFor(227);

        assertNear(Course.of(run).takesUp(ProcessState.DOWNTIME, 2), 126 + 100);
    }

    @Test
    void s05_dueWhileRampingDownForLackOfStrip_isTakenAtOnce_andStandsFromRest() {
        // Rules DOWN-3, REPORT-6.
        // x_stop = 4.5: starved from 400 + 195.5/1.5 = 530.33 s, at rest 6 s later. Downtime due at 532.33 s stands
        // from rest for
        // 100 s. The accumulator has 4.5 + 20 m for a restart 9.8 s after T2 = 560 s: the downtime ends later.
        Replication run =
                line(400 + 195.5 / 1.5 + 2, 100).process(1.5, 0.5, 0.25).runFor(700);
        Course course = Course.of(run);
        double rest = 400 + 195.5 / 1.5 + 6;

        assertTimes(course.times(ProcessState.DOWNTIME), rest - 4);
        assertNear(course.processAcceleration(rest - 1), -0.25);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), rest + 100);
        assertThat(run.totals().starvedStops()).isEqualTo(1);
        assertThat(run.totals().downtimes()).isEqualTo(1);
        // Lost for lack of strip: the first 2 s of the ramp, 0.25 2^2/2; then the downtime's time; then 1.5^2/1.0
        // speeding up.
        assertNear(run.totals().lostMetres(), 0.5 + 2.25);
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.STOPPED);
    }

    @Test
    void s06_starvedStopOutlastsTheDowntimeTakenDuringItsRamp() {
        // Rule DOWN-4.
        // As 05 with 10 s of standing: it ends at rest + 10, before T2; starved until 24.5/2.5 = 9.8 s after T2.
        Replication run =
                line(400 + 195.5 / 1.5 + 2, 10).process(1.5, 0.5, 0.25).runFor(700);
        double rest = 400 + 195.5 / 1.5 + 6;

        assertNear(Course.of(run).takesUp(ProcessState.STARVED, 2), rest + 10);
        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 560 + 9.8);
        assertNear(run.totals().lostMetres(), 0.5 + 1.5 * (569.8 - rest - 10) + 2.25);
        assertNear(run.totals().starvedSeconds(), 569.8 - rest - 10);
        assertThat(run.totals().starvedStops()).isEqualTo(1);
    }

    @Test
    void s07_clockRunsOutAtTheInstantTheProcessComesToRest_fallsDueWhenItNextMoves() {
        // Rules DOWN-3, ORDER-1.
        // One strip, 1 m/s and 0.5 m/s2: T0 = 512 s, at rest at 514 s, just as 514 s of running time are over. The
        // ramp's end comes
        // first. T2 = 574 s: the strip would move, and the downtime is taken.
        Replication run = new PlainLine()
                .withoutAccumulator()
                .coils(PlainLine.coil(513))
                .process(1, 0.5, 0.5)
                .join(60)
                .downtime(constant(514), constant(40))
                .runFor(700);
        Course course = Course.of(run);

        assertThat(course.processState(540)).isEqualTo(ProcessState.STARVED);
        assertThat(course.times(ProcessState.DOWNTIME)).containsExactly(574.0);
        assertThat(course.times(ProcessState.RUNNING)).containsExactly(0.0, 614.0);
    }

    @Test
    void s08_clockRunsOutJustAfterTheProcessCameToRest_fallsDueThatMuchAfterItMoves() {
        // Starved at 533.33 s with 1 s of running time to go; restart at 568 s.
        Replication run = line(401 + 200 / 1.5, 40).runFor(700);

        assertTimes(Course.of(run).times(ProcessState.DOWNTIME), 569);
    }

    @Test
    void s09_restartDelayAndDowntimeRunConcurrently_delayLonger() {
        // Rule DOWN-4.
        // As 05: delay of 90 s from 569.8 s, downtime until rest + 100 = 636.33 s.
        Replication run = line(400 + 195.5 / 1.5 + 2, 100)
                .process(1.5, 0.5, 0.25)
                .restart(Double.NaN, constant(90))
                .runFor(700);

        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 569.8 + 90);
    }

    @Test
    void s10_restartDelayAndDowntimeRunConcurrently_downtimeLonger() {
        // Rule DOWN-4.
        Replication run = line(400 + 195.5 / 1.5 + 2, 100)
                .process(1.5, 0.5, 0.25)
                .restart(Double.NaN, constant(20))
                .runFor(700);

        assertNear(Course.of(run).takesUp(ProcessState.RUNNING, 2), 400 + 195.5 / 1.5 + 106);
    }

    @Test
    void s11_endsWithTooLittleStrip_isHeldAsStarved_withoutANewStop() {
        // Rule DOWN-5.
        // Due at 528 s with x = 8: rest at 534 s with x = 3.5 < x_stop = 4.5; it ends at 544 s, T2 = 560 s; 24.5 m
        // after 8.4 s.
        Replication run = line(528, 10).process(1.5, 0.5, 0.25).runFor(700);
        Course course = Course.of(run);
        ChangeRecord change = run.changes().get(0);

        assertNear(course.level(534), 3.5);
        assertNear(course.takesUp(ProcessState.STARVED, 1), 544);
        assertNear(course.takesUp(ProcessState.RUNNING, 2), 568.4);
        assertThat(change.starvedStops()).isEqualTo(0);
        assertThat(run.totals().starvedStops()).isEqualTo(0);
        assertThat(change.outcome()).isEqualTo(Outcome.STOPPED);
        // From the downtime's end: 24.4 s standing, 2.25 m speeding up.
        assertNear(change.lostMetres(), 1.5 * 24.4 + 2.25);
        assertNear(run.totals().starvedSeconds(), 24.4);
    }

    @Test
    void s12_endsWithJustEnoughStrip_isNotHeld() {
        // Rule DOWN-5.
        // Due with x = 9 m: 4.5 m at rest.
        Replication run = line(400 + 191 / 1.5, 10).process(1.5, 0.5, 0.25).runFor(545);
        Course course = Course.of(run);

        assertNear(course.processAcceleration(400 + 191 / 1.5 + 16), 0.5);
    }

    @Test
    void s13_downtimeOnly_ranThrough_nothingLostForLackOfStrip() {
        // Rule REPORT-3.
        Replication run =
                new PlainLine().join(60).downtime(constant(450), constant(30)).run(1);

        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.RAN_THROUGH);
        assertThat(run.totals().lostMetres()).isEqualTo(0);
        // It stood for 30 s of the joint: 45 m less drawn... T2 = 460: 15 m from 440 to 450 s on; none while it stands.
        assertNear(run.changes().get(0).stripDrawn(), 75);
    }

    @Test
    void s14_dueWhileSlowing_stopsAndReturnsToTheSlowedSpeed() {
        // Rules PROC-7, DOWN-4.
        // Slowed below 100 m from 466.67 s at 0.25 m/s2; due 2 s later at 1.0 m/s: 4 s down, 10 s, then up to 0.5 m/s.
        double slows = 400 + 100 / 1.5;
        Replication run = line(slows + 2, 10)
                .process(1.5, 0.5, 0.25)
                .slowing(0.5, 100, 150)
                .runFor(560);
        Course course = Course.of(run);

        assertNear(course.processSpeed(slows + 4), 0.5);
        assertNear(course.takesUp(ProcessState.SLOWED, 2), slows + 16);
        assertNear(course.processSpeed(slows + 18), 0.5);
        // Lost: while slowing until due, 0.25 2^2/2; from its end 1 s up to 0.5 m/s (1.5 - 0.25 on average), then 1.0
        // m/s till 560 s.
        assertNear(run.totals().lostMetres(), 0.5 + 1.25 + (560 - slows - 17));
    }

    @Test
    void s15_starvesAfterwardsOnItsWayUp_isAStarvedStopOfItsOwn() {
        // Due at 520 s with x = 20: at rest at 526 s with 15.5 m. From 536 s up at 0.01 m/s2 with the entry standing:
        // g = 15.5 - 0.005 t^2 - (0.01 t)^2/0.5, 0 at t = sqrt(15.5/0.0052).
        Replication run = new PlainLine()
                .process(1.5, 0.01, 0.25)
                .join(300)
                .downtime(constant(520), constant(10))
                .runFor(650);

        assertNear(Course.of(run).takesUp(ProcessState.STARVED, 1), 536 + Math.sqrt(15.5 / 0.0052));
        assertThat(run.totals().starvedStops()).isEqualTo(1);
    }
}
