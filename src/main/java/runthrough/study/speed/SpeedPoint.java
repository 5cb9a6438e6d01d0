package runthrough.study.speed;

import runthrough.study.TargetStatus;
import runthrough.study.statistics.Estimate;

/**
 * What comes out at one speed. Estimates are means over replications; a shift is 8 h.
 *
 * @param speed fastest rated process speed (m/s)
 * @param factor on all rated speeds, 1 for the line as it is
 * @param answer whether the target is met
 * @param shareRunThrough share of coil changes run through
 * @param output good output over time (m/s)
 * @param massFlow the same by mass (kg/s)
 * @param goodShare yield: good output over what was processed, by mass, in [0, 1]
 * @param utilisation metres processed over metres at the rated speed, in [0, 1]
 * @param stopsPerShift starved stops per shift
 * @param lostTimePerShift lost time (starved), at the rated speed, per shift (s)
 */
public record SpeedPoint(
        double speed,
        double factor,
        TargetStatus answer,
        Estimate shareRunThrough,
        Estimate output,
        Estimate massFlow,
        Estimate goodShare,
        Estimate utilisation,
        Estimate stopsPerShift,
        Estimate lostTimePerShift) {}
