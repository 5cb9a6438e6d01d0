package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.MeasuredRows;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.WorkRecord.WorkList;

class DrawTableTest {
    private static final int REPLICATION = 2;
    private static final long SEED = 7;

    private final LineBuilder line = new LineBuilder()
            .coilSource(new CoilSource.Mix(List.of(
                    new CoilSource.Share(LineBuilder.coil(Distribution.uniform(400, 600)), 1),
                    new CoilSource.Share(LineBuilder.coil(Distribution.uniform(600, 800)), 2))))
            .prepare(LineBuilder.chance(0.4, 30))
            .join(Distribution.lognormal(60, 20))
            .reject(new Reject.Chance(0.3));

    @Test
    void isWhatTheReplicationDraws() throws IOException {
        Replication run = new LineSimulator(
                        line.build(), new RunPlan(new Extent.Changes(20), 0, REPLICATION + 1, SEED, 0.9))
                .run(REPLICATION, Detail.ELEMENTS);

        assertThat(drawn("join 1 time"))
                .startsWith(run.work().stream()
                        .filter(work -> work.list() == WorkList.JOIN)
                        .map(work -> work.end() - work.start())
                        .map(DrawTableTest::rounded)
                        .toArray(Double[]::new));
        assertThat(drawn("coil kind"))
                .startsWith(run.changes().stream()
                        .map(change -> (double) change.tailCoil())
                        .toArray(Double[]::new));
        // A pass more for each 1 in front of the 0 that ends a coil change.
        List<Double> rejects = drawn("reject");
        int draws = run.changes().stream().mapToInt(ChangeRecord::passes).sum();
        assertThat(rejects.subList(0, draws).stream().mapToDouble(r -> r).sum()).isEqualTo(draws - 20);
        assertThat(drawn("prepare 1 done").subList(0, 20)).contains(0.0, 1.0);
        assertThat(rejects).hasSize(60);
    }

    @Test
    void givesTheUsableLengthThatTheCoilRuns() throws IOException {
        // Speeds change at once, process 1.5 m/s: the first coil change starts when coil 1 has run out.
        ChangeRecord first = new LineSimulator(
                        line.build(), new RunPlan(new Extent.Changes(1), 0, REPLICATION + 1, SEED, 0.9))
                .run(REPLICATION, Detail.CHANGES)
                .changes()
                .get(0);

        assertThat(table("coil usable length").get(0)).isCloseTo(1.5 * first.start(), within(1e-9));
    }

    @Test
    void isATableWithAHeaderAndARowForEachDraw() throws IOException {
        StringBuilder out = new StringBuilder();
        new DrawTable(new LineBuilder().join(60).build(), SEED, 0, 1, 2).writeTo(out);

        assertThat(out.toString()).isEqualTo("""
                source,draw,value
                coil kind,1,0.0
                coil usable length,1,600.0
                join 1 time,1,60.0
                join 1 time,2,60.0
                restart delay,1,0.0
                restart delay,2,0.0
                """);
    }

    /** Rows 0 to 2 take 50, 60 and 70 s, times that no other element has; every joint is made again once. */
    @Test
    void hasTheRowsThatCoilChangesTake_alsoThoseOfJointsMadeAgain() throws IOException {
        MeasuredRows rows = MeasuredRows.of("a sheet", List.of(List.of(50.0), List.of(60.0), List.of(70.0)));
        LineBuilder measured = new LineBuilder()
                .join(new WorkElement("weld", new WorkTime.FromRows(rows, 0, 1), new Occurrence.Always(), true))
                .reject(new Reject.Every(1));
        Replication run = measured.run(20);

        Map<Integer, List<Double>> joints = run.work().stream()
                .collect(Collectors.groupingBy(
                        WorkRecord::pass,
                        Collectors.mapping(
                                work -> (rounded(work.end() - work.start()) - 50) / 10, Collectors.toList())));
        assertThat(table(measured, 0, "rows 1")).startsWith(first(joints, 1));
        assertThat(table(measured, 0, "rows 1 again"))
                .startsWith(first(joints, 2))
                .contains(0.0, 1.0, 2.0);
    }

    private static Double[] first(Map<Integer, List<Double>> joints, int pass) {
        return Objects.requireNonNull(joints.get(pass)).toArray(Double[]::new);
    }

    @Test
    void ofALineThatIsThreadedAnew_hasThatAndThePreparation() throws IOException {
        LineBuilder anew = new LineBuilder()
                .prepare(LineBuilder.element(Distribution.uniform(20, 40)))
                .tail(LineBuilder.element(Distribution.uniform(1, 2)))
                .rethread(Distribution.uniform(300, 600));
        Replication run = anew.run(5);

        assertThat(table(anew, 0, "rethread").stream().map(DrawTableTest::rounded))
                .startsWith(run.changes().stream()
                        .map(change -> rounded(change.jointTime() - change.waiting()))
                        .toArray(Double[]::new));
        assertThat(table(anew, 0, "prepare 1 time")).hasSize(60).allMatch(time -> time >= 20 && time <= 40);
        assertThat(table(anew, 0, "tail 1 time")).isEmpty();
    }

    @Test
    void hasTailWorkAndTheOwnStops() throws IOException {
        LineBuilder stopping = new LineBuilder()
                .tail(LineBuilder.element(Distribution.uniform(1, 2)))
                .join(60)
                .downtime(Distribution.uniform(100, 200), Distribution.uniform(3, 4));
        Replication run = stopping.run(3);
        Course course = Course.of(run);

        assertThat(table(stopping, 0, "tail 1 time").get(0))
                .isCloseTo(run.work().get(0).end() - run.work().get(0).start(), within(1e-6));
        // The first stop of its own comes when the process has run so long, and lasts so long; speeds change at once.
        double stops = table(stopping, 0, "own running time").get(0);
        double goesOn = stops + table(stopping, 0, "own standing time").get(0);
        assertThat(course.processSpeed(stops - 1e-6)).isEqualTo(1.5);
        assertThat(course.processSpeed(stops + 1e-6)).isZero();
        assertThat(course.processSpeed(goesOn - 1e-6)).isZero();
        assertThat(course.processSpeed(goesOn + 1e-6)).isEqualTo(1.5);
    }

    private List<Double> drawn(String source) throws IOException {
        return table(source).stream().map(DrawTableTest::rounded).toList();
    }

    private List<Double> table(String source) throws IOException {
        return table(line, REPLICATION, source);
    }

    private static List<Double> table(LineBuilder line, int replication, String source) throws IOException {
        StringBuilder out = new StringBuilder();
        new DrawTable(line.build(), SEED, replication, 21, 60).writeTo(out);
        return out.toString()
                .lines()
                .map(row -> row.split(","))
                .filter(cells -> cells[0].equals(source))
                .map(cells -> Double.valueOf(cells[2]))
                .toList();
    }

    /** Times of a run are differences of large numbers. */
    private static double rounded(double value) {
        return Math.rint(value * 1e6) / 1e6;
    }
}
