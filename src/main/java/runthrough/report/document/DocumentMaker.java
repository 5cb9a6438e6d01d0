package runthrough.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.chart.document.DocumentCharts;
import runthrough.chart.document.SummaryData;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Handover;
import runthrough.report.Answer;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.report.Provenance;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.comparison.ComparisonAnswer;
import runthrough.report.verdict.MainCauses;
import runthrough.report.verdict.RunThroughResult;
import runthrough.report.verdict.VerdictAnswer;
import runthrough.study.benefit.Benefit;
import runthrough.study.comparison.Comparison;

/** Puts everything that is known of a line into the document. */
public final class DocumentMaker {
    private static final int LONGEST_RUNNING_TITLE = 70;
    private static final int FINGERPRINT_DIGITS = 12;

    private final RunThroughResult result;
    private final SimulationRequest request;
    private final Texts texts;
    private final Answer report;
    private final Handover handover;
    private final List<GivenValue> given;
    private final Optional<Comparison> comparison;
    private final Optional<Answer> sensitivity;
    private final Year year;

    private DocumentMaker(
            RunThroughResult result,
            Handover handover,
            List<GivenValue> given,
            Optional<Comparison> comparison,
            Optional<Answer> sensitivity,
            String name) {
        this.result = result;
        this.handover = handover;
        this.given = given;
        this.comparison = comparison;
        this.sensitivity = sensitivity;
        this.request = result.study().request();
        this.texts = new Texts(request.resultsIn(), result.study().verdict().chance());
        this.report = VerdictAnswer.of(result);
        this.year = new Year(
                name,
                result.study().verdict(),
                request.run().yearlyTime(),
                comparison.map(all -> Benefit.of(all, handover.money())).orElse(List.of()),
                handover.money(),
                texts);
    }

    /**
     * The document on {@code result}.
     *
     * @param handover what the scenario says for it
     * @param given every value of the scenario
     * @param comparison of alternatives, where there are any
     * @param sensitivity of the answer, where that was asked
     * @param name of the line among its alternatives
     */
    public static Document of(
            RunThroughResult result,
            Handover handover,
            List<GivenValue> given,
            Optional<Comparison> comparison,
            Optional<Answer> sensitivity,
            String name) {
        return new DocumentMaker(result, handover, given, comparison, sensitivity, name).document();
    }

    private Document document() {
        Decision decision = new Decision(request, report, comparison, year);
        SummaryData summary = decision.picture();
        List<String> parts = LineWords.of(request, result.handCalculation());
        return new Document(
                request.title(),
                cover(),
                running(request.title()),
                report,
                MainCauses.of(result),
                decision.figures(),
                DocumentCharts.summary(summary),
                DocumentCharts.slide(summary),
                new WorthWords(year).sentences(),
                new DocumentChapter(
                        "line", "The line", parts, List.of(DocumentCharts.line(request, parts)), List.of(), List.of()),
                chapters(),
                inputs(),
                Glossary.TERMS);
    }

    private List<DocumentChapter> chapters() {
        List<DocumentChapter> chapters = new ArrayList<>();
        comparison.ifPresent(all -> chapters.add(alternatives(all)));
        chapters.add(new BenefitChapter(year).chapter());
        sensitivity.map(answer -> chapter("sensitivity", "Sensitivity", answer)).ifPresent(chapters::add);
        chapters.add(EquipmentChapter.of(request, result.handCalculation(), handover.drive()));
        return chapters;
    }

    private DocumentChapter alternatives(Comparison all) {
        return chapter(
                "alternatives", "Alternatives", ComparisonAnswer.of(all, request, List.of(), result.provenance()));
    }

    /** The answer of a study as a part of the document. */
    private static DocumentChapter chapter(String id, String title, Answer answer) {
        List<String> lead = new ArrayList<>(List.of(answer.headline().alone()));
        lead.addAll(answer.advice());
        return new DocumentChapter(id, title, lead, answer.body().charts(), answer.shownTables(), answer.account());
    }

    private List<Figure> cover() {
        List<Figure> rows = new ArrayList<>();
        result.provenance().date().ifPresent(date -> rows.add(Figure.of("Date", Cell.of(date))));
        handover.cover().number().ifPresent(number -> rows.add(Figure.of("Number", Cell.of(number))));
        handover.cover().preparedFor().ifPresent(name -> rows.add(Figure.of("Prepared for", Cell.of(name))));
        handover.cover().preparedBy().ifPresent(name -> rows.add(Figure.of("Prepared by", Cell.of(name))));
        return rows;
    }

    private DocumentChapter inputs() {
        List<Table> tables = new ArrayList<>(report.question().subject().described());
        if (!given.isEmpty()) {
            tables.add(TableMaker.<GivenValue>of("Every number by its place in the scenario, and where it came from")
                    .words("Place in the scenario", GivenValue::path)
                    .words("Value as given", GivenValue::value)
                    .words("Where it came from", GivenValue::from)
                    .of(given));
        }
        return new DocumentChapter(
                "inputs",
                "",
                List.of("Values are shown as they are used; the last table has them as they were written."),
                List.of(),
                tables,
                List.of());
    }

    private Document.Running running(String title) {
        Provenance provenance = result.provenance();
        String shown = title.codePointCount(0, title.length()) <= LONGEST_RUNNING_TITLE
                ? title
                : title.substring(0, title.offsetByCodePoints(0, LONGEST_RUNNING_TITLE)) + " ...";
        String from = provenance
                .fingerprint()
                .map(digits -> ", scenario " + digits.substring(0, FINGERPRINT_DIGITS))
                .orElse("");
        return new Document.Running(
                shown,
                provenance.date().orElse(""),
                provenance.program() + ", seed " + request.run().seed() + from);
    }
}
