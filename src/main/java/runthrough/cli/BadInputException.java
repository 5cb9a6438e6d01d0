package runthrough.cli;

import java.util.List;

/** Something that the user gave cannot be used; one line for each problem. */
final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final List<String> lines;

    BadInputException(List<String> lines) {
        super(String.join(System.lineSeparator(), lines));
        this.lines = List.copyOf(lines);
    }

    BadInputException(String line) {
        this(List.of(line));
    }

    List<String> lines() {
        return lines;
    }
}
