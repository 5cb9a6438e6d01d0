package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.study.sizing.Size;
import runthrough.study.sizing.Sizing;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Share run through against capacity, as a table and as a CSV file.
 *
 * @param sizing whose curve it is
 * @param words for its numbers
 */
record SizingCurve(Sizing sizing, StudyWords words) {

    Table table() {
        Size first = sizing.curve().get(0).size();
        boolean both = SizeWords.adjusted(first).isPresent();
        List<String> head = new ArrayList<>(List.of("capacity"));
        if (both) {
            head.add(SizeWords.setting(first.form()).replaceFirst(".* with a ", ""));
        }
        head.addAll(List.of("run through", "95 % interval"));
        return new Table(
                "Share run through against capacity, in the replications of the scenario",
                head,
                sizing.curve().stream().map(point -> row(point, both)).toList(),
                true);
    }

    private List<String> row(Sizing.Point point, boolean both) {
        List<String> row = new ArrayList<>(List.of(words.length(point.size().capacity())));
        if (both) {
            row.add(words.length(point.size().form().adjustable().orElseThrow().metres()));
        }
        row.add(point.share().map(share -> words.share(share.mean())).orElse("refused"));
        row.add(point.share()
                .flatMap(share -> words.texts().interval(Kind.SHARE, share))
                .orElse(""));
        return row;
    }

    String csv() {
        Unit length = words.units().unit(Kind.LENGTH);
        List<List<String>> rows = sizing.curve().stream()
                .map(point -> List.of(
                        CsvCells.number(length.fromSi(point.size().capacity())),
                        CsvCells.number(length.fromSi(
                                point.size().form().adjustable().orElseThrow().metres())),
                        CsvCells.number(point.share().map(Estimate::mean).orElse(Double.NaN)),
                        CsvCells.number(end(point, Interval::low)),
                        CsvCells.number(end(point, Interval::high)),
                        CsvCells.number(point.envelope())))
                .toList();
        String unit = " (" + length.symbol() + ")";
        return CsvWriter.of(
                List.of(
                        "capacity" + unit,
                        "stroke, sag or diameter" + unit,
                        "share run through",
                        "low",
                        "high",
                        "greatest share so far"),
                rows);
    }

    private double end(Sizing.Point point, ToDoubleFunction<Interval> which) {
        return point.share()
                .flatMap(Estimate::interval)
                .filter(any -> sizing.chance())
                .map(which::applyAsDouble)
                .orElse(Double.NaN);
    }
}
