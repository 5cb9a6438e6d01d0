package runthrough.study.fitting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What to draw the times of an element from.
 *
 * @param reason for it
 * @param distribution to take; empty for the observations as they are
 * @param others distributions that fit about as well, best first
 */
public record Recommendation(Reason reason, Optional<Candidate> distribution, List<Candidate> others) {

    /** With fewer times distributions cannot be distinguished; our own choice, no source. */
    public static final int FEWEST = 20;

    /**
     * Distributions whose criterion differs by less are about as good. K. P. Burnham and D. R. Anderson, Model Selection and Multimodel
     * Inference, 2nd ed., 2002, ch. 2 (from memory).
     */
    public static final double AS_GOOD = 2;

    public Recommendation {
        others = List.copyOf(others);
    }

    /** Why a distribution, or why none. */
    public enum Reason {
        /** It fits, and has the least criterion of those that do. */
        FITS,
        /** All times are the same. */
        CONSTANT,
        /** There are fewer than {@value Recommendation#FEWEST} times. */
        TOO_FEW,
        /** The watch was read so coarsely that distributions cannot be distinguished. */
        TOO_COARSE,
        /** No distribution fits. */
        NOTHING_FITS
    }

    /**
     * The choice among {@code candidates}: the one with the least criterion of those that fit. A shifted distribution, which has a
     * parameter more and a threshold that few times decide, must be better than any without a shift by {@value #AS_GOOD}.
     */
    static Recommendation among(List<Candidate> candidates) {
        List<Candidate> fitting = candidates.stream()
                .filter(Candidate::isFit)
                .sorted(Comparator.comparingDouble(Recommendation::handicapped))
                .toList();
        if (fitting.isEmpty()) {
            return none(Reason.NOTHING_FITS);
        }
        Candidate best = fitting.get(0);
        return new Recommendation(
                Reason.FITS,
                Optional.of(best),
                fitting.stream()
                        .skip(1)
                        .filter(other -> other.aicc() < best.aicc() + AS_GOOD)
                        .toList());
    }

    /** The observations as they are. */
    static Recommendation none(Reason reason) {
        return new Recommendation(reason, Optional.empty(), List.of());
    }

    private static double handicapped(Candidate candidate) {
        return candidate.aicc() + (candidate.distribution().isShifted() ? AS_GOOD : 0);
    }
}
