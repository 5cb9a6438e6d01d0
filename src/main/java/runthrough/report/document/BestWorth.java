package runthrough.report.document;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runthrough.plant.handover.Money;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.study.benefit.Benefit;
import runthrough.study.benefit.Gain;
import runthrough.study.benefit.Worth;
import runthrough.study.comparison.Comparison;

/**
 * The alternative that is worth most in money, and the few figures that people repeat of it.
 *
 * @param name of the alternative
 * @param worth of it
 */
public record BestWorth(String name, Worth worth) {

    /** Of the alternatives of {@code comparison}, at the values of {@code money}; empty where none has a price. */
    public static Optional<BestWorth> of(Comparison comparison, Money money) {
        return of(Benefit.of(comparison, Optional.of(money)))
                .map(best -> new BestWorth(best.name(), best.worth().orElseThrow()));
    }

    /** The one of greatest net present value; empty where none has a price. */
    static Optional<Benefit> of(List<Benefit> benefits) {
        return benefits.stream()
                .filter(benefit -> benefit.worth().isPresent())
                .max(Comparator.comparingDouble(
                        benefit -> benefit.worth().orElseThrow().presentValue().mean()));
    }

    /** Its gain of a year, net present value and payback, as the document has them. */
    public List<Figure> figures() {
        return List.of(
                Figure.of("Worth most", Cell.of("\"" + name + "\"")),
                Figure.of("Gain of a year less upkeep", amount(worth.yearly())),
                Figure.of("Net present value", amount(worth.presentValue())),
                Figure.of("Simple payback", GainValues.simplePayback(worth)));
    }

    private Cell amount(Gain gain) {
        return GainValues.of(gain, GainValues.MONEY.called(worth.money().currency()));
    }
}
