package runthrough.simulation.published;

import static runthrough.report.validation.Topic.JOINT_DEFICIT;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.checks.CheckBook;
import runthrough.checks.PublishedCheck;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.quantity.Numbers;
import runthrough.report.validation.Reference;
import runthrough.simulation.PlainLine;
import runthrough.simulation.published.Sampled.Mean;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Totals;

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
 *
 * <p>L01 to L18 are as they were handed to us; higher numbers are further lines, drawn at random and solved in the same way.
 */
@RecordsChecks
class PublishedDeficitTest {
    private static final int CHANGES = 30_000;
    private static final double UNLIMITED = 1e6;

    static PlainLine line(double v, double w, Distribution length, Distribution joint) {
        return new PlainLine()
                .coils(PlainLine.coil(length))
                .entry(w, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .process(v, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .restart(0, Distribution.constant(0))
                .join(joint);
    }

    private static PublishedCheck check(CheckBook book, String id, String what, Reference source, double exact) {
        return book.check(JOINT_DEFICIT, id, what).source(source).expected(exact);
    }

    /** Full at the start of a joint, deficit there, and whether its peak is above {@code limit}. */
    private static void assertUnlimited(
            CheckBook book, String id, PlainLine line, double limit, double full, double deficit, double above) {
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

        String where = "unlimited accumulator: ";
        Mean.of(means, 0)
                .agrees(check(book, id, where + "share of joints that begin full", Sources.LINDLEY, full), 0.005);
        Mean.of(means, 1)
                .agrees(
                        check(book, id, where + "missing at the start of a joint", Sources.LINDLEY, deficit)
                                .unit("m"),
                        0.005);
        if (limit > 0) {
            String what = where + "share of joints after which more than " + Numbers.plain(limit) + " m are missing";
            Mean.of(means, 2).agrees(check(book, id, what, Sources.LINDLEY, above), 0.005);
        }
    }

    private static void assertFinite(
            CheckBook book,
            String id,
            PlainLine line,
            Reference source,
            double runOut,
            double stopPerCoil,
            double throughput) {
        List<Totals> totals = Sampled.totals(line, id, CHANGES);

        Mean.of(totals, run -> (double) run.starvedStops() / run.changes())
                .agrees(check(book, id, "share of joints that run out", source, runOut), 0.005);
        Mean.of(totals, run -> run.starvedSeconds() / run.changes())
                .agrees(
                        check(book, id, "process standing for a coil", source, stopPerCoil)
                                .unit("min"),
                        0.005);
        Mean.of(totals, run -> run.processedMetres() / run.duration())
                .agrees(check(book, id, "throughput", source, throughput).unit("m/min"), 0.0005);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, L, t0, mT (T = t0 + Exp(mT)), C, P(full), E[D], P(peak > C)
        "L01, 100, 150, 600, 0, 1.5, 300, 0.454394983, 180.109278, 0.403011586",
        "L02, 100, 160, 800, 0, 2, 400, 0.582811644, 143.164043, 0.311728305",
        "L03, 90, 120, 1000, 1, 1.2, 200, 0.570560979, 81.2873925, 0.55926776",
        "L04, 100, 200, 700, 0, 1.5, 300, 0.868072452, 22.7966365, 0.176198354",
        "L21, 49.81, 87.24, 176.9, 0, 1.295, 152, 0.2844185463, 162.2883983, 0.511597746",
        "L22, 125.9, 284.5, 1123, 0.2614, 1.884, 483.4, 0.8927213169, 28.50389155, 0.1835100409",
        "L23, 54.41, 82.19, 305.1, 1.457, 0.3289, 104.4, 0.4537343711, 21.54491554, 0.5288616877",
        "L24, 126.8, 194.9, 1586, 1.877, 1.87, 425.7, 0.4544176956, 284.6858626, 0.6978799494"
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
            double above,
            CheckBook book) {
        Distribution joint = Distribution.exponential(mean).shifted(least);

        assertUnlimited(book, id, line(v, w, Distribution.constant(length), joint), capacity, full, deficit, above);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, L, t0, mT, C, P(run-out), process stop per coil, throughput
        "L01, 100, 150, 600, 0, 1.5, 300, 0.164188333, 0.2462824996, 96.05713479",
        "L02, 100, 160, 800, 0, 2, 400, 0.1523299909, 0.3046599817, 96.33145749",
        "L03, 90, 120, 1000, 1, 1.2, 200, 0.3611295508, 0.433355461, 86.62158565",
        "L04, 100, 200, 700, 0, 1.5, 300, 0.1353352832, 0.2030029249, 97.18169037",
        "L05, 100, 150, 600, 0, 2.5, 300, 0.3671898206, 0.9179745515, 86.73058791",
        "L21, 49.81, 87.24, 176.9, 0, 1.295, 152, 0.1489284531, 0.1928623468, 47.24441375",
        "L22, 125.9, 284.5, 1123, 0.2614, 1.884, 483.4, 0.149683364, 0.2820034579, 122.0415909",
        "L23, 54.41, 82.19, 305.1, 1.457, 0.3289, 104.4, 0.2503327529, 0.08233444244, 53.62265267",
        "L24, 126.8, 194.9, 1586, 1.877, 1.87, 425.7, 0.4531280636, 0.847349479, 118.7549221",
        "L25, 110, 258.4, 79.31, 0, 0.5797, 132.2, 0.3270919695, 0.1896152147, 87.09496472",
        "L26, 101.6, 165.8, 621.7, 1.111, 1.762, 209.3, 0.583556004, 1.028225679, 86.98365058"
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
            double throughput,
            CheckBook book) {
        Distribution joint = Distribution.exponential(mean).shifted(least);

        assertFinite(
                book,
                id,
                line(v, w, Distribution.constant(length), joint).capacity(capacity),
                Sources.DAM,
                runOut,
                stopPerCoil,
                throughput);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, L1, share of it, L2, mT, C, P(full), E[D], P(peak > C)
        "L10, 100, 150, 500, 0.6, 900, 1.5, 300, 0.525585146, 135.396193, 0.349528459",
        "L31, 70.25, 121.8, 384.1, 0.2634, 946.5, 2.312, 258.8, 0.7664620001, 49.4881349, 0.2948479564"
    })
    void twoKindsOfCoils(
            String id,
            double v,
            double w,
            double one,
            double share,
            double other,
            double mean,
            double capacity,
            double full,
            double deficit,
            double above,
            CheckBook book) {
        PlainLine line = line(v, w, Distribution.constant(one), Distribution.exponential(mean))
                .coilSource(new CoilSource.Mix(List.of(
                        new CoilSource.Share(PlainLine.coil(one), share),
                        new CoilSource.Share(PlainLine.coil(other), 1 - share))));

        assertUnlimited(book, id, line, capacity, full, deficit, above);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, least L, greatest L, mT, C, P(full), E[D], P(peak > C)
        "L11, 100, 150, 400, 1000, 1.6, 300, 0.52955585, 142.139992, 0.3704943",
        "L32, 106.1, 164.1, 436.6, 681.9, 1.407, 253.2, 0.4401256556, 189.8992998, 0.4740218418"
    })
    void uniformCoilLengths(
            String id,
            double v,
            double w,
            double least,
            double greatest,
            double mean,
            double capacity,
            double full,
            double deficit,
            double above,
            CheckBook book) {
        PlainLine line = line(v, w, Distribution.uniform(least, greatest), Distribution.exponential(mean));

        assertUnlimited(book, id, line, capacity, full, deficit, above);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, mean L, mT, C, P(full), E[D], P(peak > C)
        "L12, 100, 150, 600, 1.2, 300, 0.4, 180, 0.367879441",
        "L33, 43.32, 71.53, 677.1, 2.802, 189.8, 0.5454424203, 101.1571469, 0.4261852374"
    })
    void exponentialCoilLengths(
            String id,
            double v,
            double w,
            double coil,
            double mean,
            double capacity,
            double full,
            double deficit,
            double above,
            CheckBook book) {
        PlainLine line = line(v, w, Distribution.exponential(coil), Distribution.exponential(mean));

        assertUnlimited(book, id, line, capacity, full, deficit, above);
    }

    static Stream<Arguments> anyDistributionOfTheJoint() {
        return Stream.of(
                Arguments.of("L14", 100, 150, 800, Distribution.constant(2), 0.25, 300),
                // Shape 4 and mean 2: standard deviation 1.
                Arguments.of("L15", 100, 160, 900, Distribution.gamma(2, 1), 0.407407407, 181.818182),
                Arguments.of("L16", 100, 160, 900, Distribution.lognormal(2, 0.8), 0.407407407, 168.727273),
                Arguments.of(
                        "L34", 119.6, 226.4, 987.2, Distribution.triangular(1, 1.6, 3.3), 0.4949179207, 127.3832628),
                Arguments.of("L35", 102.5, 126, 2439, Distribution.weibull(1.7, 2.1), 0.577800297, 95.89156587),
                Arguments.of("L36", 85.22, 106.9, 1069, Distribution.normal(1.2, 0.8), 0.4846580718, 76.48679896),
                Arguments.of("L37", 120, 199.8, 837.5, Distribution.uniform(0.6, 2.9), 0.3721916732, 202.6072966));
    }

    /** Exponential coil lengths and any distribution of the joint cycle time: the mean of F. Pollaczek and A. Khinchine. */
    @ParameterizedTest(name = "{0}")
    @MethodSource
    void anyDistributionOfTheJoint(
            String id,
            double v,
            double w,
            double coil,
            Distribution joint,
            double full,
            double deficit,
            CheckBook book) {
        assertUnlimited(book, id, line(v, w, Distribution.exponential(coil), joint), 0, full, deficit, 0);
    }

    static Stream<Arguments> nearlyAlwaysRefilled() {
        return Stream.of(
                Arguments.of(
                        "L18",
                        100,
                        200,
                        800,
                        Distribution.lognormal(2, 0.8),
                        300,
                        0.1065492198,
                        0.07023098985,
                        99.12975242),
                Arguments.of(
                        "L41",
                        85.97,
                        171.9,
                        6878,
                        Distribution.gamma(2, 1),
                        223.5,
                        0.2381316716,
                        0.1933466367,
                        85.76273784),
                Arguments.of(
                        "L42",
                        81.92,
                        163.8,
                        5916,
                        Distribution.weibull(1.5, 2),
                        162.7,
                        0.3717323531,
                        0.4110521241,
                        81.45635705),
                Arguments.of(
                        "L43",
                        94.69,
                        189.4,
                        6534,
                        Distribution.triangular(1, 1.6, 3.3),
                        245.1,
                        0.1294906316,
                        0.0307131703,
                        94.647873));
    }

    /**
     * Refilled before nearly every joint: P(run-out) = P(T &gt; C/v), stop = E(T - C/v)+ of the distribution of T, throughput = L/(L/v +
     * stop); the two integrals by quadrature at 30 digits.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource
    void nearlyAlwaysRefilled(
            String id,
            double v,
            double w,
            double coil,
            Distribution joint,
            double capacity,
            double runOut,
            double stopPerCoil,
            double throughput,
            CheckBook book) {
        PlainLine line = line(v, w, Distribution.constant(coil), joint);

        assertFinite(book, id, line.capacity(capacity), Sources.LINDLEY, runOut, stopPerCoil, throughput);
    }
}
