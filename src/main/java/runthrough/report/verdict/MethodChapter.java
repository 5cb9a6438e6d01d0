package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import runthrough.quantity.Notation;
import runthrough.report.Chapter;
import runthrough.report.Chapter.Heading;
import runthrough.report.Chapter.Paragraph;
import runthrough.report.Chapter.Points;
import runthrough.report.Texts;
import runthrough.study.statistics.Pool;

/** How a verdict was computed. It names the rules of the model's specification, {@code src/docs/model.md}. */
final class MethodChapter {
    private final RunThroughResult result;

    private MethodChapter(RunThroughResult result) {
        this.result = result;
    }

    static Chapter of(RunThroughResult result) {
        return new MethodChapter(result).chapter();
    }

    private Chapter chapter() {
        List<Chapter.Block> blocks = new ArrayList<>();
        blocks.add(new Heading("The model"));
        blocks.add(new Paragraph(
                "The line is followed from event to event: a ramp reaches its speed, a level reaches a limit, a work element"
                        + " ends, a coil runs out. Speeds change at constant acceleration, so that levels follow parabolas; every"
                        + " crossing of a limit is the root of a quadratic and is met exactly. There are no time steps"
                        + " (MOTION-1 to MOTION-3; names such as these are the rules of the model's specification)."));
        blocks.add(new Paragraph(practice()));
        blocks.add(
                new Paragraph(
                        "Coil changes need three lists of work: preparing the next coil while the line runs, work on the tail, and work"
                                + " that needs both coils (CHANGE-1). A joint that is rejected is made again (CHANGE-9). A coil change has run through when the"
                                + " process held its rated speed from the start of the change until the start of the next (REPORT-3)."));
        blocks.add(new Heading("Assumptions"));
        blocks.add(
                new Points(
                        List.of(
                                "The drives hold the accelerations given, whatever the coil's mass, and speeds follow their set values exactly.",
                                "Strip does not stretch or slip; what the entry passes and the process does not take is in the accumulator.",
                                "People attend as described, in shifts with breaks where these are given. Work on the joint comes first, and a"
                                        + " preparation is put down for it (CREW-1 to CREW-15). Other duties and stops of the process do not"
                                        + " keep anybody.",
                                "What is random is independent from one coil change to the next: no bad day, no learning, no tired shift.",
                                "The described times are right. Times that were measured hold for the shifts on which they were measured.")));
        blocks.add(new Heading("The statistics"));
        statistics(blocks);
        return new Chapter("method", "How it was computed", blocks);
    }

    private String practice() {
        if (!result.isOneStrip()) {
            return "The run begins with a full accumulator and the entry at the speed of the process (TIME-1). When a coil runs out, its"
                    + " tail stops in the joiner, the joint is made, and after its release the entry runs faster than the process"
                    + " until the accumulator is full again (ENTRY-3, ENTRY-4). The process begins to stop when the level falls to its stop level, the"
                    + " reserve and the distance in which it stops (PROC-3); this is on the safe side, since the entry may already"
                    + " be running again.";
        }
        return result.line().practice().hasJoiner()
                ? "There is no accumulator. Entry and process are one strip with one speed; it stands while the joint is made"
                        + " (PRACTICE-1)."
                : "There is no joiner. When a coil runs out the line stops, waits for the next coil to be prepared, is threaded"
                        + " anew, and starts again (PRACTICE-6).";
    }

    private void statistics(List<Chapter.Block> blocks) {
        if (!result.verdict().chance()) {
            blocks.add(new Paragraph(
                    "Nothing in this line is random: every replication is the same, the numbers are exact for the line as"
                            + " described, and there is nothing to give an interval for."));
            return;
        }
        int replications = result.study().request().run().replications();
        blocks.add(new Paragraph("From "
                + result.words().runs(result.study().request(), replications)
                + ", independent of each other. Every random number belongs to what it is for, such as the weld of coil change 17 (RANDOM-2), so that"
                + " variants of the line under the same seed meet the same random numbers."));
        blocks.add(new Paragraph(
                replications > 1
                        ? "A mean is the mean over the replications; its 95 % interval is Student's t across them (REPORT-12). An"
                                + " interval is not given where replications did not differ. A share with few successes or failures has"
                                + " Wilson's score interval, from the counts of all replications (REPORT-13). What rests on few stops, such"
                                + " as lost time and output, has an interval from their number and from how much they differ (REPORT-17);"
                                + " what was never seen has the rule of three, at most three over the number of trials, a coil change"
                                + " being taken to lose its whole time. So nothing is ever claimed to be certain"
                                + " because it was not seen to happen."
                        : "With one replication, shares have Wilson's score interval (REPORT-13) and what was never seen has the rule"
                                + " of three, at most three over the number of trials; other means have no interval. Several"
                                + " replications would give one."));
        blocks.add(new Paragraph(
                "The verdict holds the interval of the share run through against the target: it is met when the whole interval is"
                        + " at or above it, missed when the whole interval is below, and marginal when the interval holds it"
                        + " (REPORT-16). The margin at the target is what all coil changes but the share that may fail have at least"
                        + " (MARGIN-4). Percentiles pool the coil changes of all replications and are interpolated between order"
                        + " statistics (REPORT-15); of more than " + Texts.count(Pool.MOST_EXACT)
                        + " coil changes they and the margin at the target may be too low by "
                        + Notation.SHARE.text(Pool.COARSENESS) + "."));
    }
}
