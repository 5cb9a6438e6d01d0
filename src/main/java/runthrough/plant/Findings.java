package runthrough.plant;

import java.util.ArrayList;
import java.util.List;

/** Collects findings in the order in which they are made. */
final class Findings {
    private final List<Finding> found = new ArrayList<>();
    private final Wording wording;

    Findings(Wording wording) {
        this.wording = wording;
    }

    /** Writes the numbers of a message in the user's units. */
    Wording in() {
        return wording;
    }

    void error(String path, String what, String remedy) {
        found.add(new Finding(Finding.Severity.ERROR, path, what, remedy));
    }

    void warning(String path, String what, String remedy) {
        found.add(new Finding(Finding.Severity.WARNING, path, what, remedy));
    }

    List<Finding> list() {
        return List.copyOf(found);
    }
}
