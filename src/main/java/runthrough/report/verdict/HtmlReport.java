package runthrough.report.verdict;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/** The report as one HTML file that needs nothing from elsewhere: styles, pictures and fonts are inside, no script. */
public final class HtmlReport {
    private HtmlReport() {}

    /** The whole document. */
    public static String render(RunThroughResult result) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("report.jte", PageMaker.page(result), out);
        return out.toString();
    }
}
