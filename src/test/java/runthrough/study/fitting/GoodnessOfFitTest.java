package runthrough.study.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.report.validation.Topic.FITS;

import java.util.Arrays;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.Distribution;
import runthrough.report.validation.Reference;
import runthrough.simulation.random.Draws;
import runthrough.study.times.MadeSheets;

/**
 * Published limits of goodness-of-fit distances, by samples: so many of them must exceed a limit as its level says. Limits for
 * known parameters (C1 to C3) do not hold once parameters are fitted; those for fitted ones (C4 to C6) go with a factor each,
 * and the two of the normal distribution that are in use must not be mixed.
 */
@RecordsChecks
class GoodnessOfFitTest {
    private static final Distribution LOGNORMAL = Distribution.lognormal(30, 8);
    private static final Distribution EXPONENTIAL = Distribution.exponential(30);
    private static final Distribution WEIBULL = Distribution.weibull(2, 30);
    private static final double LEVEL = 0.05;
    private static final long SEED = 71;

    /** The share of samples of {@code n} times of {@code truth} whose distance from what {@code fit} gives exceeds the limit. */
    private record Exceeding(Distribution truth, int n, int samples, Function<Durations, FittedDistribution> fit) {
        double share(ToDoubleFunction<GoodnessOfFit> distance, double limit) {
            Draws draws = new Draws(SEED, n, 0);
            int beyond = 0;
            for (int i = 0; i < samples; i++) {
                Durations times = Durations.of(MadeSheets.drawn(truth, n, draws));
                beyond += distance.applyAsDouble(GoodnessOfFit.of(fit.apply(times), times)) > limit ? 1 : 0;
            }
            return (double) beyond / samples;
        }

        void check(
                CheckBook book,
                String id,
                String what,
                Reference source,
                ToDoubleFunction<GoodnessOfFit> d,
                double at) {
            book.check(FITS, id, what)
                    .source(source)
                    .expected(LEVEL)
                    .sampled(Math.sqrt(LEVEL * (1 - LEVEL) / samples), 0)
                    .got(share(d, at));
        }
    }

    private static FittedDistribution known(Durations times) {
        return FittedDistribution.of(new FittedNumbers.Exponential(30), times);
    }

    /** As the tables have it: the standard deviation of the logarithms with the divisor n - 1. */
    private static FittedDistribution lognormal(Durations times) {
        double mu = times.meanLogarithm();
        double squares = Arrays.stream(times.exact())
                .map(time -> Math.log(time) - mu)
                .map(deviation -> deviation * deviation)
                .sum();
        return FittedDistribution.of(new FittedNumbers.Lognormal(mu, Math.sqrt(squares / (times.n() - 1))), times);
    }

    private static Function<Durations, FittedDistribution> fitted(Family family) {
        return times -> MaximumLikelihood.fit(family, times).orElseThrow();
    }

    @Test
    void kolmogorovSmirnovWithKnownParameters(CheckBook book) {
        Exceeding known = new Exceeding(EXPONENTIAL, 50, 10_000, GoodnessOfFitTest::known);
        known.check(
                book,
                "C1",
                "share of samples of 50 beyond the asymptotic 5 % limit of D (√n + 0.12 + 0.11/√n)",
                Sources.GOODNESS_OF_FIT_DISTRIBUTIONS,
                distance -> distance.kolmogorovSmirnov() * (Math.sqrt(50) + 0.12 + 0.11 / Math.sqrt(50)),
                1.358099);
        double[][] exact = {{10, 0.409246}, {20, 0.294075}, {50, 0.188406}};
        for (double[] limit : exact) {
            int n = (int) limit[0];
            new Exceeding(EXPONENTIAL, n, 10_000, GoodnessOfFitTest::known)
                    .check(
                            book,
                            "C2",
                            "share of samples of " + n + " beyond the exact 5 % limit of D",
                            Sources.GOODNESS_OF_FIT_DISTRIBUTIONS,
                            GoodnessOfFit::kolmogorovSmirnov,
                            limit[1]);
        }
    }

    @Test
    void andersonDarlingWithKnownParameters(CheckBook book) {
        new Exceeding(EXPONENTIAL, 50, 10_000, GoodnessOfFitTest::known)
                .check(
                        book,
                        "C3",
                        "share of samples of 50 beyond the 5 % limit of A2",
                        Sources.GOODNESS_OF_FIT_DISTRIBUTIONS,
                        GoodnessOfFit::andersonDarling,
                        2.492367);
    }

    @Test
    void andersonDarlingOfAFittedLognormalDistribution(CheckBook book) {
        int n = 40;
        Exceeding fitted = new Exceeding(LOGNORMAL, n, 10_000, GoodnessOfFitTest::lognormal);
        fitted.check(
                book,
                "C4",
                "share of samples of 40 beyond the 5 % limit 0.752 of A2 (1 + 0.75/n + 2.25/n2), lognormal",
                Sources.NIST_ANDERSON_DARLING,
                distance -> distance.andersonDarling() * (1 + 0.75 / n + 2.25 / n / n),
                0.752);
        fitted.check(
                book,
                "C4",
                "share of samples of 40 beyond the 5 % limit 0.787 of A2 (1 + 4/n - 25/n2), lognormal",
                Sources.STEPHENS_1974,
                distance -> distance.andersonDarling() * (1 + 4.0 / n - 25.0 / n / n),
                0.787);
    }

    @Test
    void andersonDarlingOfAFittedExponentialDistribution(CheckBook book) {
        new Exceeding(EXPONENTIAL, 40, 10_000, fitted(Family.EXPONENTIAL))
                .check(
                        book,
                        "C5",
                        "share of samples of 40 beyond the 5 % limit of A2 (1 + 0.6/n), exponential",
                        Sources.STEPHENS_1974,
                        distance -> distance.andersonDarling() * (1 + 0.6 / 40),
                        1.341);
    }

    @Test
    void andersonDarlingOfAFittedWeibullDistribution(CheckBook book) {
        new Exceeding(WEIBULL, 40, 5_000, fitted(Family.WEIBULL))
                .check(
                        book,
                        "C6",
                        "share of samples of 40 beyond the 5 % limit of A2 (1 + 0.2/√n), Weibull",
                        Sources.STEPHENS_1977,
                        distance -> distance.andersonDarling() * (1 + 0.2 / Math.sqrt(40)),
                        0.757);
    }

    @Test
    void limitsForKnownParametersAreFarTooLargeForFittedOnes() {
        double beyond = new Exceeding(EXPONENTIAL, 40, 2_000, fitted(Family.EXPONENTIAL))
                .share(GoodnessOfFit::andersonDarling, 2.492367);

        assertThat(beyond).isLessThan(0.01);
    }
}
