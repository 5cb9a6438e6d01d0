package runthrough.plant.handover;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What time and strip are worth, and what alternatives cost: all of it given by the user, in one currency.
 *
 * @param currency as the user names it
 * @param output how output is valued
 * @param scrap what a kilogram of scrap costs: strip less what the scrap brings, {@code >= 0}; empty where not said
 * @param labour what an hour of a person costs, {@code >= 0}; empty where not said
 * @param rate of discount a year, {@code > -1}
 * @param leastCertain the input that is least certain
 * @param prices of alternatives, and of changes of single numbers
 */
public record Money(
        String currency,
        Output output,
        OptionalDouble scrap,
        OptionalDouble labour,
        double rate,
        Uncertain leastCertain,
        Prices prices) {

    /** What alternatives cost, by their names. */
    public Map<String, Offer> offers() {
        return prices.offers();
    }

    /**
     * What changes cost.
     *
     * @param offers by the name of the alternative
     * @param levers by the path of the number that is changed by itself
     */
    public record Prices(Map<String, Offer> offers, Map<String, UnitPrice> levers) {
        public Prices {
            offers = Map.copyOf(new TreeMap<>(offers));
            levers = Map.copyOf(new TreeMap<>(levers));
        }

        /** Those of alternatives alone. */
        public static Prices of(Map<String, Offer> offers) {
            return new Prices(offers, Map.of());
        }
    }

    /**
     * What so much of a change costs; twice as much of it costs twice that.
     *
     * @param per how much of it (SI), or how many people or uncoilers, {@code > 0}
     * @param offer what that costs
     */
    public record UnitPrice(double per, Offer offer) {

        /** What {@code amount} of the change costs. */
        public Offer of(double amount) {
            return new Offer(amount / per * offer.price(), amount / per * offer.upkeep(), offer.life());
        }
    }

    /** How output is valued; both in currency, {@code >= 0}. */
    public sealed interface Output {
        /** What it is worth, in the user's words' unit. */
        double value();

        /** By the hours of running in which the line called today makes as much: value of an hour. */
        record LineHour(double value) implements Output {}

        /** By what is made: contribution of a tonne (1000 kg). */
        record Contribution(double value) implements Output {}
    }

    /** The inputs that have a break-even. */
    public enum Uncertain {
        /** Value of a line hour, or contribution of a tonne. */
        OUTPUT,
        SCRAP,
        LABOUR,
        PRICE,
        UPKEEP
    }

    /**
     * What an alternative costs.
     *
     * @param price paid at time zero, {@code >= 0}
     * @param upkeep a year, {@code >= 0}
     * @param life years that it is used, {@code >= 1}
     */
    public record Offer(double price, double upkeep, int life) {}
}
