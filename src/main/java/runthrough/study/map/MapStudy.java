package runthrough.study.map;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.Goal;
import runthrough.study.OrderedRuns;
import runthrough.study.ProgressCounter;
import runthrough.study.Share;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.lever.LeverRun;
import runthrough.study.statistics.Estimate;

/** Runs a line with many pairs of two numbers, and shows where it meets the target. */
public final class MapStudy {
    /** Until points have shown it, about so large a part of all will be run. */
    private static final double EXPECTED_PART = 0.4;

    /** The first of so many parts of the replications may tell already. */
    private static final int PARTS = 5;

    /** Fewer replications tell too little of how they differ. */
    private static final int FEWEST = 8;

    private final SimulationRequest request;
    private final SimulationRequest ofLimits;
    private final double target;
    private final MapPlan plan;
    private final MapVariants variants;

    /**
     * A study of {@code request}, whose line must have passed its check.
     *
     * @param target share of coil changes that should run through, in (0, 1)
     * @param variants from the numbers on the two axes to the line that has them
     * @throws StudyException when the target is no such share
     */
    public MapStudy(SimulationRequest request, double target, MapPlan plan, MapVariants variants) {
        this(request, request, target, plan, variants);
    }

    private MapStudy(
            SimulationRequest request, SimulationRequest ofLimits, double target, MapPlan plan, MapVariants variants) {
        this.request = request;
        this.ofLimits = ofLimits;
        this.target = Share.targetBelowAll(target);
        this.plan = plan;
        this.variants = variants;
    }

    /** How a map that is being made stands. */
    private final class Work {
        private final Grid grid = new Grid(plan, target);
        private final OrderedRuns runs;
        private final StudyListener listener;
        private final MapStore store;
        private int done;

        Work(int threads, StudyListener listener, MapStore store) {
            this.runs = new OrderedRuns(threads);
            this.listener = listener;
            this.store = store;
        }

        void run() {
            listener.progress(0, expected(grid.due().size()));
            for (List<Grid.Node> due = grid.due(); !due.isEmpty(); due = grid.due()) {
                runs.run(due.size(), worker(due), this::take, listener::cancelled);
            }
            listener.progress(done, done);
        }

        private IntFunction<Found> worker(List<Grid.Node> due) {
            return index -> found(due.get(index));
        }

        private Found found(Grid.Node node) {
            return store.known(node.column(), node.row())
                    .map(point -> new Found(point, true))
                    .orElseGet(() -> new Found(point(node), false));
        }

        private void take(Found found) {
            if (!found.known()) {
                store.add(found.point());
            }
            grid.add(found.point());
            done++;
            listener.progress(done, Math.max(expected(grid.waiting()), done + 1));
        }

        private int expected(int waiting) {
            int sure = done + waiting;
            return plan.stride() == 1 ? sure : Math.max(sure, (int) (EXPECTED_PART * plan.points()));
        }
    }

    private record Found(MapPoint point, boolean known) {}

    /**
     * Runs it.
     *
     * @param threads how many points are run at once, {@code >= 1}; does not change the answer
     * @param store of points that are known, and of those that are done
     * @throws StudyException when the line as it is cannot go on, or there is no line at any point
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public ShareMap run(int threads, StudyListener listener, MapStore store) {
        Work work = new Work(threads, listener, store);
        work.run();
        refuseWithoutLines(work.grid.points());
        MapPoint present = measured(0, 0, request.line(), ofLimits.run(), true);
        if (present.measured().isEmpty()) {
            throw new StudyException(present.refusal());
        }
        ShareMap map = new ShareMap(
                request,
                target,
                plan,
                present.measured().get(),
                work.grid.points(),
                work.grid.shares(),
                work.grid.closedForm(),
                Optional.empty(),
                Optional.empty());
        boolean hasLevers = map.own().isPresent() && !request.line().practice().isOneStrip();
        return hasLevers ? withLimits(map, threads, listener) : map;
    }

    private static void refuseWithoutLines(List<MapPoint> points) {
        if (points.stream().allMatch(point -> point.measured().isEmpty())) {
            throw new StudyException("the map; no line can be so at any of the " + points.size()
                    + " points that were tried. At the first of them: "
                    + points.get(0).refusal()
                    + ". Choose other ranges.");
        }
    }

    /** The same study whose line as it is and limits along the axes are seen in {@code other}, of the same line with more replications. */
    public MapStudy withLimitsOf(SimulationRequest other) {
        return new MapStudy(request, other, target, plan, variants);
    }

    /** What takes a few runs beside those of the points. */
    private ShareMap withLimits(ShareMap map, int threads, StudyListener listener) {
        Goal goal = Goal.runThrough(target);
        ProgressCounter steps = new ProgressCounter(StudyListener.NONE, 1);
        LeverRun run = new LeverRun(ofLimits, new Evaluator(threads, listener::cancelled), steps);
        run.present();
        return map.with(
                AxisLimit.of(plan.x(), plan.ownX().orElseThrow(), ofLimits, goal, run),
                AxisLimit.of(plan.y(), plan.ownY().orElseThrow(), ofLimits, goal, run));
    }

    private MapPoint point(Grid.Node node) {
        MapVariants.Variant variant =
                variants.at(plan.x().value(node.column()), plan.y().value(node.row()));
        return variant instanceof MapVariants.Variant.Refused refused
                ? new MapPoint(node.column(), node.row(), Optional.empty(), refused.why())
                : measured(
                        node.column(),
                        node.row(),
                        ((MapVariants.Variant.Possible) variant).line(),
                        request.run(),
                        plan.stride() == 1);
    }

    /** A part of the replications is enough where the share is plainly far from the target, whatever the others give. */
    private Evaluation evaluation(Line line, RunPlan run, boolean inFull) {
        Evaluator evaluator = Evaluator.onCallersThread().findingCauses();
        int part = Math.max(FEWEST, run.replications() / PARTS);
        if (inFull || line.isDeterministic() || part >= run.replications()) {
            return evaluator.evaluate(line, run);
        }
        Evaluation first = evaluator.evaluate(line, run.withReplications(part));
        return isFar(first.shareRunThrough()) ? first : evaluator.evaluate(line, run, first::replication);
    }

    /** Whether the target lies more than a whole interval's width away from the share. */
    private boolean isFar(Estimate share) {
        return share.interval()
                .filter(ends -> {
                    double width = ends.high() - ends.low();
                    return ends.low() - width / 2 > target || ends.high() + width / 2 < target;
                })
                .isPresent();
    }

    /** What {@code line} gives; a line that cannot go on, such as with a coil shorter than its crops, is none that can be. */
    private MapPoint measured(int column, int row, Line line, RunPlan run, boolean inFull) {
        try {
            Evaluation evaluation = evaluation(line, run, inFull);
            return new MapPoint(
                    column,
                    row,
                    Optional.of(new MapPoint.Measured(
                            evaluation.changes(),
                            evaluation.shareRunThrough(),
                            evaluation.causes(),
                            ClosedFormPoint.of(line))),
                    "");
        } catch (StudyException e) {
            return new MapPoint(column, row, Optional.empty(), String.valueOf(e.getMessage()));
        }
    }
}
