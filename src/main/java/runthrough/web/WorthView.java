package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Alternative;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Handover;
import runthrough.report.document.BestWorth;
import runthrough.report.document.ChangeWorth;
import runthrough.report.document.Document;
import runthrough.report.document.DocumentChapter;
import runthrough.report.document.DocumentMaker;
import runthrough.report.verdict.RunThroughResult;
import runthrough.scenario.ScenarioReading;
import runthrough.study.StudyListener;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonStudy;
import runthrough.web.study.TableView;

/**
 * What coil changes cost in a year and what the alternatives of the file are worth, in the words and numbers of the document that
 * is handed over.
 *
 * @param change what the line brings against the line as it was opened, in words; empty where nothing was changed
 * @param gain of a year that the change brings, in money; empty where nothing was changed, or no values in money were given
 * @param cost of a year's stops and slowing, in words
 * @param best what the alternative worth most brings, in words; empty where none has a price
 * @param today what the alternatives are compared with
 * @param figures of that alternative: gain of a year, net present value, payback, each with its name; none where none has a price
 * @param tables of the alternatives beside each other
 * @param notes in words: what was not run, and how it was calculated
 */
record WorthView(
        String change,
        String gain,
        String cost,
        String best,
        String today,
        List<List<String>> figures,
        List<TableView> tables,
        List<String> notes) {
    WorthView {
        figures = List.copyOf(figures);
        tables = List.copyOf(tables);
        notes = List.copyOf(notes);
    }

    /**
     * That of {@code draft}, whose verdict is {@code result}.
     *
     * @param opened the line as it was opened, where it was another
     */
    static WorthView of(
            PageScenario draft,
            Optional<SimulationRequest> opened,
            RunThroughResult result,
            int threads,
            StudyListener listener) {
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
        Optional<ChangeWorth> change = opened.map(before -> ChangeWorth.of(
                changed(before, result.study().request()).run(threads, listener), handover.money(), result.texts()));
        String said = change.map(ChangeWorth::sentence).orElse("");
        String gain = change.flatMap(ChangeWorth::gain).orElse("");
        if (comparison.isEmpty()) {
            notes.addAll(alternatives.faults().isEmpty() ? List.of(PageAlternatives.NONE) : alternatives.faults());
            return new WorthView(said, gain, cost, "", alternatives.today(), List.of(), List.of(), notes);
        }
        Document document = document(result, handover, comparison);
        DocumentChapter worth = chapter(document, "worth");
        notes.addAll(worth.remarks());
        List<TableView> tables = new ArrayList<>(
                worth.tables().stream().skip(1).map(TableView::of).toList());
        tables.add(TableView.of(chapter(document, "alternatives").tables().get(0)));
        Optional<BestWorth> best = handover.money().flatMap(money -> BestWorth.of(comparison.get(), money));
        return new WorthView(
                said,
                gain,
                cost,
                best.map(any -> document.worth().get(0)).orElse(""),
                alternatives.today(),
                best.map(WorthView::figures).orElse(List.of()),
                tables,
                notes);
    }

    /** The line as it was opened and as it is now, both run alike. */
    private static ComparisonStudy changed(SimulationRequest before, SimulationRequest now) {
        return new ComparisonStudy(
                new Alternative("as it was opened", before.with(now.run()).with(now.resultsIn())),
                List.of(new Alternative("as it is now", now)),
                List.of(),
                now.run().target());
    }

    private static List<List<String>> figures(BestWorth best) {
        return best.figures().stream()
                .map(figure -> List.of(figure.name(), figure.value().text()))
                .toList();
    }

    private static Document document(RunThroughResult result, Handover handover, Optional<Comparison> comparison) {
        return DocumentMaker.of(result, handover, List.of(), comparison, Optional.empty(), Alternative.AS_WRITTEN);
    }

    private static DocumentChapter chapter(Document document, String id) {
        return document.chapters().stream()
                .filter(chapter -> chapter.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
