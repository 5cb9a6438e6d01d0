package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.GEOMETRY;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.StorageForm.Adjustable;
import runthrough.plant.StorageForm.Measure;

/** How much an accumulator holds, and how fast it takes and gives. */
@RecordsChecks
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
    @CsvSource({
        "CA1, 4, 0.1",
        "CA2, 4, 0.5",
        "CA3, 4, 1",
        "CA4, 4, 2",
        "CA5, 4, 3.5",
        "CA6, 4, 8",
        "CA7, 4, 40",
        "CA8, 1, 30",
        "CA9, 12, 0.3"
    })
    void catenaryArcIsTheIntegralAlongTheLoop(String id, double span, double sag, CheckBook book) {
        // Rule ACC-3.
        book.check(GEOMETRY, id, "strip in a loop, span " + span + " m, sag " + sag + " m")
                .source(Sources.CATENARY)
                .unit("m")
                .expected(integratedArc(span, sag))
                .relative(1e-9)
                .got(Catenary.arc(span, sag));
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
        // Rules ACC-1, ACC-2, ACC-3, ACC-4.
        assertThat(new StorageForm.Direct(60).capacity()).isEqualTo(60);
        assertThat(new StorageForm.Strands(8, 9, 0.2, 0.3, true).capacity()).isEqualTo(72);
        assertThat(new StorageForm.FreeLoop(2, 4, 3.5, 0.5).capacity())
                .isCloseTo(2 * (integratedArc(4, 3.5) - integratedArc(4, 0.5)), within(1e-8));
        assertThat(new StorageForm.Spiral(20, 4.2, 2.4).capacity()).isCloseTo(20 * Math.PI * 1.8, within(1e-12));
        assertThat(new StorageForm.None().capacity()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"4, 0.01", "4, 0.5", "4, 2", "4, 40", "1, 300", "12, 1e-5"})
    void sagTurnsArcRound(double span, double sag) {
        // In a shallow loop the arc's last digit stands for many of the sag: within 1e-16 span / (d arc / d sag).
        double tolerance = 1e-12 * sag + 1e-15 * span * span / sag;
        assertThat(Catenary.sag(span, Catenary.arc(span, sag))).isCloseTo(sag, within(tolerance));
    }

    @Test
    void stripNoLongerThanTheSpan_hangsStraight() {
        assertThat(Catenary.sag(4, 4)).isZero();
        assertThat(Catenary.shape(4, 4)).isZero();
        // sinh(1) / 1 = 1.1752: a loop of 4 sinh(1) m over 4 m has a parameter of 2 m.
        assertThat(Catenary.shape(4, 4 * Math.sinh(1))).isCloseTo(1, within(1e-12));
        assertThat(Catenary.sag(4, 3.9)).isZero();
    }

    static Stream<StorageForm> forms() {
        return Stream.of(
                new StorageForm.Direct(60),
                new StorageForm.Strands(8, 9, 0.2, 0.3, true),
                new StorageForm.FreeLoop(2, 4, 3.5, 0.5),
                new StorageForm.Spiral(20, 4.2, 2.4));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void resizedForm_holdsWhatIsWantedAndIsElseTheSame(StorageForm form) {
        for (double wanted : new double[] {0.5, 17, 400}) {
            StorageForm resized = form.resizedTo(wanted);
            assertThat(resized.capacity()).isCloseTo(wanted, within(1e-9 * wanted));
            assertThat(resized.resizedTo(form.capacity())
                            .adjustable()
                            .orElseThrow()
                            .metres())
                    .isCloseTo(form.adjustable().orElseThrow().metres(), within(1e-9));
            assertThat(resized.fillRateLimit()).isEqualTo(form.fillRateLimit());
            assertThat(resized.emptyingRateLimit()).isEqualTo(form.emptyingRateLimit());
        }
    }

    @Test
    void whatIsAdjustedOfEachForm() {
        assertThat(forms().map(form -> form.adjustable().orElseThrow()))
                .containsExactly(
                        new Adjustable(Measure.CAPACITY, 60),
                        new Adjustable(Measure.STROKE, 9),
                        new Adjustable(Measure.GREATEST_SAG, 3.5),
                        new Adjustable(Measure.FULL_DIAMETER, 4.2));
    }

    @Test
    void noAccumulator_cannotBeResized() {
        assertThat(new StorageForm.None().adjustable()).isEmpty();
        assertThatThrownBy(() -> new StorageForm.None().resizedTo(10))
                .hasMessage("there is no accumulator to resize to 10.0 m");
    }

    @Test
    void strandsTakeAndGiveAsFastAsTheCarriageTimesTheirNumber() {
        // Rules ACC-6, ACC-7.
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
        // Rule ACC-6.
        StorageForm strands = new StorageForm.Strands(8, 9, 0.2, 0.3, true);
        assertThat(new Accumulator(strands, 1, 0, 1).fillRateLimit()).isEqualTo(1);
        assertThat(new Accumulator(strands, 2, 0, 1).fillRateLimit()).isCloseTo(1.6, within(1e-15));
    }

    @Test
    void whatNoAccumulatorCanBe_isRefusedWithBothValues() {
        // Rule CHECK-1.
        assertThatThrownBy(() -> new StorageForm.FreeLoop(1, 4, 0.5, 0.6))
                .hasMessage("accumulator greatest sag = 0.5 m; must be the least sag, 0.6 m, or more");
        assertThatThrownBy(() -> new StorageForm.Spiral(20, 2.3, 2.4))
                .hasMessage("accumulator full diameter = 2.3 m; must be the empty diameter, 2.4 m, or more");
        assertThatThrownBy(() -> new StorageForm.Strands(0, 9, 1, 1, false))
                .hasMessage("accumulator strands = 0; must be 1 or more");
        assertThatThrownBy(() -> new StorageForm.Strands(2, 9, 0, 1, false))
                .hasMessage("accumulator carriage speed = 0 m/s; must be more than 0");
        assertThatThrownBy(() -> new Accumulator(new StorageForm.Direct(60), Double.NaN, 0, 0))
                .hasMessage("accumulator fill-rate limit = NaN m/s; must be more than 0");
        assertThatThrownBy(() -> new Accumulator(new StorageForm.Direct(60), 1, -1, 0))
                .hasMessage("accumulator reserve = -1 m; must be 0 or more and finite");
        assertThatThrownBy(() -> new Accumulator(new StorageForm.Direct(60), 1, 0, Double.NaN))
                .hasMessage("accumulator overtravel allowance = NaN m; must be 0 or more");
    }
}
