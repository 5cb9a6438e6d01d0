package runthrough.plant.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;

/**
 * What is refused and what is warned of before anything runs. Each record of the description checks its own ranges when it
 * is made; here stands what relates one part of the line to another. All messages come at once, in the order of the parts; {@link StandIn} says which of them hold of a
 * line of which some numbers are refused.
 */
public final class LineCheck {

    private LineCheck() {}

    /** What is wrong with {@code line}; values are named in SI, as the description holds them. */
    public static List<Message> check(Line line) {
        return check(line, Wording.si());
    }

    /** The same with values named in the units of {@code system}. */
    public static List<Message> check(Line line, UnitSystem system) {
        return check(line, Wording.in(system));
    }

    /**
     * The same of a line in which {@code unknown} coils, counted from 0, are stood in for: nothing is said of these themselves, so
     * that what is said of the others stays the same.
     *
     * @param run how it is to be run; empty where that is not known
     */
    public static List<Message> check(Line line, Optional<RunPlan> run, Set<Integer> unknown, UnitSystem system) {
        Messages messages = new Messages(Wording.in(system));
        checkLine(line, unknown, messages);
        run.ifPresent(plan -> RunCheck.check(line, plan, messages));
        return messages.list();
    }

    private static List<Message> check(Line line, Wording wording) {
        Messages messages = new Messages(wording);
        checkLine(line, Set.of(), messages);
        return messages.list();
    }

    /** What is wrong with {@code line}, and with running it under {@code run}; values are named in SI. */
    public static List<Message> check(Line line, RunPlan run) {
        return check(line, run, Wording.si());
    }

    /** What is wrong with what was asked; values are named in the units in which its results are wanted. */
    public static List<Message> check(SimulationRequest request) {
        return check(request.line(), request.run(), Wording.in(request.resultsIn()));
    }

    /**
     * Warnings of what was described beside a line although its practice holds no such thing.
     *
     * @param practice of the line
     * @param accumulator that was described, if any
     * @param rethread time (s) that was described, if any
     * @param units in which values are named
     */
    public static List<Message> unused(
            Practice practice, Optional<Accumulator> accumulator, Optional<Distribution> rethread, UnitSystem units) {
        Messages messages = new Messages(Wording.in(units));
        PracticeCheck.unused(practice, accumulator, rethread, messages);
        return messages.list();
    }

    /** Whether nothing is wrong with {@code line} that is refused; there may be warnings. */
    public static boolean accepts(Line line) {
        return check(line).stream().noneMatch(Message::isError);
    }

    /**
     * Why {@code line} cannot be as described: the first thing that is refused, else the warning that it is not feasible as given;
     * empty where it can.
     *
     * @param units in which values are named
     */
    public static Optional<Message> notFeasible(Line line, UnitSystem units) {
        List<Message> messages = check(line, units);
        return messages.stream()
                .filter(Message::isError)
                .findFirst()
                .or(() -> messages.stream()
                        .filter(message -> message.path().equals(LinePart.EMPTYING_SPEED.path()))
                        .findFirst());
    }

    private static List<Message> check(Line line, RunPlan run, Wording wording) {
        Messages messages = new Messages(wording);
        checkLine(line, Set.of(), messages);
        RunCheck.check(line, run, messages);
        return messages.list();
    }

    private static void checkLine(Line line, Set<Integer> unknownCoils, Messages messages) {
        CoilCheck.check(line, unknownCoils, messages);
        EntryCheck.check(line, messages);
        if (!line.practice().isOneStrip()) {
            AccumulatorCheck.check(line, messages);
            SlowingCheck.check(line, messages);
        }
        JointCheck.check(line, messages);
        CrewCheck.check(line, messages);
        WorkCheck.check(line, messages);
        PracticeCheck.check(line, messages);
    }
}
