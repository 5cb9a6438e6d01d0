package runthrough.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.chart.DocumentCharts;
import runthrough.chart.SummaryData;
import runthrough.plant.Brief;
import runthrough.plant.Line;
import runthrough.plant.handover.Drive;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Units;
import runthrough.report.PageMaker;
import runthrough.report.Provenance;
import runthrough.report.ReportPage;
import runthrough.report.RunThroughResult;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** Puts everything that is known of a line into the document. */
public final class DocumentMaker {
    private static final int LONGEST_RUNNING_TITLE = 70;
    private static final int FINGERPRINT_DIGITS = 12;

    private final RunThroughResult result;
    private final Brief brief;
    private final Units units;
    private final ReportPage report;

    private DocumentMaker(RunThroughResult result) {
        this.result = result;
        this.brief = result.study().brief();
        this.units = Units.of(brief.resultsIn());
        this.report = PageMaker.page(result);
    }

    /** The document on {@code result}. */
    public static Document of(RunThroughResult result) {
        return new DocumentMaker(result).document();
    }

    private Document document() {
        SummaryData summary = summary();
        List<String> parts = LineWords.of(brief, result.handCalculation());
        return new Document(
                report.title(),
                List.of(),
                running(report.title()),
                report,
                DocumentCharts.summary(summary),
                DocumentCharts.slide(summary),
                List.of(),
                new Chapter(
                        "line", "The line", parts, List.of(DocumentCharts.line(brief, parts)), List.of(), List.of()),
                List.of(EquipmentChapter.of(brief, result.handCalculation(), Drive.UNKNOWN)),
                new Chapter("inputs", "", List.of(), List.of(), report.inputs(), List.of()),
                Glossary.TERMS);
    }

    private SummaryData summary() {
        Verdict verdict = result.study().verdict();
        return new SummaryData(
                report.title(),
                report.mark().sign(),
                report.mark().word(),
                report.mark().sentence(),
                verdict.target(),
                brief.resultsIn(),
                List.of(share("as it is", true, verdict.shareRunThrough(), verdict.chance())),
                verdict.storage().map(storage -> strip(storage, verdict)));
    }

    private SummaryData.Share share(String name, boolean today, Estimate share, boolean chance) {
        Optional<Interval> interval = share.interval().filter(any -> chance);
        return new SummaryData.Share(
                name,
                today,
                share.mean(),
                interval.map(Interval::low).orElse(share.mean()),
                Math.min(1, interval.map(Interval::high).orElse(share.mean())),
                percent(share.mean()));
    }

    /** What a change takes on average, and at the target, where the process is kept at its rated speed. */
    private SummaryData.Strip strip(Verdict.Storage storage, Verdict verdict) {
        Line line = brief.line();
        double usable = line.accumulator().capacity() - line.stopLevel(line.fastestRatedSpeed());
        List<SummaryData.Mark> marks = new ArrayList<>();
        double mean = storage.stripDrawn().mean().mean();
        marks.add(mark(mean, verdict.chance() ? " on average" : " every time"));
        double needed = verdict.spare().map(spare -> usable - spare.metres()).orElse(mean);
        if (verdict.chance()) {
            marks.add(mark(needed, " for the target of " + units.text(Kind.SHARE, verdict.target())));
        }
        return new SummaryData.Strip(
                usable, "a full accumulator gives " + length(usable), Math.max(mean, needed), marks);
    }

    private SummaryData.Mark mark(double metres, String what) {
        return new SummaryData.Mark(metres, length(metres) + what);
    }

    /** Near 1 the digits that matter are those of what is missing. */
    private String percent(double share) {
        return share > 0.9 ? units.text(Kind.SHARE, share) : Numbers.text(100 * share, 3) + " %";
    }

    private String length(double metres) {
        return Numbers.text(units.value(Kind.LENGTH, metres), 3) + " " + units.label(Kind.LENGTH);
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
                provenance.program() + ", seed " + brief.run().seed() + from);
    }
}
