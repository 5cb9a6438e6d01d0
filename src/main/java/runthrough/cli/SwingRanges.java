package runthrough.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runthrough.cli.terminal.BadInputException;
import runthrough.plant.Line;
import runthrough.quantity.Dimension;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;
import runthrough.quantity.Unit;
import runthrough.scenario.Input;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.study.sensitivity.Swing;

/**
 * The ranges in which the numbers of a scenario are moved: those that the user states, and the usual one for the rest, a share
 * of the value to either side, of whole numbers at least one. A number that is zero has no usual range. An end of a usual range
 * that the line does not allow is taken nearer by tenths.
 */
final class SwingRanges {
    private static final String OPTION = "--range";
    private static final String BETWEEN = "..";
    private static final int TENTHS = 10;

    private final ScenarioFile file;
    private final double usual;
    private final Problems problems = new Problems();

    /**
     * Ranges about what {@code file} says.
     *
     * @param usual share of a value by which it is moved to either side, in (0, 1)
     */
    SwingRanges(ScenarioFile file, double usual) {
        this.file = file;
        this.usual = usual;
    }

    /** A range that was stated. */
    private record Stated(Input input, double low, double high) {}

    /**
     * All inputs, each with its range.
     *
     * @param texts of the ranges stated, each {@code path=low..high}
     * @throws BadInputException with all that is wrong with these
     */
    List<Swing> swings(List<String> texts) {
        Map<String, Stated> stated = new LinkedHashMap<>();
        for (String text : texts) {
            read(text).ifPresent(range -> {
                if (stated.put(range.input().path(), range) != null) {
                    tell(range.input().path(), text, "is given two ranges", "Leave out one.");
                }
            });
        }
        BadInputException.throwIfAny(problems);
        List<Swing> swings = new ArrayList<>();
        for (Input input : file.inputs()) {
            Optional<Stated> range = Optional.ofNullable(stated.remove(input.path()));
            range.map(this::swing).or(() -> usual(input)).ifPresent(swings::add);
        }
        stated.values().stream().map(this::swing).forEach(swings::add);
        return swings;
    }

    private Optional<Stated> read(String text) {
        int equals = text.indexOf('=');
        int between = text.indexOf(BETWEEN, equals + 1);
        if (equals < 1 || between < 0) {
            tell(text, "", "must be a path, =, and two values with .. between them", example());
            return Optional.empty();
        }
        String path = text.substring(0, equals).strip();
        String range = text.substring(equals + 1);
        Optional<Input> input = Setting.written(path, range, OPTION, problems)
                .flatMap(setting -> file.input(setting, List.of(), problems));
        if (input.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble low =
                value(input.get(), text.substring(equals + 1, between).strip());
        OptionalDouble high =
                value(input.get(), text.substring(between + BETWEEN.length()).strip());
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (!(low.getAsDouble() < high.getAsDouble())) {
            tell(path, range, "must rise from a lower to a higher value", "Give two values, the lower one first.");
            return Optional.empty();
        }
        return Optional.of(new Stated(input.get(), low.getAsDouble(), high.getAsDouble()));
    }

    private static String example() {
        return "Write it like " + OPTION + " entry.top-speed=80m/min..110m/min.";
    }

    private OptionalDouble value(Input input, String text) {
        Optional<Dimension> dimension = input.dimension();
        if (dimension.isEmpty()) {
            Optional<Double> number = QuantityParser.readNumber(text);
            boolean fits =
                    number.isPresent() && (!input.numeric().isWhole() || number.get() == Math.rint(number.get()));
            if (!fits) {
                tell(input.path(), text, "must be " + input.allowed(), example());
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(number.get());
        }
        Reading reading = QuantityParser.read(text, dimension.get());
        if (reading instanceof Reading.Unreadable unreadable) {
            tell(input.path(), text, unreadable.rule(), unreadable.remedy());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(((Quantity) reading).si());
    }

    private void tell(String path, String value, String rule, String remedy) {
        problems.error(Place.whole(OPTION), path, value, rule, remedy);
    }

    private Swing swing(Stated range) {
        Input input = range.input();
        return new Swing(
                input.path(),
                input.present().isPresent() ? present(input) : "none",
                true,
                input.origin() == Input.Origin.FIGURE,
                end(input, range.low()),
                end(input, range.high()));
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

    private Optional<Swing> usual(Input input) {
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
        ScenarioReading reading = file.with(List.of(input.setTo(si, OPTION)));
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
                .map(problem -> problem.path() + " = " + problem.value() + "; " + problem.rule())
                .findFirst()
                .orElse("");
    }
}
