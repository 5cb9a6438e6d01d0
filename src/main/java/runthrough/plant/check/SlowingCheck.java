package runthrough.plant.check;

import runthrough.plant.Line;
import runthrough.plant.ProcessSection;

/** Whether slowing on a low level can begin before the process must stop, and can end. */
final class SlowingCheck {

    private SlowingCheck() {}

    static void check(Line line, Messages messages) {
        line.process().slowing().ifPresent(slowing -> {
            speed(line, slowing, messages);
            level(line, slowing, messages);
            resumeLevel(line, slowing, messages);
        });
    }

    /** Rule CHECK-14. */
    private static void speed(Line line, ProcessSection.Slowing slowing, Messages messages) {
        double fastest = line.fastestRatedSpeed();
        if (Excess.isAtLeast(slowing.speed(), fastest)) {
            messages.error(
                    LinePart.SLOWING_SPEED,
                    messages.in().speed(slowing.speed()) + "; must be less than the process speed, "
                            + messages.in().mostSpeed(fastest),
                    "Give a lower speed, or leave slowing out.");
        }
    }

    /** Rules CHECK-15, CHECK-16. */
    private static void level(Line line, ProcessSection.Slowing slowing, Messages messages) {
        Wording in = messages.in();
        double capacity = line.accumulator().capacity();
        double fastest = line.fastestRatedSpeed();
        double stopLevel = line.stopLevel(fastest);
        if (Excess.isAtLeast(slowing.level(), capacity)) {
            messages.error(
                    LinePart.SLOWING_LEVEL,
                    in.length(slowing.level()) + "; must be less than the accumulator's capacity, "
                            + in.mostLength(capacity),
                    "Give a level below full, or the process is never at its rated speed.");
        }
        // Where the process must stop from a full accumulator, there is no such level, and that is said.
        if (Excess.isAtLeast(stopLevel, slowing.level()) && Excess.isAtLeast(capacity, stopLevel)) {
            messages.error(
                    LinePart.SLOWING_LEVEL,
                    in.length(slowing.level()) + "; must be more than the level at which the process must stop from "
                            + in.speed(fastest) + ", " + in.leastLength(stopLevel),
                    "Give a higher level, or the process stops before it slows.");
        }
    }

    /** Rule CHECK-17. */
    private static void resumeLevel(Line line, ProcessSection.Slowing slowing, Messages messages) {
        Wording in = messages.in();
        double capacity = line.accumulator().capacity();
        double given = slowing.resumeLevel();
        if (Excess.isMore(given, capacity)) {
            messages.error(
                    LinePart.RESUME_LEVEL,
                    in.length(given) + "; must be at most the accumulator's capacity, " + in.mostLength(capacity),
                    "Give a level that the accumulator can reach, or slowing never ends.");
        }
        if (Excess.isAtLeast(slowing.level(), given)) {
            messages.error(
                    LinePart.RESUME_LEVEL,
                    in.length(given) + "; must be more than the level at which slowing begins, "
                            + in.leastLength(slowing.level()),
                    "Give a higher level to resume from, or a lower one to slow at.");
        }
    }
}
