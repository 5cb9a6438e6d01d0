package runthrough.study.sensitivity;

import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.Line;

/**
 * An input that is moved, all others staying as they are.
 *
 * @param path by which it is named
 * @param present its value as the user wrote it
 * @param stated whether the user stated the range; else it is the usual one
 * @param composed whether it stands for several inputs that are moved together
 * @param low the lower end
 * @param high the higher end
 */
public record Swing(String path, String present, boolean stated, boolean composed, End low, End high) {

    /**
     * An end of the range.
     *
     * @param value of the input (SI)
     * @param text of it in the user's unit
     * @param line with that value; empty where it is not possible
     * @param note why it is not possible, or that it is less far away than usual for the rest would not be; may be empty
     */
    public record End(double value, String text, Optional<Line> line, String note) {

        /** The same, found not to be possible. */
        End refused(String reason) {
            return new End(value, text, Optional.empty(), reason);
        }
    }

    /** Both ends. */
    Stream<End> ends() {
        return Stream.of(low, high);
    }
}
