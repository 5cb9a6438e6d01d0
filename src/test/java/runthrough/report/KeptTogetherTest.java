package runthrough.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where lines do not end. Here {@code _} is a blank that no line ends at. */
class KeptTogetherTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "99.45_% (95_% interval 91 to 98_%)",
                "at most 61_s, 95_% 1:24_min",
                "120_m/min with 0.3_m/s2, 0.3_m/s²",
                "38_138_t and 1_612_000_EUR a year",
                "10_000 coil changes of 2000_m",
                "12_N m, 3_short ton/h, 5_points",
                "3 minutes, 4 metres, 2 people, 1:20",
                "off the grid, ±_30_m",
                "fits best (p_=_0.54), not (p_<_0.001); help = none"
            })
    void numberAndUnitAreOneWord(String kept) {
        assertThat(KeptTogether.in(kept.replace('_', ' '))).isEqualTo(kept.replace('_', '\u00a0'));
        assertThat(KeptTogether.plain(KeptTogether.in(kept.replace('_', ' ')))).isEqualTo(kept.replace('_', ' '));
    }

    /** "of coil changes 99.45" takes 23 of 24 columns: with "%" it would be 25. */
    @Test
    void noLineOfATerminalEndsBetweenThem() {
        TextLines lines = new TextLines();
        lines.row("share", "x".repeat(68) + " 99.45 % of all", 8);

        assertThat(lines.lines()).containsExactly("share   " + "x".repeat(68), "        99.45 % of all");
    }

    @Test
    void aLongLabelTakesLinesOfItsOwn_andValuesStayInTheirColumn() {
        TextLines lines = new TextLines();
        lines.row("lost time of joint breaks", "3 s", 16);
        lines.row("scrap", "4 m", 16);

        assertThat(lines.lines()).containsExactly("lost time of    3 s", "  joint breaks  ", "scrap           4 m");
    }
}
