package runthrough.study.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.simulation.random.Draws;
import runthrough.study.statistics.Sample;

/**
 * Judges a fitted distribution by samples drawn from it: each as large as the times were, rounded to the step of the watch, and fitted
 * anew. So the critical values are those for fitted parameters and rounded times, for which no table exists. W. Stute, W.
 * González Manteiga, M. Presedo Quindimil, Bootstrap based goodness-of-fit-tests, Metrika 40, 1993 (from memory).
 *
 * <p>The same samples give the intervals of the parameters: what was fitted to a sample misses the distribution it was drawn from as
 * the distribution misses the truth. Distances are taken on the logarithm where a parameter is positive; for scales and for the shape
 * of a Weibull distribution the interval is then exact but for the number of samples.
 *
 * <p>Of more than {@value #LARGEST} times, samples have that many; critical values hardly depend on it, and intervals are
 * narrowed by the square root.
 */
final class ParametricBootstrap {
    static final int SAMPLES = 299;
    private static final int LARGEST = 1000;
    private static final int PATIENCE = 20;
    private static final double LOWER = 0.025;

    private final FittedDistribution distribution;
    private final double step;
    private final int n;
    private final int all;
    private final Draws draws;
    private final List<Parameter> parameters;
    private final double[] andersonDarling = new double[SAMPLES];
    private final double[] kolmogorovSmirnov = new double[SAMPLES];
    private final double[][] misses;

    private ParametricBootstrap(FittedDistribution distribution, int n, double step, Draws draws) {
        this.distribution = distribution;
        this.step = step;
        this.all = n;
        this.n = Math.min(n, LARGEST);
        this.draws = draws;
        this.parameters = Parameter.of(distribution);
        this.misses = new double[parameters.size()][SAMPLES];
    }

    /**
     * How well {@code distribution} fits {@code times}; empty when its samples cannot be fitted, because the watch was read too coarsely.
     *
     * @param step of the watch (s); 0 for none
     * @throws CancellationException when the thread is interrupted
     */
    static Optional<Candidate> judge(FittedDistribution distribution, Durations times, double step, Draws draws) {
        ParametricBootstrap bootstrap = new ParametricBootstrap(distribution, times.n(), step, draws);
        return bootstrap.run() ? Optional.of(bootstrap.candidate(times)) : Optional.empty();
    }

    private boolean run() {
        for (int b = 0; b < SAMPLES; b++) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("given up after " + b + " of " + SAMPLES + " samples");
            }
            Optional<Refit> refit = refit();
            if (refit.isEmpty()) {
                return false;
            }
            andersonDarling[b] = refit.get().distance().andersonDarling();
            kolmogorovSmirnov[b] = refit.get().distance().kolmogorovSmirnov();
            List<Parameter> found = Parameter.of(refit.get().distribution());
            for (int k = 0; k < misses.length; k++) {
                // A sample that is fitted without a shift has one of 0.
                double value = k < found.size() ? found.get(k).onScale() : 0;
                misses[k][b] = value - parameters.get(k).onScale();
            }
        }
        return true;
    }

    private record Refit(FittedDistribution distribution, GoodnessOfFit distance) {}

    private Optional<Refit> refit() {
        Function<Durations, Optional<FittedDistribution>> fit = distribution.isShifted()
                ? sample -> Threshold.fitAnyway(distribution.family(), sample)
                : sample -> MaximumLikelihood.fit(distribution.family(), sample);
        for (int i = 0; i < PATIENCE; i++) {
            Durations sample = sample();
            Optional<FittedDistribution> fitted = fit.apply(sample);
            if (fitted.isPresent()) {
                return fitted.map(refitted -> new Refit(refitted, GoodnessOfFit.of(refitted, sample)));
            }
        }
        return Optional.empty();
    }

    private Durations sample() {
        Distribution drawn = distribution.distribution();
        return Durations.of(IntStream.range(0, n)
                .mapToDouble(i -> asRead(drawn.quantile(draws.next())))
                .toArray());
    }

    /** As the watch would show it; nobody notes a time of 0. */
    private double asRead(double time) {
        return step == 0 ? time : Math.max(step / 2, Math.rint(time / step) * step);
    }

    private Candidate candidate(Durations times) {
        GoodnessOfFit distance = GoodnessOfFit.of(distribution, times);
        GoodnessOfFit limits = new GoodnessOfFit(
                Sample.of(andersonDarling).percentile(1 - Candidate.LEVEL),
                Sample.of(kolmogorovSmirnov).percentile(1 - Candidate.LEVEL));
        return new Candidate(
                distribution,
                distribution.aicc(times.n()),
                distance,
                limits,
                share(andersonDarling, distance.andersonDarling()),
                share(kolmogorovSmirnov, distance.kolmogorovSmirnov()),
                known());
    }

    private static double share(double[] samples, double seen) {
        long asFar = IntStream.range(0, samples.length)
                .filter(b -> samples[b] >= seen)
                .count();
        return (asFar + 1.0) / (samples.length + 1);
    }

    private List<FittedParameter> known() {
        List<FittedParameter> known = new ArrayList<>();
        double narrowing = Math.sqrt((double) n / all);
        for (int k = 0; k < misses.length; k++) {
            Parameter parameter = parameters.get(k);
            Sample missed = Sample.of(misses[k]);
            double low = parameter.onScale() - narrowing * missed.percentile(1 - LOWER);
            double high = parameter.onScale() - narrowing * missed.percentile(LOWER);
            known.add(new FittedParameter(
                    parameter.name(),
                    parameter.isTime(),
                    parameter.value(),
                    Math.max(0, parameter.offScale(low)),
                    parameter.offScale(high)));
        }
        return known;
    }
}
