package runthrough.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Numbers in files: every digit that they have, and no exponent. */
class NumbersInFullTest {

    @Test
    void whatIsReadBackIsWhatWasWritten() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 20_000; i++) {
            // Magnitudes from 1e-12 to 1e15, both signs.
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 16));
            String text = Numbers.plain(value);

            assertThat(Double.parseDouble(text)).isEqualTo(value);
            assertThat(text).doesNotContain("E").matches("-?\\d+(\\.\\d*[1-9])?");
        }
    }

    @Test
    void wholeNumbersHaveNoPoint() {
        assertThat(Numbers.plain(0)).isEqualTo("0");
        assertThat(Numbers.plain(-0.0)).isEqualTo("0");
        assertThat(Numbers.plain(200)).isEqualTo("200");
        assertThat(Numbers.plain(-15)).isEqualTo("-15");
        assertThat(Numbers.plain(12_000_000_000.0)).isEqualTo("12000000000");
        assertThat(Numbers.plain(0.0000012)).isEqualTo(new BigDecimal("1.2e-6").toPlainString());
    }

    @Test
    void whatIsNoNumberIsSaid() {
        assertThat(Numbers.plain(Double.NaN)).isEqualTo("n/a");
        assertThat(Numbers.plain(Double.POSITIVE_INFINITY)).isEqualTo("unlimited");
        assertThat(Numbers.plain(Double.NEGATIVE_INFINITY)).isEqualTo("-unlimited");
    }
}
