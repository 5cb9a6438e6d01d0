package runthrough.simulation;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;

/**
 * The engine, next to a bare model of the same events and to the random numbers alone; ns for each coil change. Each
 * measures a whole replication, its making included.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(3)
public class EngineBenchmark {
    private static final int LONG = 10_000;
    private static final int SHORT = 200;

    private final LineSimulator longRun = BenchmarkLine.simulator(BenchmarkLine.CAPACITY, LONG);
    private final LineSimulator shortRun = BenchmarkLine.simulator(BenchmarkLine.CAPACITY, SHORT);
    private int replication;

    /** Where the process never stops, engine and bare model are one: same times to rounding. */
    @Setup
    public void checkThatTheSameIsMeasured() {
        double plenty = 2000;
        Replication engine = BenchmarkLine.simulator(plenty, SHORT).run(0, Detail.CHANGES);
        BareModel bare = new BareModel(0, plenty, SHORT);
        bare.run();
        same("duration", engine.totals().duration(), bare.now());
        same("joint cycle time", engine.totals().jointSeconds(), bare.jointSeconds());
        double refill =
                engine.changes().stream().mapToDouble(ChangeRecord::refillTime).sum();
        same("refill time", refill, bare.refillSeconds());
    }

    private static void same(String what, double engine, double bare) {
        if (!(Math.abs(engine - bare) <= 1e-9 * engine)) {
            throw new IllegalStateException(what + ": engine " + engine + ", bare model " + bare);
        }
    }

    @Benchmark
    @OperationsPerInvocation(LONG)
    public double drawsAlone() {
        BareDraws draws = new BareDraws(replication++);
        double sum = 0;
        for (int change = 1; change <= LONG; change++) {
            sum += draws.ofChange(change);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(LONG)
    public double bareModel() {
        BareModel model = new BareModel(replication++, BenchmarkLine.CAPACITY, LONG);
        model.run();
        return model.jointSeconds();
    }

    @Benchmark
    @OperationsPerInvocation(LONG)
    public Replication engine() {
        return longRun.run(replication++, Detail.CHANGES);
    }

    @Benchmark
    @OperationsPerInvocation(SHORT)
    public double bareModelShort() {
        BareModel model = new BareModel(replication++, BenchmarkLine.CAPACITY, SHORT);
        model.run();
        return model.jointSeconds();
    }

    @Benchmark
    @OperationsPerInvocation(SHORT)
    public Replication engineShort() {
        return shortRun.run(replication++, Detail.CHANGES);
    }
}
