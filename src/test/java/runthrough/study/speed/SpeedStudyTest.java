package runthrough.study.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.lever.Lever;
import runthrough.study.limits.LimitsStudy;
import runthrough.study.search.Crossing;
import runthrough.study.speed.SpeedCurve.Where;

/**
 * Output against speed. The plain line of {@link PlainLine}: coils of 600 m, entry 2.5 m/s, process 1.5 m/s, speeds change
 * at once. With 100 m of accumulator and a joint of 60 s it runs through up to 100/60 = 1.667 m/s.
 */
class SpeedStudyTest {
    private static final double FASTEST = 100 / 60.0;

    /** A starved process stands for a minute more. */
    private static final Line TUNED = new PlainLine()
            .capacity(100)
            .restart(Double.NaN, Distribution.constant(60))
            .join(60)
            .build();

    private static final Line RANDOM = new PlainLine()
            .capacity(100)
            .restart(Double.NaN, Distribution.constant(300))
            .join(Distribution.lognormal(45, 10))
            .build();

    private static SimulationRequest request(Line line, int changes, int replications) {
        return new SimulationRequest(
                "Line (invented)",
                List.of(),
                line,
                new RunPlan(new RunPlan.Extent.Changes(changes), 0, replications, 5, 0.9),
                UnitSystem.METRIC);
    }

    private static SpeedCurve curve(SimulationRequest request, double from, double to, int points) {
        return new SpeedStudy(request, 0.9, new SpeedRange(from, to, points)).run(2, StudyListener.NONE);
    }

    @Test
    void aSpeedNextToThePresentOneGivesWayToIt() {
        // Steps of 0.05 m/s from 1.2 to 1.9: 1.5 is one of them. From 1.205 on 1.505 is, a tenth of a step off.
        SpeedCurve curve = curve(request(TUNED, 20, 1), 1.205, 1.905, 15);
        assertThat(curve.points()).hasSize(15).extracting(SpeedPoint::speed).contains(1.5);

        // 1.525 lies half a step off: both are shown.
        assertThat(curve(request(TUNED, 20, 1), 1.225, 1.925, 15).points()).hasSize(16);
    }

    /** Of a few coil changes the share does not fall evenly: where one begins decides what one finds. */
    @Test
    void fastestSpeedIsThatOfTheLimits_alsoInAShortRun() {
        for (int seed = 1; seed <= 20; seed++) {
            SimulationRequest request = new SimulationRequest(
                    "Line (invented)",
                    List.of(),
                    RANDOM,
                    new RunPlan(new RunPlan.Extent.Changes(25), 0, 2, seed, 0.8),
                    UnitSystem.METRIC);

            Crossing lost = new SpeedStudy(request, 0.8, new SpeedRange(0.1, 2.4, 12))
                    .run(1, StudyListener.NONE)
                    .targetLost()
                    .orElseThrow();

            Crossing limit = new LimitsStudy(request, 0.8)
                    .run(1, StudyListener.NONE)
                    .limit(Lever.What.PROCESS_SPEED)
                    .orElseThrow()
                    .crossing();
            assertThat(lost.answer()).as("seed " + seed).isEqualTo(limit.answer());
            assertThat(lost.low()).as("seed " + seed).isEqualTo(limit.low());
        }
    }

    @Test
    void aTunedLineThatIsSpedUpGivesLess_andThePeakIsWhereItStillRunsThrough() {
        SpeedCurve curve = curve(request(TUNED, 200, 1), 1.2, 1.9, 15);

        assertThat(curve.points()).hasSize(15).extracting(SpeedPoint::speed).isSorted();
        for (SpeedPoint point : curve.points()) {
            if (point.speed() < FASTEST) {
                // All that the speed promises.
                assertThat(point.output().mean()).isCloseTo(point.speed(), within(1e-9));
                assertThat(point.answer()).isEqualTo(TargetStatus.MEETS);
                assertThat(point.stopsPerShift().mean()).isZero();
            } else {
                // At least a minute is lost every 600 m: less comes out than at 1.6 m/s.
                assertThat(point.output().mean()).isLessThan(1.6);
                assertThat(point.answer()).isEqualTo(TargetStatus.MISSES);
                assertThat(point.lostTimePerShift().mean()).isGreaterThan(3600);
            }
        }
        assertThat(curve.peak().where()).isEqualTo(Where.INSIDE);
        assertThat(curve.peak().at().speed()).isBetween(FASTEST * (1 - 2e-3), FASTEST);
        assertThat(curve.peak().at().output().mean()).isCloseTo(FASTEST, within(2e-3 * FASTEST));
        assertThat(curve.peak().asGoodFrom())
                .isEqualTo(curve.peak().asGoodTo())
                .isEqualTo(curve.peak().at().speed());
        double last = curve.points().get(14).output().mean();
        assertThat(curve.peak().lossAtFastest().mean())
                .isCloseTo(curve.peak().at().output().mean() - last, within(1e-12))
                .isPositive();
        Crossing lost = curve.targetLost().orElseThrow();
        assertThat(lost.value().orElseThrow()).isBetween(FASTEST * (1 - 1.1e-4), FASTEST);
    }

    @Test
    void aRandomLineToo() {
        SpeedCurve curve = curve(request(RANDOM, 100, 20), 1.2, 2.3, 8);

        // 90 % of joints take up to the 90 % quantile.
        double exact = 100 / Distribution.lognormal(45, 10).quantile(0.9);
        Crossing lost = curve.targetLost().orElseThrow();
        assertThat(exact).isBetween(lost.low().orElseThrow(), lost.high().orElseThrow());
        // A stop costs five minutes: at 1.8 m/s, with one in eight joints too long, about as much as the speed gains.
        assertThat(curve.peak().where()).isEqualTo(Where.INSIDE);
        assertThat(curve.peak().at().output().mean())
                .isGreaterThanOrEqualTo(curve.points().stream()
                        .mapToDouble(point -> point.output().mean())
                        .max()
                        .orElseThrow());
        assertThat(curve.peak().asGoodFrom())
                .isLessThanOrEqualTo(curve.peak().at().speed());
        assertThat(curve.peak().asGoodTo())
                .isGreaterThanOrEqualTo(curve.peak().at().speed())
                .isLessThan(2.3);
        assertThat(curve.peak().lossAtFastest().interval().orElseThrow().low()).isPositive();
        // Both the share run through and the speed fall and rise as one expects, under the same random numbers.
        assertThat(curve.points())
                .extracting(point -> -point.shareRunThrough().mean())
                .isSorted();
    }

    @Test
    void aPointIsTheVerdictAtItsSpeed() {
        SpeedCurve curve = curve(request(RANDOM, 50, 10), 1.2, 1.8, 3);
        Verdict verdict = new RunThroughStudy(request(RANDOM, 50, 10))
                .run(StudyOptions.plain(), StudyListener.NONE)
                .verdict();

        // 1.5 m/s lies in the middle, and is not there twice.
        assertThat(curve.points()).extracting(SpeedPoint::speed).containsExactly(1.2, 1.5, 1.8);
        SpeedPoint present = curve.present();
        assertThat(curve.points()).contains(present);
        assertThat(present.factor()).isEqualTo(1);
        assertThat(present.shareRunThrough()).isEqualTo(verdict.shareRunThrough());
        assertThat(present.answer()).isEqualTo(verdict.answer());
        assertThat(present.output()).isEqualTo(verdict.output().speed());
        assertThat(present.massFlow()).isEqualTo(verdict.output().massFlow());
        assertThat(present.utilisation()).isEqualTo(verdict.output().utilisation());
        assertThat(present.stopsPerShift()).isEqualTo(verdict.stoppages().starvedPerShift());
        assertThat(present.lostTimePerShift()).isEqualTo(verdict.stoppages().lostTimePerShift());
    }

    @Test
    void thePresentSpeedIsAPointOfItsOwnWhereItLiesBetweenThem() {
        assertThat(curve(request(TUNED, 20, 1), 1.2, 1.6, 4).points())
                .extracting(SpeedPoint::speed)
                .hasSize(5)
                .contains(1.5);
        assertThat(curve(request(TUNED, 20, 1), 1.2, 1.4, 4).points()).hasSize(4);
    }

    @Test
    void whereFasterIsMore_thePeakIsAtTheFastEnd() {
        SpeedCurve curve = curve(request(TUNED, 50, 1), 1.2, 1.6, 5);

        assertThat(curve.peak().where()).isEqualTo(Where.AT_FASTEST);
        assertThat(curve.peak().at().speed()).isEqualTo(1.6);
        assertThat(curve.targetLost().orElseThrow().found()).isEqualTo(Crossing.Found.MET_THROUGHOUT);
    }

    @Test
    void whereFasterIsLess_thePeakIsAtTheSlowEnd() {
        // From the last speed at which it runs through, as near as it matters.
        assertThat(curve(request(TUNED, 200, 1), FASTEST - 1e-9, 1.75, 5).peak().where())
                .isEqualTo(Where.AT_SLOWEST);
    }

    @Test
    void coilsWithSpeedsOfTheirOwnAreScaledAlike() {
        Line line = new PlainLine()
                .coils(PlainLine.coilAt(600, 1), PlainLine.coilAt(600, 1.5))
                .capacity(100)
                .join(60)
                .build();
        SpeedCurve curve = curve(request(line, 100, 1), 1.2, 1.6, 5);

        assertThat(curve.scaledAlike()).isTrue();
        assertThat(curve.present().speed()).isEqualTo(1.5);
        SpeedPoint first = curve.points().get(0);
        assertThat(first.factor()).isCloseTo(0.8, within(1e-12));
        // Half of the metres at 0.8 m/s, half at 1.2 m/s.
        assertThat(first.output().mean()).isCloseTo(2 / (1 / 0.8 + 1 / 1.2), within(0.01));
    }

    @Test
    void beyondWhatTheCarriageCanGive_noSpeedIsRecommended() {
        // Rule CHECK-18. Four strands at 0.4 m/s when emptying give 1.6 m/s; without that the peak is at 100/60 = 1.667
        // m/s.
        Accumulator accumulator = TUNED.accumulator();
        Line slowCarriage = TUNED.with(new Accumulator(
                new StorageForm.Strands(4, 25, Double.POSITIVE_INFINITY, 0.4, false),
                accumulator.ownFillRateLimit(),
                accumulator.reserve(),
                accumulator.overtravelAllowance()));

        SpeedCurve curve = curve(request(slowCarriage, 200, 1), 1.2, 1.9, 8);

        assertThat(curve.to()).isCloseTo(1.6, within(1e-9)).isLessThanOrEqualTo(1.6);
        assertThat(curve.peak().where()).isEqualTo(Where.AT_FASTEST);
        assertThat(curve.peak().at().speed())
                .isEqualTo(curve.to())
                .isEqualTo(curve.peak().fastest());
        assertThat(curve.points()).extracting(SpeedPoint::speed).allMatch(speed -> speed <= 1.6);
        assertThat(curve.targetLost().orElseThrow().value().orElseThrow()).isEqualTo(curve.to());
        assertThat(curve.notPossible()).singleElement().satisfies(one -> {
            assertThat(one.speed()).isEqualTo(1.9);
            assertThat(one.why())
                    .startsWith(
                            "accumulator.emptying-speed = 96 m/min of strip from all strands; should be at least the"
                                    + " process speed, 114 m/min. ");
        });
    }

    @Test
    void aSpeedAtWhichTheRunCannotGoOn_isMarkedAndTheStudyGoesOn() {
        // Rule PROC-11. At 1 m/s the default restart level, 3 m above the stop level, is used up while the entry speeds
        // up at 0.05
        // m/s2, again and again; at 0.3 m/s a joint of 60 s takes 18 m + 0.3^2/(2 x 0.05) = 18.9 m of 30 m and nothing
        // stops.
        Line line = new PlainLine()
                .coils(PlainLine.coil(5000))
                .capacity(30)
                .fillRate(0.05)
                .entry(1.2, 0.05, 0.4)
                .process(0.3, 1, 1)
                .join(60)
                .build();

        SpeedCurve curve = curve(request(line, 3, 1), 0.2, 1, 5);

        assertThat(curve.present().answer()).isEqualTo(TargetStatus.MEETS);
        assertThat(curve.points()).isNotEmpty();
        assertThat(curve.notPossible()).isNotEmpty();
        assertThat(curve.notPossible().get(curve.notPossible().size() - 1).speed())
                .isEqualTo(1);
        assertThat(curve.notPossible())
                .allSatisfy(one -> assertThat(one.why()).contains("more than 1000 starved stops in coil change"));
        assertThat(curve.peak().at().speed())
                .isLessThanOrEqualTo(curve.peak().fastest())
                .isLessThan(1);
    }

    @Test
    void oneStripHasAnOutputButNoTargetToLose() {
        Line line = new PlainLine().join(60).withoutAccumulator().build();
        SpeedCurve curve = curve(request(line, 20, 1), 1, 2.5, 4);

        assertThat(curve.targetLost()).isEmpty();
        // 600 m take 600/2.5 and 60 s; the run begins and ends with a coil.
        assertThat(curve.points().get(3).output().mean()).isCloseTo(2, within(0.03));
        assertThat(curve.peak().where()).isEqualTo(Where.AT_FASTEST);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void threadsChangeNothing(int threads) {
        SpeedStudy study = new SpeedStudy(request(RANDOM, 30, 7), 0.9, new SpeedRange(1.2, 1.9, 5));

        assertThat(study.run(threads, StudyListener.NONE)).isEqualTo(study.run(1, StudyListener.NONE));
    }

    @Test
    void theUsualRangeIsAboutThePresentSpeed_asFarAsTheLineAllows() {
        // 0.6 and 1.4 times 1.5 m/s.
        SpeedRange plain = SpeedRange.usual(new PlainLine().join(60).build());
        assertThat(plain.from()).isCloseTo(0.9, within(1e-12));
        assertThat(plain.to()).isCloseTo(2.1, within(1e-12));

        // No faster than the entry, and faster than the process is slowed to.
        SpeedRange held = SpeedRange.usual(new PlainLine()
                .entry(1.8, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .slowing(1.2, 20, 40)
                .join(60)
                .build());
        assertThat(held.from()).isBetween(1.2, 1.21);
        assertThat(held.to()).isEqualTo(1.8);

        // To stop from V takes V^2/(2 * 0.1) of 15 m at most: V = 1.732 m/s.
        SpeedRange stopping = SpeedRange.usual(
                new PlainLine().process(1.5, 0.1, 0.1).capacity(15).join(1).build());
        assertThat(stopping.to()).isBetween(Math.sqrt(3) - 1e-4, Math.sqrt(3));
    }

    @ParameterizedTest
    @CsvSource({"2, 1, 5", "1.5, 1.5, 5", "0, 1, 5", "NaN, 1, 5", "1, Infinity, 5"})
    void aRangeUpsideDownOrEmptyIsRefused(double from, double to, int points) {
        assertThatThrownBy(() -> new SpeedRange(from, to, points))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("range of speeds = ")
                .hasMessageContaining("must be more than 0 and not upside down");
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 1001})
    void tooFewOrTooManyPointsAreRefused(int points) {
        assertThatThrownBy(() -> new SpeedRange(1, 2, points))
                .isInstanceOf(StudyException.class)
                .hasMessage("points = " + points + "; must be from 3 to 1000. Leave it out for 15.");
    }

    @Test
    void aRangeThatTheLineCannotRunIsRefusedBeforeAnythingRuns() {
        assertThatThrownBy(() -> new SpeedStudy(request(TUNED, 10, 1), 0.9, new SpeedRange(1, 3, 5)))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("range of speeds = 180 m/min at one end; the line cannot be run so: ")
                .hasMessageContaining("entry.top-speed = 150 m/min; must be more than the process speed, 180 m/min");
    }

    @Test
    void aTargetThatMakesNoSenseIsRefused() {
        assertThatThrownBy(() -> new SpeedStudy(request(TUNED, 10, 1), 0, new SpeedRange(1, 2, 5)))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("target = 0 %; must be more than 0 % and at most 100 %");
    }

    @Test
    void progressNeverFallsAndEndsWhenTheStudyDoes() {
        List<Integer> left = new java.util.ArrayList<>();
        new SpeedStudy(request(TUNED, 10, 1), 0.9, new SpeedRange(1, 2, 3)).run(1, new StudyListener() {
            @Override
            public void progress(int done, int total) {
                left.add(total - done);
            }
        });

        assertThat(left).endsWith(0);
        assertThat(IntStream.range(1, left.size()).allMatch(i -> left.get(i) <= left.get(i - 1)))
                .isTrue();
    }
}
