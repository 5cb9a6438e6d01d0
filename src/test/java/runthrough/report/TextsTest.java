package runthrough.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.quantity.Kind;
import runthrough.quantity.UnitSystem;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

class TextsTest {
    private static final Texts TEXTS = new Texts(UnitSystem.METRIC, true);

    @Test
    void resultsHaveThreeDigits() {
        assertThat(TEXTS.length(12.3456)).isEqualTo("12.3 m");
        assertThat(TEXTS.speed(0.754321)).isEqualTo("45.3 m/min");
        assertThat(TEXTS.time(97.345)).isEqualTo("1:37 min");
        assertThat(Texts.number(0.0123456)).isEqualTo("0.0123");
    }

    @Test
    void timesAreSecondsUpToNinety_thenMinutesAndSeconds_thenHours() {
        assertThat(TEXTS.time(87.345)).isEqualTo("87.3 s");
        assertThat(TEXTS.time(90)).isEqualTo("90 s");
        assertThat(TEXTS.time(125)).isEqualTo("2:05 min");
        assertThat(TEXTS.time(119.6)).isEqualTo("2:00 min");
        assertThat(TEXTS.time(600)).isEqualTo("10:00 min");
        assertThat(TEXTS.time(4 * 3600)).isEqualTo("4 h");
        assertThat(TEXTS.time(-900)).isEqualTo("-15:00 min");
    }

    @Test
    void minutesAndSecondsHaveTheDecimalsThatTheirIntervalLeavesCertain() {
        assertThat(TEXTS.mean(Kind.TIME, estimate(124.32, 123.92, 124.72))).isEqualTo("2:04.3 min");
        assertThat(TEXTS.interval(Kind.TIME, estimate(124.32, 94.3, 154.3))).contains("1:34 to 2:34 min");
    }

    @Test
    void sharesHaveTheDigitsOfTheirInterval_butAreNeverCalledNoneOrAllWhenTheyAreNot() {
        assertThat(TEXTS.mean(Kind.SHARE, estimate(0.98013, 0.97612, 0.98408))).isEqualTo("98.0 %");
        assertThat(TEXTS.interval(Kind.SHARE, estimate(0.98013, 0.97612, 0.98408)))
                .contains("97.6 to 98.4 %");
        assertThat(TEXTS.mean(Kind.SHARE, estimate(0.9996, 0.98, 1))).isEqualTo("99.96 %");
    }

    @Test
    void sharesNearOneKeepTheDigitsThatMatter() {
        assertThat(TEXTS.share(0.99996)).isEqualTo("99.996 %");
        assertThat(TEXTS.share(0.12345)).isEqualTo("12.3 %");
        assertThat(TEXTS.share(1)).isEqualTo("100 %");
    }

    @Test
    void endsOfANarrowIntervalDoNotLookTheSame() {
        Estimate narrow = estimate(10.1034, 10.0912, 10.1156);
        assertThat(TEXTS.mean(narrow)).isEqualTo("10.103");
        assertThat(TEXTS.plain(narrow).range()).contains("10.091 to 10.116");
    }

    @Test
    void endsOfAWideIntervalClaimNoMoreThanIsKnown() {
        Estimate wide = estimate(8.5012, 8.0312, 8.9712);
        assertThat(TEXTS.mean(wide)).isEqualTo("8.5");
        assertThat(TEXTS.plain(wide).range()).contains("8.0 to 9.0");
        assertThat(TEXTS.interval(Kind.LENGTH, estimate(123.4, 99.5, 147.3))).contains("100 to 147 m");
    }

    @Test
    void whatWasNeverSeenIsBoundedFromAbove() {
        Estimate never = new Estimate(
                0, 5, OptionalDouble.of(0), Optional.of(new Interval(0, 0.0221, Interval.Method.RULE_OF_THREE)));
        assertThat(TEXTS.plain(never).range()).contains("at most 0.022");
        assertThat(TEXTS.mean(never)).isEqualTo("0");
    }

    @Test
    void lineWithoutChanceHasNoIntervals() {
        Texts exact = new Texts(UnitSystem.METRIC, false);
        assertThat(exact.plain(estimate(0.9, 0.8, 0.95)).range()).isEmpty();
        assertThat(exact.mean(estimate(0.98765, 0.8, 0.99))).isEqualTo("0.988");
    }

    @Test
    void countsHaveTheirThousandsApart() {
        assertThat(Texts.count(9999)).isEqualTo("9999");
        assertThat(Texts.count(38500)).isEqualTo("38 500");
        assertThat(Texts.count(1234567)).isEqualTo("1 234 567");
    }

    private static Estimate estimate(double mean, double low, double high) {
        return new Estimate(
                mean, 20, OptionalDouble.of(1), Optional.of(new Interval(low, high, Interval.Method.STUDENT_T)));
    }

    @Test
    void aTimeAndItsIntervalHaveOneUnit() {
        assertThat(TEXTS.value(Kind.TIME, estimate(80.2, 70.2, 95.4)).text()).isEqualTo("1:20 min");
        assertThat(TEXTS.interval(Kind.TIME, estimate(80.2, 70.2, 95.4))).contains("1:10 to 1:35 min");
        assertThat(TEXTS.mean(Kind.TIME, estimate(80.2, 75.2, 85.4))).isEqualTo("80 s");
    }

    @Test
    void aShareBesideItsTargetShowsOnWhichSideItLies() {
        // Half of 0.07 leaves whole per cents certain: 94.86 % would be 95 %, the target.
        Value share = TEXTS.value(Kind.SHARE, estimate(0.9486, 0.9, 0.97));
        assertThat(share.text()).isEqualTo("95 %");
        assertThat(share.besides(0.95).text()).isEqualTo("94.9 %");
        assertThat(share.besides(0.95).range()).contains("90.0 to 97.0 %");
        assertThat(share.besides(0.99).text()).isEqualTo("95 %");
        // So do the ends of its interval.
        assertThat(TEXTS.value(Kind.SHARE, estimate(0.96, 0.9496, 0.97))
                        .besides(0.95)
                        .range())
                .contains("94.96 to 97.00 %");
        assertThat(TEXTS.value(Kind.SHARE, estimate(0.95, 0.9, 0.97))
                        .besides(0.95)
                        .text())
                .isEqualTo("95 %");
    }

    @Test
    void aNameIsBrokenBetweenWordsOrBehindThePointsOfAPath() {
        assertThat(TextLines.broken("joint made again", 16)).containsExactly("joint made again");
        assertThat(TextLines.broken("waiting for preparation: load coil", 24))
                .containsExactly("waiting for preparation:", "  load coil");
        assertThat(TextLines.broken("coil-change.join.weld.travel[1].speed", 22))
                .containsExactly("coil-change.join.weld.", "  travel[1].speed");
        assertThat(TextLines.broken("x".repeat(12), 5)).containsExactly("xxxxx", "  xxx", "  xxx", "  x");
    }
}
