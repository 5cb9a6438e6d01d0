package runthrough.simulation.random;

import runthrough.plant.Distribution;
import runthrough.simulation.records.SimulationException;

/**
 * Draws from one distribution by inversion: one uniform number a draw from a source of its own, none where every draw is
 * the same.
 *
 * <p>Rules RANDOM-1, DIST-10.
 */
public final class Sampler {
    private final Distribution distribution;
    private final SourceNumbers numbers;
    private final boolean constant;
    private final double value;

    /** A sampler of {@code distribution} with the random numbers {@code numbers}. */
    public Sampler(Distribution distribution, SourceNumbers numbers) {
        this.distribution = distribution;
        this.numbers = numbers;
        constant = distribution.isConstant();
        value = distribution.lowest();
    }

    /**
     * The draw, {@code >= 0}, for what is at {@code index} and {@code repeat}, see {@link SourceNumbers#uniform}.
     *
     * @throws SimulationException when a shifted distribution gives a value below 0
     */
    public double draw(int index, int repeat) {
        double drawn = constant ? value : distribution.quantile(numbers.uniform(index, repeat));
        if (!(drawn >= 0)) {
            throw new SimulationException("draw " + index + (repeat == 0 ? "" : ", repeat " + repeat + ",") + " of '"
                    + numbers.name() + "' is " + SimulationException.text(drawn)
                    + " s, below 0 s; its shift takes it there. Give a smaller shift");
        }
        return drawn;
    }
}
