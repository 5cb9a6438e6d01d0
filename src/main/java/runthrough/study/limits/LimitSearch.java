package runthrough.study.limits;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.Limit;
import runthrough.plant.Line;
import runthrough.plant.StorageForm;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.quantity.UnitSystem;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.cause.Cause;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.LeverSearch;
import runthrough.study.lever.LineLevers;
import runthrough.study.lever.Varied;
import runthrough.study.limits.LineLimit.Neighbour;
import runthrough.study.search.Crossing;
import runthrough.study.search.Crossing.Found;

/** Drives one number to its limit, and holds that against the closed forms. */
final class LimitSearch {
    /** A limit so many steps from that of the closed form is the same but for the steps. */
    private static final double NEIGHBOURS = 1.001;

    private final Varied driven;
    private final double target;
    private final UnitSystem units;
    private final LeverSearch search;
    private final LeverRun run;

    LimitSearch(Varied driven, double target, LeverRun run, UnitSystem units) {
        this.units = units;
        this.driven = driven;
        this.target = target;
        this.search = run.along(driven);
        this.run = run;
    }

    LineLimit limit() {
        ClosedFormLimit closedForms = new ClosedFormLimit(continuous());
        Optional<Neighbour> neighbour = closedForms.find();
        Found closedForm = closedForms.found();
        boolean deterministic = driven.line().isDeterministic();
        double guess =
                neighbour.filter(any -> deterministic).map(Neighbour::value).orElse(driven.present());
        Crossing crossing = search.find(Goal.runThrough(target), guess);
        Optional<Evaluation> beyond = beyond(crossing);
        return new LineLimit(
                driven.lever().what(),
                driven.present(),
                driven.scaledAlike(),
                crossing,
                closedForm,
                neighbour,
                differences(
                        crossing,
                        closedForm,
                        neighbour,
                        beyond.flatMap(one -> one.causes().main())),
                beyond.map(Evaluation::namedCauses).orElse(List.of()),
                notFeasible(crossing),
                crossing.answered() == Found.CROSSED
                        ? run.cost(driven, crossing.answer().orElseThrow(), search)
                        : Optional.empty());
    }

    /** A closed form knows no strands: it gives the capacity that is needed, as everywhere. */
    private Varied continuous() {
        return driven.lever().what() == Lever.What.CAPACITY
                ? new LineLevers(driven.line(), units).continuousCapacity()
                : driven;
    }

    private Optional<Message> notFeasible(Crossing crossing) {
        if (crossing.missed().isEmpty() || !LeverRun.isFeasible(driven.line())) {
            return Optional.empty();
        }
        Line beyond = driven.variant().apply(crossing.missed().getAsDouble());
        return LineCheck.notFeasible(beyond, units).filter(message -> !message.isError());
    }

    /** What failures are attributed to just beyond the limit; where the target is missed throughout, in the line as it is. */
    private Optional<Evaluation> beyond(Crossing crossing) {
        return switch (crossing.found()) {
            case CROSSED -> withCauses(crossing.missed().orElseThrow());
            case MISSED_THROUGHOUT -> withCauses(driven.present());
            case MET_THROUGHOUT -> Optional.empty();
        };
    }

    private Optional<Evaluation> withCauses(double value) {
        return run.attemptWithCauses(driven.variant().apply(value));
    }

    private List<LineLimit.Difference> differences(
            Crossing crossing, Found closedForm, Optional<Neighbour> neighbour, Optional<Cause> beyond) {
        if (neighbour.isEmpty() && crossing.found() == closedForm) {
            return List.of();
        }
        Optional<Limit> limitingFactor = neighbour.flatMap(Neighbour::limitingFactor);
        if (crossing.value().isEmpty()) {
            return Differences.of(driven.line(), target, limitingFactor, beyond);
        }
        double value = crossing.value().getAsDouble();
        boolean agree = neighbour
                .filter(near -> Math.abs(value - near.value())
                        <= NEIGHBOURS * driven.scale().step())
                .isPresent();
        if (!agree) {
            return Differences.of(driven.variant().apply(value), target, limitingFactor, beyond);
        }
        boolean isRoundedUp = isInStrands() && value > neighbour.get().value();
        return isRoundedUp ? List.of(LineLimit.Difference.WHOLE_STRANDS) : List.of();
    }

    private boolean isInStrands() {
        return driven.lever().what() == Lever.What.CAPACITY
                && driven.line().accumulator().form() instanceof StorageForm.Strands;
    }
}
