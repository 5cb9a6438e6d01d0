package runthrough.web;

import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;

/** How many replications an answer is worth: few for a quick one, more while the page is idle. */
final class AnswerPrecision {
    /** Coil changes of the quick answer, about. */
    private static final int QUICK = 400;

    /** Coil changes that the page runs at most for an answer. */
    private static final int MOST = 400_000;

    /** A surer answer each. */
    static final int STEPS = 2;

    /** At this step, the last, an answer has as many replications as the scenario asks for, and so the numbers of every command. */
    static final int AS_ASKED = STEPS;

    /** No number of coil changes can show that all of them run through; this share stands for it. */
    private static final double BELOW_ALL = 0.999_999;

    private AnswerPrecision() {}

    /** How many surer answers than the quick one there are. */
    static int steps(SimulationRequest request) {
        return request.line().isDeterministic() ? 0 : STEPS;
    }

    /** The target that searches go for. */
    static double target(SimulationRequest request) {
        return Math.min(request.run().target(), BELOW_ALL);
    }

    /** {@code request} with the replications of step {@code step}, 0 being the quick one. */
    static SimulationRequest of(SimulationRequest request, int step) {
        RunPlan run = request.run();
        int changes = run.extent() instanceof RunPlan.Extent.Changes wanted ? wanted.changes() : QUICK / 4;
        int quick = Math.max(4, QUICK / Math.max(1, changes));
        int most = Math.max(quick, MOST / Math.max(1, changes));
        int asked = run.replications();
        int wanted = switch (step) {
            case 0 -> quick;
            case 1 -> Math.max(quick, asked / 4);
            default -> asked;
        };
        int replications = request.line().isDeterministic() ? 1 : Math.min(wanted, most);
        return request.with(run.withReplications(replications));
    }
}
