package runthrough.report.limits;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import runthrough.chart.limits.LimitRow;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.lever.LeverWords;
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
        Shown shown = Shown.of(limit);
        return new DrivenNumber(
                LimitWords.name(limit),
                present(limit),
                found(limit, crossing.answered(), crossing.answer(), true),
                value(limit, texts.random() ? shown.low() : OptionalDouble.empty()),
                value(limit, texts.random() ? shown.high() : OptionalDouble.empty()),
                Value.of(shown.of(crossing.sure()), safe(limit)),
                closedForm(limit),
                value(limit, limit.closedForm() == Found.CROSSED ? handCalculation(limit) : OptionalDouble.empty()),
                LimitWords.limitingFactor(limit).orElse(""));
    }

    Value present(LineLimit limit) {
        return value(limit, OptionalDouble.of(limit.present()));
    }

    /** What it could be, all else as it is. */
    Value value(LineLimit limit) {
        return limit.crossing().answer().isPresent()
                ? withInterval(limit)
                : Value.of(OptionalDouble.empty(), safe(limit));
    }

    private Value value(LineLimit limit, OptionalDouble si) {
        return Value.of(Shown.of(limit).of(si), notation(limit));
    }

    /**
     * How the values of a limit are shown: what comes off a joint without its sign, and so its interval the other way round.
     *
     * @param turned whether they are shown with the other sign
     * @param low the end of the interval that is shown as the lower one
     * @param high the other
     */
    private record Shown(boolean turned, OptionalDouble low, OptionalDouble high) {
        static Shown of(LineLimit limit) {
            Crossing crossing = limit.crossing();
            return LimitWords.isTakenOff(limit)
                    ? new Shown(true, crossing.high(), crossing.low())
                    : new Shown(false, crossing.low(), crossing.high());
        }

        OptionalDouble of(OptionalDouble si) {
            return si.isPresent() ? OptionalDouble.of(of(si.getAsDouble())) : si;
        }

        double of(double si) {
            // Not -si: none is written as 0.
            return turned ? 0 - si : si;
        }
    }

    /** The same for all values of a limit, so that they can be compared. */
    private Notation notation(LineLimit limit) {
        double greatest = Stream.of(limit.crossing().value(), limit.crossing().high(), handCalculation(limit))
                .flatMapToDouble(OptionalDouble::stream)
                .map(Math::abs)
                .reduce(limit.present(), Math::max);
        return limit.what().kind().map(kind -> texts.notation(kind, greatest)).orElse(Notation.PLAIN);
    }

    /** The same with the digits that were tried, rounded to the side on which the target is met. */
    private Notation safe(LineLimit limit) {
        return onSafeSide(limit, notation(limit).setting());
    }

    /** The same of what was not tried. */
    private Notation rounded(LineLimit limit) {
        return onSafeSide(limit, notation(limit));
    }

    private static Notation onSafeSide(LineLimit limit, Notation notation) {
        boolean isMost =
                (limit.crossing().harder() == Harder.LARGER) != Shown.of(limit).turned();
        return isMost ? notation.atMost() : notation.atLeast();
    }

    /** The limit, or on which side of the range it lies. */
    private Cell found(LineLimit limit, Found found, OptionalDouble si, boolean hasInterval) {
        Crossing range = limit.crossing();
        return switch (found) {
            case CROSSED ->
                Cell.of(
                        hasInterval
                                ? withInterval(limit)
                                : Value.of(Shown.of(limit).of(si), rounded(limit)));
            case MET_THROUGHOUT ->
                range.harder() == Harder.LARGER
                        ? new Cell.Bound("at least", value(limit, OptionalDouble.of(range.to())))
                        : new Cell.Bound("at most", value(limit, OptionalDouble.of(range.from())));
            case MISSED_THROUGHOUT ->
                new Cell.Quantity(value(limit, OptionalDouble.empty()), LimitWords.noneEnough(limit.what()));
        };
    }

    /** Seconds that by closed form may be added where the simulation finds that some must come off are no less than none off. */
    private Cell closedForm(LineLimit limit) {
        OptionalDouble value = handCalculation(limit);
        return limit.closedForm() == Found.CROSSED && LimitWords.isTakenOff(limit) && value.orElse(0) > 0
                ? new Cell.Bound(
                        "none;",
                        Value.of(value, notation(limit).called(notation(limit).symbol() + " may be added")))
                : found(limit, limit.closedForm(), value, false);
    }

    private Value withInterval(LineLimit limit) {
        Shown shown = Shown.of(limit);
        return texts.found(
                safe(limit),
                shown.of(limit.crossing().answer().orElseThrow()),
                shown.of(shown.low()),
                shown.of(shown.high()));
    }

    /** What follows a limit that was not shown, or of whose interval the run could not find both ends; else empty. */
    String reservation(LineLimit limit) {
        Crossing crossing = limit.crossing();
        OptionalDouble low = Shown.of(limit).low();
        OptionalDouble high = Shown.of(limit).high();
        boolean isWhole = low.isPresent() && high.isPresent();
        if (!texts.random() || crossing.answered() != Found.CROSSED || isWhole) {
            return "";
        }
        if (!crossing.canBeShown()) {
            return "; " + LeverWords.TOO_SHORT;
        }
        if (low.isPresent()) {
            return "; 95 % interval from " + value(limit, low).text();
        }
        return high.isPresent() ? "; 95 % interval up to " + value(limit, high).text() : "; 95 % interval not known";
    }

    private static OptionalDouble handCalculation(LineLimit limit) {
        return limit.neighbour().map(near -> OptionalDouble.of(near.value())).orElse(OptionalDouble.empty());
    }

    /** Limits to be drawn, relative to the present value. What has no limit is not drawn, nor what is none now. */
    List<LimitRow> rows() {
        return Stream.concat(
                        limits.limits().stream()
                                .filter(limit -> limit.what() != Lever.What.JOINT_CYCLE_TIME)
                                .map(limit -> row(limit, limit.present())),
                        limits.counts().stream().map(LimitValues::row))
                .filter(row -> row.limit().isPresent())
                .toList();
    }

    /** The same of the seconds on every pass of the join work, of which there are none now: in seconds. */
    List<LimitRow> rowsInSeconds() {
        return limits.limits().stream()
                .filter(limit -> limit.what() == Lever.What.JOINT_CYCLE_TIME)
                .map(limit -> row(limit, 1))
                .filter(row -> row.limit().isPresent())
                .toList();
    }

    private LimitRow row(LineLimit limit, double unit) {
        Crossing crossing = limit.crossing();
        boolean isKnown = texts.random() && crossing.answered() == Found.CROSSED;
        DrivenNumber number = of(limit);
        return new LimitRow(
                number.name(),
                number.text(),
                relative(crossing.answer(), unit),
                crossing.answered() == Found.CROSSED,
                isKnown ? relative(crossing.low(), unit) : OptionalDouble.empty(),
                isKnown ? relative(crossing.high(), unit) : OptionalDouble.empty(),
                relative(handCalculation(limit), unit),
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

    private static OptionalDouble relative(OptionalDouble value, double unit) {
        double relative = value.orElse(Double.NaN) / unit;
        return Double.isFinite(relative) ? OptionalDouble.of(relative) : OptionalDouble.empty();
    }

    /** Whether the limit is not on the easy side of the present value. */
    private static boolean hasMargin(LineLimit limit) {
        double value = limit.crossing().answer().orElse(Double.NaN);
        return limit.crossing().harder() == Harder.LARGER ? value >= limit.present() : value <= limit.present();
    }
}
