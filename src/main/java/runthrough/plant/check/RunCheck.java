package runthrough.plant.check;

import java.util.DoubleSummaryStatistics;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;

/** Whether the run is long enough to tell what is asked of it. */
final class RunCheck {
    /** Square of the 97.5 % quantile of the standard normal distribution, 1.959964. */
    private static final double Z_SQUARED = 3.841458820694124;
    /** A part of a rate that is not worth a word. */
    private static final double SMALL = 0.01;

    private RunCheck() {}

    static void check(Line line, RunPlan run, Messages messages) {
        targets(run, messages);
        if (run.extent() instanceof RunPlan.Extent.Changes extent) {
            changes(line, run, extent.changes(), messages);
        } else if (run.extent() instanceof RunPlan.Extent.Time extent) {
            time(line, run, extent.duration(), messages);
        }
    }

    /** A coil change that runs through goes without a stop. Rule CHECK-34. */
    private static void targets(RunPlan run, Messages messages) {
        run.targetWithoutStop().stream()
                .filter(target -> target < run.target())
                .forEach(target -> messages.warning(
                        LinePart.TARGET_WITHOUT_STOP,
                        messages.in().target(target) + "; should be at least the target to run through, "
                                + messages.in().target(run.target()),
                        "A coil change that runs through goes without a stop, so that this target asks nothing more: give a"
                                + " higher one, or a lower target to run through."));
    }

    /** Rule CHECK-24. */
    private static void changes(Line line, RunPlan run, int changes, Messages messages) {
        if (run.leaveOut() >= changes) {
            messages.error(
                    LinePart.LEAVE_OUT,
                    run.leaveOut() + " coil changes; must be less than the coil changes run, " + changes,
                    "Run more coil changes or leave out fewer.");
            return;
        }
        firstCoil(run, changes, messages);
        if (!line.practice().isOneStrip() && !line.isDeterministic()) {
            long judged = (long) (changes - run.leaveOut()) * run.replications();
            target(LinePart.TARGET, run.target(), "run through", judged, messages);
            run.targetWithoutStop()
                    .ifPresent(target ->
                            target(LinePart.TARGET_WITHOUT_STOP, target, "go without a stop", judged, messages));
        }
    }

    /**
     * From time 0 a run of n coil changes processes n + 1 coils, so that what coil changes cost in a time is
     * too low by about 1/(n + 1).
     *
     * <p>Rule CHECK-36.
     */
    private static void firstCoil(RunPlan run, int changes, Messages messages) {
        double part = 1.0 / (changes + 1);
        if (run.leaveOut() > 0 || !(part > SMALL)) {
            return;
        }
        messages.warning(
                LinePart.LEAVE_OUT,
                "0; the first coil, which runs before any coil change, is about "
                        + messages.in().roundShare(part) + " of a run of " + changes
                        + ": stops, lost time and scrap of 8 h or a year are too low by that, output is too high",
                "Leave out 1, or run at least " + messages.in().count(Math.round(1 / SMALL)) + " coil changes.");
    }

    /**
     * A run of given time ends anywhere in a coil, on average half a coil after its last coil change.
     *
     * <p>Rule CHECK-36.
     */
    private static void cutCoil(RunPlan run, double duration, double coil, Messages messages) {
        double part = coil / (2 * duration);
        if (!(part > SMALL)) {
            return;
        }
        messages.warning(
                LinePart.RUN_TIME,
                messages.in().time(duration)
                        + "; it ends within a coil, so that stops, lost time and scrap of 8 h or a year"
                        + " are too " + (run.leaveOut() > 0 ? "high" : "low") + " by about "
                        + messages.in().roundShare(part) + ", output is too "
                        + (run.leaveOut() > 0 ? "low" : "high"),
                "Give at least " + messages.in().time(coil / (2 * SMALL))
                        + ", or in its place a number of coil changes with leave-out: 1.");
    }

    /**
     * Wilson's score interval of a share, by which the answer is judged: when all of n coil changes run through, its lower
     * end at a confidence of 95 % is {@code n/(n + z^2)}.
     *
     * <p>Rule CHECK-25.
     */
    private static void target(LinePart key, double target, String outcome, long changes, Messages messages) {
        Wording in = messages.in();
        double most = changes / (changes + Z_SQUARED);
        if (most >= target) {
            return;
        }
        String remedy = target < 1
                ? "Run at least " + in.count((long) Math.ceil(Z_SQUARED * target / (1 - target)))
                        + " coil changes in all replications together."
                : "No number of coil changes can show it: give a target below 100 %.";
        messages.warning(
                key,
                in.target(target) + "; " + changes + " coil changes can show " + in.share(most) + " at most, if all "
                        + outcome,
                remedy);
    }

    /** Rule CHECK-25. */
    private static void time(Line line, RunPlan run, double duration, Messages messages) {
        DoubleSummaryStatistics coils = line.coils().stream()
                .mapToDouble(coil -> coil.meanUsableLength() / line.ratedSpeed(coil))
                .summaryStatistics();
        if (duration < coils.getMin()) {
            messages.warning(
                    LinePart.RUN_TIME,
                    messages.in().time(duration) + "; should be more than it takes to run a coil, "
                            + messages.in().time(coils.getMin()),
                    "There may be no coil change to judge: give a longer time.");
        } else {
            cutCoil(run, duration, coils.getAverage(), messages);
        }
    }
}
