package runthrough.report.document;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.Unit;
import runthrough.report.Cell;
import runthrough.report.Value;
import runthrough.study.benefit.Gain;
import runthrough.study.benefit.Worth;
import runthrough.study.statistics.Interval;

/** Gains of a year, and what follows from them, as values with their intervals. */
final class GainValues {
    /** Amounts of money in a table whose caption names the currency. */
    static final Notation MONEY = Notation.PLAIN.with(Rounding.AMOUNT);

    static final Notation HOURS = Notation.of(Unit.HOUR).with(Rounding.AMOUNT);

    private static final Notation YEARS = MONEY.called("years");
    private static final Notation RATE = Notation.SHARE.with(Rounding.AMOUNT);

    private GainValues() {}

    static Cell of(Gain gain, Notation notation) {
        return new Cell.Known(value(gain.mean(), gain.low(), gain.high(), notation), "");
    }

    /** Time that pays the price back without interest; infinite where it never does. */
    static Cell simplePayback(Worth worth) {
        return payback(worth, worth::simplePayback);
    }

    /** The same with interest. */
    static Cell discountedPayback(Worth worth) {
        return payback(worth, worth::discountedPayback);
    }

    private static Cell payback(Worth worth, DoubleFunction<OptionalDouble> years) {
        Gain yearly = worth.yearly();
        double never = Double.POSITIVE_INFINITY;
        return new Cell.Known(
                value(
                        years.apply(yearly.mean()).orElse(never),
                        years.apply(yearly.high()).orElse(never),
                        years.apply(yearly.low()).orElse(never),
                        YEARS),
                "never");
    }

    /** Internal rate of return; without bound below where there is none. */
    static Cell internalRate(Worth worth) {
        Gain yearly = worth.yearly();
        double none = Double.NEGATIVE_INFINITY;
        return new Cell.Known(
                value(
                        worth.internalRate(yearly.mean()).orElse(none),
                        worth.internalRate(yearly.low()).orElse(none),
                        worth.internalRate(yearly.high()).orElse(none),
                        RATE),
                "none");
    }

    /** Without an interval where it is certain. */
    private static Value value(double mean, double low, double high, Notation notation) {
        return new Value(
                mean,
                notation,
                low < high ? Optional.of(new Interval(low, high, Interval.Method.STUDENT_T)) : Optional.empty());
    }
}
