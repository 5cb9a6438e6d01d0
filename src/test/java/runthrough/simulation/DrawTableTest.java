package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
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
import runthrough.simulation.random.DrawTable;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.RandomSource;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.WorkList;

class DrawTableTest {
    private static final int REPLICATION = 2;
    private static final long SEED = 7;
    private static final int LAST = 21;
    private static final int REPEATS = 6;

    private final PlainLine line = new PlainLine()
            .coilSource(new CoilSource.Mix(List.of(
                    new CoilSource.Share(PlainLine.coil(Distribution.uniform(400, 600)), 1),
                    new CoilSource.Share(PlainLine.coil(Distribution.uniform(600, 800)), 2))))
            .prepare(PlainLine.chance(0.4, 30))
            .join(Distribution.lognormal(60, 20))
            .reject(new Reject.Chance(0.3));

    @Test
    void isWhatTheReplicationDraws() throws IOException {
        Replication run = LineSimulator.of(
                        line.build(), new RunPlan(new Extent.Changes(20), 0, REPLICATION + 1, SEED, 0.9))
                .run(REPLICATION, Detail.ELEMENTS);
        Map<String, Double> table = table(line, REPLICATION);

        for (WorkRecord work : run.work()) {
            if (work.list() == WorkList.JOIN) {
                assertThat(work.end() - work.start())
                        .isCloseTo(at(table, "join/work/time", work.change(), work.pass() - 1), within(1e-6));
            }
        }
        for (ChangeRecord change : run.changes()) {
            assertThat(at(table, "coil/kind", change.number(), 0)).isEqualTo(change.tailCoil());
            for (int pass = 1; pass <= change.passes(); pass++) {
                assertThat(at(table, "reject", change.number(), pass - 1)).isEqualTo(pass < change.passes() ? 1 : 0);
            }
        }
        List<Integer> prepared = run.work().stream()
                .filter(work -> work.list() == WorkList.PREPARE && work.pass() == 1)
                .map(WorkRecord::change)
                .filter(change -> change <= 20)
                .toList();
        assertThat(IntStream.rangeClosed(1, 20)
                        .filter(change -> at(table, "prepare/work by chance/chance", change, 0) == 1)
                        .boxed()
                        .toList())
                .isEqualTo(prepared)
                .isNotEmpty();
    }

    @Test
    void givesTheLengthThatTheCoilRuns() throws IOException {
        // Speeds change at once, process 1.5 m/s: the first coil change starts when coil 1 has run out.
        ChangeRecord first = LineSimulator.of(
                        line.build(), new RunPlan(new Extent.Changes(1), 0, REPLICATION + 1, SEED, 0.9))
                .run(REPLICATION, Detail.CHANGES)
                .changes()
                .get(0);

        assertThat(at(table(line, REPLICATION), "coil/length", 1, 0)).isCloseTo(1.5 * first.start(), within(1e-9));
    }

    /** By src/test/python/random_numbers.py: uniform numbers u, and 10 s + 20 s u. */
    @Test
    void isATableWithAHeaderAndARowForEachDraw() throws IOException {
        PlainLine brief = new PlainLine().join(60).join(Distribution.uniform(10, 30));
        StringBuilder out = new StringBuilder();
        new DrawTable(brief.reject(new Reject.Every(5)).build(), new RandomNumbers(SEED, 0), 2, 1).writeTo(out);

        assertThat(out.toString()).isEqualTo("""
                source,index,repeat,uniform,value
                join/work#2/time,1,0,0.5652711720210085,21.30542344042017
                join/work#2/time,1,1,0.5882853643654079,21.76570728730816
                join/work#2/time,2,0,0.22057735582092663,14.411547116418532
                join/work#2/time,2,1,0.09158373935732012,11.831674787146403
                """);
    }

    @Test
    void ofALineInWhichNothingIsRandom_hasNoRows() throws IOException {
        assertThat(table(new PlainLine().join(60).reject(new Reject.Every(2)), 0))
                .isEmpty();
    }

    @Test
    void aNameThatHoldsACommaOrQuotesIsQuoted() throws IOException {
        WorkElement fit = new WorkElement(
                "fit, \"square\"", new WorkTime.Timed(Distribution.uniform(10, 30)), new Occurrence.Always(), true);
        StringBuilder out = new StringBuilder();
        new DrawTable(new PlainLine().join(fit).build(), new RandomNumbers(SEED, 0), 1, 0).writeTo(out);

        assertThat(out.toString().lines().skip(1))
                .singleElement()
                .asString()
                .startsWith("\"join/fit, \"\"square\"\"/time\",1,0,0.");
    }

    /** Rows 0 to 2 take 50, 60 and 70 s, times that no other element has; every joint is made again once. */
    @Test
    void hasTheRowsThatCoilChangesTake_alsoThoseOfJointsMadeAgain() throws IOException {
        MeasuredRows rows = MeasuredRows.of("a sheet", List.of(List.of(50.0), List.of(60.0), List.of(70.0)));
        PlainLine measured = new PlainLine()
                .join(new WorkElement("weld", new WorkTime.FromRows(rows, 0, 1), new Occurrence.Always(), true))
                .reject(new Reject.Every(1));
        Map<String, Double> table = table(measured, 0);

        for (WorkRecord work : measured.run(20).work()) {
            assertThat((work.end() - work.start() - 50) / 10)
                    .isCloseTo(at(table, "sheet/a sheet", work.change(), work.pass() - 1), within(1e-6));
        }
        assertThat(table.values()).contains(0.0, 1.0, 2.0);
    }

    @Test
    void ofALineThatIsThreadedAnew_hasThatAndThePreparation() throws IOException {
        PlainLine anew = new PlainLine()
                .prepare(PlainLine.element(Distribution.uniform(20, 40)))
                .tail(PlainLine.element(Distribution.uniform(1, 2)))
                .rethread(Distribution.uniform(300, 600));
        Map<String, Double> table = table(anew, 0);

        for (ChangeRecord change : anew.run(5).changes()) {
            assertThat(change.jointCycleTime() - change.waiting())
                    .isCloseTo(at(table, "rethread", change.number(), 0), within(1e-6));
        }
        assertThat(table.keySet())
                .hasSize(2 * LAST)
                .allMatch(key -> key.startsWith("rethread,") || key.startsWith("prepare/work/time,"));
    }

    @Test
    void hasTailWorkAndTheDowntime() throws IOException {
        PlainLine stopping = new PlainLine()
                .tail(PlainLine.element(Distribution.uniform(1, 2)))
                .join(60)
                .downtime(Distribution.uniform(100, 200), Distribution.uniform(3, 4));
        Replication run = stopping.run(3);
        Course course = Course.of(run);
        Map<String, Double> table = table(stopping, 0);

        assertThat(at(table, "tail/work/time", 1, 0))
                .isCloseTo(run.work().get(0).end() - run.work().get(0).start(), within(1e-6));
        // The first process downtime comes when the process has run so long, and lasts so long; speeds change at once.
        double stops = at(table, "own-stop/running", 1, 0);
        double goesOn = stops + at(table, "own-stop/standing", 1, 0);
        assertThat(course.processSpeed(stops - 1e-6)).isEqualTo(1.5);
        assertThat(course.processSpeed(stops + 1e-6)).isZero();
        assertThat(course.processSpeed(goesOn - 1e-6)).isZero();
        assertThat(course.processSpeed(goesOn + 1e-6)).isEqualTo(1.5);
    }

    /** The second downtime takes the second numbers, its clock running on from the end of the first. */
    @Test
    void theSecondDowntimeTakesTheSecondNumbers() throws IOException {
        PlainLine stopping =
                new PlainLine().join(1).downtime(Distribution.uniform(100, 200), Distribution.uniform(3, 4));
        Course course = Course.of(stopping.run(3));
        Map<String, Double> table = table(stopping, 0);

        double stops = at(table, "own-stop/running", 1, 0)
                + at(table, "own-stop/standing", 1, 0)
                + at(table, "own-stop/running", 2, 0);
        double goesOn = stops + at(table, "own-stop/standing", 2, 0);
        assertThat(course.processSpeed(stops - 1e-6)).isEqualTo(1.5);
        assertThat(course.processSpeed(stops + 1e-6)).isZero();
        assertThat(course.processSpeed(goesOn - 1e-6)).isZero();
        assertThat(course.processSpeed(goesOn + 1e-6)).isEqualTo(1.5);
    }

    @Test
    void hasEverySourceOfTheLineAndNoOther() throws IOException {
        Line whole = EverySource.line();

        assertThat(table(whole, 0).keySet().stream()
                        .map(key -> key.substring(0, key.indexOf(',')))
                        .distinct())
                .containsExactlyElementsOf(
                        RandomSource.of(whole).stream().map(RandomSource::name).toList());
    }

    /** The value at a source, index and repeat. */
    private static double at(Map<String, Double> table, String source, int index, int repeat) {
        return Objects.requireNonNull(table.get(source + "," + index + "," + repeat));
    }

    private static Map<String, Double> table(PlainLine line, int replication) throws IOException {
        return table(line.build(), replication);
    }

    private static Map<String, Double> table(Line line, int replication) throws IOException {
        StringBuilder out = new StringBuilder();
        new DrawTable(line, new RandomNumbers(SEED, replication), LAST, REPEATS).writeTo(out);
        Map<String, Double> values = new LinkedHashMap<>();
        out.toString()
                .lines()
                .skip(1)
                .map(row -> row.split(","))
                .forEach(cells -> values.put(cells[0] + "," + cells[1] + "," + cells[2], Double.valueOf(cells[4])));
        return values;
    }
}
