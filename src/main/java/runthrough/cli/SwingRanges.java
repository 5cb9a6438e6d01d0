package runthrough.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.cli.terminal.BadInputException;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;
import runthrough.scenario.Input;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.study.sensitivity.Swing;
import runthrough.web.study.UsualSwings;

/**
 * The ranges in which the numbers of a scenario are moved: those that the user states, and the usual one for the rest
 * ({@link UsualSwings}).
 */
final class SwingRanges {
    private static final String OPTION = "--range";
    private static final String BETWEEN = "..";

    private final ScenarioFile file;
    private final UsualSwings ranges;
    private final Problems problems = new Problems();

    /**
     * Ranges about what {@code file} says.
     *
     * @param usual share of a value by which it is moved to either side, in (0, 1)
     */
    SwingRanges(ScenarioFile file, double usual) {
        this.file = file;
        this.ranges = new UsualSwings(file, usual);
    }

    /** A range that was stated. */
    private record Stated(Input input, double low, double high) {
        Swing in(UsualSwings ranges) {
            return ranges.stated(input, low, high);
        }
    }

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
            range.map(one -> one.in(ranges)).or(() -> ranges.usual(input)).ifPresent(swings::add);
        }
        stated.values().stream().map(one -> one.in(ranges)).forEach(swings::add);
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
}
