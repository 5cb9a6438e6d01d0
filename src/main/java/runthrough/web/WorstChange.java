package runthrough.web;

import java.util.Optional;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.web.job.Refusal;

/**
 * The coil change of a run that costs most: the one with the greatest lost time, and where none is lost, with the lowest level
 * above the stop level; of several alike, the first.
 *
 * @param replication in which it is, from 0
 * @param number of it, from 1
 * @param searched coil changes that it is the worst of; 0 where nothing was searched
 */
record WorstChange(int replication, int number, long searched) {
    /** Coil changes that are looked through; a longer run is looked through in part. */
    private static final int MOST = 10_000;

    /** Coil changes of one replication that are looked through: its course is run up to the worst of them. */
    private static final int MOST_OF_ONE = 2_000;

    /** Less than a microsecond or a micrometre makes none worse. */
    private static final double ROUNDING = 1e-6;

    WorstChange {
        if (replication < 0 || number < 1 || number > MOST_OF_ONE) {
            throw new Refusal(400, "There is no course of coil change " + number + ".");
        }
    }

    /** That of the run that {@code request} asks for. */
    static WorstChange of(SimulationRequest request) {
        RunPlan run = request.run();
        int each = (int) Math.ceil(Math.min(MOST_OF_ONE, Math.max(run.leaveOut() + 1, PageScenario.changes(request))));
        LineSimulator simulator = simulator(request, each);
        WorstChange worst = new WorstChange(0, 1, 0);
        Optional<ChangeRecord> most = Optional.empty();
        long searched = 0;
        int replications = request.line().isDeterministic() ? 1 : run.replications();
        for (int i = 0; i < replications && searched < MOST; i++) {
            for (ChangeRecord change : simulator.run(i, Detail.CHANGES).changes()) {
                boolean isWorse = most.filter(other -> !isWorse(change, other)).isEmpty();
                if (isWorse && change.number() > run.leaveOut()) {
                    most = Optional.of(change);
                    worst = new WorstChange(i, change.number(), 0);
                }
            }
            searched += each;
        }
        return new WorstChange(worst.replication, worst.number, searched);
    }

    private static boolean isWorse(ChangeRecord one, ChangeRecord other) {
        double more = one.lostTime() - other.lostTime();
        return more > ROUNDING
                || (more > -ROUNDING && one.lowestAboveStopLevel() < other.lowestAboveStopLevel() - ROUNDING);
    }

    /** Runs a replication of {@code request} up to coil change {@code last}. */
    static LineSimulator simulator(SimulationRequest request, int last) {
        RunPlan.Extent extent = new RunPlan.Extent.Changes(last);
        return LineSimulator.of(
                request.line(),
                new RunPlan(extent, 0, 1, request.run().seed(), request.run().target()));
    }
}
