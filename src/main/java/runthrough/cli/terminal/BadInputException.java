package runthrough.cli.terminal;

import java.util.List;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;

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

    /**
     * Refuses what {@code problems} has found wrong.
     *
     * @throws BadInputException when it has found anything
     */
    public static void throwIfAny(Problems problems) {
        if (!problems.none()) {
            throw new BadInputException(
                    problems.errors().stream().map(Problem::toString).toList());
        }
    }

    public List<String> lines() {
        return lines;
    }
}
