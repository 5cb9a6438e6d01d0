package runthrough.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.chart.document.SummaryData;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.report.Answer;
import runthrough.report.Figure;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.Verdict;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Figures and picture of the page to decide on. Where entry and process are one strip every coil change stops the process by
 * design, and none would ever run through; nor does any where every one slows, in this line and in all its alternatives. What
 * counts then is the hours lost and the good output of a year.
 */
final class Decision {
    private final SimulationRequest request;
    private final Verdict verdict;
    private final Answer report;
    private final Optional<Comparison> comparison;
    private final Year year;
    private final Texts texts;
    private final boolean sharesSayNothing;

    Decision(SimulationRequest request, Answer report, Optional<Comparison> comparison, Year year) {
        this.request = request;
        this.verdict = year.verdict();
        this.report = report;
        this.comparison = comparison;
        this.year = year;
        this.texts = year.texts();
        this.sharesSayNothing = year.stopsByDesign() || shares().stream().allMatch(share -> share.mean() == 0);
    }

    /** The figures of the report; hours and output of a year in the place of a share that is 0 whatever is done. */
    List<Figure> figures() {
        if (!sharesSayNothing) {
            return report.figures();
        }
        Value share = report.figures().get(0).value().value().orElseThrow();
        Value lost = year.lostTime();
        return Stream.concat(
                        Stream.of(
                                Figure.of(
                                        "lost in a year",
                                        lost,
                                        "of " + lost.notation().text(year.time()) + "; " + share.text()
                                                + " of coil changes run through"),
                                Figure.of("good output in a year", year.goodOutput())),
                        report.figures().stream().skip(1))
                .toList();
    }

    SummaryData picture() {
        return new SummaryData(
                request.title(),
                report.headline().tone().sign(),
                report.headline().word(),
                report.headline().sentence(),
                verdict.target(),
                request.resultsIn(),
                sharesSayNothing ? List.of() : shares(),
                sharesSayNothing ? years() : List.of(),
                verdict.storage().map(this::strip));
    }

    private String name() {
        return comparison.isPresent() ? year.line() : "as it is";
    }

    private Stream<Compared> others() {
        return comparison.stream()
                .flatMap(all -> all.all().stream())
                .filter(one -> !one.alternative().name().equals(year.line()));
    }

    private List<SummaryData.Share> shares() {
        return Stream.concat(
                        Stream.of(share(name(), true, verdict.shareRunThrough(), verdict.chance())),
                        others().map(one -> share(
                                one.alternative().name(),
                                false,
                                one.figure(ComparisonMeasure.RUN_THROUGH).value(),
                                one.chance())))
                .toList();
    }

    private SummaryData.Share share(String name, boolean today, Estimate share, boolean chance) {
        Optional<Interval> interval = share.interval().filter(any -> chance);
        return new SummaryData.Share(
                name,
                today,
                share.mean(),
                interval.map(Interval::low).orElse(share.mean()),
                Math.min(1, interval.map(Interval::high).orElse(share.mean())),
                texts.value(Kind.SHARE, share).text());
    }

    private List<SummaryData.InYear> years() {
        return Stream.concat(
                        Stream.of(new SummaryData.InYear(
                                name(), true, amount(year.lostTime()), amount(year.goodOutput()))),
                        others().map(one -> new SummaryData.InYear(
                                one.alternative().name(),
                                false,
                                amount(one, Kind.TIME, ComparisonMeasure.LOST_TIME),
                                amount(one, Kind.MASS, ComparisonMeasure.OUTPUT_MASS))))
                .toList();
    }

    private SummaryData.Amount amount(Compared one, Kind kind, ComparisonMeasure measure) {
        Estimate estimate = one.perYear(measure).value();
        return amount(new Value(
                estimate.mean(),
                year.notation(kind, estimate.mean()),
                estimate.interval().filter(any -> one.chance())));
    }

    private static SummaryData.Amount amount(Value value) {
        return new SummaryData.Amount(
                value.si(),
                value.interval().map(Interval::low).orElse(value.si()),
                value.interval().map(Interval::high).orElse(value.si()),
                value.text());
    }

    /**
     * What a change takes on average, and at the target, where the process is kept at its rated speed. Where it may slow, what
     * was drawn is less than that, and only what the target needs is pointed at.
     */
    private SummaryData.Strip strip(Verdict.Storage storage) {
        Line line = request.line();
        double lowest = line.process()
                .slowing()
                .map(slowing -> slowing.level())
                .orElse(line.stopLevel(line.fastestRatedSpeed()));
        double usable = line.accumulator().capacity() - lowest;
        List<SummaryData.Mark> marks = new ArrayList<>();
        double drawn = storage.stripDrawn().mean().mean();
        double needed = verdict.spare().map(spare -> usable - spare.metres()).orElse(drawn);
        boolean slows = line.process().slowing().isPresent() && verdict.spare().isPresent();
        if (!slows) {
            marks.add(mark(drawn, verdict.chance() ? " on average" : " every time"));
        }
        if (slows || verdict.chance()) {
            marks.add(mark(
                    needed,
                    (slows ? " at the rated speed" : "") + " for the target of " + Texts.target(verdict.target())));
        }
        return new SummaryData.Strip(
                usable,
                "a full accumulator gives " + texts.length(usable)
                        + (line.process().slowing().isPresent() ? " without slowing" : ""),
                slows ? needed : Math.max(drawn, needed),
                marks);
    }

    private SummaryData.Mark mark(double metres, String what) {
        return new SummaryData.Mark(metres, texts.length(metres) + what);
    }
}
