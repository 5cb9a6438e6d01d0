package runthrough.plant.check;

import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Joint;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;

/** Whether the times of the work can be drawn, and whether the work adds up to a coil change. */
final class WorkCheck {
    private final Line line;
    private final Messages messages;
    private final Wording in;

    private WorkCheck(Line line, Messages messages) {
        this.line = line;
        this.messages = messages;
        this.in = messages.in();
    }

    static void check(Line line, Messages messages) {
        WorkCheck check = new WorkCheck(line, messages);
        check.times();
        check.withoutEffect(LinePart.PREPARE, line.change().prepare());
        if (line.practice().hasJoiner()) {
            check.withoutEffect(LinePart.TAIL, line.change().tail());
            check.withoutEffect(LinePart.JOIN, line.change().join());
        }
        if (line.practice() instanceof Practice.Rethread rethread) {
            check.rethread(rethread.time());
        } else {
            check.joint();
            check.redo();
        }
    }

    /** Rule CHECK-20. */
    private void times() {
        line.process().downtime().ifPresent(stops -> {
            notBelowZero(LinePart.RUNNING_TIME, "", stops.runningTime());
            notBelowZero(LinePart.STANDING_TIME, "", stops.standingTime());
            if (stops.runningTime().highest() == 0) {
                messages.error(
                        LinePart.RUNNING_TIME,
                        in.time(0) + "; must be more than 0",
                        "Give the time that the process runs between its stops, or leave them out.");
            }
        });
        line.process().jointBreak().ifPresent(breaks -> notBelowZero(LinePart.REPAIR, "", breaks.repair()));
        notBelowZero(LinePart.RESTART_DELAY, "", line.process().restartDelay());
        elements(LinePart.PREPARE, line.change().prepare());
        elements(LinePart.TAIL, line.change().tail());
        elements(LinePart.JOIN, line.change().join());
    }

    private void elements(LinePart list, List<WorkElement> elements) {
        for (int i = 0; i < elements.size(); i++) {
            WorkElement element = elements.get(i);
            notBelowZero(
                    list.element(i), " (" + element.name() + ")", element.time().drawn());
        }
    }

    /** Rule CHECK-33. */
    private void withoutEffect(LinePart list, List<WorkElement> elements) {
        for (int i = 0; i < elements.size(); i++) {
            WorkElement element = elements.get(i);
            String path = list.element(i) + "." + element.name();
            if (element.occurrence() instanceof Occurrence.When when && !isEverDone(element)) {
                messages.warning(
                        path + ".when",
                        when.words() + "; should differ between two coils that follow each other",
                        "The element is never done: give coils that differ, or leave the element out.");
            }
            if (list != LinePart.PREPARE && !element.putDown()) {
                messages.warning(
                        path + ".put-down",
                        "no; has no effect on work on the standing strip",
                        "Only an element of prepare is ever put down: leave it out.");
            }
        }
    }

    private void notBelowZero(LinePart part, String name, Distribution time) {
        notBelowZero(part.path(), name, time);
    }

    /**
     * A shift may take a distribution below zero, which is an error when it is drawn: sure for bounded distributions, a risk for others.
     *
     * <p>Rule CHECK-19.
     */
    private void notBelowZero(String path, String name, Distribution time) {
        double least = time.quantile(Distribution.LEAST_DRAW);
        if (!(least < 0)) {
            return;
        }
        String share = in.oneIn(Bisection.share(p -> time.quantile(p) < 0));
        if (time.highest() < Double.POSITIVE_INFINITY) {
            messages.error(
                    path,
                    in.time(time.lowest()) + " at least" + name + "; must never be below 0, but is for 1 draw in "
                            + share,
                    "Give a smaller negative shift.");
        } else {
            messages.warning(
                    path,
                    in.time(time.lowest()) + " at least" + name + "; should never be below 0, but is for 1 draw in "
                            + share,
                    "A run that draws such a time ends with an error: give a smaller negative shift.");
        }
    }

    /** Rule CHECK-22. */
    private void rethread(Distribution time) {
        notBelowZero(LinePart.RETHREAD, "", time);
        if (time.highest() == 0) {
            messages.error(
                    LinePart.RETHREAD,
                    in.time(0) + "; must be more than 0 for the practice of rethreading",
                    "Give the time that it takes to thread the line anew.");
        }
    }

    /** Rule CHECK-21. */
    private void joint() {
        boolean takesTime = Stream.concat(line.change().tail().stream(), line.change().join().stream())
                .anyMatch(element -> element.meanDuration(Joint.alike(1, 1)) > 0 && isEverDone(element));
        if (!takesTime) {
            messages.warning(
                    LinePart.JOIN,
                    in.time(0) + " with the tail work; should take more than 0",
                    "The joint is made in no time: give the elements of the work while the strip stands.");
        }
    }

    private boolean isEverDone(WorkElement element) {
        return element.occurrence().share(line.coilSource()) > 0;
    }

    /** Rule CHECK-21. */
    private void redo() {
        CoilChange change = line.change();
        boolean redone = Stream.of(change.prepare(), change.tail(), change.join())
                .flatMap(List::stream)
                .anyMatch(WorkElement::redo);
        if (change.reject().meanExtraPasses() > 0 && !redone) {
            messages.warning(
                    LinePart.REJECT,
                    in.share(change.reject().meanExtraPasses()
                                    / (1 + change.reject().meanExtraPasses()))
                            + " of passes; should have work that is done again",
                    "A rejected joint costs no time: mark the elements that are done again.");
        }
    }
}
