package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import runthrough.chart.Chart;

/**
 * The answer of a study: in plain language first, the numbers after it. Terminal, pages, JSON and the CSV files are all made
 * from this by writers that know no study ({@code report.write}), so that they never say different things.
 *
 * @param question what was asked, and of what
 * @param headline the answer in a word and a sentence
 * @param advice limits of the answer, and what else must be known, a paragraph each
 * @param figures the numbers that matter most
 * @param body everything else that pages show
 * @param members of JSON that are the study's own; made when a writer asks for them
 * @param warnings in words, in order
 * @param provenance what to state so that the result can be made again
 */
public record Answer(
        Question question,
        Headline headline,
        List<String> advice,
        List<Figure> figures,
        Body body,
        Supplier<JsonFields> members,
        List<String> warnings,
        Provenance provenance) {
    public Answer {
        advice = List.copyOf(advice);
        figures = List.copyOf(figures);
        warnings = List.copyOf(warnings);
    }

    /**
     * What was asked.
     *
     * @param format of the answer for machines; it names the study
     * @param subject what was asked about
     * @param text the question
     * @param basis what the answer was computed from
     * @param random whether anything is random; if not, numbers are exact and have no intervals
     */
    public record Question(AnswerFormat format, Subject subject, String text, String basis, boolean random) {}

    /**
     * What pages show beside words and figures.
     *
     * @param charts in order
     * @param tables results in full; those with a name of a file are CSV files, too
     * @param chapters what follows: how it was computed
     * @param files further files by name
     */
    public record Body(List<Chart> charts, List<Table> tables, List<Chapter> chapters, Map<String, String> files) {
        public Body {
            charts = List.copyOf(charts);
            tables = List.copyOf(tables);
            chapters = List.copyOf(chapters);
            files = Map.copyOf(files);
        }

        /** Charts, tables and how it was computed, a paragraph each. */
        public Body(List<Chart> charts, List<Table> tables, List<String> account) {
            this(charts, tables, List.of(Chapter.of("account", "How it was computed", account)), Map.of());
        }
    }

    /** Name of the command. */
    public String study() {
        return question.format().study();
    }

    /** The tables that are shown straight after the headline. */
    public List<Table> firstTables() {
        return shownOn(Table.Seen.FIRST);
    }

    /** The tables that pages show further on. */
    public List<Table> shownTables() {
        return shownOn(Table.Seen.PAGE);
    }

    /** The tables that are shown on {@code where}. */
    public List<Table> shownOn(Table.Seen where) {
        return body.tables().stream().filter(table -> table.isShownOn(where)).toList();
    }

    /** Every table, those in chapters as well. */
    public List<Table> tables() {
        Stream<Table> inChapters = body.chapters().stream()
                .flatMap(chapter -> chapter.blocks().stream())
                .filter(Chapter.Grid.class::isInstance)
                .map(block -> ((Chapter.Grid) block).table());
        return Stream.concat(body.tables().stream(), inChapters).toList();
    }

    /** The chapter of this name. */
    public Chapter chapter(String id) {
        return body.chapters().stream()
                .filter(chapter -> chapter.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** What the reader should know of the question: the user's notes, and what was changed. */
    public List<String> notes() {
        return Stream.concat(question.subject().notes().stream(), provenance.changed().stream())
                .toList();
    }

    /** What the table of provenance says. */
    public List<Figure> origins() {
        List<Figure> rows = new ArrayList<>();
        provenance.date().ifPresent(date -> rows.add(Figure.of("Date", Cell.of(date))));
        rows.add(Figure.of("Program", Cell.of(provenance.program())));
        provenance
                .fingerprint()
                .ifPresent(digits -> rows.add(
                        Figure.of("SHA-256 of the " + question.subject().origin(), Cell.of(digits))));
        rows.add(Figure.of("Seed", Cell.of(Long.toString(question.subject().seed()))));
        return rows;
    }

    /** How it was computed, a paragraph each. */
    public List<String> account() {
        return body.chapters().stream()
                .filter(chapter -> chapter.id().equals("account"))
                .flatMap(chapter -> chapter.blocks().stream())
                .filter(Chapter.Paragraph.class::isInstance)
                .map(block -> ((Chapter.Paragraph) block).text())
                .toList();
    }
}
