package runthrough.plant.check;

import runthrough.plant.Entry;
import runthrough.plant.Line;

/** Whether the entry can outrun the process and slow down as its creep asks. */
final class EntryCheck {

    private EntryCheck() {}

    static void check(Line line, Messages messages) {
        if (!line.practice().isOneStrip()) {
            topSpeed(line, messages);
        }
        line.creep().ifPresent(creep -> {
            creepSpeed(line, creep, messages);
            creepLength(line, creep, messages);
        });
    }

    /** Rule CHECK-6. */
    private static void topSpeed(Line line, Messages messages) {
        Wording in = messages.in();
        double top = line.entry().topSpeed();
        double fastest = line.fastestRatedSpeed();
        String what = in.speed(top) + "; must be more than the process speed, " + in.leastSpeed(fastest);
        if (Excess.isMore(fastest, top)) {
            messages.error(
                    LinePart.TOP_SPEED,
                    what,
                    "The entry must outrun the process: give a higher speed here or a" + " lower one there.");
        } else if (Excess.isEqual(top, fastest)) {
            messages.warning(
                    LinePart.TOP_SPEED,
                    what,
                    "As it is, the accumulator never refills: give a higher speed here or a lower one there.");
        }
    }

    /** Rule CHECK-7. */
    private static void creepSpeed(Line line, Entry.Creep creep, Messages messages) {
        double slowest = line.slowestRatedSpeed();
        if (Excess.isAtLeast(creep.speed(), slowest)) {
            messages.error(
                    LinePart.CREEP_SPEED,
                    messages.in().speed(creep.speed()) + "; must be less than the slowest process speed, "
                            + messages.in().mostSpeed(slowest),
                    "Give a lower creep speed, or leave creep out.");
        }
    }

    /** Rule CHECK-8. */
    private static void creepLength(Line line, Entry.Creep creep, Messages messages) {
        Wording in = messages.in();
        double stopping = creep.speed() * creep.speed() / (2 * line.tailDeceleration());
        if (Excess.isMore(stopping, creep.length())) {
            messages.error(
                    LinePart.CREEP_LENGTH,
                    in.length(creep.length()) + "; must be at least what it takes to stop from the creep speed "
                            + in.speed(creep.speed()) + ", " + in.leastLength(stopping),
                    "Give more metres of creep or a lower creep speed.");
        }
    }
}
