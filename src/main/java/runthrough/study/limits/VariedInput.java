package runthrough.study.limits;

import java.util.List;
import java.util.function.DoubleFunction;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.study.limits.LineLimit.What;

/**
 * A number of a line, and the line with other values of it.
 *
 * @param what it is
 * @param line as it is
 * @param present value of the number
 * @param scaledAlike whether several values are behind it, all changed by the same factor
 * @param from lowest value to be tried
 * @param to highest value to be tried
 * @param reference what a difference is held against where the value itself is smaller
 * @param variant from a value to the line with it
 */
record VariedInput(
        What what,
        Line line,
        double present,
        boolean scaledAlike,
        double from,
        double to,
        double reference,
        DoubleFunction<Line> variant) {

    /** Far enough in either direction for every question that makes sense. */
    private static final double FAR = 20;

    /** A little above a speed at which the line's check refuses, as a factor. */
    private static final double ABOVE = 1.001;

    /** All numbers that can be driven, in order of {@link What}. */
    static List<VariedInput> all(Line line) {
        return List.of(
                processSpeed(line),
                jointCycleTimeFactor(line),
                jointCycleTimeAdded(line),
                entryTopSpeed(line),
                coilLength(line));
    }

    /** The value with which {@code line} is as it is, moved by {@code factor} at the most. */
    private static VariedInput scaled(
            What what,
            Line line,
            double present,
            boolean alike,
            double least,
            double most,
            DoubleFunction<Line> variant) {
        return new VariedInput(what, line, present, alike, least, most, 0, value -> variant.apply(value / present));
    }

    /** No faster than the entry, and no slower than what the line creeps or is slowed to. */
    private static VariedInput processSpeed(Line line) {
        double fastest = line.fastestRatedSpeed();
        double creep = line.entry().creep().map(Entry.Creep::speed).orElse(0.0) * fastest / line.slowestRatedSpeed();
        double slowed =
                line.process().slowing().map(ProcessSection.Slowing::speed).orElse(0.0);
        double least = Math.max(fastest / FAR, ABOVE * Math.max(creep, slowed));
        boolean alike =
                line.coils().stream().anyMatch(coil -> coil.processSpeed().isPresent());
        return scaled(
                What.PROCESS_SPEED,
                line,
                fastest,
                alike,
                Math.min(least, fastest),
                Math.max(fastest, line.entry().topSpeed()),
                line::withRatedSpeedsTimes);
    }

    private static VariedInput jointCycleTimeFactor(Line line) {
        return scaled(
                What.JOINT_CYCLE_TIME_FACTOR,
                line,
                1,
                false,
                1 / FAR,
                FAR,
                factor -> line.with(line.change().withStandingWorkTimes(factor)));
    }

    private static VariedInput jointCycleTimeAdded(Line line) {
        double now = HandCalculation.of(line).joint().work();
        double most = FAR * Math.max(now, HandCalculation.of(line).coilRun());
        return new VariedInput(
                What.JOINT_CYCLE_TIME_ADDED,
                line,
                0,
                false,
                0,
                most,
                now,
                seconds -> line.with(line.change().withJoinLongerBy(seconds)));
    }

    /** No slower than the process. */
    private static VariedInput entryTopSpeed(Line line) {
        double now = line.entry().topSpeed();
        return new VariedInput(
                What.ENTRY_TOP_SPEED,
                line,
                now,
                false,
                Math.min(now, line.fastestRatedSpeed()),
                FAR * now,
                0,
                speed -> line.with(line.entry().withTopSpeed(speed)));
    }

    private static VariedInput coilLength(Line line) {
        double now = meanLength(line.coilSource());
        return scaled(
                What.COIL_LENGTH,
                line,
                now,
                line.coils().size() > 1
                        || line.coils().stream().anyMatch(coil -> !coil.size().isConstant()),
                now / FAR,
                FAR * now,
                factor -> line.with(line.coilSource().withEach(coil -> coil.withLengthTimes(factor))));
    }

    /** Mean length (m) of the coils as they come. */
    private static double meanLength(CoilSource coilSource) {
        if (coilSource instanceof CoilSource.Mix mix) {
            return mix.shares().stream()
                            .mapToDouble(share -> share.weight() * share.coil().meanLength())
                            .sum()
                    / mix.totalWeight();
        }
        return coilSource.kinds().stream()
                .mapToDouble(Coil::meanLength)
                .average()
                .orElseThrow();
    }
}
