package runthrough.study.speed;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.study.Evaluator;
import runthrough.study.Goal;
import runthrough.study.ProgressCounter;
import runthrough.study.Share;
import runthrough.study.StudyListener;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.LineLevers;
import runthrough.study.lever.Varied;
import runthrough.study.search.Crossing;
import runthrough.study.speed.SpeedCurve.NotPossible;

/** Runs a line slower and faster than it is, and shows what comes out. */
public final class SpeedStudy {
    /** Speeds closer than this, relatively, are not distinguished where nothing is random. */
    private static final double EXACT = 1e-4;

    /** The same where something is. */
    private static final double FINE = 2e-3;

    /** About so many speeds are tried beside those of the range. */
    private static final int EXPECTED_MORE = 25;

    private final SimulationRequest request;
    private final double target;
    /** That was asked for. */
    private final SpeedRange asked;
    /** As far as the line is feasible. */
    private final SpeedRange range;

    /**
     * A study of {@code request}, whose line must have passed its check.
     *
     * @param target share of coil changes that should run through, in (0, 1]
     * @throws runthrough.study.StudyException when that is not so, or the line cannot be run at an end of the range
     */
    public SpeedStudy(SimulationRequest request, double target, SpeedRange range) {
        this.request = request;
        this.target = Share.target(target);
        range.check(request.line());
        this.asked = range;
        this.range = range.within(request.line(), request.resultsIn());
    }

    /**
     * Runs it.
     *
     * @param threads how many replications run at once, {@code >= 1}; does not change the answer
     * @throws runthrough.study.StudyException when a replication of the line as it is cannot go on, or none at any speed
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public SpeedCurve run(int threads, StudyListener listener) {
        Line line = request.line();
        ProgressCounter steps = new ProgressCounter(listener, range.points() + EXPECTED_MORE);
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        double now = line.fastestRatedSpeed();
        Speeds speeds = new Speeds(now, target, speed -> {
            steps.next();
            return evaluator.evaluate(line.withRatedSpeedsTimes(speed / now), request.run());
        });
        SpeedPoint present = speeds.point(now);
        range.speeds(now).forEach(speeds::attempt);
        double precision = line.isDeterministic() ? EXACT : FINE;
        SpeedCurve.Peak peak = new PeakSearch(speeds, range, precision).peak();
        Optional<Crossing> lost = line.practice().isOneStrip()
                ? Optional.empty()
                : Optional.of(targetLost(new LeverRun(request, evaluator, steps)));
        SpeedCurve curve = new SpeedCurve(
                request,
                target,
                line.coils().stream().anyMatch(coil -> coil.processSpeed().isPresent()),
                range.from(),
                range.to(),
                notPossible(speeds),
                speeds.points(range),
                present,
                peak,
                speeds.at(now).changes(),
                speeds.at(now).resolution(target),
                lost);
        steps.finish();
        return curve;
    }

    private List<NotPossible> notPossible(Speeds speeds) {
        Stream<NotPossible> beyond = asked.to() == range.to()
                ? Stream.empty()
                : SpeedRange.notFeasible(request.line(), asked.to(), request.resultsIn()).stream()
                        .map(message -> new NotPossible(asked.to(), message.text()));
        return Stream.concat(speeds.notPossible().stream(), beyond).toList();
    }

    /** As all others find it who ask for the fastest speed; what lies beyond the range that was asked for is not said. */
    private Crossing targetLost(LeverRun run) {
        Varied speed = new LineLevers(request.line(), request.resultsIn()).processSpeed();
        return run.along(speed).find(Goal.runThrough(target), speed.present()).within(range.from(), range.to());
    }
}
