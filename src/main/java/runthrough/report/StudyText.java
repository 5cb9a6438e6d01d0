package runthrough.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A study's answer as text for a terminal of 80 columns, of up to 100 for tables with many: in plain words first. Warnings are
 * told apart, before it is run.
 */
public final class StudyText {
    private static final int COLUMN = 32;
    private static final int INDENT = 4;
    private static final String BETWEEN = "  ";
    /** Green, yellow and red for the styles of a mark; a neutral one stays as it is, but bold. */
    private static final Map<String, String> CODES = Map.of("runs-through", "32", "marginal", "33", "stops", "31");

    private StudyText() {}

    /**
     * The whole text, each line ended by a line feed.
     *
     * @param colour whether the terminal shows colours; the words say it all without them
     */
    public static String render(StudyAnswer answer, boolean colour) {
        return render(
                new Told(
                        answer.request().title(),
                        answer.provenance().changed(),
                        answer.mark(),
                        answer.advice(),
                        answer.figures(),
                        answer.basis(),
                        answer.tables(),
                        TextLines.WIDEST),
                colour);
    }

    /** What is told, in this order; tables wider than {@code widest} columns are told row by row. */
    record Told(
            String title,
            Optional<String> changed,
            ReportPage.Mark mark,
            List<String> advice,
            List<ReportPage.KeyFigure> figures,
            String basis,
            List<Table> tables,
            int widest) {}

    static String render(Told answer, boolean colour) {
        TextLines lines = new TextLines();
        lines.line(answer.title());
        answer.changed().ifPresent(changed -> lines.paragraph(changed, 0));
        lines.paragraph(answer.mark().word() + ". " + answer.mark().sentence(), 0);
        answer.advice().forEach(advice -> lines.paragraph(advice, 0));
        lines.gap();
        answer.figures().forEach(figure -> lines.row(figure.name(), value(figure), COLUMN));
        lines.row("from", answer.basis(), COLUMN);
        answer.tables().forEach(table -> {
            lines.gap();
            table(lines, table, answer.widest());
        });
        String text =
                lines.lines().stream().map(line -> line.stripTrailing() + "\n").collect(Collectors.joining());
        return colour ? coloured(text, answer.mark()) : text;
    }

    private static String value(ReportPage.KeyFigure figure) {
        return figure.note().isEmpty() ? figure.value() : figure.value() + " (" + figure.note() + ")";
    }

    /**
     * Columns as wide as their widest cell; numbers stand at the right. Where that is too wide, each row is told
     * below its name.
     */
    private static void table(TextLines lines, Table table, int widest) {
        lines.line(table.caption());
        if (!table.numbers() && table.head().size() == 2) {
            table.rows().forEach(row -> lines.row(row.get(0), row.get(1), COLUMN));
            return;
        }
        int[] widths = IntStream.range(0, table.head().size())
                .map(column -> Math.max(
                        table.head().get(column).length(),
                        table.rows().stream()
                                .mapToInt(row -> row.get(column).length())
                                .max()
                                .orElse(0)))
                .toArray();
        if (IntStream.of(widths).sum() + BETWEEN.length() * (widths.length - 1) > widest) {
            table.rows().forEach(row -> told(lines, table.head(), row));
            return;
        }
        lines.wideLine(row(table.head(), widths, table.numbers()));
        table.rows().forEach(row -> lines.wideLine(row(row, widths, table.numbers())));
    }

    private static void told(TextLines lines, List<String> head, List<String> row) {
        lines.line(row.get(0));
        lines.row(
                "",
                IntStream.range(1, row.size())
                        .filter(column -> !row.get(column).isEmpty())
                        .mapToObj(column -> (head.get(column) + " " + row.get(column)).strip())
                        .collect(Collectors.joining("; ")),
                INDENT);
    }

    private static String row(List<String> cells, int[] widths, boolean numbers) {
        return IntStream.range(0, widths.length)
                .mapToObj(column -> padded(cells.get(column), widths[column], numbers && column > 0))
                .collect(Collectors.joining(BETWEEN));
    }

    private static String padded(String cell, int width, boolean atTheRight) {
        String room = " ".repeat(width - cell.length());
        return atTheRight ? room + cell : cell + room;
    }

    private static String coloured(String text, ReportPage.Mark mark) {
        String code = CODES.getOrDefault(mark.style(), "39");
        int start = text.indexOf('\n') + 1;
        int end = start + mark.word().length();
        return text.substring(0, start) + "\u001b[1;" + code + "m" + text.substring(start, end) + "\u001b[0m"
                + text.substring(end);
    }
}
