package runthrough.scenario;

import java.util.Optional;
import runthrough.plant.Entry;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Count;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Values;

/** What may be said of the entry section. */
final class EntryKeys {

    static final Key<Integer> UNCOILERS = Key.optional(
                    "uncoilers", "how many uncoilers take turns", new Count(1, 100).map(Math::toIntExact), "2")
            .orElse("1");
    static final Key<Double> TOP_SPEED = Key.optional(
                    "top-speed", "the greatest strip speed of the entry", Amount.positive(Dimension.SPEED), "90 m/min")
            .depending("required unless the practice is rethread");
    static final Key<Double> ACCELERATION = Key.optional(
                    "acceleration", "how fast the entry speeds up", Amount.positive(Dimension.ACCELERATION), "0.3 m/s2")
            .orElse("the speed changes at once", Double.POSITIVE_INFINITY);
    static final Key<Double> DECELERATION = Key.optional(
                    "deceleration",
                    "how fast the entry slows down",
                    Amount.positive(Dimension.ACCELERATION),
                    "0.4 m/s2")
            .orElse("the speed changes at once", Double.POSITIVE_INFINITY);
    static final Key<Double> UNCOILER_PATH = Key.optional(
                    "uncoiler-path",
                    "the strip path from the uncoiler to the joiner",
                    Amount.notNegative(Dimension.LENGTH),
                    "8 m")
            .orElse("0 m");

    static final Key<Double> CREEP_SPEED =
            Key.required("speed", "the creep speed", Amount.positive(Dimension.SPEED), "10 m/min");
    static final Key<Double> CREEP_LENGTH = Key.required(
            "length",
            "the last metres of a coil that are run at creep speed",
            Amount.positive(Dimension.LENGTH),
            "3 m");
    static final Key<Values> CREEP = Key.optional(
            "creep",
            "how the tail creeps into the joiner",
            Section.of("entry.creep", "the last metres of a coil run slowly", CREEP_SPEED, CREEP_LENGTH),
            "");

    static final Section ENTRY = Section.of(
            "entry",
            "from the uncoilers to the joiner",
            UNCOILERS,
            TOP_SPEED,
            ACCELERATION,
            DECELERATION,
            UNCOILER_PATH,
            CREEP);

    private EntryKeys() {}

    /**
     * The entry that {@code values} describe.
     *
     * @param speedOtherwise top speed (m/s) when none is given
     */
    static Entry entry(Values values, double speedOtherwise) {
        Optional<Entry.Creep> creep =
                values.find(CREEP).map(given -> new Entry.Creep(given.get(CREEP_SPEED), given.get(CREEP_LENGTH)));
        return new Entry(
                values.get(UNCOILERS),
                values.find(TOP_SPEED).orElse(speedOtherwise),
                values.get(ACCELERATION),
                values.get(DECELERATION),
                creep,
                values.get(UNCOILER_PATH));
    }
}
