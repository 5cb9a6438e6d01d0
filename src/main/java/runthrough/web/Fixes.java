package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.CoilChange;
import runthrough.plant.LineFigure;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.report.Texts;
import runthrough.report.lever.LeverWords;
import runthrough.study.Goal;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;
import runthrough.study.cause.Reason;
import runthrough.study.cause.Without;
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

    /** One of them, with the changes that make it; none where nothing on the page can. */
    record Fix(String words, List<PageRequest.Part> changes) {}

    static Fixes of(SimulationRequest request, int threads, StudyListener listener) {
        if (request.line().practice().isOneStrip()) {
            return new Fixes(
                    "Entry and process are one strip, so every coil change stops the process. Only a joiner with an accumulator"
                            + " between it and the process lets the line run through.",
                    List.of());
        }
        Goal goal = Goal.runThrough(request.run().target());
        Levers levers = new LeverStudy(request, List.of(goal)).run(threads, listener);
        boolean meets = levers.answers().stream().anyMatch(one -> one.status() == LeverAnswer.Status.NONE_NEEDED);
        List<LeverAnswer> answers = meets ? limits(request, threads, listener) : levers.enough();
        List<Fix> fixes = answers.stream().map(answer -> fix(answer, request)).toList();
        String asked = Texts.target(goal.target());
        return new Fixes(
                meets
                        ? "The line meets its target of " + asked + ". It still would, each change on its own:"
                        : fixes.isEmpty()
                                ? "Nothing that was tried on its own meets the target of " + asked + "."
                                : "Each of these on its own meets the target of " + asked + ":",
                fixes);
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

    private static Fix fix(LeverAnswer answer, SimulationRequest request) {
        LeverWords words = new LeverWords(request.resultsIn());
        String sentence = words.sentence(answer);
        return new Fix(
                Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1),
                isCrewOfShifts(answer, request)
                        ? crews(request.line().change().shifts().orElseThrow(), answer)
                        : path(answer, request)
                                .map(path -> List.of(new PageRequest.Part(path, setting(answer, request, words))))
                                .orElse(List.of()));
    }

    private static boolean isCrewOfShifts(LeverAnswer answer, SimulationRequest request) {
        return answer.lever().what() == Lever.What.CREW
                && request.line().change().shifts().isPresent();
    }

    /** As many more people in every shift as the largest needs, and in its breaks. */
    private static List<PageRequest.Part> crews(Shifts now, LeverAnswer answer) {
        Shifts then = now.withLargestCrew((int) Math.round(answer.value().orElseThrow()));
        List<PageRequest.Part> parts = new ArrayList<>();
        for (Shifts.Shift shift : then.list()) {
            String path = "coil-change.shifts." + shift.name();
            parts.add(new PageRequest.Part(path + ".crew", Integer.toString(shift.crew())));
            for (int i = 0; i < shift.breaks().size(); i++) {
                int crew = shift.breaks().get(i).crew();
                if (crew > 0) {
                    parts.add(new PageRequest.Part(path + ".breaks[" + (i + 1) + "].crew", Integer.toString(crew)));
                }
            }
        }
        return parts;
    }

    private static String setting(LeverAnswer answer, SimulationRequest request, LeverWords words) {
        double value = answer.value().orElseThrow();
        CoilChange change = request.line().change();
        return switch (answer.lever().what()) {
            case JOINT_CYCLE_TIME ->
                value > 0
                        ? "{" + CoilChange.ADDED + ": " + words.value(answer, value) + "}"
                        : words.value(answer, value - change.joinShorterBy());
            case ELEMENT ->
                words.value(
                        answer,
                        value
                                + Without.element(
                                                change, answer.lever().element().orElseThrow())
                                        .off());
            default ->
                answer.strand().isPresent()
                        ? Long.toString(Math.round(value / answer.strand().getAsDouble()))
                        : words.value(answer, value);
        };
    }

    private static String path(Reason.Element element) {
        return "coil-change." + element.list().name().toLowerCase(Locale.ROOT) + "[" + (element.place() + 1)
                + "].shorter-by";
    }

    /** Where a value is set; empty where nothing on the page can. */
    private static Optional<String> path(LeverAnswer answer, SimulationRequest request) {
        return switch (answer.lever().what()) {
            case CAPACITY ->
                Optional.of(answer.strand().isPresent() ? "accumulator.strands" : LineFigure.USABLE_CAPACITY.path());
            case PROCESS_SPEED -> Optional.of(LineFigure.RATED_SPEED.path());
            case JOINT_CYCLE_TIME ->
                answer.value().orElse(1) <= 0
                        ? Optional.of("coil-change.join-shorter-by")
                        // What was taken off would have to be given back first.
                        : Optional.of("coil-change.join[+]")
                                .filter(any -> request.line().change().joinShorterBy() == 0);
            case ENTRY_TOP_SPEED -> Optional.of("entry.top-speed");
            case UNCOILERS -> Optional.of("entry.uncoilers");
            case CREW -> Optional.of("coil-change.crew");
            case ELEMENT -> answer.lever().element().map(Fixes::path);
            case REJECTS ->
                Optional.of("coil-change.reject.chance")
                        .filter(any -> request.line().change().reject() instanceof CoilChange.Reject.Chance);
            case COIL_LENGTH -> Optional.empty();
        };
    }
}
