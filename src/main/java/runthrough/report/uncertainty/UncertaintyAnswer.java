package runthrough.report.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import runthrough.chart.uncertainty.UncertaintyCharts;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.described.InputTables;
import runthrough.study.fitting.Recommendation;
import runthrough.study.uncertainty.MeasuredInputs.Input;
import runthrough.study.uncertainty.UncertainFigure;
import runthrough.study.uncertainty.Uncertainty;

/** Shows how well the answer is known when the times are known from some observations only. */
public final class UncertaintyAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT =
            new AnswerFormat("uncertainty", 2, Subject.OF_LINES, () -> UncertaintyDocument.SHAPE);

    private static final String RESAMPLES = "resamples.csv";
    private static final String CURVE = "share-against-capacity.csv";
    private static final String NOISE = "simulation noise alone";

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
                new Answer.Body(UncertaintyCharts.of(known), List.of(observed(), resamples(), curve()), account()),
                () -> UncertaintyDocument.SHAPE.fields(new UncertaintyDocument.Asked(known, precision), true),
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
        String seen = "The process runs through " + share().text()
                + " of coil changes; with what is not known of the times, the 95 % interval is "
                + shares(known.share().all()) + ", where simulation noise alone leaves "
                + shares(known.share().simulation()) + ".";
        return switch (known.answer()) {
            case MEETS -> seen + " The target of " + Texts.target(known.target()) + " is met all the same.";
            case MISSES -> seen + " The target of " + Texts.target(known.target()) + " is missed in any case.";
            case UNDECIDED ->
                seen + " The target of " + Texts.target(known.target())
                        + (known.answerIfTimesWereKnown() == known.answer()
                                ? " lies within both, so neither the times nor the coil changes that were run decide it."
                                : " lies within, so the times do not decide it, though the plain verdict seems to.");
        };
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        few().ifPresent(advice::add);
        advice.add(observations());
        known.capacity()
                .ifPresent(capacity -> advice.add("To meet the target the accumulator must hold "
                        + value(Kind.LENGTH, capacity, capacity.all()).text() + ": " + lengths(capacity.all())
                        + " with what is not known of the times, " + alone(capacity.simulation()) + "."));
        return advice;
    }

    private Optional<String> few() {
        String few = known.inputs().stream()
                .filter(input -> input.observations() < Recommendation.FEWEST)
                .map(UncertaintyAnswer::counted)
                .collect(Collectors.joining(", "));
        return few.isEmpty()
                ? Optional.empty()
                : Optional.of("Too few observations: " + few
                        + ". Resamples of so few differ less than the times do,"
                        + " so that the intervals are too narrow: time at least " + Recommendation.FEWEST
                        + " coil changes.");
    }

    private static String counted(Input input) {
        return Texts.count(input.observations()) + " of " + input.name();
    }

    private String observations() {
        String names = known.inputs().stream().map(UncertaintyAnswer::counted).collect(Collectors.joining(", "));
        double forShare = known.share().observationsFactor(precision.share());
        String share = "To know the share to within " + words.texts().share(precision.share()) + " either way, "
                + more(forShare) + ".";
        String capacity = known.capacity()
                .map(one -> {
                    double factor = one.observationsFactor(precision.capacity() * one.value());
                    return " To know the capacity to within " + words.texts().share(precision.capacity()) + " of it, "
                            + more(factor) + ".";
                })
                .orElse("");
        return "The times rest on observations: " + names + ". " + share + capacity;
    }

    private String more(double factor) {
        return known.inputs().stream().allMatch(input -> further(input, factor) == 0)
                ? "they are enough"
                : "it takes about "
                        + known.inputs().stream()
                                .map(input -> Texts.count(further(input, factor)) + " more of " + input.name())
                                .collect(Collectors.joining(", "));
    }

    /** How many more it takes of {@code input}: {@code factor} times as many as there are, and no fewer than tell anything. */
    static long further(Input input, double factor) {
        long forFactor = (long) Math.ceil(input.observations() * (factor - 1) - 1e-9);
        return Math.max(forFactor, Math.max(0, Recommendation.FEWEST - input.observations()));
    }

    private String shares(UncertainFigure.Band band) {
        return value(Kind.SHARE, known.share(), band)
                .besides(known.target())
                .range()
                .orElseGet(() -> words.texts().share(band.low()));
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
        UncertainFigure share = known.share();
        List<Figure> figures = new ArrayList<>();
        figures.add(
                Figure.of("run through", share(), "times not known exactly; target " + Texts.target(known.target())));
        figures.add(alone(
                "share, times known",
                value(Kind.SHARE, share, share.simulation()).besides(known.target())));
        figures.add(new Figure(
                "chance to meet the target",
                Cell.of(Texts.percent(known.chanceOfTarget())),
                "as far as the times are known"));
        known.capacity().ifPresent(capacity -> {
            figures.add(Figure.of(
                    "capacity for the target",
                    value(Kind.LENGTH, capacity, capacity.all()),
                    "times not known exactly"));
            figures.add(alone("capacity, times known", value(Kind.LENGTH, capacity, capacity.simulation())));
        });
        return figures;
    }

    private Value share() {
        return value(Kind.SHARE, known.share(), known.share().all()).besides(known.target());
    }

    /** The interval alone: the number is that of the row above, where a wider interval leaves fewer of its digits certain. */
    private static Figure alone(String name, Value value) {
        return Figure.of(name, Cell.of(value.range().orElseGet(value::text) + ", " + NOISE));
    }

    private Value value(Kind kind, UncertainFigure figure, UncertainFigure.Band band) {
        return words.texts()
                .found(
                        words.texts().notation(kind, figure.value()),
                        figure.value(),
                        OptionalDouble.of(band.low()),
                        OptionalDouble.of(band.high()));
    }

    private Table observed() {
        double forShare = known.share().observationsFactor(precision.share());
        TableMaker<Input> table = TableMaker.<Input>of("Observations, and how many more it takes")
                .words("", Input::name)
                .count("observed", Input::observations)
                .count("for the share, " + words.texts().share(precision.share()), input -> further(input, forShare));
        known.capacity().ifPresent(capacity -> {
            double factor = capacity.observationsFactor(precision.capacity() * capacity.value());
            table.count(
                    "for the capacity, " + words.texts().share(precision.capacity()), input -> further(input, factor));
        });
        return table.of(known.inputs());
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

    private Table resamples() {
        return TableMaker.<Integer>of("Share run through in each resample")
                .intoFile(RESAMPLES)
                .shownUpTo(0)
                .count("resample", i -> i + 1)
                .number("share run through", Notation.SHARE, known.shares()::get)
                .of(IntStream.range(0, known.shares().size()).boxed().toList());
    }

    private Table curve() {
        return TableMaker.<Uncertainty.Point>of("Share run through against capacity")
                .intoFile(CURVE)
                .shownUpTo(0)
                .number("capacity", words.texts().notation(Kind.LENGTH), Uncertainty.Point::capacity)
                .number(
                        "share run through",
                        Notation.SHARE,
                        point -> point.share().value())
                .number(
                        "low, simulation alone",
                        Notation.SHARE,
                        point -> simulation(point).low())
                .number(
                        "high, simulation alone",
                        Notation.SHARE,
                        point -> simulation(point).high())
                .number(
                        "low, with the times",
                        Notation.SHARE,
                        point -> point.share().all().low())
                .number(
                        "high, with the times",
                        Notation.SHARE,
                        point -> point.share().all().high())
                .of(known.curve());
    }

    private static UncertainFigure.Band simulation(Uncertainty.Point point) {
        return point.share().simulation();
    }
}
