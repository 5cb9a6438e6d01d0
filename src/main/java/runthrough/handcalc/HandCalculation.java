package runthrough.handcalc;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.quantity.Kind;

/**
 * The hand calculation of a line, for one kind of coil as if every coil were of that kind, with mean times.
 *
 * @param coil the kind of coil
 * @param kind its place in {@code line.coils()}, from 0
 * @param kinds how many kinds of coil the line has
 * @param speed the process's V with that coil (m/s)
 * @param joint how long the strip stands at the joiner; with the rethread in place of the join work where there is no joiner
 * @param coilRun from one coil change to the next (s)
 * @param preparation of the next coil
 * @param preparationTime what there is to prepare a coil before the process must stop, or where it always does, before the
 *     line must wait, against what it takes (s)
 * @param storage the accumulator; empty where entry and process are one strip
 * @param standstill what a coil change costs; empty where there is an accumulator
 * @param limitingFactor which limit is nearest to being reached or furthest beyond; empty where entry and process are one strip
 * @param bending whether the strip stays elastic, for each thickness; empty where it is not to be reported
 * @param emptying how fast the accumulator can give strip against the fastest process speed (m/s); empty without limit
 * @param givens what the worked calculation starts from
 * @param steps of the worked calculation, in order
 */
public record HandCalculation(
        Coil coil,
        int kind,
        int kinds,
        double speed,
        JointCycleTime joint,
        double coilRun,
        Preparation preparation,
        Margin preparationTime,
        Optional<Storage> storage,
        Optional<Standstill> standstill,
        Optional<Limit> limitingFactor,
        List<BendingCheck> bending,
        Optional<Margin> emptying,
        List<Term> givens,
        List<Step> steps) {
    /** Relative; between a number and the same worked out in another order. */
    private static final double ROUNDING = 1e-9;

    public HandCalculation {
        bending = List.copyOf(bending);
        givens = List.copyOf(givens);
        steps = List.copyOf(steps);
    }

    /**
     * The hand calculation of {@code line} for the kind of coil that is hardest on it: with the limit that is nearest to being
     * reached, or where every change stops the process, with the most time lost.
     *
     * <p>Rules FORM-11, FORM-12.
     */
    public static HandCalculation of(Line line) {
        return of(IntStream.range(0, line.coils().size())
                .mapToObj(kind -> LineCase.of(line, kind))
                // The first of equals, so that the same line always shows the same coil, in whatever units it is
                // written.
                .reduce((hardest, other) -> isHarder(other, hardest) ? other : hardest)
                .orElseThrow());
    }

    private static boolean isHarder(LineCase one, LineCase other) {
        return one.severity() > other.severity() && !isSame(one.severity(), other.severity());
    }

    /** The hand calculation of {@code line} for the coil at {@code kind} in {@code line.coils()}. */
    public static HandCalculation of(Line line, int kind) {
        return of(LineCase.of(line, kind));
    }

    private static HandCalculation of(LineCase lineCase) {
        Line line = lineCase.line();
        boolean isOneStrip = lineCase.isOneStrip();
        Sheet sheet = Working.of(lineCase);
        return new HandCalculation(
                lineCase.coil(),
                lineCase.kind(),
                line.coils().size(),
                lineCase.forms().entry().speed(),
                lineCase.joint(),
                lineCase.cycle(),
                lineCase.preparation(),
                lineCase.preparationTime(),
                isOneStrip ? Optional.empty() : Optional.of(lineCase.storage()),
                isOneStrip ? Optional.of(lineCase.standstill()) : Optional.empty(),
                isOneStrip ? Optional.empty() : Optional.of(lineCase.loads().limitingFactor()),
                BendingCheck.of(line),
                emptying(line),
                sheet.givens(),
                sheet.steps());
    }

    /**
     * What leads to numbers of the calculation.
     *
     * @param results the numbers (SI), each as a step gives it or as it is given
     */
    public Derivation leadingTo(double... results) {
        Set<String> wanted = new HashSet<>();
        List<Step> leading = new ArrayList<>();
        for (int i = steps.size() - 1; i >= 0; i--) {
            Step step = steps.get(i);
            Term result = step.result();
            if (wanted.contains(result.symbol())
                    || Arrays.stream(results).anyMatch(value -> isSame(value, result.value()))) {
                leading.add(0, step);
                step.terms().forEach(term -> wanted.add(term.symbol()));
            }
        }
        return new Derivation(
                givens.stream().filter(given -> wanted.contains(given.symbol())).toList(), leading);
    }

    /** The same number, though it may have been worked out in another order. */
    private static boolean isSame(double one, double other) {
        return one == other || Math.abs(one - other) <= ROUNDING * Math.abs(one);
    }

    private static Optional<Margin> emptying(Line line) {
        double limit = line.emptyingRateLimit();
        return limit < Double.POSITIVE_INFINITY
                ? Optional.of(new Margin(Kind.SPEED, limit, line.fastestRatedSpeed()))
                : Optional.empty();
    }
}
