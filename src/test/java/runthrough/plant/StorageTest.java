package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much an accumulator holds, and how fast it takes and gives. */
class StorageTest {

    /** Strip in a loop by integrating its shape y = a cosh(x/a), with the parameter a found by halving an interval. */
    private static double integratedArc(double span, double sag) {
        double low = 1e-4 * span;
        double high = span * span / sag + span;
        for (int i = 0; i < 200; i++) {
            double a = (low + high) / 2;
            // The deeper the loop, the smaller its parameter.
            if (a * (Math.cosh(span / (2 * a)) - 1) > sag) {
                low = a;
            } else {
                high = a;
            }
        }
        double a = (low + high) / 2;
        // Simpson's rule for the integral of sqrt(1 + y'^2), y' = sinh(x/a), over half the span.
        int intervals = 200_000;
        double step = span / 2 / intervals;
        double sum = 0;
        for (int i = 0; i <= intervals; i++) {
            double slope = Math.sinh(i * step / a);
            int weight = i == 0 || i == intervals ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.sqrt(1 + slope * slope);
        }
        return 2 * sum * step / 3;
    }

    @ParameterizedTest
    @CsvSource({"4, 0.1", "4, 0.5", "4, 1", "4, 2", "4, 3.5", "4, 8", "4, 40", "1, 30", "12, 0.3"})
    void catenaryArcIsTheIntegralAlongTheLoop(double span, double sag) {
        double integrated = integratedArc(span, sag);
        assertThat(Catenary.arc(span, sag)).isCloseTo(integrated, within(integrated * 1e-9));
    }

    @Test
    void straightStrip_isAsLongAsTheSpan() {
        assertThat(Catenary.arc(4, 0)).isEqualTo(4);
    }

    @ParameterizedTest
    @CsvSource({"4, 1e-3", "4, 1e-6", "10, 1e-9"})
    void shallowLoop_isAParabola(double span, double sag) {
        // To the second order arc - span = 8 sag^2 / (3 span).
        double excess = 8 * sag * sag / (3 * span);
        assertThat(Catenary.arc(span, sag)).isCloseTo(span + excess, within(1e-15 * span + 1e-6 * excess));
    }

    @Test
    void veryDeepLoop_hangsTwiceItsSag() {
        // Both sides hang nearly straight down; the round bottom keeps it within a few a.
        assertThat(Catenary.arc(1, 1000)).isBetween(2000.0, 2000.3);
    }

    @Test
    void catenaryGrowsWithItsSag() {
        double before = 0;
        for (int i = 0; i <= 400; i++) {
            double arc = Catenary.arc(4, i * i * 1e-4);
            assertThat(arc).isGreaterThanOrEqualTo(before);
            before = arc;
        }
    }

    @Test
    void eachFormHoldsWhatItsGeometryGives() {
        assertThat(new StorageForm.Direct(60).capacity()).isEqualTo(60);
        assertThat(new StorageForm.Strands(8, 9, 0.2, 0.3, true).capacity()).isEqualTo(72);
        assertThat(new StorageForm.FreeLoop(2, 4, 3.5, 0.5).capacity())
                .isCloseTo(2 * (integratedArc(4, 3.5) - integratedArc(4, 0.5)), within(1e-8));
        assertThat(new StorageForm.Spiral(20, 4.2, 2.4).capacity()).isCloseTo(20 * Math.PI * 1.8, within(1e-12));
        assertThat(new StorageForm.None().capacity()).isZero();
    }

    @Test
    void strandsTakeAndGiveAsFastAsTheCarriageTimesTheirNumber() {
        StorageForm strands = new StorageForm.Strands(8, 9, 0.2, 0.3, true);
        assertThat(strands.fillRateLimit()).isCloseTo(1.6, within(1e-15));
        assertThat(strands.emptyingRateLimit()).isCloseTo(2.4, within(1e-15));
    }

    @Test
    void otherForms_setNoRate() {
        assertThat(new StorageForm.Direct(60).fillRateLimit()).isInfinite();
        assertThat(new StorageForm.Spiral(20, 4.2, 2.4).emptyingRateLimit()).isInfinite();
    }

    @Test
    void lowerOfBothFillRateLimits_isInForce() {
        StorageForm strands = new StorageForm.Strands(8, 9, 0.2, 0.3, true);
        assertThat(new Accumulator(strands, 1, 0, 1).fillRateLimit()).isEqualTo(1);
        assertThat(new Accumulator(strands, 2, 0, 1).fillRateLimit()).isCloseTo(1.6, within(1e-15));
    }

    @Test
    void whatNoAccumulatorCanBe_isRefusedWithBothValues() {
        assertThatThrownBy(() -> new StorageForm.FreeLoop(1, 4, 0.5, 0.6))
                .hasMessage("greatest sag = 0.5 m; must be the least sag, 0.6 m, or more");
        assertThatThrownBy(() -> new StorageForm.Spiral(20, 2.3, 2.4))
                .hasMessage("full diameter = 2.3 m; must be the empty diameter, 2.4 m, or more");
        assertThatThrownBy(() -> new StorageForm.Strands(0, 9, 1, 1, false))
                .hasMessage("strands = 0; must be 1 or more");
        assertThatThrownBy(() -> new StorageForm.Strands(2, 9, 0, 1, false))
                .hasMessage("carriage speed = 0.0; must be more than 0");
        assertThatThrownBy(() -> new Accumulator(new StorageForm.Direct(60), Double.NaN, 0, 0))
                .hasMessage("fill-rate limit = NaN m/s; must be more than 0");
        assertThatThrownBy(() -> new Accumulator(new StorageForm.Direct(60), 1, -1, 0))
                .hasMessage("reserve = -1.0; must be 0 or more and finite");
        assertThatThrownBy(() -> new Accumulator(new StorageForm.Direct(60), 1, 0, Double.NaN))
                .hasMessage("overtravel allowance = NaN m; must be 0 or more");
    }
}
