package runthrough.report;

import java.util.Optional;
import runthrough.quantity.Notation;

/**
 * A column of a table.
 *
 * @param heading without a unit; may be empty
 * @param holds what its cells are
 * @param notation the unit that all its numbers have, which then stands in the heading; empty where each cell has its own
 * @param place who gets to see it
 */
public record Column(String heading, Holds holds, Optional<Notation> notation, Place place) {

    /** What the cells of a column are. */
    public enum Holds {
        WORDS,
        NUMBERS,
        /** Intervals: two columns in a file. */
        ENDS
    }

    /** Who gets to see a column. */
    public enum Place {
        EVERYWHERE,
        /** Pages and terminals, not files of values. */
        PAGE,
        /** Files of values only. */
        FILE
    }

    /** A column of words. */
    public static Column words(String heading) {
        return new Column(heading, Holds.WORDS, Optional.empty(), Place.EVERYWHERE);
    }

    /** A column of numbers, each with its own unit. */
    public static Column numbers(String heading) {
        return new Column(heading, Holds.NUMBERS, Optional.empty(), Place.EVERYWHERE);
    }

    /** The heading as people read it. */
    public String title() {
        String symbol = notation.map(Notation::isClock).orElse(false)
                ? "min:s"
                : notation.map(Notation::symbol).orElse("");
        return symbol.isEmpty() ? heading : heading.isEmpty() ? symbol : heading + ", " + symbol;
    }
}
