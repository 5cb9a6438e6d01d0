package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.LineBuilder.coil;
import static runthrough.simulation.LineBuilder.element;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.simulation.WorkRecord.WorkList;

/** Two variants of a line under the same seed see the same random numbers: every source of randomness has a stream of its own. */
class CommonRandomNumbersTest {

    private static LineBuilder line() {
        return new LineBuilder()
                .capacity(10_000)
                .prepare(element(Distribution.lognormal(100, 40)))
                .join(element(Distribution.lognormal(60, 20)))
                .join(element(Distribution.triangular(5, 10, 30)));
    }

    private static List<Double> durations(LineBuilder line, WorkList list, int element) {
        return line.run(new Extent.Changes(30), Detail.ELEMENTS).work().stream()
                .filter(work -> work.list() == list && work.element() == element)
                .limit(25)
                .map(work -> work.end() - work.start())
                .toList();
    }

    private static void assertSame(List<Double> actual, List<Double> expected) {
        assertThat(actual).hasSameSizeAs(expected);
        for (int i = 0; i < actual.size(); i++) {
            // Ends less starts: the same but for rounding.
            assertThat(actual.get(i)).isCloseTo(expected.get(i), within(1e-8));
        }
    }

    private static void assertUnmoved(LineBuilder variant) {
        assertSame(durations(variant, WorkList.PREPARE, 0), durations(line(), WorkList.PREPARE, 0));
        assertSame(durations(variant, WorkList.JOIN, 0), durations(line(), WorkList.JOIN, 0));
        assertSame(durations(variant, WorkList.JOIN, 1), durations(line(), WorkList.JOIN, 1));
    }

    @Test
    void anElementMore_leavesTheOthersTheirDraws() {
        // Rule RANDOM-3.
        assertUnmoved(line().join(element(Distribution.exponential(20))));
        assertUnmoved(line().tail(element(Distribution.exponential(20))));
        assertUnmoved(line().prepare(element(Distribution.exponential(20))));
    }

    @Test
    void anElementThatComesByChanceOrNeverTheSame_leavesTheOthersTheirDraws() {
        // Rule RANDOM-3.
        assertUnmoved(line().join(LineBuilder.chance(0.5, 30)));
        assertUnmoved(line().join(LineBuilder.every(3, 30)));
    }

    @Test
    void ownStopsRestartDelaysAndRandomCoils_leaveTheWorkItsDraws() {
        // Rule RANDOM-3.
        assertUnmoved(line().downtime(Distribution.exponential(300), Distribution.exponential(60)));
        assertUnmoved(line().capacity(100).restart(Double.NaN, Distribution.exponential(60)));
        assertUnmoved(line().coils(coil(Distribution.uniform(300, 900))));
        assertUnmoved(line().coilSource(new CoilSource.Mix(
                List.of(new CoilSource.Share(coil(600), 0.5), new CoilSource.Share(coil(300), 0.5)))));
    }

    @Test
    void aChangedDuration_leavesTheOtherElementsTheirDraws() {
        LineBuilder quicker = new LineBuilder()
                .capacity(10_000)
                .prepare(element(Distribution.lognormal(50, 20)))
                .join(element(Distribution.lognormal(60, 20)))
                .join(element(Distribution.triangular(5, 10, 30)));

        assertSame(durations(quicker, WorkList.JOIN, 0), durations(line(), WorkList.JOIN, 0));
        // Half the mean and half the spread at the same random numbers: half the time.
        assertSame(
                durations(quicker, WorkList.PREPARE, 0),
                durations(line(), WorkList.PREPARE, 0).stream()
                        .map(time -> time / 2)
                        .toList());
    }

    @Test
    void rejectChances_shareTheirLuck() {
        // Whatever is rejected at 10 % would be at 30 %, as long as no pass has been added before: the first reject
        // comes no later.
        List<ChangeRecord> few = line().reject(new Reject.Chance(0.1)).run(60).changes();
        List<ChangeRecord> many = line().reject(new Reject.Chance(0.3)).run(60).changes();
        int first = (int) few.stream().takeWhile(change -> change.passes() == 1).count();

        assertThat(many.subList(0, first + 1)).anyMatch(change -> change.passes() > 1);
    }

    @Test
    void coilNTakesDrawN_whetherItIsUsedOrNot() {
        // Rule COIL-5.
        Distribution random = Distribution.uniform(300, 900);
        List<ChangeRecord> all = new LineBuilder().coils(coil(random)).run(4).changes();
        List<ChangeRecord> second =
                new LineBuilder().coils(coil(450), coil(random)).run(4).changes();

        // Joints of no time at 1.5 m/s: the second and fourth coils are the same in both.
        for (int coil : new int[] {1, 3}) {
            double inAll = all.get(coil).start() - all.get(coil - 1).start();
            double inSecond = second.get(coil).start() - second.get(coil - 1).start();
            assertThat(inSecond).isCloseTo(inAll, within(1e-9));
        }
        assertThat(second.get(0).start()).isEqualTo(300);
    }

    @Test
    void replicationsDiffer_seedsDiffer_theSameDoNot() {
        LineSimulator simulator = new LineSimulator(line().build(), new RunPlan(new Extent.Changes(5), 0, 10, 42, 0.9));
        LineSimulator otherSeed = new LineSimulator(line().build(), new RunPlan(new Extent.Changes(5), 0, 10, 43, 0.9));
        Replication third = simulator.run(3, Detail.ELEMENTS);

        assertThat(simulator.run(4, Detail.ELEMENTS).work()).isNotEqualTo(third.work());
        assertThat(otherSeed.run(3, Detail.ELEMENTS).work()).isNotEqualTo(third.work());
        assertThat(simulator.run(3, Detail.ELEMENTS)).isEqualTo(third);
        assertThat(third.index()).isEqualTo(3);
    }

    @Test
    void jointTimeOfTheFirstChange_isTheDrawThatTheStreamsGive() {
        // Rules RANDOM-1, RANDOM-2.
        // The first number of each element's stream, inverted.
        Streams streams = new Streams(7, 0);
        double expected = Distribution.lognormal(60, 20)
                        .quantile(streams.stream(Source.duration(WorkList.JOIN, 0))
                                .nextDouble())
                + Distribution.triangular(5, 10, 30)
                        .quantile(streams.stream(Source.duration(WorkList.JOIN, 1))
                                .nextDouble());

        assertThat(line().run(1).changes().get(0).jointTime()).isCloseTo(expected, within(1e-9));
    }
}
