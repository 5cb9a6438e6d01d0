package runthrough.report;

import java.util.Optional;

/**
 * Where a result comes from, so that it can be made again.
 *
 * @param program name and version of the program, such as {@code runthrough 0.1.0}
 * @param fingerprint SHA-256 of the scenario file's bytes in hexadecimal, where there is a file
 * @param date as the user wants it printed; none is printed unless given, so that the same input gives the same bytes
 */
public record Provenance(String program, Optional<String> fingerprint, Optional<String> date) {

    public Provenance {
        fingerprint.ifPresent(digits -> {
            if (!digits.matches("[0-9a-f]{64}")) {
                throw new IllegalArgumentException("fingerprint = " + digits + "; must be 64 digits 0-9, a-f");
            }
        });
    }
}
