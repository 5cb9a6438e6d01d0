package runthrough.study.fitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Distribution;
import runthrough.simulation.random.Draws;
import runthrough.study.OrderedRuns;
import runthrough.study.StudyListener;
import runthrough.study.fitting.Recommendation.Reason;
import runthrough.study.times.ElementTimes;
import runthrough.study.times.SheetStatistics;

/** Fits every family to every element of a sheet, with and without a shift, and recommends what to draw from. */
public final class FittingStudy {
    /** With fewer times or fewer different ones nothing is fitted. */
    private static final int FEWEST_TO_FIT = 8;

    private static final int FEWEST_DIFFERENT = 5;
    /** Of a mean or a standard deviation (s). */
    private static final double LONGEST = 1e9;

    private static final int STREAMS_AN_ELEMENT = 2 * Family.values().length;
    private static final int FIRST_STREAM = 1;

    private final long seed;

    /** A study with the random numbers of {@code seed}. */
    public FittingStudy(long seed) {
        this.seed = seed;
    }

    /**
     * The distributions of all elements, in order; worked out side by side, with the same answer as one after the other.
     *
     * @throws java.util.concurrent.CancellationException when {@code listener} or an interrupt gave it up
     */
    public List<ElementFits> run(SheetStatistics statistics, StudyListener listener) {
        List<ElementTimes> elements = statistics.elements();
        List<ElementFits> all = new ArrayList<>();
        new OrderedRuns(Runtime.getRuntime().availableProcessors())
                .run(elements.size(), i -> fits(elements.get(i), i), all::add, listener::cancelled);
        return List.copyOf(all);
    }

    /**
     * The distributions of one element.
     *
     * @param number of the element, so that each has random numbers of its own
     */
    ElementFits fits(ElementTimes times, int number) {
        double[] values = times.sample().values();
        long different = Arrays.stream(values).distinct().count();
        if (different == 1 && values.length > 1) {
            return new ElementFits(times, List.of(), Recommendation.none(Reason.CONSTANT));
        }
        boolean isEnough = values.length >= FEWEST_TO_FIT && different >= FEWEST_DIFFERENT;
        List<Candidate> candidates = isEnough ? candidates(times, number) : List.of();
        return new ElementFits(times, candidates, recommendation(values.length, different, candidates));
    }

    private static Recommendation recommendation(int n, long different, List<Candidate> candidates) {
        if (n < Recommendation.FEWEST) {
            return Recommendation.none(Reason.TOO_FEW);
        }
        return different < FEWEST_DIFFERENT ? Recommendation.none(Reason.TOO_COARSE) : Recommendation.among(candidates);
    }

    private List<Candidate> candidates(ElementTimes times, int number) {
        Durations durations = Durations.of(times.sample().values());
        List<Candidate> candidates = new ArrayList<>();
        int stream = FIRST_STREAM + STREAMS_AN_ELEMENT * number;
        for (Family family : Family.values()) {
            judge(MaximumLikelihood.fit(family, durations), times, durations, stream++)
                    .ifPresent(candidates::add);
            judge(Threshold.fit(family, durations), times, durations, stream++).ifPresent(candidates::add);
        }
        candidates.sort(Comparator.comparingDouble(Candidate::aicc));
        return candidates;
    }

    /** Whether a scenario takes it: times that lie orders of magnitude apart give spreads of centuries. */
    private static boolean isSensible(Distribution fitted) {
        return fitted.mean() <= LONGEST && fitted.sd() <= LONGEST;
    }

    private Optional<Candidate> judge(
            Optional<FittedDistribution> distribution, ElementTimes times, Durations durations, int stream) {
        return distribution
                .filter(fitted -> isSensible(fitted.distribution()))
                .flatMap(fitted ->
                        ParametricBootstrap.judge(fitted, durations, times.step(), new Draws(seed, stream, 0)));
    }
}
