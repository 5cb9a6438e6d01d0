package runthrough.report.write;

import java.util.List;
import java.util.Map;
import runthrough.chart.Chart;
import runthrough.report.Answer;
import runthrough.report.KeptTogether;

/** An answer as one HTML file that needs nothing from elsewhere: styles, pictures and fonts are inside, no script. */
public final class HtmlWriter {
    private HtmlWriter() {}

    /** The whole document. */
    public static String render(Answer answer) {
        // They take longest, and are drawn on all processors.
        List<String> drawn =
                answer.body().charts().parallelStream().map(Chart::svg).toList();
        return Templates.render("answer", Map.of("page", answer, "drawn", drawn));
    }

    /** A text in which no line ends between a number and its unit. */
    public static String kept(String text) {
        return KeptTogether.in(text);
    }
}
