package runthrough.study.uncertainty;

import java.util.List;
import java.util.Optional;
import runthrough.plant.SimulationRequest;
import runthrough.study.TargetStatus;

/**
 * The answer, and how well it is known.
 *
 * @param request what was asked
 * @param target share of coil changes that should run through
 * @param inputs what is known from observations
 * @param resamples how often they were resampled
 * @param share of coil changes run through
 * @param chanceOfTarget that the target is met, as far as the times are known, in [0, 1]
 * @param shares the same with each resample
 * @param capacity what the accumulator must hold to meet the target (m); empty where entry and process are one strip
 * @param curve share against capacity; empty where entry and process are one strip
 */
public record Uncertainty(
        SimulationRequest request,
        double target,
        List<MeasuredInputs.Input> inputs,
        int resamples,
        UncertainFigure share,
        double chanceOfTarget,
        List<Double> shares,
        Optional<UncertainFigure> capacity,
        List<Point> curve) {

    public Uncertainty {
        inputs = List.copyOf(inputs);
        shares = List.copyOf(shares);
        curve = List.copyOf(curve);
    }

    /**
     * A point of the curve.
     *
     * @param capacity (m)
     * @param share that runs through with it, by the strip that coil changes take
     */
    public record Point(double capacity, UncertainFigure share) {}

    /** Whether the target is met, as far as the times are known. */
    public TargetStatus answer() {
        return against(share.all());
    }

    /** The same as if the times were known exactly. */
    public TargetStatus answerIfTimesWereKnown() {
        return against(share.simulation());
    }

    private TargetStatus against(UncertainFigure.Band band) {
        return band.low() >= target
                ? TargetStatus.MEETS
                : band.high() < target ? TargetStatus.MISSES : TargetStatus.UNDECIDED;
    }
}
