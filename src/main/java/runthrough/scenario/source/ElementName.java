package runthrough.scenario.source;

import java.util.Optional;

/** The name of a work element, as it may stand in a scenario, at the head of a column of a sheet, and in a field of the page. */
public final class ElementName {
    /** Letters of the longest one. With what leads to it, it is a key of {@code origins}, and YAML takes some 1000 letters for a key. */
    public static final int LONGEST = 200;

    private ElementName() {}

    /** What is wrong with {@code name}; empty when it can be one. */
    public static Optional<String> wrong(String name) {
        return !TextFile.isBlank(name)
                        && name.length() <= LONGEST
                        && TextFile.isOneLine(name)
                        && TextFile.strange(name).isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "the name of a work element must have 1 to " + LONGEST + " letters in one line, without tabs");
    }
}
