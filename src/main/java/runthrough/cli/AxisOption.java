package runthrough.cli;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.quantity.Dimension;
import runthrough.quantity.Numbers;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;
import runthrough.quantity.Unit;
import runthrough.scenario.Input;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.study.map.MapAxis;
import runthrough.study.map.UsualRange;

/**
 * One side of a map as the command line names it: {@code PATH=FROM..TO}, or a path alone for a usual range.
 *
 * @param option it was given with
 * @param text as given
 */
record AxisOption(String option, String text) {
    /** Parts of a value from which to which a range may go, the best first. */
    private static final List<List<Double>> SPANS =
            List.of(List.of(0.5, 1.5), List.of(0.5, 1.0), List.of(1.0, 2.0), List.of(0.1, 0.2));

    private static final String BETWEEN = "..";

    /** The greatest value, and behind it how many there are. */
    private static final Pattern COUNTED = Pattern.compile("(.+):\\s*([0-9]+)");

    /**
     * An axis and the number of the scenario that changes along it.
     *
     * @param unit in which people read it
     */
    record Side(Input input, double from, double to, Optional<Unit> unit) {

        /** With about {@code points} values: of a whole number only whole ones. */
        MapAxis axis(int points) {
            return new MapAxis(input.path(), unit, from, to, input.numeric().isWhole() ? whole(points) : points);
        }

        private int whole(int most) {
            long span = Math.round(to - from);
            long step = Math.max(1, (span + most - 2) / (most - 1));
            while (span % step != 0) {
                step++;
            }
            return Math.toIntExact(span / step + 1);
        }
    }

    /** What the option asks; empty when that cannot be, and {@code problems} knows why. */
    Optional<Side> side(Scenario asked, Problems problems) {
        int split = text.indexOf('=');
        String path = split < 0 ? text : text.substring(0, split);
        String range = split < 0 ? "" : text.substring(split + 1).strip();
        Setting named = new Setting(path, new Raw.Scalar(range, Place.whole(option)));
        Optional<Input> input = asked.file().input(named, asked.settings(), problems);
        return split < 0
                ? input.flatMap(number -> usual(number, asked.request().line(), problems))
                : input.flatMap(number -> given(number, range, problems));
    }

    private Optional<Side> given(Input input, String range, Problems problems) {
        int dots = range.indexOf(BETWEEN);
        if (dots < 1 || dots + BETWEEN.length() == range.length()) {
            problems.error(
                    Place.whole(option),
                    input.path(),
                    range,
                    "must be a range, from its least to its greatest value with two dots between them",
                    "Write it like " + option + " " + input.path() + "=" + example(input) + ".");
            return Optional.empty();
        }
        String low = range.substring(0, dots).strip();
        String high = range.substring(dots + BETWEEN.length()).strip();
        Matcher counted = COUNTED.matcher(high);
        if (counted.matches() && input.numeric().si(counted.group(1)).isPresent()) {
            problems.error(
                    Place.whole(option),
                    input.path(),
                    range,
                    "is a range with a number of values behind it, which does not go here",
                    "Leave out :" + counted.group(2) + ".");
            return Optional.empty();
        }
        Optional<Double> from = end(input, low, problems);
        Optional<Double> to = end(input, high, problems);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (!(from.get() < to.get())) {
            problems.error(
                    Place.whole(option),
                    input.path(),
                    range,
                    "must rise: " + high + " is not more than " + low,
                    "Give the least value first.");
            return Optional.empty();
        }
        return Optional.of(new Side(input, from.get(), to.get(), input.numeric().unit(high)));
    }

    private Optional<Double> end(Input input, String text, Problems problems) {
        Optional<Dimension> dimension = input.dimension();
        if (dimension.isPresent()
                && QuantityParser.read(text, dimension.get()) instanceof Reading.Unreadable unreadable) {
            problems.error(Place.whole(option), input.path(), text, unreadable.rule(), unreadable.remedy());
            return Optional.empty();
        }
        Optional<Double> value = input.numeric().si(text).filter(input.numeric()::allows);
        if (value.isEmpty()) {
            problems.error(
                    Place.whole(option),
                    input.path(),
                    text,
                    "must be " + input.allowed(),
                    "Give a range within that, such as " + example(input) + ".");
        }
        return value;
    }

    /** A range around the present value, of values that are allowed. */
    private static String example(Input input) {
        double now = input.present().orElse(1);
        if (input.numeric().isWhole()) {
            return "1" + BETWEEN + Numbers.text(Math.max(2, 2 * now));
        }
        Optional<Unit> unit = input.unit().or(() -> input.dimension().map(Dimension::base));
        double shown = now == 0 ? 1 : unit.map(own -> own.fromSi(now)).orElse(now);
        String symbol = unit.map(Unit::symbol).orElse("");
        return SPANS.stream()
                .map(span -> span.stream()
                        .map(factor -> Numbers.text(factor * shown, 2) + symbol)
                        .toList())
                .filter(ends -> ends.stream()
                        .allMatch(end -> input.numeric()
                                .si(end)
                                .filter(input.numeric()::allows)
                                .isPresent()))
                .findFirst()
                .map(ends -> String.join(BETWEEN, ends))
                .orElse("1" + symbol + BETWEEN + "2" + symbol);
    }

    private Optional<Side> usual(Input input, Line line, Problems problems) {
        if (input.present().isEmpty() || !(input.present().getAsDouble() > 0)) {
            problems.error(
                    Place.whole(option),
                    input.path(),
                    "",
                    "has no value from which a range could be guessed",
                    "Give one, like " + option + " " + input.path() + "=" + example(input) + ".");
            return Optional.empty();
        }
        double now = input.present().getAsDouble();
        if (input.numeric().isWhole()) {
            return Optional.of(new Side(input, 1, Math.max(3, 2 * now), input.unit()));
        }
        boolean isStandingTime =
                input.path().equals(LineFigure.standingTime(line).path());
        UsualRange range =
                UsualRange.of(input.path(), line, now, input.numeric().range().greatest());
        Optional<Unit> unit =
                isStandingTime ? Optional.of(range.to() <= 600 ? Unit.SECOND : Unit.MINUTE) : input.unit();
        double from = rounded(range.from(), unit);
        double to = rounded(range.to(), unit);
        return Optional.of(new Side(input, from, from < to ? to : range.to(), unit));
    }

    /** Rounded towards zero to two digits in {@code unit}, as people would write it. */
    private static double rounded(double si, Optional<Unit> unit) {
        double shown = unit.map(own -> own.fromSi(si)).orElse(si);
        double grain = Math.pow(10, Math.floor(Math.log10(shown)) - 1);
        // Rounding errors must not change a number that is round already.
        double whole = Math.floor(shown / grain + 1e-9) * grain;
        return unit.map(own -> own.toSi(whole)).orElse(whole);
    }

    /** The axes that the options name; those not named are joint cycle time or rethread time, then process speed. */
    static List<AxisOption> of(Optional<String> x, Optional<String> y, Line line) {
        String joint = LineFigure.standingTime(line).path();
        String speed = LineFigure.RATED_SPEED.path();
        boolean yIsJoint = y.filter(text -> path(text).equals(joint)).isPresent();
        boolean xIsJoint =
                x.map(AxisOption::path).orElse(yIsJoint ? speed : joint).equals(joint);
        return List.of(
                new AxisOption("--x", x.orElse(yIsJoint ? speed : joint)),
                new AxisOption("--y", y.orElse(xIsJoint ? speed : joint)));
    }

    private static String path(String text) {
        return text.split("=", 2)[0].strip();
    }
}
