package runthrough.study.benefit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Offer;
import runthrough.plant.handover.Money.Output;
import runthrough.plant.handover.Money.Uncertain;

/** What gains of time, scrap and work come to in money. */
class WorthTest {
    private static final Offer OFFER = new Offer(250_000, 10_000, 5);

    /** 20 t (18 to 22) of good output, 5 t of scrap. */
    private static Gain gains(double kilogram, double scrap) {
        return new Gain(20_000 * kilogram, 18_000 * kilogram, 22_000 * kilogram).less(-5000 * scrap);
    }

    /** With those, of which the line makes 200 kg an hour, and 200 h of people less to be paid for. */
    private static Worth worth(Output output, Uncertain uncertain) {
        return new Worth(
                new Money(
                        "EUR",
                        output,
                        OptionalDouble.of(0.4),
                        OptionalDouble.of(40),
                        0.08,
                        uncertain,
                        Money.Prices.of(Map.of("larger", OFFER))),
                OFFER,
                WorthTest::gains,
                200,
                720_000);
    }

    private static Worth byHour(Uncertain uncertain) {
        return worth(new Output.LineHour(800), uncertain);
    }

    /** 20 t are 100 h: 100 x 800 + 5 x 400 + 200 x 40 - 10 000 = 80 000; with 90 h 72 000, with 110 h 88 000. */
    @Test
    void gainsOfAYearAddUp() {
        assertThat(byHour(Uncertain.OUTPUT).yearly()).isEqualTo(new Gain(80_000, 72_000, 88_000));
    }

    /** 20 t at 500 + 2000 + 8000 - 10 000 = 10 000. */
    @Test
    void outputMayBeValuedByTheTonne() {
        assertThat(worth(new Output.Contribution(500), Uncertain.OUTPUT)
                        .yearly()
                        .mean())
                .isEqualTo(10_000);
    }

    /** The published case E3: 250 000 for 80 000 a year over 5 years at 8 % leave 69 416.80. */
    @Test
    void presentValueIsThatOfTheWorkedCase_withItsIntervalCarriedThrough() {
        Gain value = byHour(Uncertain.OUTPUT).presentValue();
        double factor = CashFlow.uniformPresentValue(0.08, 5);

        assertThat(value.mean()).isCloseTo(69_416.80297, within(1e-4));
        assertThat(value.high() - value.low()).isCloseTo(16_000 * factor, within(1e-6));
        assertThat(byHour(Uncertain.OUTPUT).flow().presentValue(0.08)).isCloseTo(value.mean(), within(1e-6));
    }

    @Test
    void atBreakEvenNothingIsLeft() {
        for (Uncertain uncertain : Uncertain.values()) {
            Worth worth = byHour(uncertain);
            worth.breakEven()
                    .ifPresent(
                            factor -> assertThat(worth.presentValueWith(factor).mean())
                                    .as(uncertain.name())
                                    .isCloseTo(0, within(1e-6)));
        }
        assertThat(byHour(Uncertain.PRICE).breakEven().orElseThrow() * 250_000)
                .isCloseTo(250_000 + 69_416.80297, within(1e-4));
    }

    /** Without any value of an hour there are 0 of the 80 000 left, and no scrap makes up for that. */
    @Test
    void whatCannotBreakEvenSaysSo() {
        assertThat(worth(new Output.LineHour(0), Uncertain.OUTPUT).breakEven()).isEmpty();
        assertThat(byHour(Uncertain.UPKEEP).leastCertainValue()).hasValue(10_000);
    }

    @Test
    void lossesTurnTheIntervalRound() {
        assertThat(Gain.ofLess(runthrough.study.statistics.Difference.exact(3, 5, 0.95)))
                .isEqualTo(new Gain(2, 2, 2));
    }
}
