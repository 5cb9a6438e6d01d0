package runthrough.report.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.chart.uncertainty.UncertaintyCharts;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Chapter;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.described.InputTables;
import runthrough.report.write.CsvWriter;
import runthrough.study.uncertainty.MeasuredInputs.Input;
import runthrough.study.uncertainty.UncertainFigure;
import runthrough.study.uncertainty.Uncertainty;

/** Shows how well the answer is known when the times are known from some observations only. */
public final class UncertaintyAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT =
            new AnswerFormat("uncertainty", 2, Subject.OF_LINES, UncertaintyDocument.SHAPE);

    private static final String RESAMPLES = "resamples.csv";
    private static final String CURVE = "share-against-capacity.csv";

    private final Uncertainty known;
    private final UncertaintyPrecision precision;
    private final StudyWords words;

    private UncertaintyAnswer(Uncertainty known, UncertaintyPrecision precision) {
        this.known = known;
        this.precision = precision;
        this.words = StudyWords.of(known.request().resultsIn(), true);
    }

    /** The answer of {@code known}; {@code precision} is asked for share and capacity. */
    public static Answer of(
            Uncertainty known, UncertaintyPrecision precision, List<String> warnings, Provenance provenance) {
        return new UncertaintyAnswer(known, precision).answer(warnings, provenance);
    }

    private Answer answer(List<String> warnings, Provenance provenance) {
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(known.request(), provenance),
                        "How well is the answer known, the times being known from observations only?",
                        words.runs(known.request(), known.request().run().replications())
                                + " with the times as observed, seed "
                                + known.request().run().seed()
                                + ", and " + known.resamples() + " resamples of the times",
                        true),
                mark(),
                advice(),
                figures(),
                new Answer.Body(
                        UncertaintyCharts.of(known),
                        List.of(table()),
                        List.of(Chapter.of("account", "How it was computed", account())),
                        Map.of(RESAMPLES, resamples(), CURVE, curve())),
                UncertaintyDocument.SHAPE.fields(new UncertaintyDocument.Asked(known, precision), true),
                warnings,
                provenance);
    }

    private Headline mark() {
        return switch (known.answer()) {
            case MEETS -> new Headline(Tone.RUNS_THROUGH, "MEETS THE TARGET", sentence());
            case MISSES -> new Headline(Tone.STOPS, "MISSES THE TARGET", sentence());
            case UNDECIDED -> new Headline(Tone.MARGINAL, "NOT DECIDED", sentence());
        };
    }

    private String sentence() {
        String seen =
                "The process runs through " + words.texts().share(known.share().value())
                        + " of coil changes; with what is not known of the times, the 95 % interval is "
                        + shares(known.share().all()) + ", where simulation noise alone leaves "
                        + shares(known.share().simulation()) + ".";
        return switch (known.answer()) {
            case MEETS -> seen + " The target of " + words.texts().share(known.target()) + " is met all the same.";
            case MISSES -> seen + " The target of " + words.texts().share(known.target()) + " is missed in any case.";
            case UNDECIDED ->
                seen + " The target of " + words.texts().share(known.target())
                        + " lies within, so the times do not decide it"
                        + (known.answerIfTimesWereKnown() == known.answer()
                                ? "."
                                : ", though the plain verdict seems to.");
        };
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        advice.add(observations());
        known.capacity()
                .ifPresent(capacity -> advice.add("To meet the target the accumulator must hold "
                        + words.texts().length(capacity.value()) + ": " + lengths(capacity.all())
                        + " with what is not known of the times, " + alone(capacity.simulation()) + "."));
        return advice;
    }

    private String observations() {
        String names = known.inputs().stream()
                .map(input -> Texts.count(input.observations()) + " of " + input.name())
                .collect(Collectors.joining(", "));
        double forShare = known.share().observationsFactor(precision.share());
        String share = "To know the share to within " + words.texts().share(precision.share()) + " either way, "
                + (forShare > 1 ? more(forShare) : "they are enough") + ".";
        String capacity = known.capacity()
                .map(one -> {
                    double factor = one.observationsFactor(precision.capacity() * one.value());
                    return " To know the capacity to within " + words.texts().share(precision.capacity()) + " of it, "
                            + (factor > 1 ? more(factor) : "they are enough") + ".";
                })
                .orElse("");
        return "The times rest on observations: " + names + ". " + share + capacity;
    }

    private String more(double factor) {
        return "it takes about "
                + known.inputs().stream()
                        .map(input -> Texts.count(further(input, factor)) + " more of " + input.name())
                        .collect(Collectors.joining(", "));
    }

    static long further(Input input, double factor) {
        return (long) Math.ceil(input.observations() * (factor - 1) - 1e-9);
    }

    private String shares(UncertainFigure.Band band) {
        return words.texts().range(Kind.SHARE, band.low(), band.high());
    }

    private String lengths(UncertainFigure.Band band) {
        return words.texts().range(Kind.LENGTH, band.low(), band.high());
    }

    /** Measured times are few, and so are the capacities that they ask for: noise may not move the answer from one to the next. */
    private String alone(UncertainFigure.Band band) {
        return band.halfWidth() > 0
                ? lengths(band) + " from simulation noise alone"
                : "where simulation noise leaves nothing open";
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        UncertainFigure share = known.share();
        figures.add(Figure.words(
                "run through",
                words.texts().share(share.value()),
                "target " + words.texts().share(known.target())));
        figures.add(Figure.words("times not known exactly", shares(share.all()), "95 % interval of the share"));
        figures.add(Figure.words("simulation noise alone", shares(share.simulation()), "95 % interval of the share"));
        known.capacity().ifPresent(capacity -> {
            figures.add(Figure.words("capacity for the target", words.texts().length(capacity.value()), ""));
            figures.add(
                    Figure.words("times not known exactly", lengths(capacity.all()), "95 % interval of the capacity"));
            figures.add(Figure.words(
                    "simulation noise alone", lengths(capacity.simulation()), "95 % interval of the capacity"));
        });
        return figures;
    }

    private Table table() {
        List<List<String>> rows = new ArrayList<>();
        double share = known.share().observationsFactor(precision.share());
        Optional<Double> capacity =
                known.capacity().map(one -> one.observationsFactor(precision.capacity() * one.value()));
        for (Input input : known.inputs()) {
            rows.add(List.of(
                    input.name(),
                    Texts.count(input.observations()),
                    Texts.count(further(input, share)),
                    capacity.map(factor -> Texts.count(further(input, factor))).orElse("")));
        }
        return Table.words(
                "Observations, and how many more it takes",
                List.of(
                        "",
                        "observed",
                        "for the share, " + words.texts().share(precision.share()),
                        "for the capacity, " + words.texts().share(precision.capacity())),
                rows,
                true);
    }

    private List<String> account() {
        return List.of(
                "The direct bootstrap (Barton and Schruben 1993, 2001): as many observations as there are were drawn from them"
                        + " with replacement, whole rows of a sheet at a time, as if other coil changes had been timed; the line was"
                        + " run with each such set of times, and with random numbers of its own.",
                "The variance of the answers over the resamples is that of the times and that of the simulation's noise (Cheng and"
                        + " Holland 1997). The noise of the short runs is taken out and that of the answer itself put in, by scaling"
                        + " the spread of the answers; the interval reaches from its 2.5th to its 97.5th percentile, placed about the"
                        + " answer with the times as observed.",
                "How many more observations it takes is calculated from the variance of the times alone, which falls as one over"
                        + " their number. What was never observed, such as a rare mishap, no resample can show.",
                "The capacity is calculated from the strip that coil changes take out of an accumulator that never runs empty; size"
                        + " finds it by running each capacity.");
    }

    private String resamples() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < known.shares().size(); i++) {
            rows.add(List.of(
                    Integer.toString(i + 1), CsvWriter.number(known.shares().get(i))));
        }
        return CsvWriter.of(List.of("resample", "share run through"), rows);
    }

    private String curve() {
        Unit length = words.units().unit(Kind.LENGTH);
        return CsvWriter.of(
                List.of(
                        "capacity (" + length.symbol() + ")",
                        "share run through",
                        "low, simulation alone",
                        "high, simulation alone",
                        "low, with the times",
                        "high, with the times"),
                known.curve().stream()
                        .map(point -> Stream.of(
                                        length.fromSi(point.capacity()),
                                        point.share().value(),
                                        point.share().simulation().low(),
                                        point.share().simulation().high(),
                                        point.share().all().low(),
                                        point.share().all().high())
                                .map(CsvWriter::number)
                                .toList())
                        .toList());
    }
}
