package runthrough.study;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Totals;
import runthrough.study.statistics.Sample;

/**
 * All that a study gives.
 *
 * @param request what was asked
 * @param verdict the answer
 * @param handCalculation the closed forms, for the kind of coil that is hardest on the line
 * @param totals what each replication gave, in order of its index
 * @param pooled the coil changes of all replications, quantity by quantity, for charts
 * @param coils what came of the coil changes, coil by coil
 * @param first the first replication, with the detail asked for
 */
public record StudyResult(
        SimulationRequest request,
        Verdict verdict,
        HandCalculation handCalculation,
        List<Totals> totals,
        Pooled pooled,
        CoilOutcomes coils,
        Replication first) {

    public StudyResult {
        totals = List.copyOf(totals);
    }

    /**
     * Coil changes of all replications pooled. All but the first two are empty where entry and process are one strip.
     *
     * @param jointCycleTime how long the strip stood at the joiner (s)
     * @param waiting the part of it that was waiting, for preparation or for people (s)
     * @param margin to the level at which the process slows, or stops where it cannot slow, had it kept its rated speed (m), see
     *     {@link runthrough.study.margin.StripMargin}
     * @param stripDrawn level at the start minus lowest level (m)
     * @param refillTime of those refilled before the next (s)
     */
    public record Pooled(
            Sample jointCycleTime,
            Sample waiting,
            Optional<Sample> margin,
            Optional<Sample> stripDrawn,
            Optional<Sample> refillTime) {}
}
