package runthrough.study;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Unit;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.study.map.MapAxis;
import runthrough.study.map.MapPlan;
import runthrough.study.map.MapStore;
import runthrough.study.map.MapStudy;
import runthrough.study.map.MapVariants;
import runthrough.study.map.ShareMap;

/**
 * A map of 2,500 points with 2,000 coil changes each, every point run in full. It is to keep all processors busy to 85 %; where it
 * does not, this fails before it measures. Run it on a machine that does nothing else.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class MapBenchmark {
    private static final int SIDE = 50;
    private static final int REPLICATIONS = 10;
    private static final double BUSY = 0.85;
    private static final int PROCESSORS = Runtime.getRuntime().availableProcessors();

    private final SimulationRequest request = shipped();

    private static SimulationRequest shipped() {
        ScenarioReading reading =
                ScenarioFile.open(Path.of("scenarios", "tube-line.yaml")).read();
        if (reading instanceof ScenarioReading.Accepted accepted) {
            SimulationRequest request = accepted.request();
            return request.with(request.run().withReplications(REPLICATIONS));
        }
        throw new IllegalStateException("the shipped tube line is refused");
    }

    @Setup
    public void checkTheBar() {
        map();
        long wall = System.nanoTime();
        long processor = processorTime();
        map();
        double busy = (double) (processorTime() - processor) / (System.nanoTime() - wall) / PROCESSORS;
        if (!(busy >= BUSY)) {
            throw new IllegalStateException("the processors are busy to " + busy + " only");
        }
    }

    /** Of the whole process (ns). */
    private static long processorTime() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    @Benchmark
    public ShareMap map() {
        MapPlan plan = new MapPlan(
                new MapAxis("joint-cycle-time", Optional.of(Unit.SECOND), 40, 110, SIDE),
                new MapAxis("usable-capacity", Optional.of(Unit.METRE), 40, 120, SIDE),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                1);
        MapVariants variants = (x, y) -> {
            Line quicker = LineFigure.JOINT_CYCLE_TIME.with(request.line(), x);
            return new MapVariants.Variant.Possible(LineFigure.USABLE_CAPACITY.with(quicker, y));
        };
        return new MapStudy(request, request.run().target(), plan, variants)
                .run(PROCESSORS, StudyListener.NONE, MapStore.NONE);
    }
}
