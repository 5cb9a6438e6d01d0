package runthrough.study;

import runthrough.study.statistics.RelativeHalfWidth;

/**
 * What a study gives that was run until its answer was known well enough.
 *
 * @param result of all replications that were run; the plan in its brief says how many
 * @param halfWidth of the interval of the share run through: whether what was asked for was reached
 */
public record SequentialResult(StudyResult result, RelativeHalfWidth halfWidth) {}
