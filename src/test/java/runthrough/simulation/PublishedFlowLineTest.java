package runthrough.simulation;

import static runthrough.simulation.Sampled.assertMean;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.Distribution;
import runthrough.plant.Practice;

/**
 * The line as a continuous-flow line of two unreliable machines with a finite buffer, against its exact solution.
 *
 * <p>Machine 1 is the entry (speed w, a joint every 1/p1 time units of full speed, repair rate r1), machine 2 the process (v, own
 * stops at p2, r2), the buffer the accumulator (N). All times are exponential, speeds change at once. Boundary rules: with the
 * level at 0 and the entry down the process stands; at N and the process down the entry stands; a repair goes on in calendar
 * time whatever the other does; after a run-out the process starts the instant the entry does (restart level 0, no delay); N = 0
 * couples them rigidly, which is joining without an accumulator. Failures are operation dependent: coil lengths are
 * exponential, so that joints come per metre, and the clock of own stops runs with the process; since w &gt;= v the process is
 * never slowed, so that per running minute is per metre.
 *
 * <p>Model: J. Wijngaard, "The effect of interstage buffer storage on the output of two unreliable production units in
 * series, with different production rates", AIIE Transactions 11(1), 1979; S. B. Gershwin and I. C. Schick, report LIDS-R-1039,
 * 1980 (both cited from memory). No published numbers are known to us: these are our own, from the stationary solution at
 * 60 digits and more, confirmed by closed forms and by an independent brute-force simulation.
 *
 * <p>Tolerance: three standard errors of 20 replications, or 0.3 % for the throughput, 1 % for the mean level.
 */
class PublishedFlowLineTest {
    private static final int CHANGES = 15_000;

    private static LineBuilder line(double w, double p1, double r1, double v, double p2, double r2) {
        LineBuilder line = new LineBuilder()
                .coils(LineBuilder.coil(Distribution.exponential(w / p1)))
                .entry(w, LineBuilder.AT_ONCE, LineBuilder.AT_ONCE)
                .process(v, LineBuilder.AT_ONCE, LineBuilder.AT_ONCE)
                .restart(0, Distribution.constant(0))
                .join(Distribution.exponential(1 / r1));
        return p2 > 0 ? line.ownStops(Distribution.exponential(1 / p2), Distribution.exponential(1 / r2)) : line;
    }

    private static void assertThroughput(List<Totals> totals, double throughput) {
        assertMean("throughput", totals, run -> run.processedMetres() / run.duration(), throughput, 0.003);
    }

    /** Exact at any N: each machine is down for as long as its repairs take. */
    private static void assertDownTimes(List<Totals> totals, double entryDown, double processDown) {
        assertMean("entry down", totals, run -> run.jointSeconds() / run.duration(), entryDown, 0.003);
        if (processDown > 0) {
            assertMean("process down", totals, run -> run.ownStopSeconds() / run.duration(), processDown, 0.003);
        }
    }

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
        "F17, 150, 0.125, 0.4, 100, 0, 1, 300, 92.3514631, 228.79225, 0.076485369, 0"
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
            double blocked) {
        List<Totals> totals = Sampled.totals(line(w, p1, r1, v, p2, r2).capacity(n), id, CHANGES);

        assertThroughput(totals, throughput);
        assertDownTimes(totals, throughput * p1 / (w * r1), throughput * p2 / (v * r2));
        assertMean("mean level", totals, Totals::meanLevel, meanLevel, 0.01);
        assertMean("starved", totals, run -> run.starvedSeconds() / run.duration(), starved, 0);
        assertMean("blocked", totals, run -> run.blockedSeconds() / run.duration(), blocked, 0);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, w, p1, r1, v, p2, r2, throughput, P(starved)
        "F03, 2, 0.01, 0.05, 1.5, 0.005, 0.02, 1.071428571, 0.10714286",
        "F07, 1, 0.01, 0.1, 1, 0.02, 0.1, 0.7692307692, 0.076923077"
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
            double starved) {
        List<Totals> totals =
                Sampled.totals(line(w, p1, r1, v, p2, r2).practice(Practice.JOIN_WITHOUT_ACCUMULATOR), id, CHANGES);

        assertThroughput(totals, throughput);
        assertDownTimes(totals, throughput * p1 / (w * r1), throughput * p2 / (v * r2));
        assertMean("starved", totals, run -> run.starvedSeconds() / run.duration(), starved, 0);
    }
}
