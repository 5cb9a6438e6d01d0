package runthrough.study.lever;

import java.util.List;

/**
 * What a way to meet a target costs in a year.
 *
 * @param currency as the user names it
 * @param items what it is made of, at least one
 */
public record YearlyCost(String currency, List<Item> items) {
    public YearlyCost {
        items = List.copyOf(items);
    }

    /** What is paid for. */
    public enum What {
        /** The price, as a level amount a year over its life. */
        PRICE,
        /** Upkeep. */
        UPKEEP,
        /** Good output that a slower process does not make. */
        OUTPUT,
        /** People who are paid for. */
        WAGES
    }

    /**
     * A part of it.
     *
     * @param lever whose change costs it
     * @param what is paid for
     * @param perYear in currency
     * @param price at time zero, where it is one; else 0
     * @param life of what was paid for (years), where it is a price; else 0
     */
    public record Item(Lever lever, What what, double perYear, double price, int life) {}

    /** All of it, in currency. */
    public double total() {
        return items.stream().mapToDouble(Item::perYear).sum();
    }
}
