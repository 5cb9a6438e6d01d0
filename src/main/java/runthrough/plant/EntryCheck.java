package runthrough.plant;

/** Whether the entry can outrun the process and slow down as its creep asks. */
final class EntryCheck {

    private EntryCheck() {}

    static void check(Line line, Findings findings) {
        if (line.practice() == Practice.JOIN_WITH_ACCUMULATOR) {
            topSpeed(line, findings);
        }
        if (line.practice() != Practice.RETHREAD) {
            line.entry().creep().ifPresent(creep -> {
                creepSpeed(line, creep, findings);
                creepLength(line, creep, findings);
            });
        }
    }

    private static void topSpeed(Line line, Findings findings) {
        Wording in = findings.in();
        double top = line.entry().topSpeed();
        double fastest = line.fastestRatedSpeed();
        String what = in.speed(top) + "; must be more than the process speed, " + in.speed(fastest);
        if (top < fastest) {
            findings.error(
                    Keys.TOP_SPEED,
                    what,
                    "The entry must outrun the process: give a higher speed here or a" + " lower one there.");
        } else if (top == fastest) {
            findings.warning(
                    Keys.TOP_SPEED,
                    what,
                    "As it is, the accumulator never refills: give a higher speed here or a lower one there.");
        }
    }

    private static void creepSpeed(Line line, Entry.Creep creep, Findings findings) {
        double slowest = line.slowestRatedSpeed();
        if (creep.speed() >= slowest) {
            findings.error(
                    Keys.CREEP_SPEED,
                    findings.in().speed(creep.speed()) + "; must be less than the slowest process speed, "
                            + findings.in().speed(slowest),
                    "Give a lower creep speed, or leave creep out.");
        }
    }

    private static void creepLength(Line line, Entry.Creep creep, Findings findings) {
        Wording in = findings.in();
        double stopping = creep.speed() * creep.speed() / (2 * line.tailDeceleration());
        if (creep.length() < stopping) {
            findings.error(
                    Keys.CREEP_LENGTH,
                    in.length(creep.length()) + "; must be at least what it takes to stop from the creep speed "
                            + in.speed(creep.speed()) + ", " + in.length(stopping),
                    "Give more metres of creep or a lower creep speed.");
        }
    }
}
