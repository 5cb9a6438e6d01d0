package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.coilAt;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Trace.ProcessState;

/**
 * What is reported of each coil change. Coils of 600 m, 200 m of accumulator, process 1.5 m/s, entry 2.5 m/s with speeds that jump
 * unless said otherwise: coil changes start every 400 s as long as the process does not stop.
 */
class ReportedChangesTest {

    private static Distribution constant(double value) {
        return Distribution.constant(value);
    }

    private static PlainLine line() {
        return new PlainLine();
    }

    @Test
    void s01_oneChange_everyNumberOfItsRecord() {
        // Rules REPORT-1, REPORT-2.
        // d_p = 0.25: x_stop = 4.5 m. Waits 20 s for the coil, joint of 60 s more; 120 m drawn, filled at 1 m/s.
        Replication run = line().process(1.5, 0.5, 0.25)
                .uncoilers(1, 0)
                .prepare(30)
                .tail(10)
                .join(60)
                .run(1);

        assertThat(run.changes().get(0))
                .isEqualTo(new ChangeRecord(
                        1,
                        0,
                        0,
                        0,
                        400,
                        400,
                        490,
                        20,
                        0,
                        1,
                        200,
                        0,
                        1.5,
                        65,
                        4.5,
                        Outcome.RAN_THROUGH,
                        0,
                        0,
                        0,
                        135,
                        Optional.empty()));
        ChangeRecord change = run.changes().get(0);
        assertNear(change.jointCycleTime(), 90);
        assertNear(change.stripDrawn(), 135);
        assertNear(change.lowestAboveStopLevel(), 60.5);
    }

    @Test
    void s02_lowestLevelIsThatUntilMatchedAgain_whatComesAfterIsNot() {
        // Rule REPORT-2.
        // a_e = 0.1, joints of no time. Change 1 at 0.5 m/s draws 0.5^2/0.2 = 1.25 m. Then the process jumps to 1.5 m/s
        // as coil 2 gets
        // there: the matched entry falls behind by 1.0^2/0.2 = 5 m, which is not of the change.
        Replication run = line().coils(coilAt(600, 0.5), coilAt(900, 1.5))
                .entry(2.5, 0.1, AT_ONCE)
                .join(0)
                .run(1);

        assertNear(run.changes().get(0).lowestLevel(), 198.75);
        assertNear(run.totals().lowestLevel(), 195);
    }

    @Test
    void s03_notMatchedBeforeTheNextChange_lowestLevelEndsThere_notRefilled() {
        // Rules REPORT-2, REPORT-5.
        // Change 1 draws 90 m; coil 2 of 100 m gives back 1 m/s for 40 s: 150 m at T0 of change 2, which draws 90 m to
        // 60 m.
        Replication run = line().coils(coil(600), coil(100), coil(900)).join(60).run(2);
        ChangeRecord first = run.changes().get(0);
        ChangeRecord second = run.changes().get(1);

        assertNear(first.lowestLevel(), 110);
        assertThat(first.refillTime()).isNaN();
        assertNear(second.levelAtStart(), 150);
        assertNear(second.lowestLevel(), 60);
        assertNear(second.stripDrawn(), 90);
        // 140 m at 1 m/s.
        assertNear(second.refillTime(), 140);
        assertThat(run.totals().refilledChanges()).isEqualTo(1);
    }

    @Test
    void s04_stopThatLastsIntoTheNextChange_makesThatOneStoppedToo_withoutACountOrALossOfItsOwn() {
        // Rules REPORT-3, REPORT-7.
        // Starved at 533.33 s; T2 = 560; coil 2 of 10 m is through at 564 s; 20 m only at 728 s, after T2 = 724 of
        // change 2.
        Replication run = line().coils(coil(600), coil(10), coil(600)).join(160).run(2);
        ChangeRecord first = run.changes().get(0);
        ChangeRecord second = run.changes().get(1);

        assertThat(first.outcome()).isEqualTo(Outcome.STOPPED);
        assertThat(second.outcome()).isEqualTo(Outcome.STOPPED);
        assertThat(first.starvedStops()).isEqualTo(1);
        assertThat(second.starvedStops()).isEqualTo(0);
        // All that the stop costs belongs to the coil change that was the latest begun when it began.
        assertNear(first.lostMetres(), 1.5 * (328 - 200 / 1.5));
        assertThat(second.lostMetres()).isZero();
        assertNear(run.totals().lostMetres(), 1.5 * (328 - 200 / 1.5));
    }

    @Test
    void s05_slowingThatLastsIntoTheNextChange_makesThatOneSlowedToo() {
        // Rule REPORT-3.
        // Slowed below 150 m at 433.33 s; T2 = 460: x = 150 - 0.5 26.67; coil 2 of 25 m through 10 s later, 20 m more;
        // resumes at 190.
        Replication run = line().coils(coil(600), coil(25), coil(900))
                .slowing(0.5, 150, 190)
                .join(60)
                .run(2);

        assertThat(run.changes()).extracting(ChangeRecord::outcome).containsExactly(Outcome.SLOWED, Outcome.SLOWED);
        assertThat(run.totals().slowings()).isEqualTo(1);
        assertThat(run.totals().slowedChanges()).isEqualTo(2);
    }

    @Test
    void s06_speedingUpAfterAStop_doesNotMakeTheNextChangeStopped_norIsItsLossThatChanges() {
        // Rules REPORT-3, REPORT-7.
        // One uncoiler; the coil of change 3 takes 160 s to prepare, so that the process starves. It restarts at 20 m
        // and takes 150 s
        // to its speed; coil 4 of 50 m is through after 20 s.
        Replication stopped = line().coils(coil(600), coil(50), coil(600), coil(50))
                .process(1.5, 0.01, AT_ONCE)
                .uncoilers(1, 0)
                .prepare(PlainLine.every(3, 160))
                .run(4);
        ChangeRecord third = stopped.changes().get(2);
        ChangeRecord fourth = stopped.changes().get(3);

        assertThat(third.outcome()).isEqualTo(Outcome.STOPPED);
        assertThat(Course.of(stopped).processState(fourth.start())).isEqualTo(ProcessState.RUNNING);
        assertThat(fourth.outcome()).isEqualTo(Outcome.RAN_THROUGH);
        assertThat(fourth.lostMetres()).isZero();
        assertNear(third.lostMetres(), stopped.totals().lostMetres());
    }

    @Test
    void s06a_laterStopTakesOverWhatIsLostFromItsOwnBegin() {
        // Rule REPORT-7.
        // Starved at 533.33 s; T2 = 560 s; restart at 568 s, up at 0.01 m/s2. Coil 2 of 100 m is through at 600 s:
        // 94.88 m
        // at 0.32 m/s, used up when 0.32 t + 0.005 t^2 = 94.88, at sqrt(2) m/s, 141.42 s after the restart. T2 = 760 s,
        // restart at 768 s, 150 s up to 1.5 m/s.
        Replication run = line().coils(coil(600), coil(100), coil(600))
                .process(1.5, 0.01, AT_ONCE)
                .join(160)
                .run(2);
        ChangeRecord first = run.changes().get(0);
        ChangeRecord second = run.changes().get(1);
        double ramp = 100 * Math.sqrt(2);

        assertThat(first.starvedStops()).isEqualTo(1);
        assertThat(second.starvedStops()).isEqualTo(1);
        assertNear(first.lostMetres(), 1.5 * (168 - 200 / 1.5) + 1.5 * ramp - 100);
        assertNear(second.lostMetres(), 1.5 * (768 - 568 - ramp) + 112.5);
        assertNear(run.totals().lostMetres(), first.lostMetres() + second.lostMetres());
        assertNear(second.lostTime(), second.lostMetres() / 1.5);
    }

    @Test
    void s07_whatBeginsBeforeTheFirstChange_isInTheTotalsOnly() {
        // Rules REPORT-4, PROC-2.
        // Downtime from 100 to 110 s; matched again at 0.4 m/s2 the entry falls behind by 2.8125 m: slowed below 199 m
        // to 0.5 m/s.
        // It resumes when full, well before T0.
        Replication run = line().entry(2.5, 0.4, AT_ONCE)
                .slowing(0.5, 199, 200)
                .downtime(constant(100), constant(10))
                .join(0)
                .runFor(180);
        Course course = Course.of(run);

        assertThat(course.times(ProcessState.SLOWED)).hasSize(1);
        assertThat(run.totals().slowings()).isEqualTo(1);
        double slowed = course.takesUp(ProcessState.RUNNING, 3) - course.takesUp(ProcessState.SLOWED, 1);
        assertNear(run.totals().lostMetres(), 1.0 * slowed);
    }

    @Test
    void s08_slowedSinceBeforeTheFirstChange_leavesThatOneRunThrough() {
        // Rule REPORT-4.
        // As 07 but filled at 0.001 m/s only: it lasts into the change at T0.
        Replication run = line().entry(2.5, 0.4, AT_ONCE)
                .fillRate(0.001)
                .slowing(0.5, 199, 200)
                .downtime(constant(300), constant(10))
                .join(10)
                .runFor(1000);
        ChangeRecord change = run.changes().get(0);

        assertThat(Course.of(run).processState(change.start())).isEqualTo(ProcessState.SLOWED);
        assertThat(change.outcome()).isEqualTo(Outcome.RAN_THROUGH);
        assertThat(change.lostMetres()).isEqualTo(0);
        assertThat(run.totals().lostMetres()).isPositive();
        assertThat(run.totals().slowings()).isEqualTo(1);
    }

    @Test
    void s09_slowedThenStopped_theWorstCounts() {
        // Rule REPORT-3.
        Replication run = line().slowing(0.5, 100, 150).join(300).run(1);

        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.STOPPED);
        assertThat(run.totals().stoppedChanges()).isEqualTo(1);
        assertThat(run.totals().slowedChanges()).isEqualTo(0);
    }

    /** Starved before the first coil change, which starts while the restart delay of 300 s runs. */
    private static PlainLine starvedBeforeTheFirstChange() {
        // Downtime with 5 m left; after it v_p = 1.5 at once, v_e = 0.1 t: 8 - 1.5 t + 0.05 t^2 = 0 at t = 6.94 s, 2.41
        // m of coil. The
        // process is at rest; 0.8 m are soon there; T0 when the other 2.59 m are through.
        return line().entry(2.5, 0.1, AT_ONCE)
                .capacity(8)
                .restart(Double.NaN, constant(300))
                .downtime(constant(595 / 1.5), constant(10))
                .join(10);
    }

    @Test
    void s24_starvedSinceBeforeTheFirstChange_leavesThatOneRunThrough() {
        // Rule REPORT-4.
        Replication run = starvedBeforeTheFirstChange().runFor(595 / 1.5 + 100);
        ChangeRecord change = run.changes().get(0);

        assertThat(Course.of(run).processState(change.start())).isEqualTo(ProcessState.STARVED);
        assertThat(change.outcome()).isEqualTo(Outcome.RAN_THROUGH);
        assertThat(change.starvedStops()).isEqualTo(0);
        assertThat(change.lostMetres()).isEqualTo(0);
        assertThat(run.totals().starvedStops()).isEqualTo(1);
        double starved = 595 / 1.5 + 10 + (1.5 - Math.sqrt(0.65)) / 0.1;
        assertNear(run.totals().lostMetres(), 1.5 * (595 / 1.5 + 100 - starved));
    }

    @Test
    void s25_slowedSinceBeforeTheFirstChange_stoppedInIt_theStopIsItsOwn() {
        // Rules REPORT-4, REPORT-7.
        // As 08, with a joint of 600 s: from about 199 m at 0.5 m/s the process starves in it.
        Replication run = line().entry(2.5, 0.4, AT_ONCE)
                .fillRate(0.001)
                .slowing(0.5, 199, 200)
                .downtime(constant(300), constant(10))
                .join(600)
                .runFor(1300);
        ChangeRecord change = run.changes().get(0);
        double starves = Course.of(run).takesUp(ProcessState.STARVED, 1);

        assertThat(change.outcome()).isEqualTo(Outcome.STOPPED);
        assertThat(change.starvedStops()).isEqualTo(1);
        assertNear(change.lostMetres(), 1.5 * (1300 - starves));
    }

    @Test
    void s26_refilledChangesAreThoseMatchedBeforeTheNext() {
        // Rule REPORT-5.
        // Coil 2 of 100 m is too short to refill; coils 1 and 3 of 900 m are not.
        Replication run = line().coils(coil(900), coil(100), coil(900)).join(60).run(3);

        assertThat(run.changes())
                .extracting(ChangeRecord::refillTime)
                .satisfiesExactly(
                        first -> assertThat(first).isNaN(),
                        second -> assertThat(second).isPositive(),
                        third -> assertThat(third).isPositive());
        assertThat(run.totals().refilledChanges()).isEqualTo(2);
    }
}
