package runthrough.report;

import runthrough.quantity.Numbers;

/** Cells of a CSV file. */
final class CsvCells {
    private static final String STARTS_OF_FORMULAS = "=+-@\t\r\n";

    private CsvCells() {}

    /** A number in full, with a decimal point; nothing for what is not a number. */
    static String number(double value) {
        return Double.isFinite(value) ? Numbers.plain(value) : "";
    }

    /**
     * Text of the user. A spreadsheet takes a cell that begins like a formula for one and runs it; an apostrophe in front
     * makes it text.
     */
    static String text(String text) {
        return !text.isEmpty() && STARTS_OF_FORMULAS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
