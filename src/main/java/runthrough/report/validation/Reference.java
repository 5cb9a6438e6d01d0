package runthrough.report.validation;

/**
 * Where an outside value comes from.
 *
 * @param text author, title, year and section, or how it was derived
 * @param standing how far it can be relied on
 */
public record Reference(String text, Standing standing) {

    public Reference {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a source without text; say where the value comes from");
        }
    }
}
