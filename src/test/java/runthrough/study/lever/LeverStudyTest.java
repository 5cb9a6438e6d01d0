package runthrough.study.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.PlainLine;
import runthrough.study.Goal;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.lever.LeverAnswer.Status;

/**
 * What would meet the target, of lines for which it is known. The plain line of {@link PlainLine}: entry 2.5 m/s, process 1.5
 * m/s, speeds change at once; here with coils of 5,000 m, so that the accumulator is always full again.
 */
class LeverStudyTest {

    private static PlainLine line() {
        return new PlainLine().coils(PlainLine.coil(5000));
    }

    private static SimulationRequest request(Line line, int replications, double target) {
        return new SimulationRequest(
                "Line (invented)",
                List.of(),
                line,
                new RunPlan(new RunPlan.Extent.Changes(50), 0, replications, 11, target),
                UnitSystem.METRIC);
    }

    private static LeverAnswer answer(Line line, Lever.What what) {
        return answer(request(line, 1, 1), what);
    }

    private static LeverAnswer answer(SimulationRequest request, Lever.What what) {
        return new LeverStudy(request)
                .run(2, StudyListener.NONE).answers().stream()
                        .filter(one -> one.lever().what() == what)
                        .findFirst()
                        .orElseThrow();
    }

    /** 120 s take 180 m of 150 m, which bear 100 s. */
    private static final Line SHORT_OF_30_METRES =
            line().capacity(150).join(120).build();

    @Test
    void whatIsMissingIsTheSameOfEachLever() {
        // Rules LEVER-2, LEVER-4, LEVER-5, LEVER-9.
        // 20 s off each pass; 150 m / 120 s = 1.25 m/s; 180 m. Steps: 0.01 s, 0.001 m/min, 0.01 m.
        assertThat(answer(SHORT_OF_30_METRES, Lever.What.JOINT_CYCLE_TIME)
                        .value()
                        .orElseThrow())
                .isCloseTo(-20, within(0.0101));
        assertThat(answer(SHORT_OF_30_METRES, Lever.What.ELEMENT).value().orElseThrow())
                .isCloseTo(20, within(0.0101));
        assertThat(answer(SHORT_OF_30_METRES, Lever.What.PROCESS_SPEED).value().orElseThrow())
                .isCloseTo(1.25, within(1.3e-4));
        LeverAnswer capacity = answer(SHORT_OF_30_METRES, Lever.What.CAPACITY);
        assertThat(capacity.value().orElseThrow()).isCloseTo(180, within(0.0101));
        assertThat(capacity.strand()).isEmpty();
    }

    @Test
    void whatDoesNotHelpIsSaidNotToBeEnough_andWhatTheLineHasNotNotToApply() {
        // Rule LEVER-10.
        assertThat(answer(SHORT_OF_30_METRES, Lever.What.ENTRY_TOP_SPEED).status())
                .isEqualTo(Status.NONE_IS_ENOUGH);
        assertThat(answer(SHORT_OF_30_METRES, Lever.What.UNCOILERS).status()).isEqualTo(Status.NONE_IS_ENOUGH);
        assertThat(answer(SHORT_OF_30_METRES, Lever.What.REJECTS).status()).isEqualTo(Status.DOES_NOT_APPLY);
        assertThat(answer(SHORT_OF_30_METRES, Lever.What.CREW).status()).isEqualTo(Status.DOES_NOT_APPLY);
    }

    @Test
    void aLineThatMeetsItsTargetNeedsNoChange() {
        // Rule LEVER-10.
        Line enough = line().capacity(200).join(120).build();
        assertThat(new LeverStudy(request(enough, 1, 1))
                        .run(1, StudyListener.NONE)
                        .answers())
                .filteredOn(one -> one.status() != Status.DOES_NOT_APPLY)
                .hasSize(6)
                .allSatisfy(one -> assertThat(one.status()).isEqualTo(Status.NONE_NEEDED));
    }

    @Test
    void secondsComeOffEveryPass_notOffTheMean() {
        // Rules LEVER-4, LEVER-6.
        // Every second joint is made twice, 50 s each: 100 s take 150 m of 120 m, which bear 80 s. 10 s off each of two
        // passes.
        Line again = line().capacity(120).join(50).reject(new Reject.Every(2)).build();
        LeverAnswer seconds = answer(again, Lever.What.JOINT_CYCLE_TIME);

        assertThat(seconds.value().orElseThrow()).isCloseTo(-10, within(0.0101));
        // No reject at all, since one in any number would still stop the line at that change.
        assertThat(answer(again, Lever.What.REJECTS).value()).isEqualTo(OptionalDouble.of(0));
    }

    @Test
    void whatTheFirstElementDoesNotHaveComesOffTheNext_andAPassTakesNoLessThanNothing() {
        // Rule LEVER-4.
        Line two = line().join(5, 50).build();
        assertThat(jointCycleTime(two, 8)).isCloseTo(47, within(1e-9));
        assertThat(jointCycleTime(two, 70)).isCloseTo(0, within(1e-9));
    }

    private static double jointCycleTime(Line line, double off) {
        Line quicker = line.with(line.change().withJoinShorterBy(off));
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(1), 0, 1, 1, 1);
        return LineSimulator.of(quicker, plan)
                .run(0, runthrough.simulation.records.Detail.CHANGES)
                .changes()
                .get(0)
                .jointCycleTime();
    }

    @Test
    void strandsComeWhole() {
        // Rule LEVER-3.
        // 180 m: four strands of 40 m are not enough, five are.
        Line strands = line().join(120)
                .build()
                .with(Accumulator.of(
                        new StorageForm.Strands(4, 40, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, false)));
        LeverAnswer capacity = answer(strands, Lever.What.CAPACITY);

        assertThat(capacity.value()).isEqualTo(OptionalDouble.of(200));
        assertThat(capacity.strand()).isEqualTo(OptionalDouble.of(40));
    }

    @Test
    void eachTargetHasItsOwnValue() {
        // Slows at 50 m, which leaves 100 m of 150 m: 66.7 s at 1.5 m/s, and 120 s are asked: 53.3 s off. Without a
        // stop the
        // last 50 m go at 1 m/s and bear another 50 s: 116.7 s, 3.3 s off.
        Line slows = line().capacity(150).slowing(1, 50, 100).join(120).build();
        SimulationRequest asked = request(slows, 1, 1);
        SimulationRequest both = asked.with(asked.run().withTargetWithoutStop(OptionalDouble.of(1)));
        List<LeverAnswer> seconds = new LeverStudy(both)
                .run(1, StudyListener.NONE).answers().stream()
                        .filter(one -> one.lever().what() == Lever.What.JOINT_CYCLE_TIME)
                        .toList();

        assertThat(seconds)
                .extracting(one -> one.goal().what())
                .containsExactly(Goal.What.RUN_THROUGH, Goal.What.WITHOUT_STOP);
        assertThat(seconds.get(0).value().orElseThrow()).isCloseTo(-(120 - 100 / 1.5), within(0.0101));
        assertThat(seconds.get(1).value().orElseThrow()).isCloseTo(-(120 - 100 / 1.5 - 50), within(0.0101));
    }

    @Test
    void theIntervalHoldsTheExactSeconds_andItsEasyEndIsTheAnswer() {
        // Rules LEVER-2, LEVER-11, LEVER-12.
        // 150 m bear 100 s. 90 % of joints, uniform from 60 to 120 s, take up to 114 s: 14 s off every pass.
        Line random = line().capacity(150).join(Distribution.uniform(60, 120)).build();
        LeverAnswer seconds = answer(request(random, 40, 0.9), Lever.What.JOINT_CYCLE_TIME);

        assertThat(seconds.isShown()).isTrue();
        assertThat(seconds.value()).isEqualTo(seconds.crossing().orElseThrow().low());
        assertThat(-14.0)
                .isBetween(
                        seconds.value().orElseThrow(),
                        seconds.crossing().orElseThrow().high().orElseThrow());
        // Steps of a power of ten near 0.2 % of 90 s: 0.1 s.
        double steps = seconds.value().orElseThrow() / 0.1;
        assertThat(steps).isCloseTo(Math.rint(steps), within(1e-6));
    }

    @Test
    void aRunTooShortToShowItSaysSo() {
        // Rule LEVER-2.
        // 50 coil changes cannot show 99.9 %.
        Line random = line().capacity(150).join(Distribution.uniform(60, 120)).build();
        LeverAnswer seconds = answer(request(random, 1, 0.999), Lever.What.JOINT_CYCLE_TIME);

        assertThat(seconds.isShown()).isFalse();
        assertThat(seconds.value().orElseThrow()).isBetween(-20.0, -14.0);
    }

    @Test
    void oneStripHasNoLever() {
        // Rule LEVER-1.
        Line none = new PlainLine().join(60).withoutAccumulator().build();
        assertThat(new LeverStudy(request(none, 1, 1))
                        .run(1, StudyListener.NONE)
                        .answers())
                .isEmpty();
    }

    @Test
    void aSlowerProcessSaysWhatComesOut_asTheVerdictOfThatLineDoes() {
        // Nothing is scrapped: 1.25 m/s are good at 1.25 m/s. At 1.5 m/s 150 m last for 100 of 120 s, and the process
        // stands until the level for a restart is reached.
        LeverAnswer speed = answer(SHORT_OF_30_METRES, Lever.What.PROCESS_SPEED);
        double slower = speed.value().orElseThrow();
        LeverAnswer.Cost cost = speed.cost().orElseThrow();

        assertThat(cost.with().mean()).isCloseTo(slower, within(1e-9));
        assertThat(cost.now().mean()).isEqualTo(goodOutput(SHORT_OF_30_METRES)).isLessThan(1.5);
        assertThat(answer(SHORT_OF_30_METRES, Lever.What.CAPACITY).cost()).isEmpty();
    }

    private static double goodOutput(Line line) {
        return new RunThroughStudy(request(line, 1, 1))
                .run(StudyOptions.plain(), StudyListener.NONE)
                .verdict()
                .output()
                .speed()
                .mean();
    }
}
