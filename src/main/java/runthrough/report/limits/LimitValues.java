package runthrough.report.limits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import runthrough.chart.limits.LimitRow;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.lever.Lever;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;
import runthrough.study.search.Crossing;
import runthrough.study.search.Crossing.Found;
import runthrough.study.search.Crossing.Harder;

/**
 * Limits as values in the user's units.
 *
 * @param limits that are described
 * @param texts for numbers
 */
record LimitValues(Limits limits, Texts texts) {
    /** All that were driven. */
    List<DrivenNumber> all() {
        return Stream.concat(
                        limits.limits().stream().map(this::of),
                        limits.counts().stream().map(DrivenNumber::of))
                .toList();
    }

    DrivenNumber of(LineLimit limit) {
        Crossing crossing = limit.crossing();
        return new DrivenNumber(
                LimitWords.name(limit),
                present(limit),
                found(limit, crossing.answered(), crossing.answer(), true),
                value(limit, texts.random() ? low(limit) : OptionalDouble.empty()),
                value(limit, texts.random() ? high(limit) : OptionalDouble.empty()),
                value(limit, crossing.sure()),
                found(limit, limit.closedForm(), handCalculation(limit), false),
                LimitWords.limitingFactor(limit).orElse(""));
    }

    Value present(LineLimit limit) {
        return value(limit, OptionalDouble.of(limit.present()));
    }

    /** What it could be, all else as it is. */
    Value value(LineLimit limit) {
        return value(limit, limit.crossing().answer());
    }

    private Value value(LineLimit limit, OptionalDouble si) {
        return Value.of(shown(limit, si), notation(limit));
    }

    /** What comes off a joint is shown as such, without a sign. */
    private static double shown(LineLimit limit, double si) {
        // Not -si: none is written as 0.
        return LimitWords.isTakenOff(limit) ? 0 - si : si;
    }

    private static OptionalDouble shown(LineLimit limit, OptionalDouble si) {
        return si.isPresent() ? OptionalDouble.of(shown(limit, si.getAsDouble())) : si;
    }

    /** The end of the interval that is shown as the lower one. */
    private static OptionalDouble low(LineLimit limit) {
        return LimitWords.isTakenOff(limit)
                ? limit.crossing().high()
                : limit.crossing().low();
    }

    private static OptionalDouble high(LineLimit limit) {
        return LimitWords.isTakenOff(limit)
                ? limit.crossing().low()
                : limit.crossing().high();
    }

    /** The same for all values of a limit, so that they can be compared. */
    private Notation notation(LineLimit limit) {
        double greatest = Stream.of(limit.crossing().value(), limit.crossing().high(), handCalculation(limit))
                .flatMapToDouble(OptionalDouble::stream)
                .reduce(limit.present(), Math::max);
        return limit.what().kind().map(kind -> texts.notation(kind, greatest)).orElse(Notation.PLAIN);
    }

    /** The limit, or on which side of the range it lies. */
    private Cell found(LineLimit limit, Found found, OptionalDouble si, boolean hasInterval) {
        Crossing range = limit.crossing();
        return switch (found) {
            case CROSSED -> Cell.of(hasInterval ? withInterval(limit) : value(limit, si));
            case MET_THROUGHOUT ->
                range.harder() == Harder.LARGER
                        ? new Cell.Bound("at least", value(limit, OptionalDouble.of(range.to())))
                        : new Cell.Bound("at most", value(limit, OptionalDouble.of(range.from())));
            case MISSED_THROUGHOUT ->
                new Cell.Quantity(value(limit, OptionalDouble.empty()), LimitWords.noneEnough(limit.what()));
        };
    }

    private Value withInterval(LineLimit limit) {
        return texts.found(
                notation(limit),
                shown(limit, limit.crossing().answer().orElseThrow()),
                shown(limit, low(limit)),
                shown(limit, high(limit)));
    }

    /** What is known of the interval where the run could not find both ends of it; may be empty. */
    Optional<String> openInterval(LineLimit limit) {
        Crossing crossing = limit.crossing();
        OptionalDouble low = low(limit);
        OptionalDouble high = high(limit);
        boolean isWhole = low.isPresent() && high.isPresent();
        if (!texts.random() || crossing.answered() != Found.CROSSED || isWhole) {
            return Optional.empty();
        }
        if (low.isPresent()) {
            return Optional.of("95 % interval from " + value(limit, low).text());
        }
        return Optional.of(
                high.isPresent() ? "95 % interval up to " + value(limit, high).text() : "95 % interval not known");
    }

    private static OptionalDouble handCalculation(LineLimit limit) {
        return limit.neighbour().map(near -> OptionalDouble.of(near.value())).orElse(OptionalDouble.empty());
    }

    /**
     * Limits to be drawn, relative to the present value; joint cycle time, relative to the work at a joint. What has no limit is
     * not drawn.
     */
    List<LimitRow> rows() {
        return Stream.concat(
                        limits.limits().stream().map(this::row),
                        limits.counts().stream().map(LimitValues::row))
                .filter(row -> row.limit().isPresent())
                .toList();
    }

    private LimitRow row(LineLimit limit) {
        Crossing crossing = limit.crossing();
        boolean isKnown = texts.random() && crossing.answered() == Found.CROSSED;
        DrivenNumber number = of(limit);
        return new LimitRow(
                number.name(),
                number.text(),
                relative(limit, crossing.answer()),
                crossing.answered() == Found.CROSSED,
                isKnown ? relative(limit, crossing.low()) : OptionalDouble.empty(),
                isKnown ? relative(limit, crossing.high()) : OptionalDouble.empty(),
                relative(limit, handCalculation(limit)),
                hasMargin(limit));
    }

    private static LimitRow row(CountLimit limit) {
        DrivenNumber number = DrivenNumber.of(limit);
        return new LimitRow(
                number.name(),
                number.text(),
                relative(limit, limit.smallest()),
                true,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                relative(limit, limit.closedForm()),
                limit.smallest().orElse(Integer.MAX_VALUE) <= limit.present());
    }

    private static OptionalDouble relative(CountLimit limit, OptionalInt number) {
        return number.isPresent()
                ? OptionalDouble.of((double) number.getAsInt() / limit.present())
                : OptionalDouble.empty();
    }

    private OptionalDouble relative(LineLimit limit, OptionalDouble value) {
        if (value.isEmpty()) {
            return value;
        }
        double work = limits.handCalculation().joint().work();
        double relative = limit.what() == Lever.What.JOINT_CYCLE_TIME
                ? (work + value.getAsDouble()) / work
                : value.getAsDouble() / limit.present();
        return Double.isFinite(relative) ? OptionalDouble.of(relative) : OptionalDouble.empty();
    }

    /** Whether the limit is not on the easy side of the present value. */
    private static boolean hasMargin(LineLimit limit) {
        double value = limit.crossing().answer().orElse(Double.NaN);
        return limit.crossing().harder() == Harder.LARGER ? value >= limit.present() : value <= limit.present();
    }
}
