package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.records.Outcome.RAN_THROUGH;
import static runthrough.simulation.records.Outcome.SLOWED;
import static runthrough.simulation.records.Outcome.STOPPED;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.cause.Cause;
import runthrough.study.cause.CauseCounts;
import runthrough.study.cause.NamedCauses;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Wilson;

/** Verdicts on replications hand-made, see {@link HandMade}: two of an hour and four coil changes each. */
class RunThroughStudyTest {
    private static final Line LINE = HandMade.line(Distribution.uniform(20, 70));
    private static final StudyOptions ONE_THREAD = StudyOptions.plain().withThreads(1);

    /** All ran through, the joints took 10, 20, 30 and 40 s. */
    private static final Replication GOOD = HandMade.hour(
            0, HandMade.ranThrough(10), HandMade.ranThrough(20), HandMade.ranThrough(30), HandMade.ranThrough(40));

    /** One ran through, one slowed, two stopped. */
    private static final Replication BAD = HandMade.hour(
            1,
            HandMade.change(50, 20, 0, 28, RAN_THROUGH),
            HandMade.change(30, 40, 0, 0.9, SLOWED),
            HandMade.change(50, 60, 20, 0.5, STOPPED),
            HandMade.change(50, 60, 0, 0.5, STOPPED));

    private final StudyResult result = study(LINE, GOOD, BAD);
    private final Verdict verdict = result.verdict();

    @Test
    void coilChangesAreCountedByWhatCameOfThem() {
        assertThat(verdict.changes()).isEqualTo(new Verdict.Changes(8, 5, 1, 2));
        assertThat(verdict.changes().failed()).isEqualTo(3);
    }

    @Test
    void shareRunThroughIsThatOfTheReplications_withWilsonsIntervalForSoFew() {
        // 4/4 and 1/4: mean 0.625, sd 0.530330. Variance 0.28125 over that of independent trials, 0.625 * 0.375 / 7 * 2
        // =
        // 0.06696429, is 4.2; Student's t with 1 degree of freedom over the normal deviate is 12.706205 / 1.959964.
        assertThat(verdict.shareRunThrough().mean()).isEqualTo(0.625);
        assertThat(verdict.shareRunThrough().sd().orElseThrow()).isCloseTo(0.530330, within(1e-6));
        Interval interval = verdict.shareRunThrough().interval().orElseThrow();
        assertThat(interval.method()).isEqualTo(Interval.Method.WILSON);
        assertThat(interval.low())
                .isCloseTo(
                        Wilson.interval(0.625, 8 / 4.2 / Math.pow(12.706205 / 1.959964, 2))
                                .low(),
                        within(1e-8));
        assertThat(verdict.answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(verdict.chance()).isTrue();
    }

    @Test
    void causesAreCounted() {
        // Rule CAUSE-9.
        assertThat(verdict.namedCauses())
                .extracting(NamedCauses.Count::changes, NamedCauses.Count::starvedStops, NamedCauses.Count::lostTime)
                .containsExactlyInAnyOrder(tuple(1L, 0L, 0.0), tuple(1L, 1L, 30.0), tuple(1L, 1L, 30.0));
        assertThat(verdict.causes())
                .isEqualTo(new CauseCounts(Map.of(
                        Cause.WAITING_FOR_PREPARATION,
                        1L,
                        Cause.ACCUMULATOR_NOT_FULL,
                        1L,
                        Cause.ELEMENT_TOOK_LONG,
                        1L)));
        assertThat(verdict.causes().main()).contains(Cause.WAITING_FOR_PREPARATION);
        assertThat(new CauseCounts(Map.of(
                                Cause.WAITING_FOR_PREPARATION,
                                1L,
                                Cause.ACCUMULATOR_NOT_FULL,
                                3L,
                                Cause.USUAL_JOINT_TOO_LONG,
                                2L))
                        .main())
                .contains(Cause.ACCUMULATOR_NOT_FULL);
        assertThat(CauseCounts.none().main()).isEmpty();
    }

    @Test
    void shortfallAtTheTarget() {
        // Rule MARGIN-4.
        // Margins: 37, 27, 17, 7 and 27 m; shortfalls: 30 - 42 - 1 = -13, 50 - 62 - 1 = -13 twice. One in ten of eight
        // may
        // fail: floor(0.8) = 0, so the least of them counts.
        assertThat(verdict.spare().orElseThrow().metres()).isCloseTo(-13, within(1e-12));
        assertThat(verdict.spare().orElseThrow().seconds()).isCloseTo(-13, within(1e-12));
        // Speeds: -0.288019 for the 40 s from 30 m, -0.198766 for 60 s from 50 m.
        assertThat(verdict.spare().orElseThrow().speed()).isCloseTo(-0.288019, within(1e-6));
    }

    @Test
    void stopsAndWhatTheyCost() {
        // Rule REPORT-14.
        Verdict.Stoppages stoppages = verdict.stoppages();

        // 0 and 2 stops in 4 coil changes, an hour being an eighth of a shift.
        assertThat(stoppages.starvedPerHundredChanges().mean()).isCloseTo(25, within(1e-12));
        assertThat(stoppages.starvedPerShift().mean()).isCloseTo(8, within(1e-12));
        assertThat(stoppages.slowingsPerShift().mean()).isCloseTo(4, within(1e-12));
        // 0 and 60 m, lost in 0 and 60 s.
        assertThat(stoppages.lostMetresPerShift().mean()).isCloseTo(240, within(1e-12));
        assertThat(stoppages.lostTimePerShift().mean()).isCloseTo(240, within(1e-12));
        // No downtime in a quarter of a shift: up to 3 / 0.25.
        assertThat(stoppages.downtimesPerShift().mean()).isZero();
        assertThat(stoppages.downtimesPerShift().interval())
                .contains(new Interval(0, 12, Interval.Method.RULE_OF_THREE));
    }

    @Test
    void output() {
        // Rules REPORT-8, REPORT-9.
        Verdict.Output output = verdict.output();

        // 3600 and 3540 m of 4 kg/m in an hour each; 4 m of scrap each.
        assertThat(output.speed().mean()).isCloseTo(3570 / 3600.0, within(1e-12));
        assertThat(output.massFlow().mean()).isCloseTo(4 * 3570 / 3600.0, within(1e-12));
        assertThat(output.utilisation().mean()).isCloseTo(3570 / 3600.0, within(1e-12));
        assertThat(output.scrapMetresPerShift().mean()).isCloseTo(32, within(1e-12));
        assertThat(output.scrapKilogramsPerShift().mean()).isCloseTo(128, within(1e-12));
        assertThat(output.scrapShare().mean()).isCloseTo((4 / 3604.0 + 4 / 3544.0) / 2, within(1e-12));
        assertThat(output.changesPerShift().mean()).isCloseTo(32, within(1e-12));
        // Another stop would leave fewer: an interval that stands on the only coil change of eight that lost strip.
        assertThat(output.changesPerShift().interval().orElseThrow().method()).isEqualTo(Interval.Method.FEW_EVENTS);
        assertThat(output.duration().mean()).isEqualTo(3600);
    }

    @Test
    void theStripStandingAtTheJoiner() {
        Verdict.Joint joint = verdict.joint();

        // 10, 20, 20, 30, 40, 40, 60, 60: the median between 30 and 40; at 0.9 h = 6.3.
        assertThat(joint.time().mean().mean()).isCloseTo((25 + 45) / 2.0, within(1e-12));
        assertThat(joint.time().p50()).isCloseTo(35, within(1e-12));
        assertThat(joint.time().p90()).isCloseTo(60, within(1e-12));
        assertThat(joint.time().greatest()).isEqualTo(60);
        assertThat(joint.waiting().time().mean().mean()).isCloseTo(2.5, within(1e-12));
        assertThat(joint.waiting().share().mean()).isEqualTo(0.125);
    }

    @Test
    void whatTheAccumulatorGoesThrough() {
        Verdict.Storage storage = verdict.storage().orElseThrow();

        // Margins, the process kept at 1 m/s: 37, 27, 17, 7, 27, and of those that stopped less than any level shows.
        assertThat(storage.margin().least()).isEqualTo(-13);
        assertThat(storage.margin().p50()).isCloseTo(12, within(1e-12));
        assertThat(storage.stripDrawn().greatest()).isEqualTo(49.5);
        assertThat(storage.refillTime()).isEmpty();
        assertThat(storage.shareRefilled().mean()).isEqualTo(0.625);
        assertThat(storage.meanLevel().mean()).isEqualTo(45);
        assertThat(storage.lowestLevel()).isEqualTo(7);
        assertThat(storage.overtravel()).isEqualTo(0.1);
        assertThat(storage.overfull()).isEqualTo(1);
        assertThat(storage.stripBreaks()).isZero();
    }

    @Test
    void samplesForChartsHoldEveryCoilChange() {
        assertThat(result.pooled().jointCycleTime().values()).containsExactly(10, 20, 20, 30, 40, 40, 60, 60);
        assertThat(result.pooled().margin().orElseThrow().count()).isEqualTo(8);
        assertThat(result.pooled().refillTime()).isEmpty();
        assertThat(result.totals()).containsExactly(GOOD.totals(), BAD.totals());
        assertThat(result.first()).isSameAs(GOOD);
    }

    @Test
    void theHandCalculationStandsBesideIt() {
        // The mean joint is 45 s: 47 m needed above the stop level of 1 m.
        assertThat(result.handCalculation()
                        .storage()
                        .orElseThrow()
                        .atRatedSpeed()
                        .capacity()
                        .needed())
                .isCloseTo(48, within(1e-12));
    }

    @Test
    void refillTimesOfCoilChangesThatWereRefilled() {
        ChangeRecord refilled = new ChangeRecord(
                1, 0, 0, 0, 100, 102, 142, 0, 0, 1, 50, 1, 1, 8, 1, RAN_THROUGH, 0, 0, 0, 44, Optional.empty());
        Verdict.Storage storage = study(LINE, HandMade.hour(0, refilled, HandMade.ranThrough(30)))
                .verdict()
                .storage()
                .orElseThrow();

        assertThat(storage.refillTime().orElseThrow().count()).isEqualTo(1);
        assertThat(storage.refillTime().orElseThrow().p50()).isEqualTo(44);
    }

    @Test
    void aLineWithNothingRandom_shareIsExactlyOneAndTheBoundIsBelowOne() {
        Verdict exact = study(HandMade.line(Distribution.constant(40)), GOOD).verdict();

        assertThat(exact.chance()).isFalse();
        assertThat(exact.shareRunThrough().mean()).isEqualTo(1);
        assertThat(exact.shareRunThrough().interval().orElseThrow().low()).isLessThan(0.9);
        assertThat(exact.answer()).isEqualTo(TargetStatus.MEETS);
    }

    @Test
    void withChance_fourCoilChangesDoNotShowNinetyPercent() {
        // z^2 * 9 = 34.6
        Verdict undecided = study(LINE, GOOD).verdict();

        assertThat(undecided.answer()).isEqualTo(TargetStatus.UNDECIDED);
        assertThat(undecided.resolution().leastToShow()).contains(35L);
    }

    @Test
    void whereEntryAndProcessAreOneStrip_whatBelongsToAnAccumulatorIsLeftOut() {
        Line oneStrip = HandMade.line(
                Distribution.uniform(20, 70),
                new Practice.JoinWithoutAccumulator(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
        StudyResult oneStripResult = study(oneStrip, HandMade.hour(0, HandMade.change(0, 40, 0, 0, STOPPED)));

        assertThat(oneStripResult.verdict().spare()).isEmpty();
        assertThat(oneStripResult.verdict().storage()).isEmpty();
        assertThat(oneStripResult.pooled().margin()).isEmpty();
        assertThat(oneStripResult.pooled().stripDrawn()).isEmpty();
        assertThat(oneStripResult.verdict().causes().main()).contains(Cause.PRACTICE);
        assertThat(oneStripResult.verdict().joint().time().p50()).isEqualTo(40);
    }

    @Test
    void replicationsWithoutACompleteCoilChangeCountForOutputOnly() {
        Verdict partly = study(LINE, HandMade.hour(0), GOOD).verdict();

        assertThat(partly.shareRunThrough().replications()).isEqualTo(1);
        assertThat(partly.stoppages().starvedPerHundredChanges().replications()).isEqualTo(1);
        assertThat(partly.output().speed().replications()).isEqualTo(2);
    }

    @Test
    void aStudyWithoutAnyCompleteCoilChangeIsRefused() {
        assertThatThrownBy(() -> study(LINE, HandMade.hour(0), HandMade.hour(1)))
                .isInstanceOf(StudyException.class)
                .hasMessage("no coil change was completed in any of 2 replications; give a longer run, or fewer coil"
                        + " changes to leave out");
    }

    @Test
    void progressRisesByOneFromNothingToAll_andEachReplicationIsSeenInOrder() {
        List<String> seen = new ArrayList<>();
        run(LINE, ONE_THREAD.withThreads(2), new Notes(seen, 99), GOOD, BAD, HandMade.hour(2));

        assertThat(seen).containsExactly("0/3", "saw 0", "1/3", "saw 1", "2/3", "saw 2", "3/3");
    }

    @Test
    void aListenerCanGiveItUp() {
        List<String> seen = new ArrayList<>();

        assertThatThrownBy(() -> run(LINE, ONE_THREAD, new Notes(seen, 3), GOOD, BAD))
                .isInstanceOf(CancellationException.class)
                .hasMessage("given up after 1 of 2 pieces of work");
        assertThat(seen).containsExactly("0/2", "saw 0", "1/2");
    }

    @Test
    void noThreadsAreRefused() {
        assertThatThrownBy(() -> ONE_THREAD.withThreads(0)).hasMessage("threads = 0; must be 1 or more");
    }

    private record Notes(List<String> seen, int enough) implements StudyListener {
        @Override
        public void replication(Replication replication) {
            seen.add("saw " + replication.index());
        }

        @Override
        public void progress(int done, int total) {
            seen.add(done + "/" + total);
        }

        @Override
        public boolean cancelled() {
            return seen.size() >= enough;
        }
    }

    private static StudyResult study(Line line, Replication... replications) {
        return run(line, ONE_THREAD, StudyListener.NONE, replications);
    }

    private static StudyResult run(
            Line line, StudyOptions options, StudyListener listener, Replication... replications) {
        SimulationRequest request = HandMade.request(line, 4, replications.length);
        return new RunThroughStudy(request, plan -> (index, detail, eye) -> {
                    replications[index].changes().forEach(eye::saw);
                    return replications[index];
                })
                .run(options, listener);
    }
}
