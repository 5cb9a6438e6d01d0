package runthrough.report.document;

import java.util.List;
import java.util.Map;
import runthrough.report.write.Templates;

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
        return Templates.render("samples", Map.of("samples", samples));
    }
}
