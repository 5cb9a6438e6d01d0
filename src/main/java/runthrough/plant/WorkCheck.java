package runthrough.plant;

import java.util.List;
import java.util.stream.Stream;

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
        if (line.practice() == Practice.RETHREAD) {
            check.rethread();
        } else {
            check.joint();
            check.redo();
        }
    }

    /** Rule CHECK-20. */
    private void times() {
        line.process().downtime().ifPresent(stops -> {
            notBelowZero(Keys.RUNNING_TIME, "", stops.runningTime());
            notBelowZero(Keys.STANDING_TIME, "", stops.standingTime());
            if (stops.runningTime().highest() == 0) {
                messages.error(
                        Keys.RUNNING_TIME,
                        in.time(0) + "; must be more than 0",
                        "Give the time that the process runs between its stops, or leave them out.");
            }
        });
        line.process().jointBreak().ifPresent(breaks -> notBelowZero(Keys.REPAIR, "", breaks.repair()));
        notBelowZero(Keys.RESTART_DELAY, "", line.process().restartDelay());
        elements(Keys.PREPARE, line.change().prepare());
        elements(Keys.TAIL, line.change().tail());
        elements(Keys.JOIN, line.change().join());
        notBelowZero(Keys.RETHREAD, "", line.change().rethread());
    }

    private void elements(String list, List<WorkElement> elements) {
        for (int i = 0; i < elements.size(); i++) {
            WorkElement element = elements.get(i);
            notBelowZero(
                    Keys.element(list, i),
                    " (" + element.name() + ")",
                    element.time().drawn());
        }
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
    private void rethread() {
        if (line.change().rethread().highest() == 0) {
            messages.error(
                    Keys.RETHREAD,
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
                    Keys.JOIN,
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
                    Keys.REJECT,
                    in.share(change.reject().meanExtraPasses()
                                    / (1 + change.reject().meanExtraPasses()))
                            + " of passes; should have work that is done again",
                    "A rejected joint costs no time: mark the elements that are done again.");
        }
    }
}
