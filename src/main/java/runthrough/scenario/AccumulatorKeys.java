package runthrough.scenario;

import runthrough.plant.Accumulator;
import runthrough.plant.StorageForm;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Count;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.PlainNumber;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.grammar.Ways.Way;
import runthrough.scenario.grammar.Word;

/** What may be said of the accumulator. */
final class AccumulatorKeys {

    static final Key<Double> CAPACITY = Key.optional(
            "capacity", "the usable capacity in metres of strip", Amount.positive(Dimension.LENGTH), "60 m");

    static final Key<Integer> STRANDS = Key.optional(
            "strands",
            "how many strands lengthen between the rolls and the carriage",
            new Count(1, 1000).map(Math::toIntExact),
            "8");
    static final Key<Double> STROKE = Key.optional(
            "stroke", "the carriage travel between its end positions", Amount.positive(Dimension.LENGTH), "9 m");
    static final Key<Double> CARRIAGE_SPEED = Key.optional(
                    "carriage-speed",
                    "the greatest carriage speed while filling",
                    Amount.positive(Dimension.SPEED),
                    "12 m/min")
            .orElse("no limit", Double.POSITIVE_INFINITY);
    static final Key<Double> EMPTYING_SPEED = Key.optional(
                    "emptying-speed",
                    "the greatest carriage speed while emptying",
                    Amount.positive(Dimension.SPEED),
                    "12 m/min")
            .orElse("no limit", Double.POSITIVE_INFINITY);
    static final Key<Boolean> CARRIAGE = Key.optional(
                    "carriage",
                    "which way the carriage moves, for drawings only",
                    Word.<Boolean>choice().or("horizontal", false).or("vertical", true),
                    "vertical")
            .orElse("horizontal");

    static final Key<Integer> LOOPS =
            Key.optional("loops", "how many free loops hang in the pit", new Count(1, 100).map(Math::toIntExact), "1");
    static final Key<Double> SPAN = Key.optional(
            "span", "the distance between the supports of a loop", Amount.positive(Dimension.LENGTH), "4 m");
    static final Key<Double> GREATEST_SAG =
            Key.optional("greatest-sag", "the sag of the full loop", Amount.positive(Dimension.LENGTH), "3.5 m");
    static final Key<Double> LEAST_SAG =
            Key.optional("least-sag", "the sag of the empty loop", Amount.notNegative(Dimension.LENGTH), "0.5 m");

    static final Key<Double> WRAPS = Key.optional(
            "wraps", "how many wraps move from the small to the large diameter", new PlainNumber(Range.POSITIVE), "20");
    static final Key<Double> FULL_DIAMETER = Key.optional(
            "full-diameter",
            "the mean diameter of a wrap when the spiral is full",
            Amount.positive(Dimension.LENGTH),
            "4.2 m");
    static final Key<Double> EMPTY_DIAMETER = Key.optional(
            "empty-diameter",
            "the mean diameter of a wrap when the spiral is empty",
            Amount.positive(Dimension.LENGTH),
            "2.4 m");

    static final Key<Double> FILL_RATE_LIMIT = Key.optional(
                    "fill-rate-limit",
                    "the greatest entry speed above the process speed",
                    Amount.positive(Dimension.SPEED),
                    "30 m/min")
            .orElse("no limit but that of the carriage", Double.POSITIVE_INFINITY);
    static final Key<Double> RESERVE = Key.optional(
                    "reserve",
                    "the metres of strip that are never planned to be used",
                    Amount.notNegative(Dimension.LENGTH),
                    "2 m")
            .orElse("0 m");
    static final Key<Double> OVERTRAVEL = Key.optional(
                    "overtravel-allowance",
                    "the metres above full from which on an overfull accumulator is counted",
                    Amount.notNegative(Dimension.LENGTH),
                    "1 m")
            .orElse("overfull is not counted", Double.POSITIVE_INFINITY);

    static final Section ACCUMULATOR = Section.of(
                    "accumulator",
                    "what holds strip between the joiner and the process, or the word none",
                    CAPACITY,
                    STRANDS,
                    STROKE,
                    CARRIAGE_SPEED,
                    EMPTYING_SPEED,
                    CARRIAGE,
                    LOOPS,
                    SPAN,
                    GREATEST_SAG,
                    LEAST_SAG,
                    WRAPS,
                    FULL_DIAMETER,
                    EMPTY_DIAMETER,
                    FILL_RATE_LIMIT,
                    RESERVE,
                    OVERTRAVEL)
            .with(Ways.oneOf(
                    "how the accumulator holds strip",
                    Way.of(CAPACITY.name()),
                    Way.of(STRANDS.name(), STROKE.name())
                            .with(CARRIAGE_SPEED.name(), EMPTYING_SPEED.name(), CARRIAGE.name()),
                    Way.of(LOOPS.name(), SPAN.name(), GREATEST_SAG.name(), LEAST_SAG.name()),
                    Way.of(WRAPS.name(), FULL_DIAMETER.name(), EMPTY_DIAMETER.name())))
            .inOrder(LEAST_SAG, GREATEST_SAG, true)
            .inOrder(EMPTY_DIAMETER, FULL_DIAMETER, true);

    private AccumulatorKeys() {}

    /** The accumulator that {@code values} describe. */
    static Accumulator accumulator(Values values) {
        return new Accumulator(form(values), values.get(FILL_RATE_LIMIT), values.get(RESERVE), values.get(OVERTRAVEL));
    }

    private static StorageForm form(Values values) {
        if (values.has(CAPACITY)) {
            return new StorageForm.Direct(values.get(CAPACITY));
        } else if (values.has(STRANDS)) {
            return new StorageForm.Strands(
                    values.get(STRANDS),
                    values.get(STROKE),
                    values.get(CARRIAGE_SPEED),
                    values.get(EMPTYING_SPEED),
                    values.get(CARRIAGE));
        } else if (values.has(LOOPS)) {
            return new StorageForm.FreeLoop(
                    values.get(LOOPS), values.get(SPAN), values.get(GREATEST_SAG), values.get(LEAST_SAG));
        }
        return new StorageForm.Spiral(values.get(WRAPS), values.get(FULL_DIAMETER), values.get(EMPTY_DIAMETER));
    }
}
