package runthrough.chart.times;

import java.util.ArrayList;
import java.util.List;
import runthrough.chart.Chart;
import runthrough.chart.ChartStyle;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.ElementFits;

/** The charts of a time-study sheet: for each element with fitted distributions, a histogram with them and a quantile plot of the best. */
public final class TimesCharts {
    /** More curves in one picture cannot be distinguished. */
    private static final int MOST_CURVES = 3;

    private TimesCharts() {}

    /** The charts of all elements, in order. */
    public static List<Chart> of(List<ElementFits> elements) {
        ChartStyle style = new ChartStyle();
        List<Chart> charts = new ArrayList<>();
        for (int i = 0; i < elements.size(); i++) {
            List<Candidate> shown = shown(elements.get(i));
            if (!shown.isEmpty()) {
                charts.add(FitChart.of(style, elements.get(i), shown, i + 1));
                charts.add(QuantileChart.of(style, elements.get(i), shown.get(0), i + 1));
            }
        }
        return charts;
    }

    /** The recommended distribution, or else the nearest, then the next best. */
    private static List<Candidate> shown(ElementFits element) {
        List<Candidate> shown = new ArrayList<>();
        element.recommendation().distribution().ifPresent(shown::add);
        element.candidates().stream()
                .filter(candidate -> !shown.contains(candidate))
                .limit(MOST_CURVES - shown.size())
                .forEach(shown::add);
        return shown;
    }
}
