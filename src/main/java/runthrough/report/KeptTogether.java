package runthrough.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.quantity.Unit;

/** Where no line of a text ends: between a number and its unit or sign, between its thousands, and within {@code p = 0.54}. */
public final class KeptTogether {
    /** A blank that no line ends at. */
    private static final char TIE = '\u00a0';

    /** Units of numbers beside those of quantities. */
    private static final List<String> FURTHER = List.of("points", "percentage points", "person-min", "years");

    private static final Pattern WITHIN = Pattern.compile("(?<=\\d) (?=\\d{3}(?!\\d)|(" + units()
            + "|\\p{Lu}{3})(?!\\w))" + "|(?<=±) |(?<=\\bp) (?=[=<] )|(?<=\\bp [=<]) ");

    private KeptTogether() {}

    private static String units() {
        return Stream.concat(
                        Arrays.stream(Unit.values()).flatMap(unit -> Stream.of(unit.symbol(), unit.shown())),
                        FURTHER.stream())
                .distinct()
                .sorted(Comparator.comparing(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }

    /** {@code text} with blanks that no line ends at where none should; three capital letters are taken for a currency. */
    public static String in(String text) {
        return WITHIN.matcher(text).replaceAll(String.valueOf(TIE));
    }

    /** The same with plain blanks again, once lines are broken. */
    public static String plain(String text) {
        return text.replace(TIE, ' ');
    }
}
