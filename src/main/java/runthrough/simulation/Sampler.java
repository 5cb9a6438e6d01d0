package runthrough.simulation;

import org.jspecify.annotations.Nullable;
import runthrough.plant.Distribution;
import umontreal.ssj.rng.MRG32k3a;

/** Draws from one law by inversion: one uniform number a draw from a stream of its own, none where every draw is the same. */
final class Sampler {
    private final String name;
    private final Distribution law;
    private final double value;
    private final @Nullable MRG32k3a stream;
    private long draws;

    /** A sampler of {@code law} for the source of randomness {@code source}. */
    Sampler(String name, Distribution law, Streams streams, int source) {
        this.name = name;
        this.law = law;
        value = law.lowest();
        stream = law.isConstant() ? null : streams.stream(source);
    }

    /**
     * The next draw, {@code >= 0}.
     *
     * @throws SimulationException when a shifted law gives a value below 0
     */
    double next() {
        draws++;
        double drawn = stream == null ? value : law.quantile(stream.nextDouble());
        if (!(drawn >= 0)) {
            throw new SimulationException("draw " + draws + " of '" + name + "' is " + drawn
                    + ", below 0; its shift takes it there. Give a smaller shift");
        }
        return drawn;
    }
}
