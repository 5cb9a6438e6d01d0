package runthrough.plant;

/** The keys of the scenario file that messages point at, so that a message can be traced to its line. */
final class Keys {
    static final String ACCUMULATOR = "accumulator";
    static final String RESERVE = "accumulator.reserve";
    static final String EMPTYING_SPEED = "accumulator.emptying-speed";
    static final String TOP_SPEED = "entry.top-speed";
    static final String CREEP = "entry.creep";
    static final String CREEP_SPEED = "entry.creep.speed";
    static final String CREEP_LENGTH = "entry.creep.length";
    static final String UNCOILER_PATH = "entry.uncoiler-path";
    static final String SLOWING = "process.slowing";
    static final String SLOWING_SPEED = "process.slowing.speed";
    static final String SLOWING_LEVEL = "process.slowing.level";
    static final String RESUME_LEVEL = "process.slowing.resume";
    static final String RESTART_LEVEL = "process.restart.level";
    static final String RESTART_DELAY = "process.restart.delay";
    static final String RUNNING_TIME = "process.downtime.running";
    static final String STANDING_TIME = "process.downtime.standing";
    static final String JOINT_PASSAGE = "process.joint-passage";
    static final String JOINT_PASSAGE_SPEED = "process.joint-passage.speed";
    static final String JOINT_BREAK = "process.joint-break";
    static final String REPAIR = "process.joint-break.repair";
    static final String SHIFTS = "coil-change.shifts";
    static final String PREPARE = "coil-change.prepare";
    static final String TAIL = "coil-change.tail";
    static final String JOIN = "coil-change.join";
    static final String REJECT = "coil-change.reject";
    static final String RETHREAD = "coil-change.rethread";
    static final String LEAVE_OUT = "run.leave-out";
    static final String RUN_TIME = "run.time";
    static final String TARGET = "run.target";
    static final String TARGET_WITHOUT_STOP = "run.target-without-stop";

    private Keys() {}

    /** The key of the coil of kind {@code index}, counted from 0; keys count from 1, as people do. */
    static String coil(CoilSource coilSource, int index) {
        if (coilSource instanceof CoilSource.Repeated) {
            return "coil";
        }
        String list = coilSource instanceof CoilSource.Mix ? "coils.mix" : "coils.schedule";
        return element(list, index);
    }

    /** The key of element {@code index} of a list, counted from 0; keys count from 1, as people do. */
    static String element(String list, int index) {
        return list + "[" + (index + 1) + "]";
    }
}
