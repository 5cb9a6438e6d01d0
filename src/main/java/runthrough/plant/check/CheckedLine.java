package runthrough.plant.check;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Line;
import runthrough.quantity.UnitSystem;

/** A line of which the checks refuse nothing. Only such a line can be run. */
public final class CheckedLine {
    private final Line line;
    private final List<Message> warnings;

    private CheckedLine(Line line, List<Message> warnings) {
        this.line = line;
        this.warnings = warnings;
    }

    /**
     * {@code line}, checked.
     *
     * @throws LineRefusedException with all messages, when something is refused; they name values in SI
     */
    public static CheckedLine of(Line line) {
        return of(line, LineCheck.check(line));
    }

    /**
     * {@code line}, checked.
     *
     * @param units in which messages name values
     * @throws LineRefusedException with all messages, when something is refused
     */
    public static CheckedLine of(Line line, UnitSystem units) {
        return of(line, LineCheck.check(line, units));
    }

    private static CheckedLine of(Line line, List<Message> messages) {
        if (messages.stream().anyMatch(Message::isError)) {
            throw new LineRefusedException(messages);
        }
        return new CheckedLine(line, messages);
    }

    /** {@code line}, checked; empty when something is refused. */
    public static Optional<CheckedLine> ifAccepted(Line line) {
        List<Message> messages = LineCheck.check(line);
        return messages.stream().anyMatch(Message::isError)
                ? Optional.empty()
                : Optional.of(new CheckedLine(line, messages));
    }

    /** The line as described. */
    public Line line() {
        return line;
    }

    /** What is warned of, in the order of the parts. */
    public List<Message> warnings() {
        return warnings;
    }
}
