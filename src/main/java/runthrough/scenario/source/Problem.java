package runthrough.scenario.source;

import java.util.Comparator;

/**
 * Something that is wrong with an input file, or worth a warning.
 *
 * @param file as the user named it
 * @param line counted from 1; 0 when the file as a whole is meant
 * @param column counted from 1; 0 when the file as a whole is meant
 * @param path of the key, such as {@code accumulator.stroke}; empty when no key is meant
 * @param value as it stands in the file; empty when there is none
 * @param rule what is wrong or what is allowed
 * @param remedy how to mend it
 */
public record Problem(String file, int line, int column, String path, String value, String rule, String remedy) {

    /** In the order of the files, lines and columns. */
    public static final Comparator<Problem> BY_PLACE =
            Comparator.comparing(Problem::file).thenComparing(Problem::line).thenComparing(Problem::column);

    private static final int LONGEST_VALUE = 60;

    /** A problem at {@code place}; what the user wrote loses its control characters. */
    public static Problem at(Place place, String path, String value, String rule, String remedy) {
        return new Problem(
                place.file(),
                place.line(),
                place.column(),
                printable(path),
                shortened(printable(value)),
                printable(rule),
                printable(remedy));
    }

    /** The same, reported at another place and by another path. */
    public Problem at(Place place, String otherPath) {
        return at(place, otherPath, value, rule, remedy);
    }

    /** Whether it is about the same value at the same place as {@code other}, whatever is said of it and by which path. */
    public boolean isAbout(Problem other) {
        return file.equals(other.file) && line == other.line && column == other.column && value.equals(other.value);
    }

    /** One line: {@code tube-mill.yaml:14:13 accumulator.stroke = -9 m; must be more than 0 m. Give ...}. */
    @Override
    public String toString() {
        String where = new Place(file, line, column).toString();
        return where + (what().isEmpty() ? ": " : " ") + reason() + ". " + remedy;
    }

    /** What is wrong, without where and how to mend it: {@code accumulator.stroke = -9 m; must be more than 0 m}. */
    public String reason() {
        return what().isEmpty() ? rule : what() + "; " + rule;
    }

    private String what() {
        return path.isEmpty() || value.isEmpty() ? path + value : path + " = " + value;
    }

    private static String printable(String text) {
        // Of a table there may be thousands of problems, and few letters need a second look.
        return isPlain(text) ? text : withoutControls(text.strip().replaceAll("\\s+", " "));
    }

    /** Whether {@code text} holds nothing but ASCII that can be seen, and single blanks between. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            boolean isBlankBetween = letter == ' ' && i > 0 && i < text.length() - 1 && text.charAt(i - 1) != ' ';
            if ((letter <= ' ' || letter > '~') && !isBlankBetween) {
                return false;
            }
        }
        return true;
    }

    /** {@code text} with ? for letters that might play tricks on a terminal: controls, and what turns the direction of writing. */
    public static String withoutControls(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Cf}]", "?");
    }

    private static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST_VALUE
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST_VALUE)) + "...";
    }
}
