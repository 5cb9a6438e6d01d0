package runthrough.report.document;

import runthrough.quantity.UnitSystem;

/** The size of a printed page. */
public enum Paper {
    /** 210 mm x 297 mm. */
    A4("A4"),
    /** 8.5 in x 11 in. */
    LETTER("letter");

    private final String css;

    Paper(String css) {
        this.css = css;
    }

    /** Its name in a style sheet. */
    public String css() {
        return css;
    }

    /** The paper of those who read in {@code system}. */
    public static Paper usualWith(UnitSystem system) {
        return system == UnitSystem.US_CUSTOMARY ? LETTER : A4;
    }
}
