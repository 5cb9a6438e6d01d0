package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.plant.handover.Money;
import runthrough.report.Texts;
import runthrough.report.lever.LeverWords;
import runthrough.report.lever.WayWords;
import runthrough.study.Goal;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.lever.LeverChange;
import runthrough.study.lever.LeverStudy;
import runthrough.study.lever.Levers;
import runthrough.study.lever.Way;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LimitsStudy;
import runthrough.study.limits.LineLimit;

/**
 * What would let a line meet its target, of one change or two together, ranked; or, where it meets it, how far each number could go.
 * The numbers are those of every other command.
 *
 * @param words what the list is about
 */
record Fixes(String words, List<Fix> fixes) {
    Fixes {
        fixes = List.copyOf(fixes);
    }

    /**
     * One of them, with the changes that make it.
     *
     * @param rank what it is ranked by, in words: its cost in a year, or how much is changed; empty where it is not ranked
     */
    record Fix(String words, String rank, List<PageRequest.Part> changes) {
        Fix {
            changes = List.copyOf(changes);
        }
    }

    static Fixes of(SimulationRequest request, Optional<Money> money, int threads, StudyListener listener) {
        if (request.line().practice().isOneStrip()) {
            return new Fixes(
                    "Entry and process are one strip, so every coil change stops the process. Only a joiner with an accumulator"
                            + " between it and the process lets the line run through.",
                    List.of());
        }
        Levers levers = new LeverStudy(request).ranked(money, threads, listener);
        List<Goal> missed = missed(levers);
        if (missed.isEmpty()) {
            return new Fixes(
                    "The line meets its target of " + Texts.target(request.run().target())
                            + ". It still would, each change on its own:",
                    limits(request, threads, listener));
        }
        List<Way> ways = levers.ways().stream()
                .filter(way -> missed.contains(way.goal()))
                .toList();
        String asked = missed.stream().map(Fixes::asked).collect(Collectors.joining(" or of "));
        return new Fixes(
                ways.isEmpty()
                        ? "Nothing that was tried, on its own or in pairs, meets the target of " + asked + "."
                        : "Each of these meets the target of " + asked + ", " + WayWords.order(ways) + ":",
                ways.stream().map(way -> fix(way, missed, request)).toList());
    }

    private static Fix fix(Way way, List<Goal> missed, SimulationRequest request) {
        WayWords words = WayWords.of(request);
        String which = missed.size() > 1 ? ", for the target of " + asked(way.goal()) : "";
        return new Fix(
                capitalised(words.sentence(way)) + which,
                capitalised(words.rankedBy(way)),
                FixParts.of(way.changes(), request));
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

    private static String capitalised(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** How far each number could go. */
    private static List<Fix> limits(SimulationRequest request, int threads, StudyListener listener) {
        Limits limits = new LimitsStudy(request, request.run().target()).run(threads, listener);
        boolean meets = limits.present()
                .filter(one -> one.answer(limits.target()) == TargetStatus.MEETS)
                .isPresent();
        LeverWords words = LeverWords.of(request);
        List<Fix> fixes = new ArrayList<>();
        for (LineLimit limit : limits.limits()) {
            if (meets && limit.isCrossed() && !limit.isAsItIs() && limit.what() != Lever.What.COIL_LENGTH) {
                LeverAnswer answer = limit.asLever(Goal.runThrough(limits.target()), strand(request, limit));
                fixes.add(new Fix(
                        capitalised(words.sentence(answer)),
                        "",
                        FixParts.of(List.of(LeverChange.of(answer)), request)));
            }
        }
        return fixes;
    }

    private static OptionalDouble strand(SimulationRequest request, LineLimit limit) {
        return limit.what() == Lever.What.CAPACITY
                        && request.line().accumulator().form() instanceof StorageForm.Strands strands
                ? OptionalDouble.of(strands.stroke())
                : OptionalDouble.empty();
    }
}
