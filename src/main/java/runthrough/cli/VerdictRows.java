package runthrough.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.Practice;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;
import runthrough.study.Cause;
import runthrough.study.StudyResult;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Summary;

/** What the verdict rests on, a line for each. */
final class VerdictRows {
    private final StudyResult result;
    private final Verdict verdict;
    private final Units units;
    private final Paint paint;

    VerdictRows(StudyResult result, Units units, Paint paint) {
        this.result = result;
        this.verdict = result.verdict();
        this.units = units;
        this.paint = paint;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(Row.of("What binds", binds()));
        verdict.spare().ifPresent(spare -> lines.add(spare(spare)));
        lines.add(Row.of("Stops", stops()));
        lines.add(Row.of("Lost time", lost()));
        lines.add(Row.of("Output", output()));
        lines.add(Row.of("Scrap", scrap()));
        lines.add(Row.of(rethreads() ? "Standstill" : "Joint time", jointTime()));
        lines.add(Row.of("Waiting", waiting()));
        verdict.storage().ifPresent(storage -> lines.addAll(storage(storage)));
        return lines;
    }

    private String binds() {
        if (verdict.changes().failed() == 0) {
            return result.handCalculation()
                    .binding()
                    .map(limit -> "nothing did; by hand, the nearest limit is "
                            + limit.name().toLowerCase(Locale.ROOT))
                    .orElse("nothing did");
        }
        if (verdict.causes().practice() > 0) {
            return "there is no accumulator: every coil change stops the process";
        }
        return Stream.of(Cause.values())
                .filter(cause -> verdict.causes().count(cause) > 0)
                .sorted(Comparator.comparingLong(verdict.causes()::count).reversed())
                .map(cause -> cause.name().toLowerCase(Locale.ROOT) + " ("
                        + verdict.causes().count(cause) + " of "
                        + verdict.changes().failed() + ")")
                .collect(Collectors.joining(", "));
    }

    private String spare(Verdict.Spare spare) {
        boolean isMissing = spare.metres() < 0;
        double sign = isMissing ? -1 : 1;
        String text = units.text(Kind.LENGTH, sign * spare.metres()) + " of strip, "
                + units.text(Kind.TIME, sign * spare.seconds()) + " of joint, "
                + units.text(Kind.SPEED, sign * spare.speed()) + " of speed";
        return Row.of(isMissing ? "Missing" : "To spare", isMissing ? paint.bad(text) : paint.good(text));
    }

    private String stops() {
        Verdict.Stoppages stoppages = verdict.stoppages();
        return number(stoppages.starvedPerHundredChanges()) + " per 100 coil changes, "
                + number(stoppages.starvedPerShift()) + " per 8 h" + range(stoppages.starvedPerShift());
    }

    private String range(Estimate estimate) {
        return estimate.interval()
                .map(interval -> interval.method() == Interval.Method.RULE_OF_THREE
                        ? " (95 %: at most " + Numbers.text(interval.high(), 2) + ")"
                        : " (95 %: " + Numbers.text(interval.low(), 2) + " to " + Numbers.text(interval.high(), 2)
                                + ")")
                .orElse("");
    }

    private String lost() {
        Verdict.Stoppages stoppages = verdict.stoppages();
        String own = stoppages.ownStopsPerShift().mean() > 0
                ? "; besides, " + number(stoppages.ownStopsPerShift()) + " own stops"
                : "";
        return units.text(Kind.TIME, stoppages.lostTimePerShift().mean()) + " per 8 h, "
                + units.text(Kind.LENGTH, stoppages.lostMetresPerShift().mean()) + " not run" + own;
    }

    private String output() {
        Verdict.Output output = verdict.output();
        return units.text(Kind.RATE_LENGTH, output.speed().mean()) + ", "
                + units.text(Kind.RATE_MASS, output.massFlow().mean()) + "; "
                + units.text(Kind.SHARE, output.utilisation().mean()) + " of the rated speed";
    }

    private String scrap() {
        Verdict.Output output = verdict.output();
        return units.text(Kind.SHARE, output.scrapShare().mean()) + " by mass; "
                + units.text(Kind.LENGTH, output.scrapMetresPerShift().mean()) + ", "
                + units.text(Kind.MASS, output.scrapKilogramsPerShift().mean()) + " per 8 h";
    }

    private boolean rethreads() {
        return result.brief().line().practice() == Practice.RETHREAD;
    }

    private String jointTime() {
        Summary times = verdict.joint().time();
        Unit unit = units.unitFor(Kind.TIME, times.p99());
        return "mean " + units.number(times.mean().mean(), unit) + ", 90th percentile "
                + units.number(times.p90(), unit) + ", 95th " + units.number(times.p95(), unit) + ", 99th "
                + units.text(times.p99(), unit);
    }

    private String waiting() {
        Summary waiting = verdict.joint().waiting();
        return waiting.greatest() == 0
                ? "none"
                : "at " + units.text(Kind.SHARE, verdict.joint().shareWaiting().mean()) + " of changes; mean "
                        + time(waiting.mean().mean()) + ", 95 % within " + time(waiting.p95());
    }

    private List<String> storage(Verdict.Storage storage) {
        List<String> lines = new ArrayList<>();
        String overtravel =
                storage.overtravel() > 0 ? ", overtravel " + units.text(Kind.LENGTH, storage.overtravel()) : "";
        lines.add(Row.of(
                "Accumulator",
                "refilled in time "
                        + units.text(Kind.SHARE, storage.shareRefilled().mean()) + "; lowest "
                        + units.text(Kind.LENGTH, storage.lowestLevel()) + overtravel));
        if (storage.stripBreaks() > 0) {
            lines.add(Row.of(
                    "Strip breaks",
                    paint.bad(storage.stripBreaks() + "; from the first on, the numbers are not physical")));
        }
        return lines;
    }

    private String time(double seconds) {
        return units.text(Kind.TIME, seconds);
    }

    private static String number(Estimate estimate) {
        return Numbers.text(estimate.mean(), 3);
    }
}
