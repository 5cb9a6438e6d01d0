package runthrough.study.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.Distribution;
import runthrough.simulation.random.Draws;
import runthrough.study.StudyListener;
import runthrough.study.fitting.Recommendation.Reason;
import runthrough.study.times.MadeSheets;
import runthrough.study.times.SheetStatistics;

/** Sheets drawn from distributions that are known yield those distributions. */
class KnownTruthTest {
    private static ElementFits fits(double... times) {
        return new FittingStudy(1)
                .run(SheetStatistics.of(MadeSheets.of(times), 1), StudyListener.NONE)
                .get(0);
    }

    private static Candidate judged(Family family, double[] times, int stream) {
        Durations durations = Durations.of(times);
        FittedDistribution distribution =
                MaximumLikelihood.fit(family, durations).orElseThrow();
        return ParametricBootstrap.judge(distribution, durations, 0, new Draws(9, stream, 0))
                .orElseThrow();
    }

    private static boolean covers(Candidate fit, String parameter, double truth) {
        FittedParameter known = fit.parameters().stream()
                .filter(any -> any.name().equals(parameter))
                .findFirst()
                .orElseThrow();
        return known.low() <= truth && truth <= known.high();
    }

    /** 95 % of 80 sheets are 76; three standard errors are 5.8. */
    @Test
    void intervalsHoldTheTruth_lognormal() {
        Distribution truth = Distribution.lognormal(25, 10);
        Draws draws = new Draws(31, 0, 0);
        int means = 0;
        int sds = 0;
        for (int sheet = 0; sheet < 80; sheet++) {
            Candidate fit = judged(Family.LOGNORMAL, MadeSheets.drawn(truth, 40, draws), sheet);
            means += covers(fit, "mean", 25) ? 1 : 0;
            sds += covers(fit, "standard deviation", 10) ? 1 : 0;
        }

        assertThat(means).isBetween(70, 80);
        assertThat(sds).isBetween(70, 80);
    }

    /** 95 % of 40 sheets are 38; three standard errors are 4.1. */
    @Test
    void intervalsHoldTheTruth_weibull() {
        Distribution truth = Distribution.weibull(2.2, 40);
        Draws draws = new Draws(32, 0, 0);
        int shapes = 0;
        int scales = 0;
        for (int sheet = 0; sheet < 40; sheet++) {
            Candidate fit = judged(Family.WEIBULL, MadeSheets.drawn(truth, 40, draws), sheet);
            shapes += covers(fit, "shape", 2.2) ? 1 : 0;
            scales += covers(fit, "scale", 40) ? 1 : 0;
        }

        assertThat(shapes).isBetween(33, 40);
        assertThat(scales).isBetween(33, 40);
    }

    /** The distribution taken, or one that fits about as well, is of the family the times were drawn from; 400 times show it. */
    @ParameterizedTest
    @CsvSource({"LOGNORMAL, false", "EXPONENTIAL, false", "WEIBULL, false", "GAMMA, true"})
    void theFamilyIsRecognised(Family family, boolean shifted) {
        Distribution truth = switch (family) {
            case LOGNORMAL -> Distribution.lognormal(30, 20);
            case EXPONENTIAL -> Distribution.exponential(30);
            case WEIBULL -> Distribution.weibull(3.5, 30);
            case GAMMA -> Distribution.gamma(15, 11).shifted(40);
            default -> throw new IllegalArgumentException("not asked here");
        };
        ElementFits fits =
                fits(MadeSheets.drawn(truth, 400, new Draws(33, family.parameters() + (shifted ? 7 : 0), 0)));

        assertThat(fits.recommendation().reason()).isEqualTo(Reason.FITS);
        assertThat(Stream.concat(fits.recommendation().distribution().stream(), fits.recommendation().others().stream())
                        .map(Candidate::distribution))
                .anyMatch(distribution -> distribution.family() == family && distribution.isShifted() == shifted);
        assertThat(fits.distribution().mean()).isCloseTo(truth.mean(), within(4 * truth.sd() / Math.sqrt(400)));
    }

    @Test
    void aThresholdIsFoundBetweenZeroAndTheLeastTime() {
        Distribution truth = Distribution.lognormal(20, 12).shifted(50);
        Durations times = Durations.of(MadeSheets.drawn(truth, 400, new Draws(34, 0, 0)));
        FittedDistribution distribution = Threshold.fit(Family.LOGNORMAL, times).orElseThrow();

        // A threshold is known far better than a mean: within a few seconds at 400 times.
        assertThat(distribution.shift()).isCloseTo(50, within(4.0)).isLessThan(times.least());
        assertThat(distribution.distribution().mean()).isCloseTo(70, within(3 * 12 / 20.0));
        assertThat(distribution.logLikelihood())
                .isGreaterThan(MaximumLikelihood.fit(Family.LOGNORMAL, times)
                        .orElseThrow()
                        .logLikelihood());
    }

    @Test
    void aBellCurveHasNoThresholdNearItsLeastTime() {
        Durations times = Durations.of(MadeSheets.drawn(Distribution.normal(60, 6), 200, new Draws(35, 0, 0)));
        Optional<FittedDistribution> distribution = Threshold.fit(Family.LOGNORMAL, times);

        assertThat(distribution.map(FittedDistribution::shift).orElse(0.0)).isLessThan(times.least() - 1);
    }

    @Test
    void shiftedExponential_asInTheHandCalculation() {
        // Least 10, mean 16, 4 times: threshold 10 - 6 / 3 = 8, mean above it 8.
        FittedDistribution distribution =
                Threshold.fit(Family.EXPONENTIAL, Durations.of(10, 12, 18, 24)).orElseThrow();

        assertThat(distribution.shift()).isCloseTo(8, within(1e-12));
        assertThat(distribution.numbers().distribution().mean()).isCloseTo(8, within(1e-12));
    }

    @Test
    void triangularEndsLieBeyondTheTimes() {
        Distribution truth = Distribution.triangular(20, 30, 60);
        double[] drawn = MadeSheets.drawn(truth, 500, new Draws(36, 0, 0));
        FittedDistribution distribution =
                MaximumLikelihood.fit(Family.TRIANGULAR, Durations.of(drawn)).orElseThrow();

        assertThat(distribution.distribution().lowest())
                .isCloseTo(20, within(2.0))
                .isLessThan(Arrays.stream(drawn).min().orElseThrow());
        assertThat(distribution.distribution().highest()).isCloseTo(60, within(4.0));
        assertThat(distribution.distribution().mean()).isCloseTo(truth.mean(), within(3 * truth.sd() / Math.sqrt(500)));
    }

    @Test
    void roundingDoesNotSpoilTheFit() {
        double[] read = Arrays.stream(MadeSheets.drawn(Distribution.lognormal(60, 15), 80, new Draws(37, 0, 0)))
                .map(time -> 5 * Math.rint(time / 5))
                .toArray();
        ElementFits fits = fits(read);

        assertThat(fits.times().step()).isEqualTo(5);
        assertThat(fits.recommendation().reason()).isEqualTo(Reason.FITS);
    }

    @Test
    void fewEqualAndOutlyingTimesAreTakenAsTheyAre() {
        double[] few = MadeSheets.drawn(Distribution.lognormal(30, 6), 19, new Draws(38, 0, 0));
        double[] disturbed = MadeSheets.drawn(Distribution.normal(30, 2), 60, new Draws(39, 0, 0));
        disturbed[3] = 95;
        disturbed[40] = 120;
        double[] coarse = new double[30];
        Arrays.setAll(coarse, i -> 60.0 * (1 + i % 2));

        assertThat(fits(few).recommendation().reason()).isEqualTo(Reason.TOO_FEW);
        assertThat(fits(disturbed).recommendation().reason()).isEqualTo(Reason.NOTHING_FITS);
        assertThat(fits(disturbed).distribution()).isEqualTo(fits(disturbed).observed());
        assertThat(fits(coarse).recommendation().reason()).isEqualTo(Reason.TOO_COARSE);
        assertThat(fits(8, 8, 8, 8).recommendation().reason()).isEqualTo(Reason.CONSTANT);
        assertThat(fits(8, 8, 8, 8).distribution()).isEqualTo(Distribution.constant(8));
    }

    @Test
    void aTimeOfZeroLeavesOnlyDistributionsThatHaveOne() {
        double[] times = MadeSheets.drawn(Distribution.exponential(30), 40, new Draws(40, 0, 0));
        times[5] = 0;

        assertThat(fits(times).candidates())
                .extracting(fit -> fit.distribution().family())
                .isSubsetOf(List.of(Family.EXPONENTIAL, Family.TRIANGULAR));
    }

    @Test
    void theSameSeedGivesTheSameFits() {
        double[] times = MadeSheets.drawn(Distribution.gamma(30, 8), 30, new Draws(41, 0, 0));

        assertThat(numbers(fits(times))).isEqualTo(numbers(fits(times)));
    }

    private static List<List<Object>> numbers(ElementFits fits) {
        return fits.candidates().stream()
                .map(fit -> List.<Object>of(
                        fit.distribution().label(), fit.aicc(), fit.p1(), fit.p2(), fit.limits(), fit.parameters()))
                .toList();
    }
}
