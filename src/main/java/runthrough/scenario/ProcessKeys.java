package runthrough.scenario;

import java.util.Optional;
import runthrough.plant.Distribution;
import runthrough.plant.ProcessSection;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.DistributionShape;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.part.JointKeys;

/** What may be said of the process section. */
final class ProcessKeys {

    private static final DistributionShape TIME = new DistributionShape(Dimension.TIME, Range.NOT_NEGATIVE);

    static final Key<Double> SPEED =
            Key.required("speed", "the rated strip speed of the process", Amount.positive(Dimension.SPEED), "45 m/min");
    static final Key<Double> ACCELERATION = Key.optional(
                    "acceleration",
                    "how fast the process speeds up",
                    Amount.positive(Dimension.ACCELERATION),
                    "0.2 m/s2")
            .orElse("the speed changes at once", Double.POSITIVE_INFINITY);
    static final Key<Double> DECELERATION = Key.optional(
                    "deceleration",
                    "how fast the process slows down",
                    Amount.positive(Dimension.ACCELERATION),
                    "0.25 m/s2")
            .orElse("the speed changes at once", Double.POSITIVE_INFINITY);
    static final Key<Double> PATH = Key.optional(
                    "path",
                    "the fixed strip path from the accumulator to the process",
                    Amount.notNegative(Dimension.LENGTH),
                    "25 m")
            .orElse("0 m");
    static final Key<Double> SCRAP_PER_STOP = Key.optional(
                    "scrap-per-stop",
                    "the length of strip that is scrapped each time the process stops",
                    Amount.notNegative(Dimension.LENGTH),
                    "4 m")
            .orElse("0 m");

    static final Key<Double> SCRAP_PER_JOINT = Key.optional(
                    "scrap-per-joint",
                    "the length of strip that is cut out with each joint after the process, half of each coil",
                    Amount.notNegative(Dimension.LENGTH),
                    "1 m")
            .orElse("0 m");

    static final Key<Double> RESTART_LEVEL = Key.optional(
                    "level",
                    "the level in the accumulator from which the process may restart",
                    Amount.notNegative(Dimension.LENGTH),
                    "20 m")
            .orElse("the stop level plus 10 % of the capacity", Double.NaN);
    static final Key<Distribution> RESTART_DELAY = Key.optional(
                    "delay", "the time from being allowed to restart until it does", TIME, "90 s")
            .orElse("0 s");
    static final Key<Values> RESTART = Key.optional(
            "restart",
            "how the process starts again after a starved stop",
            Section.of("process.restart", "after a starved stop", RESTART_LEVEL, RESTART_DELAY),
            "");

    static final Key<Double> SLOW_SPEED =
            Key.required("speed", "the slowed strip speed", Amount.positive(Dimension.SPEED), "20 m/min");
    static final Key<Double> SLOW_LEVEL = Key.required(
            "level",
            "the level in the accumulator at which slowing begins",
            Amount.notNegative(Dimension.LENGTH),
            "25 m");
    static final Key<Double> RESUME = Key.optional(
                    "resume",
                    "the level from which full speed is taken up again",
                    Amount.notNegative(Dimension.LENGTH),
                    "60 m")
            .orElse("the slowing level plus 10 % of the capacity", Double.NaN);
    static final Key<Values> SLOWING = Key.optional(
            "slowing",
            "how the process slows down rather than stop",
            Section.of("process.slowing", "running slower on a low level", SLOW_SPEED, SLOW_LEVEL, RESUME),
            "");

    static final Key<Distribution> RUNNING = Key.required(
            "running",
            "the time from one stop to the next, counted while the process moves",
            new DistributionShape(Dimension.TIME, Range.POSITIVE),
            "{exponential: 3 h}");
    static final Key<Distribution> STANDING =
            Key.required("standing", "the time that the process stands", TIME, "{lognormal: [4 min, 2 min]}");
    static final Key<Values> DOWNTIME = Key.optional(
            "downtime",
            "when and how long the process stops for reasons of its own",
            Section.of("process.downtime", "tool changes, jams, size changes", RUNNING, STANDING),
            "");

    static final Section PROCESS = Section.of(
            "process",
            "what must not stop",
            SPEED,
            ACCELERATION,
            DECELERATION,
            PATH,
            SCRAP_PER_STOP,
            SCRAP_PER_JOINT,
            RESTART,
            SLOWING,
            DOWNTIME,
            JointKeys.PASSAGE,
            JointKeys.BREAK);

    private ProcessKeys() {}

    /** The process section that {@code values} describe. */
    static ProcessSection process(Values values) {
        Optional<Values> restart = values.find(RESTART);
        return new ProcessSection(
                new ProcessSection.Drive(values.get(SPEED), values.get(ACCELERATION), values.get(DECELERATION)),
                new ProcessSection.Restart(
                        restart.flatMap(given -> given.find(RESTART_LEVEL)).orElse(Double.NaN),
                        restart.flatMap(given -> given.find(RESTART_DELAY)).orElse(Distribution.constant(0))),
                values.find(SLOWING)
                        .map(given -> new ProcessSection.Slowing(
                                given.get(SLOW_SPEED), given.get(SLOW_LEVEL), given.get(RESUME))),
                values.find(DOWNTIME)
                        .map(given -> new ProcessSection.Downtime(given.get(RUNNING), given.get(STANDING))),
                values.get(PATH),
                new ProcessSection.Scrap(values.get(SCRAP_PER_STOP), values.get(SCRAP_PER_JOINT)),
                new ProcessSection.JointsInProcess(values.find(JointKeys.PASSAGE), values.find(JointKeys.BREAK)));
    }
}
