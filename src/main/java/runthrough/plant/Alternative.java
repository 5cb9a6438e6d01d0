package runthrough.plant;

import java.util.List;

/**
 * One way to build or to run the line, to be held against others under the same random numbers.
 *
 * @param name that the user calls it by
 * @param changes what it changes in the scenario as written, in words, such as {@code entry.uncoilers: 2}; empty for the
 *     scenario itself
 * @param request the scenario with these changes
 */
public record Alternative(String name, List<String> changes, SimulationRequest request) {
    /** What the scenario without any change is called. */
    public static final String AS_WRITTEN = "as written";

    public Alternative {
        changes = List.copyOf(changes);
    }

    /** The scenario without any change. */
    public static Alternative asWritten(SimulationRequest request) {
        return new Alternative(AS_WRITTEN, List.of(), request);
    }

    /** The same with what {@code other} says of line, run and units. */
    public Alternative with(SimulationRequest other) {
        return new Alternative(name, changes, other);
    }
}
