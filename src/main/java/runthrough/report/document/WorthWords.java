package runthrough.report.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Output;
import runthrough.quantity.Amounts;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.study.benefit.Benefit;
import runthrough.study.benefit.Gain;
import runthrough.study.benefit.Worth;

/** What a year's coil changes cost and what the best alternative wins, in a sentence or two: for the page to decide on. */
final class WorthWords {
    private static final double TONNE = 1000;

    private final Year year;

    WorthWords(Year year) {
        this.year = year;
    }

    List<String> sentences() {
        return year.best().map(best -> List.of(inMoney(best))).orElseGet(this::withoutPrices);
    }

    private String inMoney(Benefit best) {
        Worth worth = best.worth().orElseThrow();
        Gain value = worth.presentValue();
        String name = "\"" + best.name() + "\"";
        String opening = value.low() > 0
                ? "Of the alternatives with a price, " + name + " is worth most."
                : value.high() < 0
                        ? "No alternative with a price is worth it; nearest comes " + name + "."
                        : "Of the alternatives with a price, " + name
                                + " comes out best, but that it is worth its price is not shown.";
        String payback = worth.simplePayback(worth.yearly().mean()).isPresent()
                ? "paid back in " + GainText.from(worth.yearly(), worth::simplePayback, "never", true) + " years"
                : "never paid back";
        return opening + " Against the one called today it brings " + amount(worth.yearly()) + " a year for "
                + Amounts.exact(worth.offer().price()) + "\u00a0" + currency() + ": " + payback
                + ", net present value " + amount(value) + ".";
    }

    private List<String> withoutPrices() {
        List<String> sentences = new ArrayList<>();
        sentences.add("Starved stops and slowing cost " + hours(lostTime()) + " of " + hours(year.time()) + " a year."
                + (year.benefits().isEmpty() ? "" : " " + bestInTime()));
        sentences.add(year.money()
                .map(values -> "At the values given that is " + Amounts.text(lostValue(values)) + "\u00a0"
                        + currency() + " a year: no change to the coil change can bring more than that, scrap"
                        + " and work aside.")
                .orElse("No values in money were given."));
        return sentences;
    }

    private String bestInTime() {
        Benefit best = year.benefits().stream()
                .max(Comparator.comparingDouble(benefit -> benefit.time().mean()))
                .orElseThrow();
        if (!(best.time().low() > 0)) {
            return "No alternative is shown to lose less than the one called today.";
        }
        Unit mass = year.units().unitFor(Kind.MASS, best.mass().mean());
        return "Against the one called today \"" + best.name() + "\" wins most: "
                + GainText.of(best.time().times(Unit.HOUR.fromSi(1)), "h") + " and "
                + GainText.of(best.mass().times(mass.fromSi(1)), mass.symbol()) + " of output a year.";
    }

    private double lostTime() {
        return year.verdict().stoppages().lostTimePerShift().mean() * year.shifts();
    }

    private double lostValue(Money values) {
        return values.output() instanceof Output.LineHour hour
                ? Unit.HOUR.fromSi(lostTime()) * hour.value()
                : lostTime()
                        * year.verdict().output().massFlow().mean()
                        / TONNE
                        * values.output().value();
    }

    private String amount(Gain gain) {
        return GainText.of(gain, currency());
    }

    private String currency() {
        return year.money().map(Money::currency).orElse("");
    }

    private static String hours(double seconds) {
        return Numbers.text(Unit.HOUR.fromSi(seconds), 3) + " h";
    }
}
