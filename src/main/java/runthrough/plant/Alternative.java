package runthrough.plant;

/**
 * One way to build or to run the line, to be held against others under the same random numbers.
 *
 * @param name that the user calls it by
 * @param request the scenario with what it changes; of the scenario itself as written
 */
public record Alternative(String name, SimulationRequest request) {
    /** What the scenario without any change is called. */
    public static final String AS_WRITTEN = "as written";

    /** The scenario without any change. */
    public static Alternative asWritten(SimulationRequest request) {
        return new Alternative(AS_WRITTEN, request);
    }

    /** The same with what {@code other} says of line, run and units. */
    public Alternative with(SimulationRequest other) {
        return new Alternative(name, other);
    }
}
