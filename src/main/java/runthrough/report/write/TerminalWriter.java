package runthrough.report.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.report.Answer;
import runthrough.report.Column;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Table;
import runthrough.report.TextLines;
import runthrough.report.Texts;

/**
 * An answer as text for a terminal of 80 columns, of up to 100 for tables with many: in plain words first. Warnings are shown
 * apart, before anything is run.
 */
public final class TerminalWriter {
    private static final int WIDEST_NAME = 32;
    private static final int GAP = 2;
    private static final int INDENT = 4;
    private static final int SHORT_NAME = 22;
    /** Where a row has two names. */
    private static final int SHORT_NAMES = 20;

    private static final String BETWEEN = "  ";

    /** Green, yellow and red; a neutral headline stays as it is, but bold. */
    private static final Map<Headline.Tone, String> CODES = Map.of(
            Headline.Tone.RUNS_THROUGH, "32",
            Headline.Tone.MARGINAL, "33",
            Headline.Tone.SLOWS, "33",
            Headline.Tone.STOPS, "31",
            Headline.Tone.NEUTRAL, "39");

    private final Answer answer;
    private final int column;
    private final TextLines lines = new TextLines();

    private TerminalWriter(Answer answer) {
        this.answer = answer;
        this.column = Math.min(
                WIDEST_NAME,
                GAP
                        + answer.figures().stream()
                                .mapToInt(figure -> figure.name().length())
                                .max()
                                .orElse(0));
    }

    /**
     * The whole text, each line ended by a line feed.
     *
     * @param colour whether the terminal shows colours; the words say it all without them
     */
    public static String render(Answer answer, boolean colour) {
        TerminalWriter writer = new TerminalWriter(answer);
        writer.words();
        answer.firstTables().forEach(table -> writer.table(table.page()));
        writer.figures();
        answer.shownOn(Table.Seen.TERMINAL).forEach(table -> writer.table(table.page()));
        String text = writer.lines.text();
        return colour ? coloured(text, answer.headline()) : text;
    }

    private void words() {
        lines.line(answer.question().subject().title());
        answer.provenance().changed().ifPresent(changed -> lines.paragraph(changed, 0));
        lines.paragraph(answer.headline().text(), 0);
        if (!answer.headline().further().isEmpty()) {
            lines.paragraph(answer.headline().further(), 0);
        }
        answer.advice().forEach(advice -> lines.paragraph(advice, 0));
    }

    private void figures() {
        lines.gap();
        answer.figures().forEach(figure -> lines.row(figure.name(), value(figure), column));
        int warnings = answer.warnings().size();
        lines.row(
                "from",
                answer.question().basis() + (warnings == 0 ? "" : "; " + Texts.count(warnings, "warning")),
                column);
    }

    private static String value(Figure figure) {
        String note = figure.note();
        return note.isEmpty() ? figure.value().text() : figure.value().text() + " (" + note + ")";
    }

    /**
     * Columns as wide as their widest cell; numbers stand at the right. Where that is too wide, long names take several lines; where
     * it is still too wide, each row is written below its name. A table without a caption goes on with the figures.
     */
    private void table(Table.Page table) {
        if (!table.caption().isEmpty()) {
            lines.gap();
            lines.line(table.caption());
        }
        List<String> head = table.head();
        List<List<String>> rows = table.rows();
        if (table.columns().size() == 2 && !table.hasNumbers()) {
            rows.forEach(row -> lines.row(row.get(0), row.get(1), column));
            return;
        }
        boolean endsInWords = table.columns().get(head.size() - 1).holds() == Column.Holds.WORDS;
        if (width(head, rows) > TextLines.WIDTH) {
            boolean isPair = !endsInWords && table.columns().get(1).holds() == Column.Holds.WORDS;
            int longest = isPair ? SHORT_NAMES : longest(besideName(head, rows), endsInWords);
            rows = rows.stream().flatMap(row -> broken(row, isPair, longest)).toList();
        }
        if (width(head, rows) > (endsInWords ? TextLines.WIDTH : TextLines.WIDEST)) {
            table.rows().forEach(row -> belowItsName(head, row));
            return;
        }
        int[] widths = widths(head, rows);
        lines.wideLine(row(table.columns(), head, widths));
        rows.forEach(row -> lines.wideLine(row(table.columns(), row, widths)));
    }

    private static int[] widths(List<String> head, List<List<String>> rows) {
        return IntStream.range(0, head.size())
                .map(column -> Math.max(
                        head.get(column).length(),
                        rows.stream()
                                .mapToInt(row -> row.get(column).length())
                                .max()
                                .orElse(0)))
                .toArray();
    }

    private static int width(List<String> head, List<List<String>> rows) {
        return IntStream.of(widths(head, rows)).sum() + BETWEEN.length() * (head.size() - 1);
    }

    /** As long as a name may be beside columns of so much, in a table of 80 columns where that can be. */
    private static int longest(int beside, boolean endsInWords) {
        int room = TextLines.WIDTH - beside;
        return room >= SHORT_NAME || endsInWords
                ? Math.max(SHORT_NAME, room)
                : Math.max(SHORT_NAME, TextLines.WIDEST - beside);
    }

    private static int besideName(List<String> head, List<List<String>> rows) {
        return width(head, rows) - widths(head, rows)[0];
    }

    /** The row in as many lines as its name takes, or the longer of its two names; its numbers stand on the first. */
    private static Stream<List<String>> broken(List<String> row, boolean isPair, int longest) {
        List<List<String>> names = row.stream()
                .limit(isPair ? 2 : 1)
                .map(name -> TextLines.broken(name, longest))
                .toList();
        int most = names.stream().mapToInt(List::size).max().orElse(1);
        return IntStream.range(0, most).mapToObj(line -> {
            List<String> cells = new ArrayList<>(line == 0 ? row : Collections.nCopies(row.size(), ""));
            for (int i = 0; i < names.size(); i++) {
                cells.set(i, line < names.get(i).size() ? names.get(i).get(line) : "");
            }
            return cells;
        });
    }

    private void belowItsName(List<String> head, List<String> row) {
        lines.line(row.get(0));
        lines.row(
                "",
                IntStream.range(1, row.size())
                        .filter(column -> !row.get(column).isEmpty())
                        .mapToObj(column -> (head.get(column) + " " + row.get(column)).strip())
                        .collect(Collectors.joining("; ")),
                INDENT);
    }

    private static String row(List<Column> columns, List<String> cells, int[] widths) {
        return IntStream.range(0, widths.length)
                .mapToObj(column -> {
                    String room = " ".repeat(widths[column] - cells.get(column).length());
                    return columns.get(column).holds() == Column.Holds.WORDS
                            ? cells.get(column) + room
                            : room + cells.get(column);
                })
                .collect(Collectors.joining(BETWEEN));
    }

    private static String coloured(String text, Headline headline) {
        int start = text.indexOf('\n') + 1;
        int end = start + headline.word().length();
        return text.substring(0, start) + "\u001b[1;" + CODES.getOrDefault(headline.tone(), "39") + "m"
                + text.substring(start, end) + "\u001b[0m" + text.substring(end);
    }
}
