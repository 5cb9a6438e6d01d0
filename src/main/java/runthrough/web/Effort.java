package runthrough.web;

import runthrough.plant.Brief;
import runthrough.plant.RunPlan;
import runthrough.study.sizing.SizingOptions;

/** How many replications an answer is worth: few for a quick one, more while the page is idle. */
final class Effort {
    /** Coil changes of the quick answer, about. */
    private static final int QUICK = 400;

    /** Coil changes that the page runs at most for an answer. */
    private static final int MOST = 400_000;

    /** A surer answer each. */
    static final int STEPS = 3;

    /** Searches for a size end when it is known so well. */
    private static final double PRECISION = 0.02;

    /** No number of coil changes can show that all of them run through; this share stands for it. */
    private static final double BELOW_ALL = 0.999_999;

    private Effort() {}

    /** How many surer answers than the quick one there are. */
    static int steps(Brief brief) {
        return brief.line().isDeterministic() ? 0 : STEPS;
    }

    /** The target that searches go for. */
    static double target(Brief brief) {
        return Math.min(brief.run().target(), BELOW_ALL);
    }

    /** How a capacity is looked for. */
    static SizingOptions sizing(Brief brief) {
        return new SizingOptions(target(brief), PRECISION, 4 * brief.run().replications());
    }

    /** {@code brief} with the replications of step {@code step}, 0 being the quick one. */
    static Brief of(Brief brief, int step) {
        RunPlan run = brief.run();
        int changes = run.extent() instanceof RunPlan.Extent.Changes wanted ? wanted.changes() : QUICK / 4;
        int quick = Math.max(4, QUICK / Math.max(1, changes));
        int most = Math.max(quick, MOST / Math.max(1, changes));
        int asked = run.replications();
        int wanted = switch (step) {
            case 0 -> quick;
            case 1 -> Math.max(quick, asked / 4);
            case 2 -> asked;
            default -> 4 * asked;
        };
        int replications = brief.line().isDeterministic() ? 1 : Math.max(2, Math.min(wanted, most));
        return brief.with(run.withReplications(replications));
    }
}
