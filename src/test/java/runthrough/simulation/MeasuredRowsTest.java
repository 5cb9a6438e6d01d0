package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import runthrough.handcalc.JointCycleTime;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Joint;
import runthrough.plant.Joints;
import runthrough.plant.MeasuredRows;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.WorkList;

/** Rows of three columns: the second is ten times the first, the third a hundred times, but for a blank in row 4. */
class MeasuredRowsTest {
    private static final double NONE = Double.NaN;
    private static final MeasuredRows ROWS = MeasuredRows.of(
            "a sheet",
            List.of(
                    List.of(1.0, 10.0, 100.0),
                    List.of(2.0, 20.0, 200.0),
                    List.of(3.0, 30.0, 300.0),
                    List.of(4.0, 40.0, NONE)));

    private static WorkElement element(int column) {
        return new WorkElement(
                "column " + column, new WorkTime.FromRows(ROWS, column, 1), new Occurrence.Always(), true);
    }

    private static PlainLine line() {
        return new PlainLine().coils(PlainLine.coil(900)).tail(element(0)).join(element(1));
    }

    /** The durations of a coil change and pass, element by element. */
    private static Map<String, List<Double>> durations(Replication run) {
        Map<String, List<Double>> all = new TreeMap<>();
        for (WorkRecord work : run.work()) {
            all.computeIfAbsent(work.change() + "/" + work.pass(), key -> new ArrayList<>())
                    .add((double) Math.round(1000 * (work.end() - work.start())) / 1000);
        }
        return all;
    }

    @Test
    void elementsOfTheSameRowsTakeTheSameRow_alsoWhatIsPreparedAhead() {
        // Rule CHANGE-5.
        Replication run = line().prepare(element(2)).uncoilers(3, 0).run(200);

        Map<Integer, Double> tails = times(run, WorkList.TAIL);
        Map<Integer, Double> joints = times(run, WorkList.JOIN);
        Map<Integer, Double> prepared = times(run, WorkList.PREPARE);
        for (int change = 1; change <= 200; change++) {
            double tail = Objects.requireNonNull(tails.get(change));
            assertThat(joints.get(change)).isCloseTo(10 * tail, within(1e-6));
            if (tail < 3.5) {
                assertThat(prepared.get(change)).isCloseTo(100 * tail, within(1e-6));
            }
        }
        assertThat(tails.values().stream().map(Math::round).distinct()).containsExactlyInAnyOrder(1L, 2L, 3L, 4L);
    }

    private static Map<Integer, Double> times(Replication run, WorkList list) {
        Map<Integer, Double> times = new TreeMap<>();
        run.work().stream()
                .filter(work -> work.list() == list)
                .forEach(work -> times.put(work.change(), work.end() - work.start()));
        return times;
    }

    @Test
    void aBlankIsDrawnFromTheOtherValuesOfItsColumn() {
        // Rule CHANGE-5.
        Replication run = line().prepare(element(2)).run(300);
        Map<Integer, Double> tails = times(run, WorkList.TAIL);

        List<Long> forBlanks = times(run, WorkList.PREPARE).entrySet().stream()
                .filter(entry -> Math.round(tails.getOrDefault(entry.getKey(), 0.0)) == 4)
                .map(entry -> Math.round(entry.getValue()))
                .distinct()
                .toList();

        assertThat(forBlanks).containsExactlyInAnyOrder(100L, 200L, 300L);
    }

    @Test
    void aJointMadeAgainTakesAFreshRow_theSameForAllItsElements() {
        // Rule CHANGE-5.
        Replication run = line().reject(new Reject.Every(1)).run(200);
        Map<String, List<Double>> durations = durations(run);

        long different = 0;
        Set<Long> again = new TreeSet<>();
        for (int change = 1; change <= 200; change++) {
            List<Double> first = Objects.requireNonNull(durations.get(change + "/1"));
            List<Double> second = Objects.requireNonNull(durations.get(change + "/2"));
            assertThat(second.get(1)).isCloseTo(10 * second.get(0), within(1e-2));
            different += first.get(0).equals(second.get(0)) ? 0 : 1;
            again.add(Math.round(second.get(0)));
        }
        // Three in four; standard error of 200 such draws 6.1.
        assertThat((double) different).isCloseTo(150, within(3 * 6.2));
        assertThat(again).containsExactly(1L, 2L, 3L, 4L);
    }

    /** Seconds of the one sheet are 1 to 4, those of the other 50, 60 and 70: rows 1 to 3 of both, taken apart. */
    @Test
    void elementsOfTwoSheetsTakeEachARowOfTheirOwn() {
        MeasuredRows other = MeasuredRows.of("another sheet", List.of(List.of(50.0), List.of(60.0), List.of(70.0)));
        WorkElement inspect =
                new WorkElement("inspect", new WorkTime.FromRows(other, 0, 1), new Occurrence.Always(), true);
        Replication run = new PlainLine()
                .coils(PlainLine.coil(900))
                .tail(element(0))
                .join(inspect)
                .run(400);
        Map<Integer, Double> tails = times(run, WorkList.TAIL);
        Map<Integer, Double> joints = times(run, WorkList.JOIN);

        Set<String> pairs = new TreeSet<>();
        joints.forEach((change, time) ->
                pairs.add(Math.round(Objects.requireNonNull(tails.get(change))) + " and " + Math.round(time)));

        // Each of the 12 pairs comes with 1 in 12: that one of 400 draws misses any of them has a chance of 1e-14.
        assertThat(pairs).hasSize(12).contains("1 and 70", "4 and 50");
    }

    @Test
    void rowsKeepTheirRandomNumbersWhenOtherElementsComeAndGo() {
        Map<Integer, Double> alone = times(line().run(50), WorkList.TAIL);
        Map<Integer, Double> withOthers = times(
                line().prepare(PlainLine.element(Distribution.exponential(60)))
                        .join(Distribution.uniform(1, 5))
                        .run(50),
                WorkList.TAIL);

        alone.forEach((change, time) -> assertThat(withOthers.get(change)).isCloseTo(time, within(1e-6)));
    }

    @Test
    void eachRowComesEquallyOften_andTheHandCalculationTakesTheMeanOfTheColumns() {
        Replication run = line().run(4000);
        double mean = run.changes().stream()
                .mapToDouble(ChangeRecord::jointCycleTime)
                .average()
                .orElseThrow();

        // Rows 11, 22, 33, 44 s: mean 27.5, standard deviation 12.3, standard error of 4000 draws 0.19.
        assertThat(mean).isCloseTo(27.5, within(3 * 0.2));
        assertThat(JointCycleTime.of(line().build().change(), Joints.only(Joint.alike(1, 0.002)))
                        .total())
                .isCloseTo(27.5, within(1e-12));
    }

    @Test
    void correlationMakesLongJointsLongerThanIndependentDrawsWould() {
        Replication together = line().run(4000);
        Replication apart = new PlainLine()
                .coils(PlainLine.coil(900))
                .tail(PlainLine.element(ROWS.column(0)))
                .join(PlainLine.element(ROWS.column(1)))
                .run(4000);

        // 44 s comes in one of 4 rows; drawn apart in one of 16 cases. Standard errors 0.7 % and 0.4 %.
        assertThat(shareOf44(together)).isCloseTo(0.25, within(0.021));
        assertThat(shareOf44(apart)).isCloseTo(0.0625, within(0.012));
    }

    private static double shareOf44(Replication run) {
        return run.changes().stream()
                        .filter(change -> change.jointCycleTime() > 43.5)
                        .count()
                / 4000.0;
    }

    @Test
    void resampledRowsAreTheRowsNamed_andAColumnOfBlanksKeepsItsDistribution() {
        MeasuredRows twice = ROWS.resampled(new int[] {3, 3, 0});
        MeasuredRows blank = ROWS.resampled(new int[] {3, 3});

        assertThat(twice.count()).isEqualTo(3);
        assertThat(twice.column(1).mean()).isEqualTo(30);
        assertThat(twice.column(2).mean()).isEqualTo(100);
        assertThat(blank.column(2).mean()).isEqualTo(200);
        assertThat(blank).isNotEqualTo(ROWS);
        assertThat(ROWS.resampled(new int[] {0, 1, 2, 3})).isEqualTo(ROWS).hasSameHashCodeAs(ROWS);
    }

    @Test
    void workThatTakesLongerTakesItsRowsLonger() {
        WorkElement slow = element(1).takingTimes(1.5);
        Replication run = new PlainLine()
                .coils(PlainLine.coil(900))
                .tail(element(0))
                .join(slow)
                .run(50);
        Map<Integer, Double> tails = times(run, WorkList.TAIL);

        times(run, WorkList.JOIN)
                .forEach((change, time) ->
                        assertThat(time).isCloseTo(15 * Objects.requireNonNull(tails.get(change)), within(1e-6)));
    }
}
