package runthrough.report.document;

import java.util.Map;
import java.util.Optional;
import runthrough.plant.handover.Money;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.report.Texts;
import runthrough.study.benefit.Benefit;
import runthrough.study.benefit.Gain;
import runthrough.study.comparison.Comparison;

/**
 * What a change of a line brings in a year, whatever it costs.
 *
 * @param sentence that says it, with intervals
 * @param gain of a year, in money and words; empty where no values in money were given
 */
public record ChangeWorth(String sentence, Optional<String> gain) {
    private static final Money.Offer FOR_NOTHING = new Money.Offer(0, 0, 1);

    /**
     * Of the one alternative of {@code change} against the line called today.
     *
     * @param money what a year's output and scrap are worth, where that was given; its prices do not count
     * @param texts for numbers
     */
    public static ChangeWorth of(Comparison change, Optional<Money> money, Texts texts) {
        String name = change.others().get(0).alternative().name();
        Benefit benefit =
                Benefit.of(change, money.map(values -> priced(values, name))).get(0);
        Notation mass = texts.notation(Kind.MASS, benefit.mass().mean()).with(Rounding.AMOUNT);
        String output = said(
                benefit.mass(),
                mass,
                " more good output",
                " less good output",
                "no difference in good output is shown");
        String time = said(benefit.time(), GainValues.HOURS, " less lost time", " more lost time", "none in lost time");
        Optional<String> gain = benefit.worth()
                .map(worth -> GainValues.of(
                                worth.yearly(),
                                GainValues.MONEY.called(worth.money().currency()))
                        .text());
        return new ChangeWorth(
                "Against the line as it was opened, in a year: " + output + "; " + time + "."
                        + gain.map(amount -> " At the values given that is " + amount
                                        + " a year, before what the change costs.")
                                .orElse(""),
                gain);
    }

    private static Money priced(Money values, String name) {
        return new Money(
                values.currency(),
                values.output(),
                values.scrap(),
                values.labour(),
                values.rate(),
                values.leastCertain(),
                Money.Prices.of(Map.of(name, FOR_NOTHING)));
    }

    private static String said(Gain gain, Notation notation, String more, String less, String unknown) {
        if (gain.low() > 0) {
            return GainValues.of(gain, notation).text() + more;
        }
        Gain loss = new Gain(-gain.mean(), -gain.high(), -gain.low());
        return gain.high() < 0 ? GainValues.of(loss, notation).text() + less : unknown;
    }
}
