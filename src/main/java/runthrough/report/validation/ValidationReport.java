package runthrough.report.validation;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;

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
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("validation.jte", page, out);
        return out.toString();
    }

    /** The same for a terminal, each line ended by a line feed. */
    public String text() {
        return ValidationText.of(page);
    }
}
