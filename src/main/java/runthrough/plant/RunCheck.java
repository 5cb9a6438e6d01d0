package runthrough.plant;

/** Whether the run is long enough to tell what is asked of it. */
final class RunCheck {

    private RunCheck() {}

    static void check(Line line, RunPlan run, Findings findings) {
        if (run.extent() instanceof RunPlan.Extent.Changes extent) {
            changes(line, run, extent.changes(), findings);
        } else if (run.extent() instanceof RunPlan.Extent.Time extent) {
            time(line, extent.duration(), findings);
        }
    }

    private static void changes(Line line, RunPlan run, int changes, Findings findings) {
        if (run.leaveOut() >= changes) {
            findings.error(
                    Keys.LEAVE_OUT,
                    run.leaveOut() + " coil changes; must be less than the coil changes run, " + changes,
                    "Run more coil changes or leave out fewer.");
        } else if (!line.practice().isOneStrip() && !line.isDeterministic()) {
            target(run, (long) (changes - run.leaveOut()) * run.replications(), findings);
        }
    }

    /**
     * The rule of three: when all of n coil changes run through, the share that does not may still be as much as 3/n, with
     * a confidence of 95 %.
     */
    private static void target(RunPlan run, long changes, Findings findings) {
        Wording in = findings.in();
        double allowed = 1 - run.target();
        if (3.0 / changes <= allowed) {
            return;
        }
        String most = in.share(Math.max(0, 1 - 3.0 / changes));
        String remedy = allowed > 0
                ? "Run at least " + in.count((long) Math.ceil(3 / allowed))
                        + " coil changes in all replications together."
                : "No number of coil changes can show it: give a target below 100 %.";
        findings.warning(
                Keys.TARGET,
                in.share(run.target()) + "; " + changes + " coil changes can show " + most
                        + " at most, if all run through",
                remedy);
    }

    private static void time(Line line, double duration, Findings findings) {
        double firstRun = line.coils().stream()
                .mapToDouble(coil -> coil.meanUsableLength() / line.ratedSpeed(coil))
                .min()
                .orElseThrow();
        if (duration < firstRun) {
            findings.warning(
                    Keys.RUN_TIME,
                    findings.in().time(duration) + "; should be more than it takes to run a coil, "
                            + findings.in().time(firstRun),
                    "There may be no coil change to judge: give a longer time.");
        }
    }
}
