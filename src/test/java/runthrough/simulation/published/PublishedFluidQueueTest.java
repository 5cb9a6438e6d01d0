package runthrough.simulation.published;

import static runthrough.report.validation.Topic.FLUID_QUEUE;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.PublishedCheck;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.Distribution;
import runthrough.quantity.Numbers;
import runthrough.simulation.PlainLine;
import runthrough.simulation.published.Sampled.Mean;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.Trace.Point;

/**
 * Shares of time with more than y missing in the accumulator, against an on/off fluid queue with one source (D. Anick, D. Mitra,
 * M. M. Sondhi, "Stochastic theory of a data-handling system with multiple sources", Bell System Technical Journal 61(8), 1982;
 * cited from memory), coil lengths exponential. The numbers are our own, from the closed form; O02 and O03 were handed to us, O21
 * to O23 are further lines solved in the same way. Tolerance: three standard errors, or 0.5 %; 0.05 % for the throughput.
 */
@RecordsChecks
class PublishedFluidQueueTest {
    private static final int CHANGES = 9000;

    private static PlainLine line(double v, double w, double coil, double joint, double capacity) {
        return PublishedDeficitTest.line(v, w, Distribution.exponential(coil), Distribution.exponential(joint))
                .capacity(capacity);
    }

    private static PublishedCheck check(CheckBook book, String id, String what, double exact) {
        return book.check(FLUID_QUEUE, id, what).source(Sources.FLUID_QUEUE).expected(exact);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, mean coil, mean joint, C, y1, y2, P(full), P(Y > y1), P(Y > y2), E[Y]
        "O02, 1.5, 2.5, 600, 40, 1000000, 60, 120, 0.75, 0.118091638, 0.05578254, 20",
        "O03, 100, 160, 900, 2, 400, 150, 300, 0.523842782, 0.275545606, 0.127752227, 94.1315734",
        "O21, 0.8, 1.9, 350, 70, 1000000, 40, 150, 0.723636364, 0.164816775, 0.0397816533, 21.3869347",
        "O22, 72, 96, 1300, 1.4, 220, 60, 180, 0.731504434, 0.157739861, 0.0355629621, 24.108221",
        "O23, 1.1, 1.3, 2400, 45, 90, 20, 70, 0.887293296, 0.0721522972, 0.0157089141, 4.00644558"
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
            double above2,
            double missing,
            CheckBook book) {
        List<double[]> shares =
                Sampled.replications(line(v, w, coil, joint, capacity), id, CHANGES, Detail.TRACE, run -> {
                    List<Point> points = run.trace().orElseThrow().points();
                    double[] time = new double[3];
                    for (int i = 0; i + 1 < points.size(); i++) {
                        Point point = points.get(i);
                        double lasts = points.get(i + 1).time() - point.time();
                        time[0] += point.level() >= capacity && point.entrySpeed() == v ? lasts : 0;
                        time[1] += timeBelow(point, lasts, capacity - y1);
                        time[2] += timeBelow(point, lasts, capacity - y2);
                    }
                    double end = points.get(points.size() - 1).time();
                    return new double[] {
                        time[0] / end,
                        time[1] / end,
                        time[2] / end,
                        capacity - run.totals().meanLevel()
                    };
                });

        Mean.of(shares, 0).agrees(check(book, id, "share of time full", full), 0.005);
        Mean.of(shares, 1).agrees(check(book, id, below(y1), above1), 0.005);
        Mean.of(shares, 2).agrees(check(book, id, below(y2), above2), 0.005);
        Mean.of(shares, 3).agrees(check(book, id, "missing on average", missing).unit("m"), 0.005);
    }

    private static String below(double metres) {
        return "share of time with more than " + Numbers.plain(metres) + " m missing";
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

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // id, v, w, mean coil, mean joint, C, P(starved), throughput
        "O03, 100, 160, 900, 2, 400, 0.0515369689, 94.84630311",
        "O22, 72, 96, 1300, 1.4, 220, 0.0125849982, 71.09388013",
        "O23, 1.1, 1.3, 2400, 45, 90, 0.0037904791, 1.095830473"
    })
    void starvedShareAndThroughput(
            String id,
            double v,
            double w,
            double coil,
            double joint,
            double capacity,
            double starved,
            double throughput,
            CheckBook book) {
        List<Totals> totals = Sampled.totals(line(v, w, coil, joint, capacity), id, 3 * CHANGES);

        Mean.of(totals, run -> run.starvedSeconds() / run.duration())
                .agrees(check(book, id, "share of time starved", starved), 0.005);
        Mean.of(totals, run -> run.processedMetres() / run.duration())
                .agrees(check(book, id, "throughput", throughput).unit("m/t"), 0.0005);
    }
}
