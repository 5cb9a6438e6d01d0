package runthrough.plant.check;

import java.util.List;
import java.util.stream.Collectors;

/** A described line that cannot be run. Holds all that was found, not the first of it alone. */
public final class LineRefusedException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Not kept when it is serialized: the text says the same. */
    private final transient List<Message> messages;

    /** A refusal for {@code messages}, at least one of them an error. */
    public LineRefusedException(List<Message> messages) {
        super(messages.stream().filter(Message::isError).map(Message::text).collect(Collectors.joining("\n")));
        this.messages = List.copyOf(messages);
    }

    /** Everything that was found, errors and warnings, in the order of the parts. */
    public List<Message> messages() {
        return messages;
    }
}
