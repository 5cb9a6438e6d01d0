package runthrough.study.limits;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runthrough.handcalc.Limit;
import runthrough.plant.Line;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.quantity.UnitSystem;
import runthrough.study.Evaluation;
import runthrough.study.cause.CauseCounts;
import runthrough.study.limits.LineLimit.Neighbour;
import runthrough.study.search.Crossing;
import runthrough.study.search.Crossing.Found;
import runthrough.study.search.Scale;
import runthrough.study.search.TargetSearch;
import runthrough.study.search.TargetSearch.Guess;

/** Drives one number to its limit, beginning at what the closed forms say. */
final class LimitSearch {
    /** Values closer than this, relatively, are not distinguished where nothing is random. */
    private static final double EXACT = 1e-4;

    /** The same where something is; intervals are wider than this for any run of bearable length. */
    private static final double FINE = 2e-3;

    /** What lies within the precision does so in spite of rounding. */
    private static final double ROUNDED = 1.001;

    private final VariedInput driven;
    private final double target;
    private final LineTrials variants;
    private final double precision;
    private final UnitSystem units;
    private final Map<Double, Optional<Evaluation>> tried = new HashMap<>();

    LimitSearch(VariedInput driven, double target, LineTrials variants, UnitSystem units) {
        this.units = units;
        this.driven = driven;
        this.target = target;
        this.variants = variants;
        this.precision = driven.line().isDeterministic() ? EXACT : FINE;
    }

    LineLimit limit() {
        ClosedFormLimit closedForms = new ClosedFormLimit(driven);
        Optional<Neighbour> neighbour = closedForms.find();
        Found closedForm = closedForms.found();
        Scale scale = new Scale(driven.what().harder(), driven.from(), driven.to(), precision, driven.reference());
        double guess = neighbour.map(Neighbour::value).orElse(driven.present());
        Crossing crossing = new TargetSearch(this::attempt, target, scale).from(Guess.about(guess));
        Optional<CauseCounts> beyond = beyond(crossing);
        return new LineLimit(
                driven.what(),
                driven.present(),
                driven.scaledAlike(),
                crossing,
                closedForm,
                neighbour,
                differences(crossing, closedForm, neighbour, beyond),
                beyond,
                notFeasible(crossing));
    }

    private Optional<Message> notFeasible(Crossing crossing) {
        if (crossing.missed().isEmpty() || !LimitsStudy.isFeasible(driven.line())) {
            return Optional.empty();
        }
        Line beyond = driven.variant().apply(crossing.missed().getAsDouble());
        return LineCheck.notFeasible(beyond, units).filter(message -> !message.isError());
    }

    private Optional<Evaluation> attempt(double value) {
        return tried.computeIfAbsent(
                value, v -> variants.attempt(driven.variant().apply(v)));
    }

    /** What failures are attributed to just beyond the limit; where the target is missed throughout, in the line as it is. */
    private Optional<CauseCounts> beyond(Crossing crossing) {
        return switch (crossing.found()) {
            case CROSSED -> attempt(crossing.missed().orElseThrow()).map(Evaluation::causes);
            case MISSED_THROUGHOUT -> attempt(driven.present()).map(Evaluation::causes);
            case MET_THROUGHOUT -> Optional.empty();
        };
    }

    private List<LineLimit.Difference> differences(
            Crossing crossing, Found closedForm, Optional<Neighbour> neighbour, Optional<CauseCounts> beyond) {
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
                        <= ROUNDED * precision * Math.max(Math.abs(value), driven.reference()))
                .isPresent();
        return agree ? List.of() : Differences.of(driven.variant().apply(value), target, limitingFactor, beyond);
    }
}
