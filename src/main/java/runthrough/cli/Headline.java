package runthrough.cli;

import java.util.List;
import runthrough.quantity.Kind;
import runthrough.quantity.Units;
import runthrough.study.StudyResult;
import runthrough.study.Verdict;
import runthrough.study.statistics.Interval;

/** Whether the line runs through, how sure that is, and on how much it rests: two or three lines. */
final class Headline {
    private final StudyResult result;
    private final Verdict verdict;
    private final Units units;
    private final Paint paint;

    Headline(StudyResult result, Units units, Paint paint) {
        this.result = result;
        this.verdict = result.verdict();
        this.units = units;
        this.paint = paint;
    }

    List<String> lines() {
        return List.of(answer(), "  " + share(), "  " + count());
    }

    private String answer() {
        String target = "the target of " + share(verdict.target());
        return switch (verdict.answer()) {
            case MEETS -> paint.good("RUNS THROUGH") + ": " + target + " is met";
            case MISSES -> paint.bad("DOES NOT RUN THROUGH") + ": " + target + " is missed";
            case UNDECIDED -> paint.caution("CANNOT TELL") + " whether " + target + " is met" + whatWouldTell();
        };
    }

    private String whatWouldTell() {
        Verdict.Resolution resolution = verdict.resolution();
        return resolution
                .toDecide()
                .or(resolution::leastToShow)
                .filter(changes -> changes > verdict.changes().total())
                .map(changes -> "; about " + changes + " coil changes would")
                .orElse("");
    }

    private String share() {
        String run = share(verdict.shareRunThrough().mean()) + " of coil changes ran through";
        if (!verdict.chance()) {
            return run + "; nothing is left to chance";
        }
        if (verdict.causes().practice() > 0) {
            return run;
        }
        return verdict.shareRunThrough()
                .interval()
                .map(interval -> run + "; 95 % confidence: " + range(interval))
                .orElse(run);
    }

    private String range(Interval interval) {
        return share(interval.low()) + " to " + share(interval.high());
    }

    private String count() {
        Verdict.Changes changes = verdict.changes();
        String slowed = changes.slowed() > 0 ? changes.slowed() + " slowed, " : "";
        return counted(changes.total(), "coil change") + " in "
                + counted(result.totals().size(), "replication") + ": " + changes.ranThrough() + " ran through, "
                + slowed
                + changes.stopped() + " stopped";
    }

    private static String counted(long number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private String share(double share) {
        return units.text(Kind.SHARE, share);
    }
}
