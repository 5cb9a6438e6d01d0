package runthrough.chart.document;

import java.util.List;
import runthrough.chart.Chart;
import runthrough.chart.ChartFonts;
import runthrough.chart.line.LineDrawing;
import runthrough.plant.SimulationRequest;

/** The drawings of the document that is handed over. */
public final class DocumentCharts {
    private DocumentCharts() {}

    /** The line of {@code request}, to scale where lengths are known; {@code parts} says what its numbers stand for. */
    public static Chart line(SimulationRequest request, List<String> parts) {
        String reading =
                "The line as described, drawn full; dashed where it is empty. The numbers stand for the parts below.";
        return new Chart(
                "drawing",
                "The line as described",
                reading,
                "From left to right: uncoiler with coil, joiner, accumulator where there is one, process section. "
                        + String.join(" ", parts),
                LineDrawing.picture(request, ChartFonts.load()));
    }

    /** The whole answer in one picture of a slide's size. */
    public static Chart slide(SummaryData data) {
        return new Chart("slide", data.title(), "", alternative(data), SummaryChart.slide(data, ChartFonts.load()));
    }

    /** The whole answer in one picture, for the page that states it in words. */
    public static Chart summary(SummaryData data) {
        return new Chart(
                "summary",
                "The answer in one picture",
                "",
                alternative(data),
                SummaryChart.onPage(data, ChartFonts.load()));
    }

    private static String alternative(SummaryData data) {
        StringBuilder text = new StringBuilder(data.word() + ". " + data.sentence());
        data.shares().stream()
                .filter(share -> !share.today())
                .forEach(share -> text.append(' ')
                        .append(share.name())
                        .append(": ")
                        .append(share.text())
                        .append('.'));
        data.years()
                .forEach(year -> text.append(' ')
                        .append(year.name())
                        .append(": ")
                        .append(year.lost().text())
                        .append(" lost and ")
                        .append(year.good().text())
                        .append(" of good output in a year."));
        data.strip().ifPresent(strip -> {
            text.append(" Strip that a coil change takes: ");
            text.append(String.join(
                    ", ", strip.marks().stream().map(SummaryData.Mark::text).toList()));
            text.append("; ").append(strip.usableText()).append('.');
        });
        return text.toString();
    }
}
