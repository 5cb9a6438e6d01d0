package runthrough.scenario.part;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Count;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Shape;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.grammar.Values;

/** What may be said of the shifts in which people attend to coil changes. */
public final class ShiftKeys {

    private static final Key<Double> BEGIN = Key.required(
            "begin",
            "the time after the start of the shift at which the break begins",
            Amount.notNegative(Dimension.TIME),
            "4 h");
    private static final Key<Double> LENGTH =
            Key.required("length", "how long the break lasts", Amount.positive(Dimension.TIME), "30 min");
    private static final Key<Integer> BREAK_CREW = Key.optional(
                    "crew", "how many people stay during the break", new Count(0, 100).map(Math::toIntExact), "1")
            .orElse("0");

    private static final Key<String> NAME = Key.optional(
                    "name", "what you call the shift, for reports", new Text("a text"), "early")
            .withDefaultWords("shift 1, shift 2 and so on");
    private static final Key<Double> HOURS =
            Key.required("hours", "how long the shift lasts", Amount.positive(Dimension.TIME), "8 h");
    private static final Key<Integer> CREW = Key.required(
            "crew",
            "how many people attend to coil changes in this shift",
            new Count(1, 100).map(Math::toIntExact),
            "2");
    private static final Key<List<Values>> BREAKS = Key.optional(
                    "breaks",
                    "the breaks of the shift",
                    new Items<>(
                            Section.of(
                                    "coil-change.shifts.breaks",
                                    "a time with fewer people; a coil change under way is finished first",
                                    BEGIN,
                                    LENGTH,
                                    BREAK_CREW),
                            "breaks",
                            0,
                            false),
                    "[{begin: 4 h, length: 30 min, crew: 1}]")
            .orElse("none", List.of());

    private static final Section SHIFT = Section.of(
            "coil-change.shifts",
            "one shift; the list of shifts repeats from the start of the run on",
            NAME,
            HOURS,
            CREW,
            BREAKS);

    /** A list of shifts. */
    public static final Shape<Shifts> SHIFTS = new Items<>(SHIFT, "shifts", 1, false).map(ShiftKeys::shifts);

    private ShiftKeys() {}

    private static Shifts shifts(List<Values> list) {
        return new Shifts(IntStream.range(0, list.size())
                .mapToObj(i -> shift(list.get(i), Shift.nameByPlace(i)))
                .toList());
    }

    private static Shift shift(Values values, String name) {
        return new Shift(
                values.find(NAME).orElse(name),
                values.get(HOURS),
                values.get(CREW),
                values.get(BREAKS).stream()
                        .map(one -> new Break(one.get(BEGIN), one.get(LENGTH), one.get(BREAK_CREW)))
                        .toList());
    }
}
