package runthrough.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NotationTest {
    @Test
    void whatWasGivenKeepsItsDigits_aResultHasThree() {
        double speed = 62.75 / 60;

        assertThat(Notation.given(Kind.SPEED, speed, UnitSystem.METRIC).text(speed))
                .isEqualTo("62.75 m/min");
        assertThat(Notation.of(Kind.SPEED, speed, UnitSystem.METRIC).text(speed))
                .isEqualTo("62.8 m/min");
    }

    @Test
    void timesGivenKeepTheirDigits_asMinutesAndSecondsToo() {
        assertThat(Notation.given(Kind.TIME, 150, UnitSystem.METRIC).text(150)).isEqualTo("2:30 min");
        assertThat(Notation.given(Kind.TIME, 900, UnitSystem.METRIC).text(900)).isEqualTo("15:00 min");
        assertThat(Notation.given(Kind.TIME, 100, UnitSystem.METRIC).text(92.25))
                .isEqualTo("1:32.25 min");
        assertThat(Notation.given(Kind.TIME, 80, UnitSystem.METRIC).text(8.125)).isEqualTo("8.125 s");
        assertThat(Notation.time(150).text(150)).isEqualTo("2:30 min");
    }

    @Test
    void amountsAreRoundedBeforeThePoint_whatIsGivenIsNot() {
        Notation money = Notation.PLAIN.called("EUR");

        // Half an interval of 4100 leaves the thousands certain.
        assertThat(money.with(Rounding.AMOUNT).text(1_612_345, 4100)).isEqualTo("1 612 000 EUR");
        assertThat(money.with(Rounding.GIVEN_AMOUNT).text(1_612_345.5)).isEqualTo("1 612 345.5 EUR");
    }

    @Test
    void aProbabilityIsNeverNothing() {
        assertThat(Notation.PROBABILITY.number(0.0432)).isEqualTo("0.043");
        assertThat(Notation.PROBABILITY.number(0.0004)).isEqualTo("< 0.001");
    }

    @Test
    void criteriaAndCorrelationsHaveDecimalsOfTheirOwn() {
        assertThat(Notation.PLAIN.with(Rounding.CRITERION).number(1312.04)).isEqualTo("1312.0");
        assertThat(Notation.PLAIN.with(Rounding.CORRELATION).number(-0.0967)).isEqualTo("-0.10");
    }

    @Test
    void aFileNamesTheUnitThatPeopleReadElsewhere() {
        assertThat(Notation.SECONDS.called("").text(12)).isEqualTo("12");
        assertThat(Notation.SECONDS.called("").ofFile().symbol()).isEqualTo("s");
        assertThat(Notation.PLAIN.ofFile().symbol()).isEmpty();
    }

    @Test
    void powersAreRaisedForPeople() {
        assertThat(Notation.of(Unit.METRE_PER_SECOND_SQUARED).text(0.3)).isEqualTo("0.3 m/s²");
        assertThat(Unit.METRE_PER_SECOND_SQUARED.symbol()).isEqualTo("m/s2");
    }

    @Test
    void anEndOfAnIntervalThatIsNotNoneIsNotWrittenAsNone() {
        // Half of 0.56 leaves the hundredths certain: 0.0003 would be 0.00.
        assertThat(Notation.of(Unit.METRE).range(0.0003, 0.56)).isEqualTo("0.0003 to 0.56 m");
        assertThat(Notation.of(Unit.METRE).range(-0.56, -0.0003)).isEqualTo("-0.56 to -0.0003 m");
        assertThat(Notation.of(Unit.METRE).range(0, 0.56)).isEqualTo("0 to 0.56 m");
        // The rounding of the computer's own is none.
        assertThat(Notation.of(Unit.METRE).range(1e-17, 0.56)).isEqualTo("0.00 to 0.56 m");
    }

    @Test
    void whoeverSetsALimitAsItIsWrittenIsOnTheSafeSide() {
        Notation speed = Notation.of(Unit.METRE_PER_MINUTE);
        // 151.69 m/min is the fastest, 40.01 m the least that is enough.
        assertThat(speed.atMost().text(151.69 / 60)).isEqualTo("151 m/min");
        assertThat(Notation.of(Unit.METRE).atLeast().text(40.01)).isEqualTo("40.1 m");
        assertThat(Notation.time(123.9).atMost().text(123.9)).isEqualTo("2:03 min");
        // What is below none is rounded down, too.
        assertThat(Notation.of(Unit.METRE).atMost().text(-40.01)).isEqualTo("-40.1 m");
        assertThat(Notation.time(-123.1).atMost().text(-123.1)).isEqualTo("-2:04 min");
        // What the computer's own rounding leaves below 90 is 90.
        assertThat(speed.atMost().text(Math.nextDown(1.5))).isEqualTo("90 m/min");
        assertThat(Notation.of(Unit.METRE).atLeast().text(Math.nextUp(40.0))).isEqualTo("40 m");
        // The interval says to how many digits, the side stays: half of 2 m leaves tenths certain, half of 0.04 m
        // thousandths.
        assertThat(Notation.of(Unit.METRE).atLeast().text(40.01, 2)).isEqualTo("40.1 m");
        assertThat(Notation.of(Unit.METRE).atMost().text(40.0199, 0.02)).isEqualTo("40.019 m");
        assertThat(Notation.of(Unit.METRE).atLeast().text(41_001, 300)).isEqualTo("41 100 m");
        assertThat(Notation.time(123.91).atMost().text(123.91, 0.5)).isEqualTo("2:03.9 min");
        // What was tried is written with the digits that it was tried with: at 236 m nobody looked.
        assertThat(Notation.of(Unit.METRE).atLeast().setting().text(235.9, 6)).isEqualTo("235.9 m");
        assertThat(Notation.of(Unit.METRE).atLeast().setting().text(235.9 / 6)).isEqualTo("39.317 m");
        assertThat(Notation.time(123.9).atMost().setting().text(123.9)).isEqualTo("2:03 min");
        // The ends of its interval go with it, so that it never lies outside.
        assertThat(Notation.of(Unit.METRE).atLeast().range(37.31, 39.31)).isEqualTo("37.4 to 39.4 m");
    }
}
