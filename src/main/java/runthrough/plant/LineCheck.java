package runthrough.plant;

import java.util.List;
import runthrough.quantity.UnitSystem;

/**
 * What is refused and what is warned of before anything runs. Each record of the description checks its own ranges when it
 * is made; here stands what relates one part of the line to another. All findings come at once, in the order of the parts.
 */
public final class LineCheck {

    private LineCheck() {}

    /** What is wrong with {@code line}; values are named in metric units. */
    public static List<Finding> check(Line line) {
        Findings findings = new Findings(Wording.in(UnitSystem.METRIC));
        checkLine(line, findings);
        return findings.list();
    }

    /** What is wrong with {@code line}, and with running it under {@code run}; values are named in metric units. */
    public static List<Finding> check(Line line, RunPlan run) {
        return check(line, run, UnitSystem.METRIC);
    }

    /** What is wrong with what was asked; values are named in the units in which its results are wanted. */
    public static List<Finding> check(Brief brief) {
        return check(brief.line(), brief.run(), brief.resultsIn());
    }

    /** Whether nothing is wrong with {@code line} that is refused; there may be warnings. */
    public static boolean accepts(Line line) {
        return check(line).stream().noneMatch(Finding::isError);
    }

    private static List<Finding> check(Line line, RunPlan run, UnitSystem units) {
        Findings findings = new Findings(Wording.in(units));
        checkLine(line, findings);
        RunCheck.check(line, run, findings);
        return findings.list();
    }

    private static void checkLine(Line line, Findings findings) {
        CoilCheck.check(line, findings);
        EntryCheck.check(line, findings);
        if (line.practice() == Practice.JOIN_WITH_ACCUMULATOR) {
            AccumulatorCheck.check(line, findings);
            SlowingCheck.check(line, findings);
        }
        WorkCheck.check(line, findings);
        PracticeCheck.check(line, findings);
    }
}
