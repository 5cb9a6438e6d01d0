package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.cropped;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.Distribution;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.simulation.records.Totals;

/**
 * What each reported number counts. Coils of 600 m, 200 m of accumulator, process 1.5 m/s, entry 2.5 m/s with speeds that jump
 * unless said otherwise: coil changes start every 400 s as long as the process does not stop.
 */
class ReportedNumbersTest {

    private static Distribution constant(double value) {
        return Distribution.constant(value);
    }

    private static PlainLine line() {
        return new PlainLine();
    }

    @Test
    void s06b_paidTimeIsThatOfTheShiftsByTheClock_breaksIncluded() {
        // Rule REPORT-1.
        // 450 s of shifts of 100 s with 3 people and 200 s with 1: once round, then 100 s and 50 s.
        Replication run = line().join(10)
                .shifts(new Shift("a", 100, 3, List.of(new Break(10, 20, 0))), new Shift("b", 200, 1, List.of()))
                .runFor(450);

        assertThat(run.totals().paidSecondsByShift()).containsExactly(600.0, 250.0);
        assertNear(run.totals().paidSeconds(), 850);
        assertThat(line().join(10).crew(2).runFor(450).totals().paidSecondsByShift())
                .containsExactly(900.0);
    }

    @Test
    void s10_lostTimeIsLostMetresOverTheSpeedInForce() {
        // Rule REPORT-6.
        // As 04: 328 - 133.33 s at rest, but for coil 3, none of which has reached the process.
        Replication run = line().coils(coil(600), coil(10), coil(600)).join(160).run(2);

        assertNear(run.totals().lostTime(), 328 - 200 / 1.5);
        assertNear(run.totals().lostMetres(), 1.5 * run.totals().lostTime());
    }

    @Test
    void s11_utilisationIsMetresProcessedOverMetresAtRatedSpeed() {
        // Rule REPORT-8.
        // Downtimes of 100 s after 300 s each: three quarters.
        Replication run = line().join(0).downtime(constant(300), constant(100)).runFor(4000);

        assertNear(run.totals().ratedMetres(), 6000);
        assertNear(run.totals().processedMetres(), 4500);
        assertNear(run.totals().utilisation(), 0.75);
    }

    @Test
    void s12_scrapIsCropsAndWhatEachStopSpoils_ofWhateverKind() {
        // Rule REPORT-9.
        // Change at 400 s: 3 m of crops. Starved at 533.33 s, downtime after 550 s of running: 2 m each.
        Replication run = line().coils(cropped(603, 1, 2))
                .scrapPerStop(2)
                .join(160)
                .downtime(constant(550), constant(40))
                .run(1);

        assertThat(run.totals().starvedStops()).isEqualTo(1);
        assertThat(run.totals().downtimes()).isEqualTo(1);
        assertNear(run.totals().scrapMetres(), 3 + 2 + 2);
        assertNear(run.totals().scrapKilograms(), 7 * 15.7);
        double good = run.totals().processedKilograms() - 4 * 15.7;
        assertNear(run.totals().goodKilograms(), good);
        assertNear(run.totals().scrapShare(), 7 * 15.7 / (7 * 15.7 + good));
    }

    @Test
    void s13_downtimeTakenDuringAStarvedRamp_isOneStopToTheStrip() {
        // Rule REPORT-9.
        Replication run = line().scrapPerStop(2)
                .process(1.5, 0.5, 0.25)
                .join(160)
                .downtime(constant(400 + 195.5 / 1.5 + 2), constant(10))
                .run(1);

        assertNear(run.totals().scrapMetres(), 2);
    }

    @Test
    void s14_cropsWeighAsTheirOwnCoils() {
        // Rule COIL-3.
        // 15.7 kg/m, but the second coil is half as thick: tail 2 m of the one, head 1 m of the other.
        Coil thin =
                new Coil("thin", new Coil.Strip(0.001, 1, 7850), new CoilSize.ByLength(constant(603))).withCrops(1, 2);
        Replication run = line().coils(cropped(603, 1, 2), thin).join(0).run(1);

        assertNear(run.totals().scrapKilograms(), 2 * 15.7 + 1 * 7.85);
    }

    @Test
    void s15_meanLevelIsTheTimeAverage() {
        // Rule REPORT-10.
        // 200 m but for a triangle of 90 m over 60 + 90 s, in 800 s.
        Replication run = line().join(60).run(1);

        assertNear(run.totals().levelIntegral(), 200 * 800 - 90 * 150 / 2.0);
        assertNear(run.totals().meanLevel(), 200 - 6750 / 800.0);
    }

    @Test
    void s16_meanLevelOnRamps() {
        // Rule REPORT-10.
        // Missing: 0.25 t^2 for 3 s; 2.25 + 1.5 t for 90 s; 137.25 + 1.5 t - 0.2 t^2 for 6.25 s; from 138.8125 to 1 at
        // 1 m/s;
        // 1 - t + 0.25 t^2 for 2 s.
        Replication run = line().entry(2.5, 0.4, 0.5).join(90).run(1);
        double missing = 0.25 * 27 / 3
                + 2.25 * 90
                + 0.75 * 8100
                + (137.25 * 6.25 + 0.75 * 39.0625 - 0.2 / 3 * 244.140625)
                + (138.8125 * 138.8125 - 1) / 2
                + (2 - 2 + 0.25 * 8 / 3);

        assertNear(run.totals().levelIntegral(), 200 * run.totals().duration() - missing);
    }

    @Test
    void s17_overtravelIsTheLargestSeen_overfullCountsEachPassing() {
        // Rules ACC-9, ENTRY-23, REPORT-10.
        // Downtimes: process down at once, entry at 0.5 m/s2: 2.25 m above; it starts at 0.4 m/s2 slower than the
        // process, which
        // takes 2.8125 m: below the capacity again, and full. Allowance of 2 m is passed at 100 s and 210 s.
        PlainLine line = line().entry(2.5, 0.4, 0.5).join(0).downtime(constant(100), constant(10));

        assertThat(line.allowance(2).runFor(250).totals().overfull()).isEqualTo(2);
        assertThat(line.allowance(2.25).runFor(250).totals().overfull()).isEqualTo(0);
        assertNear(line.runFor(250).totals().overtravel(), 2.25);
    }

    @Test
    void s18_stayingAboveTheAllowance_isOnePassing() {
        // Rule ACC-9.
        // Matched s04's line: 1.5 m of overtravel stay while the entry follows, and the next stop adds 1.5 m.
        Replication run = line().entry(2.5, 0.4, 0.5)
                .process(1.5, 0.4, 1.5)
                .allowance(1)
                .join(0)
                .downtime(constant(100), constant(10))
                .runFor(250);

        assertNear(run.totals().overtravel(), 3);
        assertThat(run.totals().overfull()).isEqualTo(1);
    }

    @Test
    void s19_timesOfEachState() {
        // Rule REPORT-11.
        // As 12 without spoiling: joint 160 s; starved 34.67 s; downtime 40 s. Waiting 100 s of it for preparation.
        Replication run = line().uncoilers(1, 0)
                .prepare(100)
                .join(60)
                .downtime(constant(550), constant(40))
                .run(1);
        Totals totals = run.totals();

        assertNear(totals.jointSeconds(), 160);
        assertNear(totals.waitingSeconds(), 100);
        assertNear(totals.starvedSeconds(), 168 - 200 / 1.5);
        assertNear(totals.downtimeSeconds(), 40);
    }

    @Test
    void s20_downtimeDuringAStarvedStop_countsAsDowntimeNotAsStarved() {
        // Rules REPORT-6, REPORT-11.
        // One strip, coil change from 397 s: a downtime falls due at 400 s and lasts until 503 s, the joint until 603
        // s.
        Replication run = line().withoutAccumulator()
                .entry(2.5, 0.4, 0.5)
                .process(1.5, 0.3, 0.25)
                .join(200)
                .downtime(constant(400), constant(100))
                .runFor(610);

        assertNear(run.totals().downtimeSeconds(), 103);
        assertNear(run.totals().starvedSeconds(), 100);
        // 3 s of slowing, 100 s of standing, 5 s of starting.
        assertNear(run.totals().lostMetres(), 1.125 + 1.5 * 100 + 3.75);
    }

    @Test
    void s21_recoveryEndsWhenTheRatedSpeedIsReached_losesNothingAfterwards() {
        // Rule REPORT-6.
        // Restart at 568 s at 0.5 m/s2: 3 s. Downtimes after that lose nothing for lack of strip.
        Replication run = line().process(1.5, 0.5, AT_ONCE)
                .join(160)
                .downtime(constant(600), constant(40))
                .run(1);

        assertNear(run.totals().lostMetres(), 1.5 * (168 - 200 / 1.5) + 2.25);
    }

    @Test
    void s22_downtimeDuringRecovery_isLeftOut_theRestOfTheRecoveryIsNot() {
        // Rule REPORT-6.
        // Restart at 568 s; downtime due 1 s later at 0.5 m/s, at rest at once, 40 s; then 3 s up from nought.
        Replication run = line().process(1.5, 0.5, AT_ONCE)
                .join(160)
                .downtime(constant(400 + 200 / 1.5 + 1), constant(40))
                .run(1);

        // 1 s at 1.25 below on average, then 2.25 m.
        assertNear(run.totals().lostMetres(), 1.5 * (168 - 200 / 1.5) + 1.25 + 2.25);
    }

    @Test
    void s23_sharesAndCountsOfChanges() {
        // Joint of 160 s on every third change, else 60 s.
        Replication run = line().join(60).join(PlainLine.every(3, 100)).run(7);

        assertThat(run.totals().ranThrough()).isEqualTo(5);
        assertThat(run.totals().stoppedChanges()).isEqualTo(2);
        assertThat(run.totals().starvedStops()).isEqualTo(2);
        assertNear(run.totals().shareRunThrough(), 5 / 7.0);
    }
}
