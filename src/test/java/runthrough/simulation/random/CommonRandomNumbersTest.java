package runthrough.simulation.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.element;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.PlainLine;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.WorkRecord.WorkList;

/** Two variants of a line under the same seed differ by nothing but themselves: random numbers belong to what they are for. */
class CommonRandomNumbersTest {

    private static PlainLine line() {
        return new PlainLine()
                .capacity(10_000)
                .prepare(element(Distribution.lognormal(100, 40)))
                .join(element(Distribution.lognormal(60, 20)))
                .join(element(Distribution.triangular(5, 10, 30)));
    }

    private static List<Double> durations(PlainLine line, WorkList list, int element) {
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

    private static void assertUnmoved(PlainLine variant) {
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

    /** Put in front or taken out, not only added at the end: what has a name keeps its numbers by its name. */
    @Test
    void anElementInFrontOfOthersOrTakenOut_leavesTheOthersTheirDraws() {
        // Rule RANDOM-3.
        PlainLine inFront = new PlainLine()
                .capacity(10_000)
                .join(named("fit"))
                .join(named("check"))
                .join(named("weld"));
        PlainLine without = new PlainLine().capacity(10_000).join(named("weld"));

        assertSame(durations(inFront, WorkList.JOIN, 2), durations(without, WorkList.JOIN, 0));
    }

    private static WorkElement named(String name) {
        return new WorkElement(name, new WorkTime.Timed(Distribution.lognormal(60, 20)), new Occurrence.Always(), true);
    }

    @Test
    void anElementThatComesByChanceOrNeverTheSame_leavesTheOthersTheirDraws() {
        // Rule RANDOM-3.
        assertUnmoved(line().join(PlainLine.chance(0.5, 30)));
        assertUnmoved(line().join(PlainLine.every(3, 30)));
    }

    @Test
    void downtimesRestartDelaysAndRandomCoils_leaveTheWorkItsDraws() {
        // Rule RANDOM-3.
        assertUnmoved(line().downtime(Distribution.exponential(300), Distribution.exponential(60)));
        assertUnmoved(line().capacity(100).restart(Double.NaN, Distribution.exponential(60)));
        assertUnmoved(line().coils(coil(Distribution.uniform(300, 900))));
        assertUnmoved(line().coilSource(new CoilSource.Mix(
                List.of(new CoilSource.Share(coil(600), 0.5), new CoilSource.Share(coil(300), 0.5)))));
    }

    @Test
    void aChangedDuration_leavesTheOtherElementsTheirDraws() {
        PlainLine quicker = new PlainLine()
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
    void rejectChances_shareTheirNumbers() {
        // Rule RANDOM-4.
        // Whatever is rejected at 10 % is rejected at 30 % too, as often or oftener, throughout the run.
        List<ChangeRecord> few = line().reject(new Reject.Chance(0.1)).run(60).changes();
        List<ChangeRecord> many = line().reject(new Reject.Chance(0.3)).run(60).changes();

        for (int i = 0; i < 60; i++) {
            assertThat(many.get(i).passes()).isGreaterThanOrEqualTo(few.get(i).passes());
        }
        assertThat(few).anyMatch(change -> change.passes() > 1);
    }

    @Test
    void coilNTakesDrawN_whetherItIsUsedOrNot() {
        // Rule COIL-5.
        Distribution random = Distribution.uniform(300, 900);
        List<ChangeRecord> all = new PlainLine().coils(coil(random)).run(4).changes();
        List<ChangeRecord> second =
                new PlainLine().coils(coil(450), coil(random)).run(4).changes();

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
        LineSimulator simulator = LineSimulator.of(line().build(), new RunPlan(new Extent.Changes(5), 0, 10, 42, 0.9));
        LineSimulator otherSeed = LineSimulator.of(line().build(), new RunPlan(new Extent.Changes(5), 0, 10, 43, 0.9));
        Replication third = simulator.run(3, Detail.ELEMENTS);

        assertThat(simulator.run(4, Detail.ELEMENTS).work()).isNotEqualTo(third.work());
        assertThat(otherSeed.run(3, Detail.ELEMENTS).work()).isNotEqualTo(third.work());
        assertThat(simulator.run(3, Detail.ELEMENTS)).isEqualTo(third);
        assertThat(third.index()).isEqualTo(3);
    }

    /** Uniform numbers by src/test/python/random_numbers.py: seed 7, replication 0, index 1, repeat 0. */
    @Test
    void jointCycleTimeOfTheFirstChange_isMadeOfTheNumbersThatBelongToIt() {
        // Rules RANDOM-1, RANDOM-2, RANDOM-4.
        double expected = Distribution.lognormal(60, 20).quantile(0.2366580254591043)
                + Distribution.triangular(5, 10, 30).quantile(0.5652711720210085);

        assertThat(line().run(1).changes().get(0).jointCycleTime()).isCloseTo(expected, within(1e-9));
    }

    /** By the same program: change 3, its second pass, replication 0 of seed 7. */
    @Test
    void aJointMadeAgainTakesTheNumbersOfItsPass() {
        // Rule RANDOM-4.
        Replication run = new PlainLine()
                .capacity(10_000)
                .join(Distribution.lognormal(60, 20))
                .reject(new Reject.Every(3))
                .run(3);

        assertThat(run.work().stream()
                        .filter(work -> work.change() == 3 && work.pass() == 2)
                        .map(work -> work.end() - work.start()))
                .singleElement()
                .satisfies(time -> assertThat(time)
                        .isCloseTo(Distribution.lognormal(60, 20).quantile(0.7927290206145129), within(1e-8)));
    }
}
