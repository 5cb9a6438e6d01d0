package runthrough.study;

import runthrough.simulation.records.Outcome;
import runthrough.study.statistics.Estimate;

/**
 * A target that a line is held against: which share of coil changes should do what.
 *
 * <p>Rule REPORT-16.
 *
 * @param what they should do
 * @param target share of coil changes, in (0, 1]
 */
public record Goal(What what, double target) {

    /** What coil changes should do. */
    public enum What {
        /** Run through at the rated speed. */
        RUN_THROUGH,
        /** Go without a stop, running through or slowed. */
        WITHOUT_STOP
    }

    /** The target to run through. */
    public static Goal runThrough(double target) {
        return new Goal(What.RUN_THROUGH, target);
    }

    /** The target without a stop. */
    public static Goal withoutStop(double target) {
        return new Goal(What.WITHOUT_STOP, target);
    }

    /** Whether a coil change of {@code outcome} did. */
    public boolean isReachedBy(Outcome outcome) {
        return what == What.RUN_THROUGH ? outcome == Outcome.RAN_THROUGH : outcome != Outcome.STOPPED;
    }

    /** How many coil changes of {@code evaluation} did. */
    public long reached(Evaluation evaluation) {
        return what == What.RUN_THROUGH ? evaluation.ranThrough() : evaluation.withoutStop();
    }

    /** Whether the share seen in {@code evaluation} meets the target; whether it is shown to, its interval says. */
    public boolean isSeenMet(Evaluation evaluation) {
        return reached(evaluation) >= target * evaluation.changes();
    }

    /** The share of them. */
    public Estimate share(Evaluation evaluation) {
        return what == What.RUN_THROUGH ? evaluation.shareRunThrough() : evaluation.shareWithoutStop();
    }
}
