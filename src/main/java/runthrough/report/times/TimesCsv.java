package runthrough.report.times;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import runthrough.report.described.DistributionYaml;
import runthrough.report.write.CsvWriter;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.FittedParameter;
import runthrough.study.times.ElementTimes;
import runthrough.study.times.Outliers;
import runthrough.study.times.Trend;

/** What  shows as CSV files; times in seconds. */
final class TimesCsv {
    private TimesCsv() {}

    /** Contents by name; the same names whatever the sheet. */
    static Map<String, String> of(TimesResult result) {
        Map<String, String> files = new TreeMap<>();
        files.put("elements.csv", elements(result));
        files.put("outliers.csv", outliers(result));
        files.put("correlations.csv", correlations(result));
        files.put("fits.csv", fits(result));
        files.put("parameters.csv", parameters(result));
        return files;
    }

    private static String elements(TimesResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < result.fits().size(); i++) {
            ElementTimes times = result.statistics().elements().get(i);
            List<String> row = new ArrayList<>(List.of(CsvWriter.text(result.label(i)), Integer.toString(times.n())));
            numbers(
                    row,
                    times.gaps(),
                    times.moments().mean(),
                    times.moments().sd(),
                    times.cv(),
                    times.sample().percentile(0),
                    times.sample().percentile(0.5),
                    times.sample().percentile(0.9),
                    times.sample().percentile(1),
                    times.step(),
                    times.trend().map(Trend::slope).orElse(Double.NaN),
                    times.trend().map(Trend::low).orElse(Double.NaN),
                    times.trend().map(Trend::high).orElse(Double.NaN),
                    times.trend().map(Trend::p).orElse(Double.NaN),
                    result.sizes().get(i).needed());
            rows.add(row);
        }
        return CsvWriter.of(
                List.of(
                        "element",
                        "n",
                        "gaps",
                        "mean (s)",
                        "sd (s)",
                        "cv",
                        "least (s)",
                        "median (s)",
                        "90 % (s)",
                        "greatest (s)",
                        "reading step (s)",
                        "slope (s per coil change)",
                        "slope low",
                        "slope high",
                        "p of trend",
                        "observations needed"),
                rows);
    }

    private static void numbers(List<String> row, double... values) {
        for (double value : values) {
            row.add(CsvWriter.number(value));
        }
    }

    private static String outliers(TimesResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < result.fits().size(); i++) {
            for (Outliers.Outlier found :
                    result.statistics().elements().get(i).outliers().found()) {
                rows.add(List.of(
                        CsvWriter.text(result.label(i)),
                        Integer.toString(found.row().number()),
                        Integer.toString(found.row().line()),
                        CsvWriter.number(found.time()),
                        found.farOut() ? "yes" : "no",
                        CsvWriter.text(found.row().label()),
                        CsvWriter.text(found.row().remark())));
            }
        }
        return CsvWriter.of(List.of("element", "row", "line", "time (s)", "far out", "label", "remark"), rows);
    }

    private static String correlations(TimesResult result) {
        List<List<String>> rows = result.statistics().correlations().stream()
                .map(pair -> {
                    List<String> row = new ArrayList<>(List.of(
                            CsvWriter.text(result.label(pair.first())), CsvWriter.text(result.label(pair.second()))));
                    numbers(row, pair.n(), pair.spearman(), pair.pearson(), pair.p(), pair.adjusted());
                    return row;
                })
                .toList();
        return CsvWriter.of(List.of("element", "with", "n", "Spearman", "Pearson", "p", "p by Holm"), rows);
    }

    private static String fits(TimesResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < result.fits().size(); i++) {
            for (Candidate fit : result.fits().get(i).candidates()) {
                List<String> row = new ArrayList<>(List.of(
                        CsvWriter.text(result.label(i)),
                        fit.distribution().label(),
                        DistributionYaml.of(fit.distribution().distribution())));
                numbers(
                        row,
                        fit.distribution().logLikelihood(),
                        fit.distribution().aic(),
                        fit.aicc(),
                        fit.distance().andersonDarling(),
                        fit.limits().andersonDarling(),
                        fit.p1(),
                        fit.distance().kolmogorovSmirnov(),
                        fit.limits().kolmogorovSmirnov(),
                        fit.p2());
                rows.add(row);
            }
        }
        return CsvWriter.of(
                List.of(
                        "element",
                        "distribution",
                        "as in a scenario",
                        "log likelihood",
                        "AIC",
                        "AICc",
                        "A2",
                        "limit of A2",
                        "p of A2",
                        "D",
                        "limit of D",
                        "p of D"),
                rows);
    }

    private static String parameters(TimesResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < result.fits().size(); i++) {
            for (Candidate fit : result.fits().get(i).candidates()) {
                for (FittedParameter known : fit.parameters()) {
                    List<String> row = new ArrayList<>(List.of(
                            CsvWriter.text(result.label(i)),
                            fit.distribution().label(),
                            known.name(),
                            known.isTime() ? "s" : ""));
                    numbers(row, known.value(), known.low(), known.high());
                    rows.add(row);
                }
            }
        }
        return CsvWriter.of(List.of("element", "distribution", "parameter", "unit", "value", "low", "high"), rows);
    }
}
