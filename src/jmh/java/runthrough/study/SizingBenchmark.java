package runthrough.study;

import java.nio.file.Path;
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
import runthrough.plant.SimulationRequest;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.study.sizing.Sizing;
import runthrough.study.sizing.SizingOptions;
import runthrough.study.sizing.SizingStudy;

/**
 * A sizing of the shipped tube line to 1 % of its capacity beside one plain verdict on 10,000 coil changes, each on one thread.
 * The sizing is to take less than thirty times as long; where it does not, this fails before it measures.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(1)
public class SizingBenchmark {
    private static final double PRECISION = 0.01;
    private static final double AT_MOST = 30;

    /** Enough for the compiler to have seen both. */
    private static final int WARM = 5;

    private final SimulationRequest request = shipped();

    private static SimulationRequest shipped() {
        ScenarioReading reading =
                ScenarioFile.open(Path.of("scenarios", "tube-line.yaml")).read();
        if (reading instanceof ScenarioReading.Accepted accepted) {
            return accepted.request();
        }
        throw new IllegalStateException("the shipped tube line is refused");
    }

    @Setup
    public void checkTheBar() {
        double verdict = 0;
        double sizing = 0;
        for (int i = 0; i < WARM; i++) {
            long start = System.nanoTime();
            verdict();
            long middle = System.nanoTime();
            sizing();
            verdict = middle - start;
            sizing = System.nanoTime() - middle;
        }
        if (!(sizing < AT_MOST * verdict)) {
            throw new IllegalStateException("a sizing takes " + sizing / verdict + " times a verdict");
        }
    }

    @Benchmark
    public StudyResult verdict() {
        return new RunThroughStudy(request).run(StudyOptions.plain().withThreads(1), StudyListener.NONE);
    }

    @Benchmark
    public Sizing sizing() {
        SizingOptions usual =
                SizingOptions.usual(request.run().target(), request.run().replications());
        SizingOptions options = new SizingOptions(usual.target(), PRECISION, usual.maxReplications());
        Sizing sizing = new SizingStudy(request, options).run(1, StudyListener.NONE);
        if (!sizing.interval().orElseThrow().reached()) {
            throw new IllegalStateException("the capacity is not known to " + PRECISION);
        }
        return sizing;
    }
}
