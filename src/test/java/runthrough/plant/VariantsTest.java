package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.StorageForm.Adjustable;
import runthrough.plant.StorageForm.Measure;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.check.LineCheck;

/** The same line with one thing changed. */
class VariantsTest {
    private static final double ENDLESS = Double.POSITIVE_INFINITY;

    @Test
    void strandsAreResizedByTheirStroke() {
        StorageForm resized = new StorageForm.Strands(8, 9, 0.2, 0.3, true).resizedTo(100);

        // 100 m over 8 strands; nothing else moves.
        assertThat(resized).isEqualTo(new StorageForm.Strands(8, 12.5, 0.2, 0.3, true));
        assertThat(resized.adjustable()).contains(new Adjustable(Measure.STROKE, 12.5));
        assertThat(resized.fillRateLimit()).isCloseTo(1.6, within(1e-15));
    }

    @Test
    void aSpiralIsResizedByItsFullDiameter() {
        StorageForm resized = new StorageForm.Spiral(10, 3, 2).resizedTo(10 * Math.PI * 0.7);

        assertThat(resized.adjustable().orElseThrow().measure()).isEqualTo(Measure.FULL_DIAMETER);
        assertThat(resized.adjustable().orElseThrow().metres()).isCloseTo(2.7, within(1e-12));
        assertThat(resized.capacity()).isCloseTo(10 * Math.PI * 0.7, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.01, 1, 10, 1000, 1e6})
    void aLoopIsResizedByItsGreatestSag(double capacity) {
        StorageForm resized = new StorageForm.FreeLoop(2, 6, 4, 0.5).resizedTo(capacity);

        // The arc at the least sag is some 6 m, to 15 digits.
        assertThat(resized.capacity()).isCloseTo(capacity, within(1e-12 * capacity + 1e-13));
        assertThat(resized.adjustable().orElseThrow().measure()).isEqualTo(Measure.GREATEST_SAG);
    }

    @Test
    void aCapacityGivenDirectlyIsReplaced() {
        assertThat(new StorageForm.Direct(20).resizedTo(30)).isEqualTo(new StorageForm.Direct(30));
        assertThat(new StorageForm.Direct(20).adjustable()).contains(new Adjustable(Measure.CAPACITY, 20));
    }

    @Test
    void withoutAnAccumulatorThereIsNothingToResize() {
        StorageForm none = new StorageForm.None();

        assertThat(none.adjustable()).isEmpty();
        assertThatThrownBy(() -> none.resizedTo(30))
                .isInstanceOf(UnsupportedOperationException.class)
                .hasMessage("there is no accumulator to resize to 30.0 m");
    }

    @Test
    void aResizedAccumulatorKeepsItsReserveAndLimits() {
        Accumulator accumulator = new Accumulator(new StorageForm.Direct(20), 0.5, 3, 1);

        assertThat(accumulator.resizedTo(50)).isEqualTo(new Accumulator(new StorageForm.Direct(50), 0.5, 3, 1));
    }

    @Test
    void fillingFasterRaisesBothLimits() {
        StorageForm strands = new StorageForm.Strands(8, 9, 0.2, 0.3, false);

        assertThat(new Accumulator(strands, 2, 0, ENDLESS).fillingTimesAsFast(3))
                .isEqualTo(new Accumulator(new StorageForm.Strands(8, 9, 0.2 * 3, 0.3, false), 6, 0, ENDLESS));
        assertThat(new StorageForm.Direct(20).fillingTimesAsFast(3)).isEqualTo(new StorageForm.Direct(20));
    }

    @ParameterizedTest
    @CsvSource({"4, 0.1", "4, 1", "4, 8", "4, 40", "1, 30", "12, 0.003", "12, 1e-5", "0.5, 5000"})
    void sagOfAnArcIsTheSagThatGaveIt(double span, double sag) {
        // d sag / d arc = 3 span / (16 sag) for a shallow loop: of 16 digits of the arc as many are lost.
        double lost = 1 + 3 * span * span / (16 * sag * sag);
        assertThat(Catenary.sag(span, Catenary.arc(span, sag))).isCloseTo(sag, within(1e-14 * lost * sag));
    }

    @Test
    void stripNoLongerThanTheSpanDoesNotSag() {
        assertThat(Catenary.sag(4, 4)).isZero();
        assertThat(Catenary.sag(4, 3.999)).isZero();
    }

    @Test
    void aScaledDistributionScalesAllThatItSays() {
        Distribution distribution = Distribution.lognormal(20, 6);
        Distribution scaled = distribution.scaled(1.5);

        assertThat(scaled.mean()).isCloseTo(30, within(1e-12));
        assertThat(scaled.sd()).isCloseTo(9, within(1e-12));
        assertThat(scaled.lowest()).isZero();
        assertThat(scaled.highest()).isEqualTo(ENDLESS);
        assertThat(scaled.quantile(0.9)).isEqualTo(1.5 * distribution.quantile(0.9));
        assertThat(Distribution.constant(4).scaled(2).isConstant()).isTrue();
        assertThat(distribution.scaled(1)).isSameAs(distribution);
        assertThatThrownBy(() -> distribution.scaled(0)).hasMessage("factor = 0; must be more than 0 and finite");
    }

    @Test
    void coilsOfEachSizeBecomeLongerByTheFactor_theirCropsAndMandrelStay() {
        for (CoilSize size : List.of(
                new CoilSize.ByLength(Distribution.uniform(500, 700)),
                new CoilSize.ByMass(Distribution.uniform(2000, 3000)),
                new CoilSize.ByDiameters(1.45, 0.508, 0.98))) {
            Coil coil = new Coil("strip", new Coil.Strip(0.002, 0.25, 8000), size)
                    .withCrops(0.4, 0.3)
                    .withProcessSpeed(2);
            Coil longer = coil.withLengthTimes(1.7);

            assertThat(longer.length(0.3)).isCloseTo(1.7 * coil.length(0.3), within(1e-9));
            assertThat(longer.headCrop() + longer.tailCrop()).isEqualTo(0.7);
            assertThat(longer.withSpeedTimes(1.1).processSpeed().orElseThrow()).isCloseTo(2.2, within(1e-15));
        }
        assertThat(new CoilSize.ByDiameters(1.45, 0.508, 1).scaled(1.7).inner()).isEqualTo(0.508);
    }

    @Test
    void everySupplyKeepsItsOrderAndWeights() {
        Coil coil =
                new Coil("strip", new Coil.Strip(0.002, 0.25, 8000), new CoilSize.ByLength(Distribution.constant(100)));
        Coil longer = coil.withLengthTimes(2);

        assertThat(new CoilSource.Repeated(coil).withEach(c -> longer)).isEqualTo(new CoilSource.Repeated(longer));
        assertThat(new CoilSource.Schedule(List.of(coil, coil)).withEach(c -> longer))
                .isEqualTo(new CoilSource.Schedule(List.of(longer, longer)));
        assertThat(new CoilSource.Mix(List.of(new CoilSource.Share(coil, 3))).withEach(c -> longer))
                .isEqualTo(new CoilSource.Mix(List.of(new CoilSource.Share(longer, 3))));
        assertThat(coil.withSpeedTimes(2)).isEqualTo(coil);
    }

    @Test
    void preparationIsScaled_andTheCrewChanged() {
        WorkElement shear = element(new WorkTime.Timed(Distribution.constant(8)));
        CoilChange change =
                new CoilChange(2, List.of(shear), List.of(shear), List.of(shear), new CoilChange.Reject.Never());

        CoilChange quicker = change.withPreparationTimes(0.5);
        assertThat(quicker.prepare().get(0).meanTime(Joint.alike(0.24, 0.002))).isEqualTo(4);
        assertThat(quicker.join()).isEqualTo(change.join());
        assertThat(change.withCrew(1).crew()).isEqualTo(1);
    }

    @Test
    void aJoinLongerBySomeSecondsHasOneMoreElement_alsoWhenItIsMadeAgain() {
        CoilChange change = new CoilChange(2, List.of(), List.of(), List.of(), new CoilChange.Reject.Chance(0.1));

        WorkElement added = change.withJoinLongerBy(12).join().get(0);
        assertThat(added.meanTime(Joint.alike(1, 0.002))).isEqualTo(12);
        assertThat(added.redo()).isTrue();
    }

    /** Rule LEVER-4. */
    @Test
    void secondsMoreAndSecondsOffGoAgainstEachOther() {
        WorkElement weld = element(new WorkTime.Travel(0.01, Distribution.constant(6)));
        CoilChange change = new CoilChange(2, List.of(), List.of(), List.of(weld), new CoilChange.Reject.Never());

        assertThat(change.withEveryPassLongerBy(5).added()).isEqualTo(5);
        assertThat(change.withEveryPassLongerBy(5).withEveryPassLongerBy(-5)).isEqualTo(change);
        assertThat(change.withEveryPassLongerBy(-5).withEveryPassLongerBy(5)).isEqualTo(change);
        assertThat(change.withEveryPassLongerBy(-5).withEveryPassLongerBy(8)).isEqualTo(change.withJoinLongerBy(3));
        assertThat(change.withEveryPassLongerBy(5).withEveryPassLongerBy(-8)).isEqualTo(change.withJoinShorterBy(3));
    }

    private static WorkElement element(WorkTime time) {
        return new WorkElement("work", time, new Occurrence.Always(), true);
    }

    @Test
    void ratedSpeedsAreScaledTogether() {
        Line line = SoundLine.line().build();
        double before = line.fastestRatedSpeed();

        assertThat(line.withRatedSpeedsTimes(1.2).fastestRatedSpeed()).isCloseTo(1.2 * before, within(1e-12));
        assertThat(LineCheck.accepts(line)).isTrue();
        assertThat(LineCheck.accepts(line.withRatedSpeedsTimes(100))).isFalse();
    }
}
