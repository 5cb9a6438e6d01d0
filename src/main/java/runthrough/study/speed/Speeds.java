package runthrough.study.speed;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import runthrough.study.Evaluation;
import runthrough.study.StudyException;
import runthrough.study.Verdict;
import runthrough.study.speed.SpeedCurve.NotPossible;

/** The speeds tried so far, and what the line gave at each; none is run twice. */
final class Speeds {
    /** Two speeds closer than this, relatively, are one. */
    private static final double ROUNDING = 1e-9;

    private final double now;
    private final double target;
    private final DoubleFunction<Evaluation> line;
    private final NavigableMap<Double, Evaluation> tried = new TreeMap<>();
    private final NavigableMap<Double, NotPossible> notPossible = new TreeMap<>();

    /**
     * No speeds yet.
     *
     * @param now the present speed (m/s)
     * @param target share of coil changes that should run through
     * @param line from a speed (m/s) to what the line gives at it
     */
    Speeds(double now, double target, DoubleFunction<Evaluation> line) {
        this.now = now;
        this.target = target;
        this.line = line;
    }

    /**
     * What the line gives at {@code speed} (m/s).
     *
     * @throws StudyException when it cannot be run at that speed
     */
    Evaluation at(double speed) {
        double exact = exactly(speed);
        Evaluation known = tried.get(exact);
        if (known == null) {
            known = line.apply(exact);
            tried.put(exact, known);
        }
        return known;
    }

    /** The same; empty where the line cannot be run at that speed, which is remembered with the reason. */
    Optional<Evaluation> attempt(double speed) {
        if (notPossible.containsKey(speed)) {
            return Optional.empty();
        }
        try {
            return Optional.of(at(speed));
        } catch (StudyException e) {
            notPossible.put(speed, new NotPossible(speed, String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    /** The speeds at which the line could not be run, slowest first. */
    List<NotPossible> notPossible() {
        return List.copyOf(notPossible.values());
    }

    /** The present speed, if {@code speed} is that but for rounding. */
    private double exactly(double speed) {
        return Math.abs(speed - now) <= ROUNDING * now ? now : speed;
    }

    /** Every speed tried so far at which the line can be run (m/s), slowest first. */
    List<Double> tried() {
        return List.copyOf(tried.keySet());
    }

    /** The points of {@code range} at which the line can be run, and the present speed where it lies in it. */
    List<SpeedPoint> points(SpeedRange range) {
        return DoubleStream.concat(
                        range.speeds(now),
                        DoubleStream.of(now).filter(speed -> range.from() <= speed && speed <= range.to()))
                .map(this::exactly)
                .sorted()
                .distinct()
                .filter(tried::containsKey)
                .mapToObj(this::point)
                .toList();
    }

    /** What comes out at {@code given} (m/s). */
    SpeedPoint point(double given) {
        double speed = exactly(given);
        Evaluation evaluation = at(speed);
        Verdict.Output output = evaluation.output();
        Verdict.Stoppages stoppages = evaluation.stoppages();
        return new SpeedPoint(
                speed,
                speed / now,
                evaluation.answer(target),
                evaluation.shareRunThrough(),
                output.speed(),
                output.massFlow(),
                output.goodShare(),
                output.utilisation(),
                stoppages.starvedPerShift(),
                stoppages.lostTimePerShift());
    }
}
