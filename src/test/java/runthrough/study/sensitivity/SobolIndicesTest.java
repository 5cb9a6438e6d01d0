package runthrough.study.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import runthrough.study.sensitivity.SobolIndices.Index;
import runthrough.study.statistics.Estimate;

/**
 * The estimators against functions whose indices are known in closed form. Each case asks that all estimates lie within three
 * and a half standard errors of the exact value and that these are small; how often intervals cover is counted apart.
 */
class SobolIndicesTest {
    private static final int SAMPLES = 4000;

    /** Pick-freeze samples of {@code function} of {@code inputs} uniform numbers, one coil change a replication. */
    private static SobolIndices indices(ToDoubleFunction<double[]> function, int inputs, int samples, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<ExchangedSamples> exchanges = new ArrayList<>();
        for (int j = 0; j < samples; j++) {
            double[] a = random.doubles(inputs).toArray();
            double[] b = random.doubles(inputs).toArray();
            double[][] exchanged = new double[inputs][];
            for (int i = 0; i < inputs; i++) {
                double[] mixed = a.clone();
                mixed[i] = b[i];
                exchanged[i] = new double[] {function.applyAsDouble(mixed)};
            }
            exchanges.add(new ExchangedSamples(
                    new double[] {function.applyAsDouble(a)}, new double[] {function.applyAsDouble(b)}, exchanged));
        }
        return SobolIndices.of(exchanges);
    }

    private static void assertNear(Estimate estimate, double exact) {
        double error = estimate.sd().orElseThrow() / Math.sqrt(estimate.replications());
        assertThat(error).isLessThan(0.03);
        assertThat(estimate.mean()).isCloseTo(exact, within(3.5 * error + 1e-12));
    }

    /** {@code sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1}, each from -pi to pi. */
    private static double ishigami(double[] u) {
        double x1 = Math.PI * (2 * u[0] - 1);
        double x2 = Math.PI * (2 * u[1] - 1);
        double x3 = Math.PI * (2 * u[2] - 1);
        return Math.sin(x1) + 7 * Math.pow(Math.sin(x2), 2) + 0.1 * Math.pow(x3, 4) * Math.sin(x1);
    }

    /**
     * T. Ishigami and T. Homma, "An importance quantification technique in uncertainty analysis for computer models",
     * Proceedings of the First International Symposium on Uncertainty Modeling and Analysis, IEEE, 1990, with a = 7 and b =
     * 0.1, from memory. Hand calculation: V1 = (1 + b pi^4/5)^2/2, V2 = a^2/8, V13 = b^2 pi^8 (1/18 - 1/50); so S = 0.3139, 0.4424, 0
     * and total 0.5576, 0.4424, 0.2437.
     */
    @Test
    void ishigamisFunction() {
        double pi4 = Math.pow(Math.PI, 4);
        double v1 = Math.pow(1 + 0.1 * pi4 / 5, 2) / 2;
        double v2 = 49 / 8.0;
        double v13 = 0.01 * pi4 * pi4 * (1 / 18.0 - 1 / 50.0);
        double v = v1 + v2 + v13;
        assertThat(v1 / v).isCloseTo(0.3139, within(5e-5));
        assertThat((v1 + v13) / v).isCloseTo(0.5576, within(5e-5));
        assertThat(v13 / v).isCloseTo(0.2437, within(5e-5));

        SobolIndices indices = indices(SobolIndicesTest::ishigami, 3, SAMPLES, 1);

        assertNear(indices.sources().get(0).first(), v1 / v);
        assertNear(indices.sources().get(1).first(), v2 / v);
        assertNear(indices.sources().get(2).first(), 0);
        assertNear(indices.sources().get(0).total(), (v1 + v13) / v);
        assertNear(indices.sources().get(1).total(), v2 / v);
        assertNear(indices.sources().get(2).total(), v13 / v);
        assertNear(indices.firstOrders(), (v1 + v2) / v);
        assertThat(indices.mean()).isCloseTo(3.5, within(0.2));
        assertThat(indices.variance()).isCloseTo(v, within(0.5));
        // The third does nothing by itself, and much together with the first.
        assertThat(indices.sources().get(2).isFirstShown()).isFalse();
        assertThat(indices.sources().get(2).isShown()).isTrue();
    }

    /**
     * Sobol's g-function, the product of {@code (|4 x - 2| + a)/(1 + a)}, with a = 0, 1, 4.5, 9: I. M. Sobol', "On sensitivity
     * estimation for nonlinear mathematical models", Matematicheskoe Modelirovanie 2, 1990, from memory. Each factor has mean 1
     * and variance v_i = 1/(3 (1 + a_i)^2): V = prod (1 + v_i) - 1, S_i = v_i/V, T_i = v_i prod over others (1 + v_k)/V.
     */
    @Test
    void sobolsGFunction() {
        double[] a = {0, 1, 4.5, 9};
        double product = 1;
        for (double each : a) {
            product *= 1 + part(each);
        }

        SobolIndices indices = indices(
                u -> {
                    double value = 1;
                    for (int i = 0; i < a.length; i++) {
                        value *= (Math.abs(4 * u[i] - 2) + a[i]) / (1 + a[i]);
                    }
                    return value;
                },
                a.length,
                SAMPLES,
                2);

        for (int i = 0; i < a.length; i++) {
            assertNear(indices.sources().get(i).first(), part(a[i]) / (product - 1));
            assertNear(indices.sources().get(i).total(), part(a[i]) * product / (1 + part(a[i])) / (product - 1));
        }
    }

    private static double part(double a) {
        return 1 / (3 * (1 + a) * (1 + a));
    }

    /** 400 runs of 300 samples: 95 % +- 3 standard errors of 1.1 % each, less 2 % for so few samples of squares. */
    @Test
    void intervalsCoverTheExactValueAsOftenAsTheySay() {
        int runs = 400;
        int[] covered = new int[3];
        // 2 x1 + x2, and x3 in nothing: first order and total are 0.8 and 0.2; 0 exactly for the third.
        for (int run = 0; run < runs; run++) {
            List<Index> sources =
                    indices(u -> 2 * u[0] + u[1], 3, 300, 100 + run).sources();
            covered[0] += covers(sources.get(0).first(), 0.8) ? 1 : 0;
            covered[1] += covers(sources.get(1).first(), 0.2) ? 1 : 0;
            covered[2] += covers(sources.get(1).total(), 0.2) ? 1 : 0;
            assertThat(sources.get(2).total().mean()).isZero();
            assertThat(sources.get(2).isShown()).isFalse();
            assertThat(sources.get(2).isFirstShown()).isFalse();
        }
        for (int count : covered) {
            assertThat((double) count / runs).isBetween(0.93 - 3 * 0.011, 0.95 + 3 * 0.011);
        }
    }

    private static boolean covers(Estimate estimate, double exact) {
        return estimate.interval().orElseThrow().contains(exact);
    }

    /** What is different at each coil change without chance is no variance; what hangs together over them counts in each. */
    @Test
    void coilChangesCountWithTheirVariances() {
        SplittableRandom random = new SplittableRandom(5);
        List<ExchangedSamples> exchanges = new ArrayList<>();
        for (int j = 0; j < 2000; j++) {
            double[] a = random.doubles(2).toArray();
            double[] b = random.doubles(2).toArray();
            exchanges.add(new ExchangedSamples(
                    steps(a[0], a[1]), steps(b[0], b[1]), new double[][] {steps(b[0], a[1]), steps(a[0], b[1])}));
        }
        SobolIndices indices = SobolIndices.of(exchanges);

        // Variances 9/12 and 0 from the first, 0 and 1/12 from the second: shares 0.9 and 0.1, of (10/12)/3 for 3
        // changes.
        assertNear(indices.sources().get(0).first(), 0.9);
        assertNear(indices.sources().get(1).total(), 0.1);
        assertThat(indices.variance()).isCloseTo(10 / 36.0, within(0.02));
    }

    private static double[] steps(double x, double y) {
        return new double[] {100 + 3 * x, 200 + y, 300};
    }

    @Test
    void whatNeverVariesHasNoShares() {
        SobolIndices indices = indices(u -> 7, 2, 20, 1);

        assertThat(indices.variance()).isZero();
        assertThat(indices.sources()).isEmpty();
        assertThat(indices.mean()).isEqualTo(7);
    }
}
