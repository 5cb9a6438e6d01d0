package runthrough.simulation.work;

import java.util.Arrays;
import runthrough.simulation.account.Recorder;
import runthrough.simulation.calendar.EventCalendar;

/**
 * The tail work or the join work: what each element of it took in the first pass is kept, for the cause of a coil change that did
 * not run through.
 *
 * <p>Rules CHANGE-2, CAUSE-6.
 */
final class JointSequence extends WorkSequence {
    /** What each element took in the first pass (s); NaN where it was not done. */
    private final double[] firstPass;

    private boolean isFirst;

    /** Does the elements of {@code queue}; {@code whenElementEnds} is called after each. */
    JointSequence(WorkQueue queue, EventCalendar calendar, Recorder recorder, Runnable whenElementEnds) {
        super(queue, calendar, recorder, whenElementEnds);
        firstPass = new double[queue.size()];
    }

    @Override
    void begin(int onChange, int ofJoint) {
        isFirst = ofJoint == 1;
        if (isFirst) {
            Arrays.fill(firstPass, Double.NaN);
        }
        super.begin(onChange, ofJoint);
    }

    @Override
    double takes() {
        double seconds = super.takes();
        if (isFirst) {
            firstPass[element()] = seconds;
        }
        return seconds;
    }

    /**
     * When the list ends (s) that is begun at {@code from} for coil change {@code onChange}, pass {@code ofJoint} from 1, with
     * nobody in its way.
     */
    double endsWhenBegunAt(double from, int onChange, int ofJoint) {
        begin(onChange, ofJoint);
        double time = from;
        while (isWaiting()) {
            time += takes();
            next();
        }
        return time;
    }

    /** What each element took in the first pass (s), in the order of the list; NaN where it was not done. */
    double[] firstPass() {
        return firstPass;
    }
}
