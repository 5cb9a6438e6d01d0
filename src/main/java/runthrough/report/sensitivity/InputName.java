package runthrough.report.sensitivity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What an input is called in a sentence; tables and files have its path, by which it is set. */
final class InputName {
    private static final Map<String, String> CALLED = Map.of(
            "entry.uncoilers", "number of uncoilers",
            "accumulator.strands", "number of strands",
            "accumulator.wraps", "number of wraps",
            "accumulator.loops", "number of loops");

    /** Elements of work are named by people, each in a list. */
    private static final Pattern ELEMENT = Pattern.compile("(prepare|tail|join|rethread)\\.([^.]+)(.*)");

    /** A sentence needs no word of the kind of distribution. */
    private static final Pattern DISTRIBUTION =
            Pattern.compile("\\.(uniform|triangular|normal|lognormal|gamma|weibull|exponential)(?=\\.|$)");

    private InputName() {}

    /** Such as "process slowing level", or "fit up (join), mean" for {@code coil-change.join.fit up.lognormal.mean}. */
    static String of(String path) {
        if (CALLED.containsKey(path)) {
            return CALLED.get(path);
        }
        String plain = DISTRIBUTION
                .matcher(path.replaceFirst("\\.exponential$", ".exponential.mean")
                        .replaceFirst("\\.constant$", ""))
                .replaceFirst(",")
                .replaceFirst("^coil-change\\.(shifts\\.)?", "")
                .replaceFirst("^coils\\.(mix|schedule|defaults)\\.", "coils: ");
        Matcher element = ELEMENT.matcher(plain);
        if (!element.matches()) {
            return words(plain);
        }
        String name = element.group(2);
        boolean hasDistribution = name.endsWith(",");
        String number = words(element.group(3)).strip();
        return (hasDistribution ? name.substring(0, name.length() - 1) : name) + " (" + element.group(1) + ")"
                + (number.isEmpty() ? "" : ", " + number);
    }

    private static String words(String path) {
        return path.replaceAll("\\.(?=\\p{L})", " ")
                .replaceAll("\\bsd$", "standard deviation")
                .replace('-', ' ');
    }
}
