package runthrough.study.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.simulation.records.Totals;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;
import runthrough.study.Verdict;
import runthrough.study.cause.Cause;
import runthrough.study.cause.NamedCauses;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * What it is worth to remove a cause that is the only one: then every coil change runs through. 150 m last for 100 s at 1.5 m/s;
 * coils of 5,000 m, so that the accumulator is always full again.
 */
class WorthStudyTest {

    private static PlainLine line() {
        return new PlainLine().coils(PlainLine.coil(5000)).capacity(150);
    }

    private static StudyResult result(Line line) {
        return result(line, 10);
    }

    private static StudyResult result(Line line, int replications) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(60), 0, replications, 5, 0.99);
        SimulationRequest request = new SimulationRequest("Line (invented)", List.of(), line, plan, UnitSystem.METRIC);
        return new RunThroughStudy(request).run(StudyOptions.plain(), StudyListener.NONE);
    }

    private static List<CauseWorth> worths(StudyResult result) {
        return new WorthStudy(result).run(2, StudyListener.NONE);
    }

    /** Without its only cause every coil change runs through: what is saved is all that there was. */
    private static void savesAll(Line line, Cause cause) {
        StudyResult result = result(line);
        double year = result.request().run().yearlyTime();
        assertThat(worths(result)).singleElement().satisfies(worth -> {
            assertThat(worth.reason().cause()).isEqualTo(cause);
            assertThat(worth.replications()).isEqualTo(10);
            assertThat(worth.shareRunThrough().mean())
                    .isCloseTo(1 - result.verdict().shareRunThrough().mean(), within(1e-12));
            double stops = result.totals().stream()
                    .mapToDouble(one -> one.starvedStops() / one.duration() * year)
                    .average()
                    .orElseThrow();
            assertThat(worth.stops().mean()).isPositive().isCloseTo(stops, within(1e-9 * stops));
            assertThat(worth.lostTime().mean()).isPositive();
            assertThat(worth.goodOutput().mean()).isPositive();
            assertThat(worth.stops().interval().isPresent()).isEqualTo(!line.isDeterministic());
        });
    }

    @Test
    void anOccasionalElementTakesNoTime() {
        // Rule WORTH-2.
        // 50 s, and 80 s more at every third coil change: 130 s of 100 s.
        WorkElement electrode = new WorkElement(
                "electrode", new WorkTime.Timed(Distribution.constant(80)), new Occurrence.Every(3), false);
        savesAll(line().join(50).join(electrode).build(), Cause.OCCASIONAL_ELEMENT);
    }

    @Test
    void jointsAreNeverRejected() {
        // Rule WORTH-2.
        savesAll(line().join(70).reject(new Reject.Chance(0.1)).build(), Cause.JOINT_MADE_AGAIN);
    }

    @Test
    void anElementNeverTakesLongerThanItsMedian() {
        // Rule WORTH-2.
        // The median is 80 s; half of the joints take up to 120 s.
        savesAll(line().join(Distribution.uniform(40, 120)).build(), Cause.ELEMENT_TOOK_LONG);
    }

    @Test
    void theNextCoilIsAlwaysPrepared() {
        // Rule WORTH-2.
        // One uncoiler: each joint waits 300 s.
        savesAll(
                line().uncoilers(1, 0)
                        .prepare(300)
                        .join(Distribution.uniform(50, 70))
                        .build(),
                Cause.WAITING_FOR_PREPARATION);
    }

    /**
     * 180 m last for 120 s. Both elements have a median of 50 s: 100 s together. One alone takes up to 30 s more than that, both
     * up to 60 s, so there are three causes: the one, the other, and both together.
     */
    private static PlainLine twoThatVary() {
        return line().capacity(180).join(Distribution.uniform(20, 80)).join(Distribution.uniform(20, 80));
    }

    private static double average(StudyResult result, ToDoubleFunction<Totals> perSecond) {
        return result.totals().stream().mapToDouble(perSecond).average().orElseThrow()
                * result.request().run().yearlyTime();
    }

    private static double stops(StudyResult result) {
        return average(result, one -> one.starvedStops() / one.duration());
    }

    @Test
    void noCauseIsWorthMoreThanThereIs_andWithoutAllOfThemThatIsSaved() {
        // Without any cause each joint takes 100 s of 120 s: no stop is left, so all stops of a year are saved, and all
        // time that
        // they cost; each cause by itself saves less.
        StudyResult result = result(twoThatVary().build());
        List<CauseWorth> worths = worths(result);
        double lost = average(result, one -> one.lostTime() / one.duration());
        assertThat(worths).hasSize(3).allSatisfy(worth -> {
            assertThat(worth.replications()).isEqualTo(10);
            assertThat(worth.stops().mean()).isLessThanOrEqualTo(stops(result) * (1 + 1e-9));
            assertThat(worth.lostTime().mean()).isLessThanOrEqualTo(lost * (1 + 1e-9));
        });
        assertThat(worths)
                .filteredOn(worth -> worth.reason().cause() == Cause.SEVERAL_TOGETHER)
                .singleElement()
                .satisfies(all -> {
                    assertThat(all.stops().mean()).isCloseTo(stops(result), within(1e-9 * stops(result)));
                    assertThat(all.lostTime().mean()).isCloseTo(lost, within(1e-9 * lost));
                });
    }

    @Test
    void intervalsEndWhereWhatIsPossibleEnds() {
        // From two replications Student's t is 12.7: ends by it alone lie far outside. Fewer stops: at most those that
        // there are,
        // as far as that is known; more stops: at most one at each coil change that does not stop. Time: no more than a
        // year.
        StudyResult result = result(twoThatVary().build(), 2);
        Verdict verdict = result.verdict();
        double year = result.request().run().yearlyTime();
        double most =
                verdict.stoppages().starvedPerShift().interval().orElseThrow().high() * year / (8 * 3600);
        double others = average(result, one -> (one.changes() - one.stoppedChanges()) / one.duration());
        double rated = average(result, Totals::meanRatedSpeed);
        double good = average(result, Totals::goodSpeed);
        assertThat(worths(result)).hasSize(3).allSatisfy(worth -> {
            isWithin(worth.stops(), -others, most);
            isWithin(worth.lostTime(), -year, year);
            isWithin(worth.goodOutput(), -good, rated);
            isWithin(
                    worth.shareRunThrough(),
                    -verdict.shareRunThrough().mean(),
                    1 - verdict.shareRunThrough().interval().orElseThrow().low());
        });
    }

    private static void isWithin(Estimate estimate, double least, double most) {
        Interval interval = estimate.interval().orElseThrow();
        assertThat(interval.low()).isGreaterThanOrEqualTo(least * (1 + 1e-9)).isLessThanOrEqualTo(estimate.mean());
        assertThat(interval.high()).isLessThanOrEqualTo(most * (1 + 1e-9)).isGreaterThanOrEqualTo(estimate.mean());
    }

    @Test
    void whereNoStopWasSeenThreeMayBe() {
        // Slowed to 0.5 m/s at 60 m, after 80 s: the last 40 s of the longest joint draw 20 m, and nothing stops, with
        // the cause
        // or without. Rule of three: up to three stops in all that was run may have been saved, or added to
        // the line without the cause, which is done a little sooner: it loses 1 % of the time less, at most.
        StudyResult result = result(line().capacity(180)
                .slowing(0.5, 60, 100)
                .join(Distribution.uniform(40, 120))
                .build());
        double three = 3
                * result.request().run().yearlyTime()
                / result.totals().stream().mapToDouble(Totals::duration).sum();
        assertThat(worths(result)).singleElement().satisfies(worth -> {
            assertThat(worth.stops().mean()).isZero();
            Interval interval = worth.stops().interval().orElseThrow();
            assertThat(interval.low()).isBetween(-1.01 * three, -three);
            assertThat(interval.high()).isCloseTo(three, within(1e-6 * three));
            assertThat(worth.lostTime().interval()).isPresent();
        });
    }

    @Test
    void whereAllReplicationsSaveTheSameThereIsAnIntervalStill() {
        // Rule WORTH-1.
        // Every third of 60 coil changes stops: 20 in each of 10 replications. Preparing is random and never waited
        // for. No
        // spread shows how sure that is: three of all 600 coil changes may turn out otherwise, 0.5 % of those of a
        // year.
        StudyResult result = result(line().prepare(PlainLine.element(Distribution.uniform(10, 20)))
                .join(50)
                .join(PlainLine.every(3, 80))
                .build());
        double changes = average(result, one -> one.changes() / one.duration());
        assertThat(result.verdict().chance()).isTrue();
        assertThat(worths(result)).singleElement().satisfies(worth -> {
            Interval interval = worth.stops().interval().orElseThrow();
            assertThat(worth.stops().mean() - interval.low()).isCloseTo(0.005 * changes, within(1e-6 * changes));
            assertThat(worth.lostTime().interval()).isPresent();
            assertThat(worth.goodOutput().interval()).isPresent();
        });
    }

    @Test
    void allPreparationGoesAtOnce_soItIsOneRowWhateverElementWasWaitedFor() {
        // One uncoiler: each joint waits for both elements, and is named by the one that took longer: either may be
        // that. WORTH-2
        // removes all preparation for both.
        StudyResult result = result(line().uncoilers(1, 0)
                .prepare(PlainLine.element(Distribution.uniform(100, 200)))
                .prepare(PlainLine.element(Distribution.uniform(100, 200)))
                .join(60)
                .build());
        assertThat(result.verdict().namedCauses()).hasSize(2);
        assertThat(worths(result)).singleElement().satisfies(worth -> {
            assertThat(worth.reason().cause()).isEqualTo(Cause.WAITING_FOR_PREPARATION);
            assertThat(worth.reason().element()).isEmpty();
            assertThat(worth.stops().mean()).isCloseTo(stops(result), within(1e-9 * stops(result)));
        });
    }

    @Test
    void theAccumulatorRefillsAtTwentyTimesTheTopSpeed() {
        // Rule WORTH-2. A joint draws up to 90 m of 100 m, a coil has 110 m. At 2.5 m/s it takes 225 m of coil to have
        // them back, and
        // at twice that still 128 m; at 50 m/s 93 m do.
        savesAll(
                line().coils(PlainLine.coil(110))
                        .capacity(100)
                        .join(Distribution.uniform(58, 60))
                        .build(),
                Cause.ACCUMULATOR_NOT_FULL);
    }

    @Test
    void aSingleReplicationHasNoInterval() {
        // Rule WORTH-1. Every third of 60 coil changes stops, and preparing is random.
        StudyResult result = result(
                line().prepare(PlainLine.element(Distribution.uniform(10, 20)))
                        .join(50)
                        .join(PlainLine.every(3, 80))
                        .build(),
                1);
        assertThat(result.verdict().chance()).isTrue();
        assertThat(worths(result))
                .singleElement()
                .satisfies(worth -> assertThat(
                                List.of(worth.stops(), worth.shareRunThrough(), worth.lostTime(), worth.goodOutput()))
                        .allSatisfy(mean -> assertThat(mean.interval()).isEmpty()));
    }

    @Test
    void noMoreIsSavedThanThereIs() {
        // Rule WORTH-1. 20 of 60 coil changes stop in each of 10 replications. Three of all 600 may turn out otherwise,
        // but
        // only to save less: all stops are saved, and how many there are is certain to 0.1 %.
        StudyResult result = result(line().prepare(PlainLine.element(Distribution.uniform(10, 20)))
                .join(50)
                .join(PlainLine.every(3, 80))
                .build());
        assertThat(worths(result)).singleElement().satisfies(worth -> {
            double stops = worth.stops().mean();
            Interval interval = worth.stops().interval().orElseThrow();
            assertThat(interval.low()).isCloseTo(stops * (1 - 3 * 0.005), within(1e-3 * stops));
            assertThat(interval.high()).isCloseTo(stops, within(1e-3 * stops));
        });
    }

    @Test
    void noMoreIsAddedThanCoilChangesAreLeft() {
        // Rule WORTH-1. Joints of 50 to 52 s draw up to 78 m, and the entry, which speeds up at 0.1 m/s2, 11 m more of
        // the
        // full 100 m. A coil of 110 m is through after 47 s, in which the process takes 70 m: 40 m come back. The first
        // of
        // 60 coil changes runs through, all others stop. No entry is so fast that it would help: nothing is saved.
        // Three of
        // 120 coil changes may turn out otherwise, 2.5 %, but only one in 60 is left that could stop too.
        StudyResult result = result(
                line().coils(PlainLine.coil(110))
                        .capacity(100)
                        .entry(50, 0.1, PlainLine.AT_ONCE)
                        .join(Distribution.uniform(50, 52))
                        .build(),
                2);
        double changes = average(result, one -> one.changes() / one.duration());
        assertThat(result.verdict().shareRunThrough().mean()).isCloseTo(1 / 60.0, within(1e-12));
        assertThat(worths(result)).singleElement().satisfies(worth -> {
            assertThat(worth.reason().cause()).isEqualTo(Cause.ACCUMULATOR_NOT_FULL);
            assertThat(worth.stops().mean()).isZero();
            Interval stops = worth.stops().interval().orElseThrow();
            assertThat(stops.low()).isCloseTo(-changes / 60, within(1e-3 * changes / 60));
            assertThat(stops.high()).isCloseTo(0.025 * changes, within(1e-3 * changes / 60));
        });
    }

    @Test
    void fiveCausesAreTriedThoseOfMostCoilChangesFirst() {
        // Rule WORTH-4. 50 s, and 80 s more for each of six elements at every 3rd, 4th, ... coil change: 130 s of 100
        // s. Of several at
        // once the first of the list is the cause: of 60 changes 20, 10, 8, 4, 6 and 2 are left for them.
        PlainLine six = line().join(50);
        for (int every : new int[] {3, 4, 5, 6, 7, 11}) {
            six.join(PlainLine.every(every, 80));
        }
        StudyResult result = result(six.join(Distribution.uniform(0, 1)).build());
        List<Long> changes = result.verdict().namedCauses().stream()
                .map(NamedCauses.Count::changes)
                .toList();
        assertThat(changes).hasSizeGreaterThan(5);
        assertThat(worths(result))
                .extracting(CauseWorth::reason)
                .containsExactlyElementsOf(result.verdict().namedCauses().stream()
                        .sorted(Comparator.comparingLong(NamedCauses.Count::changes)
                                .reversed())
                        .limit(5)
                        .map(count -> count.reason().removed())
                        .toList());
    }

    @Test
    void aUsualJointTooLongIsNothingToRemove_norIsWhereNothingFails() {
        // Rule WORTH-3.
        assertThat(worths(result(line().join(120).build()))).isEmpty();
        assertThat(worths(result(line().join(60).build()))).isEmpty();
    }

    @Test
    void threadsChangeNothing() {
        StudyResult result =
                result(line().join(70).reject(new Reject.Chance(0.1)).build());
        assertThat(new WorthStudy(result).run(1, StudyListener.NONE))
                .isEqualTo(new WorthStudy(result).run(3, StudyListener.NONE));
    }
}
