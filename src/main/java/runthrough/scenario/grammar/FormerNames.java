package runthrough.scenario.grammar;

import java.util.Map;
import java.util.Optional;

/** What keys and figures were called before, for one purpose: to say to the author of an older file what they are called now. */
public final class FormerNames {

    /** Old path to new path. Nowhere else does an old name stand. */
    private static final Map<String, String> NOW = Map.of(
            "process.own-stops", "process.downtime",
            "process.spoilt-per-stop", "process.scrap-per-stop",
            "joint-time", "joint-cycle-time, or rethread-time where the line rethreads");

    private FormerNames() {}

    /**
     * What {@code path} is called now.
     *
     * @param path from the top of the file, such as {@code process.own-stops.running}
     * @return empty where it is no former name, and not within what had one
     */
    public static Optional<String> now(String path) {
        return NOW.entrySet().stream()
                .filter(name -> path.equals(name.getKey()) || path.startsWith(name.getKey() + "."))
                .map(name -> name.getValue() + path.substring(name.getKey().length()))
                .findFirst();
    }
}
