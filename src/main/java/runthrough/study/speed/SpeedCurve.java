package runthrough.study.speed;

import java.util.List;
import java.util.Optional;
import runthrough.plant.SimulationRequest;
import runthrough.study.Verdict;
import runthrough.study.search.Crossing;
import runthrough.study.statistics.Estimate;

/**
 * The rated process speed against what comes out.
 *
 * @param request what was asked
 * @param target share of coil changes that should run through, in (0, 1]
 * @param scaledAlike whether coils have speeds of their own: all speeds were then changed by the same factor, and a speed here
 *     is the fastest rated one
 * @param from slowest speed (m/s)
 * @param to fastest speed (m/s), {@code > from}; no faster than the line is feasible where it is feasible as it is
 * @param notPossible speeds at which the line cannot be run, slowest first, each with the reason: in the range, and the end of
 *     the range that was asked for where the line is not feasible there
 * @param points evenly spaced from the slowest to the fastest, those at which the line can be run, and the present speed where it lies between; slowest first
 * @param present the line as it is
 * @param peak where most comes out
 * @param changes coil changes that the present speed was tried with
 * @param resolution how many coil changes it takes to show the target met at all; its {@code toDecide} is that of the line as it
 *     is
 * @param targetLost the fastest speed (m/s) at which the target is met; empty where entry and process are one strip, for every
 *     coil change stops it at any speed
 */
public record SpeedCurve(
        SimulationRequest request,
        double target,
        boolean scaledAlike,
        double from,
        double to,
        List<NotPossible> notPossible,
        List<SpeedPoint> points,
        SpeedPoint present,
        Peak peak,
        long changes,
        Verdict.Resolution resolution,
        Optional<Crossing> targetLost) {

    public SpeedCurve {
        notPossible = List.copyOf(notPossible);
        points = List.copyOf(points);
    }

    /**
     * A speed at which the line cannot be run.
     *
     * @param speed fastest rated process speed (m/s)
     * @param why not, for the user
     */
    public record NotPossible(double speed, String why) {}

    /**
     * Where most comes out, by length.
     *
     * @param at the speed with the largest output that was seen
     * @param where whether it lies within the range or at an end of it, beyond which more might come out
     * @param asGoodFrom slowest speed tried (m/s) whose output is not shown to be less than that at the peak
     * @param asGoodTo fastest such speed (m/s)
     * @param fastest speed of the range at which the line could be run (m/s)
     * @param lossAtFastest output at the peak less that at the fastest of these, paired under the same random numbers (m/s), {@code >= 0} on
     *     average: how much is lost by speeding up
     */
    public record Peak(
            SpeedPoint at, Where where, double asGoodFrom, double asGoodTo, double fastest, Estimate lossAtFastest) {}

    /** Where in the range the output peaks. */
    public enum Where {
        /** Within it: going faster gives less. */
        INSIDE,
        /** At its slowest speed. */
        AT_SLOWEST,
        /** At its fastest speed, or the fastest of it at which the line can be run. */
        AT_FASTEST
    }
}
