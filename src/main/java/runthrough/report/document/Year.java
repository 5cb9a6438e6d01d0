package runthrough.report.document;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runthrough.plant.handover.Money;
import runthrough.report.Texts;
import runthrough.study.TotalsEstimates;
import runthrough.study.Verdict;
import runthrough.study.benefit.Benefit;

/**
 * What is known of a year of a line, for the page to decide on and for the chapter on what it is worth.
 *
 * @param verdict on the line as written
 * @param time that is scheduled in it (s)
 * @param benefits of the alternatives over the one called today; none where there is nothing to compare
 * @param money what counts in money, where the user said so
 * @param texts for its numbers
 */
record Year(Verdict verdict, double time, List<Benefit> benefits, Optional<Money> money, Texts texts) {
    Year {
        benefits = List.copyOf(benefits);
    }

    /** How many shifts of 8 h it has. */
    double shifts() {
        return time / TotalsEstimates.SHIFT;
    }

    /** Those alternatives that the user gave a price. */
    List<Benefit> priced() {
        return benefits.stream().filter(benefit -> benefit.worth().isPresent()).toList();
    }

    /** Of these, the one of the greatest net present value. */
    Optional<Benefit> best() {
        return priced().stream()
                .max(Comparator.comparingDouble(
                        benefit -> benefit.worth().orElseThrow().presentValue().mean()));
    }
}
