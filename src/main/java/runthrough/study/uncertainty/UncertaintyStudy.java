package runthrough.study.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.Replication;
import runthrough.simulation.random.Draws;
import runthrough.study.Evaluator;
import runthrough.study.Share;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Moments;
import runthrough.study.statistics.Sample;
import runthrough.study.uncertainty.UncertainFigure.Band;
import runthrough.study.uncertainty.Uncertainty.Point;

/**
 * Resamples the observed times and runs the line with each resample. Capacities come from the strip that coil changes take out
 * of an accumulator that never runs empty, so that one run gives them all. Where it matters when a coil or a joint comes to the process,
 * that accumulator is not much larger than the one that is found.
 */
public final class UncertaintyStudy {
    /** Of the random numbers that choose the observations of a resample. */
    private static final int STREAM = 1 << 20;

    /** Fewer resamples do not show the ends of an interval. */
    public static final int FEWEST = 50;

    /** What is usual. */
    public static final int USUAL = 200;

    /** Coil changes of each resample, or a little more. */
    private static final int CHANGES = 2_000;

    private static final int GROUPS = 10;
    private static final int POINTS = 40;

    /** So many times its capacity no accumulator is emptied by. */
    private static final double AMPLE = 10;

    /** So many times the capacity that is found resamples hardly ever need. */
    private static final double ENOUGH = 1.5;

    /** After so many times the capacity that is found changes no more. */
    private static final int TIMES = 4;

    private final SimulationRequest request;
    private final double target;
    private final int resamples;
    private final MeasuredInputs inputs;
    private final boolean stores;

    /**
     * A study.
     *
     * @param request whose line must have passed its check; of one replication it is run with two, for the noise of one is not known
     * @param target share of coil changes that should run through
     * @param resamples how often to resample, {@code >= 50}
     * @throws StudyException when nothing of the line is known from observations
     */
    public UncertaintyStudy(SimulationRequest request, double target, int resamples) {
        this.request = request.with(
                request.run().withReplications(Math.max(2, request.run().replications())));
        this.target = Share.targetBelowAll(target);
        this.resamples = resamples;
        this.inputs = new MeasuredInputs(request.line());
        this.stores = !request.line().practice().isOneStrip();
        if (inputs.all().isEmpty()) {
            throw new StudyException(
                    "no work element has times that were observed, so there is nothing to resample. Give an"
                            + " element its times as {sheet: times.csv} or {observed: [...]}");
        }
    }

    /** What a run of some replications gave. */
    @SuppressWarnings("ArrayRecordComponent") // private, and nobody changes them
    private record Seen(long[] ranThrough, long[] changes, double[][] needs) {
        double[] shares() {
            return IntStream.range(0, changes.length)
                    .mapToDouble(i -> (double) ranThrough[i] / changes[i])
                    .toArray();
        }

        double share() {
            return UncertainFigure.mean(shares());
        }

        /** Variance of the share from simulation noise. */
        double noise() {
            double sd = changes.length > 1 ? Moments.of(shares()).sd() : 0;
            return sd * sd / changes.length;
        }

        Sample pooled() {
            return UncertaintyStudy.pooled(needs);
        }
    }

    private static Sample pooled(double[][] needs) {
        return Sample.of(Arrays.stream(needs).flatMapToDouble(Arrays::stream).toArray());
    }

    /**
     * Runs it.
     *
     * @param threads how many replications run at once; 0 for the thread that asks
     * @throws StudyException when a run cannot go on
     */
    public Uncertainty run(int threads, StudyListener listener) {
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        listener.progress(0, resamples + 1);
        int main = request.run().replications();
        int[] first = IntStream.range(0, main).toArray();
        double ample = stores ? ample(evaluator, first) : 0;
        Seen asObserved = seen(evaluator, request.line(), first, ample);
        listener.progress(1, resamples + 1);
        int each = eachTime(asObserved, main);
        List<Seen> others = new ArrayList<>();
        for (int i = 0; i < resamples; i++) {
            Line line = inputs.resampled(new Draws(request.run().seed(), STREAM, i));
            int next = main + i * each;
            others.add(seen(evaluator, line, IntStream.range(next, next + each).toArray(), ample));
            listener.progress(i + 2, resamples + 1);
        }
        double[] shares = others.stream().mapToDouble(Seen::share).toArray();
        double noise = others.stream().mapToDouble(Seen::noise).average().orElseThrow();
        return new Uncertainty(
                request,
                target,
                inputs.all(),
                resamples,
                share(asObserved, shares, noise),
                UncertainFigure.chanceOfAtLeast(target, asObserved.share(), asObserved.noise(), shares, noise),
                Arrays.stream(shares).boxed().toList(),
                stores ? Optional.of(capacity(asObserved, others, each)) : Optional.empty(),
                stores ? curve(asObserved, others) : List.of());
    }

    /** Replications of a resample. */
    private static int eachTime(Seen asObserved, int main) {
        int perReplication = Math.max(1, asObserved.needs[0].length);
        return Math.max(4, Math.min(main, (CHANGES + perReplication - 1) / perReplication));
    }

    /** A capacity (m) in which the needs of coil changes can be seen; the present one, which suits the levels of the line, at least. */
    private double ample(Evaluator evaluator, int[] indices) {
        double present = request.line().accumulator().capacity();
        double ample = AMPLE * present;
        for (int i = 0; i < TIMES && !request.line().isSameAtAnyCapacity(); i++) {
            double found =
                    pooled(needs(evaluator, request.line(), indices, ample)).percentile(target);
            ample = Math.max(present, ENOUGH * found);
        }
        return ample;
    }

    private Seen seen(Evaluator evaluator, Line line, int[] indices, double ample) {
        RunPlan plan = plan(indices);
        List<Counts> counts = evaluator.observe(line, plan, indices, Counts::of);
        long[] ranThrough = counts.stream().mapToLong(Counts::ranThrough).toArray();
        long[] changes = counts.stream().mapToLong(Counts::changes).toArray();
        if (Arrays.stream(changes).anyMatch(all -> all == 0)) {
            throw new StudyException(
                    "a replication completed no coil change; give a longer run, or fewer coil changes to"
                            + " leave out");
        }
        if (!stores) {
            return new Seen(ranThrough, changes, new double[][] {new double[changes()]});
        }
        return new Seen(ranThrough, changes, needs(evaluator, line, indices, ample));
    }

    /** How much capacity each coil change would have needed (m), seen in an accumulator of {@code ample} (m). */
    private double[][] needs(Evaluator evaluator, Line line, int[] indices, double ample) {
        double slow =
                line.process().slowing().map(ProcessSection.Slowing::level).orElse(0.0);
        return evaluator
                .observe(
                        line.with(line.accumulator().resizedTo(ample)),
                        plan(indices),
                        indices,
                        run -> needs(run, ample, slow))
                .toArray(double[][]::new);
    }

    private RunPlan plan(int[] indices) {
        return request.run().withReplications(indices[indices.length - 1] + 1);
    }

    private int changes() {
        return request.run().extent() instanceof RunPlan.Extent.Changes extent ? extent.changes() : 1;
    }

    /** Coil changes of a replication. */
    private record Counts(long ranThrough, long changes) {
        static Counts of(Replication replication) {
            return new Counts(
                    replication.totals().ranThrough(), replication.totals().changes());
        }
    }

    private static double[] needs(Replication run, double ample, double slowLevel) {
        return run.changes().stream()
                .mapToDouble(change -> ample - change.lowestLevel() + Math.max(change.stopLevel(), slowLevel))
                .toArray();
    }

    private static UncertainFigure share(Seen asObserved, double[] resampled, double noise) {
        Estimate estimate = Estimators.share(asObserved.ranThrough, asObserved.changes);
        double mean = asObserved.share();
        Band band = estimate.interval()
                .map(interval -> new Band(interval.low(), interval.high()))
                .orElse(new Band(mean, mean));
        return UncertainFigure.of(mean, band, asObserved.noise(), resampled, noise, 0, 1);
    }

    private UncertainFigure capacity(Seen asObserved, List<Seen> others, int each) {
        double value = asObserved.pooled().percentile(target);
        int main = asObserved.needs.length;
        // Replications in groups large enough to have a percentile; what the groups differ by is the noise.
        int groups = Math.min(GROUPS, main);
        double[] byGroup = IntStream.range(0, groups)
                .mapToDouble(group -> Sample.of(IntStream.range(0, main)
                                .filter(i -> i % groups == group)
                                .boxed()
                                .flatMapToDouble(i -> Arrays.stream(asObserved.needs[i]))
                                .toArray())
                        .percentile(target))
                .toArray();
        double sd = groups > 1 ? Moments.of(byGroup).sd() : 0;
        double noise = sd * sd / groups;
        double half =
                Estimators.mean(byGroup).interval().map(Interval::halfWidth).orElse(0.0);
        return UncertainFigure.of(
                value,
                new Band(value - half, value + half),
                noise,
                others.stream()
                        .mapToDouble(seen -> seen.pooled().percentile(target))
                        .toArray(),
                noise * main / each,
                0,
                Double.POSITIVE_INFINITY);
    }

    private List<Point> curve(Seen asObserved, List<Seen> others) {
        Sample pooled = asObserved.pooled();
        List<Sample> resampled = others.stream().map(Seen::pooled).toList();
        double now = request.line().accumulator().capacity();
        double from = Math.min(now, pooled.percentile(0.02)) * 0.98;
        double to = Math.max(now, pooled.percentile(0.999)) * 1.02;
        return IntStream.rangeClosed(0, POINTS)
                .mapToObj(i -> {
                    double capacity = from + (to - from) * i / POINTS;
                    Seen here = through(asObserved, capacity);
                    double[] shares = resampled.stream()
                            .mapToDouble(sample -> sample.shareBelow(Math.nextUp(capacity)))
                            .toArray();
                    double noise = here.noise() * here.changes.length / others.get(0).needs.length;
                    return new Point(capacity, share(here, shares, noise));
                })
                .toList();
    }

    /** Shares that would run through with {@code capacity} (m). */
    private static Seen through(Seen seen, double capacity) {
        return new Seen(
                Stream.of(seen.needs)
                        .mapToLong(needs -> Arrays.stream(needs)
                                .filter(need -> need <= capacity)
                                .count())
                        .toArray(),
                Stream.of(seen.needs).mapToLong(needs -> needs.length).toArray(),
                seen.needs);
    }
}
