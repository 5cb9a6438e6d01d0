package runthrough.study.times;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.WORK;

import org.junit.jupiter.api.Test;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.timestudy.StandardTime;

/** Time study by the book of the International Labour Office; hand calculation. */
@RecordsChecks
class SampleSizeTest {
    private static final double EXACT = 1e-9;

    private static SampleSize usual(double... times) {
        return SampleSize.of(SampleSize.USUAL_CONFIDENCE, SampleSize.USUAL_PRECISION, times);
    }

    private static void check(CheckBook book, String id, String what, double expected, double got) {
        book.check(WORK, id, what)
                .source(Sources.ILO_WORK_STUDY)
                .expected(expected)
                .relative(EXACT)
                .got(got);
    }

    @Test
    void fiveReadings_nineAreToBeTaken(CheckBook book) {
        // sum 33, sum of squares 219: (40 sqrt(5 x 219 - 33^2) / 33)^2 = 1600 x 6 / 1089
        SampleSize size = usual(7, 6, 7, 7, 6);

        check(book, "T1", "observations needed, 5 readings", 1600 * 6 / 1089.0, size.needed());
        check(book, "T1", "observations to take, 5 readings", 9, (double) size.total());
        assertThat(size.needed()).isCloseTo(8.81542700, within(5e-9));
        assertThat(size.more()).isEqualTo(4);
    }

    @Test
    void tenReadings_areEnough(CheckBook book) {
        // sum 20.60, sum of squares 42.6204: 1600 (426.204 - 424.36) / 424.36
        SampleSize size = usual(1.92, 2.10, 2.05, 1.88, 2.31, 2.02, 1.97, 2.14, 2.26, 1.95);

        check(book, "T2", "observations needed, 10 readings", 1600 * 1.844 / 424.36, size.needed());
        check(book, "T2", "observations to take, 10 readings", 7, (double) size.total());
        assertThat(size.needed()).isCloseTo(6.95258743, within(5e-9));
        assertThat(size.more()).isZero();
    }

    @Test
    void standardTimeAddsAnAllowanceToTheBasicTime(CheckBook book) {
        // 0.95 x 1.10 x 1.12 and 2.40 x 0.90 x 1.15
        check(
                book,
                "T3",
                "standard time, min",
                1.1704,
                StandardTime.of(0.95, 1.10, 0.12).standard());
        check(
                book,
                "T4",
                "standard time, min",
                2.484,
                StandardTime.of(2.40, 0.90, 0.15).standard());
    }

    @Test
    void wholeDeviatesAreTakenAsHandbooksDo() {
        // 68.27, 95.45 and 99.73 % are 1, 2 and 3 standard errors; 95 % are 1.959964.
        double one = SampleSize.of(0.6827, 0.05, 7, 6, 7, 7, 6).needed();

        assertThat(SampleSize.of(0.9545, 0.05, 7, 6, 7, 7, 6).needed()).isCloseTo(4 * one, within(1e-12));
        assertThat(SampleSize.of(0.9973, 0.05, 7, 6, 7, 7, 6).needed()).isCloseTo(9 * one, within(1e-12));
        assertThat(SampleSize.of(0.95, 0.05, 7, 6, 7, 7, 6).needed() / one)
                .isCloseTo(1.959963984540 * 1.959963984540, within(1e-9));
    }

    @Test
    void halfThePrecisionTakesAQuarterOfTheReadings() {
        assertThat(SampleSize.of(0.9545, 0.10, 7, 6, 7, 7, 6).total()).isEqualTo(3);
    }

    @Test
    void equalReadingsNeedNoMore() {
        assertThat(usual(8, 8, 8).total()).isEqualTo(1);
    }

    @Test
    void oneReadingNeedsAnother() {
        assertThat(usual(8).more()).isEqualTo(1);
    }
}
