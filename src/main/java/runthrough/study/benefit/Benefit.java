package runthrough.study.benefit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import runthrough.plant.handover.Money;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;

/**
 * What an alternative gains in a year over the line called today.
 *
 * <p>People are paid for all scheduled hours, whatever they do in them: the crew that an alternative saves or needs
 * more counts with all of these, and not with its work at the joint. Rule REPORT-18.
 *
 * @param name of the alternative
 * @param time lost to starved stops and slowing that is saved (s)
 * @param mass more put out (kg)
 * @param scrap less made (kg)
 * @param paid people's time less to be paid for (s); negative for more
 * @param sum of output and scrap at given values
 * @param worth in money; empty where the user gave none, or no price for this alternative
 */
public record Benefit(
        String name, Gain time, Gain mass, Gain scrap, double paid, YearlySum sum, Optional<Worth> worth) {

    private static final double HOUR = 3600;

    /** That of every alternative, in their order. */
    public static List<Benefit> of(Comparison comparison, Optional<Money> money) {
        return comparison.others().stream()
                .map(other -> of(other, comparison, money))
                .toList();
    }

    private static Benefit of(Compared other, Comparison comparison, Optional<Money> money) {
        String name = other.alternative().name();
        YearlySum sum = (kilogram, scrap) -> Gain.ofMore(other.against()
                .orElseThrow()
                .ofYear(Map.of(ComparisonMeasure.OUTPUT_MASS, kilogram, ComparisonMeasure.SCRAP_MASS, -scrap)));
        double paid = (paidPeople(comparison.today()) - paidPeople(other)) * comparison.yearlyTime();
        Optional<Worth> worth = money.flatMap(values -> Optional.ofNullable(
                        values.offers().get(name))
                .map(offer -> new Worth(
                        values,
                        offer,
                        sum,
                        HOUR * comparison.today().alternative().request().line().ratedMassFlow(),
                        paid)));
        return new Benefit(
                name,
                Gain.ofLess(difference(other, ComparisonMeasure.LOST_TIME)),
                Gain.ofMore(difference(other, ComparisonMeasure.OUTPUT_MASS)),
                Gain.ofLess(difference(other, ComparisonMeasure.SCRAP_MASS)),
                paid,
                sum,
                worth);
    }

    private static double paidPeople(Compared one) {
        return one.alternative().request().line().change().paidPeople();
    }

    private static Difference difference(Compared other, ComparisonMeasure measure) {
        return other.perYear(measure).difference().orElseThrow();
    }
}
