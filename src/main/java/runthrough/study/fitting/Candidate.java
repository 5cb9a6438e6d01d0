package runthrough.study.fitting;

import java.util.List;

/**
 * A distribution fitted to the times of an element, and how well it fits.
 *
 * @param distribution as fitted
 * @param aicc Akaike's criterion for it, corrected for the number of times
 * @param distance of the times from it
 * @param limits distances that 5 % of samples from it exceed, after they have been fitted themselves
 * @param p1 share of those samples that are at least as far by Anderson and Darling's distance
 * @param p2 the same by Kolmogorov and Smirnov's
 * @param parameters with their intervals
 */
public record Candidate(
        FittedDistribution distribution,
        double aicc,
        GoodnessOfFit distance,
        GoodnessOfFit limits,
        double p1,
        double p2,
        List<FittedParameter> parameters) {

    /** A distribution that so small a share of its own samples is as far from is not taken. */
    public static final double LEVEL = 0.05;

    public Candidate {
        parameters = List.copyOf(parameters);
    }

    /** Whether the times may well come from it, by Anderson and Darling's distance, which is the sharper in the tails. */
    public boolean isFit() {
        return p1 >= LEVEL;
    }
}
