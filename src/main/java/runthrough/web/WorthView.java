package runthrough.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.plant.handover.Handover;
import runthrough.report.Table;
import runthrough.report.Value;
import runthrough.report.document.Document;
import runthrough.report.document.DocumentChapter;
import runthrough.report.document.DocumentMaker;
import runthrough.report.verdict.RunThroughResult;
import runthrough.scenario.ScenarioReading;
import runthrough.study.StudyListener;
import runthrough.study.comparison.Comparison;
import runthrough.web.study.TableView;

/**
 * What coil changes cost in a year and what the alternatives of the file are worth, in the words and numbers of the document that
 * is handed over.
 *
 * @param cost of a year's stops and slowing, in words
 * @param best what the alternative worth most brings, in words; empty where none has a price
 * @param figures of that alternative: gain of a year, net present value, payback, each with its name; none where none has a price
 * @param tables of the alternatives beside each other
 * @param notes in words: what was not run, and how it was calculated
 */
record WorthView(String cost, String best, List<List<String>> figures, List<TableView> tables, List<String> notes) {
    private static final String PRESENT_VALUE = "Net present value";
    private static final String GAIN = "Gain of a year";
    private static final String PAYBACK = "Simple payback";

    WorthView {
        figures = List.copyOf(figures);
        tables = List.copyOf(tables);
        notes = List.copyOf(notes);
    }

    /** That of {@code draft}, whose verdict is {@code result}. */
    static WorthView of(PageScenario draft, RunThroughResult result, int threads, StudyListener listener) {
        ScenarioReading.Accepted written =
                (ScenarioReading.Accepted) draft.file().with(List.of());
        PageAlternatives alternatives = PageAlternatives.of(draft);
        Handover handover = written.handover();
        String cost =
                String.join(" ", document(result, handover, Optional.empty()).worth());
        Optional<Comparison> comparison =
                alternatives.study(draft.asked().run().target()).map(study -> study.run(threads, listener));
        List<String> notes = new ArrayList<>(alternatives.notRun().stream()
                .map(one -> "\"" + one.name() + "\" cannot be run: " + one.why() + ".")
                .toList());
        if (comparison.isEmpty()) {
            notes.add(PageAlternatives.NONE);
            return new WorthView(cost, "", List.of(), List.of(), notes);
        }
        Document document = document(result, handover, comparison);
        DocumentChapter worth = chapter(document, "worth");
        notes.addAll(worth.remarks());
        List<TableView> tables = new ArrayList<>(
                worth.tables().stream().skip(1).map(TableView::of).toList());
        tables.add(TableView.of(chapter(document, "alternatives").tables().get(0)));
        Optional<String> best = best(worth);
        return new WorthView(
                cost,
                best.map(name -> document.worth().get(0)).orElse(""),
                best.flatMap(name -> handover.money().map(money -> figures(worth, name, money.currency())))
                        .orElse(List.of()),
                tables,
                notes);
    }

    private static Document document(RunThroughResult result, Handover handover, Optional<Comparison> comparison) {
        return DocumentMaker.of(result, handover, List.of(), comparison, Optional.empty());
    }

    private static DocumentChapter chapter(Document document, String id) {
        return document.chapters().stream()
                .filter(chapter -> chapter.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The alternative worth most; empty where none has a price. */
    private static Optional<String> best(DocumentChapter worth) {
        return worth.tables().stream()
                .filter(table -> column(table, PRESENT_VALUE).isPresent())
                .findFirst()
                .flatMap(table -> table.rows().stream()
                        .max(Comparator.comparingDouble(
                                row -> row.get(column(table, PRESENT_VALUE).orElseThrow())
                                        .value()
                                        .map(Value::si)
                                        .orElse(Double.NEGATIVE_INFINITY)))
                        .map(row -> row.get(0).text()));
    }

    /** Its gain of a year, value and payback, each with its heading; in the currency of the file. */
    private static List<List<String>> figures(DocumentChapter worth, String name, String currency) {
        List<List<String>> figures = new ArrayList<>(List.of(List.of("Worth most", "\"" + name + "\"")));
        for (String heading : List.of(GAIN, PRESENT_VALUE, PAYBACK)) {
            for (Table table : worth.tables()) {
                column(table, heading)
                        .flatMap(at -> table.rows().stream()
                                .filter(row -> row.get(0).text().equals(name))
                                .findFirst()
                                .map(row -> row.get(at)))
                        .ifPresent(cell -> figures.add(List.of(
                                heading, heading.equals(PAYBACK) ? cell.text() : cell.text() + " " + currency)));
            }
        }
        return figures;
    }

    private static Optional<Integer> column(Table table, String name) {
        return IntStream.range(0, table.columns().size())
                .filter(i -> table.columns().get(i).title().startsWith(name))
                .boxed()
                .findFirst();
    }
}
