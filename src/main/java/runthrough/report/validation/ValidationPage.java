package runthrough.report.validation;

import java.util.List;
import runthrough.chart.Chart;

/**
 * All that the page and the terminal lay out; every number is text already.
 *
 * @param passed whether all checks agree
 * @param answer that in a sentence
 * @param figures the counts: a name and a number each
 * @param standings how many checks rest on sources of each standing, and what the standing means
 * @param charts of all checks together
 * @param parts one for each topic, in order
 * @param notYet what is not checked yet, and why
 * @param leftOut what is not checked at all, and why
 */
public record ValidationPage(
        boolean passed,
        String answer,
        List<Count> figures,
        List<Count> standings,
        List<Chart> charts,
        List<Part> parts,
        List<NotYet> notYet,
        List<LeftOut> leftOut) {

    public ValidationPage {
        figures = List.copyOf(figures);
        standings = List.copyOf(standings);
        charts = List.copyOf(charts);
        parts = List.copyOf(parts);
        notYet = List.copyOf(notYet);
        leftOut = List.copyOf(leftOut);
    }

    /** A number with its name and, or empty, what it means. */
    public record Count(String name, int number, String meaning) {}

    /**
     * The checks of one topic.
     *
     * @param anchor name of the part within the page
     * @param rules of the specification that the checks concern
     * @param sources that the rows refer to by their place, counted from 1
     */
    public record Part(
            String anchor,
            String title,
            String about,
            List<String> rules,
            List<Row> rows,
            List<Reference> sources,
            List<Chart> charts) {

        public Part {
            rules = List.copyOf(rules);
            rows = List.copyOf(rows);
            sources = List.copyOf(sources);
            charts = List.copyOf(charts);
        }

        /** How many of the rows agree. */
        public long passed() {
            return rows.stream().filter(Row::passed).count();
        }
    }

    /**
     * One check.
     *
     * @param expected the outside value, with its unit
     * @param got the program's value, with its unit
     * @param error how far they are apart
     * @param tolerance how far they may be
     * @param rule why so far
     * @param source place of its source among those of the part, from 1
     * @param standing of that source
     */
    public record Row(
            String id,
            String what,
            String expected,
            String got,
            String error,
            String tolerance,
            String rule,
            int source,
            Standing standing,
            boolean passed) {}
}
