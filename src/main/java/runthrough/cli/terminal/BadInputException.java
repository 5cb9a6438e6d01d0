package runthrough.cli.terminal;

import java.util.List;

/** Something that the user gave cannot be used; one line for each problem. */
public final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final List<String> lines;

    public BadInputException(List<String> lines) {
        super(String.join(System.lineSeparator(), lines));
        this.lines = List.copyOf(lines);
    }

    public BadInputException(String line) {
        this(List.of(line));
    }

    public List<String> lines() {
        return lines;
    }
}
