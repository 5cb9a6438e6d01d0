package runthrough.report.document;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;

/** The page that leads to the sample documents. */
public final class SampleIndex {
    /** Its file. */
    public static final String FILE = "index.html";

    private SampleIndex() {}

    /**
     * A sample.
     *
     * @param folder beside the index
     * @param title of its scenario
     */
    public record Sample(String folder, String title) {}

    /** The whole page. */
    public static String render(List<Sample> samples) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("samples.jte", samples, out);
        return out.toString();
    }
}
