package runthrough.quantity;

import java.util.Optional;
import java.util.regex.Pattern;
import runthrough.quantity.Reading.Unreadable;

/** Ways of writing a number that people use and that are not read, each with the reason and what to write instead. */
final class OddNumber {

    private static final Pattern COMMA = Pattern.compile("[+-]?[0-9][0-9 .]*,[0-9].*");

    /** Digits in groups of three, with blanks of any width between. */
    private static final Pattern GROUPED =
            Pattern.compile("[+-]?[0-9]{1,3}(?:[ \u00A0\u2009\u202F][0-9]{3})+(?![0-9]).*");

    private static final Pattern BLANK = Pattern.compile("(?<=[0-9])[ \u00A0\u2009\u202F](?=[0-9]{3})");

    /** Digits in groups of three, with points between. */
    private static final Pattern POINTS = Pattern.compile("[+-]?[0-9]{1,3}(?:\\.[0-9]{3}){2,}(?![0-9.]).*");

    private static final Pattern CLOCK = Pattern.compile("[0-9]+:[0-9:.]+.*");

    private static final Pattern FRACTION = Pattern.compile("[0-9 -]*[0-9]+/[0-9]+.*");

    /** One number, and another that it may be up to. */
    private static final Pattern RANGE = Pattern.compile(
            "(?![0-9.]+e[+-])[0-9.]+\\s*[a-z%/0-9]*\\s*(?:-|\u2013|\u2014|\\.\\.|to\\b)\\s*[0-9].*",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern HEXADECIMAL = Pattern.compile("(?i)[+-]?0x.*");

    /** Nothing but digits and what is written between them. */
    private static final Pattern NO_UNIT = Pattern.compile("[-+0-9.,:/ \u00A0\u2009\u202F\u2013\u2014]+");

    private OddNumber() {}

    /** Why {@code text} is no quantity of the dimension {@code wanted}; empty where it is none of these ways. */
    static Optional<Unreadable> in(String text, Dimension wanted) {
        String clock = wanted == Dimension.TIME
                ? "minutes and seconds are written like 1:30 min, with seconds from 0 to 59"
                : "is minutes and seconds, and not " + wanted.label();
        return in(text, clock, QuantityParser.example(wanted), "0.25 in");
    }

    /** The same of a number without a unit. */
    static Optional<Unreadable> in(String text) {
        return NO_UNIT.matcher(text).matches()
                ? in(text, "is minutes and seconds, and not a number without a unit", "Write one number.", "0.25")
                : Optional.empty();
    }

    private static Optional<Unreadable> in(String text, String clock, String example, String quarter) {
        if (COMMA.matcher(text).matches()) {
            return odd("a number has a decimal point and no commas", remedyForComma(text));
        }
        if (GROUPED.matcher(text).matches()) {
            return odd("a number has no blanks between its digits", "Write " + withoutBlanks(text) + ".");
        }
        if (POINTS.matcher(text).matches()) {
            return odd(
                    "a number has one decimal point", "Write " + text.replace(".", "") + " if points group thousands.");
        }
        if (CLOCK.matcher(text).matches()) {
            return odd(clock, example);
        }
        if (FRACTION.matcher(text).matches()) {
            return odd("fractions are not read", "Write it as a decimal number, such as " + quarter + ".");
        }
        if (RANGE.matcher(text).matches()) {
            return odd("is a range, and not one number", example);
        }
        return HEXADECIMAL.matcher(text).matches()
                ? odd("a number is written in decimal digits", example)
                : Optional.empty();
    }

    private static String remedyForComma(String written) {
        String text = withoutBlanks(written);
        if (text.matches("[+-]?[1-9][0-9]{0,2}(,[0-9]{3})+([^0-9,].*)?")) {
            // With a point behind it, or another comma, a comma can only be one of thousands.
            boolean mayBeDecimal = text.matches("[^,]*,[0-9]{3}(?!\\.[0-9])[^,]*");
            return "Write " + text.replace(",", "")
                    + (mayBeDecimal
                            ? " if the comma groups thousands, " + text.replaceFirst(",", ".")
                                    + " if it is a decimal comma."
                            : ".");
        }
        return text.matches("[^,]*,[^,]*")
                ? "Write " + text.replace(".", "").replace(",", ".") + "."
                : "Write it with a decimal point and no commas.";
    }

    private static String withoutBlanks(String text) {
        return BLANK.matcher(text).replaceAll("");
    }

    private static Optional<Unreadable> odd(String rule, String remedy) {
        return Optional.of(new Unreadable(rule, remedy));
    }
}
