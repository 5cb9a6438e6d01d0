package runthrough.study.benefit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.plant.Alternative;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Offer;
import runthrough.plant.handover.Money.Output;
import runthrough.plant.handover.Money.Uncertain;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.StudyListener;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonStudy;

/**
 * Rethreading for 600 s against joining for 60 s with an accumulator, nothing random, over a year of 1000 h: coils of
 * 600 m at 1.5 m/s take 400 s, so of 10 changes rethreading loses 6000 s in 10 400 s and joining nothing.
 */
class BenefitTest {
    private static final double HOURS_LOST = 1000 * 6000 / 10_400.0;

    private static Alternative alternative(String name, Line line) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(10), 0, 2, 1, 0.9, 1000 * 3600.0);
        return new Alternative(
                name, new SimulationRequest("Line (invented)", List.of(), line, plan, UnitSystem.METRIC));
    }

    private static Comparison comparison() {
        Line rethread = new PlainLine().rethread(Distribution.constant(600)).build();
        Line join = new PlainLine().join(60).build();
        return new ComparisonStudy(alternative("rethread", rethread), List.of(alternative("join", join)), 0.9)
                .run(1, StudyListener.NONE);
    }

    private static Money money(Uncertain uncertain, double price) {
        return new Money(
                "EUR",
                new Output.LineHour(900),
                OptionalDouble.of(0.32),
                OptionalDouble.of(45),
                0.08,
                uncertain,
                Money.Prices.of(Map.of("join", new Offer(price, 9000, 10))));
    }

    private static Benefit benefit(Optional<Money> money) {
        List<Benefit> all = Benefit.of(comparison(), money);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    @Test
    void hoursNoLongerLostAreThoseOfTheHandCalculation() {
        Benefit join = benefit(Optional.empty());

        assertThat(join.name()).isEqualTo("join");
        assertThat(join.time().mean() / 3600).isCloseTo(HOURS_LOST, within(1e-6));
        assertThat(join.time().low()).isEqualTo(join.time().mean());
        assertThat(join.mass().mean()).isPositive();
        assertThat(join.worth()).isEmpty();
    }

    @Test
    void withoutAPriceThereIsNoWorthInMoney() {
        Money other = new Money(
                "EUR",
                new Output.LineHour(900),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0.08,
                Uncertain.OUTPUT,
                Money.Prices.of(Map.of("another", new Offer(1, 0, 1))));

        assertThat(benefit(Optional.of(other)).worth()).isEmpty();
    }

    /** Price over yearly gain; -ln(1 - C d / S) / ln(1 + d); and at the internal rate nothing is left. */
    @Test
    void paybacksAndRateAreThoseOfTheirFormulas() {
        Worth worth =
                benefit(Optional.of(money(Uncertain.PRICE, 2_000_000))).worth().orElseThrow();
        double yearly = worth.yearly().mean();

        // What is made in those hours at the rated speed, at 900 an hour, less upkeep; no scrap, and as many people
        // paid for.
        assertThat(yearly).isCloseTo(900 * HOURS_LOST - 9000, within(1e-3));
        assertThat(worth.simplePayback(yearly).orElseThrow()).isCloseTo(2_000_000 / yearly, within(1e-9));
        assertThat(worth.discountedPayback(yearly).orElseThrow())
                .isCloseTo(-Math.log(1 - 2_000_000 * 0.08 / yearly) / Math.log(1.08), within(1e-9));
        double rate = worth.internalRate(yearly).orElseThrow();
        assertThat(worth.flow().presentValue(rate)).isCloseTo(0, within(1e-3));
        assertThat(worth.simplePayback(-1)).isEmpty();
        assertThat(worth.discountedPayback(1)).isEmpty();
    }

    /**
     * A second man on a line that loses no strip either way gains nothing and costs 1000 h at 45 a year, though he would work at the
     * joint for minutes only (rule REPORT-18): 45 000, and with the upkeep 54 000. With two shifts of 8 h, of which one has the second man, half.
     */
    @Test
    void aSecondManIsPaidForAllHours() {
        Line one = new PlainLine().crew(1).join(60).build();
        Line two = new PlainLine().crew(2).join(60).build();
        Line half = two.with(two.change()
                .withShifts(new Shifts(List.of(
                        new Shifts.Shift("early", 8 * 3600, 2, List.of()),
                        new Shifts.Shift("late", 8 * 3600, 1, List.of())))));

        assertThat(yearly(one, two)).isCloseTo(-54_000, within(1e-6));
        assertThat(yearly(one, half)).isCloseTo(-22_500 - 9000, within(1e-6));
        assertThat(yearly(two, one)).isCloseTo(45_000 - 9000, within(1e-6));
    }

    private static double yearly(Line today, Line other) {
        Comparison comparison = new ComparisonStudy(
                        alternative("today", today), List.of(alternative("join", other)), 0.9)
                .run(1, StudyListener.NONE);
        return Benefit.of(comparison, Optional.of(money(Uncertain.LABOUR, 0)))
                .get(0)
                .worth()
                .orElseThrow()
                .yearly()
                .mean();
    }

    /** A sum of gains has the interval of the sums of the replications: of output alone that of the output. */
    @Test
    void aSumIsAsUncertainAsItsReplications() {
        Line today =
                new PlainLine().capacity(75).join(Distribution.uniform(20, 70)).build();
        Line larger =
                new PlainLine().capacity(90).join(Distribution.uniform(20, 70)).build();
        Benefit gain = Benefit.of(
                        new ComparisonStudy(alternative("today", today), List.of(alternative("join", larger)), 0.9)
                                .run(1, StudyListener.NONE),
                        Optional.empty())
                .get(0);
        Gain mass = gain.sum().of(1, 0);
        Gain scrap = gain.sum().of(0, 1);
        Gain both = gain.sum().of(2, 1);

        assertThat(mass.mean()).isCloseTo(gain.mass().mean(), within(1e-6));
        assertThat(mass.high()).isCloseTo(gain.mass().high(), within(1e-6));
        assertThat(both.mean()).isCloseTo(2 * mass.mean() + scrap.mean(), within(1e-6));
        assertThat(both.halfWidth())
                .isPositive()
                .isLessThanOrEqualTo((2 * mass.halfWidth() + scrap.halfWidth()) * 1.000001);
    }

    /**
     * Money goes by good output (rule REPORT-18): a process that is a fifth faster, and loses no strip either way, makes in
     * 1000 h as much as in 1200 h today: 200 h at 900, less the upkeep.
     */
    @Test
    void moreGoodOutputIsWorthTheHoursThatTodaysLineTakesForIt() {
        Line today = new PlainLine().join(10).build();
        Line faster = today.withRatedSpeedsTimes(1.2);

        assertThat(yearly(today, faster)).isCloseTo(200 * 900 - 9000, within(1e-3));
    }

    @Test
    void whatCostsNothingIsPaidBackAtOnce() {
        Worth worth = benefit(Optional.of(money(Uncertain.PRICE, 0))).worth().orElseThrow();

        assertThat(worth.simplePayback(100)).hasValue(0);
        assertThat(worth.discountedPayback(100)).hasValue(0);
        // What costs more every year never is.
        assertThat(worth.simplePayback(-100)).isEmpty();
        assertThat(worth.discountedPayback(-100)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"OUTPUT,900", "SCRAP,320", "LABOUR,45", "PRICE,2000000", "UPKEEP,9000"})
    void theLeastCertainInputIsSaidAsItWasGiven(Uncertain uncertain, double given) {
        Worth worth = benefit(Optional.of(money(uncertain, 2_000_000))).worth().orElseThrow();

        assertThat(worth.leastCertainValue().orElseThrow()).isCloseTo(given, within(1e-9));
    }
}
