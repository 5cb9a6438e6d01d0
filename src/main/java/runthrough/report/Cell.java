package runthrough.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What stands in a place of a table or beside the name of a figure: words, a number, or a number with words. */
public sealed interface Cell {
    /** Nothing. */
    static Cell none() {
        return new Words("");
    }

    /** As people read it, with the unit. */
    String text();

    /** As people read it under a heading that names the unit. */
    default String bare() {
        return text();
    }

    /** The number in it, if there is one. */
    default Optional<Value> value() {
        return Optional.empty();
    }

    /** Words; text of the user as well. */
    record Words(String text) implements Cell {}

    /** A number. What stands in its place where there is none is {@code without}. */
    record Quantity(Value number, String without) implements Cell {
        @Override
        public String text() {
            return number.isThere() ? number.text() : without;
        }

        @Override
        public String bare() {
            return number.isThere() ? number.number() : without;
        }

        @Override
        public Optional<Value> value() {
            return Optional.of(number);
        }
    }

    /** By how much a number is more or less than another, with its sign. What stands in its place without one is {@code without}. */
    record Change(Value number, String without) implements Cell {
        @Override
        public String text() {
            return number.isThere() ? number.plus() + number.text() : without;
        }

        @Override
        public String bare() {
            return number.isThere() ? number.plus() + number.number() : without;
        }

        @Override
        public Optional<Value> value() {
            return Optional.of(number);
        }
    }

    /** A number that bounds what is not known more closely, such as "at least 90 m/min". */
    record Bound(String side, Value number) implements Cell {
        @Override
        public String text() {
            return side + " " + number.text();
        }

        @Override
        public String bare() {
            return side + " " + number.number();
        }

        @Override
        public Optional<Value> value() {
            return Optional.of(number);
        }
    }

    /**
     * A number and, in brackets, its interval: both in one place of a table. Lines break before the bracket alone.
     *
     * @param number whose interval may have an end that is infinite
     * @param without what stands where there is no number, or no end
     */
    record Known(Value number, String without) implements Cell {
        private static final String TO = "\u00a0to\u00a0";

        @Override
        public String text() {
            return with(number.text());
        }

        @Override
        public String bare() {
            return with(number.number());
        }

        @Override
        public Optional<Value> value() {
            return Optional.of(number);
        }

        private String with(String mean) {
            return (Double.isFinite(number.si()) ? mean : without)
                    + (number.interval().isPresent() ? " " : "")
                    + inBrackets();
        }

        private String inBrackets() {
            return number.interval()
                    .map(ends ->
                            "(" + end(ends.low(), ends.halfWidth()) + TO + end(ends.high(), ends.halfWidth()) + ")")
                    .orElse("");
        }

        private String end(double si, double half) {
            return Double.isFinite(si) ? number.notation().number(si, half) : without;
        }
    }

    /** What is gained, with its interval in brackets; in words where the interval holds less and more than 0. */
    static Cell gain(Value gained) {
        return isShown(gained)
                ? new Known(gained, "")
                : new Words("no difference shown " + new Known(gained, "").inBrackets());
    }

    /** The same in short, without the interval. */
    static Cell gainAlone(Value gained) {
        return isShown(gained) ? of(gained) : new Words("none shown");
    }

    private static boolean isShown(Value gained) {
        return gained.interval()
                .filter(ends -> ends.low() < 0 && ends.high() >= 0 && gained.isThere())
                .isEmpty();
    }

    /** A number in two units: "1230 N m = 1.23 kN m". */
    record Twice(Value number, Value same) implements Cell {
        @Override
        public String text() {
            return number.text() + " = " + same.text();
        }

        @Override
        public Optional<Value> value() {
            return Optional.of(number);
        }
    }

    /** The interval of a number. */
    record Ends(Value number) implements Cell {
        @Override
        public String text() {
            return number.range().orElse("");
        }

        @Override
        public String bare() {
            return number.bareRange().orElse("");
        }

        @Override
        public Optional<Value> value() {
            return Optional.of(number);
        }
    }

    /** A formula. */
    record Formula(List<Piece> pieces) implements Cell {
        public Formula {
            pieces = List.copyOf(pieces);
        }

        @Override
        public String text() {
            return pieces.stream().map(Piece::text).collect(Collectors.joining());
        }
    }

    /** A piece of a formula. */
    record Piece(String text, Style style) {}

    /** How a piece of a formula is set. */
    enum Style {
        PLAIN,
        RAISED,
        LOWERED,
        /** The piece begins a line of its own. */
        NEXT_LINE
    }

    static Cell of(String words) {
        return new Words(words);
    }

    /** A number; nothing where there is none. */
    static Cell of(Value number) {
        return new Quantity(number, "");
    }

    /** A count. */
    static Cell of(long count) {
        return of(Value.plain((double) count));
    }
}
