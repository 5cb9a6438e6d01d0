package runthrough.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/** A study's answer as one HTML file that needs nothing from elsewhere, in the style of the report. */
public final class StudyPage {
    private StudyPage() {}

    /** The whole document. */
    public static String render(StudyAnswer answer) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("study.jte", answer, out);
        return out.toString();
    }
}
