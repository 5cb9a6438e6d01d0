package runthrough.web.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import runthrough.chart.Chart;
import runthrough.report.Answer;
import runthrough.report.Chapter;
import runthrough.report.Table;

/**
 * The answer of a study as the page shows it: the words, numbers, charts and tables of its report.
 *
 * @param question what was asked
 * @param sign whose shape shows the verdict without colour
 * @param style name of its style
 * @param headline the answer in a word and a sentence
 * @param words what else must be known, a paragraph each
 * @param figures name, value and what qualifies it
 * @param tables those straight after the headline first
 * @param account how it was computed
 */
public record StudyView(
        String question,
        String sign,
        String style,
        String headline,
        List<String> words,
        List<String> warnings,
        List<List<String>> figures,
        List<ChartView> charts,
        List<TableView> tables,
        List<PartView> account) {

    public StudyView {
        words = List.copyOf(words);
        warnings = List.copyOf(warnings);
        figures = List.copyOf(figures);
        charts = List.copyOf(charts);
        tables = List.copyOf(tables);
        account = List.copyOf(account);
    }

    /** A chart, and in words what it shows. */
    public record ChartView(String svg, String reading, String alternative) {
        static ChartView of(Chart chart) {
            return new ChartView(chart.svg(), chart.reading(), chart.alternative());
        }
    }

    /** A chapter: its heading, what it says, a text whose lines are kept, and its charts and tables. */
    public record PartView(
            String title, List<String> paragraphs, List<String> kept, List<ChartView> charts, List<TableView> tables) {

        static PartView of(Chapter chapter) {
            List<String> paragraphs = new ArrayList<>();
            List<String> kept = new ArrayList<>();
            List<ChartView> charts = new ArrayList<>();
            List<TableView> tables = new ArrayList<>();
            for (Chapter.Block block : chapter.blocks()) {
                if (block instanceof Chapter.Paragraph paragraph) {
                    paragraphs.add(paragraph.text());
                } else if (block instanceof Chapter.Heading heading) {
                    paragraphs.add(heading.text());
                } else if (block instanceof Chapter.Points points) {
                    paragraphs.addAll(points.points());
                } else if (block instanceof Chapter.Kept lines) {
                    kept.add(lines.text());
                } else if (block instanceof Chapter.Grid grid) {
                    tables.add(TableView.of(grid.table()));
                } else if (block instanceof Chapter.Drawing drawing) {
                    charts.add(ChartView.of(drawing.chart()));
                }
            }
            return new PartView(chapter.title(), paragraphs, kept, charts, tables);
        }
    }

    /** {@code answer} as it is shown. */
    public static StudyView of(Answer answer) {
        String further = answer.headline().further();
        return new StudyView(
                answer.question().text(),
                answer.headline().tone().sign(),
                answer.headline().tone().style(),
                answer.headline().text(),
                Stream.concat(further.isEmpty() ? Stream.of() : Stream.of(further), answer.advice().stream())
                        .toList(),
                answer.warnings(),
                answer.figures().stream()
                        .map(figure -> List.of(figure.name(), figure.value().text(), figure.note()))
                        .toList(),
                answer.body().charts().stream().map(ChartView::of).toList(),
                Stream.of(Table.Seen.FIRST, Table.Seen.PAGE)
                        .flatMap(where -> answer.shownOn(where).stream())
                        .map(TableView::of)
                        .toList(),
                answer.body().chapters().stream().map(PartView::of).toList());
    }
}
