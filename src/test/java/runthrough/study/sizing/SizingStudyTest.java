package runthrough.study.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Accumulator;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Sizing.Answer;
import runthrough.study.sizing.Sizing.Point;
import runthrough.study.statistics.RelativeHalfWidth;

/**
 * Sizes of lines for which they are known. The plain line of {@link PlainLine}: coils of 600 m, entry 2.5 m/s, process 1.5
 * m/s, speeds change at once.
 */
class SizingStudyTest {
    private static final SizingOptions ROUGH = new SizingOptions(0.9, 0.5, 1);

    static SimulationRequest request(Line line, int changes, int replications, long seed) {
        return new SimulationRequest(
                "Line (invented)",
                List.of(),
                line,
                new RunPlan(new RunPlan.Extent.Changes(changes), 0, replications, seed, 0.9),
                UnitSystem.METRIC);
    }

    static Sizing size(SimulationRequest request, SizingOptions options) {
        return new SizingStudy(request, options).run(2, StudyListener.NONE);
    }

    static Sizing size(Line line, double target) {
        return size(request(line, 50, 1, 1), new SizingOptions(target, 0.01, 1));
    }

    private static double value(Sizing sizing) {
        return sizing.capacity().flatMap(c -> boxed(c.value())).orElseThrow();
    }

    private static java.util.Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? java.util.Optional.of(value.getAsDouble()) : java.util.Optional.empty();
    }

    @Test
    void aCapacityWithWhichTheRunCannotGoOn_isNotEnoughAndTheStudyGoesOn() {
        // Rule PROC-11. Needed: 1 m/s for 100 s, ramps 1/(2 x 0.4) + 1/(2 x 0.03), stop 1/(2 x 1): 118.417 m. Tried
        // down to 0.9 of it:
        // 106.6 m restart 10.66 m above the stop level, and the entry takes (1 - 0.05)^2/(2 x 0.03) = 15 m to come up
        // with the
        // process, so that it stops again, some 30 m later, 1000 times in a coil of 60 km.
        Line line = new PlainLine()
                .coils(PlainLine.coil(60_000))
                .capacity(300)
                .fillRate(0.05)
                .entry(1.2, 0.03, 0.4)
                .process(1, 1, 1)
                .join(100)
                .build();
        double exact = 100 + 1 / 0.8 + 1 / 0.06 + 0.5;

        Sizing sizing = size(request(line, 3, 1, 1), new SizingOptions(0.995, 0.01, 1));

        assertThat(value(sizing)).isBetween(exact * (1 - 1e-9), exact * (1 + 1e-4));
        assertThat(sizing.curve().get(0).share()).isEmpty();
        assertThat(sizing.present().orElseThrow().share().orElseThrow().mean()).isEqualTo(1);
    }

    @Test
    void withoutChance_theCapacityIsTheClosedForm() {
        // 1.5 m/s for 60 s; ramps of the entry 1.5^2/(2 * 0.4) + 1.5^2/(2 * 0.3); reserve 3 m; stop 1.5^2/(2 * 0.25).
        Line line = new PlainLine()
                .entry(2.5, 0.3, 0.4)
                .process(1.5, 0.2, 0.25)
                .reserve(3)
                .capacity(120)
                .tail(10)
                .join(50)
                .build();
        double exact = 90 + 2.25 / 0.8 + 2.25 / 0.6 + 3 + 2.25 / 0.5;

        Sizing sizing = size(line, 0.995);
        assertThat(sizing.answer()).isEqualTo(Answer.FOUND);
        assertThat(sizing.chance()).isFalse();
        assertThat(sizing.replications()).isEqualTo(1);
        assertThat(value(sizing)).isBetween(exact * (1 - 1e-9), exact * (1 + 1e-4));
        Crossing capacity = sizing.capacity().orElseThrow();
        assertThat(capacity.missed().orElseThrow()).isBetween(exact * (1 - 1.01e-4), exact);
        assertThat(capacity.sure()).isEqualTo(capacity.value());
        assertThat(capacity.possible()).isEqualTo(capacity.value());
        assertThat(sizing.interval()).contains(RelativeHalfWidth.exact(0.01, 1));
        assertThat(sizing.handCalculation()
                        .storage()
                        .orElseThrow()
                        .atRatedSpeed()
                        .capacity()
                        .needed())
                .isCloseTo(exact, within(1e-9));
        assertThat(sizing.noneEnough()).isEmpty();
        assertThat(sizing.fall()).isZero();
    }

    @Test
    void withCreep_theCapacityIsTheClosedForm() {
        // Creeping the last 6 m at 0.5 m/s adds (1.5 - 0.5) * (6 - 0.5^2/0.8) / 0.5.
        Line line = new PlainLine()
                .entry(2.5, 0.3, 0.4)
                .process(1.5, 0.2, 0.25)
                .creep(0.5, 6)
                .join(60)
                .build();
        double exact = 90 + 2.25 / 0.8 + 2.25 / 0.6 + 2.25 / 0.5 + (6 - 0.25 / 0.8) / 0.5;

        assertThat(value(size(line, 0.995))).isBetween(exact * (1 - 1e-9), exact * (1 + 1e-4));
    }

    /** Joints of 60 s at the tails of coils that run at 1 m/s and at 1.5 m/s in turn: 60 m and 90 m. */
    @Test
    void whereCoilsHaveSpeedsOfTheirOwn_theFastestCounts() {
        Line line = new PlainLine()
                .coils(PlainLine.coilAt(600, 1), PlainLine.coilAt(600, 1.5))
                .join(60)
                .capacity(75)
                .build();

        Sizing sizing = size(line, 0.995);

        assertThat(value(sizing)).isBetween(90 * (1 - 1e-9), 90 * (1 + 1e-4));
        assertThat(sizing.present().orElseThrow().share().orElseThrow().mean()).isEqualTo(0.5);
    }

    @Test
    void whereTheProcessSlows_theLevelAtWhichItDoesCounts() {
        // Not to be slowed at 40 m: 90 m and 40 m.
        Line line = new PlainLine().slowing(0.5, 40, 60).join(60).build();

        assertThat(value(size(line, 0.995))).isBetween(130 * (1 - 1e-9), 130 * (1 + 1e-4));
    }

    @Test
    void whereTheProcessSlows_theTargetWithoutAStopHasASizeOfItsOwn() {
        // From 15 m on at 0.5 m/s: (C - 15)/1.5 + 15/0.5 = 60 s gives 60 m without a stop; 90 m and 15 m without
        // slowing.
        Line line = new PlainLine().slowing(0.5, 15, 30).join(60).capacity(200).build();
        SimulationRequest plain = request(line, 50, 1, 1);
        SimulationRequest both = new SimulationRequest(
                plain.title(),
                List.of(),
                line,
                plain.run().withTargetWithoutStop(OptionalDouble.of(0.99)),
                UnitSystem.METRIC);
        Sizing sizing = size(both, new SizingOptions(0.99, 0.01, 1));

        assertThat(value(sizing)).isBetween(105 * (1 - 1e-9), 105 * (1 + 1e-4));
        assertThat(sizing.withoutStop().orElseThrow().answer().orElseThrow())
                .isBetween(60 * (1 - 1e-9), 60 * (1 + 1e-3));
        assertThat(sizing.handCalculation()
                        .storage()
                        .orElseThrow()
                        .withoutStop()
                        .orElseThrow()
                        .capacity()
                        .orElseThrow()
                        .needed())
                .isCloseTo(60, within(1e-9));
        assertThat(size(plain, new SizingOptions(0.99, 0.01, 1)).withoutStop()).isEmpty();
    }

    @Test
    void theSizeIsSaidByWhatIsAdjustable() {
        Line line = new PlainLine().join(60).build();
        StorageForm strands = new StorageForm.Strands(6, 30, 1, 1, false);
        Sizing sizing = size(line.with(Accumulator.of(strands)), 0.9);

        // 90 m over six strands.
        Size smallest = sizing.smallest().orElseThrow();
        assertThat(smallest.form().adjustable().orElseThrow().measure()).isEqualTo(StorageForm.Measure.STROKE);
        assertThat(smallest.form().adjustable().orElseThrow().metres()).isCloseTo(15, within(15 * 1e-4));
        assertThat(smallest.capacity()).isEqualTo(value(sizing));
        assertThat(sizing.present().orElseThrow().size().form()).isEqualTo(strands);
        assertThat(sizing.present().orElseThrow().envelope()).isEqualTo(1);
    }

    @Test
    void alwaysRefilledRandomJoints_theIntervalHoldsTheQuantile() {
        // The accumulator is always full again, so a change runs through if 1.5 m/s for the joint cycle time is no more
        // than
        // it
        // holds: 99 % of joints do with 1.5 times their 99 % quantile.
        Distribution joint = Distribution.lognormal(60, 12);
        double exact = 1.5 * joint.quantile(0.99);
        Line line = new PlainLine().coils(PlainLine.coil(2000)).join(joint).build();
        Sizing sizing = size(request(line, 200, 20, 3), new SizingOptions(0.99, 0.02, 400));

        Crossing capacity = sizing.capacity().orElseThrow();
        assertThat(exact)
                .isBetween(capacity.low().orElseThrow(), capacity.high().orElseThrow());
        assertThat(value(sizing)).isCloseTo(exact, within(0.02 * exact));
        RelativeHalfWidth halfWidth = sizing.interval().orElseThrow();
        assertThat(halfWidth.reached()).isTrue();
        assertThat(halfWidth.halfWidth().orElseThrow()).isLessThanOrEqualTo(0.02);
        assertThat(halfWidth.replications()).isEqualTo(sizing.replications()).isGreaterThan(20);
        assertThat(sizing.sure().orElseThrow().capacity())
                .isEqualTo(capacity.sure().orElseThrow());
        assertThat(sizing.possible().orElseThrow().capacity())
                .isEqualTo(capacity.possible().orElseThrow());
    }

    @Test
    void ofManyStudies95PercentOfIntervalsHoldTheQuantile() {
        Distribution joint = Distribution.lognormal(60, 12);
        double exact = 1.5 * joint.quantile(0.9);
        Line line = new PlainLine().coils(PlainLine.coil(2000)).join(joint).build();
        int studies = 120;
        int held = 0;
        for (int seed = 1; seed <= studies; seed++) {
            Crossing capacity =
                    size(request(line, 50, 10, seed), ROUGH).capacity().orElseThrow();
            held += capacity.low().orElseThrow() <= exact
                            && exact <= capacity.high().orElseThrow()
                    ? 1
                    : 0;
        }
        // 114 of 120 are to be expected, with a standard error of 2.4; the ends are found to 10 % of the half-width
        // asked for.
        assertThat(held).isBetween(106, 120);
    }

    @Test
    void moreCapacityNeverReadsAsWorse() {
        // Often not full again: coils of 240 m, of which the entry gains 96 m, and joints that take 90 m on average.
        Line line = new PlainLine()
                .coils(PlainLine.coil(240))
                .join(Distribution.lognormal(60, 20))
                .restart(Double.NaN, Distribution.lognormal(30, 20))
                .build();
        Sizing sizing = size(request(line, 100, 10, 1), ROUGH);

        assertThat(sizing.curve())
                .hasSizeGreaterThan(8)
                .extracting(Point::envelope)
                .isSorted();
        assertThat(sizing.curve())
                .extracting(point -> point.size().capacity())
                .isSorted()
                .doesNotHaveDuplicates();
        assertThat(sizing.curve())
                .allSatisfy(point -> assertThat(point.share()).isPresent())
                .allSatisfy(point -> assertThat(point.envelope())
                        .isGreaterThanOrEqualTo(point.share().orElseThrow().mean() - 1e-12));
        double capacity = value(sizing);
        assertThat(sizing.curve())
                .filteredOn(point -> point.size().capacity() >= capacity)
                .allSatisfy(point -> assertThat(point.envelope()).isGreaterThanOrEqualTo(0.9));
    }

    @Test
    void replicationsThatNeedNotBeRun_areWhatTheyWouldHaveBeen() {
        Line line = new PlainLine()
                .coils(PlainLine.cropped(260, 1, 2))
                .entry(2.5, 0.3, 0.4)
                .process(1.5, 0.2, 0.25)
                .downtime(Distribution.exponential(900), Distribution.exponential(60))
                .reject(new Reject.Chance(0.05))
                .prepare(60)
                .join(Distribution.lognormal(40, 10))
                .build();
        RunPlan plan = request(line, 20, 30, 5).run();
        var evaluator = new runthrough.study.Evaluator(2, () -> false);
        StripDemand needs = new StripDemand(line.with(line.accumulator().resizedTo(1e5)));
        needs.extend(evaluator, plan);
        int known = 0;
        for (double capacity : new double[] {90, 130, 170, 210}) {
            Line variant = line.with(line.accumulator().resizedTo(capacity));
            var run = evaluator.evaluate(variant, plan);
            for (int i = 0; i < 30; i++) {
                var tally = needs.known(i, capacity);
                var truth = run.replication(i).orElseThrow();
                tally.ifPresent(said -> {
                    assertThat(said.totals())
                            .usingRecursiveComparison()
                            .withComparatorForType(SizingStudyTest::nearly, Double.class)
                            .isEqualTo(truth.totals());
                });
                known += tally.isPresent() ? 1 : 0;
                // Said for every replication in which all run through: 10^-6 above the need rounds no matter here.
                assertThat(tally.isPresent()).isEqualTo(truth.totals().starvedStops() == 0);
            }
        }
        assertThat(known).isBetween(20, 100);
    }

    private static int nearly(double a, double b) {
        return Math.abs(a - b) <= 1e-9 * Math.max(1e5, Math.abs(a)) ? 0 : Double.compare(a, b);
    }

    @Test
    void withOneUncoilerALargeEnoughAccumulatorStillDoes() {
        // 100 s of waiting and 60 s of joint take 240 m, which a coil just gains; 90 s do with 225 m.
        Line line = new PlainLine().uncoilers(1, 0).prepare(90).join(60).build();

        assertThat(value(size(line, 0.9))).isBetween(225 * (1 - 1e-9), 225 * (1 + 1e-4));
    }

    @Test
    void aTargetBeyondTheRunHasNoUpperEnd_andSaysHowManyWouldDo() {
        Line line = new PlainLine()
                .coils(PlainLine.coil(2000))
                .join(Distribution.lognormal(60, 12))
                .build();
        Sizing sizing = size(request(line, 100, 5, 1), new SizingOptions(0.9999, 0.01, 10));

        assertThat(sizing.replications()).isEqualTo(10);
        assertThat(sizing.smallest()).isPresent();
        assertThat(sizing.sure()).isEmpty();
        assertThat(sizing.capacity().orElseThrow().high()).isEmpty();
        assertThat(sizing.interval().orElseThrow().reached()).isFalse();
        assertThat(sizing.interval().orElseThrow().halfWidth()).isEmpty();
        // Wilson: n of n show 0.9999 when n/(n + 3.84) >= 0.9999.
        assertThat(sizing.resolution().leastToShow()).contains(38_411L);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void threadsChangeNothing(int threads) {
        Line line = new PlainLine()
                .coils(PlainLine.coil(400))
                .join(Distribution.lognormal(60, 20))
                .build();
        SizingStudy study = new SizingStudy(request(line, 50, 10, 1), new SizingOptions(0.95, 0.03, 50));

        Sizing alone = study.run(1, StudyListener.NONE);
        Sizing together = study.run(threads, StudyListener.NONE);
        assertThat(together.capacity()).isEqualTo(alone.capacity());
        assertThat(together.curve()).isEqualTo(alone.curve());
        assertThat(together.interval()).isEqualTo(alone.interval());
        assertThat(together.present()).isEqualTo(alone.present());
    }

    @Test
    void oneStripHasNothingToSize() {
        Line line = new PlainLine().join(60).withoutAccumulator().build();
        Sizing sizing = size(line, 0.9);

        assertThat(sizing.answer()).isEqualTo(Answer.NOT_APPLICABLE);
        assertThat(sizing.capacity()).isEmpty();
        assertThat(sizing.present()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1, 1.5, Double.NaN})
    void aTargetOfNothingOrAllIsRefused(double target) {
        assertThatThrownBy(() -> new SizingOptions(target, 0.01, 10))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("target = ")
                .hasMessageContaining("must be more than 0 % and less than 100 %");
    }

    @Test
    void aPrecisionOrLimitThatMakesNoSenseIsRefused() {
        assertThatThrownBy(() -> new SizingOptions(0.9, 0, 10))
                .hasMessage("precision = 0 %; must be more than 0 % and less than 100 %. Give the half-width of the"
                        + " interval as a part of the capacity, such as 1 %.");
        assertThatThrownBy(() -> new SizingOptions(0.9, 0.01, 0))
                .hasMessageStartingWith("replications at most = 0; must be 1 or more.");
    }

    @Test
    void progressEndsWhenTheStudyDoes() {
        List<Integer> seen = new java.util.ArrayList<>();
        Line line = new PlainLine().join(60).build();
        new SizingStudy(request(line, 50, 1, 1), ROUGH).run(1, new StudyListener() {
            @Override
            public void progress(int done, int total) {
                seen.add(total - done);
            }
        });

        assertThat(seen)
                .isSortedAccordingTo(java.util.Comparator.reverseOrder())
                .endsWith(0);
    }
}
