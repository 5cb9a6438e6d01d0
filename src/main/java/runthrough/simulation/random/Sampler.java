package runthrough.simulation.random;

import org.jspecify.annotations.Nullable;
import runthrough.plant.Distribution;
import runthrough.simulation.records.SimulationException;

/**
 * Draws from one distribution by inversion: one uniform number a draw from a source of its own, none where every draw is
 * the same.
 *
 * <p>Rules RANDOM-1, DIST-10.
 */
public final class Sampler {
    private final String name;
    private final Distribution distribution;
    private final double value;
    private final @Nullable SourceDraws uniform;
    private long draws;

    /** A sampler of {@code distribution} for the source of randomness {@code source}. */
    public Sampler(String name, Distribution distribution, Streams streams, int source) {
        this.name = name;
        this.distribution = distribution;
        value = distribution.lowest();
        uniform = distribution.isConstant() ? null : streams.draws(source);
    }

    /**
     * The draw, {@code >= 0}, for pass {@code pass} of coil change {@code change}, see {@link SourceDraws}.
     *
     * @throws SimulationException when a shifted distribution gives a value below 0
     */
    public double next(int change, int pass) {
        draws++;
        double drawn = uniform == null ? value : distribution.quantile(uniform.next(change, pass));
        if (!(drawn >= 0)) {
            throw new SimulationException("draw " + draws + " of '" + name + "' is " + drawn
                    + ", below 0; its shift takes it there. Give a smaller shift");
        }
        return drawn;
    }
}
