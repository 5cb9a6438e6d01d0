package runthrough.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.chart.Chart;
import runthrough.report.Answer;
import runthrough.report.Figure;
import runthrough.report.Table;

/**
 * All that the document says. Tables hold values; sentences have their numbers as text, in the user's units.
 *
 * @param title of the scenario
 * @param cover what stands under the title: date, number, by whom and for whom, as far as given
 * @param running what stands on every page
 * @param report verdict, messages, charts, hand calculation, results
 * @param causes what misses the target comes from, for the page to decide on; none where there is none
 * @param figures the numbers of the page to decide on
 * @param summary the picture of the whole answer
 * @param slide the same for a slide, with its headline
 * @param worth what the change is worth, a sentence each
 * @param line the line in words and drawn
 * @param chapters those that are laid out alike, in order
 * @param inputs what was given, with where it came from
 * @param glossary word and meaning
 */
public record Document(
        String title,
        List<Figure> cover,
        Running running,
        Answer report,
        Optional<Table> causes,
        List<Figure> figures,
        Chart summary,
        Chart slide,
        List<String> worth,
        DocumentChapter line,
        List<DocumentChapter> chapters,
        DocumentChapter inputs,
        List<Figure> glossary) {

    public Document {
        cover = List.copyOf(cover);
        figures = List.copyOf(figures);
        worth = List.copyOf(worth);
        chapters = List.copyOf(chapters);
        glossary = List.copyOf(glossary);
    }

    /** What stands at the top and at the foot of every page; the date may be empty. */
    public record Running(String title, String date, String foot) {}

    /** A line of the contents. */
    public record Entry(String id, String title) {}

    /** The chapters in their order. */
    public List<Entry> contents() {
        List<Entry> entries = new ArrayList<>(List.of(
                new Entry("line", "The line"),
                new Entry("method", "How it was computed"),
                new Entry("hand", "Hand calculation"),
                new Entry("results", "Results")));
        chapters.stream()
                .map(chapter -> new Entry(chapter.id(), chapter.title()))
                .forEach(entries::add);
        entries.add(new Entry("cautions", "What it does not cover"));
        entries.add(new Entry("inputs", "What was given, and where it came from"));
        entries.add(new Entry("glossary", "Glossary"));
        entries.add(new Entry("provenance", "How to repeat it"));
        return List.copyOf(entries);
    }

    /** The number under which {@code chart} stands in it, from 1. */
    public int number(Chart chart) {
        return drawings().toList().indexOf(chart);
    }

    /** Every drawing in it, the summary first. */
    Stream<Chart> drawings() {
        return Stream.of(
                        Stream.of(summary),
                        line.charts().stream(),
                        report.body().charts().stream(),
                        chapters.stream().flatMap(chapter -> chapter.charts().stream()))
                .flatMap(charts -> charts);
    }
}
