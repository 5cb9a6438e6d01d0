package runthrough.study.sizing;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.SimulationRequest;
import runthrough.study.Evaluator;
import runthrough.study.StudyListener;
import runthrough.study.Verdict;
import runthrough.study.cause.CauseCounts;
import runthrough.study.sizing.Sizing.Answer;

/**
 * Finds the smallest accumulator with which the target is met.
 *
 * <p>First the line is watched with an accumulator that never runs empty: does the entry keep up in the long run ({@link
 * LongRunBalance}), and what would each coil change have needed ({@link StripDemand})? From the needs comes how many replications
 * make the interval narrow enough, and a guess at its ends; both cost one run each. Then capacities about the guess are tried
 * in earnest ({@link runthrough.study.search.TargetSearch}), so that the answer does not rest on the guess.
 */
public final class SizingStudy {
    private final SimulationRequest request;
    private final SizingOptions options;

    /** A study of {@code request}, whose line must have passed its check; the target is that of {@code options}. */
    public SizingStudy(SimulationRequest request, SizingOptions options) {
        this.request = request;
        this.options = options;
    }

    /**
     * Runs it.
     *
     * @param threads how many replications run at once, {@code >= 1}; does not change the answer
     * @throws runthrough.study.StudyException when a replication cannot go on
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public Sizing run(int threads, StudyListener listener) {
        if (request.line().practice().isOneStrip()) {
            return notApplicable();
        }
        return new SizingRun(request, options, new Evaluator(threads, listener::cancelled), listener).run();
    }

    private Sizing notApplicable() {
        return new Sizing(
                request,
                options.target(),
                Answer.NOT_APPLICABLE,
                !request.line().isDeterministic(),
                request.run().replications(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                CauseCounts.none(),
                Optional.empty(),
                new Verdict.Resolution(Optional.empty(), Optional.empty()),
                List.of(),
                HandCalculation.of(request.line()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
