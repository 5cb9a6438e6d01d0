package runthrough.study.lever;

import java.util.List;
import java.util.function.DoubleFunction;
import runthrough.plant.Line;
import runthrough.quantity.UnitSystem;
import runthrough.study.search.Crossing.Harder;
import runthrough.study.search.Scale;

/**
 * Two levers that are changed together, as one number: the part by which both are, or, with one more of what is counted, the value of
 * the other. Whatever the number, the line is tried with the two values as they are written.
 *
 * <p>Rule LEVER-14.
 *
 * @param first of the two; that which is counted where one is
 * @param second of the two
 * @param isEven whether both are changed by the same part
 * @param scale of the number
 * @param system of the user's units, in which steps are round
 */
record LeverPair(PairHalf first, PairHalf second, boolean isEven, Scale scale, UnitSystem system) implements Along {

    /** Both by the same part, up to {@code most}. */
    static LeverPair even(PairHalf first, PairHalf second, double most, UnitSystem system) {
        double step = LeverStep.ofParts(first.measure().varied().line().isDeterministic());
        double whole = Math.floor(most / step) * step;
        return new LeverPair(first, second, true, new Scale(Harder.SMALLER, 0, whole, step, whole), system);
    }

    /** One more of {@code first}, and of {@code second} what lies between its present value and {@code easiest}. */
    static LeverPair oneMore(PairHalf first, PairHalf second, double easiest, UnitSystem system) {
        Scale whole = second.measure().varied().scale();
        double present = second.measure().varied().present();
        return new LeverPair(
                first,
                second,
                false,
                new Scale(
                        whole.harder(),
                        Math.min(present, easiest),
                        Math.max(present, easiest),
                        whole.step(),
                        whole.reference()),
                system);
    }

    @Override
    public Line line() {
        return first.measure().varied().line();
    }

    @Override
    public double present() {
        return isEven ? 0 : second.measure().varied().present();
    }

    /** Both as they are with {@code value} of the number. */
    List<LeverChange> changes(double value) {
        LeverMeasure one = first.measure();
        LeverMeasure other = second.measure();
        return List.of(one.to(isEven ? one.at(value) : one.oneMore()), other.to(isEven ? other.at(value) : value));
    }

    /** Whether both are changed with {@code value}, each by clearly less than it would have to be alone. */
    boolean isClearlyLess(double value) {
        return first.isClearlyLess(changes(value).get(0))
                && second.isClearlyLess(changes(value).get(1));
    }

    @Override
    public DoubleFunction<Line> variant() {
        return value -> {
            Line variant = line();
            for (LeverChange change : changes(value)) {
                variant = change.amount() == 0
                        ? variant
                        : new LineLevers(variant, system)
                                .of(change.lever().what())
                                .variant()
                                .apply(change.value());
            }
            return variant;
        };
    }
}
