package runthrough.study.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Offer;
import runthrough.plant.handover.Money.Output;
import runthrough.plant.handover.Money.UnitPrice;
import runthrough.study.benefit.CashFlow;
import runthrough.study.lever.YearlyCost.Item;
import runthrough.study.lever.YearlyCost.What;

/**
 * What changes of a line cost in a year, by the values that the user gave.
 *
 * <p>Rule LEVER-17.
 */
final class WayCosts {
    private static final double HOUR = 3600;
    private static final double TONNE = 1000;

    private final Money money;
    private final Line line;
    private final RunPlan plan;

    WayCosts(Money money, SimulationRequest request) {
        this.money = money;
        this.line = request.line();
        this.plan = request.run();
    }

    /**
     * That of {@code changes}; empty where it is not known of every one of them.
     *
     * @param output good output with them (m/s)
     */
    Optional<YearlyCost> of(List<LeverChange> changes, double output) {
        List<Item> items = new ArrayList<>();
        for (LeverChange change : changes) {
            List<Item> own = items(change, output);
            if (own.isEmpty()) {
                return Optional.empty();
            }
            items.addAll(own);
        }
        return Optional.of(new YearlyCost(money.currency(), items));
    }

    /** None where it is not known. */
    private List<Item> items(LeverChange change, double output) {
        List<Item> items = new ArrayList<>();
        Lever lever = change.lever();
        if (lever.what() == Lever.What.PROCESS_SPEED) {
            items.add(new Item(lever, What.OUTPUT, lostOutput(change, output), 0, 0));
        }
        OptionalDouble labour = money.labour();
        if (lever.what() == Lever.What.CREW && labour.isPresent()) {
            items.add(new Item(lever, What.WAGES, labour.getAsDouble() * peopleHours(change), 0, 0));
        }
        price(lever).map(price -> price.of(change.amount())).ifPresent(offer -> {
            items.add(new Item(lever, What.PRICE, annuity(offer), offer.price(), offer.life()));
            if (offer.upkeep() > 0) {
                items.add(new Item(lever, What.UPKEEP, offer.upkeep(), 0, 0));
            }
        });
        return items;
    }

    private Optional<UnitPrice> price(Lever lever) {
        Map<String, UnitPrice> prices = money.prices().levers();
        return lever.element()
                .map(element -> "coil-change." + element.list().name().toLowerCase(Locale.ROOT) + "." + element.name())
                .or(() -> lever.what().path())
                .flatMap(path -> Optional.ofNullable(prices.get(path)));
    }

    private double annuity(Offer offer) {
        return offer.price() / CashFlow.uniformPresentValue(money.rate(), offer.life());
    }

    /** People paid for more, over all scheduled hours of a year. */
    private double peopleHours(LeverChange change) {
        Line with = line.with(line.change().withCrew((int) Math.round(change.value())));
        double more = with.change().paidPeople() - line.change().paidPeople();
        return more * plan.yearlyTime() / HOUR;
    }

    /** What the process would put out more at its present speed, as seldom stopped as it is at the lower one. */
    private double lostOutput(LeverChange change, double output) {
        double metres = output * (change.present() / change.value() - 1) * plan.yearlyTime();
        double mass = line.coilSource()
                .mean(kind -> line.coils().get(kind).meanLength()
                        * line.coils().get(kind).massPerMetre());
        double length = line.coilSource().mean(kind -> line.coils().get(kind).meanLength());
        double unit = money.output() instanceof Output.LineHour ? HOUR * line.ratedMassFlow() : TONNE;
        return metres * mass / length / unit * money.output().value();
    }
}
