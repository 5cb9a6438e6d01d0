package runthrough.report.document;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Alternative;
import runthrough.plant.handover.Money;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.TotalsEstimates;
import runthrough.study.Verdict;
import runthrough.study.benefit.Benefit;
import runthrough.study.statistics.Estimate;

/**
 * What is known of a year of a line, for the page to decide on and for the chapter on what it is worth.
 *
 * @param line what it is called beside its alternatives
 * @param verdict on it
 * @param time that is scheduled in it (s)
 * @param benefits of the alternatives over the one called today; none where there is nothing to compare
 * @param money what counts in money, where the user said so
 * @param texts for its numbers
 */
record Year(String line, Verdict verdict, double time, List<Benefit> benefits, Optional<Money> money, Texts texts) {
    Year {
        benefits = List.copyOf(benefits);
    }

    /** What is said of the line, behind "the line". */
    String called() {
        return line.equals(Alternative.AS_WRITTEN) ? line : "with \"" + line + "\"";
    }

    /** How many shifts of 8 h it has. */
    double shifts() {
        return time / TotalsEstimates.SHIFT;
    }

    /** Whether entry and process are one strip, so that every coil change stops the process by design. */
    boolean stopsByDesign() {
        return verdict.storage().isEmpty();
    }

    /** Time that starved stops, slowing and coil changes without an accumulator cost in it (s). */
    Value lostTime() {
        return value(Kind.TIME, verdict.stoppages().lostTimePerShift(), shifts());
    }

    /** Good output of it (kg). */
    Value goodOutput() {
        return value(Kind.MASS, verdict.output().massFlow(), time);
    }

    /** {@code estimate}, {@code factor} times in a year. */
    Value value(Kind kind, Estimate estimate, double factor) {
        double mean = estimate.mean() * factor;
        return new Value(
                mean, notation(kind, mean), texts.known(estimate.interval()).map(ends -> ends.times(factor)));
    }

    /** How an amount of a year of such a size (SI) is written. */
    Notation notation(Kind kind, double size) {
        return kind == Kind.TIME ? GainValues.HOURS : texts.notation(kind, size).with(Rounding.AMOUNT);
    }

    /** Those alternatives that the user gave a price. */
    List<Benefit> priced() {
        return benefits.stream().filter(benefit -> benefit.worth().isPresent()).toList();
    }

    /** Of these, the one of the greatest net present value. */
    Optional<Benefit> best() {
        return BestWorth.of(benefits);
    }
}
