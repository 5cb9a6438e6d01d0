package runthrough.web.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.Line;
import runthrough.quantity.Dimension;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.scenario.Input;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.source.Problem;
import runthrough.study.sensitivity.Swing;

/**
 * How far the numbers of a scenario are moved to see what they change, on the page and by the command: a share of the value to
 * either side, of whole numbers at least one. A number that is zero has no usual range. An end of a usual range that the line
 * does not allow is taken nearer by tenths.
 */
public final class UsualSwings {
    /** Share of a value by which it is moved to either side, unless another is asked for. */
    public static final double USUAL = 0.1;

    private static final String WHERE = "--range";
    private static final int TENTHS = 10;

    private final ScenarioFile file;
    private final double usual;

    /**
     * Ranges about what {@code file} says.
     *
     * @param usual share of a value by which it is moved to either side, in (0, 1)
     */
    public UsualSwings(ScenarioFile file, double usual) {
        this.file = file;
        this.usual = usual;
    }

    /** All inputs that have a usual range. */
    public List<Swing> all() {
        return file.inputs().stream().flatMap(input -> usual(input).stream()).toList();
    }

    /** The range of {@code input} that was stated, from {@code low} to {@code high} (SI). */
    public Swing stated(Input input, double low, double high) {
        return new Swing(
                input.path(),
                input.present().isPresent() ? present(input) : "none",
                true,
                input.origin() == Input.Origin.FIGURE,
                end(input, low),
                end(input, high));
    }

    /** The present value as it was given; a time above 90 s, and one that follows from others, as results are written. */
    private static String present(Input input) {
        if (!input.dimension().equals(Optional.of(Dimension.TIME))) {
            return input.text();
        }
        double seconds = input.present().orElseThrow();
        Notation usual = Notation.time(seconds);
        boolean isKept =
                input.origin() != Input.Origin.FIGURE && (!usual.isClock() || usual.rounded(seconds) != seconds);
        return isKept ? input.text() : usual.text(seconds);
    }

    /** The usual range of {@code input}; empty where it has none. */
    public Optional<Swing> usual(Input input) {
        double present = input.present().orElse(0);
        if (present == 0) {
            return Optional.empty();
        }
        double by = usual * Math.abs(present);
        double step = input.numeric().isWhole() ? Math.max(1, Math.rint(by)) : by;
        return Optional.of(new Swing(
                input.path(),
                present(input),
                false,
                input.origin() == Input.Origin.FIGURE,
                near(input, present, -step),
                near(input, present, step)));
    }

    /** The end {@code step} away from {@code present}, or as many tenths of that as the line allows. */
    private Swing.End near(Input input, double present, double step) {
        Swing.End wanted = end(input, present + step);
        if (wanted.line().isPresent() || input.numeric().isWhole()) {
            return wanted;
        }
        for (int tenths = TENTHS - 1; tenths > 0; tenths--) {
            Swing.End nearer = end(input, present + step * tenths / TENTHS);
            if (nearer.line().isPresent()) {
                return new Swing.End(
                        nearer.value(),
                        nearer.text(),
                        nearer.line(),
                        wanted.text() + " is not possible: " + wanted.note());
            }
        }
        return wanted;
    }

    private Swing.End end(Input input, double value) {
        return input.dimension().equals(Optional.of(Dimension.TIME)) ? time(input, value) : number(input, value);
    }

    private Swing.End number(Input input, double value) {
        Optional<Unit> unit = input.dimension().map(dimension -> input.unit().orElse(dimension.base()));
        // The value shown is the value tried.
        double shown = Numbers.rounded(unit.map(own -> own.fromSi(value)).orElse(value));
        String text = Numbers.plain(shown) + unit.map(own -> " " + own.symbol()).orElse("");
        return tried(input, unit.map(own -> own.toSi(shown)).orElse(shown), text);
    }

    /** A time is tried as it is shown, to whole seconds above 90 s. */
    private Swing.End time(Input input, double value) {
        double seconds = Notation.time(value).rounded(value);
        return tried(input, seconds, Notation.time(seconds).text(seconds));
    }

    private Swing.End tried(Input input, double si, String text) {
        ScenarioReading reading = file.with(List.of(input.setTo(si, WHERE)));
        Optional<Line> line = reading instanceof ScenarioReading.Accepted accepted
                ? Optional.of(accepted.request().line())
                : Optional.empty();
        return new Swing.End(si, text, line, reason(reading));
    }

    /** Why a scenario cannot be run; empty for one that can. */
    private static String reason(ScenarioReading reading) {
        return Stream.of(reading)
                .filter(ScenarioReading.Refused.class::isInstance)
                .map(ScenarioReading.Refused.class::cast)
                .flatMap(refused -> refused.problems().stream())
                .map(Problem::reason)
                .findFirst()
                .orElse("");
    }
}
