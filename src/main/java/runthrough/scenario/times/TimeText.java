package runthrough.scenario.times;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;
import runthrough.quantity.Unit;

/**
 * Reads the cells of a time-study sheet: {@code 83}, {@code 83 s}, {@code 1.38 min}, {@code 1 min 23 s}, {@code 1:23},
 * {@code 1:23 min}, {@code 0:01:23.5}, or nothing, or a dash, where there was nothing to time.
 *
 * @param decimalComma whether numbers of this file have decimal commas instead of decimal points
 */
record TimeText(boolean decimalComma) {

    /** Nobody times a work element of a coil change for longer than a day (s). */
    private static final double LONGEST = 86_400;

    /** What is shorter was no work, and its logarithm would tear every fit (s). */
    private static final double SHORTEST = 1e-6;

    private static final Pattern GAP = Pattern.compile("[-\u2010-\u2015]?");
    private static final Pattern NEGATIVE = Pattern.compile("[-\u2212].*[0-9].*");
    private static final Pattern MINUTES = Pattern.compile("([0-9]+):([0-9]{1,2}(?:\\.[0-9]+)?)( ?min)?");
    private static final Pattern HOURS = Pattern.compile("([0-9]+):([0-9]{1,2}):([0-9]{1,2}(?:\\.[0-9]+)?)");
    private static final Pattern WORDS = Pattern.compile("([0-9]+) ?(?:min|m) ?([0-9]+(?:\\.[0-9]+)?) ?s");
    /** A number that is none to a computer. */
    private static final Pattern TOO_LARGE = Pattern.compile("[0-9.]+[eE]\\+?[0-9]+");

    private static final String FORMS = "must be a time, such as 83, 83 s, 1:23, 0:01:23.5 or 1.38 min, or blank";
    private static final String CHECK = "Correct the cell, or leave it blank if the element was not timed.";

    /** A time. */
    sealed interface Cell {}

    /** So many seconds; NaN where nothing was timed. */
    record Seconds(double value) implements Cell {}

    /** Not a time. */
    record Unreadable(String rule, String remedy) implements Cell {}

    /** The time in {@code text}, a number without a unit being in {@code unit}. */
    Cell read(String text, Unit unit) {
        String plain = plain(text);
        if (GAP.matcher(plain).matches()) {
            return new Seconds(Double.NaN);
        }
        Optional<Unreadable> wrong = formula(plain).or(() -> separators(plain));
        if (wrong.isPresent()) {
            return wrong.get();
        }
        if (NEGATIVE.matcher(plain).matches()) {
            return new Unreadable("a time must not be negative", CHECK);
        }
        String number = decimalComma ? plain.replace(',', '.') : plain;
        return number.contains(":") ? clock(number, unit) : bounded(number, unit);
    }

    /** The number in {@code text}, with a per cent sign or without; empty when it is not one. */
    OptionalDouble percent(String text) {
        String plain = plain(text).replaceFirst("\\s*%$", "");
        if (separators(plain).isPresent()) {
            return OptionalDouble.empty();
        }
        return QuantityParser.readNumber(decimalComma ? plain.replace(',', '.') : plain)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    /** What is wrong with a cell that a spreadsheet would compute. */
    static Optional<Unreadable> formula(String text) {
        return text.startsWith("=")
                ? Optional.of(new Unreadable(
                        "is a formula, not a value",
                        "Copy the cells in the spreadsheet, paste them as values and save again."))
                : Optional.empty();
    }

    /** No-break spaces come from spreadsheets. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\u00A0\u202F]+", " ").strip();
    }

    private Optional<Unreadable> separators(String text) {
        if (decimalComma && text.contains(".")) {
            return Optional.of(new Unreadable(
                    "has a decimal point, but other numbers of this file have decimal commas",
                    "Write all numbers of the file in the same way, without separating thousands."));
        }
        if (!decimalComma && text.contains(",")) {
            return Optional.of(new Unreadable(
                    "a number has a decimal point where commas separate the columns",
                    text.endsWith(",") ? "Leave out the comma at its end." : withPoint(text)));
        }
        return Optional.empty();
    }

    private static String withPoint(String text) {
        String pointed = text.replace(',', '.');
        return pointed.indexOf('.') == pointed.lastIndexOf('.')
                ? "Write " + pointed + " if the comma is a decimal comma."
                : "Write it with one decimal point, without separating thousands.";
    }

    private Cell clock(String text, Unit unit) {
        Matcher hours = HOURS.matcher(text);
        if (hours.matches()) {
            return whole(60 * number(hours, 1) + number(hours, 2), number(hours, 2), number(hours, 3));
        }
        Matcher minutes = MINUTES.matcher(text);
        if (!minutes.matches()) {
            return new Unreadable(FORMS, CHECK);
        }
        if (unit == Unit.HOUR && minutes.group(3) == null) {
            return new Unreadable(
                    "might be hours and minutes or minutes and seconds in a column of hours",
                    "Write hours, minutes and seconds, such as 0:" + text + ".");
        }
        return whole(number(minutes, 1), 0, number(minutes, 2));
    }

    private static Cell whole(double minutes, double minutesOfHour, double seconds) {
        return minutesOfHour < 60 && seconds < 60
                ? inADay(60 * minutes + seconds)
                : new Unreadable("a clock shows fewer than 60 minutes and seconds", CHECK);
    }

    private static Cell bounded(String text, Unit unit) {
        Matcher words = WORDS.matcher(text);
        if (words.matches()) {
            return whole(number(words, 1), 0, number(words, 2));
        }
        Optional<Double> bare = QuantityParser.readNumber(text);
        if (bare.isPresent()) {
            return inADay(unit.toSi(bare.get()));
        }
        Reading reading = QuantityParser.read(text, Dimension.TIME);
        if (reading instanceof Quantity quantity) {
            return inADay(quantity.si());
        }
        if (TOO_LARGE.matcher(text).matches()) {
            return new Unreadable("is longer than a day", CHECK);
        }
        boolean isNumber = Character.isDigit(text.charAt(0));
        Reading.Unreadable unreadable = (Reading.Unreadable) reading;
        return isNumber ? new Unreadable(unreadable.rule(), unreadable.remedy()) : new Unreadable(FORMS, CHECK);
    }

    private static Cell inADay(double seconds) {
        if (seconds > 0 && seconds < SHORTEST) {
            return new Unreadable("is shorter than a microsecond", "Check the unit of the column and the cell.");
        }
        return seconds <= LONGEST
                ? new Seconds(seconds)
                : new Unreadable("is longer than a day", "Check the unit of the column and the cell.");
    }

    private static double number(Matcher matcher, int group) {
        return Double.parseDouble(matcher.group(group));
    }
}
