package runthrough.report.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import runthrough.plant.Alternative;
import runthrough.plant.Distribution;
import runthrough.plant.handover.Money;
import runthrough.quantity.UnitSystem;
import runthrough.report.Texts;
import runthrough.report.verdict.Invented;
import runthrough.study.Verdict;
import runthrough.study.benefit.Benefit;
import runthrough.study.benefit.Gain;
import runthrough.study.benefit.Worth;
import runthrough.study.benefit.YearlySum;

/** What the page to decide on says of money and time. */
class WorthWordsTest {
    private static final double HOUR = 3600;
    private static final Gain NONE = new Gain(0, 0, 0);
    private static final YearlySum NO_SUM = (kilogram, scrap) -> NONE;
    private static final Verdict VERDICT = Invented.result(Invented.line(Distribution.lognormal(36, 9)))
            .study()
            .verdict();
    private static final Money MONEY = new Money(
            "EUR",
            new Money.Output.LineHour(100),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            0.08,
            Money.Uncertain.PRICE,
            Money.Prices.of(Map.of()));

    /** 1000 h (900 to 1100) of 100 EUR each: 100 000 EUR a year, that pay 250 000 EUR back in 2.5 (2.27 to 2.78) years. */
    @Test
    void namesTheBestOfThePricedAndWhatItBrings() {
        Benefit good = priced("stacked loop", 1000, 900, 1100, 250_000);
        Benefit worse = priced("second welder", 1000, 900, 1100, 300_000);

        assertThat(said(Optional.of(MONEY), good, worse))
                .containsExactly(
                        "Of the alternatives with a price, \"stacked loop\" is worth most. Against the one called"
                                + " today it brings 100 000 EUR (90 000 to 110 000) a year for 250 000 EUR: paid back in"
                                // 6.7101 times the gain less the price, of which half the interval leaves the ten
                                // thousands certain.
                                + " 2.50 (2.27 to 2.78) years, net present value 420 000 EUR (350 000 to 490 000).");
    }

    @Test
    void whatDoesNotPayIsNotCalledWorthIt() {
        Benefit poor = priced("third uncoiler", 10, 9, 11, 250_000);

        assertThat(said(Optional.of(MONEY), poor).get(0))
                .startsWith("No alternative with a price is worth it; nearest comes \"third uncoiler\".");
    }

    @Test
    void whatMayOrMayNotPayIsNotShownTo() {
        Benefit doubtful = priced("third uncoiler", 380, 100, 660, 250_000);

        assertThat(said(Optional.of(MONEY), doubtful).get(0)).contains("that it is worth its price is not shown.");
    }

    @Test
    void whatLosesTimeNeverPaysBack() {
        Benefit loss = priced("slower weld", -10, -11, -9, 1000);

        assertThat(said(Optional.of(MONEY), loss).get(0)).contains("never paid back");
    }

    @Test
    void withoutMoneyHoursAndTonnesAlone() {
        Benefit gain = new Benefit(
                "stacked loop",
                new Gain(100 * HOUR, 90 * HOUR, 110 * HOUR),
                new Gain(2e6, 1.8e6, 2.2e6),
                NONE,
                0,
                NO_SUM,
                Optional.empty());

        List<String> said = said(Optional.empty(), gain);

        assertThat(said.get(0))
                .contains("\"stacked loop\" wins most: 100 h (90 to 110) and 2000 t (1800 to 2200) of output a year.");
        assertThat(said.get(1)).isEqualTo("No values in money were given.");
    }

    /**
     * A line that stops at every coil change: each hour lost would have been 0.75 m/s x 3600 s = 2700 m of strip of 2 mm x 240 mm x 7850
     * kg/m3 = 3.768 kg/m, 10.17 t of 85 EUR each. What it makes in an hour on average is less.
     */
    @Test
    void lostTimeIsWorthWhatTheProcessMakesAtItsRatedSpeed() {
        Verdict verdict = Invented.result(Invented.withoutAccumulator()).study().verdict();
        double lostHours = verdict.stoppages().lostTimePerShift().mean() / HOUR * 4000 / 8;
        Money byTheTonne = new Money(
                "EUR",
                new Money.Output.Contribution(85),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0.08,
                Money.Uncertain.PRICE,
                Money.Prices.of(Map.of()));

        String said = said(verdict, Optional.of(byTheTonne)).get(1);

        Matcher amount = Pattern.compile("that is ([0-9 ]+) EUR a year").matcher(said);
        assertThat(amount.find()).as(said).isTrue();
        assertThat(Double.parseDouble(amount.group(1).replace(" ", "")))
                .isCloseTo(lostHours * 2700 * 3.768 / 1000 * 85, withinPercentage(1.0));
        assertThat(verdict.output().utilisation().mean()).isLessThan(0.95);
    }

    @Test
    void aGainThatMayBeNoneIsNotCalledOne() {
        Benefit doubtful =
                new Benefit("third uncoiler", new Gain(HOUR, -HOUR, 3 * HOUR), NONE, NONE, 0, NO_SUM, Optional.empty());

        assertThat(said(Optional.empty(), doubtful).get(0))
                .endsWith("No alternative is shown to lose less than the one called today.");
    }

    /**
     * 100 000 EUR (90 000 to 110 000) a year at 8 %: over 15 years 8.5595 times that less 600 000 EUR are 256 000 EUR, 29 902 EUR for
     * each of them; over 5 years 3.9927 times that less 250 000 EUR are 149 000 EUR, but 37 386 EUR for each.
     */
    @Test
    void livesOfDifferentLengthAreCountedAlike() {
        Benefit longLived = priced("higher tower", 1000, 900, 1100, new Money.Offer(600_000, 0, 15));
        Benefit shortLived = priced("quicker weld", 1000, 900, 1100, new Money.Offer(250_000, 0, 5));

        assertThat(said(Optional.of(MONEY), longLived, shortLived))
                .singleElement()
                .asString()
                .startsWith("Of the alternatives with a price, \"higher tower\" is worth most.")
                .endsWith(
                        "Spread evenly over its life \"quicker weld\" is worth more: 37 000 EUR (27 000 to 47 000) a year"
                                + " against 30 000 EUR (20 000 to 40 000) (annual equivalent).");
    }

    private static Benefit priced(String name, double hours, double low, double high, double price) {
        return priced(name, hours, low, high, new Money.Offer(price, 0, 10));
    }

    private static Benefit priced(String name, double hours, double low, double high, Money.Offer offer) {
        Gain output = new Gain(100 * hours, 100 * low, 100 * high);
        YearlySum sum = (kilogram, scrap) -> output;
        Worth worth = new Worth(MONEY, offer, sum, 1, 0);
        return new Benefit(
                name, new Gain(hours * HOUR, low * HOUR, high * HOUR), NONE, NONE, 0, sum, Optional.of(worth));
    }

    private static List<String> said(Optional<Money> money, Benefit... benefits) {
        return said(VERDICT, money, benefits);
    }

    private static List<String> said(Verdict verdict, Optional<Money> money, Benefit... benefits) {
        Texts texts = new Texts(UnitSystem.METRIC, true);
        return new WorthWords(new Year(Alternative.AS_WRITTEN, verdict, 4000 * HOUR, List.of(benefits), money, texts))
                .sentences().stream()
                        .map(sentence -> sentence.replace('\u00a0', ' '))
                        .toList();
    }
}
