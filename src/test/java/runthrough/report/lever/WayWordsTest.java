package runthrough.report.lever;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.quantity.UnitSystem;
import runthrough.study.Goal;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverChange;
import runthrough.study.lever.Way;
import runthrough.study.lever.YearlyCost;
import runthrough.study.statistics.Estimate;

/** What is said of ways to meet a target, and of what they cost. */
class WayWordsTest {
    private static final WayWords WORDS = new WayWords(new LeverWords(UnitSystem.METRIC, false));
    private static final Lever CAPACITY = Lever.of(Lever.What.CAPACITY);
    private static final Lever JOINT = Lever.of(Lever.What.JOINT_CYCLE_TIME);

    private static Way way(boolean isShown, Optional<YearlyCost> cost) {
        return new Way(
                Goal.runThrough(0.99),
                List.of(
                        new LeverChange(CAPACITY, 72, 78.5, OptionalDouble.empty(), 0.0903),
                        new LeverChange(JOINT, 0, -4.5, OptionalDouble.empty(), 0.09)),
                OptionalDouble.of(0.09),
                new Estimate(0.995, 10, OptionalDouble.of(0.001), Optional.empty()),
                isShown,
                Optional.empty(),
                Optional.empty(),
                cost);
    }

    private static YearlyCost.Item price(Lever lever, double perYear, double price) {
        return new YearlyCost.Item(lever, YearlyCost.What.PRICE, perYear, price, 10);
    }

    @Test
    void aPairSaysBothChanges_andByWhichPart() {
        Way way = way(true, Optional.empty());

        assertThat(WORDS.sentence(way))
                .isEqualTo(
                        "an accumulator that holds 78.5 m, instead of 72 m, and 4.5 s off every pass of the join work"
                                + " (both by about 9 %)");
        assertThat(WORDS.rankedBy(way)).isEqualTo("changes 9.03 % + 9 %");
        assertThat(WORDS.sentence(way(false, Optional.empty()))).endsWith("the run is too short)");
    }

    @Test
    void whatItCostsIsSaidWithWhatItIsMadeOf() {
        YearlyCost cost = new YearlyCost(
                "EUR",
                List.of(
                        price(CAPACITY, 2980.6, 20_000),
                        new YearlyCost.Item(CAPACITY, YearlyCost.What.UPKEEP, 200, 0, 0),
                        price(JOINT, 1490.3, 10_000)));

        assertThat(WORDS.rankedBy(way(true, Optional.of(cost))))
                .isEqualTo(
                        "costs about 4670 EUR a year: accumulator capacity 2980 for a price of 20 000 over 10 years, 200 for"
                                + " upkeep; joint cycle time 1490 for a price of 10 000 over 10 years");
        assertThat(WORDS.rankedBy(way(true, Optional.of(new YearlyCost("EUR", List.of(price(JOINT, 1490.3, 10_000)))))))
                .isEqualTo("costs about 1490 EUR a year, for a price of 10 000 over 10 years");
    }

    @Test
    void theOrderIsSaid() {
        Way without = way(true, Optional.empty());
        Way with = way(true, Optional.of(new YearlyCost("EUR", List.of(price(JOINT, 1, 10)))));

        assertThat(WayWords.order(List.of(without))).isEqualTo("the one that changes least first");
        assertThat(WayWords.order(List.of(with))).isEqualTo("the cheapest first");
        assertThat(WayWords.order(List.of(with, without)))
                .startsWith("the cheapest first, then those whose cost is not");
    }
}
