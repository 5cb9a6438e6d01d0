package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Outcome;
import runthrough.study.cause.Cause;
import runthrough.study.margin.StripMargin;

/** Whole studies of simulated lines, see {@link HandMade} for the line of round numbers. */
class LineStudyTest {

    /** The longest joint that 50 m bear: 50 - 1 (stop level) - 1 - 1 (ramps) = 47 s. Uniform from 20 to 70 s, 54 % are shorter. */
    private static final Line RANDOM = HandMade.line(Distribution.uniform(20, 70));

    private static final double EXACT_SHARE = 27 / 50.0;

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void threadsChangeNothing(int threads) {
        SimulationRequest request = HandMade.request(RANDOM, 40, 23);
        StudyOptions one = new StudyOptions(1, Detail.TRACE, Detail.ELEMENTS);
        Collected alone = new Collected();
        Collected together = new Collected();
        StudyResult resultAlone = new RunThroughStudy(request).run(one, alone);
        StudyResult resultTogether = new RunThroughStudy(request).run(one.withThreads(threads), together);

        assertThat(resultTogether.verdict()).isEqualTo(resultAlone.verdict());
        assertThat(resultTogether.totals()).isEqualTo(resultAlone.totals());
        assertThat(resultTogether.first()).isEqualTo(resultAlone.first());
        assertThat(together.seen).isEqualTo(alone.seen).hasSize(23);
    }

    @Test
    void aLineWithNothingRandomGivesTheClosedForms() {
        // Joint of 40 s: drawn 40 + 1 + 1, margin 50 - 42 - 1. Refill: 1 m/s up takes 2 s, gains 1 m; so does down; 40
        // m
        // at 1 m/s; and from T2 until 1 m/s is reached 2 s.
        Verdict verdict = run(HandMade.request(HandMade.line(Distribution.constant(40)), 10, 3));

        assertThat(verdict.answer()).isEqualTo(TargetStatus.MEETS);
        assertThat(verdict.chance()).isFalse();
        assertThat(verdict.shareRunThrough().mean()).isEqualTo(1);
        assertThat(verdict.shareRunThrough().interval().orElseThrow().low()).isLessThan(1);
        Verdict.Storage storage = verdict.storage().orElseThrow();
        assertThat(storage.margin().least()).isCloseTo(7, within(1e-9));
        assertThat(storage.stripDrawn().greatest()).isCloseTo(42, within(1e-9));
        assertThat(storage.refillTime().orElseThrow().p50()).isCloseTo(46, within(1e-9));
        assertThat(storage.shareRefilled().mean()).isEqualTo(1);
        assertThat(verdict.spare().orElseThrow().metres()).isCloseTo(7, within(1e-9));
        assertThat(verdict.spare().orElseThrow().seconds()).isCloseTo(7, within(1e-9));
        assertThat(verdict.output().utilisation().mean()).isCloseTo(1, within(1e-12));
        assertThat(verdict.output().speed().mean()).isCloseTo(1, within(1e-12));
        // From time 0 eleven coils of 1000 m at 1 m/s, less the metre in which the eleventh begins to stop.
        assertThat(verdict.output().changesPerShift().mean()).isCloseTo(10 / 10_999.0 * 28_800, within(1e-9));
        assertThat(verdict.stoppages().lostMetresPerShift().mean()).isZero();
    }

    @Test
    void whatIsMissingIsKnownFromStoppedCoilChangesToo() {
        // 10 % of coil changes take 65 s or more, and then 65 - 47 = 18 m are missing; the shortest joint leaves 27 m.
        StudyResult result = study(HandMade.request(RANDOM, 200, 50));
        Verdict.Spare spare = result.verdict().spare().orElseThrow();

        // Standard error of that percentile: sqrt(0.1 * 0.9 / 10,000) / (0.02 per metre) = 0.15 m.
        assertThat(spare.metres()).isCloseTo(-18, within(0.6));
        assertThat(spare.seconds()).isCloseTo(-18, within(0.6));
    }

    @Test
    void theMarginExplainsEveryCoilChange() {
        // The margin is worked out from the times alone, what was left comes from the level.
        StripMargin margin = new StripMargin(RANDOM);
        Collected collected = new Collected();
        new RunThroughStudy(HandMade.request(RANDOM, 100, 10))
                .run(new StudyOptions(2, Detail.CHANGES, Detail.CHANGES), collected);

        assertThat(collected.seen)
                .flatExtracting(Replication::changes)
                .hasSize(1000)
                .allSatisfy(change -> {
                    double left = margin.toStop(change);
                    if (change.outcome() == Outcome.RAN_THROUGH) {
                        assertThat(change.lowestAboveStopLevel()).isCloseTo(left, within(1e-9));
                    } else {
                        assertThat(left).isNegative();
                    }
                });
    }

    @Test
    void aLineOfTooLittleCapacityIsAttributedToCapacity() {
        Verdict verdict = run(HandMade.request(RANDOM, 50, 10));

        assertThat(verdict.answer()).isEqualTo(TargetStatus.MISSES);
        // Joints of 20 to 70 s, uniform: the middle one, 45 s, is borne; those that are not took longer than that.
        assertThat(verdict.causes().count(Cause.ELEMENT_TOOK_LONG))
                .isEqualTo(verdict.changes().failed());
    }

    @Test
    void aLineThatWaitsForItsCoilsIsAttributedToPreparation() {
        // One uncoiler, so preparing (60 s) begins when the tail has stopped; the joint of 30 s alone would take 32 m.
        Verdict verdict = run(HandMade.request(varied(1, List.of(timed("load", 60)), 30, 1000), 50, 4));

        assertThat(verdict.changes().stopped()).isEqualTo(verdict.changes().total());
        assertThat(verdict.causes().count(Cause.WAITING_FOR_PREPARATION))
                .isEqualTo(verdict.changes().failed());
        assertThat(verdict.joint().waiting().share().mean()).isEqualTo(1);
        assertThat(verdict.joint().waiting().time().p50()).isCloseTo(60, within(1e-9));
    }

    @Test
    void aLineOfShortCoilsIsAttributedToRefill() {
        // Each joint of 40 s takes 42 m. Of 60 m of coil the entry uses 1 m to stop and 4 m to reach 2 m/s, and at 2
        // m/s gains
        // no more than half of the rest: less than was taken.
        Verdict verdict = run(HandMade.request(varied(2, List.of(), 40, 60), 50, 4));

        assertThat(verdict.changes().stopped()).isPositive();
        assertThat(verdict.causes().main()).contains(Cause.ACCUMULATOR_NOT_FULL);
        assertThat(verdict.causes().count(Cause.ACCUMULATOR_NOT_FULL))
                .isEqualTo(verdict.changes().failed());
        assertThat(verdict.storage().orElseThrow().shareRefilled().mean()).isLessThan(0.5);
    }

    /**
     * The accumulator is always refilled here, so coil changes are independent and the share run through is exactly that of
     * joints below 47 s. Over 500 seeds the standard error of a coverage of 95 % is 0.97 %; three of them are allowed.
     */
    @Test
    void ofManyStudies95PercentOfIntervalsHoldTheExactShare() {
        int held = 0;
        int seeds = 500;
        for (int seed = 1; seed <= seeds; seed++) {
            SimulationRequest request = HandMade.request(RANDOM, 40, 5);
            RunPlan plan = new RunPlan(request.run().extent(), 0, 5, seed, 0.9);
            held += run(request.with(plan))
                            .shareRunThrough()
                            .interval()
                            .orElseThrow()
                            .contains(EXACT_SHARE)
                    ? 1
                    : 0;
        }
        assertThat(held / (double) seeds).isBetween(0.921, 0.979);
    }

    private static Line varied(int uncoilers, List<WorkElement> prepare, double weld, double length) {
        Line line = HandMade.line(Distribution.constant(weld));
        Coil coil = line.coils().get(0);
        Coil cut = new Coil(
                coil.name(),
                coil.strip(),
                new CoilSize.ByLength(Distribution.constant(length)),
                Coil.Crops.NONE,
                coil.processSpeed(),
                "",
                Optional.empty());
        CoilChange change = line.change();
        return new Line(
                new CoilSource.Repeated(cut),
                new Entry(uncoilers, 2, 0.5, 0.5, line.entry().creep(), 0),
                line.process(),
                new CoilChange(2, prepare, change.tail(), change.join(), change.reject()),
                new Practice.JoinWithAccumulator(Accumulator.ofCapacity(HandMade.CAPACITY)),
                line.bending());
    }

    private static WorkElement timed(String name, double seconds) {
        return new WorkElement(
                name,
                new WorkElement.WorkTime.Timed(Distribution.constant(seconds)),
                new WorkElement.Occurrence.Always(),
                false);
    }

    private static Verdict run(SimulationRequest request) {
        return study(request).verdict();
    }

    private static StudyResult study(SimulationRequest request) {
        return new RunThroughStudy(request).run(StudyOptions.plain(), StudyListener.NONE);
    }

    private static final class Collected implements StudyListener {
        private final List<Replication> seen = new ArrayList<>();

        @Override
        public void replication(Replication replication) {
            seen.add(replication);
        }
    }
}
