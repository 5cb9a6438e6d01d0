package runthrough.simulation;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import runthrough.simulation.records.Detail;

/** How long a coil change takes in the engine, in the bare model of its events, and in its draws alone: processor time (ns). */
public final class EngineBars {
    private static final int CHANGES = 10_000;
    private static final int REPLICATIONS = 200;
    private static final double SECOND = 1e9;

    private EngineBars() {}

    /**
     * Measures the three in turn, and prints to {@code out} for each the first 10,000 coil changes, the first second of processor time,
     * and the median once warm.
     */
    public static void print(PrintStream out) {
        LineSimulator simulator = BenchmarkLine.simulator(BenchmarkLine.CAPACITY, CHANGES);
        List<Measured> all = List.of(
                new Measured(
                        "engine", i -> simulator.run(i, Detail.CHANGES).totals().jointSeconds()),
                new Measured("bare event model", i -> {
                    BareModel model = new BareModel(i, BenchmarkLine.CAPACITY, CHANGES);
                    model.run();
                    return model.jointSeconds();
                }),
                new Measured("draws alone", i -> {
                    BareDraws draws = new BareDraws(i);
                    double sum = 0;
                    for (int change = 1; change <= CHANGES; change++) {
                        sum += draws.ofChange(change);
                    }
                    return sum;
                }));
        double sink = 0;
        for (int i = 0; i < REPLICATIONS; i++) {
            for (Measured one : all) {
                long begin = threadTime();
                sink += one.work.applyAsDouble(i);
                one.nanos[i] = (threadTime() - begin) / (double) CHANGES;
            }
        }
        out.printf("%n%-34s%s%n", "", "ns a coil change: first 10,000, first second, warm");
        for (Measured one : all) {
            double[] nanos = one.nanos;
            double[] warm = Arrays.copyOfRange(nanos, REPLICATIONS / 2, REPLICATIONS);
            Arrays.sort(warm);
            out.printf(
                    Locale.ROOT,
                    "%-34s%10.0f %10.0f %10.0f%n",
                    one.name,
                    nanos[0],
                    firstSecond(nanos),
                    warm[warm.length / 2]);
        }
        out.println(Double.isNaN(sink) ? "no sum" : "");
    }

    /** What is measured, and its nanoseconds a coil change, by replication. */
    private static final class Measured {
        private final String name;
        private final IntToDoubleFunction work;
        private final double[] nanos = new double[REPLICATIONS];

        Measured(String name, IntToDoubleFunction work) {
            this.name = name;
            this.work = work;
        }
    }

    /** The mean over the replications that the first second of processor time holds. */
    private static double firstSecond(double[] nanos) {
        double sum = 0;
        int replications = 0;
        while (replications < nanos.length && sum * CHANGES < SECOND) {
            sum += nanos[replications++];
        }
        return sum / replications;
    }

    private static long threadTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
