package runthrough.study.limits;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.SimulationRequest;
import runthrough.study.Evaluation;
import runthrough.study.lever.Lever;

/**
 * How far each number of the line as it is can be driven, all others kept, until the target is no longer met.
 *
 * @param request what was asked
 * @param target share of coil changes that should run through, in (0, 1]
 * @param applicable false where entry and process are one strip: every coil change stops the process, so no number has a limit
 *     at which it begins to. The fields below are empty then
 * @param chance whether anything in the line is random
 * @param present the line as it is; empty where it does not apply
 * @param limits one for each number that can be driven
 * @param counts one for each of {@link CountLimit.What}, in that order
 * @param handCalculation closed forms of the line as it is, for the coil that is hardest on it
 */
public record Limits(
        SimulationRequest request,
        double target,
        boolean applicable,
        boolean chance,
        Optional<Evaluation> present,
        List<LineLimit> limits,
        List<CountLimit> counts,
        HandCalculation handCalculation) {

    public Limits {
        limits = List.copyOf(limits);
        counts = List.copyOf(counts);
    }

    /** The limit of {@code what}; empty where limits do not apply. */
    public Optional<LineLimit> limit(Lever.What what) {
        return limits.stream().filter(limit -> limit.what() == what).findFirst();
    }
}
