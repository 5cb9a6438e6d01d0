package runthrough.report.validation;

import java.util.List;
import java.util.Map;
import runthrough.report.write.Templates;

/** All checks, as a page of HTML that needs nothing from elsewhere, and as text. */
public final class ValidationReport {
    private final ValidationPage page;

    /** Of {@code records} in the order in which {@link CheckFolder#read} gives them. */
    public ValidationReport(List<Recorded> records) {
        page = new PageOfChecks(records).page();
    }

    /** Whether every check agrees. */
    public boolean passed() {
        return page.passed();
    }

    /** The whole document; the same records give the same bytes. */
    public String html() {
        return Templates.render("validation", Map.of("page", page));
    }

    /** The same for a terminal, each line ended by a line feed. */
    public String text() {
        return ValidationText.of(page);
    }
}
