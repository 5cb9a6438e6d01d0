package runthrough.plant.handover;

/**
 * Where a value, or all of a part of the scenario, came from.
 *
 * @param path of the value or part, such as {@code entry.top-speed} or {@code coil-change.join}
 * @param text as the user says it: measured with so many values, a vendor's figure, an assumption
 */
public record Origin(String path, String text) {

    /** Whether {@code value} is the one named, or stands within the part named. */
    boolean covers(String value) {
        return value.startsWith(path)
                && (value.length() == path.length() || ".[".indexOf(value.charAt(path.length())) >= 0);
    }
}
