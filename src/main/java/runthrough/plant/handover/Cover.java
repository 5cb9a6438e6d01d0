package runthrough.plant.handover;

import java.util.Optional;

/**
 * What stands on the cover of the document, as the user wants it printed.
 *
 * @param date of the document
 * @param number under which it is filed
 * @param preparedBy who made it
 * @param preparedFor for whom
 */
public record Cover(
        Optional<String> date, Optional<String> number, Optional<String> preparedBy, Optional<String> preparedFor) {
    /** Nothing is said. */
    public static final Cover EMPTY = new Cover(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
