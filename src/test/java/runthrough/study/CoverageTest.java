package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.report.validation.Topic.COVERAGE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.Alternative;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.SoundLine;
import runthrough.plant.WorkElement;
import runthrough.quantity.UnitSystem;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.comparison.ComparisonStudy;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.LineLevers;
import runthrough.study.lever.Varied;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Sizing;
import runthrough.study.sizing.SizingOptions;
import runthrough.study.sizing.SizingStudy;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Interval;

/**
 * How often the interval of a printed figure holds the exact value, over {@value #SEEDS} seeds.
 *
 * <p>The line: coils of 600 m, process 1 m/s, entry 2.5 m/s, speeds that jump, 60 m of strip, restart as soon as the joint is
 * released. A joint takes 30 s; now and then something takes 60 s more, so that the process stops for 30 s, and scraps 20 m. The
 * accumulator is full again 40 s after a joint, so coil changes are independent. With the chance p a coil change then loses
 * 30 s, and over the long run of 600 s + 30 p for each:
 *
 * <pre>
 * lost time        30 p / (600 + 30 p)          gross output  600 / (600 + 30 p)
 * stops            p a coil change              good output   (600 - 20 p) / (600 + 30 p)
 * scrap            20 p a coil change           yield         1 - 20 p / 600
 * </pre>
 *
 * Where the loss is random it is {@code 10 s + exponential of mean 20 s}.
 *
 * <p>Rules REPORT-12, REPORT-13, REPORT-17.
 */
@RecordsChecks
class CoverageTest {
    private static final int SEEDS = 300;

    /** Standard error of a coverage of 95 %. */
    private static final double ERROR = Math.sqrt(0.95 * 0.05 / SEEDS);

    private static final Map<ComparisonMeasure, String> NAMES = Map.of(
            ComparisonMeasure.LOST_TIME, "difference of lost time",
            ComparisonMeasure.OUTPUT_LENGTH, "difference of good output",
            ComparisonMeasure.UTILISATION, "difference of utilisation",
            ComparisonMeasure.SCRAP_SHARE, "difference of scrap share",
            ComparisonMeasure.RUN_THROUGH, "difference of the share run through");

    private static final double SHIFT = 8 * 3600;
    private static final double COIL = 600;

    /** How many intervals there were, and how many held the exact value, of each figure. */
    private static final class Tally {
        private final Map<String, Integer> held = new LinkedHashMap<>();

        void add(String figure, Optional<Interval> interval, double exact) {
            // An exact value at an end of what is possible may differ from the end of its interval by rounding.
            boolean holds = interval.isPresent()
                    && interval.get().low() <= exact * (1 + 1e-12)
                    && exact * (1 - 1e-12) <= interval.get().high();
            held.merge(figure, holds ? 1 : 0, Integer::sum);
        }

        void record(String id, String of, CheckBook book) {
            held.forEach((figure, number) -> {
                double coverage = number / (double) SEEDS;
                book.check(COVERAGE, id, figure + ", " + of)
                        .source(Sources.RENEWAL)
                        .expected(0.95)
                        .within(0.0501, "3 binomial errors (3.8 %) below; more is cautious")
                        .got(coverage);
                assertThat(coverage).as("%s, %s", of, figure).isGreaterThanOrEqualTo(0.95 - 3 * ERROR);
            });
        }
    }

    private static Line line(double capacity, Distribution more, double chance) {
        ProcessSection process = ProcessSection.running(1, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
                .withRestart(new ProcessSection.Restart(0, Distribution.constant(0)))
                .withScrap(new ProcessSection.Scrap(20, 0));
        return SoundLine.line()
                .coils(SoundLine.coil(COIL))
                .entry(2, 2.5, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
                .process(process)
                .capacity(capacity)
                .prepare()
                .tail()
                .join(
                        SoundLine.timed("join", 30),
                        new WorkElement(
                                "again",
                                new WorkElement.WorkTime.Timed(more),
                                new WorkElement.Occurrence.Chance(chance),
                                true))
                .build();
    }

    /** The first coil change is left out, since time 0 lies a whole coil before it. */
    private static RunPlan plan(int replications, int changes, long seed) {
        return new RunPlan(new RunPlan.Extent.Changes(changes + 1), 1, replications, seed, 0.9);
    }

    private static SimulationRequest request(Line line, RunPlan plan) {
        return new SimulationRequest("Line (invented)", List.of(), line, plan, UnitSystem.METRIC);
    }

    @ParameterizedTest
    @CsvSource({
        "F1, 10, 20, 0.01, 60",
        "F2, 50, 40, 0.005, 60",
        "F3, 50, 40, 0.0025, 60",
        "F4, 10, 20, 0.2, 60",
        "F5, 10, 20, 0.05, 40",
        "F6, 10, 20, 0.3, 40"
    })
    void ofFigures(String id, int replications, int changes, double p, double least, CheckBook book) {
        Distribution more = least == 60
                ? Distribution.constant(60)
                : Distribution.exponential(20).shifted(40);
        Line line = line(60, more, p);
        Tally tally = new Tally();
        for (long seed = 1; seed <= SEEDS; seed++) {
            Evaluation evaluation =
                    Evaluator.onCallersThread().evaluate(line, plan(replications, changes, 1000 * seed));
            add(tally, evaluation, p);
        }
        tally.record(
                id, replications + " x " + changes + " coil changes, one in " + Math.round(1 / p) + " stops", book);
    }

    private static void add(Tally tally, Evaluation evaluation, double p) {
        Verdict.Stoppages stoppages = evaluation.stoppages();
        Verdict.Output output = evaluation.output();
        double cycle = COIL + 30 * p;
        double shift = SHIFT / cycle;
        tally.add("share run through", evaluation.shareRunThrough().interval(), 1 - p);
        tally.add(
                "stops per 100 coil changes",
                stoppages.starvedPerHundredChanges().interval(),
                100 * p);
        tally.add("stops per 8 h", stoppages.starvedPerShift().interval(), p * shift);
        tally.add("lost time", stoppages.lostTimePerShift().interval(), 30 * p * shift);
        tally.add("lost metres", stoppages.lostMetresPerShift().interval(), 30 * p * shift);
        tally.add("good output", output.speed().interval(), (COIL - 20 * p) / cycle);
        tally.add("gross output", output.grossSpeed().interval(), COIL / cycle);
        tally.add("utilisation", output.utilisation().interval(), COIL / cycle);
        tally.add("yield", output.goodShare().interval(), 1 - 20 * p / COIL);
        tally.add("scrap", output.scrapMetresPerShift().interval(), 20 * p * shift);
        tally.add("scrap share", output.scrapShare().interval(), 20 * p / COIL);
        tally.add("coil changes per 8 h", output.changesPerShift().interval(), shift);
    }

    /** With 75 m a stop lasts 15 s instead of 30 s; with 100 m there is none. */
    @ParameterizedTest
    @CsvSource({
        "D1, 10, 20, 0.01, 75, 15",
        "D2, 10, 20, 0.05, 75, 15",
        "D3, 10, 20, 0.05, 100, 0",
        "D4, 10, 20, 0.5, 75, 15"
    })
    void ofDifferences(
            String id, int replications, int changes, double p, double capacity, double stop, CheckBook book) {
        Tally tally = new Tally();
        for (long seed = 1; seed <= SEEDS; seed++) {
            RunPlan plan = plan(replications, changes, 1000 * seed);
            Comparison comparison = new ComparisonStudy(
                            new Alternative("today", request(line(60, Distribution.constant(60), p), plan)),
                            List.of(new Alternative(
                                    "larger", request(line(capacity, Distribution.constant(60), p), plan))),
                            0.9)
                    .run(1, StudyListener.NONE);
            double before = COIL + 30 * p;
            double after = COIL + stop * p;
            double scrap = stop > 0 ? 20 * p : 0;
            add(tally, comparison, ComparisonMeasure.LOST_TIME, SHIFT * (stop * p / after - 30 * p / before));
            add(tally, comparison, ComparisonMeasure.OUTPUT_LENGTH, (COIL - scrap) / after - (COIL - 20 * p) / before);
            add(tally, comparison, ComparisonMeasure.UTILISATION, COIL / after - COIL / before);
            add(tally, comparison, ComparisonMeasure.SCRAP_SHARE, (scrap - 20 * p) / COIL);
            add(tally, comparison, ComparisonMeasure.RUN_THROUGH, stop > 0 ? 0 : p);
        }
        tally.record(id, "one in " + Math.round(1 / p) + " stops, " + capacity + " m instead of 60 m", book);
    }

    private static void add(Tally tally, Comparison comparison, ComparisonMeasure measure, double exact) {
        Difference difference =
                comparison.others().get(0).figure(measure).difference().orElseThrow();
        // No interval is given where nothing may differ: then the difference itself has to be right.
        Optional<Interval> interval = difference.interval().isEmpty() && difference.mean() == exact
                ? Optional.of(new Interval(-1, 1, Interval.Method.STUDENT_T))
                : difference.interval();
        tally.add(NAMES.getOrDefault(measure, measure.name()), interval, exact);
    }

    private static Optional<Interval> interval(Crossing crossing) {
        OptionalDouble low = crossing.low();
        OptionalDouble high = crossing.high();
        return Optional.of(new Interval(
                low.orElse(Double.NEGATIVE_INFINITY),
                high.orElse(Double.POSITIVE_INFINITY),
                Interval.Method.STUDENT_T));
    }

    /** Joints of 20 to 70 s, evenly spread: nine in ten take 65 s at most, and 1 m/s draws 65 m. */
    @Test
    void ofTheCapacity(CheckBook book) {
        Line line = line(60, Distribution.constant(0), 0)
                .with(SoundLine.line()
                        .prepare()
                        .tail()
                        .join(SoundLine.timed("join", Distribution.uniform(20, 70)))
                        .build()
                        .change());
        Tally tally = new Tally();
        for (long seed = 1; seed <= SEEDS; seed++) {
            Sizing sizing = new SizingStudy(request(line, plan(5, 10, 1000 * seed)), new SizingOptions(0.9, 0.5, 5))
                    .run(1, StudyListener.NONE);
            tally.add("capacity", interval(sizing.capacity().orElseThrow()), 65);
        }
        tally.record("S1", "nine in ten to run through", book);
    }

    /** The same joints, and 78 m: nine in ten run through at up to 78 m / 65 s. */
    @Test
    void ofTheFastestSpeed(CheckBook book) {
        Line line = line(78, Distribution.constant(0), 0)
                .with(SoundLine.line()
                        .prepare()
                        .tail()
                        .join(SoundLine.timed("join", Distribution.uniform(20, 70)))
                        .build()
                        .change());
        Tally tally = new Tally();
        Varied speed = new LineLevers(line, UnitSystem.METRIC).of(Lever.What.PROCESS_SPEED);
        for (long seed = 1; seed <= SEEDS; seed++) {
            // As limits and levers search for it.
            Crossing found = new LeverRun(
                            request(line, plan(5, 10, 1000 * seed)),
                            new Evaluator(1, () -> false),
                            new ProgressCounter(StudyListener.NONE, SEEDS))
                    .along(speed)
                    .find(Goal.runThrough(0.9), speed.present());
            tally.add("fastest speed", interval(found), 78.0 / 65);
        }
        tally.record("L1", "nine in ten to run through", book);
    }
}
