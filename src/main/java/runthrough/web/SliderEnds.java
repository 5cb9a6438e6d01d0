package runthrough.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import runthrough.quantity.Numbers;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.ScenarioText;
import runthrough.scenario.source.Interrupted;

/** How far the sliders of a line go: as far as people move a number, and no further than the line can be run. */
final class SliderEnds {
    /** Halvings of the way to a refused end. */
    private static final int STEPS = 8;

    /** Digits of an end. */
    private static final int DIGITS = 3;

    private final PageScenario draft;
    private final UnitSystem system;

    private SliderEnds(PageScenario draft, UnitSystem system) {
        this.draft = draft;
        this.system = system;
    }

    /** Least and greatest value (SI) of each slider, by path. */
    static Map<String, List<Double>> of(PageScenario draft, UnitSystem system) {
        SliderEnds ends = new SliderEnds(draft, system);
        Map<String, List<Double>> all = new LinkedHashMap<>();
        FieldView.all(draft, system).stream()
                .filter(field -> field.low() < field.high())
                .forEach(field ->
                        all.put(field.path(), List.of(ends.of(field, field.low()), ends.of(field, field.high()))));
        return all;
    }

    /** The end, or what is nearest to it and can be run. */
    private double of(FieldView field, double end) {
        DoublePredicate runs = si -> runs(field, si);
        if (runs.test(end)) {
            return end;
        }
        double good = field.si();
        double bad = end;
        for (int i = 0; i < STEPS; i++) {
            double middle = field.whole() ? Math.rint((good + bad) / 2) : (good + bad) / 2;
            if (runs.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return field.whole() ? good : Numbers.rounded(good * field.per(), DIGITS) / field.per();
    }

    /** Whether the page can set it, as it writes it, and the line then be run. */
    private boolean runs(FieldView field, double si) {
        Interrupted.check("the ends of sliders are looked for");
        String number = field.whole() ? Long.toString(Math.round(si)) : Numbers.text(si * field.per(), DIGITS);
        String value = number + " " + field.symbol();
        ScenarioText.Changed changed =
                PageScenario.edited(draft.text(), List.of(new ScenarioText.Change.Write(field.path(), value.strip())));
        return changed.problems().isEmpty()
                && Optional.of(changed.text())
                        .flatMap(
                                text -> PageScenario.of(text.text(), text.file().resolveSibling(""), system)
                                        .request())
                        .isPresent();
    }
}
