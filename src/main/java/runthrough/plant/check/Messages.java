package runthrough.plant.check;

import java.util.ArrayList;
import java.util.List;

/** Collects messages in the order in which they are made. */
final class Messages {
    private final List<Message> found = new ArrayList<>();
    private final Wording wording;

    Messages(Wording wording) {
        this.wording = wording;
    }

    /** Writes the numbers of a message in the user's units. */
    Wording in() {
        return wording;
    }

    void error(LinePart part, String what, String remedy) {
        error(part.path(), what, remedy);
    }

    void warning(LinePart part, String what, String remedy) {
        warning(part.path(), what, remedy);
    }

    void error(String path, String what, String remedy) {
        found.add(new Message(Message.Severity.ERROR, path, what, remedy));
    }

    void warning(String path, String what, String remedy) {
        found.add(new Message(Message.Severity.WARNING, path, what, remedy));
    }

    List<Message> list() {
        return List.copyOf(found);
    }
}
