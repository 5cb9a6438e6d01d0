package runthrough.report;

import java.util.List;
import java.util.Optional;

/**
 * Where a result comes from, so that it can be made again.
 *
 * @param program name and version of the program, such as {@code runthrough 0.1.0}
 * @param fingerprint SHA-256 of the scenario file's bytes in hexadecimal, where there is a file
 * @param changes what was set otherwise than the scenario file says, such as {@code entry.top-speed = 100 m/min instead of
 *     90 m/min}, in the order in which it was set
 * @param date as the user wants it printed; none is printed unless given, so that the same input gives the same bytes
 */
public record Provenance(String program, Optional<String> fingerprint, List<String> changes, Optional<String> date) {

    public Provenance {
        changes = List.copyOf(changes);
        fingerprint.ifPresent(digits -> {
            if (!digits.matches("[0-9a-f]{64}")) {
                throw new IllegalArgumentException("fingerprint = " + digits + "; must be 64 digits 0-9, a-f");
            }
        });
    }

    /** Where a result of an unchanged scenario comes from. */
    public Provenance(String program, Optional<String> fingerprint, Optional<String> date) {
        this(program, fingerprint, List.of(), date);
    }

    /** What was changed in a sentence; empty when nothing was. */
    public Optional<String> changed() {
        return changes.isEmpty()
                ? Optional.empty()
                : Optional.of("Changed for this run: " + String.join("; ", changes) + ".");
    }
}
