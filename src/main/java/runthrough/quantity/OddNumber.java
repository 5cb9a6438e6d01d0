package runthrough.quantity;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.quantity.Reading.Unreadable;

/**
 * Ways of writing a number that people use and that are not read, each with the reason and what to write instead, which is read.
 *
 * @param isRead whether a text is what is asked for
 * @param quarter a number as it stands for a fraction
 * @param clock what is said of minutes and seconds
 * @param example of what is asked for, a sentence; where there is none, only what can be written instead is a reason
 */
record OddNumber(Predicate<String> isRead, String quarter, String clock, Optional<String> example) {

    private static final Pattern FRACTION = Pattern.compile("[0-9 -]*[0-9]+/[0-9]+.*");

    /** One number, and another that it may be up to; neither an exponent nor a date, whole or not, nor a unit such as m s-2. */
    private static final Pattern RANGE = Pattern.compile(
            "(?![0-9.,]+e[+-][0-9])(?![0-9]{4}-(?:0[1-9]|1[0-2])(?:-[0-9]{2}|$))(?!.*(?:s-[12]|m-[23])$)[0-9][0-9.,: ]*(?:[a-z%][a-z%/0-9]*\\s*)?"
                    + "(?:-|\u2013|\u2014|\\.\\.|to\\b)\\s*[0-9].*",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern COMMA = Pattern.compile("[+-]?[0-9][0-9 .]*,[0-9].*");

    /** With commas between thousands, as they may be, and nothing else that belongs to a number before them. */
    private static final Pattern COMMAS_GROUP = Pattern.compile("[+-]?[1-9][0-9]{0,2}(,[0-9]{3})+([^0-9,].*)?");

    /** Digits in groups of three, with blanks between. */
    private static final Pattern GROUPED = Pattern.compile("[+-]?[0-9]{1,3}(?: [0-9]{3})+(?![0-9]).*");

    private static final Pattern BLANK = Pattern.compile("(?<=[0-9]) (?=[0-9]{3})");

    /** Digits in groups of three, with points between. */
    private static final Pattern POINTS = Pattern.compile("[+-]?[0-9]{1,3}(?:\\.[0-9]{3}){2,}(?![0-9.]).*");

    private static final Pattern CLOCK = Pattern.compile("[+-]?[0-9]+:[0-9:.]+.*");

    private static final Pattern MINUTES =
            Pattern.compile("([0-9]+):([0-9]{1,2}) *(?:m|mins?|minutes?)", Pattern.CASE_INSENSITIVE);

    private static final Pattern HOURS =
            Pattern.compile("([0-9]{1,4}):([0-5][0-9]) *(?:h|hrs?|hours?)", Pattern.CASE_INSENSITIVE);

    private static final Pattern HEXADECIMAL = Pattern.compile("(?i)[+-]?0x.*");

    private static final String ONE_NUMBER = "Write one number.";

    /** Nothing but digits and what is written between them. */
    private static final Pattern NO_UNIT = Pattern.compile("(?:[-+0-9.,:/ \u2013\u2014]|to)+");

    /** Where a quantity of the dimension {@code wanted} is asked for. */
    static OddNumber of(Dimension wanted) {
        return new OddNumber(
                text -> QuantityParser.quantity(text, wanted).isPresent(),
                wanted == Dimension.LENGTH ? "0.25 in" : wanted.examples().get(0),
                wanted == Dimension.TIME
                        ? "minutes and seconds are written like 1:30 min, with seconds from 00 to 59"
                        : "is minutes and seconds, and not " + wanted.label(),
                Optional.of(QuantityParser.example(wanted)));
    }

    /** Where a number without a unit is asked for. */
    static OddNumber withoutUnit(Predicate<String> isRead) {
        return new OddNumber(
                text -> NO_UNIT.matcher(text).matches() && isRead.test(text),
                "0.25",
                "is minutes and seconds, and not a number without a unit",
                Optional.empty());
    }

    /** Why {@code text} is not what is asked for; empty where it is none of these ways. */
    Optional<Unreadable> in(String text) {
        if (FRACTION.matcher(text).matches()) {
            return odd(
                    "fractions are not read",
                    Optional.of("Write it as a decimal number, such as " + quarter + ".")
                            .filter(any -> isRead.test(quarter)));
        }
        if (RANGE.matcher(text).matches()) {
            return odd("is a range, and not one number", Optional.of(example.orElse(ONE_NUMBER)));
        }
        if (COMMA.matcher(text).matches()) {
            return odd("a number has a decimal point and no commas", remedyForComma(withoutBlanks(text)));
        }
        if (GROUPED.matcher(text).matches()) {
            return odd("a number has no blanks between its digits", write(withoutBlanks(text), "."));
        }
        if (POINTS.matcher(text).matches()) {
            return odd("a number has one decimal point", write(text.replace(".", ""), " if points group thousands."));
        }
        if (CLOCK.matcher(text).matches()) {
            return inClock(text);
        }
        return HEXADECIMAL.matcher(text).matches()
                ? odd("a number is written in decimal digits", Optional.empty())
                : Optional.empty();
    }

    private Optional<Unreadable> inClock(String text) {
        Matcher hours = HOURS.matcher(text);
        if (hours.matches()) {
            int minutes = 60 * Integer.parseInt(hours.group(1)) + Integer.parseInt(hours.group(2));
            Optional<String> inMinutes = write(minutes + " min", ".");
            if (inMinutes.isPresent()) {
                return odd("hours and minutes are not read", inMinutes);
            }
        }
        Matcher minutes = MINUTES.matcher(text);
        Optional<String> asRead = minutes.matches()
                ? write(
                        minutes.group(1) + ":" + (minutes.group(2).length() == 1 ? "0" : "") + minutes.group(2)
                                + " min",
                        ".")
                : Optional.empty();
        return odd(clock, asRead.or(() -> Optional.of(example.orElse(ONE_NUMBER))));
    }

    private Optional<String> remedyForComma(String text) {
        if (!COMMAS_GROUP.matcher(text).matches()) {
            return text.matches("[+-]?(?:[0-9 ]+|[0-9]{1,3}(?:\\.[0-9]{3})+),[^,]*")
                    ? write(text.replace(".", "").replace(",", "."), ".")
                    : example.map(any -> "Write it with a decimal point and no commas.");
        }
        // With a point behind it, or another comma, a comma can only be one of thousands.
        boolean mayBeDecimal = text.matches("[^,]*,[0-9]{3}(?!\\.[0-9])[^,]*");
        String point = text.replaceFirst(",", ".");
        return mayBeDecimal && isRead.test(point)
                ? write(
                        text.replace(",", ""),
                        " if the comma groups thousands, " + point + " if it is a decimal comma.")
                : write(text.replace(",", ""), ".");
    }

    /** To write {@code number}, where that would be read. */
    private Optional<String> write(String number, String end) {
        return Optional.of("Write " + number + end).filter(any -> isRead.test(number));
    }

    private static String withoutBlanks(String text) {
        return BLANK.matcher(text).replaceAll("");
    }

    private Optional<Unreadable> odd(String rule, Optional<String> remedy) {
        return remedy.or(() -> example).map(mended -> new Unreadable(rule, mended));
    }
}
