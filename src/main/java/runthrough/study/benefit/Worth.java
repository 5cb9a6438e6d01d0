package runthrough.study.benefit;

import java.util.OptionalDouble;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Output;
import runthrough.plant.handover.Money.Uncertain;

/**
 * What an alternative is worth in money, by the values that the user gave.
 *
 * @param money those values
 * @param offer what the alternative costs
 * @param gains of a year by good output, and by less scrap
 * @param hourly good output (kg) of an hour in which the line called today runs at its rated speed: what more output comes to in
 *     line hours
 * @param paid people's time less to be paid for in a year (s); negative for more
 */
public record Worth(Money money, Money.Offer offer, YearlySum gains, double hourly, double paid) {
    private static final double HOUR = 3600;
    private static final double TONNE = 1000;

    /** Gain of a year, upkeep taken off. */
    public Gain yearly() {
        return yearly(1, 1, 1, 1);
    }

    private Gain yearly(double output, double scrap, double labour, double upkeep) {
        double value = output * money.output().value();
        boolean byHour = money.output() instanceof Output.LineHour;
        return gains.of(value / (byHour ? hourly : TONNE), scrap * money.scrap().orElse(0))
                .less(upkeep * offer.upkeep() - labour * paid * money.labour().orElse(0) / HOUR);
    }

    /** Money over its life, by the best guess. */
    public CashFlow flow() {
        return CashFlow.level(offer.price(), yearly().mean(), offer.life());
    }

    /** Net present value; the price at time zero, gains at the end of each year of its life. */
    public Gain presentValue() {
        return yearly().times(factor()).less(offer.price());
    }

    /** The same as a level amount a year over its life: what counts lives of different length alike. */
    public Gain annualEquivalent() {
        return presentValue().times(1 / factor());
    }

    /** Internal rate of return for a gain of {@code yearly}. */
    public OptionalDouble internalRate(double yearly) {
        return CashFlow.level(offer.price(), yearly, offer.life()).internalRate();
    }

    /** Simple payback (years) for a gain of {@code yearly}. */
    public OptionalDouble simplePayback(double yearly) {
        return CashFlow.simplePayback(offer.price(), yearly);
    }

    /** Discounted payback (years) for a gain of {@code yearly}. */
    public OptionalDouble discountedPayback(double yearly) {
        return CashFlow.discountedPayback(offer.price(), yearly, money.rate());
    }

    /** Present value when the input that is least certain is {@code factor} times what was given, {@code factor >= 0}. */
    public Gain presentValueWith(double factor) {
        Uncertain uncertain = money.leastCertain();
        Gain gains = yearly(
                uncertain == Uncertain.OUTPUT ? factor : 1,
                uncertain == Uncertain.SCRAP ? factor : 1,
                uncertain == Uncertain.LABOUR ? factor : 1,
                uncertain == Uncertain.UPKEEP ? factor : 1);
        return gains.times(factor()).less(offer.price() * (uncertain == Uncertain.PRICE ? factor : 1));
    }

    /**
     * How many times what was given the least certain input may be for the present value to be nothing; the value is a
     * straight line of it.
     *
     * @return empty where no value of 0 or more does that
     */
    public OptionalDouble breakEven() {
        double none = presentValueWith(0).mean();
        double slope = presentValueWith(1).mean() - none;
        double factor = -none / slope;
        return slope != 0 && factor >= 0 && Double.isFinite(factor)
                ? OptionalDouble.of(factor)
                : OptionalDouble.empty();
    }

    /** The least certain input as given, in the user's words' unit; empty where it was not given. */
    public OptionalDouble leastCertainValue() {
        return switch (money.leastCertain()) {
            case OUTPUT -> OptionalDouble.of(money.output().value());
            case SCRAP ->
                money.scrap().isPresent() ? OptionalDouble.of(money.scrap().getAsDouble() * TONNE) : money.scrap();
            case LABOUR -> money.labour();
            case PRICE -> OptionalDouble.of(offer.price());
            case UPKEEP -> OptionalDouble.of(offer.upkeep());
        };
    }

    private double factor() {
        return CashFlow.uniformPresentValue(money.rate(), offer.life());
    }
}
