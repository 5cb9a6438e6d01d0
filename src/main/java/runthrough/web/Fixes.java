package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.report.Texts;
import runthrough.report.lever.LeverWords;
import runthrough.study.Goal;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.lever.LeverStudy;
import runthrough.study.lever.Levers;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LimitsStudy;
import runthrough.study.limits.LineLimit;

/**
 * What would let a line meet its target, each on its own; or, where it meets it, how far each number could go. The numbers are
 * those of every other command.
 *
 * @param words what the list is about
 */
record Fixes(String words, List<Fix> fixes) {
    Fixes {
        fixes = List.copyOf(fixes);
    }

    /** One of them, with the changes that make it. */
    record Fix(String words, List<PageRequest.Part> changes) {
        Fix {
            changes = List.copyOf(changes);
        }
    }

    static Fixes of(SimulationRequest request, int threads, StudyListener listener) {
        if (request.line().practice().isOneStrip()) {
            return new Fixes(
                    "Entry and process are one strip, so every coil change stops the process. Only a joiner with an accumulator"
                            + " between it and the process lets the line run through.",
                    List.of());
        }
        Levers levers = new LeverStudy(request).run(threads, listener);
        List<Goal> missed = missed(levers);
        if (missed.isEmpty()) {
            return new Fixes(
                    "The line meets its target of " + Texts.target(request.run().target())
                            + ". It still would, each change on its own:",
                    fixes(limits(request, threads, listener), answer -> "", request));
        }
        List<Fix> fixes = fixes(
                levers.enough().stream()
                        .filter(answer -> missed.contains(answer.goal()))
                        .toList(),
                answer -> missed.size() > 1 && isWithoutStop(answer.goal()) ? ", for " + asked(answer.goal()) : "",
                request);
        String asked = missed.stream().map(Fixes::asked).collect(Collectors.joining(" or of "));
        return new Fixes(
                fixes.isEmpty()
                        ? "Nothing that was tried on its own meets the target of " + asked + "."
                        : "Each of these on its own meets the target of " + asked + ":",
                fixes);
    }

    private static List<Goal> missed(Levers levers) {
        List<Goal> met = levers.answers().stream()
                .filter(one -> one.status() == LeverAnswer.Status.NONE_NEEDED)
                .map(LeverAnswer::goal)
                .toList();
        return levers.answers().stream()
                .map(LeverAnswer::goal)
                .distinct()
                .filter(goal -> !met.contains(goal))
                .toList();
    }

    private static String asked(Goal goal) {
        return Texts.target(goal.target()) + (isWithoutStop(goal) ? " without a stop" : "");
    }

    private static boolean isWithoutStop(Goal goal) {
        return goal.what() == Goal.What.WITHOUT_STOP;
    }

    private static List<Fix> fixes(
            List<LeverAnswer> answers, Function<LeverAnswer, String> rest, SimulationRequest request) {
        LeverWords words = new LeverWords(request.resultsIn());
        return answers.stream()
                .map(answer ->
                        new Fix(capitalised(words.sentence(answer)) + rest.apply(answer), FixParts.of(answer, request)))
                .toList();
    }

    private static String capitalised(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** How far each number could go. */
    private static List<LeverAnswer> limits(SimulationRequest request, int threads, StudyListener listener) {
        Limits limits = new LimitsStudy(request, request.run().target()).run(threads, listener);
        boolean meets = limits.present()
                .filter(one -> one.answer(limits.target()) == TargetStatus.MEETS)
                .isPresent();
        List<LeverAnswer> answers = new ArrayList<>();
        for (LineLimit limit : limits.limits()) {
            if (meets && limit.isCrossed() && !limit.isAsItIs() && limit.what() != Lever.What.COIL_LENGTH) {
                answers.add(limit.asLever(Goal.runThrough(limits.target()), strand(request, limit)));
            }
        }
        return answers;
    }

    private static OptionalDouble strand(SimulationRequest request, LineLimit limit) {
        return limit.what() == Lever.What.CAPACITY
                        && request.line().accumulator().form() instanceof StorageForm.Strands strands
                ? OptionalDouble.of(strands.stroke())
                : OptionalDouble.empty();
    }
}
