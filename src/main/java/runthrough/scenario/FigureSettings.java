package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Dimension;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;

/**
 * Figures of a line that are set once the line is known.
 *
 * @param settings whose paths are names of figures, in the order in which they are applied
 * @param ofSeveral whether they are set of several lines at once: one that has not what is set besides its file is run without
 */
record FigureSettings(List<Setting> settings, boolean ofSeveral) {

    FigureSettings {
        settings = List.copyOf(settings);
    }

    /** What {@code figure} measures. */
    static Dimension dimension(LineFigure figure) {
        return Units.of(UnitSystem.METRIC).unit(figure.kind()).dimension();
    }

    /** {@code request} with its line changed; empty when that cannot be, and {@code top} knows why. */
    Optional<SimulationRequest> apply(SimulationRequest request, Context top, Problems problems) {
        Line line = request.line();
        for (Setting setting : settings) {
            if (ofSeveral && setting.isBesides() && figure(setting).of(line).isEmpty()) {
                problems.warning(
                        setting.place(),
                        setting.path(),
                        setting.value().shown(),
                        "is nothing that this line has",
                        "It is run without.");
                continue;
            }
            Optional<Line> changed = apply(line, setting, top);
            if (changed.isEmpty()) {
                return Optional.empty();
            }
            line = changed.get();
        }
        return Optional.of(settings.isEmpty() ? request : request.with(line));
    }

    private static Optional<Line> apply(Line line, Setting setting, Context top) {
        LineFigure figure = figure(setting);
        OptionalDouble present = figure.of(line);
        if (present.isEmpty()) {
            at(figure, top).error(setting.value(), "is nothing that this line has", "Leave it out.");
            return Optional.empty();
        }
        return value(setting, figure.least(line), top).map(value -> figure.with(line, value));
    }

    /** Reports to {@code top} what is wrong with the settings whatever the line is. */
    void checkAlone(Context top) {
        settings.forEach(setting -> value(setting, 0, top));
    }

    private static Optional<Double> value(Setting setting, double least, Context top) {
        LineFigure figure = figure(setting);
        Range range = new Range(least, false, Double.POSITIVE_INFINITY, false);
        return new Amount(dimension(figure), range).read(setting.value(), at(figure, top));
    }

    private static LineFigure figure(Setting setting) {
        return LineFigure.called(setting.path()).orElseThrow();
    }

    private static Context at(LineFigure figure, Context top) {
        return top.named(figure.path()).withRemedy("Give " + figure.meaning().split(";", 2)[0] + ".");
    }

    /** Where what comes of the settings is reported. */
    Place place() {
        return settings.get(0).place();
    }
}
