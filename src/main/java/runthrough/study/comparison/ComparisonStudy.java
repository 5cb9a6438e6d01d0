package runthrough.study.comparison;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import runthrough.plant.Alternative;
import runthrough.simulation.records.Totals;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.ProgressCounter;
import runthrough.study.Share;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.comparison.Compared.Figure;
import runthrough.study.comparison.Comparison.NotRun;
import runthrough.study.statistics.Pairs;

/** Runs alternatives under the same random numbers and holds them against the one called today. */
public final class ComparisonStudy {
    private final Alternative today;
    private final List<Alternative> others;
    private final List<NotRun> notRun;
    private final double target;

    /**
     * A comparison of alternatives whose lines must have passed their check, and which have seed and number of replications in
     * common.
     *
     * @param today what the others are held against
     * @param others at least one
     * @param target share of coil changes that should run through, in (0, 1]
     * @throws StudyException when that is not so, or there is nothing to compare
     */
    public ComparisonStudy(Alternative today, List<Alternative> others, double target) {
        this(today, others, List.of(), target);
    }

    /** The same beside alternatives of which it is known that they cannot be run. */
    public ComparisonStudy(Alternative today, List<Alternative> others, List<NotRun> notRun, double target) {
        if (others.isEmpty()) {
            throw new StudyException("there is nothing to compare " + today.name()
                    + " with. Add alternatives to the scenario, such as \"alternatives: {second uncoiler:"
                    + " {entry.uncoilers: 2}}\".");
        }
        others.stream()
                .filter(other -> !sharesRandomNumbers(today, other))
                .findFirst()
                .ifPresent(other -> {
                    throw new IllegalArgumentException(
                            other.name() + " has another seed or number of replications than " + today.name());
                });
        this.today = today;
        this.others = List.copyOf(others);
        this.notRun = List.copyOf(notRun);
        this.target = Share.target(target);
    }

    private static boolean sharesRandomNumbers(Alternative one, Alternative other) {
        return one.request().run().seed() == other.request().run().seed()
                && one.request().run().replications() == other.request().run().replications();
    }

    /**
     * Runs it. An alternative of which a replication cannot go on is left out, and named.
     *
     * @param threads how many replications run at once, {@code >= 1}; does not change the answer
     * @throws StudyException when a replication of today's line cannot go on, or one of every other; it names the alternative
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public Comparison run(int threads, StudyListener listener) {
        ProgressCounter steps = new ProgressCounter(listener, 1 + others.size());
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        Evaluated reference = evaluate(today, evaluator, steps);
        List<NotRun> leftOut = new ArrayList<>(notRun);
        List<Evaluated> ran = ran(evaluator, steps, leftOut);
        Comparison comparison = new Comparison(
                target,
                Stream.concat(Stream.of(reference), ran.stream())
                        .mapToInt(one -> one.evaluation().replications().size())
                        .max()
                        .orElseThrow(),
                yearlyTime(),
                Pairs.of(ran.size()).confidence(),
                compared(reference, Optional.empty()),
                ran.stream()
                        .map(one -> compared(
                                one,
                                Optional.of(new AgainstToday(
                                        one.evaluation(), reference.evaluation(), ran.size(), yearlyTime()))))
                        .toList(),
                leftOut);
        steps.finish();
        return comparison;
    }

    private List<Evaluated> ran(Evaluator evaluator, ProgressCounter steps, List<NotRun> leftOut) {
        List<Evaluated> ran = new ArrayList<>();
        List<StudyException> why = new ArrayList<>();
        for (Alternative other : others) {
            try {
                ran.add(evaluate(other, evaluator, steps));
            } catch (StudyException e) {
                why.add(e);
                leftOut.add(new NotRun(other.name(), reason(e)));
            }
        }
        if (ran.isEmpty()) {
            throw why.get(0);
        }
        return ran;
    }

    /** What kept it from going on, without the alternative's name and without a full stop. */
    private static String reason(StudyException e) {
        Throwable cause = e.getCause() == null ? e : e.getCause();
        return String.valueOf(cause.getMessage()).replaceFirst("\\.$", "");
    }

    private double yearlyTime() {
        return today.request().run().yearlyTime();
    }

    /** An alternative with what its replications gave. */
    private record Evaluated(Alternative alternative, Evaluation evaluation) {}

    private static Evaluated evaluate(Alternative alternative, Evaluator evaluator, ProgressCounter steps) {
        try {
            Evaluation evaluation = evaluator
                    .findingCauses()
                    .evaluate(
                            alternative.request().line(), alternative.request().run());
            steps.next();
            return new Evaluated(alternative, evaluation);
        } catch (StudyException e) {
            throw new StudyException("alternative \"" + alternative.name() + "\": " + e.getMessage(), e);
        }
    }

    private Compared compared(Evaluated one, Optional<AgainstToday> against) {
        Evaluation evaluation = one.evaluation();
        Map<ComparisonMeasure, Figure> figures = new EnumMap<>(ComparisonMeasure.class);
        for (ComparisonMeasure measure : ComparisonMeasure.values()) {
            figures.put(
                    measure, new Figure(measure.estimate(evaluation), against.map(other -> other.difference(measure))));
        }
        return new Compared(
                one.alternative(),
                evaluation.chance(),
                evaluation.answer(target),
                evaluation.changes(),
                one.alternative().request().run().targetWithoutStop().isPresent()
                        ? Optional.of(evaluation.shareWithoutStop())
                        : Optional.empty(),
                evaluation.namedCauses(one.alternative().request().run().replications()),
                (long) DoubleStream.of(evaluation.each(Totals::stripBreaks)).sum(),
                figures,
                Compared.yearly(figures, yearlyTime()),
                against);
    }
}
