package runthrough.report.times;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.quantity.Numbers;
import runthrough.report.Table;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.ElementFits;
import runthrough.study.times.Correlation;
import runthrough.study.times.ElementTimes;
import runthrough.study.times.JointTail;
import runthrough.study.times.Outliers;
import runthrough.study.times.SampleSize;
import runthrough.study.times.Trend;
import runthrough.timestudy.StandardTime;

/** The tables of a time-study sheet. */
final class TimesTables {
    private static final int MOST_PAIRS = 10;
    private static final int NAME = 22;
    private static final int PAIR_NAME = 20;

    private final TimesResult result;
    private final int nameWidth;
    private final int pairWidth;

    /** Tables whose names of elements are cut to so many characters, where they stand alone and where two stand in a row. */
    private TimesTables(TimesResult result, int nameWidth, int pairWidth) {
        this.result = result;
        this.nameWidth = nameWidth;
        this.pairWidth = pairWidth;
    }

    /** Those that fit on a terminal. */
    static List<Table> ofTerminal(TimesResult result) {
        return new TimesTables(result, NAME, PAIR_NAME).all();
    }

    /** What was fitted to each element, for pages. */
    static List<Table> fits(TimesResult result) {
        TimesTables tables = new TimesTables(result, Integer.MAX_VALUE, Integer.MAX_VALUE);
        return result.fits().stream()
                .flatMap(element -> tables.fits(element).stream())
                .toList();
    }

    private List<Table> all() {
        List<Table> tables = new ArrayList<>(List.of(times()));
        outliers().ifPresent(tables::add);
        trend().ifPresent(tables::add);
        correlations().ifPresent(tables::add);
        tail().ifPresent(tables::add);
        tables.add(distributions());
        tables.add(sizes());
        return tables;
    }

    private String name(int i) {
        return cut(result.label(i), nameWidth);
    }

    private static String cut(String label, int width) {
        return label.length() <= width ? label : label.substring(0, width - 1) + "…";
    }

    private List<ElementTimes> elements() {
        return result.statistics().elements();
    }

    private Table times() {
        return Table.words(
                "Times of each element, s" + (result.basic() ? " (basic times)" : ""),
                List.of("element", "n", "mean", "sd", "cv", "least", "median", "90 %", "greatest"),
                IntStream.range(0, elements().size()).mapToObj(this::times).toList(),
                true);
    }

    private List<String> times(int i) {
        ElementTimes times = elements().get(i);
        return List.of(
                name(i),
                Integer.toString(times.n()),
                TimesWords.number(times.moments().mean()),
                TimesWords.number(times.moments().sd()),
                TimesWords.percent(times.cv()),
                TimesWords.number(times.sample().percentile(0)),
                TimesWords.number(times.sample().percentile(0.5)),
                TimesWords.number(times.sample().percentile(0.9)),
                TimesWords.number(times.sample().percentile(1)));
    }

    private Optional<Table> outliers() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < elements().size(); i++) {
            for (Outliers.Outlier found : elements().get(i).outliers().found()) {
                rows.add(outlier(i, found));
            }
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Table.words(
                        "Outliers, all counted: " + Outliers.RULE,
                        List.of("element", "row", "line", "time, s", "fence, s", "far out", "remark"),
                        rows,
                        false));
    }

    private List<String> outlier(int i, Outliers.Outlier found) {
        Outliers outliers = elements().get(i).outliers();
        double fence = found.time() < outliers.low() ? outliers.low() : outliers.high();
        return List.of(
                name(i),
                Integer.toString(found.row().number()),
                Integer.toString(found.row().line()),
                TimesWords.number(found.time()),
                TimesWords.number(fence),
                found.farOut() ? "yes" : "no",
                found.row().remark());
    }

    private Optional<Table> trend() {
        List<List<String>> rows = IntStream.range(0, elements().size())
                .filter(i -> elements().get(i).trend().isPresent())
                .mapToObj(i -> trend(i, elements().get(i).trend().orElseThrow()))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Table.words(
                        "Trend over the sheet: Mann-Kendall test, Sen's slope in s per coil change",
                        List.of("element", "slope", "95 % interval", "p", "trend"),
                        rows,
                        true));
    }

    private List<String> trend(int i, Trend trend) {
        String way = trend.slope() < 0 ? "shorter" : "longer";
        return List.of(
                name(i),
                TimesWords.number(trend.slope()),
                TimesWords.number(trend.low()) + " to " + TimesWords.number(trend.high()),
                TimesWords.p(trend.p()),
                trend.isShown() ? way : "none shown");
    }

    private Optional<Table> correlations() {
        List<Correlation> pairs = result.statistics().correlations();
        List<List<String>> rows = pairs.stream()
                .sorted(Comparator.comparingDouble(Correlation::p))
                .limit(MOST_PAIRS)
                .map(this::correlation)
                .toList();
        String which = pairs.size() > MOST_PAIRS ? ", the " + MOST_PAIRS + " strongest of " + pairs.size() : "";
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Table.words(
                        "Elements that go together" + which,
                        List.of("element", "with", "n", "ranks", "times", "p", "p of all"),
                        rows,
                        true));
    }

    private List<String> correlation(Correlation pair) {
        return List.of(
                cut(result.label(pair.first()), pairWidth),
                cut(result.label(pair.second()), pairWidth),
                Integer.toString(pair.n()),
                Numbers.fixed(pair.spearman(), 2),
                Numbers.fixed(pair.pearson(), 2),
                TimesWords.p(pair.p()),
                TimesWords.p(pair.adjusted()));
    }

    private Optional<Table> tail() {
        return result.statistics()
                .tail()
                .map(tail -> Table.words(
                        "Standing work together, s: as observed, and with elements drawn on their own",
                        List.of(
                                "of " + tail.rows() + " coil changes",
                                "observed",
                                "on its own",
                                "difference",
                                "95 % interval"),
                        rows(tail),
                        true));
    }

    private static List<List<String>> rows(JointTail tail) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "standard deviation",
                TimesWords.number(tail.together().sd()),
                TimesWords.number(tail.apartSd()),
                TimesWords.number(tail.together().sd() - tail.apartSd()),
                ""));
        tail.percentiles()
                .forEach(at -> rows.add(List.of(
                        TimesWords.percent(at.p()) + " take at most",
                        TimesWords.number(at.together()),
                        TimesWords.number(at.apart()),
                        TimesWords.number(at.together() - at.apart()),
                        TimesWords.number(at.low()) + " to " + TimesWords.number(at.high()))));
        return rows;
    }

    private Table distributions() {
        return Table.words(
                "What to simulate with",
                List.of("", ""),
                IntStream.range(0, result.fits().size())
                        .mapToObj(i ->
                                List.of(name(i), TimesWords.choice(result.fits().get(i))))
                        .toList(),
                false);
    }

    private Optional<Table> fits(ElementFits element) {
        List<List<String>> rows =
                element.candidates().stream().map(TimesTables::fit).toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Table.words(
                        "Distributions fitted to " + element.times().element().label()
                                + ", best AICc first; limits are those that 5 % of samples from the distribution exceed",
                        List.of("distribution", "with", "AICc", "A²", "limit", "p", "D", "limit", "p"),
                        rows,
                        false));
    }

    private static List<String> fit(Candidate candidate) {
        return List.of(
                candidate.distribution().label(),
                TimesWords.distribution(candidate.distribution().distribution()),
                Numbers.fixed(candidate.aicc(), 1),
                Numbers.fixed(candidate.distance().andersonDarling(), 3),
                Numbers.fixed(candidate.limits().andersonDarling(), 3),
                TimesWords.p(candidate.p1()),
                Numbers.fixed(candidate.distance().kolmogorovSmirnov(), 3),
                Numbers.fixed(candidate.limits().kolmogorovSmirnov(), 3),
                TimesWords.p(candidate.p2()));
    }

    private Table sizes() {
        SampleSize any = result.sizes().get(0);
        List<String> head = new ArrayList<>(List.of("element", "taken", "needed", "still to take"));
        result.allowance().ifPresent(share -> head.add("standard time, s"));
        return Table.words(
                "Enough? To know each mean within " + TimesWords.percent(any.precision()) + " with "
                        + Numbers.text(100 * any.confidence()) + " % confidence (ILO)",
                head,
                IntStream.range(0, result.sizes().size()).mapToObj(this::size).toList(),
                true);
    }

    private List<String> size(int i) {
        SampleSize size = result.sizes().get(i);
        List<String> row = new ArrayList<>(List.of(
                name(i), Integer.toString(size.taken()), Long.toString(size.total()), Long.toString(size.more())));
        result.allowance()
                .map(share -> new StandardTime(elements().get(i).moments().mean(), share).standard())
                .ifPresent(standard -> row.add(TimesWords.number(standard)));
        return row;
    }
}
