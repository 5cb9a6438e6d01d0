package runthrough.scenario;

import java.util.List;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Shifts;
import runthrough.plant.WorkElement;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Count;
import runthrough.scenario.grammar.DistributionShape;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.grammar.Ways.Way;
import runthrough.scenario.part.ShiftKeys;

/** What may be said of the work of a coil change. */
final class ChangeKeys {

    static final Key<Integer> CREW = Key.optional(
                    "crew",
                    "how many people; work on the joint comes before preparing the next coil",
                    new Count(1, 100).map(Math::toIntExact),
                    "2")
            .orElse("1");
    static final Key<Shifts> SHIFTS = Key.optional(
            "shifts",
            "the shifts in which people attend to coil changes, each with its own crew",
            ShiftKeys.SHIFTS,
            "[{name: early, hours: 8 h, crew: 2}, {name: late, hours: 8 h, crew: 1}]");
    static final Key<List<WorkElement>> PREPARE =
            work("prepare", "the work on the next coil while the line runs", false, "[{fetch coil: 90 s}]");
    static final Key<List<WorkElement>> TAIL =
            work("tail", "the work that needs only the old tail, strip standing", true, "[{shear tail: 8 s}]");
    static final Key<List<WorkElement>> JOIN = work(
            "join",
            "the work that needs both ends, strip standing",
            true,
            "[{fit up: 20 s}, {weld: {travel: 600 mm/min}}]");

    static final Key<Double> JOIN_SHORTER_BY = Key.optional(
                    "join-shorter-by",
                    "seconds off every pass of the join work, or off every rethread, none of which takes less than 0; to try"
                            + " what quicker joints would bring",
                    new Amount(Dimension.TIME, Range.NOT_NEGATIVE),
                    "5 s")
            .orElse("0 s", 0.0);
    static final Key<Double> REJECT_CHANCE = Key.optional(
            "chance", "the share of joints that are not good", new Amount(Dimension.SHARE, Range.BELOW_ONE), "2 %");
    static final Key<Integer> REJECT_EVERY = Key.optional(
            "every",
            "n, when one joint is rejected on coil changes n, 2n, 3n and so on",
            new Count(1, 1_000_000).map(Math::toIntExact),
            "25");
    static final Key<Values> REJECT = Key.optional(
            "reject",
            "how often a joint is made again",
            Section.of("coil-change.reject", "joints that are not good", REJECT_CHANCE, REJECT_EVERY)
                    .with(Ways.oneOf(
                            "how often a joint is rejected",
                            Way.of(REJECT_CHANCE.name()),
                            Way.of(REJECT_EVERY.name()))),
            "");
    static final Key<Distribution> RETHREAD = Key.optional(
                    "rethread",
                    "the time to thread the line anew, for the practice of that name",
                    new DistributionShape(Dimension.TIME, Range.POSITIVE),
                    "{triangular: [6 min, 9 min, 15 min]}")
            .depending("required when the practice is rethread");

    static final Section CHANGE = Section.of(
                    "coil-change",
                    "the work of a coil change",
                    CREW,
                    SHIFTS,
                    PREPARE,
                    TAIL,
                    JOIN,
                    JOIN_SHORTER_BY,
                    REJECT,
                    RETHREAD)
            .with(Ways.atMostOneOf("who is there", Way.of(CREW.name()), Way.of(SHIFTS.name())));

    private ChangeKeys() {}

    private static Key<List<WorkElement>> work(String name, String meaning, boolean redo, String example) {
        return Key.optional(name, meaning, new Items<>(new ElementKeys(redo), "work elements", 0, false), example)
                .orElse("none", List.of());
    }

    /** The work that {@code values} describe. */
    static CoilChange change(Values values) {
        CoilChange change = new CoilChange(
                        values.get(CREW),
                        values.get(PREPARE),
                        values.get(TAIL),
                        values.get(JOIN),
                        values.find(REJECT).map(ChangeKeys::reject).orElse(new Reject.Never()))
                .withJoinShorterBy(values.get(JOIN_SHORTER_BY));
        return values.find(SHIFTS).map(change::withShifts).orElse(change);
    }

    private static Reject reject(Values values) {
        return values.has(REJECT_CHANCE)
                ? new Reject.Chance(values.get(REJECT_CHANCE))
                : new Reject.Every(values.get(REJECT_EVERY));
    }
}
