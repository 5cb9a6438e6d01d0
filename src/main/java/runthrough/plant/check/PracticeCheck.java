package runthrough.plant.check;

import java.util.Optional;
import runthrough.plant.Accumulator;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;

/** Whether something is described that has no part in the practice chosen; it would be ignored. Rule CHECK-23. */
final class PracticeCheck {
    private static final String REMEDY = "It is ignored: leave it out, or choose another practice.";

    private final Messages messages;
    private final Wording in;
    private final String practice;

    private PracticeCheck(Practice practice, Messages messages) {
        this.messages = messages;
        this.in = messages.in();
        this.practice = named(practice);
    }

    static void check(Line line, Messages messages) {
        PracticeCheck check = new PracticeCheck(line.practice(), messages);
        if (line.practice().isOneStrip()) {
            check.levels(line.process());
        }
        if (!line.practice().hasJoiner()) {
            check.joiner(line);
        }
    }

    /** The same of what a practice does not even hold: an accumulator where there is none, the time of a rethread. */
    static void unused(
            Practice chosen, Optional<Accumulator> accumulator, Optional<Distribution> rethread, Messages messages) {
        PracticeCheck check = new PracticeCheck(chosen, messages);
        if (chosen.isOneStrip()) {
            accumulator.ifPresent(check::accumulator);
        }
        if (chosen.hasJoiner()) {
            rethread.ifPresent(check::rethreadTime);
        }
    }

    private static String named(Practice practice) {
        if (!practice.hasJoiner()) {
            return "rethreading";
        }
        return practice.isOneStrip() ? "joining without an accumulator" : "joining";
    }

    private void noPart(LinePart part, String value) {
        noPart(part, value, practice);
    }

    private void noPart(LinePart part, String value, String named) {
        messages.warning(part, value + "; has no part in " + named, REMEDY);
    }

    private void rethreadTime(Distribution time) {
        if (time.highest() > 0) {
            noPart(LinePart.RETHREAD, in.time(time.mean()) + " on average", "joining");
        }
    }

    private void accumulator(Accumulator accumulator) {
        if (accumulator.capacity() > 0) {
            noPart(LinePart.ACCUMULATOR, in.length(accumulator.capacity()) + " of strip");
        }
    }

    private void levels(ProcessSection process) {
        process.slowing().ifPresent(slowing -> noPart(LinePart.SLOWING, in.speed(slowing.speed())));
        if (!Double.isNaN(process.restartLevel())) {
            noPart(LinePart.RESTART_LEVEL, in.length(process.restartLevel()));
        }
    }

    private void joiner(Line line) {
        CoilChange change = line.change();
        line.entry().creep().ifPresent(creep -> noPart(LinePart.CREEP, in.speed(creep.speed())));
        if (line.process().restartDelay().highest() > 0) {
            noPart(LinePart.RESTART_DELAY, in.time(line.process().restartDelay().mean()) + " on average");
        }
        if (!change.tail().isEmpty()) {
            noPart(LinePart.TAIL, elements(change.tail().size()));
        }
        if (!change.join().isEmpty()) {
            noPart(LinePart.JOIN, elements(change.join().size()));
        }
        double extraPasses = change.reject().meanExtraPasses();
        if (extraPasses > 0) {
            noPart(LinePart.REJECT, in.share(extraPasses / (1 + extraPasses)) + " of passes");
        }
    }

    private static String elements(int count) {
        return count == 1 ? "1 element" : count + " elements";
    }
}
