package runthrough.simulation;

import runthrough.plant.Distribution;
import umontreal.ssj.rng.MRG32k3a;

/** Draws from one law with one stream, by inversion: one uniform number a draw, none where every draw is the same. */
final class Sampler {
    private final String name;
    private final Distribution law;
    private final MRG32k3a stream;
    private final boolean constant;
    private final double value;
    private long draws;

    Sampler(String name, Distribution law, MRG32k3a stream) {
        this.name = name;
        this.law = law;
        this.stream = stream;
        this.constant = law.isConstant();
        this.value = constant ? law.mean() : 0;
    }

    /**
     * The next draw, {@code >= 0}.
     *
     * @throws SimulationException when a shifted law gives a value below 0
     */
    double next() {
        draws++;
        double drawn = constant ? value : law.quantile(stream.nextDouble());
        if (!(drawn >= 0)) {
            throw new SimulationException("draw " + draws + " of '" + name + "' is " + drawn
                    + ", below 0; its shift takes it there. Give a smaller shift");
        }
        return drawn;
    }
}
