package runthrough.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number and its unit, strictly: decimal point only, exponent allowed, nothing guessed. A time may be minutes and seconds, too,
 * such as {@code 1:30 min}. What cannot be read is answered with what is allowed and an example.
 */
public final class QuantityParser {

    /** A decimal number; the unit is whatever follows. */
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\\s*(.*)");

    /** Minutes and seconds, as every output writes a time above 90 s. */
    private static final Pattern MINUTES_AND_SECONDS = Pattern.compile("([0-9]+):([0-5][0-9](?:\\.[0-9]+)?)\\s*(min)?");

    private static final Pattern OTHER_BLANKS = Pattern.compile("[\\p{Zs}&&[^ ]]");

    private static final double MINUTE = 60;

    private static final Pattern NOT_FINITE = Pattern.compile("(?i)[+-]?\\.?(nan|inf|infinity)\\b.*");

    /** Spellings that people use, and what to write instead. */
    private static final Map<String, String> OTHER_SPELLINGS = Map.ofEntries(
            Map.entry("inch", "in"),
            Map.entry("inches", "in"),
            Map.entry("\"", "in"),
            Map.entry("foot", "ft"),
            Map.entry("feet", "ft"),
            Map.entry("'", "ft"),
            Map.entry("yard", "yd"),
            Map.entry("yards", "yd"),
            Map.entry("metre", "m"),
            Map.entry("metres", "m"),
            Map.entry("meter", "m"),
            Map.entry("meters", "m"),
            Map.entry("sec", "s"),
            Map.entry("second", "s"),
            Map.entry("seconds", "s"),
            Map.entry("minute", "min"),
            Map.entry("minutes", "min"),
            Map.entry("mins", "min"),
            Map.entry("hr", "h"),
            Map.entry("hrs", "h"),
            Map.entry("hour", "h"),
            Map.entry("hours", "h"),
            Map.entry("day", "d"),
            Map.entry("days", "d"),
            Map.entry("lbs", "lb"),
            Map.entry("pound", "lb"),
            Map.entry("pounds", "lb"),
            Map.entry("tonne", "t"),
            Map.entry("tonnes", "t"),
            Map.entry("short tons", "short ton"),
            Map.entry("long tons", "long ton"),
            Map.entry("mpm", "m/min"),
            Map.entry("fpm", "ft/min"),
            Map.entry("ipm", "in/min"),
            Map.entry("m/m", "m/min"),
            Map.entry("m s-1", "m/s"),
            Map.entry("ms-1", "m/s"),
            Map.entry("m s-2", "m/s2"),
            Map.entry("ms-2", "m/s2"),
            Map.entry("m/s/s", "m/s2"),
            Map.entry("ft/s/s", "ft/s2"),
            Map.entry("n/mm2", "MPa"),
            Map.entry("percent", "%"),
            Map.entry("pct", "%"));

    /** More letters than anybody writes a number and its unit with; what is longer is not looked at for what it may mean. */
    private static final int LONGEST = 200;

    /** Letters of what is no unit that a message repeats. */
    private static final int LONGEST_UNIT = 30;

    private QuantityParser() {}

    /** Reads {@code text} as a quantity of the dimension {@code wanted}. */
    public static Reading read(String text, Dimension wanted) {
        String stripped = plain(text);
        if (stripped.length() > LONGEST) {
            return unreadable(
                    "must be a number with a unit of " + wanted.label() + ", of at most " + LONGEST + " letters",
                    example(wanted));
        }
        if (wanted == Dimension.TIME && isWithoutUnit(MINUTES_AND_SECONDS.matcher(stripped))) {
            return unreadable("the unit is missing", "Write " + stripped + " min if it is minutes and seconds.");
        }
        return quantity(stripped, wanted)
                .map(Reading.class::cast)
                .or(() -> OddNumber.of(wanted).in(stripped))
                .orElseGet(() -> refusal(stripped, wanted));
    }

    /** What a text without blanks at its ends writes, where it is a quantity of the dimension {@code wanted}. */
    static Optional<Quantity> quantity(String stripped, Dimension wanted) {
        Matcher clock = MINUTES_AND_SECONDS.matcher(stripped);
        if (wanted == Dimension.TIME && clock.matches() && clock.group(3) != null) {
            double seconds = MINUTE * Double.parseDouble(clock.group(1)) + Double.parseDouble(clock.group(2));
            return Optional.of(new Quantity(seconds, Unit.SECOND));
        }
        Matcher matcher = NUMBER_AND_UNIT.matcher(stripped);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        return Unit.bySymbol(matcher.group(2))
                .filter(unit ->
                        unit.dimension() == wanted && Double.isFinite(value) && Double.isFinite(unit.toSi(value)))
                .map(unit -> new Quantity(value, unit));
    }

    private static boolean isWithoutUnit(Matcher clock) {
        return clock.matches() && clock.group(3) == null;
    }

    /** Why {@code stripped}, which is none of the odd ways, is no quantity of the dimension {@code wanted}. */
    private static Reading refusal(String stripped, Dimension wanted) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(stripped);
        if (!matcher.matches()) {
            return wrongNumber(stripped, wanted);
        }
        Optional<Unit> unit = Unit.bySymbol(matcher.group(2));
        return unit.filter(known -> known.dimension() == wanted).isPresent()
                ? unreadable("must be a finite number with a unit", "The number is too large.")
                : wrongUnit(matcher.group(2), unit, wanted);
    }

    /** The unit of {@code text}, if it is a number with one. */
    public static Optional<Unit> unit(String text) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(plain(text));
        return matcher.matches()
                ? Unit.bySymbol(matcher.group(2))
                        .or(() -> read(text, Dimension.TIME) instanceof Quantity time
                                ? Optional.of(time.unit())
                                : Optional.empty())
                : Optional.empty();
    }

    /** Reads {@code text} as a number without a unit. */
    public static Optional<Double> readNumber(String text) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(plain(text));
        if (!matcher.matches() || !matcher.group(2).isEmpty()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    }

    /** Why {@code text} is no number without a unit of which {@code isRead} knows, where it is one in a way that is not read. */
    public static Optional<Reading.Unreadable> oddNumber(String text, Predicate<String> isRead) {
        String plain = plain(text);
        return plain.length() <= LONGEST ? OddNumber.withoutUnit(isRead).in(plain) : Optional.empty();
    }

    /** {@code text} without blanks at its ends, and with plain ones between: others look the same. */
    private static String plain(String text) {
        return OTHER_BLANKS.matcher(text).replaceAll(" ").strip();
    }

    private static Reading wrongNumber(String text, Dimension wanted) {
        boolean isNotFinite = NOT_FINITE.matcher(text).matches();
        String rule = isNotFinite
                ? "must be a finite number with a unit"
                : "must be a number with a unit of " + wanted.label();
        return unreadable(rule, example(wanted));
    }

    private static Reading wrongUnit(String symbol, Optional<Unit> unit, Dimension wanted) {
        if (symbol.isEmpty()) {
            return unreadable("the unit is missing; allowed for " + allowed(wanted), example(wanted));
        }
        if (unit.isPresent()) {
            String found = unit.get().dimension().label();
            return unreadable(
                    symbol + " is a unit of " + found + ", not of " + wanted.label() + "; allowed are "
                            + wanted.unitList(),
                    example(wanted));
        }
        String shown = symbol.length() <= LONGEST_UNIT ? symbol : symbol.substring(0, LONGEST_UNIT) + "...";
        return unreadable("unknown unit \"" + shown + "\"; allowed for " + allowed(wanted), hint(symbol, wanted));
    }

    private static String hint(String symbol, Dimension wanted) {
        String lower = Unit.plain(symbol).toLowerCase(Locale.ROOT);
        if (lower.equals("ton") || lower.equals("tons")) {
            return "Write t (1000 kg), short ton (2000 lb) or long ton (2240 lb): a bare ton may mean any of them.";
        }
        Optional<String> sameLetters = wanted.units().stream()
                .map(Unit::symbol)
                .filter(known -> known.equalsIgnoreCase(lower))
                .findFirst();
        Optional<String> meant = sameLetters.or(() -> Optional.ofNullable(OTHER_SPELLINGS.get(lower))
                .filter(known ->
                        Unit.bySymbol(known).filter(wanted.units()::contains).isPresent()));
        return meant.map(known -> "Write " + known + ".").orElseGet(() -> example(wanted));
    }

    private static String allowed(Dimension wanted) {
        return wanted.label() + " are " + wanted.unitList();
    }

    static String example(Dimension wanted) {
        return "Write it like " + String.join(" or ", wanted.examples()) + ".";
    }

    private static Reading.Unreadable unreadable(String rule, String remedy) {
        return new Reading.Unreadable(rule, remedy);
    }
}
