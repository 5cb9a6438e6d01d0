package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import runthrough.chart.StudyCharts;
import runthrough.handcalc.Storage;
import runthrough.plant.StorageForm;
import runthrough.plant.StorageForm.Adjustable;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.report.ReportPage.KeyFigure;
import runthrough.study.Answer;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Size;
import runthrough.study.sizing.Sizing;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Narrowness;

/** Tells how large the accumulator must be. */
public final class SizingAnswer {
    private static final String CURVE = "share-against-capacity.csv";
    private static final String REMEDIES = "what-would-free-it.csv";

    private final Sizing sizing;
    private final StudyWords words;

    private SizingAnswer(Sizing sizing) {
        this.sizing = sizing;
        this.words = StudyWords.of(sizing.brief().resultsIn(), sizing.chance());
    }

    /** The answer of {@code sizing}. */
    public static StudyAnswer of(Sizing sizing, List<String> warnings, Provenance provenance) {
        return new SizingAnswer(sizing).answer(warnings, provenance);
    }

    private StudyAnswer answer(List<String> warnings, Provenance provenance) {
        Optional<Remedies> remedies = sizing.noneEnough().map(none -> new Remedies(none, words));
        List<Table> tables = new ArrayList<>();
        remedies.map(Remedies::table).ifPresent(tables::add);
        if (!sizing.curve().isEmpty()) {
            tables.add(curve());
        }
        return new StudyAnswer(
                sizing.brief(),
                "size",
                "How large must the accumulator be?",
                mark(),
                advice(),
                figures(),
                words.basis(sizing.brief(), sizing.replications()),
                StudyCharts.of(sizing),
                tables,
                account(),
                sizing.chance(),
                SizingDocument.SHAPE.fields(sizing, sizing.chance()),
                Map.of(CURVE, curveCsv(), REMEDIES, Remedies.csv(remedies, words)),
                warnings,
                provenance);
    }

    private ReportPage.Mark mark() {
        return switch (sizing.answer()) {
            case FOUND ->
                switch (present()) {
                    case MEETS -> new ReportPage.Mark("✓", "LARGE ENOUGH", "runs-through", found(), "");
                    case MISSES -> new ReportPage.Mark("✗", "TOO SMALL", "stops", found(), "");
                    case UNDECIDED -> new ReportPage.Mark("◆", "MARGINAL", "marginal", found(), "");
                };
            case NONE_IS_ENOUGH ->
                new ReportPage.Mark(
                        "✗",
                        "NO SIZE IS ENOUGH",
                        "stops",
                        new Remedies(sizing.noneEnough().orElseThrow(), words).reason(),
                        "");
            case NOT_APPLICABLE ->
                new ReportPage.Mark(
                        "◆",
                        "NOTHING TO SIZE",
                        "marginal",
                        "Entry and process of this line are one strip, and every coil change stops it: there is no"
                                + " accumulator.",
                        "");
        };
    }

    /** Whether the accumulator as it is meets the target. */
    private Answer present() {
        return sizing.present()
                .flatMap(Sizing.Point::share)
                .map(share -> words.against(sizing.target(), share))
                .orElse(Answer.MISSES);
    }

    private String found() {
        Crossing capacity = sizing.capacity().orElseThrow();
        Size smallest = sizing.smallest().orElseThrow();
        String text = "The smallest accumulator with which " + words.share(sizing.target())
                + " of coil changes run through holds " + words.length(smallest.capacity())
                + ends(capacity.low(), capacity.high())
                        .map(ends -> " (95 % interval " + ends + ")")
                        .orElse("");
        return text + adjusted(smallest).map(setting -> ": " + setting).orElse("") + ". " + asItIs();
    }

    private String asItIs() {
        Sizing.Point now = sizing.present().orElseThrow();
        String seen =
                now.share().map(share -> "runs through " + words.known(share)).orElse("cannot be run");
        return "The present one, " + words.length(now.size().capacity()) + ", " + seen + ".";
    }

    /** What a designer would set it to, with the interval, where that is not the capacity itself. */
    private Optional<String> adjusted(Size size) {
        return size.form()
                .adjustable()
                .filter(adjustable -> adjustable.measure() != StorageForm.Measure.CAPACITY)
                .map(adjustable -> setting(size.form()) + " of " + words.length(adjustable.metres())
                        + settings().map(ends -> " (" + ends + ")").orElse(""));
    }

    private Optional<String> settings() {
        Optional<Adjustable> low = sizing.possible().flatMap(size -> size.form().adjustable());
        Optional<Adjustable> high = sizing.sure().flatMap(size -> size.form().adjustable());
        return low.flatMap(
                from -> high.flatMap(to -> ends(OptionalDouble.of(from.metres()), OptionalDouble.of(to.metres()))));
    }

    private Optional<String> ends(OptionalDouble low, OptionalDouble high) {
        return sizing.chance() && low.isPresent() && high.isPresent()
                ? Optional.of(words.range(Kind.LENGTH, low.getAsDouble(), high.getAsDouble()))
                : Optional.empty();
    }

    /** How many of what there are in the accumulator, and what is set to give it its capacity. */
    private static String setting(StorageForm form) {
        if (form instanceof StorageForm.Strands strands) {
            return strands.strands() + " strands with a stroke";
        } else if (form instanceof StorageForm.FreeLoop loop) {
            return loop.loops() + (loop.loops() == 1 ? " loop" : " loops") + " with a greatest sag";
        } else if (form instanceof StorageForm.Spiral spiral) {
            return Texts.number(spiral.wraps()) + " wraps with a full diameter";
        }
        return "capacity";
    }

    private static boolean isSetOtherwise(StorageForm form) {
        return form.adjustable()
                .filter(adjustable -> adjustable.measure() != StorageForm.Measure.CAPACITY)
                .isPresent();
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        if (sizing.answer() == Sizing.Answer.NOT_APPLICABLE) {
            advice.add(
                    "To size one, give the scenario an accumulator of any size and joins instead of threading anew.");
        }
        sizing.noneEnough().ifPresent(none -> advice.addAll(new Remedies(none, words).advice()));
        sizing.capacity().filter(found -> sizing.chance()).ifPresent(found -> {
            if (found.sure().isEmpty()) {
                advice.add("This run is too short to show the target met with any capacity"
                        + sizing.resolution()
                                .leastToShow()
                                .map(number -> ": it takes at least " + Texts.count(number)
                                        + " coil changes to show a share of " + words.share(sizing.target()))
                                .orElse("")
                        + ". Take the capacity as the best guess.");
            } else {
                advice.add("To be on the safe side, build the upper end of the interval: with "
                        + words.length(found.sure().getAsDouble()) + " the target is shown to be met.");
            }
            if (found.fall() > 0) {
                advice.add("A larger accumulator did not always do better in this line, by up to "
                        + words.share(found.fall()) + " of coil changes under the same luck.");
            }
        });
        sizing.interval()
                .filter(interval -> !interval.reached())
                .map(this::notReached)
                .ifPresent(advice::add);
        return advice;
    }

    private String notReached(Narrowness interval) {
        String there = interval.halfWidth().isPresent()
                ? "The interval is " + words.share(interval.halfWidth().getAsDouble())
                        + " of the capacity to either side"
                : "The interval has an open end";
        return there + ", not the " + words.share(interval.asked()) + " asked for; " + interval.replications()
                + " replications were run"
                + (interval.wouldDo().isPresent()
                        ? ", about " + Texts.count(interval.wouldDo().getAsInt()) + " would do."
                        : ".");
    }

    private List<KeyFigure> figures() {
        List<KeyFigure> figures = new ArrayList<>();
        sizing.smallest().ifPresent(smallest -> {
            Crossing capacity = sizing.capacity().orElseThrow();
            figures.add(new KeyFigure(
                    "smallest capacity",
                    words.length(smallest.capacity()),
                    ends(capacity.low(), capacity.high()).orElse(sizing.chance() ? "" : "exact")));
            smallest.form()
                    .adjustable()
                    .filter(adjustable -> adjustable.measure() != StorageForm.Measure.CAPACITY)
                    .ifPresent(adjustable -> figures.add(new KeyFigure(
                            setting(smallest.form()),
                            words.length(adjustable.metres()),
                            settings().orElse(""))));
        });
        sizing.present().ifPresent(now -> {
            double capacity = now.size().capacity();
            figures.add(new KeyFigure("as it is", words.length(capacity), setting(now)));
            now.share()
                    .ifPresent(share -> figures.add(new KeyFigure(
                            "run through, as it is",
                            words.share(share.mean()),
                            words.texts().interval(Kind.SHARE, share).orElse(""))));
            sizing.smallest().ifPresent(smallest -> {
                double spare = capacity - smallest.capacity();
                figures.add(new KeyFigure(
                        spare >= 0 ? "to spare" : "missing",
                        words.length(Math.abs(spare)),
                        words.share(Math.abs(spare) / capacity) + " of what there is"));
            });
        });
        sizing.handCalculation()
                .storage()
                .map(Storage::capacity)
                .ifPresent(margin -> figures.add(new KeyFigure(
                        "by hand", words.length(margin.needed()), "one joint of mean time, accumulator full")));
        return figures;
    }

    private String setting(Sizing.Point point) {
        return point.size()
                .form()
                .adjustable()
                .filter(adjustable -> adjustable.measure() != StorageForm.Measure.CAPACITY)
                .map(adjustable -> setting(point.size().form()) + " of " + words.length(adjustable.metres()))
                .orElse("");
    }

    private Table curve() {
        boolean both = isSetOtherwise(sizing.curve().get(0).size().form());
        List<String> head = new ArrayList<>(List.of("capacity"));
        if (both) {
            head.add(setting(sizing.curve().get(0).size().form()).replaceFirst(".* with a ", ""));
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

    private String curveCsv() {
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
        return CsvText.of(
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

    private List<String> account() {
        List<String> account = new ArrayList<>();
        account.add(
                "Only the capacity was changed, by what is adjustable of the accumulator; reserve and levels given in"
                        + " metres stayed. Every capacity met the same luck: the same random numbers, coil change by coil change.");
        if (sizing.chance()) {
            account.add(
                    "The capacity told is the smallest at which the share seen reaches the target. Its interval turns"
                            + " round that of the share: the upper end is the smallest capacity at which the whole 95 % interval of"
                            + " the share is at or above the target, the lower end the smallest at which it is not wholly below."
                            + " Replications were added until that interval was as narrow as asked for, or so many as allowed.");
        } else {
            account.add("Nothing is left to chance in this line, so the capacity is exact, but for a ten-thousandth.");
        }
        return account;
    }
}
