package runthrough.report.verdict;

import java.util.Optional;
import runthrough.plant.RunPlan;
import runthrough.report.Texts;
import runthrough.study.StudyResult;
import runthrough.study.statistics.Estimate;

/**
 * Warns where rates of a shift or a year are known better than the first coil of a run, which has no coil change, lets them be.
 *
 * <p>Rule CHECK-37.
 */
final class FirstCoil {
    /** Beyond this {@code CHECK-36} has warned before the run. */
    private static final double WARNED_OF = 0.01;

    private FirstCoil() {}

    /** The warning; empty where a coil change is left out, or the interval is the wider one. */
    static Optional<String> warning(StudyResult study) {
        RunPlan run = study.request().run();
        if (run.leaveOut() > 0 || !(run.extent() instanceof RunPlan.Extent.Changes changes)) {
            return Optional.empty();
        }
        double part = 1.0 / (changes.changes() + 1);
        Estimate stops = study.verdict().stoppages().starvedPerShift();
        return stops.interval()
                .filter(ends -> part <= WARNED_OF && part * stops.mean() > ends.halfWidth())
                .map(ends ->
                        "run.leave-out = 0; the first coil, which runs before any coil change, makes stops, lost time and"
                                + " scrap of 8 h or a year too low by about "
                                + Texts.percent(part) + ", and stops are known to within "
                                + Texts.percent(ends.halfWidth() / stops.mean())
                                + ": their interval does not tell. Leave out 1 (leave-out: 1).");
    }
}
