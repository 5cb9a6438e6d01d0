package runthrough.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.study.sweep.Cases;

/**
 * An input that a sweep varies: {@code PATH=VALUE,VALUE,...}, {@code PATH=FROM..TO:POINTS}, or {@code PATH=FROM..TO} for a design
 * that fills the space.
 *
 * @param text as given
 */
record VaryOption(String text) {
    private static final String NAME = "--vary";
    /** Two dots, or else a colon, between the ends. */
    private static final Pattern STEPS =
            Pattern.compile("(?:(?<from>.+?)\\.\\.(?<to>.+)|(?<first>[^:]+):(?<last>.+)):(?<points>[1-9]\\d{0,6})");

    /** A range, and behind it something that is no number of values. */
    private static final Pattern ODD_POINTS =
            Pattern.compile("([^,\\[{]+\\.\\.[^,]+?):\\s*(?:[-+]?[0-9][0-9.]*|[A-Za-z]*)\\s*");

    /** From where to where, with two dots. */
    private static final Pattern SPAN = Pattern.compile("[^,\\[{]+\\.\\.[^,]+");

    /** The values of a grid; empty when they cannot be, and {@code problems} knows why. */
    Optional<Cases.Steps> steps(Scenario asked, Problems problems) {
        int split = text.indexOf('=');
        String path = split < 0 ? text : text.substring(0, split).strip();
        String values = split < 0 ? "" : text.substring(split + 1).strip();
        if (path.isEmpty() || values.isEmpty()) {
            problems.error(
                    Place.whole(NAME),
                    text,
                    "",
                    "must be a path and its values with = between them",
                    "Write it like --vary entry.top-speed=80m/min,100m/min or --vary entry.top-speed=80m/min..120m/min:5.");
            return Optional.empty();
        }
        Matcher range = STEPS.matcher(values);
        Matcher odd = ODD_POINTS.matcher(values);
        if (!range.matches() && odd.matches()) {
            problems.error(
                    Place.whole(NAME),
                    text,
                    "",
                    "the number of values behind a range must be a whole number from 1 to 9999999",
                    "Write it like " + path + "=" + odd.group(1) + ":5.");
            return Optional.empty();
        }
        if (SPAN.matcher(values).matches() && !range.matches()) {
            problems.error(
                    Place.whole(NAME),
                    text,
                    "",
                    "says from where to where, and not in how many steps",
                    "Write the number of values behind it, such as " + text
                            + ":5, or give --fill N for a design of N cases.");
            return Optional.empty();
        }
        if (!range.matches()) {
            return Optional.of(new Cases.Steps(path, listed(values)));
        }
        int points = Integer.parseInt(range.group("points"));
        String ends = range.group("from") == null
                ? range.group("first") + ".." + range.group("last")
                : range.group("from") + ".." + range.group("to");
        return new AxisOption(NAME, path + "=" + ends)
                .side(asked, problems)
                .map(side -> new Cases.Steps(
                        path,
                        IntStream.range(0, points)
                                .mapToObj(i -> written(side, even(side, i, points)))
                                .distinct()
                                .toList()));
    }

    /** The values of a design; empty when they cannot be, and {@code problems} knows why. */
    Optional<Cases.Span> span(Scenario asked, Problems problems) {
        return new AxisOption(NAME, text)
                .side(asked, problems)
                .map(side -> new Cases.Span(side.input().path(), within(side)));
    }

    private static double even(AxisOption.Side side, int index, int points) {
        return index == points - 1 && points > 1
                ? side.to()
                : side.from() + index * ((side.to() - side.from()) / Math.max(1, points - 1));
    }

    /** Of a whole number each value has the same share of the interval. */
    private static DoubleFunction<String> within(AxisOption.Side side) {
        double width = side.to() - side.from();
        return side.input().numeric().isWhole()
                ? at -> written(side, Math.floor(side.from() + at * (width + 1)))
                : at -> written(side, side.from() + at * width);
    }

    private static String written(AxisOption.Side side, double si) {
        double value =
                side.input().numeric().isWhole() ? Math.rint(si) : side.input().rounded(si);
        return side.input().setTo(value, NAME).value().shown();
    }

    /** Parted at commas, but for those within brackets and braces. */
    private static List<String> listed(String values) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i < values.length(); i++) {
            char c = values.charAt(i);
            depth += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
            if (c == ',' && depth == 0) {
                parts.add(values.substring(start, i).strip());
                start = i + 1;
            }
        }
        parts.add(values.substring(start).strip());
        return parts;
    }
}
