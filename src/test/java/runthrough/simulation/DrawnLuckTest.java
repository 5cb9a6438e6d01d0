package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.Supply;
import runthrough.simulation.WorkRecord.WorkList;

class DrawnLuckTest {
    private static final int REPLICATION = 2;
    private static final long SEED = 7;

    private final LineBuilder line = new LineBuilder()
            .supply(new Supply.Mix(List.of(
                    new Supply.Share(LineBuilder.coil(Distribution.uniform(400, 600)), 1),
                    new Supply.Share(LineBuilder.coil(Distribution.uniform(600, 800)), 2))))
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
                        .map(DrawnLuckTest::rounded)
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
        new DrawnLuck(new LineBuilder().join(60).build(), SEED, 0, 1, 2).writeTo(out);

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

    private List<Double> drawn(String source) throws IOException {
        return table(source).stream().map(DrawnLuckTest::rounded).toList();
    }

    private List<Double> table(String source) throws IOException {
        StringBuilder out = new StringBuilder();
        new DrawnLuck(line.build(), SEED, REPLICATION, 21, 60).writeTo(out);
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
