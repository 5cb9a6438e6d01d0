package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.plant.handover.Handover;
import runthrough.report.document.BestWorth;
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
        Optional<BestWorth> best = handover.money().flatMap(money -> BestWorth.of(comparison.get(), money));
        return new WorthView(
                cost,
                best.map(any -> document.worth().get(0)).orElse(""),
                best.map(WorthView::figures).orElse(List.of()),
                tables,
                notes);
    }

    private static List<List<String>> figures(BestWorth best) {
        return best.figures().stream()
                .map(figure -> List.of(figure.name(), figure.value().text()))
                .toList();
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
}
