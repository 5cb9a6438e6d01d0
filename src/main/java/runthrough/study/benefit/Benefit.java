package runthrough.study.benefit;

import java.util.List;
import java.util.Optional;
import runthrough.plant.handover.Money;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;

/**
 * What an alternative gains in a year over the line called today.
 *
 * @param name of the alternative
 * @param time lost to starved stops and slowing that is saved (s)
 * @param mass more put out (kg)
 * @param scrap less made (kg)
 * @param crew people's time less taken at the joint (s)
 * @param worth in money; empty where the user gave none, or no price for this alternative
 */
public record Benefit(String name, Gain time, Gain mass, Gain scrap, Gain crew, Optional<Worth> worth) {

    /** That of every alternative, in their order. */
    public static List<Benefit> of(Comparison comparison, Optional<Money> money) {
        return comparison.others().stream().map(other -> of(other, money)).toList();
    }

    private static Benefit of(Compared other, Optional<Money> money) {
        String name = other.alternative().name();
        Gain time = Gain.ofLess(difference(other, ComparisonMeasure.LOST_TIME));
        Gain mass = Gain.ofMore(difference(other, ComparisonMeasure.OUTPUT_MASS));
        Gain scrap = Gain.ofLess(difference(other, ComparisonMeasure.SCRAP_MASS));
        Gain crew = Gain.ofLess(difference(other, ComparisonMeasure.CREW_TIME));
        Benefit plain = new Benefit(name, time, mass, scrap, crew, Optional.empty());
        return money.flatMap(values ->
                        Optional.ofNullable(values.offers().get(name)).map(offer -> Worth.of(plain, values, offer)))
                .map(worth -> new Benefit(name, time, mass, scrap, crew, Optional.of(worth)))
                .orElse(plain);
    }

    private static Difference difference(Compared other, ComparisonMeasure measure) {
        return other.perYear(measure).difference().orElseThrow();
    }
}
