package runthrough.report.lever;

import java.util.List;
import runthrough.report.JsonShape;
import runthrough.study.Goal;
import runthrough.study.cause.Reason;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.lever.LeverChange;
import runthrough.study.lever.Way;
import runthrough.study.lever.YearlyCost;

/** A way to meet a target, as JSON. */
public final class WayShape {
    private static final JsonShape<LeverChange> CHANGE = JsonShape.<LeverChange>named("lever_change")
            .word(
                    "what",
                    "What is changed.",
                    Lever.What.class,
                    change -> change.lever().what())
            .optionalText(
                    "element",
                    "The work element that is shortened, as list/name; null for others.",
                    change -> change.lever().element().map(Reason.Element::path))
            .number("present", "Its value now. " + LeverShape.SI, LeverChange::present)
            .number("value", "What it is set to. " + LeverShape.SI, LeverChange::value)
            .number(
                    "part",
                    "How much it is changed, as a part of what it is now; seconds off every pass as a part of the mean joint"
                            + " cycle time, those off an element of its mean time.",
                    LeverChange::part);

    private static final JsonShape<YearlyCost.Item> ITEM = JsonShape.<YearlyCost.Item>named("cost_item")
            .word(
                    "of",
                    "The change that costs it.",
                    Lever.What.class,
                    item -> item.lever().what())
            .word("what", "What is paid for.", YearlyCost.What.class, YearlyCost.Item::what)
            .number("per_year", "In the currency of the file.", YearlyCost.Item::perYear)
            .number("price", "Price at time zero; 0 where it is none.", YearlyCost.Item::price);

    /** Of the JSON. */
    public static final JsonShape<Way> SHAPE = JsonShape.<Way>named("way")
            .word(
                    "goal",
                    "The target that is met.",
                    Goal.What.class,
                    way -> way.goal().what())
            .list("changes", "One change, or two that are made together.", CHANGE, Way::changes)
            .number(
                    "changed",
                    "How much is changed: the parts added up.",
                    way -> way.rank().part())
            .optionalNumber(
                    "evenly",
                    "The part by which two are changed alike, each rounded to its own step; null for others.",
                    Way::evenly)
            .estimate("share", "Share of coil changes that do with it what the target asks.", Way::share)
            .flag(
                    "shown",
                    "Whether the target is shown to be met; false where the run is too short to show it.",
                    Way::isShown)
            .optionalNumber(
                    "good_output_m_per_s",
                    "Good output with it, where the process is slower; else null.",
                    way -> LeverShape.output(way.output(), LeverAnswer.Cost::with))
            .optionalNumber(
                    "cost_per_year",
                    "What it costs in a year, in the currency of the file; null where that is not known of every change.",
                    way -> way.rank().perYear())
            .list(
                    "costs",
                    "What that is made of.",
                    ITEM,
                    way -> way.cost().map(YearlyCost::items).orElse(List.of()));

    private WayShape() {}
}
