package runthrough.report.validation;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import runthrough.chart.Chart;
import runthrough.report.TextLines;
import runthrough.report.validation.ValidationPage.Count;
import runthrough.report.validation.ValidationPage.Part;
import runthrough.report.validation.ValidationPage.Row;

/** The page as text of 80 columns; what does not agree is marked in words. */
final class ValidationText {
    private static final int INDENT = 6;

    private final TextLines lines = new TextLines();

    private ValidationText() {}

    static String of(ValidationPage page) {
        ValidationText text = new ValidationText();
        text.write(page);
        return text.lines.lines().stream()
                .map(line -> line.stripTrailing() + "\n")
                .collect(Collectors.joining());
    }

    private void write(ValidationPage page) {
        page.parts().forEach(this::part);
        if (!page.notYet().isEmpty()) {
            heading("Not yet");
            page.notYet().forEach(later -> item(later.what() + ". Comes with " + later.comesWith() + "."));
        }
        heading("Left out");
        page.leftOut().forEach(values -> item(values.what() + ": " + values.why() + "."));
        heading("Altogether");
        readings(page.charts());
        lines.gap();
        page.standings().stream()
                .filter(count -> count.number() > 0)
                .forEach(count -> counted(count.name() + ": " + count.meaning(), count.number()));
        lines.gap();
        page.figures().stream()
                .map(count -> count.meaning().isEmpty() ? count : named(count))
                .forEach(count -> counted(count.name(), count.number()));
        lines.gap();
        lines.paragraph(page.answer(), 0);
    }

    private static Count named(Count count) {
        return new Count(count.name() + ": " + count.meaning(), count.number(), "");
    }

    private void part(Part part) {
        heading(part.title());
        lines.paragraph(part.about(), 0);
        if (!part.rules().isEmpty()) {
            lines.paragraph("Rules of the model: " + String.join(", ", part.rules()) + ".", 0);
        }
        lines.gap();
        part.rows().forEach(this::row);
        lines.gap();
        List<Reference> sources = part.sources();
        for (int i = 0; i < sources.size(); i++) {
            lines.row(
                    "  [" + (i + 1) + "]",
                    sources.get(i).text() + ". " + sources.get(i).standing().word() + ".",
                    INDENT);
        }
        readings(part.charts());
    }

    private void row(Row row) {
        lines.row("  " + row.id(), row.what(), INDENT + 2);
        String verdict = row.passed() ? "" : "DOES NOT AGREE: ";
        item(verdict + "expected " + row.expected() + ", got " + row.got() + "; off " + row.error() + ", allowed "
                + row.tolerance() + " (" + row.rule() + ") [" + row.source() + "]");
    }

    private void readings(List<Chart> charts) {
        for (Chart chart : charts) {
            lines.gap();
            lines.paragraph(chart.title() + ". " + chart.reading(), 0);
        }
    }

    private void heading(String title) {
        lines.gap();
        lines.line(title.toUpperCase(Locale.ROOT));
    }

    private void counted(String name, int number) {
        String digits = Integer.toString(number);
        lines.row(" ".repeat(Math.max(0, INDENT - digits.length())) + digits, name, INDENT + 2);
    }

    private void item(String text) {
        lines.row("", text, INDENT + 2);
    }
}
