package runthrough.report.times;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.report.Provenance;
import runthrough.report.TextLines;
import runthrough.report.described.DistributionYaml;
import runthrough.study.fitting.ElementFits;
import runthrough.timestudy.TimedElement.Part;

/**
 * The work of a coil change as a scenario has it, with the distributions recommended for measured times: a part of a scenario to paste
 * or to begin one with. Comments say what it comes from.
 */
public final class TimesFragment {
    private static final String PLAIN = "[\\p{L}][\\p{L}0-9 .,()/+&-]*";
    /** Longer lines of observed values are broken there. */
    private static final int LINE = 120;

    private TimesFragment() {}

    /** The YAML text, each line ended by a line feed. */
    public static String of(TimesResult result, Provenance provenance) {
        StringBuilder text = new StringBuilder();
        comment(
                text,
                "",
                "Work times of coil changes, from the time-study sheet "
                        + result.statistics().sheet().file() + ".");
        provenance.fingerprint().ifPresent(digits -> comment(text, "", "SHA-256 of that file: " + digits));
        comment(text, "", "Timed: " + result.timed().orElse("no date given") + ".");
        comment(
                text,
                "",
                "n = " + result.rows() + " coil changes" + leftOut(result) + "; " + TimesWords.rating(result));
        comment(text, "", "Made by " + provenance.program() + ", times, seed " + result.seed() + ".");
        text.append("coil-change:\n");
        for (Part part : Part.values()) {
            List<Integer> elements = IntStream.range(0, result.fits().size())
                    .filter(i -> result.statistics().sheet().elements().get(i).partOrJoin() == part)
                    .boxed()
                    .toList();
            if (!elements.isEmpty()) {
                text.append("  ").append(part.word()).append(":\n");
                elements.forEach(i -> element(text, result, i));
            }
        }
        return text.toString();
    }

    private static String leftOut(TimesResult result) {
        return result.leftOut().isEmpty() ? "" : " (left out: rows " + TimesWords.list(result.leftOut()) + ")";
    }

    private static void element(StringBuilder text, TimesResult result, int i) {
        ElementFits fits = result.fits().get(i);
        comment(text, "    ", "n = " + fits.times().n() + ": " + TimesWords.reason(fits));
        String name = result.statistics().sheet().elements().get(i).name();
        String distribution = DistributionYaml.of(fits.distribution());
        text.append("    - ").append(quoted(name)).append(':');
        text.append(distribution.length() <= LINE ? " " + distribution : broken(distribution))
                .append('\n');
    }

    private static String broken(String distribution) {
        StringBuilder lines = new StringBuilder();
        int width = LINE;
        for (String word : distribution.split("(?<=, )", -1)) {
            if (width + word.length() > LINE - 8) {
                lines.append("\n        ");
                width = 0;
            }
            lines.append(word);
            width += word.length();
        }
        return lines.toString().replace(" \n", "\n");
    }

    /** A name in quotes where YAML could take it for something else. */
    private static String quoted(String name) {
        return name.matches(PLAIN)
                ? name.strip()
                : "\"" + TextLines.plain(name).replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static void comment(StringBuilder text, String indent, String words) {
        TextLines lines = new TextLines();
        lines.paragraph(words.replaceAll("\\R", " "), 0);
        lines.lines()
                .forEach(line ->
                        text.append(indent).append("# ").append(line.strip()).append('\n'));
    }
}
