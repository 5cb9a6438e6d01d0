package runthrough.study.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Accumulator;
import runthrough.plant.Alternative;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;
import runthrough.study.cause.Cause;
import runthrough.study.cause.Reason;
import runthrough.study.comparison.Compared.Figure;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Difference.Significance;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Pairs;

/**
 * Alternatives of the plain line of {@link PlainLine}: coils of 600 m, entry 2.5 m/s, process 1.5 m/s, speeds change at once.
 * A coil takes 400 s. Metres of accumulator bear metres/1.5 seconds of joint cycle time.
 */
class ComparisonStudyTest {
    private static final int REPLICATIONS = 20;

    private static Alternative alternative(String name, Line line, RunPlan plan) {
        return new Alternative(
                name, new SimulationRequest("Line (invented)", List.of(), line, plan, UnitSystem.METRIC));
    }

    private static Alternative alternative(String name, Line line) {
        return alternative(name, line, plan(1, 50));
    }

    private static RunPlan plan(long seed, int changes) {
        return new RunPlan(new Extent.Changes(changes), 0, REPLICATIONS, seed, 0.9, 1000 * 3600.0);
    }

    private static Comparison compare(int threads, Alternative today, Alternative... others) {
        return new ComparisonStudy(today, List.of(others), 0.9).run(threads, StudyListener.NONE);
    }

    /** Joints from 20 to 70 s, uniform: 75 m bear 50 s, three of five; 1.5 m more bear a second more, 2 % more of them. */
    private static Line random(double capacity) {
        return new PlainLine()
                .capacity(capacity)
                .join(Distribution.uniform(20, 70))
                .build();
    }

    @Test
    void whereNothingIsRandomDifferencesAreThoseOfTheHandCalculation() {
        RunPlan plan = plan(1, 10);
        Line rethread = new PlainLine().rethread(Distribution.constant(600)).build();
        Line without = new PlainLine().withoutAccumulator().join(60).build();
        Line with = new PlainLine().join(60).build();
        Comparison comparison = compare(
                1,
                alternative("rethread", rethread, plan),
                alternative("join without", without, plan),
                alternative("join with", with, plan));

        assertThat(comparison.chance()).isFalse();
        assertThat(comparison.replications()).isEqualTo(1);
        // Up to the eleventh change 11 coils of 400 s; 10 changes of 600 s or of 60 s between; or nothing but strip at
        // 1.5 m/s.
        double rethreading = 6600 / (4400 + 6000.0);
        double joining = 6600 / (4400 + 600.0);
        Compared today = comparison.today();
        assertThat(today.figure(ComparisonMeasure.OUTPUT_LENGTH).value().mean()).isCloseTo(rethreading, within(1e-12));
        assertThat(today.figure(ComparisonMeasure.OUTPUT_LENGTH).difference()).isEmpty();
        assertThat(today.figure(ComparisonMeasure.LOST_TIME).value().mean())
                .isCloseTo(6000 / 10_400.0 * 28_800, within(1e-8));
        assertThat(today.figure(ComparisonMeasure.STOPS).value().mean())
                .isCloseTo(10 / 10_400.0 * 28_800, within(1e-9));
        assertThat(today.answer()).isEqualTo(TargetStatus.MISSES);
        assertThat(today.mainCause().map(Reason::cause)).contains(Cause.PRACTICE);
        // Two people for 600 s.
        assertThat(today.figure(ComparisonMeasure.CREW_TIME_PER_CHANGE).value().mean())
                .isCloseTo(1200, within(1e-9));

        Compared second = comparison.others().get(0);
        assertExact(second, ComparisonMeasure.OUTPUT_LENGTH, joining - rethreading);
        assertExact(second, ComparisonMeasure.LOST_TIME, (600 / 5000.0 - 6000 / 10_400.0) * 28_800);
        assertExact(second, ComparisonMeasure.CREW_TIME_PER_CHANGE, 120 - 1200);
        assertExact(second, ComparisonMeasure.CREW_TIME, (1200 / 5000.0 - 12_000 / 10_400.0) * 28_800);
        // Two people are paid for 8 h of every shift, however long a joint takes.
        assertThat(second.figure(ComparisonMeasure.PAID_TIME).value().mean()).isCloseTo(2 * 28_800, within(1e-8));
        assertThat(difference(second, ComparisonMeasure.PAID_TIME).mean()).isCloseTo(0, within(1e-8));
        assertExact(second, ComparisonMeasure.JOINT_CYCLE_TIME, -540);
        assertThat(difference(second, ComparisonMeasure.RUN_THROUGH).significance())
                .isEqualTo(Significance.NONE);

        Compared third = comparison.others().get(1);
        assertThat(third.answer()).isEqualTo(TargetStatus.MEETS);
        assertExact(third, ComparisonMeasure.RUN_THROUGH, 1);
        assertExact(third, ComparisonMeasure.OUTPUT_LENGTH, 1.5 - rethreading);
        // 0.002 m by 1 m by 7850 kg/m3 weigh 15.7 kg a metre; the year has 1000 h.
        assertThat(third.perYear(ComparisonMeasure.OUTPUT_MASS)
                        .difference()
                        .orElseThrow()
                        .mean())
                .isCloseTo((1.5 - rethreading) * 15.7 * 3.6e6, within(1e-3));
        assertThat(third.perYear(ComparisonMeasure.LOST_TIME).value().mean()).isZero();
        assertThat(today.perYear(ComparisonMeasure.LOST_TIME).value().mean())
                .isCloseTo(6000 / 10_400.0 * 3.6e6, within(1e-6));
    }

    private static void assertExact(Compared compared, ComparisonMeasure measure, double expected) {
        Difference difference = difference(compared, measure);
        assertThat(difference.mean()).as(measure.name()).isCloseTo(expected, within(1e-8));
        assertThat(difference.interval()).as(measure.name()).isEmpty();
        assertThat(difference.significance()).as(measure.name()).isEqualTo(Significance.SIGNIFICANT);
    }

    private static Difference difference(Compared compared, ComparisonMeasure measure) {
        return compared.figure(measure).difference().orElseThrow();
    }

    @Test
    void commonRandomNumbersMakeDifferencesFarSharperThanNumbersOfTheirOwn() {
        Difference paired = difference(
                compare(2, alternative("75 m", random(75)), alternative("78 m", random(78)))
                        .others()
                        .get(0),
                ComparisonMeasure.LOST_TIME);
        Evaluator evaluator = new Evaluator(2, () -> false);
        Evaluation here = evaluator.evaluate(random(78), plan(2, 50));
        Evaluation there = evaluator.evaluate(random(75), plan(1, 50));
        Difference apart = Pairs.of(1)
                .means(
                        here.each(totals -> ComparisonMeasure.LOST_TIME.of(totals)),
                        there.each(totals -> ComparisonMeasure.LOST_TIME.of(totals)));

        assertThat(paired.significance()).isEqualTo(Significance.SIGNIFICANT);
        assertThat(paired.mean()).isNegative();
        assertThat(halfWidth(paired)).isLessThan(0.25 * halfWidth(apart));
    }

    private static double halfWidth(Difference difference) {
        return difference.interval().map(Interval::halfWidth).orElseThrow();
    }

    @Test
    void ofThreeHundredIntervalsAbout95PercentHoldTheTrueDifferenceOfShares() {
        // 4 % more run through with 3 m more. Shares of 20 replications of 20 changes each.
        Evaluator evaluator = new Evaluator(2, () -> false);
        int held = 0;
        for (int seed = 1; seed <= 300; seed++) {
            Evaluation here = evaluator.evaluate(random(78), plan(seed, 20));
            Evaluation there = evaluator.evaluate(random(75), plan(seed, 20));
            held += Pairs.of(1)
                            .shares(here.successes(), there.successes())
                            .interval()
                            .orElseThrow()
                            .contains(0.04)
                    ? 1
                    : 0;
        }
        // Three binomial standard errors; square and add, which takes over below ten changes, is a little too wide.
        assertThat(held / 300.0).isBetween(0.95 - 3 * Math.sqrt(0.95 * 0.05 / 300), 1.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void threadsChangeNothing(int threads) {
        Alternative[] others = {alternative("76.5 m", random(76.5)), alternative("90 m", random(90))};

        assertThat(compare(threads, alternative("75 m", random(75)), others))
                .isEqualTo(compare(1, alternative("75 m", random(75)), others));
    }

    @Test
    void whatMakesNoDifferenceIsCalledNone() {
        // Nothing is prepared, so that a third uncoiler has nothing to do.
        Line more = new PlainLine()
                .capacity(75)
                .join(Distribution.uniform(20, 70))
                .uncoilers(3, 0)
                .build();
        Compared third = compare(1, alternative("two", random(75)), alternative("three", more))
                .others()
                .get(0);

        assertThat(ComparisonMeasure.values())
                .allSatisfy(measure ->
                        assertThat(difference(third, measure).significance()).isEqualTo(Significance.NONE));
    }

    @Test
    void theMoreAreComparedTheSurerEachMustBe() {
        Comparison comparison = compare(
                1,
                alternative("75 m", random(75)),
                alternative("76 m", random(76)),
                alternative("78 m", random(78)),
                alternative("200 m", random(200)));

        assertThat(comparison.confidence()).isCloseTo(1 - 0.05 / 3, within(1e-15));
        assertThat(comparison.all())
                .extracting(compared -> compared.alternative().name())
                .containsExactly("75 m", "76 m", "78 m", "200 m");
        assertThat(difference(comparison.others().get(2), ComparisonMeasure.RUN_THROUGH)
                        .significance())
                .isEqualTo(Significance.SIGNIFICANT);
    }

    @Test
    void anExactOneIsHeldAgainstEveryReplicationOfTheOther() {
        Line exact = new PlainLine().capacity(75).join(45).build();
        Comparison comparison = compare(1, alternative("exact", exact), alternative("random", random(75)));
        Figure joint = comparison.others().get(0).figure(ComparisonMeasure.JOINT_CYCLE_TIME);
        Difference difference = joint.difference().orElseThrow();

        assertThat(comparison.chance()).isTrue();
        assertThat(comparison.replications()).isEqualTo(REPLICATIONS);
        assertThat(difference.pairs()).isEqualTo(REPLICATIONS);
        assertThat(difference.mean()).isCloseTo(joint.value().mean() - 45, within(1e-9));
        assertThat(halfWidth(difference)).isCloseTo(joint.value().halfWidth().orElseThrow(), within(1e-9));
    }

    @Test
    void runsOfOtherLengthAreComparedPerTimeAndPerCoilChange() {
        Line line = new PlainLine().join(60).build();
        RunPlan timed = new RunPlan(new Extent.Time(28_800), 0, REPLICATIONS, 1, 0.9, 1000 * 3600.0);
        Compared other = compare(1, alternative("by changes", line, plan(1, 10)), alternative("by time", line, timed))
                .others()
                .get(0);

        assertThat(difference(other, ComparisonMeasure.OUTPUT_LENGTH).significance())
                .isEqualTo(Significance.NONE);
        assertThat(difference(other, ComparisonMeasure.JOINT_CYCLE_TIME).significance())
                .isEqualTo(Significance.NONE);
    }

    @Test
    void waitingForTheNextCoilIsNotTimeAtTheJoint() {
        // One uncoiler: the next coil is prepared from T1 on for 100 s, then 60 s of join work by one person.
        Line waits =
                new PlainLine().uncoilers(1, 0).crew(1).prepare(100).join(60).build();
        Line two = new PlainLine().crew(1).prepare(100).join(60).build();
        Comparison comparison = compare(1, alternative("one", waits), alternative("two", two));

        assertThat(comparison
                        .today()
                        .figure(ComparisonMeasure.JOINT_CYCLE_TIME)
                        .value()
                        .mean())
                .isCloseTo(160, within(1e-9));
        assertThat(comparison
                        .today()
                        .figure(ComparisonMeasure.CREW_TIME_PER_CHANGE)
                        .value()
                        .mean())
                .isCloseTo(60, within(1e-9));
        assertThat(difference(comparison.others().get(0), ComparisonMeasure.CREW_TIME_PER_CHANGE)
                        .significance())
                .isEqualTo(Significance.NONE);
        assertExact(comparison.others().get(0), ComparisonMeasure.JOINT_CYCLE_TIME, -100);
    }

    @Test
    void betterIsMoreOfSomeAndLessOfOthers() {
        assertThat(ComparisonMeasure.OUTPUT_MASS.isGain(1)).isTrue();
        assertThat(ComparisonMeasure.OUTPUT_MASS.isGain(-1)).isFalse();
        assertThat(ComparisonMeasure.LOST_TIME.isGain(-1)).isTrue();
        assertThat(ComparisonMeasure.LOST_TIME.isGain(0)).isFalse();
        assertThat(ComparisonMeasure.UTILISATION.perYear(1)).isEmpty();
    }

    @Test
    void whatCannotBeComparedIsRefused() {
        Alternative today = alternative("75 m", random(75));
        assertThatThrownBy(() -> new ComparisonStudy(today, List.of(), 0.9))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("nothing to compare 75 m with");
        assertThatThrownBy(() -> new ComparisonStudy(today, List.of(today), 0))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("target = 0 %");
        Alternative otherSeed = alternative("other seed", random(75), plan(2, 50));
        assertThatThrownBy(() -> new ComparisonStudy(today, List.of(otherSeed), 0.9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("other seed has another seed");
    }

    @Test
    void aReplicationThatCannotGoOnNamesItsAlternative() {
        Line tooShort = new PlainLine()
                .coils(new Coil(
                                "short",
                                new Coil.Strip(0.002, 1, 7850),
                                new CoilSize.ByLength(Distribution.uniform(1, 600)))
                        .withCrops(5, 5))
                .join(60)
                .build();

        Alternative today = alternative("75 m", random(75));
        Alternative shortCoils = alternative("short coils", tooShort);

        assertThatThrownBy(() -> compare(1, today, shortCoils))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("alternative \"short coils\": replication");
        // Beside another it is left out; one difference alone is judged, so at 95 %.
        Comparison comparison = compare(1, today, shortCoils, alternative("76 m", random(76)));
        assertThat(comparison.others())
                .extracting(one -> one.alternative().name())
                .containsExactly("76 m");
        assertThat(comparison.confidence()).isCloseTo(0.95, within(1e-12));
        assertThat(comparison.notRun()).singleElement().satisfies(one -> {
            assertThat(one.name()).isEqualTo("short coils");
            assertThat(one.why()).startsWith("replication").doesNotEndWith(".");
        });
    }

    @Test
    void itCanBeGivenUp() {
        StudyListener stop = new StudyListener() {
            @Override
            public boolean cancelled() {
                return true;
            }
        };
        ComparisonStudy study = new ComparisonStudy(
                alternative("75 m", random(75)),
                List.of(alternative("76 m", random(76).with(Accumulator.ofCapacity(76)))),
                0.9);

        assertThatThrownBy(() -> study.run(1, stop)).isInstanceOf(CancellationException.class);
    }
}
