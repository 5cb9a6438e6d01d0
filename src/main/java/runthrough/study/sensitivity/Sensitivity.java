package runthrough.study.sensitivity;

import java.util.List;
import runthrough.plant.SimulationRequest;
import runthrough.study.cause.NamedCauses;

/**
 * How much an answer changes with its inputs and its random times.
 *
 * @param request what was asked
 * @param target share of coil changes that should run through, in (0, 1]
 * @param chance whether anything is random, in the line or at an end of a range
 * @param swings inputs moved one at a time
 * @param randomness shares of variance, one for each measure, the margin or the lost time first; empty where nothing in the
 *     line is random
 * @param causes of the coil changes that did not run through, of the line as it is: those of the verdict
 * @param samples replications of each kind behind them
 * @param sampleChanges coil changes in each of these
 */
public record Sensitivity(
        SimulationRequest request,
        double target,
        boolean chance,
        Swings swings,
        List<VarianceShares> randomness,
        List<NamedCauses.Count> causes,
        int samples,
        int sampleChanges) {

    public Sensitivity {
        randomness = List.copyOf(randomness);
        causes = List.copyOf(causes);
    }
}
