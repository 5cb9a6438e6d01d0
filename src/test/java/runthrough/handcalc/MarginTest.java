package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import runthrough.quantity.Kind;

/** What there is, held against what is needed. */
class MarginTest {

    private static Margin margin(double given, double needed) {
        return new Margin(Kind.LENGTH, given, needed);
    }

    @Test
    void enough_isAMargin() {
        assertThat(margin(200, 150).spare()).isEqualTo(50);
        assertThat(margin(200, 150).load()).isEqualTo(0.75);
        assertThat(margin(200, 150).relative()).isEqualTo(0.25);
        assertThat(margin(200, 150).isEnough()).isTrue();
    }

    @Test
    void justEnough_isEnough() {
        assertThat(margin(150, 150).isEnough()).isTrue();
        assertThat(margin(150, 150).relative()).isZero();
    }

    @Test
    void notEnough_isMissing() {
        assertThat(margin(100, 150).spare()).isEqualTo(-50);
        assertThat(margin(100, 150).relative()).isEqualTo(-0.5);
        assertThat(margin(100, 150).isEnough()).isFalse();
    }

    @Test
    void nothingNeededOfNothing_isEnough() {
        assertThat(margin(0, 0).load()).isZero();
        assertThat(margin(0, 0).relative()).isEqualTo(1);
        assertThat(margin(0, 0).isEnough()).isTrue();
    }

    @Test
    void somethingNeededOfNothing_isBeyondAllMeasure() {
        assertThat(margin(0, 5).load()).isInfinite();
        assertThat(margin(-3, 5).load()).isInfinite();
        assertThat(margin(0, 5).isEnough()).isFalse();
    }

    @Test
    void noLimit_leavesEverything() {
        assertThat(margin(Double.POSITIVE_INFINITY, 5).relative()).isEqualTo(1);
        assertThat(margin(Double.POSITIVE_INFINITY, 5).spare()).isInfinite();
    }
}
