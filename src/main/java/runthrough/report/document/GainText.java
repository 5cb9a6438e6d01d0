package runthrough.report.document;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import runthrough.quantity.Amounts;
import runthrough.study.benefit.Gain;

/** Gains with their intervals, in a form that a line breaks only before the bracket. */
final class GainText {
    private GainText() {}

    /** Such as "1 612 000 (1 608 000 to 1 616 000)", or "12" where nothing is random. */
    static String of(Gain gain) {
        return of(gain, "");
    }

    /** The same with {@code unit} behind the mean. */
    static String of(Gain gain, String unit) {
        double half = gain.halfWidth();
        String mean = Amounts.text(gain.mean(), half) + (unit.isEmpty() ? "" : "\u00a0" + unit);
        return half > 0
                ? mean + " (" + ends(Amounts.text(gain.low(), half), Amounts.text(gain.high(), half)) + ")"
                : mean;
    }

    /**
     * What follows from a gain of a year, such as the time that pays a price back: from its mean, and in brackets from the
     * ends of its interval, the lower result first.
     *
     * @param none in the place of what does not exist
     * @param falling whether it is less the more is gained
     */
    static String from(Gain yearly, DoubleFunction<OptionalDouble> result, String none, boolean falling) {
        OptionalDouble mean = result.apply(yearly.mean());
        if (!(yearly.halfWidth() > 0)) {
            return text(mean, 0, none);
        }
        OptionalDouble first = result.apply(falling ? yearly.high() : yearly.low());
        OptionalDouble last = result.apply(falling ? yearly.low() : yearly.high());
        double half = first.isPresent() && last.isPresent() ? (last.getAsDouble() - first.getAsDouble()) / 2 : 0;
        return text(mean, half, none) + " (" + ends(text(first, half, none), text(last, half, none)) + ")";
    }

    private static String ends(String low, String high) {
        return low + "\u00a0to\u00a0" + high;
    }

    private static String text(OptionalDouble value, double halfWidth, String none) {
        return value.isPresent() ? Amounts.text(value.getAsDouble(), halfWidth) : none;
    }
}
