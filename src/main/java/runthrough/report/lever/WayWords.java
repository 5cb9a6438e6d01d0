package runthrough.report.lever;

import java.util.List;
import java.util.stream.Collectors;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.study.lever.LeverChange;
import runthrough.study.lever.Way;
import runthrough.study.lever.YearlyCost;
import runthrough.study.lever.YearlyCost.Item;

/**
 * Ways to meet a target in words, and what they are ranked by.
 *
 * @param words for each of what they change
 */
public record WayWords(LeverWords words) {
    /** Parts that differ by no more are about the same. */
    private static final double ABOUT = 0.05;

    private static final Notation MONEY = Notation.PLAIN.with(Rounding.AMOUNT);

    /** Those of the line of {@code request}, in its units. */
    public static WayWords of(SimulationRequest request) {
        return new WayWords(LeverWords.of(request));
    }

    /** In what order {@code ways} stand. */
    public static String order(List<Way> ways) {
        long priced = ways.stream().filter(way -> way.cost().isPresent()).count();
        if (priced == 0) {
            return "the one that changes least first";
        }
        return priced == ways.size()
                ? "the cheapest first"
                : "the cheapest first, then those whose cost is not in the file, that which changes least first";
    }

    /** What is done: "a process speed of 29.1 m/min, instead of 45 m/min". */
    public String sentence(Way way) {
        return way.alone()
                .map(words::sentence)
                .orElseGet(() -> way.changes().stream().map(words::change).collect(Collectors.joining(", and "))
                        + (way.isShown() ? evenly(way) : LeverWords.NOT_SHOWN)
                        + words.cost("; ", way.output()));
    }

    /** By which part both are changed, where it still is about the same once each is rounded to its step. */
    private static String evenly(Way way) {
        double part = way.evenly().orElse(0);
        boolean isSame = way.changes().stream().allMatch(change -> Math.abs(change.part() - part) <= ABOUT * part);
        return part > 0 && isSame ? " (both by about " + Notation.SHARE.text(part) + ")" : "";
    }

    /** What it is ranked by: its cost in a year, and what that is made of; or how much is changed. */
    public String rankedBy(Way way) {
        return way.cost()
                .map(cost -> (cost.total() < 0 ? "brings about " : "costs about ") + MONEY.text(Math.abs(cost.total()))
                        + " " + cost.currency() + " a year" + madeOf(way, cost))
                .orElseGet(() -> "changes " + changed(way));
    }

    /** By how much is changed, as part of what there is: "23.6 % + 23.6 %". */
    private static String changed(Way way) {
        return way.changes().stream()
                .map(change -> Notation.SHARE.text(change.part()))
                .collect(Collectors.joining(" + "));
    }

    private static String madeOf(Way way, YearlyCost cost) {
        if (cost.items().size() == 1) {
            return ", " + paidFor(cost.items().get(0));
        }
        return ": "
                + way.changes().stream()
                        .map(change -> items(change, cost, way.isPair()))
                        .collect(Collectors.joining("; "));
    }

    private static String items(LeverChange change, YearlyCost cost, boolean named) {
        String items = cost.items().stream()
                .filter(item -> item.lever().equals(change.lever()))
                .map(item -> MONEY.text(item.perYear()) + " " + paidFor(item))
                .collect(Collectors.joining(", "));
        return named ? LeverWords.name(change.lever()).split(",", 2)[0] + " " + items : items;
    }

    private static String paidFor(Item item) {
        return switch (item.what()) {
            case PRICE -> "for a price of " + MONEY.text(item.price()) + " over " + years(item.life());
            case UPKEEP -> "for upkeep";
            case OUTPUT -> "for output that a slower process does not make";
            case WAGES -> "for people paid";
        };
    }

    private static String years(int life) {
        return life == 1 ? "1 year" : life + " years";
    }
}
