package runthrough.study.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.plant.check.LineCheck;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.cause.Cause;
import runthrough.study.map.MapVariants.Variant;
import runthrough.study.map.ShareMap.Way;

/**
 * Joint cycle time against process speed of the plain line of {@link PlainLine}: speeds change at once, so that a joint of T seconds
 * at V m/s draws V T of the 100 m of accumulator. The entry runs 2.5 m/s.
 */
class MapStudyTest {
    private static final Line FIXED = new PlainLine().capacity(100).join(60).build();
    private static final Line RANDOM =
            new PlainLine().capacity(100).join(Distribution.lognormal(45, 10)).build();

    private static SimulationRequest request(Line line, int changes, int replications) {
        return new SimulationRequest(
                "Line (invented)",
                List.of(),
                line,
                new RunPlan(new RunPlan.Extent.Changes(changes), 0, replications, 5, 0.9),
                UnitSystem.METRIC);
    }

    private static MapAxis joint(double from, double to, int points) {
        return new MapAxis("joint-cycle-time", Optional.empty(), Optional.of(Unit.SECOND), from, to, points);
    }

    private static MapAxis speed(double from, double to, int points) {
        return new MapAxis("rated-speed", Optional.empty(), Optional.of(Unit.METRE_PER_MINUTE), from, to, points);
    }

    private static MapPlan plan(MapAxis x, MapAxis y, int stride) {
        return new MapPlan(x, y, OptionalDouble.of(60), OptionalDouble.of(1.5), stride);
    }

    private static MapStudy study(Line line, MapPlan plan, int changes, int replications) {
        return new MapStudy(request(line, changes, replications), 0.9, plan, (x, y) -> {
            Line changed = LineFigure.RATED_SPEED.with(LineFigure.JOINT_CYCLE_TIME.with(line, x), y);
            return LineCheck.accepts(changed) ? new Variant.Possible(changed) : new Variant.Refused("too fast");
        });
    }

    /** The share of the map is the area under V = 100 / T from 30 s to 90 s, between 1 and 2 m/s. */
    @Test
    void aFixedLineMeetsTheTargetWhereTheClosedFormSaysSo() {
        ShareMap map = study(FIXED, plan(joint(30, 90, 49), speed(1, 2, 41), 8), 30, 1)
                .run(2, StudyListener.NONE, MapStore.NONE);

        // Up to 50 s the hyperbola is above 2 m/s, then the integral of 100 / T - 1.
        double area = (50 - 30) + 100 * Math.log(90 / 50.0) - (90 - 50);
        assertThat(map.parts().enoughByClosedForms()).isCloseTo(area / 60, within(2e-3));
        assertThat(map.parts().meets()).isCloseTo(area / 60, within(0.02));
        assertThat(map.parts().closedFormsOnly()).isLessThan(0.01);
        assertThat(map.parts().simulatedOnly()).isLessThan(0.01);
        assertThat(map.points()).allSatisfy(point -> {
            double drawn = map.plan().x().value(point.column()) * map.plan().y().value(point.row());
            if (Math.abs(drawn - 100) > 1e-6) {
                assertThat(point.share()).isEqualTo(drawn < 100 ? 1 : 0);
            }
        });
        assertThat(map.limit(Way.RIGHT).orElseThrow()).isCloseTo(100 / 1.5, within(60 / 48.0));
        assertThat(map.limit(Way.UP).orElseThrow()).isCloseTo(100 / 60.0, within(1 / 40.0));
        assertThat(map.limit(Way.LEFT)).isEmpty();
    }

    /** 60 s at 1.5 m/s draw 90 m: of strands that hold 9 m each ten, whatever lies between the points of the grid. */
    @Test
    void alongANumberOfStrandsTheLeverAnswersInWholeOnes() {
        // Rule LEVER-12.
        Line line = FIXED.with(new Accumulator(
                new StorageForm.Strands(8, 9, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, false),
                Double.POSITIVE_INFINITY,
                0,
                0));
        MapAxis strands = new MapAxis("accumulator.strands", Optional.empty(), 6, 14, 5);
        MapPlan plan = new MapPlan(joint(30, 90, 5), strands, OptionalDouble.of(60), OptionalDouble.of(8), 1);
        ShareMap map = new MapStudy(
                        request(line, 30, 1),
                        0.9,
                        plan,
                        (x, y) -> new Variant.Possible(LineFigure.JOINT_CYCLE_TIME.with(
                                line.with(line.accumulator()
                                        .with(((StorageForm.Strands)
                                                        line.accumulator().form())
                                                .withStrands((int) y))),
                                x)))
                .run(1, StudyListener.NONE, MapStore.NONE);

        assertThat(map.limit(Way.UP).orElseThrow()).isCloseTo(10, within(1e-9));
    }

    @Test
    void onlyWhereTheAnswerChangesIsItRefined() {
        MapPlan plan = plan(joint(30, 90, 49), speed(1, 2.4, 41), 8);

        ShareMap map = study(FIXED, plan, 10, 1).run(2, StudyListener.NONE, MapStore.NONE);
        ShareMap every = study(FIXED, new MapPlan(plan.x(), plan.y(), plan.ownX(), plan.ownY(), 1), 10, 1)
                .run(2, StudyListener.NONE, MapStore.NONE);

        assertThat(map.points()).hasSizeLessThan(plan.points() / 3);
        assertThat(every.points()).hasSize(plan.points());
        assertThat(map.parts()).isEqualTo(every.parts());
    }

    /** At 60 s nine in ten joints run through up to 100 / q m/s, with q the 90 % quantile of the joint of 45 s, 15 s longer. */
    @Test
    void aRandomLineMeetsItUpToTheQuantileOfItsJoints() {
        ShareMap map = study(RANDOM, plan(joint(30, 80, 33), speed(1, 2.4, 33), 8), 100, 40)
                .run(2, StudyListener.NONE, MapStore.NONE);
        double quantile = 15 + Distribution.lognormal(45, 10).quantile(0.9);

        assertThat(map.own()).isPresent();
        double limit = map.limit(Way.DOWN).orElseThrow();
        // 4,000 changes know a share of 90 % to three times 0.5 %, and so the quantile to 2.5 %.
        assertThat(limit).isCloseTo(100 / quantile, within(0.03 * 100 / quantile));
        assertThat(map.parts().closedFormsOnly()).isPositive();
        assertThat(map.causeMissedByClosedForms()).contains(Cause.ELEMENT_TOOK_LONG);
    }

    @Test
    void theLineAsItIsGivesWhatItsVerdictSays() {
        SimulationRequest request = request(RANDOM, 50, 20);
        ShareMap map = study(RANDOM, plan(joint(30, 80, 9), speed(1, 2.4, 9), 8), 50, 20)
                .run(2, StudyListener.NONE, MapStore.NONE);

        assertThat(map.present().share())
                .isEqualTo(new RunThroughStudy(request)
                        .run(StudyOptions.plain(), StudyListener.NONE)
                        .verdict()
                        .shareRunThrough());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 7})
    void theSameMapComesWhateverTheThreads(int threads) {
        MapPlan plan = plan(joint(30, 80, 25), speed(1, 2.4, 17), 8);

        ShareMap map = study(RANDOM, plan, 20, 10).run(threads, StudyListener.NONE, MapStore.NONE);

        assertThat(map.points())
                .isEqualTo(study(RANDOM, plan, 20, 10)
                        .run(2, StudyListener.NONE, MapStore.NONE)
                        .points());
    }

    /** The entry runs 2.5 m/s: a process above that is refused, and the map does not count it as missed. */
    @Test
    void pointsThatNoLineCanHaveAreNotPossibleRatherThanMissed() {
        ShareMap map = study(FIXED, plan(joint(20, 30, 5), speed(1.5, 3.5, 21), 4), 10, 1)
                .run(2, StudyListener.NONE, MapStore.NONE);

        assertThat(map.parts().possible()).isCloseTo(0.5, within(1e-9));
        // Just below 2.5 m/s the accumulator does not fill again in time.
        assertThat(map.parts().meets()).isPositive().isLessThan(map.parts().possible());
        assertThat(map.points())
                .filteredOn(point -> point.measured().isEmpty())
                .isNotEmpty()
                .allSatisfy(point -> assertThat(point.refusal()).isEqualTo("too fast"));
    }

    @Test
    void aMapThatWasInterruptedGoesOnFromWhatWasDone() {
        MapPlan plan = plan(joint(30, 80, 25), speed(1, 2.4, 17), 8);
        ShareMap whole = study(RANDOM, plan, 20, 10).run(2, StudyListener.NONE, MapStore.NONE);
        Kept kept = new Kept();
        StudyListener impatient = new StudyListener() {
            @Override
            public boolean cancelled() {
                return kept.points.size() >= 30;
            }
        };

        assertThatThrownBy(() -> study(RANDOM, plan, 20, 10).run(2, impatient, kept))
                .isInstanceOf(CancellationException.class);
        assertThat(kept.points).hasSize(30);
        ShareMap resumed = study(RANDOM, plan, 20, 10).run(3, StudyListener.NONE, kept);

        assertThat(resumed.points()).isEqualTo(whole.points());
        assertThat(kept.asked).isEqualTo(30);
        assertThat(kept.points).hasSize(whole.points().size());
    }

    /** Keeps points in memory. */
    private static final class Kept implements MapStore {
        private final Map<List<Integer>, MapPoint> points = new HashMap<>();
        private int asked;

        @Override
        public synchronized Optional<MapPoint> known(int column, int row) {
            Optional<MapPoint> point = Optional.ofNullable(points.get(List.of(column, row)));
            asked += point.isPresent() ? 1 : 0;
            return point;
        }

        @Override
        public synchronized void add(MapPoint point) {
            assertThat(points.put(List.of(point.column(), point.row()), point)).isNull();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 1.2, -0.1, Double.NaN})
    void aTargetThatNoRunCanShowIsRefused(double target) {
        assertThatThrownBy(() -> new MapStudy(
                        request(FIXED, 10, 1),
                        target,
                        plan(joint(30, 90, 5), speed(1, 2, 5), 1),
                        (x, y) -> new Variant.Refused("")))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("must be more than 0 % and less than 100 %");
    }

    @Test
    void aRangeThatFallsAndTheSameNumberTwiceAreRefused() {
        assertThatThrownBy(() -> joint(90, 30, 5))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("must rise");
        assertThatThrownBy(() -> plan(joint(30, 90, 5), joint(30, 90, 5), 1))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("on both sides");
    }
}
