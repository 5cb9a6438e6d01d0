package runthrough.report.times;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Value;
import runthrough.study.fitting.ElementFits;
import runthrough.study.times.Correlation;
import runthrough.study.times.ElementTimes;
import runthrough.study.times.JointTail;
import runthrough.study.times.Outliers;
import runthrough.study.times.SampleSize;
import runthrough.study.times.Trend;
import runthrough.timestudy.StandardTime;

/** The tables of a time-study sheet, in seconds throughout, as a watch is read; those of fits are {@link FitTables}. */
final class TimesTables {
    private static final int MOST_PAIRS = 10;

    /** Seconds in a table whose caption names them. */
    private static final Notation SECONDS = Notation.SECONDS.called("");

    static final Notation CORRELATION = Notation.PLAIN.with(Rounding.CORRELATION);

    private final TimesResult result;

    private TimesTables(TimesResult result) {
        this.result = result;
    }

    static List<Table> of(TimesResult result) {
        TimesTables tables = new TimesTables(result);
        return List.of(
                tables.times(),
                tables.outliers(),
                tables.trend(),
                tables.correlations(),
                tables.tail(),
                tables.distributions(),
                tables.sizes());
    }

    /** An element by its number. */
    private record Element(int i, String name, ElementTimes times, SampleSize size) {
        double percentile(double p) {
            return times.sample().percentile(p);
        }

        double ofTrend(ToDoubleFunction<Trend> number) {
            return times.trend().map(number::applyAsDouble).orElse(Double.NaN);
        }

        Value slope() {
            return times.trend().map(TimesWords::slope).orElse(Value.plain(Double.NaN));
        }
    }

    private List<Element> elements() {
        return IntStream.range(0, result.fits().size())
                .mapToObj(i -> new Element(
                        i,
                        result.label(i),
                        result.statistics().elements().get(i),
                        result.sizes().get(i)))
                .toList();
    }

    private Table times() {
        Notation slope = TimesWords.SLOPE;
        return TableMaker.<Element>of("Times of each element, s" + (result.basic() ? " (basic times)" : ""))
                .intoFile("elements.csv")
                .words("element", Element::name)
                .count("n", element -> element.times().n())
                .fileNumber("gaps", Notation.PLAIN, element -> element.times().gaps())
                .number("mean", SECONDS, element -> element.times().moments().mean())
                .number("sd", SECONDS, element -> element.times().moments().sd())
                .number("cv", Notation.SHARE, element -> element.times().cv())
                .number("least", SECONDS, element -> element.percentile(0))
                .number("median", SECONDS, element -> element.percentile(0.5))
                .number("90 %", SECONDS, element -> element.percentile(0.9))
                .number("greatest", SECONDS, element -> element.percentile(1))
                .fileNumber("reading step", SECONDS, element -> element.times().step())
                .fileNumber("slope", slope, element -> element.slope().si())
                .with(
                        new Column("", Column.Holds.ENDS, Optional.of(slope), Column.Place.FILE),
                        element -> new Cell.Ends(element.slope()))
                .fileNumber("p of trend", Notation.PROBABILITY, element -> element.ofTrend(Trend::p))
                .fileNumber(
                        "observations needed",
                        Notation.PLAIN,
                        element -> element.size().needed())
                .of(elements());
    }

    private record Outlying(String name, Outliers fences, Outliers.Outlier found) {
        double fence() {
            return found.time() < fences.low() ? fences.low() : fences.high();
        }
    }

    private Table outliers() {
        return TableMaker.<Outlying>of("Outliers, all counted: " + Outliers.RULE)
                .intoFile("outliers.csv")
                .words("element", Outlying::name)
                .count("row", one -> one.found().row().number())
                .count("line", one -> one.found().row().line())
                .number("time", Notation.SECONDS, one -> one.found().time())
                .number("fence", Notation.SECONDS, Outlying::fence)
                .words("far out", one -> one.found().farOut() ? "yes" : "no")
                .fileWords("label", one -> one.found().row().label())
                .words("remark", one -> one.found().row().remark())
                .of(elements().stream().flatMap(TimesTables::outlying).toList());
    }

    private static Stream<Outlying> outlying(Element element) {
        Outliers fences = element.times().outliers();
        return fences.found().stream().map(found -> new Outlying(element.name(), fences, found));
    }

    private Table trend() {
        return TableMaker.<Element>of("Trend over the sheet: Mann-Kendall test, Sen's slope in s per coil change")
                .words("element", Element::name)
                .estimate("slope", SECONDS, true, "", Element::slope)
                .number("p", Notation.PROBABILITY, element -> element.ofTrend(Trend::p))
                .number("adjusted p", Notation.PROBABILITY, element -> element.ofTrend(Trend::adjusted))
                .words(
                        "trend",
                        element -> element.times()
                                .trend()
                                .filter(Trend::isShown)
                                .map(trend -> trend.slope() < 0 ? "shorter" : "longer")
                                .orElse("none shown"))
                .of(elements().stream()
                        .filter(element -> element.times().trend().isPresent())
                        .toList());
    }

    private Table correlations() {
        List<Correlation> pairs = result.statistics().correlations().stream()
                .sorted(Comparator.comparingDouble(Correlation::p))
                .toList();
        String which = pairs.size() > MOST_PAIRS ? ", the " + MOST_PAIRS + " strongest of " + pairs.size() : "";
        TableMaker<Correlation> table = TableMaker.<Correlation>of("Elements that go together" + which)
                .intoFile("correlations.csv")
                .shownUpTo(MOST_PAIRS)
                .words("element", pair -> result.label(pair.first()))
                .words("with", pair -> result.label(pair.second()))
                .count("n", Correlation::n);
        TimesWords.add(table, "ranks", "Spearman", CORRELATION, Correlation::spearman);
        TimesWords.add(table, "times", "Pearson", CORRELATION, Correlation::pearson);
        table.number("p", Notation.PROBABILITY, Correlation::p);
        TimesWords.add(table, "adjusted p", "p by Holm", Notation.PROBABILITY, Correlation::adjusted);
        return table.of(pairs);
    }

    /** Standing work of the rows as observed, and with elements drawn on their own. */
    private record Standing(String name, double together, double apart, Value difference) {}

    private Table tail() {
        int rows = result.statistics().tail().map(JointTail::rows).orElse(0);
        return TableMaker.<Standing>of("Standing work together, s: as observed, and with elements drawn on their own")
                .words("of " + rows + " coil changes", Standing::name)
                .number("observed", SECONDS, Standing::together)
                .number("on its own", SECONDS, Standing::apart)
                .estimate("difference", SECONDS, true, "", Standing::difference)
                .of(result.statistics().tail().map(TimesTables::rows).orElse(List.of()));
    }

    private static List<Standing> rows(JointTail tail) {
        List<Standing> rows = new ArrayList<>();
        double sd = tail.together().sd();
        rows.add(new Standing(
                "standard deviation", sd, tail.apartSd(), Value.of(sd - tail.apartSd(), Notation.SECONDS)));
        tail.percentiles()
                .forEach(at -> rows.add(new Standing(
                        Notation.SHARE.text(at.p()) + " take at most",
                        at.together(),
                        at.apart(),
                        TimesWords.difference(at))));
        return rows;
    }

    /** The value stands alone, so that it can be copied; what there is to say of it comes below. */
    private Table distributions() {
        return Table.pairs(
                "What to simulate with",
                elements().stream()
                        .flatMap(element -> {
                            ElementFits fits = result.fits().get(element.i());
                            return Stream.of(
                                    List.of(Cell.of(element.name()), Cell.of(TimesWords.choice(fits))),
                                    List.of(Cell.of("why"), Cell.of(TimesWords.why(fits))));
                        })
                        .toList());
    }

    private Table sizes() {
        SampleSize any = result.sizes().get(0);
        TableMaker<Element> table = TableMaker.<Element>of(
                        "Enough? To know each mean within " + Notation.SHARE.text(any.precision()) + " with "
                                + Value.of(any.confidence(), Notation.SHARE.with(Rounding.GIVEN))
                                        .text()
                                + " confidence (ILO)")
                .words("element", Element::name)
                .count("taken", element -> element.size().taken())
                .count("needed", element -> element.size().total())
                .count("still to take", element -> element.size().more());
        result.allowance()
                .ifPresent(share -> table.number(
                        "standard time",
                        Notation.SECONDS,
                        element -> new StandardTime(element.times().moments().mean(), share).standard()));
        return table.of(elements());
    }
}
