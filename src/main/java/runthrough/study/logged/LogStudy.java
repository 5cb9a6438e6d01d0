package runthrough.study.logged;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import runthrough.linelog.LineLog;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.simulation.records.Detail;
import runthrough.study.Evaluator;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.logged.LogComparison.JointShare;
import runthrough.study.statistics.Sample;

/** Runs the model as often as it takes to know what logs as long as the line's it gives, and compares. */
public final class LogStudy {
    /** Fewer simulated logs do not show the ends of an interval that 95 % lie in. */
    public static final int FEWEST_LOGS = 100;

    private static final int MOST_LOGS = 1000;
    /** Coil changes after which long logs need no more repetitions. */
    private static final int ENOUGH_CHANGES = 100_000;
    /** A longer log is compared with simulated ones of this length. */
    private static final int LONGEST = 20_000;

    private static final int POINTS = 80;
    private static final int TOGETHER = 20;

    private final SimulationRequest request;
    private final LineLog log;
    private final boolean loggedJointCycleTimes;
    private final int logs;

    /**
     * A study.
     *
     * @param request the model, whose line must have passed its check
     * @param log of the line, with a coil change at least
     * @param loggedJointCycleTimes whether the model is given the joint cycle times of the log in place of its own work, preparation
     *     included, so that what is tested is the rest of it
     * @param logs how many logs to simulate, {@code >= 100}
     */
    public LogStudy(SimulationRequest request, LineLog log, boolean loggedJointCycleTimes, int logs) {
        this.request = request;
        this.log = log;
        this.loggedJointCycleTimes = loggedJointCycleTimes;
        this.logs = logs;
        if (loggedJointCycleTimes && !request.line().practice().hasJoiner()) {
            throw new StudyException("a line without a joiner has no joint cycle times to take from a log; leave out"
                    + " --logged-joint-cycle-times");
        }
    }

    /** How many simulated logs {@code log} is usually held against. */
    public static int usualLogs(LineLog log) {
        return Math.max(FEWEST_LOGS, Math.min(MOST_LOGS, ENOUGH_CHANGES / length(log)));
    }

    private static int length(LineLog log) {
        return Math.min(LONGEST, log.changes().size());
    }

    /**
     * Runs it.
     *
     * @throws StudyException when a run of the model cannot go on
     */
    public LogComparison run(int threads, StudyListener listener) {
        Line line = loggedJointCycleTimes ? withLoggedJointCycleTimes(request.line()) : request.line();
        int count = line.isDeterministic() ? 1 : logs;
        // One more, whose tail ends the time of the last one that is judged.
        RunPlan plan = new RunPlan(
                new RunPlan.Extent.Changes(length(log) + 1),
                0,
                count,
                request.run().seed(),
                request.run().target());
        double[] grid = grid();
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        List<Seen> seen = new ArrayList<>();
        listener.progress(0, count);
        for (int from = 0; from < count; from += TOGETHER) {
            int[] indices =
                    IntStream.range(from, Math.min(count, from + TOGETHER)).toArray();
            seen.addAll(evaluator.observe(
                    line, plan, indices, Detail.TRACE, run -> Seen.of(SimulatedLog.of(run, log.saysWhy()), grid)));
            listener.progress(seen.size(), count);
        }
        return new LogComparison(request, log, loggedJointCycleTimes, count, figures(seen), jointShares(seen, grid));
    }

    private Line withLoggedJointCycleTimes(Line line) {
        Distribution times = Distribution.observed(
                DoubleStream.of(log.jointCycleTimes()).boxed().toList());
        WorkElement joint = new WorkElement(
                "logged joint", new WorkElement.WorkTime.Timed(times), new WorkElement.Occurrence.Always(), true);
        CoilChange change = line.change();
        return line.with(
                change.withWork(List.of(), List.of(), List.of(joint)).withReject(new CoilChange.Reject.Never()));
    }

    /** Joint cycle times (s) at which the shares of the line and of the model are given. */
    private double[] grid() {
        double[] times = log.jointCycleTimes();
        double most = Arrays.stream(times).max().orElse(1);
        double least = Arrays.stream(times).min().orElse(0);
        double from = Math.max(0, least - 0.1 * (most - least));
        double to = most > least ? most + 0.1 * (most - least) : most + 1;
        return IntStream.rangeClosed(0, POINTS)
                .mapToDouble(i -> from + (to - from) * i / POINTS)
                .toArray();
    }

    private List<FigureComparison> figures(List<Seen> seen) {
        return Arrays.stream(LogFigure.values())
                .map(figure -> FigureComparison.of(
                        figure,
                        figure.of(log),
                        seen.stream().mapToDouble(one -> one.figure(figure)).toArray()))
                .toList();
    }

    private List<JointShare> jointShares(List<Seen> seen, double[] grid) {
        Sample logged = Sample.of(log.jointCycleTimes());
        return IntStream.range(0, grid.length)
                .mapToObj(i -> {
                    Sample shares = Sample.of(
                            seen.stream().mapToDouble(one -> one.shares[i]).toArray());
                    double mean = Arrays.stream(shares.values()).average().orElseThrow();
                    return new JointShare(
                            grid[i],
                            logged.shareBelow(Math.nextUp(grid[i])),
                            mean,
                            shares.percentile(0.025),
                            shares.percentile(0.975));
                })
                .toList();
    }

    /** What is kept of a simulated log. */
    @SuppressWarnings("ArrayRecordComponent") // private, and nobody changes it
    private record Seen(Map<LogFigure, Double> figures, double[] shares) {
        static Seen of(LineLog log, double[] grid) {
            Sample times = Sample.of(log.jointCycleTimes());
            return new Seen(
                    Arrays.stream(LogFigure.values())
                            .collect(Collectors.toMap(Function.identity(), figure -> figure.of(log))),
                    DoubleStream.of(grid)
                            .map(time -> times.shareBelow(Math.nextUp(time)))
                            .toArray());
        }

        double figure(LogFigure figure) {
            return Objects.requireNonNull(figures.get(figure));
        }
    }
}
