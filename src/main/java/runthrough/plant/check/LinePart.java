package runthrough.plant.check;

import runthrough.plant.CoilSource;

/**
 * The parts of a described line that messages point at, each by a path from the whole to the part. Who reads descriptions from
 * elsewhere gives what it reads the same paths, and so can trace a message to its place.
 */
public enum LinePart {
    COIL("coil"),
    ENTRY("entry"),
    UNCOILERS("entry.uncoilers"),
    TOP_SPEED("entry.top-speed"),
    ENTRY_ACCELERATION("entry.acceleration"),
    ENTRY_DECELERATION("entry.deceleration"),
    CREEP("entry.creep"),
    CREEP_SPEED("entry.creep.speed"),
    CREEP_LENGTH("entry.creep.length"),
    UNCOILER_PATH("entry.uncoiler-path"),
    ACCUMULATOR("accumulator"),
    FILL_RATE_LIMIT("accumulator.fill-rate-limit"),
    RESERVE("accumulator.reserve"),
    OVERTRAVEL_ALLOWANCE("accumulator.overtravel-allowance"),
    EMPTYING_SPEED("accumulator.emptying-speed"),
    PROCESS("process"),
    PROCESS_SPEED("process.speed"),
    PROCESS_ACCELERATION("process.acceleration"),
    PROCESS_DECELERATION("process.deceleration"),
    SLOWING("process.slowing"),
    SLOWING_SPEED("process.slowing.speed"),
    SLOWING_LEVEL("process.slowing.level"),
    RESUME_LEVEL("process.slowing.resume"),
    RESTART("process.restart"),
    RESTART_LEVEL("process.restart.level"),
    RESTART_DELAY("process.restart.delay"),
    RUNNING_TIME("process.downtime.running"),
    STANDING_TIME("process.downtime.standing"),
    JOINT_PASSAGE("process.joint-passage"),
    JOINT_PASSAGE_SPEED("process.joint-passage.speed"),
    JOINT_BREAK("process.joint-break"),
    REPAIR("process.joint-break.repair"),
    PROCESS_PATH("process.path"),
    SCRAP_PER_STOP("process.scrap-per-stop"),
    SCRAP_PER_JOINT("process.scrap-per-joint"),
    WORK("coil-change"),
    CREW("coil-change.crew"),
    SHIFTS("coil-change.shifts"),
    PREPARE("coil-change.prepare"),
    TAIL("coil-change.tail"),
    JOIN("coil-change.join"),
    REJECT("coil-change.reject"),
    RETHREAD("coil-change.rethread"),
    BENDING("bending"),
    LEAVE_OUT("run.leave-out"),
    RUN_TIME("run.time"),
    TARGET("run.target"),
    TARGET_WITHOUT_STOP("run.target-without-stop");

    private final String path;

    LinePart(String path) {
        this.path = path;
    }

    /** From the whole to the part, with dots between. */
    public String path() {
        return path;
    }

    /** The path of the coil of kind {@code index}, counted from 0; paths count from 1, as people do. */
    static String coil(CoilSource coilSource, int index) {
        if (coilSource instanceof CoilSource.Repeated) {
            return COIL.path;
        }
        String list = coilSource instanceof CoilSource.Mix ? "coils.mix" : "coils.schedule";
        return element(list, index);
    }

    /** The path of element {@code index} of this list, counted from 0; paths count from 1, as people do. */
    String element(int index) {
        return element(path, index);
    }

    static String element(String list, int index) {
        return list + "[" + (index + 1) + "]";
    }
}
