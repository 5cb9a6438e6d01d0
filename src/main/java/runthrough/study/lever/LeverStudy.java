package runthrough.study.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.records.WorkRecord.WorkList;
import runthrough.study.Evaluation;
import runthrough.study.Evaluator;
import runthrough.study.Goal;
import runthrough.study.ProgressCounter;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;
import runthrough.study.cause.Reason;
import runthrough.study.search.Crossing;

/**
 * What would meet the targets of a line: the smallest change of each lever, all else as it is.
 *
 * <p>Rules LEVER-1, LEVER-2, LEVER-9, LEVER-10, LEVER-11.
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
        if (request.line().practice().isOneStrip()) {
            return new Levers(request, List.of());
        }
        List<Supplier<Varied>> levers = levers();
        ProgressCounter steps = new ProgressCounter(listener, EXPECTED_TRIALS * levers.size());
        LeverRun run = new LeverRun(request, new Evaluator(threads, listener::cancelled), steps);
        Evaluation present = run.present();
        List<LeverAnswer> answers = new ArrayList<>();
        for (Supplier<Varied> lever : levers) {
            Varied varied = lever.get();
            LeverSearch search = run.along(varied);
            goals.forEach(goal -> answers.add(answer(varied, goal, present, search)));
        }
        steps.finish();
        return new Levers(
                request,
                goals.stream()
                        .flatMap(goal ->
                                answers.stream().filter(answer -> answer.goal().equals(goal)))
                        .toList());
    }

    private List<Supplier<Varied>> levers() {
        LineLevers of = new LineLevers(request.line(), request.resultsIn());
        Stream<Supplier<Varied>> general = Stream.of(
                of::capacity,
                of::jointCycleTime,
                of::processSpeed,
                of::rejects,
                of::crew,
                of::uncoilers,
                of::entryTopSpeed);
        return Stream.concat(general, elements(request.line()).map(element -> () -> of.element(element)))
                .toList();
    }

    private static Stream<Reason.Element> elements(Line line) {
        return Stream.of(
                        elements(line, WorkList.PREPARE, line.change().prepare()),
                        elements(line, WorkList.TAIL, line.change().tail()),
                        elements(line, WorkList.JOIN, line.change().join()))
                .flatMap(list -> list);
    }

    private static Stream<Reason.Element> elements(Line line, WorkList list, List<WorkElement> elements) {
        List<String> names = SourceNames.elements(line.practice(), list, elements);
        return IntStream.range(0, names.size()).mapToObj(place -> new Reason.Element(list, place, names.get(place)));
    }

    private LeverAnswer answer(Varied varied, Goal goal, Evaluation present, LeverSearch search) {
        if (isNothing(varied)) {
            return answer(varied, goal, LeverAnswer.Status.DOES_NOT_APPLY, Optional.empty());
        }
        if (present.answer(goal) == TargetStatus.MEETS) {
            return answer(varied, goal, LeverAnswer.Status.NONE_NEEDED, Optional.empty());
        }
        Crossing crossing = search.find(goal, varied.present());
        if (crossing.answer().isEmpty()) {
            return answer(varied, goal, LeverAnswer.Status.NONE_IS_ENOUGH, Optional.of(crossing));
        }
        boolean isAsItIs = !crossing.canBeShown() && present.chance() && goal.isSeenMet(present);
        return answer(
                varied,
                goal,
                isAsItIs ? LeverAnswer.Status.NONE_NEEDED : LeverAnswer.Status.ENOUGH,
                Optional.of(crossing));
    }

    /** Whether the line has nothing that could be varied there to its relief. */
    private static boolean isNothing(Varied varied) {
        return varied.present() == varied.easiest()
                || (varied.lever().what() == Lever.What.REJECTS
                        && varied.line().change().reject() instanceof Reject.Never);
    }

    private static LeverAnswer answer(
            Varied varied, Goal goal, LeverAnswer.Status status, Optional<Crossing> crossing) {
        boolean isStrands = varied.lever().what() == Lever.What.CAPACITY
                && varied.line().accumulator().form() instanceof StorageForm.Strands;
        return new LeverAnswer(
                varied.lever(),
                goal,
                status,
                varied.present(),
                isStrands ? OptionalDouble.of(varied.scale().step()) : OptionalDouble.empty(),
                crossing);
    }
}
