package runthrough.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runthrough.quantity.Numbers;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.ScenarioText;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Interrupted;
import runthrough.scenario.source.Problems;

/** How far the sliders of a line go: as far as people move a number, and no further than the line can be run. */
final class SliderEnds {
    /** Halvings of the way to a refused end. */
    private static final int STEPS = 8;

    /** Digits of an end. */
    private static final int DIGITS = 3;

    private final PageScenario draft;

    private SliderEnds(PageScenario draft) {
        this.draft = draft;
    }

    /** Least and greatest value (SI) of each slider, by path. */
    static Map<String, List<Double>> of(PageScenario draft, UnitSystem system) {
        SliderEnds ends = new SliderEnds(draft);
        Map<String, List<Double>> all = new LinkedHashMap<>();
        FieldView.all(draft, system).stream()
                .filter(field -> field.low() < field.high())
                .forEach(field -> all.put(field.path(), ends.of(field)));
        return all;
    }

    private List<Double> of(FieldView field) {
        List<Double> ends = List.of(end(field, field.low()), end(field, field.high()));
        return ends.stream().allMatch(end -> canBeWritten(field, end)) ? ends : List.of(field.si(), field.si());
    }

    /** The end, or what is nearest to it and can be run. */
    private double end(FieldView field, double end) {
        if (runs(field, end)) {
            return end;
        }
        double good = field.si();
        double bad = end;
        for (int i = 0; i < STEPS; i++) {
            double middle = field.whole() ? Math.rint((good + bad) / 2) : (good + bad) / 2;
            if (runs(field, middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return field.whole() ? good : Numbers.rounded(good * field.per(), DIGITS) / field.per();
    }

    /** Whether the line can be run with the value, as the page writes it. */
    private boolean runs(FieldView field, double si) {
        Interrupted.check("the ends of sliders are looked for");
        return Setting.written(field.path(), written(field, si), field.path(), new Problems())
                .map(setting -> draft.file().with(List.of(setting)))
                .filter(ScenarioReading.Accepted.class::isInstance)
                .isPresent();
    }

    private boolean canBeWritten(FieldView field, double si) {
        Interrupted.check("the ends of sliders are looked for");
        ScenarioText.Change change = new ScenarioText.Change.Write(field.path(), written(field, si));
        return PageScenario.edited(draft.text(), List.of(change)).problems().isEmpty();
    }

    private static String written(FieldView field, double si) {
        String number = field.whole() ? Long.toString(Math.round(si)) : Numbers.text(si * field.per(), DIGITS);
        return (number + " " + field.symbol()).strip();
    }
}
