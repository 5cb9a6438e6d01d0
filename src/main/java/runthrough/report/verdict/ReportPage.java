package runthrough.report.verdict;

import java.util.List;
import runthrough.chart.Chart;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Table;

/**
 * All that the template lays out; every number is text already, in the user's units.
 *
 * @param title of the scenario
 * @param notes of the user
 * @param date as given, or empty
 * @param headline the verdict
 * @param figures the numbers that matter most
 * @param messages what binds and what to change
 * @param charts in order
 * @param hand the hand calculation
 * @param results tables of results
 * @param inputs tables of what was described
 * @param warnings in words
 * @param method what depends on the line in how it was computed
 * @param provenance name and value of what makes the result repeatable
 */
public record ReportPage(
        String title,
        List<String> notes,
        String date,
        Headline headline,
        List<Figure> figures,
        Messages messages,
        List<Chart> charts,
        Hand hand,
        List<Table> results,
        List<Table> inputs,
        List<String> warnings,
        Method method,
        List<Figure> provenance) {

    public ReportPage {
        notes = List.copyOf(notes);
        figures = List.copyOf(figures);
        charts = List.copyOf(charts);
        results = List.copyOf(results);
        inputs = List.copyOf(inputs);
        warnings = List.copyOf(warnings);
        provenance = List.copyOf(provenance);
    }

    /** What binds, what is to spare (or empty), and what would help. */
    public record Messages(String binds, String spare, List<String> changes) {}

    /**
     * The hand calculation.
     *
     * @param coil which coil it is for, or empty
     * @param limits what there is held against what is needed
     * @param givens what it starts from
     * @param steps line by line
     */
    public record Hand(String coil, Table limits, List<Given> givens, List<Step> steps) {}

    /** What a calculation starts from. */
    public record Given(List<Cell.Piece> symbol, String value, String name) {}

    /** A line of the calculation; the numbers are empty where there is nothing to put in. */
    public record Step(String name, List<Cell.Piece> formula, List<Cell.Piece> numbers, String result) {}

    /** What the account of the method says of this run. */
    public record Method(boolean stores, boolean rethread, boolean chance, boolean several, String basis) {}
}
