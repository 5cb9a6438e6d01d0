package runthrough.study.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;

/**
 * Process 1.5 m/s, speed changes at once: 105 m hold 70 s. Joints are a tail element and a join element, the second twice as
 * long as the first, together uniform from 40 s to 80 s: the truth is that 3/4 run through, by the hand calculation. A capacity for 75 % is
 * 1.5 x 70 = 105 m.
 */
class UncertaintyStudyTest {
    /** Square of the normal deviate of a 95 % interval. Source: tables of the normal distribution, 1.95996. */
    private static final double Z2 = 3.84146;

    /** Where Wilson's interval begins of 600 of 600. */
    private static final double ALL_OF_600 = 600 / (600 + Z2);

    private static final double TRUTH = 0.75;

    private static WorkElement element(MeasuredRows rows, int column) {
        return new WorkElement(
                "element " + column, new WorkTime.FromRows(rows, column, 1), new Occurrence.Always(), true);
    }

    /** A sheet of {@code count} coil changes as the seeded truth gives them. */
    private static MeasuredRows sheet(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return MeasuredRows.of(
                "a sheet",
                IntStream.range(0, count)
                        .mapToObj(i -> {
                            double joint = 40 + 40 * random.nextDouble();
                            return List.of(joint / 3, 2 * joint / 3);
                        })
                        .toList());
    }

    private static Line line(MeasuredRows rows) {
        return new PlainLine()
                .coils(PlainLine.coil(900))
                .capacity(105)
                .tail(element(rows, 0))
                .join(element(rows, 1))
                .build();
    }

    /** More than a run can show is not said: of 20 coil changes that all run through, Wilson's interval begins at 84 %. */
    @Test
    void aShortRunDecidesNothing() {
        MeasuredRows same = MeasuredRows.of("a sheet", List.of(List.of(20.0, 40.0), List.of(20.0, 40.0)));
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(10), 0, 2, 5, TRUTH);
        SimulationRequest request =
                new SimulationRequest("Line (invented)", List.of(), line(same), plan, UnitSystem.METRIC);

        Uncertainty known = new UncertaintyStudy(request, 0.9, 60).run(1, StudyListener.NONE);

        assertThat(known.share().value()).isEqualTo(1);
        assertThat(known.share().simulation().low()).isCloseTo(20 / (20 + Z2), within(1e-5));
        assertThat(known.answer()).isEqualTo(TargetStatus.UNDECIDED);
    }

    private static Uncertainty study(Line line, int threads) {
        return study(line, threads, TRUTH);
    }

    private static Uncertainty study(Line line, int threads, double target) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(100), 0, 6, 5, TRUTH);
        SimulationRequest request =
                new SimulationRequest("Line of round numbers (invented)", List.of(), line, plan, UnitSystem.METRIC);
        return new UncertaintyStudy(request, target, 60).run(threads, StudyListener.NONE);
    }

    /** Three coils of four run at a third of the speed: the capacity is that which lets the fast ones through, and as many as the target. */
    @Test
    void whereCoilsHaveSpeedsOfTheirOwn_theFastestCount() {
        Line line = line(sheet(200, 7))
                .with(new CoilSource.Schedule(List.of(
                        PlainLine.coilAt(160, 0.5),
                        PlainLine.coilAt(160, 0.5),
                        PlainLine.coilAt(160, 0.5),
                        PlainLine.coilAt(160, 1.5))));

        Uncertainty known = study(line, 2, 0.95);

        // Joints of 40 to 80 s, uniform: of the fast coils four in five may go through, which takes 1.5 m/s for 72 s.
        assertThat(known.capacity().orElseThrow().value()).isCloseTo(108, within(5.0));
    }

    /**
     * Of 40 sheets of 40 coil changes 38 should have the truth in their interval; three standard errors of 1.4 below are 34. That
     * of a percentile interval of a share of 40 is a little narrow, which costs one or two more.
     */
    @Test
    void theIntervalWithTheTimesHasTheTruthIn_thatOfTheSimulationAloneHasNot() {
        List<Uncertainty> all = IntStream.range(0, 40)
                .mapToObj(seed -> study(line(sheet(40, seed)), 1))
                .toList();

        long share =
                all.stream().filter(one -> contains(one.share().all(), TRUTH)).count();
        long alone = all.stream()
                .filter(one -> contains(one.share().simulation(), TRUTH))
                .count();
        long capacity = all.stream()
                .filter(one -> contains(one.capacity().orElseThrow().all(), 105))
                .count();

        assertThat(share).isGreaterThanOrEqualTo(33);
        assertThat(capacity).isGreaterThanOrEqualTo(33);
        assertThat(alone).isLessThan(25);
    }

    private static boolean contains(UncertainFigure.Band band, double value) {
        return band.low() <= value && value <= band.high();
    }

    /** A share of n coil changes has the standard deviation sqrt(p (1 - p) / n): for 3/4 and 160, 0.034, half an interval 0.067. */
    @Test
    void theHalfWidthOfTheTimesIsThatOfAShareOfSoManyObservations() {
        Uncertainty known = study(line(sheet(160, 3)), 1);

        assertThat(known.share().times()).isCloseTo(0.067, within(0.02));
        assertThat(known.inputs()).containsExactly(new MeasuredInputs.Input("a sheet", 160));
        assertThat(known.answer()).isEqualTo(TargetStatus.UNDECIDED);
    }

    /**
     * Half the width takes four times as many observations, and over eight sheets that are four times as large the variance is a
     * quarter: to what eight spreads of 60 resamples tell, 12 % of it, three times.
     */
    @Test
    void soManyMoreObservationsDoBringTheWidthDown() {
        double small = meanVariance(40);
        double large = meanVariance(160);

        assertThat(small / large).isCloseTo(4, within(1.5));
        UncertainFigure known = study(line(sheet(40, 1)), 1).share();
        assertThat(known.observationsFactor(known.times() / 2)).isCloseTo(4, within(1e-9));
        assertThat(known.observationsFactor(1)).isEqualTo(1);
    }

    private static double meanVariance(int observations) {
        return IntStream.range(0, 8)
                .mapToDouble(seed ->
                        study(line(sheet(observations, seed)), 1).share().times())
                .map(half -> half * half)
                .average()
                .orElseThrow();
    }

    /**
     * What a sheet says of a target that is just the truth is as likely too much as too little: over 40 sheets chances spread evenly
     * from 0 to 1 have the mean 0.5, to three standard errors of 0.29 / sqrt(40) = 0.046. So far from the truth as two and a half
     * standard deviations of a share of 40, 0.068, there is no doubt.
     */
    @Test
    void theChanceOfTheTargetIsEvenAtTheTruth_andCertainFarFromIt() {
        double[] atTruth = IntStream.range(0, 40)
                .mapToDouble(seed -> study(line(sheet(40, seed)), 1).chanceOfTarget())
                .toArray();
        double mean = Arrays.stream(atTruth).average().orElseThrow();

        assertThat(mean).isCloseTo(0.5, within(0.14));
        assertThat(DoubleStream.of(atTruth)).anyMatch(chance -> chance < 0.25).anyMatch(chance -> chance > 0.75);
        for (int seed = 0; seed < 3; seed++) {
            double share = study(line(sheet(40, seed)), 1).share().value();
            assertThat(study(line(sheet(40, seed)), 1, share - 0.17).chanceOfTarget())
                    .isGreaterThan(0.95);
            assertThat(study(line(sheet(40, seed)), 1, Math.min(share + 0.17, 0.999))
                            .chanceOfTarget())
                    .isLessThan(0.05);
        }
    }

    /** The interval reaches from the 2.5th to the 97.5th percentile of what the chance counts. */
    @Test
    void theEndsOfTheIntervalAreMetWithTheChanceOfItsPercentiles() {
        UncertainFigure share = study(line(sheet(40, 1)), 1).share();

        assertThat(study(line(sheet(40, 1)), 1, share.all().low()).chanceOfTarget())
                .isCloseTo(0.975, within(0.03));
        assertThat(study(line(sheet(40, 1)), 1, share.all().high()).chanceOfTarget())
                .isCloseTo(0.025, within(0.03));
    }

    @Test
    void theCurveIsNestedAndRises() {
        List<Uncertainty.Point> curve = study(line(sheet(40, 2)), 1).curve();

        for (int i = 0; i < curve.size(); i++) {
            UncertainFigure share = curve.get(i).share();
            assertThat(share.all().low()).isLessThanOrEqualTo(share.simulation().low());
            assertThat(share.all().high())
                    .isGreaterThanOrEqualTo(share.simulation().high());
            if (i > 0) {
                assertThat(share.value())
                        .isGreaterThanOrEqualTo(curve.get(i - 1).share().value());
            }
        }
    }

    @Test
    void timesThatAreAllAlikeLeaveNothingOpen() {
        MeasuredRows same = MeasuredRows.of("a sheet", List.of(List.of(20.0, 40.0), List.of(20.0, 40.0)));

        Uncertainty known = study(line(same), 1);

        assertThat(known.share().all()).isEqualTo(known.share().simulation());
        assertThat(known.share().simulation().low()).isCloseTo(ALL_OF_600, within(1e-5));
        assertThat(known.share().simulation().high()).isEqualTo(1);
        assertThat(known.share().times()).isZero();
        assertThat(known.answer()).isEqualTo(TargetStatus.MEETS);
    }

    @Test
    void listsOfMeasuredTimesAreResampledToo() {
        Line line = new PlainLine()
                .coils(PlainLine.coil(900))
                .capacity(105)
                .join(Distribution.observed(List.of(50.0, 60.0, 65.0, 80.0)))
                .build();

        Uncertainty known = study(line, 1);

        assertThat(known.inputs()).containsExactly(new MeasuredInputs.Input("work", 4));
        assertThat(known.share().all().halfWidth()).isGreaterThan(0.2);
    }

    @Test
    void theSameWhateverTheNumberOfThreads() {
        Line line = line(sheet(30, 6));

        assertThat(study(line, 3)).isEqualTo(study(line, 1));
    }

    @Test
    void withoutObservationsThereIsNothingToResample() {
        Line line = new PlainLine().join(60).build();

        assertThatThrownBy(() -> study(line, 1))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("no work element has times that were observed");
    }

    /** Half of the 12 observed rethread times are 300 s, half 600 s; every change stops the process, whatever they are. */
    @Test
    void aRethreadIsResampledToo_andHasNoCapacity() {
        List<Double> times =
                IntStream.range(0, 12).mapToObj(i -> i % 2 == 0 ? 300.0 : 600.0).toList();
        Uncertainty known =
                study(new PlainLine().rethread(Distribution.observed(times)).build(), 1);

        assertThat(known.inputs()).containsExactly(new MeasuredInputs.Input("rethread", 12));
        assertThat(known.capacity()).isEmpty();
        assertThat(known.curve()).isEmpty();
        assertThat(known.share().all().low()).isEqualTo(0);
        assertThat(known.share().all().high()).isCloseTo(1 - ALL_OF_600, within(1e-5));
        assertThat(known.answer()).isEqualTo(TargetStatus.MISSES);
    }

    /** 1 m at 0.04 m/s takes 25 s, 5 or 15 s observed beside it and 4 s to clamp: with 105 m for 70 s all run through. */
    @Test
    void timesObservedBesideAWeldsTravelAreResampled_othersStayAsTheyAre() {
        WorkElement weld = new WorkElement(
                "weld",
                new WorkTime.Travel(0.04, Distribution.observed(List.of(5.0, 15.0, 5.0, 15.0))),
                new Occurrence.Always(),
                true);
        WorkElement clamp =
                new WorkElement("clamp", new WorkTime.Timed(Distribution.constant(4)), new Occurrence.Always(), true);
        Uncertainty known = study(
                new PlainLine()
                        .coils(PlainLine.coil(900))
                        .capacity(105)
                        .tail(clamp)
                        .join(weld)
                        .build(),
                1);

        assertThat(known.inputs()).hasSize(1);
        assertThat(known.share().value()).isEqualTo(1);
        assertThat(known.share().all().low()).isCloseTo(ALL_OF_600, within(1e-5));
        assertThat(known.answer()).isEqualTo(TargetStatus.MEETS);
        assertThat(known.capacity().orElseThrow().all().high()).isLessThan(105);
    }
}
