package runthrough.study.lever;

import runthrough.study.cause.Reason;
import runthrough.study.statistics.Estimate;

/**
 * What it would be worth to remove a cause: the line without it held against the line as it is, replication by replication.
 *
 * <p>Rules WORTH-1, WORTH-4.
 *
 * @param reason that is removed; all preparation where that was not done in time
 * @param replications that were held against those with it
 * @param stops how many fewer starved stops in a year
 * @param shareRunThrough how much more of the coil changes run through
 * @param lostTime how much less is lost in a year (s)
 * @param goodOutput how much more good strip in a year (m)
 */
public record CauseWorth(
        Reason reason,
        int replications,
        Estimate stops,
        Estimate shareRunThrough,
        Estimate lostTime,
        Estimate goodOutput) {}
