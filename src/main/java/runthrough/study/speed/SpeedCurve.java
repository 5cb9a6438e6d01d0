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
 * @param to fastest speed (m/s), {@code > from}
 * @param points evenly spaced from the slowest to the fastest, and the present speed where it lies between; slowest first
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
        List<SpeedPoint> points,
        SpeedPoint present,
        Peak peak,
        long changes,
        Verdict.Resolution resolution,
        Optional<Crossing> targetLost) {

    public SpeedCurve {
        points = List.copyOf(points);
    }

    /**
     * Where most comes out, by length.
     *
     * @param at the speed with the largest output that was seen
     * @param where whether it lies within the range or at an end of it, beyond which more might come out
     * @param asGoodFrom slowest speed tried (m/s) whose output is not shown to be less than that at the peak
     * @param asGoodTo fastest such speed (m/s)
     * @param lossAtTo output at the peak less that at the fastest speed, paired under the same random numbers (m/s), {@code >= 0} on
     *     average: how much is lost by speeding up
     */
    public record Peak(SpeedPoint at, Where where, double asGoodFrom, double asGoodTo, Estimate lossAtTo) {}

    /** Where in the range the output peaks. */
    public enum Where {
        /** Within it: going faster gives less. */
        INSIDE,
        /** At its slowest speed. */
        AT_SLOWEST,
        /** At its fastest speed. */
        AT_FASTEST
    }
}
