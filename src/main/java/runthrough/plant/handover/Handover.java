package runthrough.plant.handover;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a scenario says for its document.
 *
 * @param cover of the document
 * @param drive of the uncoiler
 * @param origins where values came from, in the order given
 * @param money what time and strip are worth; empty where the user does not say
 */
public record Handover(Cover cover, Drive drive, List<Origin> origins, Optional<Money> money) {
    /** Nothing is said. */
    public static final Handover NONE = new Handover(Cover.EMPTY, Drive.UNKNOWN, List.of(), Optional.empty());

    public Handover {
        origins = List.copyOf(origins);
    }

    /** Where the value at {@code path} came from: what is said of the smallest part around it. */
    public Optional<String> originOf(String path) {
        return origins.stream()
                .filter(origin -> origin.covers(path))
                .max(Comparator.comparingInt(origin -> origin.path().length()))
                .map(Origin::text);
    }
}
