package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import runthrough.chart.Chart;
import runthrough.plant.SimulationRequest;

/**
 * The answer of a study other than the plain verdict, ready to be told: in plain language first, the numbers after it. The
 * terminal, the page, JSON and the CSV files are all made from this, so that they never say different things.
 *
 * @param request what was asked
 * @param study name of the command and of its JSON format, such as {@code size}
 * @param question that is answered
 * @param mark the answer in a word and a sentence
 * @param advice what else must be known, a paragraph each
 * @param figures the numbers that matter most
 * @param basis what it was computed from
 * @param charts in order
 * @param tables results in full
 * @param account how it was computed, a paragraph each
 * @param chance whether anything in the line is left to chance
 * @param document what JSON tells beside the words above
 * @param csv contents of the CSV files by name; the same names whatever the answer
 * @param warnings in words, in order
 * @param provenance what to state so that the result can be made again
 */
public record StudyAnswer(
        SimulationRequest request,
        String study,
        String question,
        ReportPage.Mark mark,
        List<String> advice,
        List<ReportPage.KeyFigure> figures,
        String basis,
        List<Chart> charts,
        List<Table> tables,
        List<String> account,
        boolean chance,
        JsonFields document,
        Map<String, String> csv,
        List<String> warnings,
        Provenance provenance) {

    public StudyAnswer {
        advice = List.copyOf(advice);
        figures = List.copyOf(figures);
        charts = List.copyOf(charts);
        tables = List.copyOf(tables);
        account = List.copyOf(account);
        csv = Map.copyOf(csv);
        warnings = List.copyOf(warnings);
    }

    /** What the table of provenance says. */
    public List<ReportPage.KeyFigure> origins() {
        List<ReportPage.KeyFigure> rows = new ArrayList<>();
        provenance.date().ifPresent(date -> rows.add(new ReportPage.KeyFigure("Date", date, "")));
        rows.add(new ReportPage.KeyFigure("Program", provenance.program(), ""));
        provenance
                .fingerprint()
                .ifPresent(digits -> rows.add(new ReportPage.KeyFigure("SHA-256 of the scenario file", digits, "")));
        rows.add(new ReportPage.KeyFigure("Seed", Long.toString(request.run().seed()), ""));
        return rows;
    }

    /** What the reader should know of the question: the notes of the scenario, and what was changed. */
    public List<String> notes() {
        return Stream.concat(request.notes().stream(), provenance.changed().stream())
                .toList();
    }

    /** The line as described. */
    public List<Table> inputs() {
        return InputTables.of(request);
    }
}
