package runthrough.scenario.coil;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.quantity.Dimension;
import runthrough.quantity.Unit;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.DistributionShape;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * A column of a schedule.
 *
 * @param header as written, such as {@code width [mm]}
 * @param key of the coil that it gives
 * @param unit of its numbers; empty where there is none
 */
record ScheduleColumn(String header, Key<?> key, String unit) {

    private static final Pattern HEADER = Pattern.compile("([^\\[\\]()]*?)\\s*(?:[\\[(]([^\\[\\]()]*)[\\])])?");
    /** What planners call some of the keys. */
    private static final Map<String, String> OTHER_NAMES =
            Map.of("id", CoilKeys.NAME.name(), "coil", CoilKeys.NAME.name(), "group", CoilKeys.PRODUCT.name());

    /** Whether it holds words rather than numbers. */
    boolean isText() {
        return key.shape() instanceof Text;
    }

    /** The columns that {@code header} names; {@code problems} takes what is wrong or lacking. */
    static List<ScheduleColumn> of(List<Raw.Scalar> header, List<Raw.Entry> defaults, Problems problems) {
        List<ScheduleColumn> columns = new ArrayList<>();
        Map<String, Raw.Scalar> seen = new HashMap<>();
        int before = problems.count();
        for (Raw.Scalar cell : header) {
            column(cell, problems).ifPresent(column -> {
                columns.add(column);
                if (seen.putIfAbsent(column.key().name(), cell) != null) {
                    problems.error(cell.place(), "", cell.text(), "a second column of this name", "Keep only one.");
                }
            });
        }
        if (problems.count() == before) {
            tellMissing(columns, defaults, header.get(0).place(), problems);
        }
        return columns;
    }

    private static Optional<ScheduleColumn> column(Raw.Scalar cell, Problems problems) {
        Matcher matcher = HEADER.matcher(cell.text().strip());
        String name = matcher.matches() ? matcher.group(1) : cell.text();
        String unit = matcher.matches()
                ? Optional.ofNullable(matcher.group(2)).orElse("").strip()
                : "";
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        String wanted = OTHER_NAMES.getOrDefault(plain, plain);
        Optional<Key<?>> key = CoilKeys.COIL.keys().stream()
                .filter(candidate -> candidate.name().equals(wanted))
                .findFirst();
        if (key.isEmpty()) {
            List<String> names = Stream.concat(
                            Stream.of("id"), CoilKeys.COIL.keys().stream().map(Key::name))
                    .toList();
            String remedy = Nearest.to(name, names)
                    .map(nearest -> "Did you mean " + nearest + "?")
                    .orElse("Allowed columns are: " + String.join(", ", names) + ".");
            String rule = name.isEmpty() ? "the column has no name" : "is not a known column";
            problems.error(cell.place(), "", cell.text(), rule, remedy);
            return Optional.empty();
        }
        return dimension(key.get())
                .map(dimension -> withUnit(cell, key.get(), unit, dimension, problems))
                .orElseGet(() -> withoutUnit(cell, key.get(), unit, problems));
    }

    private static Optional<ScheduleColumn> withUnit(
            Raw.Scalar cell, Key<?> key, String unit, Dimension dimension, Problems problems) {
        Optional<Unit> known = Unit.bySymbol(unit);
        if (known.isPresent() && known.get().dimension() == dimension) {
            return Optional.of(new ScheduleColumn(cell.text().strip(), key, unit));
        }
        String example = key.name() + " [" + dimension.units().get(1).symbol() + "]";
        String rule = unit.isEmpty() ? "the unit is missing" : "[" + unit + "] is not a unit of " + dimension.label();
        problems.error(
                cell.place(),
                "",
                cell.text(),
                rule + "; allowed are " + dimension.unitList(),
                "Write the header like " + example + ".");
        return Optional.empty();
    }

    private static Optional<ScheduleColumn> withoutUnit(Raw.Scalar cell, Key<?> key, String unit, Problems problems) {
        if (!unit.isEmpty()) {
            problems.error(cell.place(), "", cell.text(), "this column has no unit", "Write it as " + key.name() + ".");
            return Optional.empty();
        }
        return Optional.of(new ScheduleColumn(cell.text().strip(), key, ""));
    }

    private static Optional<Dimension> dimension(Key<?> key) {
        if (key.shape() instanceof Amount amount) {
            return Optional.of(amount.dimension());
        }
        return key.shape() instanceof DistributionShape distribution
                ? Optional.of(distribution.dimension())
                : Optional.empty();
    }

    /** Reports what every row would lack. */
    private static void tellMissing(
            List<ScheduleColumn> columns, List<Raw.Entry> defaults, Place place, Problems problems) {
        List<String> given = Stream.concat(
                        columns.stream().map(column -> column.key().name()),
                        defaults.stream().map(Raw.Entry::key))
                .toList();
        String missing = CoilKeys.COIL.keys().stream()
                .filter(key -> key.need() == Key.Need.REQUIRED && !given.contains(key.name()))
                .map(Key::name)
                .collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            problems.error(
                    place,
                    "",
                    "",
                    "the column " + missing + " is missing",
                    "Add it, or give the value for all coils under coils.defaults of the scenario.");
        }
        boolean saysSize = CoilKeys.SIZE.ways().stream().anyMatch(way -> given.containsAll(way.must()));
        if (!saysSize) {
            problems.error(
                    place,
                    "",
                    "",
                    "no column gives " + CoilKeys.SIZE.what(),
                    "Add one of: " + CoilKeys.SIZE.words() + ".");
        }
    }
}
