package runthrough.scenario.times;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import runthrough.quantity.Dimension;
import runthrough.quantity.Unit;
import runthrough.scenario.source.ElementName;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.timestudy.TimedElement;
import runthrough.timestudy.TimedElement.Part;

/**
 * A column of a time-study sheet.
 *
 * @param header as written
 * @param role what it holds
 * @param part of the coil change, when it holds the times of an element and the header says so
 * @param name of the element
 * @param unit of times that are written without one
 */
record SheetColumn(Raw.Scalar header, Role role, Optional<Part> part, String name, Unit unit) {

    /** What a column holds. */
    enum Role {
        TIMES,
        RATING,
        REMARK,
        /** What identifies a row. */
        LABEL,
        /** Nothing: the header is blank, as spreadsheets leave it beside a table. */
        BLANK
    }

    private static final Pattern HEADER = Pattern.compile("(?:([^:\\[\\]]*):)?\\s*(.*?)\\s*(?:\\[([^\\[\\]]*)])?");
    private static final Pattern IN_BRACKETS = Pattern.compile("(.*\\S)\\s*\\(([^()]*)\\)");
    private static final Set<String> REMARKS = Set.of("remark", "remarks", "note", "notes", "comment", "comments");
    private static final Set<String> LABELS = Set.of(
            "no",
            "no.",
            "nr",
            "nr.",
            "number",
            "row",
            "date",
            "day",
            "shift",
            "time of day",
            "coil",
            "coil id",
            "coil no",
            "coil no.",
            "coil change",
            "change",
            "observation",
            "observer",
            "crew",
            "operator");
    private static final String RATING = "rating";

    /** The column under {@code cell}; {@code problems} takes it when it is not one. */
    static Optional<SheetColumn> of(Raw.Scalar cell, Problems problems) {
        String text = cell.text().replaceAll("[\\s\u00A0]+", " ").strip();
        if (text.isEmpty()) {
            return Optional.of(new SheetColumn(cell, Role.BLANK, Optional.empty(), "", Unit.SECOND));
        }
        Matcher matcher = HEADER.matcher(text);
        if (!matcher.matches() || TimeText.formula(text).isPresent() || !text.matches(".*\\p{L}.*")) {
            problems.error(
                    cell.place(),
                    "",
                    cell.text(),
                    "the first row must name the columns, such as \"weld\" or \"join: weld [s]\"",
                    "Put a row with names above the times. A line that begins with # is a comment.");
            return Optional.empty();
        }
        String prefix = Optional.ofNullable(matcher.group(1)).orElse("").strip().toLowerCase(Locale.ROOT);
        String name = matcher.group(2);
        Optional<String> unit = Optional.ofNullable(matcher.group(3)).map(String::strip);
        String lower = name.toLowerCase(Locale.ROOT);
        if (REMARKS.contains(prefix) || (prefix.isEmpty() && REMARKS.contains(lower))) {
            return Optional.of(new SheetColumn(cell, Role.REMARK, Optional.empty(), name, Unit.SECOND));
        }
        if (prefix.isEmpty() && (lower.equals(RATING) || lower.startsWith(RATING + " ("))) {
            return Optional.of(new SheetColumn(cell, Role.RATING, Optional.empty(), name, Unit.PERCENT));
        }
        if (prefix.isEmpty() && LABELS.contains(lower)) {
            return Optional.of(new SheetColumn(cell, Role.LABEL, Optional.empty(), name, Unit.SECOND));
        }
        return times(cell, prefix, name, unit, problems);
    }

    private static Optional<SheetColumn> times(
            Raw.Scalar cell, String prefix, String name, Optional<String> unit, Problems problems) {
        Optional<Part> part = Arrays.stream(Part.values())
                .filter(candidate -> candidate.word().equals(prefix))
                .findFirst();
        if (!prefix.isEmpty() && part.isEmpty()) {
            tellOfPrefix(cell, prefix, problems);
            return Optional.empty();
        }
        Matcher brackets = IN_BRACKETS.matcher(name);
        boolean isUnit =
                unit.isEmpty() && brackets.matches() && time(brackets.group(2)).isPresent();
        String plain = isUnit ? brackets.group(1) : name;
        String symbol = isUnit ? brackets.group(2) : unit.orElse(Unit.SECOND.symbol());
        if (plain.isEmpty()) {
            problems.error(cell.place(), "", cell.text(), "the element has no name", "Write it like join: weld [s].");
            return Optional.empty();
        }
        Optional<String> wrong = ElementName.wrong(plain);
        if (wrong.isPresent()) {
            problems.error(cell.place(), "", cell.text(), wrong.get(), "Call it otherwise.");
            return Optional.empty();
        }
        if (time(symbol).isEmpty()) {
            problems.error(
                    cell.place(),
                    "",
                    cell.text(),
                    "[" + symbol + "] is not a unit of time; allowed are " + Dimension.TIME.unitList(),
                    "Write it like " + plain + " [s] or " + plain + " [min].");
            return Optional.empty();
        }
        return Optional.of(
                new SheetColumn(cell, Role.TIMES, part, plain, time(symbol).orElseThrow()));
    }

    private static void tellOfPrefix(Raw.Scalar cell, String prefix, Problems problems) {
        List<String> known = Stream.concat(Arrays.stream(Part.values()).map(Part::word), Stream.of("remark"))
                .toList();
        problems.error(
                cell.place(),
                "",
                cell.text(),
                "what stands before the colon must be prepare, tail, join or remark",
                Nearest.to(prefix, known)
                        .map(nearest -> "Did you mean " + nearest + "?")
                        .orElse("Without a colon an element belongs to join."));
    }

    private static Optional<Unit> time(String symbol) {
        return Unit.bySymbol(symbol).filter(unit -> unit.dimension() == Dimension.TIME);
    }

    /** What no other column of times may have: part of the coil change and name. */
    String key() {
        return part.orElse(Part.JOIN).word() + ": " + name.toLowerCase(Locale.ROOT);
    }

    /** The element of which it holds the times. */
    TimedElement element(int number) {
        return new TimedElement(part, name, number);
    }
}
