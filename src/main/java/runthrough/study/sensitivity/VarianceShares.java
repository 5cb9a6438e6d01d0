package runthrough.study.sensitivity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runthrough.simulation.random.RandomSource;
import runthrough.study.statistics.Estimate;

/**
 * Which sources of randomness carry the variance of a measure.
 *
 * @param measure whose variance it is
 * @param mean of the measure over coil changes, in its SI unit
 * @param sd its standard deviation at a coil change, {@code >= 0}; 0 where nothing moves it
 * @param sources the one with the greatest total index first; empty where there is no variance to share
 * @param firstOrders sum of all first-order indices
 */
public record VarianceShares(ChangeMeasure measure, double mean, double sd, List<Share> sources, Estimate firstOrders) {

    public VarianceShares {
        sources = List.copyOf(sources);
    }

    /** What one source carries, see {@link SobolIndices}. */
    public record Share(RandomSource source, SobolIndices.Index index) {}

    static VarianceShares of(ChangeMeasure measure, List<RandomSource> sources, List<ExchangedSamples> replications) {
        SobolIndices indices = SobolIndices.of(replications);
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < indices.sources().size(); i++) {
            shares.add(new Share(sources.get(i), indices.sources().get(i)));
        }
        shares.sort(Comparator.comparingDouble(
                        (Share share) -> share.index().total().mean())
                .reversed());
        return new VarianceShares(
                measure, indices.mean(), Math.sqrt(indices.variance()), shares, indices.firstOrders());
    }

    /** Whether there is any variance to share. */
    public boolean varies() {
        return !sources.isEmpty();
    }

    /** The source that carries most, if any is shown to carry something. */
    public Optional<Share> main() {
        return sources.stream().filter(share -> share.index().isShown()).findFirst();
    }

    /** Whether it is shown that sources act together: the first-order indices fall short of 1. */
    public boolean isTogetherShown() {
        return firstOrders.interval().map(interval -> interval.high() < 1).orElse(firstOrders.mean() < 1 - 1e-9)
                && varies();
    }
}
