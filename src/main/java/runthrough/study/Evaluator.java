package runthrough.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.check.CheckedLine;
import runthrough.plant.check.LineRefusedException;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.SimulationException;
import runthrough.study.Evaluation.Tally;
import runthrough.study.cause.CauseFinder;
import runthrough.study.cause.NamedCauses;

/**
 * Tries variants of a line, of which no more is kept than what each replication adds up to. All variants that are run under
 * one plan see the same random numbers. A line in which nothing is random is run once, for every replication would be the same.
 */
public final class Evaluator {
    private final OrderedRuns runs;
    private final BooleanSupplier cancelled;
    private final boolean findsCauses;
    /** A search asks for the same line again and again; a line of many coils takes a while to check. */
    private volatile @Nullable CheckedLine latest;

    /**
     * An evaluator.
     *
     * @param threads how many replications run at once, 0 for the thread that asks; does not change what comes out
     * @param cancelled asked between replications and while they run: true gives up with a {@link java.util.concurrent.CancellationException}
     */
    public Evaluator(int threads, BooleanSupplier cancelled) {
        this(new OrderedRuns(threads), cancelled, false);
    }

    private Evaluator(OrderedRuns runs, BooleanSupplier cancelled, boolean findsCauses) {
        this.runs = runs;
        this.cancelled = cancelled;
        this.findsCauses = findsCauses;
    }

    /** An evaluator for callers that have threads of their own: it runs on the thread that asks, until that is interrupted. */
    public static Evaluator onCallersThread() {
        return new Evaluator(OrderedRuns.onCallersThread(), () -> false, false);
    }

    /**
     * The same evaluator, whose evaluations also say what the coil changes that did not run through are attributed to. A search asks
     * for many evaluations and for the causes of few; to find them takes a record of each coil change.
     */
    public Evaluator findingCauses() {
        return new Evaluator(runs, cancelled, true);
    }

    /**
     * Runs {@code line} under {@code plan}.
     *
     * @throws StudyException when the line is refused, a replication cannot go on, or none completed a coil change
     */
    public Evaluation evaluate(Line line, RunPlan plan) {
        return evaluate(line, plan, index -> Optional.empty());
    }

    /**
     * Runs {@code line} under {@code plan}, but for the replications that are known.
     *
     * @param known from the index of a replication to what it gives, where that is known
     * @throws StudyException when the line is refused, a replication cannot go on, or none completed a coil change
     */
    public Evaluation evaluate(Line line, RunPlan plan, IntFunction<Optional<Tally>> known) {
        int wanted = replications(line, plan);
        List<Optional<Tally>> all =
                IntStream.range(0, wanted).mapToObj(known).collect(Collectors.toCollection(ArrayList::new));
        int[] lacking = IntStream.range(0, wanted)
                .filter(index -> all.get(index).isEmpty())
                .toArray();
        List<Tally> run = tallies(line, plan, lacking);
        for (int i = 0; i < lacking.length; i++) {
            all.set(lacking[i], Optional.of(run.get(i)));
        }
        Evaluation evaluation = new Evaluation(
                !line.isDeterministic(),
                UnseenStops.of(line),
                all.stream().map(Optional::orElseThrow).toList());
        if (evaluation.changes() == 0) {
            throw new StudyException("no coil change was completed in any of " + wanted
                    + " replications; give a longer run, or fewer coil changes to leave out");
        }
        return evaluation;
    }

    private List<Tally> tallies(Line line, RunPlan plan, int[] indices) {
        if (!findsCauses) {
            return observe(line, plan, indices, Detail.TOTALS, Tally::of);
        }
        LineSimulator simulator = new LineSimulator(checked(line), plan);
        CauseFinder finder = new CauseFinder(line);
        List<Tally> tallies = new ArrayList<>();
        inOrder(indices.length, i -> withCauses(simulator, indices[i], finder), tallies::add);
        return tallies;
    }

    private static Tally withCauses(LineSimulator simulator, int index, CauseFinder finder) {
        NamedCauses causes = new NamedCauses();
        ChangeEye eye = change -> causes.add(finder, change);
        Replication replication = run(index, which -> simulator.run(which, Detail.TOTALS, eye));
        return new Tally(replication.totals(), Optional.of(causes.list()));
    }

    /** The same; empty where the line does not pass its check, or where a replication of it cannot go on. */
    public Optional<Evaluation> attempt(Line line, RunPlan plan) {
        try {
            return Optional.of(evaluate(line, plan));
        } catch (StudyException e) {
            return Optional.empty();
        }
    }

    /**
     * {@code line}, checked.
     *
     * @throws StudyException when something of it is refused
     */
    @SuppressWarnings("ReferenceEquality") // the very line that was checked last; to compare its parts would cost more
    public CheckedLine checked(Line line) {
        CheckedLine known = latest;
        if (known != null && known.line() == line) {
            return known;
        }
        try {
            CheckedLine checked = CheckedLine.of(line, UnitSystem.METRIC);
            latest = checked;
            return checked;
        } catch (LineRefusedException e) {
            throw new StudyException(String.valueOf(e.getMessage()), e);
        }
    }

    /** How many replications of {@code line} say all that the plan asks for. */
    public static int replications(Line line, RunPlan plan) {
        return line.isDeterministic() ? 1 : plan.replications();
    }

    /**
     * Runs some replications and keeps of each what {@code eye} sees in it.
     *
     * @param indices of the replications, from 0; what is seen comes in their order
     * @param eye called on several threads
     * @throws StudyException when a replication cannot go on
     */
    public <T> List<T> observe(Line line, RunPlan plan, int[] indices, Function<Replication, T> eye) {
        return observe(line, plan, indices, Detail.CHANGES, eye);
    }

    /** The same, with replications that hold {@code detail}. */
    public <T> List<T> observe(Line line, RunPlan plan, int[] indices, Detail detail, Function<Replication, T> eye) {
        LineSimulator simulator = new LineSimulator(checked(line), plan);
        List<T> seen = new ArrayList<>();
        inOrder(indices.length, i -> eye.apply(run(indices[i], index -> simulator.run(index, detail))), seen::add);
        return seen;
    }

    /**
     * Does numbered pieces of work that may hold several runs each.
     *
     * @param count of the pieces, which are numbered from 0
     * @param piece called on several threads
     * @param taker gets what the pieces give in order of their number, on this thread
     */
    public <T> void inOrder(int count, IntFunction<T> piece, Consumer<T> taker) {
        runs.run(count, piece, taker, cancelled);
    }

    /**
     * Runs replication {@code index}, from 0, by {@code run}.
     *
     * @throws StudyException that names it when it cannot go on
     */
    public static Replication run(int index, IntFunction<Replication> run) {
        try {
            return run.apply(index);
        } catch (SimulationException e) {
            throw new StudyException("replication " + (index + 1) + ": " + e.getMessage(), e);
        }
    }
}
