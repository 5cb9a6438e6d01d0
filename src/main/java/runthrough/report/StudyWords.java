package runthrough.report;

import java.util.Optional;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.UnitSystem;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Phrases that several studies have in common.
 *
 * @param texts for their numbers
 */
public record StudyWords(Texts texts) {

    /** Phrases in the units of {@code system}; {@code random} whether anything is. */
    public static StudyWords of(UnitSystem system, boolean random) {
        return new StudyWords(new Texts(system, random));
    }

    /** Whether anything is random. */
    public boolean random() {
        return texts.random();
    }

    /** A share with its interval in brackets, where there is one. */
    public String known(Estimate share) {
        return known(texts.value(Kind.SHARE, share));
    }

    /** The same of a share held against {@code target}. */
    public String known(Estimate share, double target) {
        return known(texts.value(Kind.SHARE, share).besides(target));
    }

    private static String known(Value share) {
        return share.text()
                + share.range()
                        .map(interval -> " (95 % interval " + interval + ")")
                        .orElse("");
    }

    /** That a second target, to go without a stop, is not shown to be met by {@code share}: a sentence behind those of the first. */
    public String missedWithoutStop(Estimate share, double target) {
        return " But " + texts.value(Kind.SHARE, share).besides(target).text()
                + " go without a stop, and the target of "
                + Texts.target(target) + " is "
                + (against(target, share) == TargetStatus.MISSES ? "missed." : "not shown to be met.");
    }

    /** Whether a share that was seen meets {@code target}. */
    public TargetStatus against(double target, Estimate share) {
        Optional<Interval> interval = texts.known(share.interval());
        double low = interval.map(Interval::low).orElse(share.mean());
        double high = interval.map(Interval::high).orElse(share.mean());
        return low >= target ? TargetStatus.MEETS : high < target ? TargetStatus.MISSES : TargetStatus.UNDECIDED;
    }

    /** Says that a target is beyond what {@code changes} coil changes can show, and how many could; empty when it is not. */
    public Optional<String> tooShort(Verdict.Resolution resolution, long changes, double target) {
        return resolution
                .leastToShow()
                .filter(least -> random() && least > changes)
                .map(least -> "A target of " + Texts.target(target) + " is beyond what " + Texts.count(changes)
                        + " coil changes can show: even if all of them ran through, it would take "
                        + Texts.count(least)
                        + ". Give so many: more replications, or longer ones. Until then the values given are"
                        + " the best estimate.");
    }

    /** What was run for each of what was tried, such as {@code value}. */
    public String basis(SimulationRequest request, int replications, String tried) {
        return runs(request, replications) + " for each " + tried + ", all under the same random numbers, seed "
                + request.run().seed();
    }

    /** How many replications of which length: "50 x 200 coil changes". */
    public String runs(SimulationRequest request, int replications) {
        RunPlan run = request.run();
        return replications + " x "
                + (run.extent() instanceof RunPlan.Extent.Changes changes
                        ? Texts.count(changes.changes()) + " coil changes"
                        : texts.time(((RunPlan.Extent.Time) run.extent()).duration()));
    }
}
