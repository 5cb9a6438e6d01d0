package runthrough.report.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Output;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.Unit;
import runthrough.study.Verdict;
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
                ? "paid back in " + GainValues.simplePayback(worth).bare() + " years"
                : "never paid back";
        return opening + " Against the one called today it brings " + amount(worth.yearly()) + " a year for "
                + money(Rounding.GIVEN_AMOUNT).text(worth.offer().price()) + ": " + payback
                + ", net present value " + amount(value) + "." + byTheYear(best, worth);
    }

    /** Another comes first where lives of different length are counted alike; empty where none does. */
    private String byTheYear(Benefit best, Worth worth) {
        return year.benefits().stream()
                .filter(benefit -> benefit.worth().isPresent())
                .max(Comparator.comparingDouble(benefit ->
                        benefit.worth().orElseThrow().annualEquivalent().mean()))
                .filter(other -> !other.equals(best))
                .map(other -> " Spread evenly over its life \"" + other.name() + "\" is worth more: "
                        + amount(other.worth().orElseThrow().annualEquivalent()) + " a year against "
                        + amount(worth.annualEquivalent()) + " (annual equivalent).")
                .orElse("");
    }

    private List<String> withoutPrices() {
        List<String> sentences = new ArrayList<>();
        sentences.add((year.stopsByDesign() ? "Coil changes" : "Starved stops and slowing") + " cost "
                + hours(lostTime()) + " of " + hours(year.time()) + " a year."
                + (year.benefits().isEmpty() ? "" : " " + bestInTime()));
        sentences.add(year.money()
                .map(values -> "At the values given that is "
                        + money(Rounding.AMOUNT).text(lostValue(values))
                        + " a year: no change to the coil change can bring more than that, scrap"
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
        Notation mass = year.texts().notation(Kind.MASS, best.mass().mean()).with(Rounding.AMOUNT);
        return "Against the one called today \"" + best.name() + "\" wins most: "
                + GainValues.of(best.time(), GainValues.HOURS).text() + " and "
                + GainValues.of(best.mass(), mass).text() + " of output a year.";
    }

    private double lostTime() {
        return year.verdict().stoppages().lostTimePerShift().mean() * year.shifts();
    }

    /** What the strip would be worth that was not processed while the process was starved or slowed, all of it good. */
    private double lostValue(Money values) {
        return values.output() instanceof Output.LineHour hour
                ? Unit.HOUR.fromSi(lostTime()) * hour.value()
                : lostMetres() * massPerMetre() / TONNE * values.output().value();
    }

    private double lostMetres() {
        return year.verdict().stoppages().lostMetresPerShift().mean() * year.shifts();
    }

    /** Of the strip that was processed (kg/m). */
    private double massPerMetre() {
        Verdict.Output output = year.verdict().output();
        double metres = output.grossSpeed().mean();
        return metres > 0 ? output.grossMassFlow().mean() / metres : 0;
    }

    private String amount(Gain gain) {
        return GainValues.of(gain, money(Rounding.AMOUNT)).text();
    }

    private Notation money(Rounding rounding) {
        return Notation.PLAIN
                .with(rounding)
                .called(year.money().map(Money::currency).orElse(""));
    }

    private static String hours(double seconds) {
        return Notation.of(Unit.HOUR).text(seconds);
    }
}
