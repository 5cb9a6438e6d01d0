package runthrough.plant.check;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;

/**
 * What is refused and what is warned of before anything runs. Each record of the description checks its own ranges when it
 * is made; here stands what relates one part of the line to another. All messages come at once, in the order of the parts.
 */
public final class LineCheck {

    private LineCheck() {}

    /** What is wrong with {@code line}; values are named in metric units. */
    public static List<Message> check(Line line) {
        Messages messages = new Messages(Wording.in(UnitSystem.METRIC));
        checkLine(line, messages);
        return messages.list();
    }

    /** What is wrong with {@code line}, and with running it under {@code run}; values are named in metric units. */
    public static List<Message> check(Line line, RunPlan run) {
        return check(line, run, UnitSystem.METRIC);
    }

    /** What is wrong with what was asked; values are named in the units in which its results are wanted. */
    public static List<Message> check(SimulationRequest request) {
        return check(request.line(), request.run(), request.resultsIn());
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
        Messages messages = new Messages(Wording.in(units));
        checkLine(line, messages);
        return messages.list().stream()
                .filter(Message::isError)
                .findFirst()
                .or(() -> messages.list().stream()
                        .filter(message -> message.path().equals(LinePart.EMPTYING_SPEED.path()))
                        .findFirst());
    }

    private static List<Message> check(Line line, RunPlan run, UnitSystem units) {
        Messages messages = new Messages(Wording.in(units));
        checkLine(line, messages);
        RunCheck.check(line, run, messages);
        return messages.list();
    }

    private static void checkLine(Line line, Messages messages) {
        CoilCheck.check(line, messages);
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
