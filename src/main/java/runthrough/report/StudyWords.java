package runthrough.report;

import java.util.Optional;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.study.Answer;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Numbers of a study as text in the user's units. Limits that were searched for have four digits, since they are known to a
 * thousandth where nothing is left to chance.
 *
 * @param units of the user
 * @param texts for estimates
 * @param chance whether anything is left to chance; without it numbers are exact and have no interval
 */
record StudyWords(Units units, Texts texts, boolean chance) {

    static StudyWords of(UnitSystem system, boolean chance) {
        return new StudyWords(Units.of(system), new Texts(system, chance), chance);
    }

    String of(Kind kind, double si) {
        return kind == Kind.SHARE ? texts.share(si) : units.text(kind, si);
    }

    /** A range in one unit, such as "111.8 to 114.1 m". */
    String range(Kind kind, double low, double high) {
        return units.number(low, units.unitFor(kind, high)) + " to " + units.text(high, units.unitFor(kind, high));
    }

    String length(double metres) {
        return of(Kind.LENGTH, metres);
    }

    String share(double share) {
        return texts.share(share);
    }

    /** A share with its interval in brackets, where there is one. */
    String known(Estimate share) {
        return share(share.mean())
                + texts.interval(Kind.SHARE, share)
                        .map(interval -> " (95 % interval " + interval + ")")
                        .orElse("");
    }

    /** Whether a share that was seen meets {@code target}. */
    Answer against(double target, Estimate share) {
        Optional<Interval> interval = share.interval().filter(any -> chance);
        double low = interval.map(Interval::low).orElse(share.mean());
        double high = interval.map(Interval::high).orElse(share.mean());
        return low >= target ? Answer.MEETS : high < target ? Answer.MISSES : Answer.UNDECIDED;
    }

    /** Says that a target is beyond what {@code changes} coil changes can show, and how many could; empty when it is not. */
    Optional<String> tooShort(Verdict.Resolution resolution, long changes, double target) {
        return resolution
                .leastToShow()
                .filter(least -> chance && least > changes)
                .map(least -> "A target of " + share(target) + " is beyond what " + Texts.count(changes)
                        + " coil changes can show: even if all of them ran through, it would take "
                        + Texts.count(least) + " to be sure. Until then take the values told as the best guess.");
    }

    /** What was run. */
    String basis(SimulationRequest request, int replications) {
        RunPlan run = request.run();
        String extent = run.extent() instanceof RunPlan.Extent.Changes changes
                ? Texts.count(changes.changes()) + " coil changes"
                : texts.time(((RunPlan.Extent.Time) run.extent()).duration());
        return replications + " x " + extent + " for each value tried, all under the same random numbers, seed "
                + run.seed();
    }
}
