package runthrough.scenario.part;

import runthrough.plant.Distribution;
import runthrough.plant.ProcessSection.JointBreak;
import runthrough.plant.ProcessSection.JointPassage;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.DistributionShape;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Values;

/** What may be said of joints on their way through the process section. */
public final class JointKeys {

    private static final Key<Double> PASSAGE_SPEED = Key.required(
            "speed", "the greatest strip speed while a joint passes", Amount.positive(Dimension.SPEED), "20 m/min");
    private static final Key<Double> BEFORE = Key.optional(
                    "before",
                    "the metres of strip before the joint that run at this speed, too",
                    Amount.notNegative(Dimension.LENGTH),
                    "5 m")
            .orElse("0 m");
    private static final Key<Double> AFTER = Key.optional(
                    "after",
                    "the metres of strip behind the joint that run at this speed, too",
                    Amount.notNegative(Dimension.LENGTH),
                    "10 m")
            .orElse("0 m");
    public static final Key<JointPassage> PASSAGE = Key.optional(
            "joint-passage",
            "how the process slows down while a joint passes",
            Section.of(
                            "process.joint-passage",
                            "running slower from when a joint is about to reach the process until it has passed",
                            PASSAGE_SPEED,
                            BEFORE,
                            AFTER)
                    .map(JointKeys::passage),
            "{speed: 20 m/min, before: 5 m, after: 10 m}");

    private static final Key<Double> CHANCE = Key.required(
            "chance",
            "the share of joints that break in the process",
            new Amount(Dimension.SHARE, Range.BELOW_ONE),
            "0.1 %");
    private static final Key<Double> LENGTH = Key.required(
            "length",
            "the length of the process section, anywhere in which a joint may break",
            Amount.positive(Dimension.LENGTH),
            "40 m");
    private static final Key<Distribution> REPAIR = Key.required(
            "repair",
            "the time that the process stands to be threaded again",
            new DistributionShape(Dimension.TIME, Range.NOT_NEGATIVE),
            "{lognormal: [20 min, 8 min]}");
    private static final Key<Double> SCRAP = Key.optional(
                    "scrap",
                    "the metres of strip that a break scraps on top of that of a stop",
                    Amount.notNegative(Dimension.LENGTH),
                    "30 m")
            .orElse("0 m");
    public static final Key<JointBreak> BREAK = Key.optional(
            "joint-break",
            "how often a joint breaks in the process, and what it costs",
            Section.of("process.joint-break", "joints that break in the process", CHANCE, LENGTH, REPAIR, SCRAP)
                    .map(JointKeys::breaking),
            "{chance: 0.1 %, length: 40 m, repair: 20 min, scrap: 30 m}");

    private JointKeys() {}

    private static JointPassage passage(Values values) {
        return new JointPassage(values.get(PASSAGE_SPEED), values.get(BEFORE), values.get(AFTER));
    }

    private static JointBreak breaking(Values values) {
        return new JointBreak(values.get(CHANCE), values.get(LENGTH), values.get(REPAIR), values.get(SCRAP));
    }
}
