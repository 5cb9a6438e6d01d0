package runthrough.cli;

/** A line of the answer: what it is about, in a column, and what there is to say. */
final class Row {
    private Row() {}

    static String of(String label, String text) {
        return String.format("  %-11s  %s", label, text);
    }
}
