package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import runthrough.report.Cell;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.verdict.AnswerSheet;
import runthrough.report.verdict.RunThroughResult;
import runthrough.simulation.records.Totals;
import runthrough.study.TotalsEstimates;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Sample;

/**
 * The answer as the page shows it.
 *
 * @param sign whose shape shows the verdict without colour
 * @param word that states it
 * @param style name of its style
 * @param allowed how often a coil change may be none that runs through, such as 1 in 200; empty where no target is spoken of
 * @param help what would help, a sentence each
 * @param share of coil changes run through
 * @param target that it is held against
 * @param chance whether anything is random
 * @param changes coil changes that it was seen in
 * @param efforts how many surer answers can be asked for
 * @param causes why coil changes did not run through, most of them first
 * @param lever path of the number that acts on the largest cause; empty where there is none
 * @param margin how close the level came to the stop level; null where there is none
 */
record AnswerView(
        String sign,
        String word,
        String style,
        String sentence,
        String allowed,
        String further,
        String limitingFactor,
        String spare,
        List<String> help,
        List<String> warnings,
        ShareView share,
        double target,
        boolean chance,
        long changes,
        int efforts,
        List<FigureView> figures,
        List<CauseView> causes,
        String lever,
        @Nullable MarginView margin) {

    AnswerView {
        help = List.copyOf(help);
        warnings = List.copyOf(warnings);
        figures = List.copyOf(figures);
        causes = List.copyOf(causes);
    }

    /** A share with its interval; null where there is none, as where nothing is random. */
    record ShareView(
            double mean, @Nullable Double low, @Nullable Double high) {
        static ShareView of(Estimate share, boolean chance) {
            Optional<Interval> interval = share.interval().filter(any -> chance);
            return new ShareView(
                    share.mean(),
                    interval.map(Interval::low).orElse(null),
                    interval.map(Interval::high).orElse(null));
        }
    }

    /**
     * A number and where it comes from.
     *
     * @param from in a sentence
     * @param each what each replication gave, in the unit of the value; none where that shows nothing
     * @param least of them in words
     * @param most of them in words
     * @param givens what a hand calculation starts from: name and value
     * @param steps of a hand calculation: name, formula, numbers put in, result
     */
    record FigureView(
            String name,
            String value,
            String note,
            String from,
            List<Double> each,
            String least,
            String most,
            List<List<String>> givens,
            List<List<String>> steps) {}

    /** Coil changes by how far above the stop level they stayed, in metres; {@code short_} counts those below it. */
    record MarginView(
            double from,
            double to,
            List<Integer> counts,
            long total,

            @com.fasterxml.jackson.annotation.JsonProperty("short")
            long tooShort,

            double median) {
        private static final int BINS = 48;

        static MarginView of(Sample margins, long failed) {
            double least = margins.get(0);
            double most = margins.get(margins.count() - 1);
            double room = Math.max(1e-6, 0.02 * (most - least));
            // An edge at 0, so that no bar mixes what was enough with what was short.
            double width = Math.max((most - least + 2 * room) / BINS, 1e-9);
            double from = Math.floor((least - room) / width) * width;
            int bins = (int) Math.ceil((most + room - from) / width);
            int[] counts = new int[bins];
            for (int i = 0; i < margins.count(); i++) {
                counts[Math.min(bins - 1, (int) ((margins.get(i) - from) / width))]++;
            }
            return new MarginView(
                    from,
                    from + bins * width,
                    java.util.Arrays.stream(counts).boxed().toList(),
                    margins.count(),
                    failed,
                    margins.percentile(0.5));
        }
    }

    static AnswerView of(RunThroughResult result, int efforts) {
        AnswerSheet sheet = AnswerSheet.of(result);
        Verdict verdict = result.study().verdict();
        return new AnswerView(
                sheet.headline().tone().sign(),
                sheet.headline().word(),
                sheet.headline().tone().style(),
                sheet.headline().sentence(),
                sheet.allowed(),
                sheet.headline().further(),
                sheet.limiting(),
                sheet.margin(),
                sheet.changes(),
                result.warnings(),
                ShareView.of(verdict.shareRunThrough(), verdict.chance()),
                verdict.target(),
                verdict.chance(),
                verdict.changes().total(),
                efforts,
                figures(result, sheet),
                CauseView.of(result),
                CauseView.lever(result),
                result.study()
                        .pooled()
                        .margin()
                        .map(margins -> MarginView.of(margins, verdict.changes().failed()))
                        .orElse(null));
    }

    private static List<FigureView> figures(RunThroughResult result, AnswerSheet sheet) {
        List<FigureView> figures = new ArrayList<>();
        for (AnswerSheet.Named named : sheet.figures()) {
            figures.add(ofReplications(named, result));
        }
        sheet.limits().forEach(closed -> figures.add(of(closed, sheet)));
        return figures;
    }

    private static FigureView of(AnswerSheet.Closed closed, AnswerSheet sheet) {
        List<Cell> row = closed.row();
        return new FigureView(
                row.get(0).text(),
                row.get(1).text(),
                row.get(3).value().map(margin -> needed(row.get(2), margin)).orElse(""),
                from(closed, sheet),
                List.of(),
                "",
                "",
                closed.givens().stream()
                        .map(given ->
                                List.of(given.name() + ", " + given.symbol().text(), given.value()))
                        .toList(),
                closed.steps().stream()
                        .map(step -> List.of(
                                step.name(),
                                text(step.formula().pieces()),
                                text(step.numbers().pieces()),
                                step.result()))
                        .toList());
    }

    private static String from(AnswerSheet.Closed closed, AnswerSheet sheet) {
        String calculation = "Hand calculation with mean times, for " + coil(sheet);
        if (!closed.steps().isEmpty()) {
            return calculation + ":";
        }
        return calculation
                + (closed.row().get(1).value().isPresent()
                        ? "; it follows from the line as described."
                        : "; see the numbers above.");
    }

    private static String needed(Cell needed, Value margin) {
        return "needed " + needed.text() + ", "
                + (margin.si() < 0
                        ? "shortfall " + margin.notation().atLeast().text(-margin.si())
                        : "margin " + margin.text());
    }

    private static String coil(AnswerSheet sheet) {
        return sheet.coil().isEmpty() ? "the coil of this line" : "the coil that is hardest on it, " + sheet.coil();
    }

    private static String text(List<Cell.Piece> pieces) {
        return pieces.stream()
                .map(piece -> switch (piece.style()) {
                    case PLAIN -> piece.text();
                    case RAISED -> piece.text().equals("2") ? "²" : "^" + piece.text();
                    case LOWERED, NEXT_LINE -> piece.text();
                })
                .collect(Collectors.joining());
    }

    private static FigureView ofReplications(AnswerSheet.Named named, RunThroughResult result) {
        List<Totals> totals = result.study().totals();
        boolean chance = result.study().verdict().chance();
        ToDoubleFunction<Totals> of = switch (named.which()) {
            case SHARE -> Totals::shareRunThrough;
            case STOPS -> one -> one.starvedStops() * TotalsEstimates.SHIFT / one.duration();
            case LOST -> one -> one.lostTime() * TotalsEstimates.SHIFT / one.duration();
            case JOINT -> one -> one.jointSeconds() / one.changes();
            case OUTPUT -> Totals::goodSpeed;
            case WITHOUT_STOP -> one -> 1 - (double) one.stoppedChanges() / one.changes();
            case MARGIN, MARGIN_WITHOUT_STOP -> one -> Double.NaN;
        };
        List<Double> each = chance
                ? totals.stream()
                        .mapToDouble(of)
                        .filter(Double::isFinite)
                        .boxed()
                        .toList()
                : List.of();
        DoubleFunction<String> said = value -> named.figure()
                .value()
                .value()
                .map(known -> known.notation().text(value))
                .orElse("");
        return new FigureView(
                named.figure().name(),
                named.figure().value().text(),
                named.figure().note(),
                from(named.which(), totals.size(), result),
                each,
                each.isEmpty()
                        ? ""
                        : said.apply(each.stream().min(Double::compare).orElseThrow()),
                each.isEmpty()
                        ? ""
                        : said.apply(each.stream().max(Double::compare).orElseThrow()),
                List.of(),
                List.of());
    }

    private static String from(AnswerSheet.Which figure, int replications, RunThroughResult result) {
        long changes = result.study().verdict().changes().total();
        String basis = result.study().verdict().chance()
                ? replications + " independent replications with " + Texts.count(changes)
                        + " coil changes in all. Each dot is one of them; the"
                        + " interval comes from how much they differ, and where what counts was seen seldom, from its number."
                : "one run with " + Texts.count(changes) + " coil changes: nothing is random.";
        return switch (figure) {
            case SHARE -> "Coil changes that ran through over all coil changes, in " + basis;
            case WITHOUT_STOP -> "Coil changes without a stop over all coil changes, in " + basis;
            case MARGIN ->
                "What all but the share allowed by the target would have left, the process at its rated speed, in "
                        + basis;
            case MARGIN_WITHOUT_STOP ->
                "What all but the share allowed by the target have left at least, the process slowing as it does, in "
                        + basis;
            case STOPS -> "Starved stops over the simulated time, in " + basis;
            case LOST -> "Lost metres over the rated speed, in " + basis;
            case JOINT -> "From the tail's stop to the release of the joint, in " + basis;
            case OUTPUT ->
                "Metres through the process less those that are scrap afterwards, over the simulated time, in " + basis;
        };
    }
}
