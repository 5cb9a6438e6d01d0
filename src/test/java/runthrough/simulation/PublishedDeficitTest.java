package runthrough.simulation;

import static runthrough.simulation.Sampled.assertMean;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.Distribution;
import runthrough.plant.Supply;
import runthrough.simulation.Trace.Point;

/**
 * What is missing in the accumulator, against exact results. Speeds change at once, the process runs at v and never stops of
 * its own, the entry at w below full; metres and minutes.
 *
 * <p>Missing at the start of joint n: D(n+1) = max(0, D(n) + v T - L (1 - v/w)) with an accumulator that never runs empty, which
 * is the recursion of D. V. Lindley, "The theory of queues with a single server", Proceedings of the Cambridge
 * Philosophical Society 48, 1952; with a finite one D + v T is cut at C (P. A. P. Moran, The Theory of Storage, 1959; both cited
 * from memory). The numbers are our own: roots and sums of the closed forms at 40 digits, confirmed by an independent
 * simulation of 4e7 coils a row that does not use the recursion. Tolerance: three standard errors of 20 replications, or 0.5 % for
 * deficits and probabilities, 0.05 % for the throughput.
 */
class PublishedDeficitTest {
    private static final int CHANGES = 30_000;
    private static final double UNLIMITED = 1e6;

    private static LineBuilder line(double v, double w, Distribution length, Distribution joint) {
        return new LineBuilder()
                .coils(LineBuilder.coil(length))
                .entry(w, LineBuilder.AT_ONCE, LineBuilder.AT_ONCE)
                .process(v, LineBuilder.AT_ONCE, LineBuilder.AT_ONCE)
                .restart(0, Distribution.constant(0))
                .join(joint);
    }

    /** Full at the start of a joint, deficit there, and whether its peak is above {@code limit}. */
    private static void assertUnlimited(
            String id, LineBuilder line, double limit, double full, double deficit, double above) {
        List<double[]> means = Sampled.replications(line.capacity(UNLIMITED), id, CHANGES, Detail.CHANGES, run -> {
            double[] sums = new double[3];
            for (ChangeRecord change : run.changes()) {
                sums[0] += change.levelAtStart() >= UNLIMITED - 1e-3 ? 1 : 0;
                sums[1] += UNLIMITED - change.levelAtStart();
                sums[2] += change.lowestLevel() < UNLIMITED - limit ? 1 : 0;
            }
            int changes = run.changes().size();
            return new double[] {sums[0] / changes, sums[1] / changes, sums[2] / changes};
        });

        assertMean("P(full)", means, 0, full, 0.005);
        assertMean("E[D]", means, 1, deficit, 0.005);
        if (limit > 0) {
            assertMean("P(peak > C)", means, 2, above, 0.005);
        }
    }

    private static void assertFinite(
            String id, LineBuilder line, double runOut, double stopPerCoil, double throughput) {
        List<Totals> totals = Sampled.totals(line, id, CHANGES);

        assertMean("P(run-out)", totals, run -> (double) run.starvedStops() / run.changes(), runOut, 0.005);
        assertMean("stop per coil", totals, run -> run.starvedSeconds() / run.changes(), stopPerCoil, 0.005);
        assertMean("throughput", totals, run -> run.processedMetres() / run.duration(), throughput, 0.0005);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, L, t0, mT (T = t0 + Exp(mT)), C, P(full), E[D], P(peak > C)
        "L01, 100, 150, 600, 0, 1.5, 300, 0.454394983, 180.109278, 0.403011586",
        "L02, 100, 160, 800, 0, 2, 400, 0.582811644, 143.164043, 0.311728305",
        "L03, 90, 120, 1000, 1, 1.2, 200, 0.570560979, 81.2873925, 0.55926776",
        "L04, 100, 200, 700, 0, 1.5, 300, 0.868072452, 22.7966365, 0.176198354"
    })
    void unlimitedAccumulator_equalCoils(
            String id,
            double v,
            double w,
            double length,
            double least,
            double mean,
            double capacity,
            double full,
            double deficit,
            double above) {
        Distribution joint = Distribution.exponential(mean).shifted(least);

        assertUnlimited(id, line(v, w, Distribution.constant(length), joint), capacity, full, deficit, above);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, L, t0, mT, C, P(run-out), process stop per coil, throughput
        "L01, 100, 150, 600, 0, 1.5, 300, 0.164188333, 0.2462824996, 96.05713479",
        "L02, 100, 160, 800, 0, 2, 400, 0.1523299909, 0.3046599817, 96.33145749",
        "L03, 90, 120, 1000, 1, 1.2, 200, 0.3611295508, 0.433355461, 86.62158565",
        "L04, 100, 200, 700, 0, 1.5, 300, 0.1353352832, 0.2030029249, 97.18169037",
        "L05, 100, 150, 600, 0, 2.5, 300, 0.3671898206, 0.9179745515, 86.73058791"
    })
    void finiteAccumulator_equalCoils(
            String id,
            double v,
            double w,
            double length,
            double least,
            double mean,
            double capacity,
            double runOut,
            double stopPerCoil,
            double throughput) {
        Distribution joint = Distribution.exponential(mean).shifted(least);

        assertFinite(
                id,
                line(v, w, Distribution.constant(length), joint).capacity(capacity),
                runOut,
                stopPerCoil,
                throughput);
    }

    @Test
    void l10_twoKindsOfCoils() {
        LineBuilder line = line(100, 150, Distribution.constant(500), Distribution.exponential(1.5))
                .supply(new Supply.Mix(List.of(
                        new Supply.Share(LineBuilder.coil(500), 0.6), new Supply.Share(LineBuilder.coil(900), 0.4))));

        assertUnlimited("L10", line, 300, 0.525585146, 135.396193, 0.349528459);
    }

    @Test
    void l11_uniformCoilLengths() {
        LineBuilder line = line(100, 150, Distribution.uniform(400, 1000), Distribution.exponential(1.6));

        assertUnlimited("L11", line, 300, 0.52955585, 142.139992, 0.3704943);
    }

    @Test
    void l12_exponentialCoilLengths() {
        LineBuilder line = line(100, 150, Distribution.exponential(600), Distribution.exponential(1.2));

        assertUnlimited("L12", line, 300, 0.4, 180, 0.367879441);
    }

    /** L14 to L16: exponential coil lengths and any law of the joint time (Pollaczek and Khinchine's mean). */
    @Test
    void l14_constantJointTime() {
        assertUnlimited(
                "L14", line(100, 150, Distribution.exponential(800), Distribution.constant(2)), 0, 0.25, 300, 0);
    }

    @Test
    void l15_gammaJointTime() {
        // Shape 4 and mean 2: standard deviation 1.
        assertUnlimited(
                "L15",
                line(100, 160, Distribution.exponential(900), Distribution.gamma(2, 1)),
                0,
                0.407407407,
                181.818182,
                0);
    }

    @Test
    void l16_lognormalJointTime() {
        assertUnlimited(
                "L16",
                line(100, 160, Distribution.exponential(900), Distribution.lognormal(2, 0.8)),
                0,
                0.407407407,
                168.727273,
                0);
    }

    /** Refilled before nearly every joint: P(run-out) = P(T &gt; C/v), stop = E(T - C/v)+ of the lognormal law. */
    @Test
    void l18_nearlyAlwaysRefilled() {
        LineBuilder line = line(100, 200, Distribution.constant(800), Distribution.lognormal(2, 0.8));

        assertFinite("L18", line.capacity(300), 0.1065492198, 0.07023098985, 99.12975242);
    }

    /**
     * Share of time with more than y missing, of an on/off fluid queue (D. Anick, D. Mitra, M. M. Sondhi, "Stochastic theory of a
     * data-handling system with multiple sources", Bell System Technical Journal 61(8), 1982, with one source; cited from memory),
     * coil lengths exponential.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, mean coil, mean joint, C, y1, y2, P(full), P(Y > y1), P(Y > y2)
        "O02, 1.5, 2.5, 600, 40, 1000000, 60, 120, 0.75, 0.118091638, 0.05578254",
        "O03, 100, 160, 900, 2, 400, 150, 300, 0.523842782, 0.275545606, 0.127752227"
    })
    void timeBelowALevel(
            String id,
            double v,
            double w,
            double coil,
            double joint,
            double capacity,
            double y1,
            double y2,
            double full,
            double above1,
            double above2) {
        LineBuilder line = line(v, w, Distribution.exponential(coil), Distribution.exponential(joint))
                .capacity(capacity);
        List<double[]> shares = Sampled.replications(line, id, 9000, Detail.TRACE, run -> {
            List<Point> points = run.trace().orElseThrow().points();
            double[] time = new double[3];
            for (int i = 0; i + 1 < points.size(); i++) {
                double lasts = points.get(i + 1).time() - points.get(i).time();
                time[0] += points.get(i).level() >= capacity && points.get(i).entrySpeed() == v ? lasts : 0;
                time[1] += timeBelow(points.get(i), lasts, capacity - y1);
                time[2] += timeBelow(points.get(i), lasts, capacity - y2);
            }
            double end = points.get(points.size() - 1).time();
            return new double[] {time[0] / end, time[1] / end, time[2] / end};
        });

        assertMean("P(full)", shares, 0, full, 0.005);
        assertMean("P(Y > y1)", shares, 1, above1, 0.005);
        assertMean("P(Y > y2)", shares, 2, above2, 0.005);
    }

    /** How long the level is below {@code limit} within {@code time} of {@code point}; it is a straight line there. */
    private static double timeBelow(Point point, double time, double limit) {
        double start = point.level() - limit;
        double end = point.levelAfter(time) - limit;
        if (start >= 0 && end >= 0) {
            return 0;
        }
        return start < 0 && end < 0 ? time : time * -Math.min(start, end) / Math.abs(start - end);
    }

    @Test
    void o03_starvedShareAndThroughput() {
        LineBuilder line = line(100, 160, Distribution.exponential(900), Distribution.exponential(2));
        List<Totals> totals = Sampled.totals(line.capacity(400), "O03", CHANGES);

        assertMean("starved", totals, run -> run.starvedSeconds() / run.duration(), 0.0515369689, 0.005);
        assertMean("throughput", totals, run -> run.processedMetres() / run.duration(), 94.84630311, 0.0005);
    }
}
