package runthrough.study.limits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.handcalc.Limit;
import runthrough.plant.check.Message;
import runthrough.study.Goal;
import runthrough.study.cause.NamedCauses;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.search.Crossing;

/**
 * One number driven to its limit.
 *
 * @param what is driven
 * @param present its value now, in the unit of {@link Lever.What}
 * @param scaledAlike whether several values are behind it (coils with speeds or lengths of their own), which were all changed
 *     by the same factor; {@code present} and the limit are then those given at {@link Lever.What}
 * @param crossing the limit, in the unit of {@link Lever.What}
 * @param closedForm whether by closed form there is a limit within the range searched
 * @param neighbour what the closed forms say; empty where they know no limit within the range searched
 * @param differences why the two are not the same, the weightiest first; empty when they agree within the precision of the
 *     search
 * @param beyond what coil changes that did not run through are attributed to, most of them first, just beyond the limit, or in the line
 *     as it is where the target is missed throughout; empty when it is met throughout, or where the line's own check refuses what lies beyond
 * @param notFeasible why the line, which is feasible as it is, is not just beyond the limit; empty where it is or nothing lies beyond
 * @param cost what comes out at the limit; of a process speed
 */
public record LineLimit(
        Lever.What what,
        double present,
        boolean scaledAlike,
        Crossing crossing,
        Crossing.Found closedForm,
        Optional<Neighbour> neighbour,
        List<Difference> differences,
        List<NamedCauses.Count> beyond,
        Optional<Message> notFeasible,
        Optional<LeverAnswer.Cost> cost) {
    private static final double ROUNDING = 1e-9;

    public LineLimit {
        differences = List.copyOf(differences);
        beyond = List.copyOf(beyond);
    }

    /** Whether there is a limit within the range searched. */
    public boolean isCrossed() {
        return crossing.answered() == Crossing.Found.CROSSED;
    }

    /** Whether the limit is the present value: not a step further. */
    public boolean isAsItIs() {
        return isCrossed() && Math.abs(crossing.answer().orElseThrow() - present) <= ROUNDING * Math.abs(present);
    }

    /** The same as the answer of a lever; {@code strand} as there. */
    public LeverAnswer asLever(Goal goal, OptionalDouble strand) {
        return new LeverAnswer(
                Lever.of(what), goal, LeverAnswer.Status.ENOUGH, present, strand, Optional.of(crossing), cost);
    }

    /**
     * The limit by closed form: mean times, one kind of coil (that which is hardest on the line), and the accumulator full
     * again before every coil change.
     *
     * @param value the hardest value at which nothing is overloaded, in the unit of {@link Lever.What}
     * @param limitingFactor what is overloaded just beyond it; empty where the line's own check refuses what lies beyond, such as a
     *     process faster than the entry
     */
    public record Neighbour(double value, Optional<Limit> limitingFactor) {}

    /** Why a limit by simulation is not the one by closed form. */
    public enum Difference {
        /** The closed form takes every time at its mean; in the simulation they vary from coil change to coil change. */
        CHANCE,
        /** The target lets some coil changes fail; the closed form lets none. */
        TARGET,
        /** Coil changes that fail begin with the accumulator not full. */
        REFILL,
        /** Coil changes that fail wait for their coil to be prepared. */
        PREPARATION,
        /** The process slows on a low level before it has to stop, which counts as not run through. */
        SLOWING,
        /** The process has stops of its own, in which the accumulator fills and after which it may be held. */
        DOWNTIME,
        /** Coils of several kinds come; the closed form knows only the one that is hardest on the line. */
        COILS_DIFFER,
        /** Some work is not done at every coil change; the closed form spreads it evenly over all of them. */
        OCCASIONAL_WORK,
        /** The accumulator grows by whole strands; the closed form gives the capacity that is needed. */
        WHOLE_STRANDS,
        /** The run begins with the accumulator full and ends before a lack that grows slowly has used it up. */
        RUN_LENGTH
    }
}
