package runthrough.study.lever;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Money;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.Goal;
import runthrough.study.ProgressCounter;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;
import runthrough.study.search.Crossing;

/**
 * What would meet the targets of a line: the smallest change of each lever, all else as it is.
 *
 * <p>Rule LEVER-10.
 */
public final class LeverStudy {
    /** About so many variants are tried for one lever. */
    private static final int EXPECTED_TRIALS = 8;

    private final SimulationRequest request;
    private final List<Goal> goals;

    /** A study of {@code request}, whose line must have passed its check, for the targets of its plan. */
    public LeverStudy(SimulationRequest request) {
        this(request, goals(request));
    }

    /** The same for other targets. */
    public LeverStudy(SimulationRequest request, List<Goal> goals) {
        this.request = request;
        this.goals = List.copyOf(goals);
    }

    /** The targets of the plan of {@code request}. */
    private static List<Goal> goals(SimulationRequest request) {
        List<Goal> goals = new ArrayList<>(List.of(Goal.runThrough(request.run().target())));
        request.run().targetWithoutStop().ifPresent(target -> goals.add(Goal.withoutStop(target)));
        return goals;
    }

    /**
     * Runs it.
     *
     * @param threads how many replications run at once, {@code >= 1}; does not change the answer
     * @throws runthrough.study.StudyException when a replication of the line as it is cannot go on
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public Levers run(int threads, StudyListener listener) {
        return run(threads, listener, (found, maker) -> List.of(), Optional.empty());
    }

    /**
     * Runs it, and finds pairs of levers too; all ways to meet the targets are ranked.
     *
     * @param money what they cost; empty where nobody says
     */
    public Levers ranked(Optional<Money> money, int threads, StudyListener listener) {
        return run(threads, listener, this::ways, money);
    }

    /** What makes ways of the levers that were tried. */
    private interface Ranking {
        List<Way> ways(Found found, WayMaker maker);
    }

    /** What was found lever by lever, and the run that found it. */
    private record Found(List<Tried> tried, LeverRun run) {}

    /** A lever that was tried. */
    private record Tried(Varied varied, LeverAnswer answer, LeverSearch search) {
        /** What its answer, which is enough, gave. */
        Evaluation seen() {
            return search.attempt(answer.value().orElseThrow()).orElseThrow();
        }
    }

    private Levers run(int threads, StudyListener listener, Ranking ranking, Optional<Money> money) {
        if (request.line().practice().isOneStrip()) {
            return new Levers(request, List.of(), List.of());
        }
        List<Supplier<Varied>> levers = LeverList.of(request.line(), request.resultsIn());
        ProgressCounter steps = new ProgressCounter(listener, EXPECTED_TRIALS * levers.size());
        LeverRun run = new LeverRun(request, new Evaluator(threads, listener::cancelled), steps);
        Evaluation present = run.present();
        List<Tried> tried = new ArrayList<>();
        for (Supplier<Varied> lever : levers) {
            Varied varied = lever.get();
            LeverSearch search = run.along(varied);
            goals.forEach(goal -> tried.add(new Tried(varied, answer(varied, goal, present, search, run), search)));
        }
        // Ranked by lost output and wages alone, what the file knows no price of would come last, however cheap.
        Optional<Money> priced =
                money.filter(values -> !values.prices().levers().isEmpty());
        WayMaker maker = new WayMaker(priced.map(values -> new WayCosts(values, request)), run);
        List<Way> ways = ranking.ways(new Found(tried, run), maker);
        steps.finish();
        return new Levers(
                request,
                goals.stream()
                        .flatMap(goal -> of(goal, tried).map(Tried::answer))
                        .toList(),
                ways);
    }

    private static Stream<Tried> of(Goal goal, List<Tried> tried) {
        return tried.stream().filter(one -> one.answer().goal().equals(goal));
    }

    /** Target by target, each on its own. */
    private List<Way> ways(Found found, WayMaker maker) {
        List<Way> all = new ArrayList<>();
        for (Goal goal : goals) {
            Stream<Way> alone = of(goal, found.tried())
                    .filter(one -> one.answer().status() == LeverAnswer.Status.ENOUGH)
                    .map(one -> maker.alone(one.varied(), one.answer(), one.seen()));
            List<PairHalf> halves = of(goal, found.tried())
                    .flatMap(one -> PairHalf.of(one.varied(), one.answer()).stream())
                    .toList();
            Stream<Way> pairs = new PairSearch(goal, found.run(), request.resultsIn(), maker).among(halves).stream();
            Stream.concat(alone, pairs).sorted(Comparator.comparing(Way::rank)).forEach(all::add);
        }
        return all;
    }

    private LeverAnswer answer(Varied varied, Goal goal, Evaluation present, LeverSearch search, LeverRun run) {
        if (varied.isNothing()) {
            return LeverAnswer.of(varied, goal, LeverAnswer.Status.DOES_NOT_APPLY, Optional.empty(), Optional.empty());
        }
        if (present.answer(goal) == TargetStatus.MEETS) {
            return LeverAnswer.of(varied, goal, LeverAnswer.Status.NONE_NEEDED, Optional.empty(), Optional.empty());
        }
        Crossing crossing = search.find(goal, varied.present());
        if (crossing.answer().isEmpty()) {
            return LeverAnswer.of(
                    varied, goal, LeverAnswer.Status.NONE_IS_ENOUGH, Optional.of(crossing), Optional.empty());
        }
        boolean isAsItIs = !crossing.canBeShown() && present.chance() && goal.isSeenMet(present);
        return LeverAnswer.of(
                varied,
                goal,
                isAsItIs ? LeverAnswer.Status.NONE_NEEDED : LeverAnswer.Status.ENOUGH,
                Optional.of(crossing),
                isAsItIs ? Optional.empty() : run.cost(varied, crossing.answer().getAsDouble(), search));
    }
}
