package runthrough.web;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.ScenarioText;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.YamlEdit;
import runthrough.web.job.Refusal;

/**
 * A line made from nothing: what is usual for its kind. Every value is marked as an assumption, until a person states it
 * ({@link Assumptions}).
 */
final class NewLine {
    private static final String INDEX = "kinds.txt";
    private static final String BETWEEN = ": ";
    private static final String RETHREAD = "rethread";

    /** What a line of this practice does not have; origins of it are left out with it. */
    private static final Map<String, Set<String>> WITHOUT = Map.of(
            "join with accumulator",
            Set.of("coil-change.rethread"),
            "join without accumulator",
            Set.of("coil-change.rethread", "accumulator"),
            RETHREAD,
            Set.of("accumulator", "process.restart", "coil-change.tail", "coil-change.join", "coil-change.reject"));

    private NewLine() {}

    /** A kind of line: its name, and what it is called. */
    record Kind(String name, String title) {}

    /** All kinds that are offered. */
    static List<Kind> kinds() {
        return ShippedLines.page("kinds/" + INDEX)
                .lines()
                .map(line -> line.split(BETWEEN, 2))
                .map(parts -> new Kind(parts[0], parts[1]))
                .toList();
    }

    /** The practices in which a line of any kind may change coils. */
    static Set<String> practices() {
        return WITHOUT.keySet();
    }

    /**
     * A line of {@code kind} as it usually is.
     *
     * @param file whose name problems name
     * @param practice one of {@link #practices}
     */
    static ScenarioText of(Path file, String kind, String practice, UnitSystem system) {
        Set<String> without = WITHOUT.get(practice);
        if (without == null || kinds().stream().noneMatch(known -> known.name().equals(kind))) {
            throw new Refusal(400, "No such line is offered: " + kind + ", " + practice + ".");
        }
        ScenarioText usual = new ScenarioText(file, ShippedLines.page("kinds/" + kind + ".yaml"));
        Raw.Mapping root = (Raw.Mapping) usual.raw().orElseThrow();
        Raw.Mapping asked = without(root, "", without)
                .with("results-in", new Raw.Scalar(PageRequest.name(system), Place.whole(INDEX)))
                .with("practice", new Raw.Scalar(practice, Place.whole(INDEX)));
        return new ScenarioText(file, YamlEdit.apply(usual.text(), root, asked));
    }

    /** {@code part}, which stands at {@code path}, without what the paths name. */
    private static Raw.Mapping without(Raw.Mapping part, String path, Set<String> paths) {
        Raw.Mapping rest = part;
        for (Raw.Entry entry : part.entries()) {
            String inner = path + entry.key();
            if (paths.contains(inner) || (path.equals("origins.") && paths.contains(entry.key()))) {
                rest = rest.without(Set.of(entry.key()));
            } else if (entry.value() instanceof Raw.Mapping mapping) {
                rest = rest.with(entry.key(), without(mapping, inner + ".", paths));
            }
        }
        return rest;
    }
}
