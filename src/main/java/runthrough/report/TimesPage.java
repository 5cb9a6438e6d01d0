package runthrough.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/** What a time-study sheet tells as one HTML file that needs nothing from elsewhere, in the style of the report. */
final class TimesPage {
    private TimesPage() {}

    static String render(TimesAnswer answer) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("times.jte", answer, out);
        return out.toString();
    }
}
