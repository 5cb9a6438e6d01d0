package runthrough.study.fitting;

import java.util.Arrays;
import java.util.List;
import runthrough.plant.Distribution;
import runthrough.study.times.ElementTimes;

/**
 * Distributions fitted to the times of an element.
 *
 * @param times of the element
 * @param candidates best first by Akaike's criterion; none where the times are too few or the same
 * @param recommendation which to take
 */
public record ElementFits(ElementTimes times, List<Candidate> candidates, Recommendation recommendation) {

    public ElementFits {
        candidates = List.copyOf(candidates);
    }

    /** The distribution to simulate with: the recommended one, or the observations. */
    public Distribution distribution() {
        if (recommendation.reason() == Recommendation.Reason.CONSTANT) {
            return Distribution.constant(times.sample().get(0));
        }
        return recommendation
                .distribution()
                .map(candidate -> candidate.distribution().distribution())
                .orElseGet(this::observed);
    }

    /** The observations, each as likely as the other. */
    public Distribution observed() {
        return Distribution.observed(
                Arrays.stream(times.sample().values()).boxed().toList());
    }
}
