package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.coilAt;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.SimulationException;
import runthrough.simulation.records.Trace.EntryState;
import runthrough.simulation.records.Trace.ProcessState;
import runthrough.simulation.records.WorkRecord;

/**
 * What goes first when two things happen at one instant, where that makes a difference; and what becomes of runs that get
 * nowhere. Numbers are exact in binary, so that the instants are the same to the last digit. The other pairs have their tests
 * where their rules do: ramp's end before downtime, downtime before coil change, coil change before restart.
 */
class SimultaneousEventsTest {

    private static Distribution constant(double value) {
        return Distribution.constant(value);
    }

    @Test
    void s01_newRatedSpeedBeforeTheCoilChangeThatStartsThen() {
        // Rule ORDER-5.
        // Accumulator and coils of 256 m, joints of no time: coil 2 is in the process at metre 512, as change 2 starts.
        Replication run = new PlainLine()
                .coils(coilAt(256, 1), coilAt(256, 0.5))
                .capacity(256)
                .process(1, AT_ONCE, 0.25)
                .join(0)
                .run(2);

        assertThat(run.changes().get(1).start()).isEqualTo(512);
        // 0.5^2/0.5, not 1^2/0.5.
        assertThat(run.changes().get(1).stopLevel()).isEqualTo(0.5);
    }

    @Test
    void s02_coilChangeBeforeTheAccumulatorIsFull() {
        // Rules ORDER-6, ORDER-7.
        // 64 s of joint at 1 m/s; filled at 2 m/s in 64 s, as coil 2 of 128 m is through: not refilled.
        Replication run = new PlainLine()
                .coils(coil(512), coil(128), coil(512))
                .entry(2, AT_ONCE, AT_ONCE)
                .process(1, AT_ONCE, AT_ONCE)
                .join(64)
                .run(2);

        assertThat(run.changes().get(1).start()).isEqualTo(512 + 64 + 64);
        assertThat(run.changes().get(0).refillTime()).isNaN();
        assertThat(run.changes().get(1).levelAtStart()).isEqualTo(200);
    }

    @Test
    void s03_tailStopsInOneInstantWhereSpeedsJump_thenTheWorkBegins() {
        Replication run = new PlainLine().tail(0).join(0, 60, 0).run(1);
        ChangeRecord change = run.changes().get(0);

        assertThat(change.start()).isEqualTo(400);
        assertThat(change.tailStopped()).isEqualTo(400);
        assertThat(change.released()).isEqualTo(460);
        assertThat(run.work().stream().filter(work -> work.change() == 1)).hasSize(4);
    }

    @Test
    void s04_everythingOfNoTimeAtAll_goesThroughInOneInstant() {
        Replication run =
                new PlainLine().uncoilers(1, 0).prepare(0, 0).tail(0).join(0).run(3);

        assertThat(run.changes()).extracting(ChangeRecord::start).containsExactly(400.0, 800.0, 1200.0);
        assertThat(run.changes()).allMatch(change -> change.jointCycleTime() == 0 && change.lowestLevel() == 200);
        assertThat(Course.of(run).points()).allMatch(point -> point.level() == 200);
    }

    @Test
    void s05_jointOfNoTimeWithAFullAccumulator_isMatchedAtOnce() {
        // Rule ENTRY-21.
        Replication run = new PlainLine().join(0).run(1);

        assertThat(run.changes().get(0).refillTime()).isEqualTo(0);
        assertThat(Course.of(run).entryState(400)).isEqualTo(EntryState.MATCHED);
    }

    @Test
    void s06_accumulatorExactlyEmptyAsTheJointEnds_lineKeepsRunning() {
        // Rule NUM-3.
        Replication run = new PlainLine()
                .coils(coil(1024))
                .capacity(256)
                .process(1, AT_ONCE, AT_ONCE)
                .join(256)
                .run(3);

        assertThat(run.changes()).allMatch(change -> change.outcome() == Outcome.RAN_THROUGH);
        assertThat(run.totals().lowestLevel()).isEqualTo(0);
        assertThat(run.totals().starvedStops()).isEqualTo(0);
        assertThat(run.totals().stripBreaks()).isEqualTo(0);
    }

    @Test
    void s07_jointEndsAsDowntimeDoes_theLineStartsAsOne() {
        // Rules ORDER-4, ORDER-6, ORDER-14.
        // Downtime at 400 s, at T0: the coil change waits for its end. Joint from 464 to 528 s.
        Replication run = new PlainLine()
                .coils(coil(512))
                .process(1, AT_ONCE, AT_ONCE)
                .join(64)
                .downtime(constant(512), constant(64))
                .run(1);

        assertThat(run.changes().get(0).start()).isEqualTo(576);
        assertThat(run.changes().get(0).tailStopped()).isEqualTo(576);
    }

    @Test
    void s08_preparationEndsAsTheTailStops_nothingIsWaitedFor() {
        ChangeRecord change = new PlainLine()
                .crew(1)
                .prepare(400)
                .tail(10)
                .join(60)
                .run(1)
                .changes()
                .get(0);

        assertThat(change.waiting()).isEqualTo(0);
        assertThat(change.jointCycleTime()).isEqualTo(70);
    }

    @Test
    void s09_preparationEndsAsTheTailWorkDoes_nothingIsWaitedFor() {
        ChangeRecord change = new PlainLine()
                .uncoilers(1, 0)
                .prepare(10)
                .tail(10)
                .join(60)
                .run(1)
                .changes()
                .get(0);

        assertThat(change.waiting()).isEqualTo(0);
        assertThat(change.jointCycleTime()).isEqualTo(70);
    }

    @Test
    void s10_fullAsItsRateLimitedFillEnds_levelIsExactlyTheCapacity() {
        Replication run = new PlainLine()
                .coils(coil(2048))
                .fillRate(0.125)
                .capacity(256)
                .process(1, AT_ONCE, AT_ONCE)
                .join(128)
                .run(1);

        assertThat(run.changes().get(0).refillTime()).isEqualTo(1024);
        assertThat(run.totals().overtravel()).isEqualTo(0);
    }

    @Test
    void s11_restartsIntoAStopForEver_isAnErrorThatNamesTimeAndState() {
        // Rule NUM-5.
        // The reserve of 10 m is above the restart level: with the entry still slow the process may start and must
        // stop, at once.
        PlainLine line = new PlainLine()
                .entry(2.5, 0.4, AT_ONCE)
                .process(1.5, AT_ONCE, AT_ONCE)
                .reserve(10)
                .restart(0, constant(0))
                .join(160);

        assertThatThrownBy(() -> line.run(1))
                .isInstanceOf(SimulationException.class)
                .hasMessageMatching("no progress: more than 1000 events at 560 s, the last '\\w+' and '\\w+': "
                        + "entry FILLING at .* m/s, process at .* m/s heading for .* m/s, level (10|9\\.9999\\d*) m, .* m of coil 2 left, "
                        + "joint released");
    }

    @Test
    void s12_nothingLeftToHappen_isAnErrorThatNamesTimeAndState() {
        // Rule NUM-5.
        // A restart level above the capacity: full and stopped for good.
        PlainLine line = new PlainLine().restart(201, constant(0)).join(160);

        assertThatThrownBy(() -> line.run(1))
                .isInstanceOf(SimulationException.class)
                .hasMessageMatching(
                        "nothing is left to happen at 640 s: entry MATCHED at 0 m/s, process at 0 m/s heading "
                                + "for 0 m/s, level 200 m, 400 m of coil 2 left, joint released");
    }

    @Test
    void s13_tailStopsAsAPreparationEnds_theTailComesFirst() {
        // Rules ORDER-1, ORDER-2, ORDER-3.
        // 1 m/s, down at 0.5 m/s2: T0 at r = 1 m, 512 s; T1 = 514 s, when coil 2 is prepared. The one person begins the
        // tail work; were the preparation's end first, coil 3 would be begun and the tail would wait 514 s.
        Replication run = new PlainLine()
                .coils(coil(513))
                .capacity(4096)
                .entry(2.5, 0.5, 0.5)
                .process(1, AT_ONCE, AT_ONCE)
                .crew(1)
                .uncoilers(3, 0)
                .prepare(514)
                .tail(16)
                .join(64)
                .run(1);

        assertThat(run.changes().get(0).tailStopped()).isEqualTo(514);
        assertThat(run.changes().get(0).waiting()).isEqualTo(0);
        assertThat(run.changes().get(0).released()).isEqualTo(514 + 80);
    }

    @Test
    void s14_preparationEndsAsTheCoilChangeStarts_thePreparationComesFirst() {
        // Rules ORDER-3, ORDER-6.
        // T0 = T1 = 512 s, when coil 2 is prepared: coil 3 is begun before, and put down at once for the tail: it rests
        // from 512
        // to T2 = 592.
        Replication run = new PlainLine()
                .coils(coil(512))
                .capacity(4096)
                .process(1, AT_ONCE, AT_ONCE)
                .crew(1)
                .uncoilers(3, 0)
                .prepare(512)
                .tail(16)
                .join(64)
                .run(2);

        assertThat(run.changes().get(0).tailStopped()).isEqualTo(512);
        assertThat(run.changes().get(0).waiting()).isZero();
        assertThat(run.changes().get(0).released()).isEqualTo(592);
        WorkRecord third = run.work().stream()
                .filter(work -> work.list() == WorkRecord.WorkList.PREPARE && work.change() == 2)
                .findFirst()
                .orElseThrow();
        assertThat(third.start()).isEqualTo(512);
        assertThat(third.putDown()).startsWith(new WorkRecord.PutDown(512, 592));
    }

    /** A capacity (m) of which the 1e-10th part, below which a level is below a threshold, is exact in binary, too: 2^-24. */
    private static final double EXACT = 9765625 / 16384.0;

    private static final double TOUCH = 0x1p-24;

    /**
     * Entry at 0.5 m/s, slower than the process at 1 m/s: from T2 = 576 s on, with the capacity less 64 m, the level falls by
     * 0.5 m/s, until coil 2 of {@code metres} is through.
     */
    private static PlainLine fallsBy(double metres) {
        return new PlainLine()
                .coils(coil(512), coil(metres), coil(512))
                .capacity(EXACT)
                .entry(0.5, AT_ONCE, AT_ONCE)
                .process(1, AT_ONCE, AT_ONCE)
                .join(64);
    }

    @Test
    void s15_coilChangeStartsAsTheProcessStarves_theStopIsThatOfTheNewCoilChange() {
        // Rules ORDER-6, ORDER-8, REPORT-7.
        Replication run = fallsBy(EXACT - 64 + TOUCH).run(2);
        double empty = 576 + 2 * (EXACT - 64 + TOUCH);

        assertThat(run.changes().get(1).start()).isEqualTo(empty);
        assertThat(Course.of(run).takesUp(ProcessState.STARVED, 1)).isEqualTo(empty);
        assertThat(run.changes().get(0).starvedStops()).isEqualTo(0);
        assertThat(run.changes())
                .extracting(ChangeRecord::outcome)
                .containsExactly(Outcome.RAN_THROUGH, Outcome.STOPPED);
    }

    @Test
    void s16_coilChangeStartsAsTheProcessSlows_theSlowingIsThatOfTheNewCoilChange() {
        // Rules ORDER-6, ORDER-9.
        Replication run = fallsBy(EXACT - 128 + TOUCH).slowing(0.25, 64, 128).run(2);
        double low = 576 + 2 * (EXACT - 128 + TOUCH);

        assertThat(run.changes().get(1).start()).isEqualTo(low);
        assertThat(Course.of(run).takesUp(ProcessState.SLOWED, 1)).isEqualTo(low);
        assertThat(run.changes())
                .extracting(ChangeRecord::outcome)
                .containsExactly(Outcome.RAN_THROUGH, Outcome.SLOWED);
    }

    @Test
    void s17_coilChangeStartsAsTheLevelToResumeAtIsReached_theProcessStaysSlowed() {
        // Rules ORDER-6, ORDER-10.
        // Slowed below 64 m, then 0.25 m/s out until T2 = 1724 s; from there 2 - 0.25 m/s in: 112 m in 64 s, in which
        // coil 2 of 128 m is through.
        double atRelease = 64 - TOUCH - 0.25 * (700 - (EXACT - 64 + TOUCH));
        Replication run = new PlainLine()
                .coils(coil(1024), coil(128), coil(1024))
                .capacity(EXACT)
                .entry(2, AT_ONCE, AT_ONCE)
                .process(1, AT_ONCE, AT_ONCE)
                .slowing(0.25, 64, atRelease + 112)
                .join(700)
                .run(2);

        assertThat(run.changes().get(1).start()).isEqualTo(1724 + 64);
        assertThat(run.changes().get(1).levelAtStart()).isEqualTo(atRelease + 112);
        assertThat(Course.of(run).processSpeed(1788)).isEqualTo(0.25);
    }

    @Test
    void s18_coilChangeStartsAsTheLevelToRestartAtIsReached_theProcessWaitsForTheJoint() {
        // Rules ORDER-6, ORDER-11.
        // Starved at a level of -2^-24 m; from T2 = 1664 s on 2 m/s in: 128 m in 64 s, in which coil 2 is through.
        Replication run = new PlainLine()
                .coils(coil(1024), coil(128), coil(1024))
                .capacity(EXACT)
                .entry(2, AT_ONCE, AT_ONCE)
                .process(1, AT_ONCE, AT_ONCE)
                .restart(128 - TOUCH, constant(0))
                .join(640)
                .run(2);

        assertThat(run.changes().get(1).start()).isEqualTo(1664 + 64);
        assertThat(run.changes().get(1).levelAtStart()).isEqualTo(128 - TOUCH);
        assertThat(Course.of(run).takesUp(ProcessState.RUNNING, 2)).isEqualTo(1728 + 640);
    }

    @Test
    void s19_tailLeavesItsUncoilerAsARunOfGivenTimeEnds_theCoilIsPreparedYet() {
        // Rules ORDER-12, ORDER-13.
        // r = 64 m at 448 s; the preparation takes no time.
        Replication run = new PlainLine()
                .coils(coil(512))
                .process(1, AT_ONCE, AT_ONCE)
                .uncoilers(1, 64)
                .prepare(0)
                .join(64)
                .runFor(448);

        assertThat(run.work()).hasSize(1);
    }
}
