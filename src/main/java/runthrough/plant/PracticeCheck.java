package runthrough.plant;

/** Whether something is described that has no part in the practice chosen; it would be ignored. Rule CHECK-23. */
final class PracticeCheck {
    private static final String REMEDY = "It is ignored: leave it out, or choose another practice.";

    private final Line line;
    private final Messages messages;
    private final Wording in;

    private PracticeCheck(Line line, Messages messages) {
        this.line = line;
        this.messages = messages;
        this.in = messages.in();
    }

    static void check(Line line, Messages messages) {
        PracticeCheck check = new PracticeCheck(line, messages);
        switch (line.practice()) {
            case JOIN_WITH_ACCUMULATOR -> check.rethreadTime("joining");
            case JOIN_WITHOUT_ACCUMULATOR -> {
                check.storage("joining without an accumulator");
                check.rethreadTime("joining");
            }
            case RETHREAD -> {
                check.storage("rethreading");
                check.joiner("rethreading");
            }
        }
    }

    private void noPart(String path, String value, String practice) {
        messages.warning(path, value + "; has no part in " + practice, REMEDY);
    }

    private void rethreadTime(String practice) {
        Distribution rethread = line.change().rethread();
        if (rethread.highest() > 0) {
            noPart(Keys.RETHREAD, in.time(rethread.mean()) + " on average", practice);
        }
    }

    private void storage(String practice) {
        double capacity = line.accumulator().capacity();
        if (capacity > 0) {
            noPart(Keys.ACCUMULATOR, in.length(capacity) + " of strip", practice);
        }
        line.process().slowing().ifPresent(slowing -> noPart(Keys.SLOWING, in.speed(slowing.speed()), practice));
        if (!Double.isNaN(line.process().restartLevel())) {
            noPart(Keys.RESTART_LEVEL, in.length(line.process().restartLevel()), practice);
        }
    }

    private void joiner(String practice) {
        CoilChange change = line.change();
        line.entry().creep().ifPresent(creep -> noPart(Keys.CREEP, in.speed(creep.speed()), practice));
        if (line.process().restartDelay().highest() > 0) {
            noPart(Keys.RESTART_DELAY, in.time(line.process().restartDelay().mean()) + " on average", practice);
        }
        if (!change.tail().isEmpty()) {
            noPart(Keys.TAIL, elements(change.tail().size()), practice);
        }
        if (!change.join().isEmpty()) {
            noPart(Keys.JOIN, elements(change.join().size()), practice);
        }
        double extraPasses = change.reject().meanExtraPasses();
        if (extraPasses > 0) {
            noPart(Keys.REJECT, in.share(extraPasses / (1 + extraPasses)) + " of passes", practice);
        }
    }

    private static String elements(int count) {
        return count == 1 ? "1 element" : count + " elements";
    }
}
