package runthrough.simulation.published;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.report.validation.Topic.TWO_MACHINES;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.PublishedCheck;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.Distribution;
import runthrough.simulation.PlainLine;
import runthrough.simulation.published.Sampled.Mean;
import runthrough.simulation.records.Totals;

/**
 * The line as a continuous-flow line of two unreliable machines with a finite buffer, against its exact solution.
 *
 * <p>Machine 1 is the entry (speed w, a joint every 1/p1 time units of full speed, repair rate r1), machine 2 the process (v,
 * downtimes at p2, r2), the buffer the accumulator (N). All times are exponential, speeds change at once. Boundary rules: with the
 * level at 0 and the entry down the process stands; at N and the process down the entry stands; a repair goes on in calendar
 * time whatever the other does; after a run-out the process starts the instant the entry does (restart level 0, no delay); N = 0
 * couples them rigidly, which is joining without an accumulator. Failures are operation dependent: coil lengths are
 * exponential, so that joints come per metre, and the clock of downtimes runs with the process; since w &gt;= v the process is
 * never slowed, so that per running minute is per metre.
 *
 * <p>Model: J. Wijngaard, "The effect of interstage buffer storage on the output of two unreliable production units in
 * series, with different production rates", AIIE Transactions 11(1), 1979; S. B. Gershwin and I. C. Schick, report LIDS-R-1039,
 * 1980 (both cited from memory). No published numbers are known to us: these are our own, from the stationary solution at
 * 60 digits and more, confirmed by closed forms and by an independent brute-force simulation.
 *
 * <p>Tolerance: three standard errors of 20 replications, or 0.3 % for the throughput, 1 % for the mean level. The standard
 * error of the throughput must be at most 0.1 %.
 */
@RecordsChecks
class PublishedFlowLineTest {
    private static final int CHANGES = 18_750;

    /** The two machines and what lies between them, in the words of the theory. */
    private record Machines(String id, double w, double p1, double r1, double v, double p2, double r2, double n) {

        List<Totals> sampled() {
            PlainLine line = new PlainLine()
                    .coils(PlainLine.coil(Distribution.exponential(w / p1)))
                    .entry(w, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                    .process(v, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                    .restart(0, Distribution.constant(0))
                    .join(Distribution.exponential(1 / r1));
            if (p2 > 0) {
                line.downtime(Distribution.exponential(1 / p2), Distribution.exponential(1 / r2));
            }
            return Sampled.totals(n > 0 ? line.capacity(n) : line.withoutAccumulator(), id, CHANGES);
        }
    }

    private static double throughput(Totals run) {
        return run.processedMetres() / run.duration();
    }

    private static ToDoubleFunction<Totals> share(ToDoubleFunction<Totals> seconds) {
        return run -> seconds.applyAsDouble(run) / run.duration();
    }

    private static PublishedCheck check(CheckBook book, String id, String what, double exact) {
        return book.check(TWO_MACHINES, id, what).source(Sources.TWO_MACHINES).expected(exact);
    }

    /** Throughput, and the shares of time that follow from it: each machine is down for as long as its repairs take. */
    private static void assertOutput(CheckBook book, Machines line, List<Totals> totals, double exact) {
        Mean.of(totals, PublishedFlowLineTest::throughput)
                .isKnownTo(0.001)
                .agrees(check(book, line.id, "throughput", exact).unit("m/t"), 0.003);
        Mean.of(totals, share(Totals::jointSeconds))
                .agrees(
                        check(book, line.id, "share of time at the joint", exact * line.p1 / (line.w * line.r1)),
                        0.003);
        if (line.p2 > 0) {
            Mean.of(totals, share(Totals::downtimeSeconds))
                    .agrees(
                            check(
                                    book,
                                    line.id,
                                    "share of time in process downtime",
                                    exact * line.p2 / (line.v * line.r2)),
                            0.003);
        }
    }

    private static void assertLevel(
            CheckBook book, Machines line, List<Totals> totals, double level, double starved, double blocked) {
        Mean.of(totals, Totals::meanLevel)
                .agrees(check(book, line.id, "mean level", level).unit("m"), 0.01);
        Mean.of(totals, share(Totals::starvedSeconds))
                .agrees(check(book, line.id, "share of time starved", starved), 0);
        Mean.of(totals, share(Totals::blockedSeconds))
                .agrees(check(book, line.id, "share of time blocked", blocked), 0);
    }

    /**
     * F01 to F17 as they were handed to us; F32 to F42 are further lines, drawn at random and solved in the same way: short of
     * capacity, with much of it, with speeds that are the same or nearly, with a process that never stops.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, w, p1, r1, v, p2, r2, N, throughput, mean level, P(starved), P(blocked)
        "F01, 1, 0.01, 0.1, 1, 0.02, 0.1, 10, 0.79891515, 6.8252612, 0.04130182, 0.12119333",
        "F02, 1, 0.01, 0.1, 1, 0.01, 0.1, 10, 0.8587257618, 5, 0.055401662, 0.055401662",
        "F04, 2, 0.01, 0.05, 1.5, 0.005, 0.02, 60, 1.172045028, 50.881682, 0.02329581, 0.17357918",
        "F05, 2, 0.01, 0.05, 1.5, 0.005, 0.02, 5000, 1.2, 4982.2316, 0, 0.16508067",
        "F06, 2.5, 0.004, 0.02, 1.5, 0.001, 0.01, 120, 1.329054885, 107.54801, 0.025359751, 0.082933722",
        "F08, 1, 0.01, 0.1, 1, 0.02, 0.1, 1000, 0.8333333333, 983.33333, 0, 0.083333333",
        "F10, 2.5, 0.004, 0.02, 1.5, 0, 0.01, 120, 1.455771692, 105.8012, 0.029485538, 0",
        "F16, 160, 0.177777778, 0.5, 100, 0.0166666667, 0.1, 400, 82.16289357, 322.41251, 0.041432908, 0.12634237",
        "F17, 150, 0.125, 0.4, 100, 0, 1, 300, 92.3514631, 228.79225, 0.076485369, 0",
        "F32, 0.7283, 0.005626, 0.01324, 0.7283, 0.01368, 0.07558, 0.1348, 0.453761084, 0.0745538923, 0.264187889, 0.112212999",
        "F33, 0.8466, 0.006208, 0.09773, 0.8458, 0.04388, 0.1097, 51.07, 0.604039361, 48.9122065, 0.000171311329, 0.240690894",
        "F34, 0.9384, 0.0006887, 0.006853, 0.9384, 0.01844, 0.1163, 269.1, 0.794158635, 205.054664, 0.0195259779, 0.0686610118",
        "F35, 1.759, 0.01587, 0.05169, 1.204, 0.003649, 0.01095, 43.53, 0.87030885, 35.8256505, 0.0362688369, 0.221801583",
        "F36, 1.052, 0.0002453, 0.007371, 1.051, 0, 0.1, 12.11, 1.01806707, 3.82560084, 0.0313348518, 0",
        "F37, 4.397, 0.003414, 0.008912, 1.761, 0, 0.1, 0.4707, 1.52724275, 0.408094511, 0.132741197, 0",
        "F38, 4.231, 0.001052, 0.005231, 1.426, 0, 0.1, 0.09887, 1.33551067, 0.0925943145, 0.0634567532, 0",
        "F39, 4.873, 0.02619, 0.08244, 2.663, 0, 0.1, 0.2201, 2.27134779, 0.187485985, 0.147071801, 0",
        "F40, 1.08, 0.001733, 0.005691, 0.8439, 0, 0.1, 40.36, 0.710642356, 30.051185, 0.157906913, 0",
        "F41, 1.982, 0.01526, 0.03557, 1.418, 0, 0.1, 2.925, 1.10263696, 2.19077487, 0.222399884, 0",
        "F42, 2.01, 0.006375, 0.01258, 0.8003, 0, 0.1, 147.8, 0.776361364, 128.061471, 0.0299120783, 0"
    })
    void twoMachines(
            String id,
            double w,
            double p1,
            double r1,
            double v,
            double p2,
            double r2,
            double n,
            double throughput,
            double meanLevel,
            double starved,
            double blocked,
            CheckBook book) {
        Machines line = new Machines(id, w, p1, r1, v, p2, r2, n);
        List<Totals> totals = line.sampled();

        assertOutput(book, line, totals, throughput);
        assertLevel(book, line, totals, meanLevel, starved, blocked);
    }

    /**
     * F09 has an entry slower than the process, which no line here may have. Run backwards, from customer to supplier, holes flow
     * where strip did: the machines change places, full changes with empty and starved with blocked, the throughput stays.
     */
    @Test
    void f09_runBackwards(CheckBook book) {
        Machines line = new Machines("F09", 1.5, 0.02, 0.1, 1.2, 0.01, 0.1, 20);
        List<Totals> totals = line.sampled();

        assertOutput(book, line, totals, 1.046439846);
        assertLevel(book, line, totals, 20 - 4.6026296, 0.040763474, 0.067046255);
    }

    /** N = 0: no accumulator, entry and process are one strip. F51 to F53 are further lines. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, w, p1, r1, v, p2, r2, throughput, P(starved)
        "F03, 2, 0.01, 0.05, 1.5, 0.005, 0.02, 1.071428571, 0.10714286",
        "F07, 1, 0.01, 0.1, 1, 0.02, 0.1, 0.7692307692, 0.076923077",
        "F51, 1.955, 0.0128, 0.02938, 1.408, 0.01985, 0.07489, 0.891801131, 0.198737323",
        "F52, 0.6297, 0.006694, 0.02603, 0.5537, 0.007689, 0.04353, 0.394720772, 0.161201036",
        "F53, 0.6084, 0.01821, 0.05093, 0.3218, 0.002199, 0.01337, 0.237738022, 0.13971586"
    })
    void rigidlyCoupled(
            String id,
            double w,
            double p1,
            double r1,
            double v,
            double p2,
            double r2,
            double throughput,
            double starved,
            CheckBook book) {
        Machines line = new Machines(id, w, p1, r1, v, p2, r2, 0);
        List<Totals> totals = line.sampled();

        assertOutput(book, line, totals, throughput);
        Mean.of(totals, share(Totals::starvedSeconds)).agrees(check(book, id, "share of time starved", starved), 0);
    }

    /**
     * The same machines failing by another clock would give something else: entry and process per running minute, both by the
     * calendar, or the entry per metre and the process by the calendar. What a coil and a process downtime go by is distinguished.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, w, p1, r1, v, p2, r2, N, throughput per running minute, by the calendar, mixed
        "F06, 2.5, 0.004, 0.02, 1.5, 0.001, 0.01, 120, 1.313732942, 1.309428861, 1.327031006",
        "F16, 160, 0.177777778, 0.5, 100, 0.0166666667, 0.1, 400, 81.23502393, 80.61246063, 81.74498447"
    })
    void anotherClockIsDistinguished(
            String id,
            double w,
            double p1,
            double r1,
            double v,
            double p2,
            double r2,
            double n,
            double perRunningMinute,
            double byTheCalendar,
            double mixed) {
        Mean throughput =
                Mean.of(new Machines(id, w, p1, r1, v, p2, r2, n).sampled(), PublishedFlowLineTest::throughput);

        assertThat(throughput.value() - perRunningMinute).isGreaterThan(3 * throughput.error());
        assertThat(throughput.value() - byTheCalendar).isGreaterThan(3 * throughput.error());
        assertThat(throughput.value()).isGreaterThan(mixed);
    }
}
