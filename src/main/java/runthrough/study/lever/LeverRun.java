package runthrough.study.lever;

import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.check.LineCheck;
import runthrough.quantity.UnitSystem;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.Goal;
import runthrough.study.ProgressCounter;

/** Tries variants of a line with the replications of its plan; a line in which nothing is random in the long run. Rule LEVER-2. */
public final class LeverRun {
    /**
     * Where nothing is random a lack that grows from coil change to coil change ends in a stop for certain. A lack
     * that takes longer than this to use up the accumulator is a few ten-thousandths of what a joint takes.
     */
    private static final int LONG_RUN = 10_000;

    /** A plan of fewer replications is short as it is. */
    private static final int MANY = 16;

    /** The part of the replications that shows about where the answer is. */
    private static final int PART = 8;

    /** With an accumulator that is full again after so many coil changes the level does not drift. */
    private static final double USUAL = 0.5;

    private final Line line;
    private final RunPlan asked;
    private final RunPlan plan;
    private final Evaluator evaluator;
    private final ProgressCounter steps;
    private final boolean isFeasible;
    /** What the line as it is gives, once that is known: searches come by it again and again. */
    private @Nullable Evaluation present;

    private @Nullable Evaluation underAsked;

    /** A run of variants of the line of {@code request}, each of which {@code steps} counts. */
    public LeverRun(SimulationRequest request, Evaluator evaluator, ProgressCounter steps) {
        this.line = request.line();
        this.asked = request.run();
        this.plan = line.isDeterministic() ? longRun(request.run()) : request.run();
        this.evaluator = evaluator;
        this.steps = steps;
        this.isFeasible = isFeasible(line);
    }

    private static RunPlan longRun(RunPlan plan) {
        int asked = plan.extent() instanceof RunPlan.Extent.Changes changes ? changes.changes() : 0;
        return plan.withExtent(new RunPlan.Extent.Changes(Math.max(asked, plan.leaveOut() + LONG_RUN)));
    }

    /** The line as it is. */
    public Evaluation present() {
        Evaluation known = present;
        if (known == null) {
            known = evaluator.evaluate(line, plan);
            present = known;
        }
        return known;
    }

    /** What a process speed of {@code value}, tried by {@code search}, costs. Empty for what costs nothing by itself. */
    public Optional<LeverAnswer.Cost> cost(Varied varied, double value, LeverSearch search) {
        return line.isDeterministic() ? cost(varied, value) : cost(varied, () -> search.attempt(value));
    }

    /** The same of a variant of another line, beside the line as it is. */
    public Optional<LeverAnswer.Cost> cost(Varied varied, double value) {
        return cost(varied, () -> attempt(varied.variant().apply(value), asked));
    }

    /** What {@code variant}, in which the process is slower and which gave {@code seen}, lets come out. */
    LeverAnswer.Cost output(Line variant, Evaluation seen) {
        Evaluation with = line.isDeterministic() ? attempt(variant, asked).orElseThrow() : seen;
        return new LeverAnswer.Cost(with.output().speed(), underAsked().output().speed());
    }

    /** The same as if the line as it is were meant. */
    LeverAnswer.Cost outputNow() {
        return new LeverAnswer.Cost(
                underAsked().output().speed(), underAsked().output().speed());
    }

    private Optional<LeverAnswer.Cost> cost(Varied varied, Supplier<Optional<Evaluation>> slower) {
        return varied.lever().what() == Lever.What.PROCESS_SPEED
                ? slower.get()
                        .map(with -> new LeverAnswer.Cost(
                                with.output().speed(), underAsked().output().speed()))
                : Optional.empty();
    }

    /** What the line as it is gives under its own plan: in the long run of a line without randomness output is not quite that. */
    private Evaluation underAsked() {
        Evaluation known = underAsked;
        if (known == null) {
            known = line.isDeterministic() ? evaluator.evaluate(line, asked) : present();
            underAsked = known;
        }
        return known;
    }

    /** A search along {@code varied}. */
    public LeverSearch along(Along varied) {
        return new LeverSearch(varied, this::attempt, quick(), this::lasts);
    }

    /**
     * Whether {@code variant}, which meets {@code goal} in the run as planned and gave {@code seen} in it, goes on meeting it once the
     * accumulator that was full when the run began is used up. Rule LEVER-13.
     */
    public boolean lasts(Goal goal, Line variant, Evaluation seen) {
        boolean isUsuallyFull = seen.refilled() >= USUAL * seen.changes();
        return isUsuallyFull
                || (!line.isDeterministic()
                        && LongRun.of(variant, goal, asked, evaluator).meets(goal));
    }

    /** What {@code variant} gives; empty where it is refused or cannot go on. */
    public Optional<Evaluation> attempt(Line variant) {
        steps.next();
        return attempt(variant, plan);
    }

    /** The same with the causes of the coil changes that did not run through. */
    public Optional<Evaluation> attemptWithCauses(Line variant) {
        return isOutOfReach(variant)
                ? Optional.empty()
                : evaluator.findingCauses().attempt(variant, plan);
    }

    private Optional<Evaluation> attempt(Line variant, RunPlan under) {
        Evaluation known = present;
        if (known != null && variant.equals(line)) {
            return Optional.of(known.first(under.replications()));
        }
        return isOutOfReach(variant) ? Optional.empty() : evaluator.attempt(variant, under);
    }

    private boolean isOutOfReach(Line variant) {
        return isFeasible && !isFeasible(variant);
    }

    /** What the carriage cannot follow is no limit to go to, unless the line as it is goes beyond it already. */
    public static boolean isFeasible(Line line) {
        return LineCheck.notFeasible(line, UnitSystem.METRIC).isEmpty();
    }

    private Optional<LineTrials> quick() {
        if (line.isDeterministic() || plan.replications() < MANY) {
            return Optional.empty();
        }
        RunPlan part = plan.withReplications(plan.replications() / PART);
        return Optional.of(variant -> attempt(variant, part));
    }
}
