package runthrough.scenario;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Output;
import runthrough.plant.handover.Money.Uncertain;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Count;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.PlainNumber;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.SectionsByName;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.grammar.Ways.Way;
import runthrough.scenario.grammar.Word;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** What may be said of money: values and costs, all in one currency. */
final class MoneyKeys {
    private static final double TONNE = 1000;
    /** Nobody keeps equipment longer than this. */
    private static final int LONGEST_LIFE = 100;

    private static final Key<String> CURRENCY =
            Key.required("currency", "the currency of all amounts, as you want it printed", new Text("a name"), "EUR");
    private static final Key<Double> LINE_HOUR = amount(
            "line-hour",
            "what an hour is worth in which the process runs at its rated speed; more good output counts as such hours",
            "900");
    private static final Key<Double> CONTRIBUTION =
            amount("contribution-per-tonne", "what 1000 kg more of output leave after their own costs", "85");
    private static final Key<Double> SCRAP =
            amount("scrap-per-tonne", "what 1000 kg of scrap cost: the strip less what the scrap brings", "320");
    private static final Key<Double> LABOUR = amount("labour-hour", "what an hour of one person costs", "45");
    private static final Key<Double> RATE = Key.required(
            "rate", "the rate of discount a year", new Amount(Dimension.SHARE, new Range(-1, false, 10, true)), "8 %");
    private static final Key<Uncertain> LEAST_CERTAIN = Key.optional(
                    "least-certain",
                    "the input that is least certain; the break-even is given for it",
                    Word.<Uncertain>choice()
                            .or("output", Uncertain.OUTPUT)
                            .or("scrap", Uncertain.SCRAP)
                            .or("labour", Uncertain.LABOUR)
                            .or("price", Uncertain.PRICE)
                            .or("upkeep", Uncertain.UPKEEP),
                    "price")
            .orElse("output");

    private static final Key<Double> PRICE =
            Key.required("price", "what it costs at time zero", new PlainNumber(Range.NOT_NEGATIVE), "180000");
    private static final Key<Double> UPKEEP = Key.optional(
                    "upkeep", "what it costs a year beside that", new PlainNumber(Range.NOT_NEGATIVE), "4000")
            .orElse("0");
    private static final Key<Integer> LIFE = Key.required(
            "life",
            "the whole number of years that it is used",
            new Count(1, LONGEST_LIFE).map(Math::toIntExact),
            "10");
    private static final Section OFFER =
            Section.of("money.alternatives", "what an alternative costs, under its name", PRICE, UPKEEP, LIFE);
    static final Key<Map<String, Values>> ALTERNATIVES = Key.optional(
                    "alternatives",
                    "price, upkeep and life of alternatives, each under its name, against the one called today",
                    new SectionsByName("the names of alternatives, each with price, upkeep and life", OFFER),
                    "")
            .orElse("none", Map.of());

    static final Key<String> PER = Key.optional(
            "per",
            "how much of the change that pays for; 1 where people or uncoilers are counted",
            new Text("an amount with its unit"),
            "1 m");
    private static final Section LEVER = Section.of(
            "money.levers",
            "what a change of one number costs, under the path of that number; twice as much of it costs twice that",
            PER,
            PRICE,
            UPKEEP,
            LIFE);
    static final Key<Map<String, Values>> LEVERS = Key.optional(
                    "levers",
                    "what changes of single numbers cost; what would meet the target is then ranked by its cost a year",
                    new SectionsByName("the paths of numbers, each with per, price, upkeep and life", LEVER),
                    "{usable-capacity: {per: 1 m, price: 3000, life: 10}}")
            .orElse("none", Map.of());

    static final Section MONEY = Section.of(
                    "money",
                    "what time and strip are worth; without it the document gives hours and tonnes alone",
                    CURRENCY,
                    LINE_HOUR,
                    CONTRIBUTION,
                    SCRAP,
                    LABOUR,
                    RATE,
                    LEAST_CERTAIN,
                    ALTERNATIVES,
                    LEVERS)
            .with(Ways.oneOf("what output is worth", Way.of(LINE_HOUR.name()), Way.of(CONTRIBUTION.name())));

    private MoneyKeys() {}

    private static Key<Double> amount(String name, String meaning, String example) {
        return Key.optional(name, meaning, new PlainNumber(Range.NOT_NEGATIVE), example);
    }

    /** What {@code values} say, which stand in {@code root}. */
    static Money money(Values values, Raw.Mapping root) {
        Output output = values.has(LINE_HOUR)
                ? new Output.LineHour(values.get(LINE_HOUR))
                : new Output.Contribution(values.get(CONTRIBUTION));
        Map<String, Money.Offer> offers = new LinkedHashMap<>();
        values.get(ALTERNATIVES).forEach((name, offer) -> offers.put(name, offer(offer)));
        Map<String, Money.UnitPrice> levers = new LinkedHashMap<>();
        // What is wrong with them has been reported.
        PricedLevers priced = new PricedLevers(root, new Problems());
        values.get(LEVERS)
                .forEach((path, lever) -> priced.find(path, lever.raw())
                        .ifPresent(found -> levers.put(found.path(), new Money.UnitPrice(found.per(), offer(lever)))));
        return new Money(
                values.get(CURRENCY),
                output,
                optional(values.find(SCRAP).map(perTonne -> perTonne / TONNE)),
                optional(values.find(LABOUR)),
                values.get(RATE),
                values.get(LEAST_CERTAIN),
                new Money.Prices(offers, levers));
    }

    private static Money.Offer offer(Values values) {
        return new Money.Offer(values.get(PRICE), values.get(UPKEEP), values.get(LIFE));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
