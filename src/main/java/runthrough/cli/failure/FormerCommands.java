package runthrough.cli.failure;

import java.util.Map;
import java.util.Optional;

/** What commands were called before, for one purpose: to say to who types an older name what it is called now. */
final class FormerCommands {

    /** Old name to new name. Nowhere else does an old name stand. */
    private static final Map<String, String> NOW = Map.of("luck", "draws");

    private FormerCommands() {}

    /** What the command {@code word} is called now; empty where it is no former name. */
    static Optional<String> now(String word) {
        return Optional.ofNullable(NOW.get(word));
    }
}
