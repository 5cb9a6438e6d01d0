package runthrough.plant;

/** Whether slowing on a low level can begin before the process must stop, and can end. */
final class SlowingCheck {

    private SlowingCheck() {}

    static void check(Line line, Findings findings) {
        line.process().slowing().ifPresent(slowing -> {
            speed(line, slowing, findings);
            level(line, slowing, findings);
            resumeLevel(line, slowing, findings);
        });
    }

    private static void speed(Line line, ProcessSection.Slowing slowing, Findings findings) {
        double fastest = line.fastestRatedSpeed();
        if (slowing.speed() >= fastest) {
            findings.error(
                    Keys.SLOWING_SPEED,
                    findings.in().speed(slowing.speed()) + "; must be less than the process speed, "
                            + findings.in().speed(fastest),
                    "Give a lower speed, or leave slowing out.");
        }
    }

    private static void level(Line line, ProcessSection.Slowing slowing, Findings findings) {
        Wording in = findings.in();
        double capacity = line.accumulator().capacity();
        double fastest = line.fastestRatedSpeed();
        double stopLevel = line.stopLevel(fastest);
        if (slowing.level() >= capacity) {
            findings.error(
                    Keys.SLOWING_LEVEL,
                    in.length(slowing.level()) + "; must be less than the accumulator's capacity, "
                            + in.length(capacity),
                    "Give a level below full, or the process is never at its rated speed.");
        } else if (slowing.level() <= stopLevel) {
            findings.error(
                    Keys.SLOWING_LEVEL,
                    in.length(slowing.level()) + "; must be more than the level at which the process must stop from "
                            + in.speed(fastest) + ", " + in.length(stopLevel),
                    "Give a higher level, or the process stops before it slows.");
        }
    }

    private static void resumeLevel(Line line, ProcessSection.Slowing slowing, Findings findings) {
        Wording in = findings.in();
        double capacity = line.accumulator().capacity();
        double given = slowing.resumeLevel();
        if (given > capacity) {
            findings.error(
                    Keys.RESUME_LEVEL,
                    in.length(given) + "; must be at most the accumulator's capacity, " + in.length(capacity),
                    "Give a level that the accumulator can reach, or slowing never ends.");
        } else if (given <= slowing.level()) {
            findings.error(
                    Keys.RESUME_LEVEL,
                    in.length(given) + "; must be more than the level at which slowing begins, "
                            + in.length(slowing.level()),
                    "Give a higher level to resume from, or a lower one to slow at.");
        }
    }
}
