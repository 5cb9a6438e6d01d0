package runthrough.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import runthrough.study.statistics.Sample;

class HistogramTest {

    @Test
    void everyValueIsCountedOnceInTheBinThatHoldsIt() {
        Sample sample = Sample.of(new Random(3).doubles(500, -7, 13).toArray());
        Histogram histogram = Histogram.of(sample, 1);
        int counted = 0;
        for (int i = 0; i < histogram.counts().size(); i++) {
            double left = histogram.left(i);
            double right = histogram.left(i + 1);
            long inside = Arrays.stream(sample.values())
                    .filter(v -> v >= left && v < right)
                    .count();
            assertThat((long) histogram.counts().get(i)).isEqualTo(inside);
            counted += histogram.counts().get(i);
        }
        assertThat(counted + histogram.beyond()).isEqualTo(500);
    }

    @Test
    void zeroIsABorderSoThatRunningOutIsSeen() {
        Histogram histogram =
                Histogram.of(Sample.of(new Random(4).doubles(300, -1.3, 21).toArray()), 1);
        boolean found = false;
        for (int i = 0; i < histogram.counts().size(); i++) {
            found |= histogram.left(i) == 0;
        }
        assertThat(found).isTrue();
    }

    @Test
    void bordersAreRoundInTheUnitShown() {
        // 10 m to 30 m are 32.8 ft to 98.4 ft: over at least 12 bins a width of 2 ft or 5 ft, borders at whole
        // multiples.
        Histogram histogram =
                Histogram.of(Sample.of(new Random(5).doubles(200, 10, 30).toArray()), 1 / 0.3048);
        assertThat(histogram.width()).isIn(2.0, 5.0, 10.0);
        assertThat(histogram.left(0) % histogram.width()).isEqualTo(0);
    }

    @Test
    void equalValuesMakeOneBinAroundThem() {
        Histogram histogram = Histogram.of(Sample.of(95, 95, 95), 1);
        assertThat(histogram.counts()).containsExactly(3);
        assertThat(histogram.left(0)).isLessThan(95);
        assertThat(histogram.to()).isGreaterThan(95);
    }

    /** Thirty-four joints of 7 s, and two that were made again: all but these are one bin. */
    @Test
    void valuesAllAlikeButForAFewFarBeyondMakeOneBinToo() {
        double[] times = new double[36];
        Arrays.fill(times, 7);
        times[3] = 14;
        times[30] = 14;
        Histogram histogram = Histogram.of(Sample.of(times), 1);
        assertThat(histogram.counts()).containsExactly(34);
        assertThat(histogram.beyond()).isEqualTo(2);
        assertThat(histogram.left(0)).isLessThan(7);
        assertThat(histogram.to()).isBetween(7.0, 14.0);
    }

    @Test
    void valuesAllZeroMakeOneBin() {
        Histogram histogram = Histogram.of(Sample.of(0, 0), 1);
        assertThat(histogram.counts()).containsExactly(2);
    }

    @Test
    void fewValuesFarBeyondAllOthersAreCountedApart() {
        double[] values = new double[100];
        for (int i = 0; i < 98; i++) {
            values[i] = 60 + i * 0.2;
        }
        values[98] = 700;
        values[99] = 800;
        Histogram histogram = Histogram.of(Sample.of(values), 1);
        assertThat(histogram.beyond()).isEqualTo(2);
        assertThat(histogram.shareBeyond()).isEqualTo(0.02);
        assertThat(histogram.to()).isLessThan(90);
    }

    @Test
    void fewValuesFarBelowAllOthersAreCountedApart_soThatTheOthersAreSeen() {
        // 97 values from 60 to 79.2 and three at -3000: as one picture all of the 97 would stand in one bar.
        double[] values = new double[100];
        for (int i = 0; i < 97; i++) {
            values[i] = 60 + i * 0.2;
        }
        Arrays.fill(values, 97, 100, -3000);
        Histogram histogram = Histogram.ofMost(Sample.of(values), 1);
        assertThat(histogram.below()).isEqualTo(3);
        assertThat(histogram.left(0)).isEqualTo(60);
        assertThat(histogram.counts().stream().filter(count -> count > 0).count())
                .isGreaterThanOrEqualTo(8);
        assertThat(histogram.counts().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(97);
    }
}
