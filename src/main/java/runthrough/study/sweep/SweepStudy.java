package runthrough.study.sweep;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import runthrough.plant.SimulationRequest;
import runthrough.study.OrderedRuns;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.Verdict;
import runthrough.study.uncertainty.UncertaintyStudy;

/** Runs the cases of a sweep, one case on one thread. */
public final class SweepStudy {
    private final Cases cases;
    private final Function<Map<String, String>, Asked> asked;
    private final OptionalInt resamples;

    /**
     * A sweep.
     *
     * @param asked what a case that sets these values by path asks; called on several threads
     */
    public SweepStudy(Cases cases, Function<Map<String, String>, Asked> asked) {
        this(cases, asked, OptionalInt.empty());
    }

    private SweepStudy(Cases cases, Function<Map<String, String>, Asked> asked, OptionalInt resamples) {
        this.cases = cases;
        this.asked = asked;
        this.resamples = resamples;
    }

    /**
     * The same sweep, which also asks of each case how well its answer is known when its times are known from observations only; of
     * a line without any that is a failure.
     *
     * @param resamples as {@link UncertaintyStudy} takes them
     */
    public SweepStudy withUncertainty(int resamples) {
        return new SweepStudy(cases, asked, OptionalInt.of(resamples));
    }

    /** What a case comes to. */
    public sealed interface Asked {
        /** It can be run. */
        record Possible(SimulationRequest request) implements Asked {}

        /** It cannot be run. */
        record Refused(String why) implements Asked {}
    }

    /**
     * Runs cases.
     *
     * @param indices of the cases to run, from 0
     * @param threads how many cases run at once, {@code >= 1}; does not change what comes out
     * @param taker gets the results in the order of {@code indices}, on this thread
     * @throws CancellationException when the listener or an interrupt gave it up
     */
    public void run(int[] indices, int threads, StudyListener listener, Consumer<CaseResult> taker) {
        int[] done = {0};
        listener.progress(0, indices.length);
        new OrderedRuns(threads)
                .run(
                        indices.length,
                        i -> result(indices[i]),
                        result -> {
                            taker.accept(result);
                            listener.progress(++done[0], indices.length);
                        },
                        listener::cancelled);
    }

    private CaseResult result(int index) {
        Map<String, String> values = cases.values().apply(index);
        try {
            Asked what = asked.apply(values);
            if (what instanceof Asked.Refused refused) {
                return failed(index, values, refused.why());
            }
            return done(index, values, ((Asked.Possible) what).request());
        } catch (CancellationException e) {
            throw e;
        } catch (StudyException e) {
            return failed(index, values, String.valueOf(e.getMessage()));
        } catch (RuntimeException e) {
            // A fault of the program, too, stops this case only.
            return failed(index, values, "internal error (" + e + "). This is a fault of the program.");
        }
    }

    private CaseResult done(int index, Map<String, String> values, SimulationRequest request) {
        // Made first: it refuses a line of which nothing was observed.
        Optional<UncertaintyStudy> uncertainty = resamples.isPresent()
                ? Optional.of(new UncertaintyStudy(request, request.run().target(), resamples.getAsInt()))
                : Optional.empty();
        Verdict verdict = new RunThroughStudy(request)
                .run(StudyOptions.onCallersThread(), StudyListener.NONE)
                .verdict();
        return new CaseResult(
                index + 1,
                values,
                Optional.of(verdict),
                uncertainty.map(study -> study.run(0, StudyListener.NONE)),
                "");
    }

    private static CaseResult failed(int index, Map<String, String> values, String why) {
        return new CaseResult(index + 1, values, Optional.empty(), Optional.empty(), why.replaceAll("\\s+", " "));
    }
}
