package runthrough.report.write;

import java.util.List;
import java.util.Map;
import runthrough.report.Answer;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Table;
import runthrough.report.TextLines;
import runthrough.report.Texts;

/**
 * An answer as text for a terminal of 80 columns, in plain words first. Warnings are shown apart, before anything is run.
 */
public final class TerminalWriter {
    /** Before what an answer rests on. */
    private static final String BASIS = "from";

    private static final int WIDEST_NAME = 32;
    private static final int GAP = 2;

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
        this.column = answer.figures().stream()
                .mapToInt(figure -> Math.min(WIDEST_NAME, GAP + figure.name().length()))
                .reduce(GAP + BASIS.length(), Math::max);
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
                BASIS,
                answer.question().basis() + (warnings == 0 ? "" : "; " + Texts.count(warnings, "warning")),
                column);
    }

    private static String value(Figure figure) {
        String note = figure.note();
        return note.isEmpty() ? figure.value().text() : figure.value().text() + " (" + note + ")";
    }

    /** A table without a caption goes on with the figures. */
    private void table(Table.Page table) {
        if (!table.caption().isEmpty()) {
            lines.gap();
            lines.paragraph(table.caption(), 0);
        }
        if (table.columns().size() == 2 && !table.hasNumbers()) {
            int beside = table.caption().isEmpty() ? column : columnBeside(table.rows());
            table.rows().forEach(row -> lines.row(row.get(0), row.get(1), beside));
        } else {
            TerminalTable.write(table, lines);
        }
    }

    /** Where values begin: behind the longest name, as far as that leaves them room. */
    private static int columnBeside(List<List<String>> rows) {
        int name = GAP + longest(rows, 0);
        return Math.min(name, Math.max(WIDEST_NAME, TextLines.WIDTH - longest(rows, 1)));
    }

    private static int longest(List<List<String>> rows, int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }

    private static String coloured(String text, Headline headline) {
        int start = text.indexOf('\n') + 1;
        int end = start + headline.word().length();
        return text.substring(0, start) + "\u001b[1;" + CODES.getOrDefault(headline.tone(), "39") + "m"
                + text.substring(start, end) + "\u001b[0m" + text.substring(end);
    }
}
