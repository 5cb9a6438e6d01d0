package runthrough.simulation.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.PlainLine.chance;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.element;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.EverySource;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.PlainLine;
import runthrough.simulation.random.RandomSource.Kind;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.WorkRecord.WorkList;

/** Whatever else happens in a run, everything in it meets its own random numbers; a source may meet those of another replication. */
class RandomNumbersTest {
    private static final int CHANGES = 60;
    private static final RandomNumbers NUMBERS = new RandomNumbers(42, 0);

    private static PlainLine line() {
        return new PlainLine()
                .capacity(10_000)
                .prepare(element(Distribution.lognormal(100, 40)))
                .join(element(Distribution.lognormal(60, 20)))
                .join(element(Distribution.triangular(5, 10, 30)));
    }

    private static LineSimulator simulator(Line line) {
        return LineSimulator.of(line, new RunPlan(new Extent.Changes(CHANGES), 0, 10, 42, 0.9));
    }

    private static List<ChangeRecord> changes(Line line, RandomNumbers randomNumbers) {
        return simulator(line).run(randomNumbers).changes();
    }

    private static RandomSource source(Line line, String name) {
        return RandomSource.of(line).stream()
                .filter(source -> source.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void runsOfTheSimulatorMeetTheNumbersOfItsSeedAndTheReplication() {
        // Rule RANDOM-2.
        Line line = line().reject(new Reject.Chance(0.3))
                .coils(coil(Distribution.uniform(300, 900)))
                .downtime(Distribution.exponential(900), Distribution.exponential(60))
                .build();

        assertThat(simulator(line).run(new RandomNumbers(42, 3)))
                .isEqualTo(simulator(line).run(3, Detail.CHANGES));
    }

    /** The entry is slower to speed up than the process, which stops again for it and so restarts twice and more. */
    @Test
    void aProcessThatRestartsAgainAtACoilChangeWaitsAFreshDelay() {
        // Rule RANDOM-4.
        Line line = new PlainLine()
                .entry(3, 0.03, 1)
                .process(1.5, 0.5, 0.1)
                .join(160)
                .restart(11.5, Distribution.uniform(0, 0.2))
                .build();

        List<ChangeRecord> changes = changes(line, NUMBERS);

        assertThat(changes).allMatch(change -> change.starvedStops() >= 2);
        // Were every delay the same, so would be what is lost.
        assertThat(changes.stream().map(ChangeRecord::lostMetres).distinct()).hasSizeGreaterThan(CHANGES / 2);
    }

    /** Two elements: what the one and the other give in A and B is the same taken the other way round. */
    @Test
    void anExchangedSourceMeetsTheOtherReplicationsNumbers_andNothingElseDoes() {
        // Rule RANDOM-5.
        Line line = line().build();
        List<ChangeRecord> a = changes(line, NUMBERS);
        List<ChangeRecord> b = changes(line, new RandomNumbers(42, 7));
        List<ChangeRecord> first = changes(line, NUMBERS.exchanging(source(line, "join/work/time"), 7));
        List<ChangeRecord> second = changes(line, NUMBERS.exchanging(source(line, "join/work#2/time"), 7));

        for (int i = 0; i < CHANGES; i++) {
            double asTheyCame = a.get(i).jointCycleTime() + b.get(i).jointCycleTime();
            double exchanged = first.get(i).jointCycleTime() + second.get(i).jointCycleTime();
            assertThat(exchanged).isCloseTo(asTheyCame, within(1e-7));
            assertThat(first.get(i).jointCycleTime()).isNotCloseTo(a.get(i).jointCycleTime(), within(1e-7));
        }
    }

    @Test
    void otherRejects_leaveEveryJointThatIsGoodAtOnceItsTime() {
        // Rule RANDOM-4.
        Line line = line().reject(new Reject.Chance(0.3)).build();
        List<ChangeRecord> as = changes(line, NUMBERS);
        List<ChangeRecord> other = changes(line, NUMBERS.exchanging(source(line, SourceNames.REJECT), 7));

        int compared = 0;
        for (int i = 0; i < CHANGES; i++) {
            if (as.get(i).passes() == 1 && other.get(i).passes() == 1) {
                assertThat(other.get(i).jointCycleTime()).isCloseTo(as.get(i).jointCycleTime(), within(1e-7));
                compared++;
            }
        }
        assertThat(other)
                .extracting(ChangeRecord::passes)
                .isNotEqualTo(as.stream().map(ChangeRecord::passes).toList());
        assertThat(compared).isBetween(10, CHANGES - 10);
    }

    @Test
    void aRejectedJointIsMadeAgainWithFreshTimes_theSameInEveryRun() {
        // Rule RANDOM-4.
        Line line = line().reject(new Reject.Chance(0.5)).build();
        Line oftener = line().reject(new Reject.Chance(0.6)).build();
        List<ChangeRecord> changes = changes(line, NUMBERS);
        List<ChangeRecord> more = changes(oftener, NUMBERS);

        int twice = 0;
        for (int i = 0; i < CHANGES; i++) {
            // What is rejected at 50 % is rejected at 60 % as well, throughout the run.
            assertThat(more.get(i).passes())
                    .isGreaterThanOrEqualTo(changes.get(i).passes());
            if (changes.get(i).passes() == 2 && more.get(i).passes() == 2) {
                assertThat(more.get(i).jointCycleTime())
                        .isCloseTo(changes.get(i).jointCycleTime(), within(1e-7));
                twice++;
            }
        }
        assertThat(twice).isGreaterThan(5);
        double once = changes.stream()
                .filter(change -> change.passes() == 1)
                .mapToDouble(ChangeRecord::jointCycleTime)
                .average()
                .orElseThrow();
        double again = changes.stream()
                .filter(change -> change.passes() == 2)
                .mapToDouble(ChangeRecord::jointCycleTime)
                .average()
                .orElseThrow();
        // Made again, the next coil's preparation included, it takes 100 s, 60 s and 15 s more on average, with a
        // standard
        // deviation of about 50 s; there are more than five of them.
        assertThat(again - once).isBetween(175 - 70.0, 175 + 70.0);
        assertThat(changes.stream().filter(change -> change.passes() == 2).map(ChangeRecord::jointCycleTime))
                .doesNotHaveDuplicates();
    }

    @Test
    void anElementThatComesByChance_leavesLaterOnesTheirTimes() {
        // Rule RANDOM-4.
        Line line = line().join(chance(0.4, 500)).build();
        List<ChangeRecord> as = changes(line, NUMBERS);
        List<ChangeRecord> other = changes(line, NUMBERS.exchanging(source(line, "join/work by chance/chance"), 7));

        for (int i = 0; i < CHANGES; i++) {
            double difference =
                    Math.abs(other.get(i).jointCycleTime() - as.get(i).jointCycleTime());
            assertThat(Math.min(difference, Math.abs(difference - 500))).isLessThan(1e-7);
        }
    }

    /** What follows a rejected joint is the same as if it had been good: coils, times, rejects, downtime. */
    @Test
    void aRejectedJoint_leavesEverythingLaterItsNumbers() {
        // Rule RANDOM-4.
        PlainLine good = line().coils(coil(Distribution.uniform(300, 900)));
        List<ChangeRecord> none = changes(good.build(), NUMBERS);
        List<ChangeRecord> third = changes(good.reject(new Reject.Every(3)).build(), NUMBERS);

        for (int i = 0; i < CHANGES; i++) {
            ChangeRecord change = third.get(i);
            assertThat(change.passes()).isEqualTo(change.number() % 3 == 0 ? 2 : 1);
            if (change.passes() == 1) {
                assertThat(change.jointCycleTime()).isCloseTo(none.get(i).jointCycleTime(), within(1e-7));
            } else {
                assertThat(change.jointCycleTime()).isGreaterThan(none.get(i).jointCycleTime() + 20);
            }
        }
    }

    @Test
    void anExchangedSourceTakesAnotherReplicationsNumbers_theOthersTheirOwn() {
        // Rule RANDOM-5.
        Line line = line().build();
        RandomNumbers exchanged = NUMBERS.exchanging(source(line, "join/work/time"), 7);

        for (int index = 1; index < 20; index++) {
            assertThat(exchanged.source("join/work/time").uniform(index, 1))
                    .isEqualTo(new RandomNumbers(42, 7).source("join/work/time").uniform(index, 1))
                    .isNotEqualTo(NUMBERS.source("join/work/time").uniform(index, 1));
            assertThat(exchanged.source("join/work#2/time").uniform(index, 1))
                    .isEqualTo(NUMBERS.source("join/work#2/time").uniform(index, 1));
        }
    }

    @Test
    void namesOfSources() {
        // Rule RANDOM-3.
        assertThat(RandomSource.of(EverySource.line()))
                .extracting(RandomSource::name)
                .containsExactly(
                        "coil/kind",
                        "coil/length",
                        "coil/mass",
                        "sheet/tuesday.csv",
                        "prepare/work/time",
                        "join/work/time",
                        "join/work#2/time",
                        "join/work#3/time",
                        "join/work by chance/chance",
                        "reject",
                        "restart",
                        "own-stop/running",
                        "own-stop/standing",
                        "break",
                        "break/place",
                        "break/repair");
        assertThat(RandomSource.of(
                        new PlainLine().rethread(Distribution.uniform(300, 600)).build()))
                .extracting(RandomSource::name)
                .containsExactly("rethread");
    }

    @Test
    void sourcesAreThoseThatDrawSomething_byNameAndList() {
        Line line = line().tail(element(Distribution.constant(8)))
                .join(chance(0.4, 500))
                .join(chance(1, 500))
                .reject(new Reject.Chance(0.02))
                .restart(Double.NaN, Distribution.uniform(10, 20))
                .build();

        assertThat(RandomSource.of(line))
                .extracting(RandomSource::kind, RandomSource::list, RandomSource::element)
                .containsExactly(
                        tuple(Kind.DURATION, WorkList.PREPARE, "work"),
                        tuple(Kind.DURATION, WorkList.JOIN, "work"),
                        tuple(Kind.DURATION, WorkList.JOIN, "work#2"),
                        tuple(Kind.OCCURRENCE, WorkList.JOIN, "work by chance"),
                        org.assertj.core.groups.Tuple.tuple(Kind.REJECT, Optional.empty(), ""),
                        org.assertj.core.groups.Tuple.tuple(Kind.RESTART_DELAY, Optional.empty(), ""));
    }

    @Test
    void sourcesAreCalledWhatPeopleCallThem() {
        MeasuredRows rows = MeasuredRows.of("a sheet", List.of(List.of(50.0), List.of(60.0)));
        Line line = new PlainLine()
                .coilSource(new CoilSource.Mix(List.of(
                        new CoilSource.Share(coil(600), 0.5),
                        new CoilSource.Share(coil(Distribution.uniform(1, 9)), 0.5))))
                .tail(element(Distribution.exponential(8)))
                .tail(new WorkElement("cut", new WorkTime.FromRows(rows, 0, 1), new Occurrence.Always(), true))
                .join(chance(0.4, 500))
                .reject(new Reject.Chance(0.02))
                .restart(Double.NaN, Distribution.uniform(10, 20))
                .downtime(Distribution.exponential(900), Distribution.exponential(60))
                .build();
        Line rethreading = new PlainLine()
                .tail(element(Distribution.exponential(8)))
                .rethread(Distribution.uniform(300, 600))
                .build();

        assertThat(RandomSource.of(line))
                .extracting(RandomSource::label)
                .containsExactly(
                        "which coil comes",
                        "length of the coils",
                        "row of measured times in a sheet",
                        "work (tail)",
                        "work by chance (join), whether done",
                        "rejects",
                        "restart delay",
                        "running time until process downtime",
                        "length of process downtime");
        assertThat(RandomSource.of(rethreading)).extracting(RandomSource::label).containsExactly("rethread");
    }

    private static org.assertj.core.groups.Tuple tuple(Kind kind, WorkList list, String name) {
        return org.assertj.core.groups.Tuple.tuple(kind, Optional.of(list), name);
    }

    @Test
    void rethreadingHasItsOwnTimeAndNoRejects_mixedCoilsTheirChoice() {
        Line line = line().reject(new Reject.Chance(0.02))
                .rethread(Distribution.uniform(300, 600))
                .downtime(Distribution.exponential(900), Distribution.constant(60))
                .coilSource(new CoilSource.Mix(
                        List.of(new CoilSource.Share(coil(600), 0.5), new CoilSource.Share(coil(300), 0.5))))
                .build();

        assertThat(RandomSource.of(line))
                .extracting(RandomSource::kind)
                .containsExactly(Kind.COIL_KIND, Kind.DURATION, Kind.RETHREAD, Kind.OWN_RUNNING);
    }

    @Test
    void aLineWithoutChanceHasNoSources() {
        assertThat(RandomSource.of(new PlainLine().join(60).build())).isEmpty();
    }
}
