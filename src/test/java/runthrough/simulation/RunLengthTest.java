package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.coilAt;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.SimulationException;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.Trace.EntryState;
import runthrough.simulation.records.Trace.Point;
import runthrough.simulation.records.Trace.ProcessState;

/** Where a replication begins and ends, and what its totals cover. Coils of 600 m at 1.5 m/s: a coil change every 400 s. */
class RunLengthTest {

    @Test
    void s01_beginsFullAndAtSpeedWithAWholeCoil() {
        // Rule TIME-1.
        Point first = Course.of(new PlainLine()
                        .coils(coilAt(600, 1.25))
                        .entry(2.5, 0.4, 0.5)
                        .join(60)
                        .run(1))
                .points()
                .get(0);

        assertThat(first)
                .isEqualTo(new Point(0, 200, 1.25, 0, 1.25, 0, 600, 1.25, EntryState.MATCHED, ProcessState.RUNNING));
    }

    @Test
    void s02_nCoilChanges_endAtTheStartOfTheNextOne() {
        // Rule TIME-2.
        Replication run = new PlainLine().join(60).run(3);

        assertNear(run.totals().duration(), 1600);
        assertThat(run.changes()).extracting(ChangeRecord::number).containsExactly(1, 2, 3);
        assertThat(run.totals().changes()).isEqualTo(3);
    }

    @Test
    void s03_firstChangesLeftOut_totalsRunFromTheStartOfTheNextAndRecordsBeginThere() {
        // Rule TIME-3.
        // From 1200 s (T0 of change 3) to 2400 s (T0 of change 6): changes 3, 4, 5.
        PlainLine line = new PlainLine()
                .coils(PlainLine.cropped(602, 1, 1))
                .join(60)
                .downtime(Distribution.constant(1100), Distribution.constant(30));
        Totals totals = line.totals(5, 2, 1, 7).get(0);

        // The downtime at 1100 s, before T0 of change 3 at 1230 s, is left out; the next is at 1130 + 1100 = 2230 s.
        assertNear(totals.duration(), 1200 + 30);
        assertThat(totals.changes()).isEqualTo(3);
        assertThat(totals.downtimes()).isEqualTo(1);
        assertNear(totals.processedMetres(), 1800);
        assertNear(totals.processedKilograms(), 1800 * 15.7);
        assertNear(totals.enteredMetres(), 1800);
        assertNear(totals.ratedMetres(), 1.5 * 1230);
        assertNear(totals.jointSeconds(), 180);
        assertNear(totals.scrapMetres(), 6);
        assertNear(totals.downtimeSeconds(), 30);
        assertNear(totals.lowestLevel(), 110);
    }

    @Test
    void s04_timeCutBeforeTheJointIsReleased_leavesThatChangeOut() {
        // Rule TIME-4.
        Replication run = new PlainLine().join(60).runFor(859.5);

        assertThat(run.totals().duration()).isEqualTo(859.5);
        assertThat(run.changes()).extracting(ChangeRecord::number).containsExactly(1);
        assertThat(run.totals().changes()).isEqualTo(1);
        // Its element was not finished either.
        assertThat(run.work()).hasSize(1);
        assertNear(run.totals().jointSeconds(), 60);
    }

    @Test
    void s05_timeCutAfterTheJointIsReleased_keepsThatChange() {
        // Rule TIME-4.
        // T2 of change 2 = 860 s, 90 m drawn; not matched before 950 s.
        Replication run = new PlainLine().join(60).runFor(900);

        assertThat(run.changes()).extracting(ChangeRecord::number).containsExactly(1, 2);
        assertThat(run.changes().get(1).refillTime()).isNaN();
        assertNear(run.changes().get(1).stripDrawn(), 90);
        assertThat(run.totals().refilledChanges()).isEqualTo(1);
    }

    @Test
    void s06_timeCutBeforeAnyChange_hasTotalsOnly() {
        Replication run = new PlainLine().join(60).runFor(100);

        assertThat(run.changes()).isEmpty();
        assertNear(run.totals().processedMetres(), 150);
        assertThat(run.totals().shareRunThrough()).isNaN();
    }

    @Test
    void s07_whatFallsOnTheLastInstantOfATimeStillHappens() {
        // Rules TIME-4, ORDER-13.
        // T0 and a downtime at 400 s exactly, and the end of the joint of change 1 at 460 s.
        assertThat(new PlainLine()
                        .downtime(Distribution.constant(400), Distribution.constant(1))
                        .join(60)
                        .runFor(400)
                        .totals()
                        .downtimes())
                .isEqualTo(1);
        assertThat(new PlainLine().join(60).runFor(460).changes()).hasSize(1);
    }

    @Test
    void asManyChangesLeftOutAsRun_areRefused() {
        // Rule CHECK-24.
        RunPlan plan = new RunPlan(new Extent.Changes(5), 5, 1, 7, 0.9);
        assertThatThrownBy(() -> LineSimulator.of(new PlainLine().join(60).build(), plan))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("leave-out = 5 coil changes; must be less than the coil changes run, 5");
    }

    @Test
    void replicationsAreCountedFrom0_andMayGoOnBeyondThePlan() {
        // Rule RANDOM-2.
        PlainLine line = new PlainLine().join(Distribution.uniform(50, 60));
        LineSimulator one = LineSimulator.of(line.build(), new RunPlan(new Extent.Changes(5), 0, 1, 7, 0.9));
        LineSimulator ten = LineSimulator.of(line.build(), new RunPlan(new Extent.Changes(5), 0, 10, 7, 0.9));
        assertThat(one.run(9, Detail.CHANGES)).isEqualTo(ten.run(9, Detail.CHANGES));
        assertThatThrownBy(() -> one.run(-1, Detail.CHANGES))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("replication = -1; must be 0 or more");
    }

    @Test
    void aNegativeSeedIsASeedLikeAnyOther() {
        // Rule RANDOM-2: the key is the 64 bits of the seed.
        PlainLine line = new PlainLine().join(Distribution.uniform(50, 60));
        RunPlan plan = new RunPlan(new Extent.Changes(5), 0, 1, -7, 0.9);
        RunPlan positive = new RunPlan(new Extent.Changes(5), 0, 1, 7, 0.9);
        Replication run = LineSimulator.of(line.build(), plan).run(0, Detail.CHANGES);
        assertThat(run).isEqualTo(LineSimulator.of(line.build(), plan).run(0, Detail.CHANGES));
        assertThat(run).isNotEqualTo(LineSimulator.of(line.build(), positive).run(0, Detail.CHANGES));
    }

    @Test
    void s08_leftOutChangesOfATimedRun_haveNoRecords() {
        // Rule TIME-3.
        LineSimulator simulator =
                LineSimulator.of(new PlainLine().join(60).build(), new RunPlan(new Extent.Time(1700), 2, 1, 7, 0.9));
        Replication run = simulator.run(0, Detail.CHANGES);

        // Changes at 400, 800, 1200, 1600 s; the first two are left out.
        assertThat(run.changes()).extracting(ChangeRecord::number).containsExactly(3, 4);
        assertNear(run.totals().duration(), 500);

        // Cut at 900 s, after T2 = 860 s of the second: that is left out, too.
        LineSimulator shorter =
                LineSimulator.of(new PlainLine().join(60).build(), new RunPlan(new Extent.Time(900), 2, 1, 7, 0.9));
        assertThat(shorter.run(0, Detail.CHANGES).changes()).isEmpty();
    }

    @Test
    void s09_coilsRepeatFromTheTopOfTheSchedule() {
        // Rule COIL-4.
        Replication run =
                new PlainLine().coils(coil(600), coil(300), coil(450)).join(0).run(5);

        // 600, 300, 450, 600, 300, 450 m at 1.5 m/s; joints take no time.
        assertThat(run.changes()).extracting(ChangeRecord::start).containsExactly(400.0, 600.0, 900.0, 1300.0, 1500.0);
        assertThat(run.changes()).extracting(ChangeRecord::tailCoil).containsExactly(0, 1, 2, 0, 1);
        assertThat(run.changes()).extracting(ChangeRecord::headCoil).containsExactly(1, 2, 0, 1, 2);
    }

    @Test
    void s10_firstCoilJustLongEnoughToStopIn_startsRunningOutAtOnce() {
        // Rule TIME-1.
        // 1.5^2/1.0 = 2.25 m.
        ChangeRecord change = new PlainLine()
                .coils(coil(2.25), coil(600))
                .entry(2.5, 0.4, 0.5)
                .process(1.5, AT_ONCE, AT_ONCE)
                .join(60)
                .run(1)
                .changes()
                .get(0);

        assertThat(change.start()).isEqualTo(0);
        assertNear(change.tailStopped(), 3);
        assertThat(change.levelAtStart()).isEqualTo(200);
    }

    @Test
    void s11_firstCoilTooShortToStopIn_isAnErrorThatNamesIt() {
        // Rule TIME-1.
        // 1.5^2/1.0 = 2.25 m; with creep of 0.5 m/s over 1 m: 1 + 2.0 = 3 m.
        PlainLine line = new PlainLine().coils(coil(2.24)).entry(2.5, 0.4, 0.5).join(60);

        assertThatThrownBy(() -> line.run(1))
                .isInstanceOf(SimulationException.class)
                .hasMessage("coil 1 ('coil') has 2.24 m of usable strip, too short to stop in, which "
                        + "takes 2.25 m. Give longer coils or a faster stop");
        assertThatThrownBy(() -> line.coils(coil(2.99)).creep(0.5, 1).run(1)).hasMessageContaining("which takes 3 m");
    }

    @Test
    void s12_detailOfChangesOnly_keepsNeitherWorkNorTrace() {
        Replication run = new PlainLine().join(60).run(new Extent.Changes(2), Detail.CHANGES);

        assertThat(run.work()).isEmpty();
        assertThat(run.trace()).isEmpty();
        assertThat(run.changes()).hasSize(2);
    }

    @Test
    void aRunWhoseThreadIsInterruptedIsGivenUp() {
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> new PlainLine().join(60).run(1_000_000))
                    .isInstanceOf(CancellationException.class)
                    .hasMessageStartingWith("given up at ");
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }

    @Test
    void aStopOfACoilChangeCutOffAtTheEnd_isNotAmongThoseOfCoilChanges() {
        // T0 at 600/1.5 = 400 s; 200 m last 133 s, so the process stops at 533 s in a joint that takes until 1000 s.
        Replication cut = new PlainLine().join(600).run(new Extent.Time(600), Detail.TOTALS);

        assertThat(cut.totals().starvedStops()).isEqualTo(1);
        assertThat(cut.totals().changes()).isZero();
        assertThat(cut.totals().starvedStopsOfChanges()).isZero();
    }

    @Test
    void s13_detailDoesNotChangeTheResult() {
        PlainLine line = new PlainLine()
                .prepare(30)
                .join(Distribution.lognormal(60, 30))
                .downtime(Distribution.exponential(500), Distribution.exponential(40));
        Replication all = line.run(new Extent.Changes(50), Detail.TRACE);

        assertThat(line.run(new Extent.Changes(50), Detail.TOTALS).totals()).isEqualTo(all.totals());
        assertThat(line.run(new Extent.Changes(50), Detail.TOTALS).changes()).isEmpty();
        assertThat(line.run(new Extent.Changes(50), Detail.CHANGES).totals()).isEqualTo(all.totals());
        assertThat(line.run(new Extent.Changes(50), Detail.CHANGES).changes()).isEqualTo(all.changes());
        assertThat(line.run(new Extent.Changes(50), Detail.ELEMENTS).work()).isEqualTo(all.work());
    }

    @Test
    void s14_traceReachesToTheEndOfTheRun() {
        // Matched from 550 s on, the run ends at 800 s, T0 of change 2; the other is cut in the joint, at 430 s.
        List<Point> untilChange = Course.of(new PlainLine().join(60).run(1)).points();
        List<Point> untilTime = Course.of(new PlainLine().join(60).runFor(430)).points();

        assertThat(untilChange.get(untilChange.size() - 1))
                .isEqualTo(new Point(800, 200, 1.5, 0, 1.5, 0, 0, 1.5, EntryState.MATCHED, ProcessState.RUNNING));
        assertThat(untilTime.get(untilTime.size() - 1))
                .isEqualTo(new Point(430, 155, 0, 0, 1.5, 0, 0, 1.5, EntryState.STANDING, ProcessState.RUNNING));
    }
}
