package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/** What the work depends on of the two coils of a coil change: width, thickness, and what differs. */
class JointsTest {
    private static final Coil THIN = coil(0.001, 1.0, "a");
    private static final Coil THICK = coil(0.003, 1.2, "a");
    private static final Coil OTHER = coil(0.003, 1.2, "b");

    private static final Occurrence WIDTH = new Occurrence.When(Set.of(CoilDifference.WIDTH));
    private static final Occurrence PRODUCT = new Occurrence.When(Set.of(CoilDifference.PRODUCT));
    private static final Occurrence EITHER =
            new Occurrence.When(Set.of(CoilDifference.PRODUCT, CoilDifference.WIDTH, CoilDifference.THICKNESS));

    private static Coil coil(double thickness, double width, String product) {
        return new Coil(
                        "coil",
                        new Coil.Strip(thickness, width, 7850),
                        new CoilSize.ByLength(Distribution.constant(600)))
                .withProduct(product);
    }

    @Test
    void jointHasTheWiderAndTheThickerStripAndAllThatDiffers() {
        Joint joint = Joint.between(THICK, THIN);
        assertThat(joint.width()).isEqualTo(1.2);
        assertThat(joint.thickness()).isEqualTo(0.003);
        assertThat(joint.differences()).containsExactly(CoilDifference.WIDTH, CoilDifference.THICKNESS);
        assertThat(Joint.between(THICK, OTHER).differences()).containsExactly(CoilDifference.PRODUCT);
        assertThat(Joint.between(THIN, THIN)).isEqualTo(Joint.alike(1.0, 0.001));
    }

    @Test
    void elementIsDoneWhenAnyOfWhatItListsDiffers() {
        // Rule CHANGE-12.
        assertThat(WIDTH.share(Joint.between(THIN, THICK))).isEqualTo(1);
        assertThat(WIDTH.share(Joint.between(THICK, OTHER))).isZero();
        assertThat(EITHER.share(Joint.between(THICK, OTHER))).isEqualTo(1);
        assertThat(EITHER.share(Joint.between(OTHER, OTHER))).isZero();
        assertThat(EITHER.isRandom()).isFalse();
        assertThatThrownBy(() -> new Occurrence.When(Set.of())).hasMessageContaining("give at least one");
    }

    @Test
    void shareOfARepeatedCoil_nothingEverDiffers() {
        assertThat(EITHER.share(new CoilSource.Repeated(THIN))).isZero();
    }

    @Test
    void shareOfASchedule_isCountedOverNeighboursRoundTheEnd() {
        // Rule CHANGE-12.
        // thin-thick, thick-thick, thick-other, other-thin: the width differs at 2 of 4, the product at 2 of 4,
        // anything at 3.
        CoilSource schedule = new CoilSource.Schedule(List.of(THIN, THICK, THICK, OTHER));
        assertThat(WIDTH.share(schedule)).isEqualTo(0.5);
        assertThat(PRODUCT.share(schedule)).isEqualTo(0.5);
        assertThat(EITHER.share(schedule)).isEqualTo(0.75);
    }

    @Test
    void shareOfAMix_isExactForIndependentNeighbours() {
        // Weights 1/2, 1/4, 1/4. The width is alike for thin-thin and among the other two: 1 - 1/4 - 1/4 = 1/2.
        // The product is alike for a-a (3/4 each) and b-b: 1 - 9/16 - 1/16 = 3/8.
        CoilSource mix = new CoilSource.Mix(
                List.of(new CoilSource.Share(THIN, 2), new CoilSource.Share(THICK, 1), new CoilSource.Share(OTHER, 1)));
        assertThat(WIDTH.share(mix)).isCloseTo(0.5, within(1e-15));
        assertThat(PRODUCT.share(mix)).isCloseTo(0.375, within(1e-15));
    }

    @Test
    void shareOfWhatDoesNotLookAtTheCoils_isTheSameForAll() {
        CoilSource schedule = new CoilSource.Schedule(List.of(THIN, THICK));
        assertThat(new Occurrence.Always().share(schedule)).isEqualTo(1);
        assertThat(new Occurrence.Every(4).share(schedule)).isEqualTo(0.25);
        assertThat(new Occurrence.Chance(0.1).share(schedule)).isEqualTo(0.1);
    }

    @Test
    void travelSpeed_isLinearBetweenRowsAndThatOfTheNearestRowOutside() {
        // Rule CHANGE-13.
        TravelSpeed table = new TravelSpeed.ByThickness(List.of(
                new TravelSpeed.Row(0.001, 0.06), new TravelSpeed.Row(0.002, 0.04), new TravelSpeed.Row(0.004, 0.01)));
        assertThat(table.at(0.0005)).isEqualTo(0.06);
        assertThat(table.at(0.001)).isEqualTo(0.06);
        // Half way from 0.06 to 0.04, and a quarter of the way from 0.04 to 0.01.
        assertThat(table.at(0.0015)).isCloseTo(0.05, within(1e-15));
        assertThat(table.at(0.002)).isEqualTo(0.04);
        assertThat(table.at(0.0025)).isCloseTo(0.0325, within(1e-15));
        assertThat(table.at(0.004)).isEqualTo(0.01);
        assertThat(table.at(0.006)).isEqualTo(0.01);
        assertThat(table.slower(2).at(0.0015)).isCloseTo(0.025, within(1e-15));
    }

    @Test
    void tableOfTravelSpeeds_mustRiseInThickness() {
        // Rule CHECK-31.
        assertThatThrownBy(() -> new TravelSpeed.ByThickness(
                        List.of(new TravelSpeed.Row(0.002, 0.06), new TravelSpeed.Row(0.002, 0.04))))
                .hasMessage("thickness = 0.002 m in a table of travel speeds; must be more than in the row before,"
                        + " 0.002 m");
        assertThatThrownBy(() -> new TravelSpeed.ByThickness(List.of())).hasMessageContaining("give at least one");
    }

    @Test
    void weldTakesTheSpeedOfTheThickerStripAndTheWayOfTheWider() {
        // Rule CHANGE-13.
        // 1.2 m at 0.03 m/s and 6 s: 46 s.
        WorkTime weld = new WorkTime.Travel(
                new TravelSpeed.ByThickness(
                        List.of(new TravelSpeed.Row(0.001, 0.06), new TravelSpeed.Row(0.003, 0.03))),
                Distribution.constant(6));
        Joint joint = Joint.between(THIN, THICK);
        assertThat(weld.duration(6, joint.width(), joint.thickness())).isCloseTo(46, within(1e-12));
    }

    @Test
    void meanWork_isTheMeanOverJointsOfTimeAndOccurrenceTogether() {
        // Thin or thick, one as likely as the other. Set-up when the width differs: half of all. Weld of 1 m at 0.05
        // m/s at
        // thin-thin (20 s), else of 1.2 m at 0.03 m/s (40 s): 20/4 + 40 * 3/4 = 35 s. Weld only when the width differs:
        // 40 s * 1/2 = 20 s, which is not half of 35 s.
        CoilSource mix = new CoilSource.Mix(List.of(new CoilSource.Share(THIN, 1), new CoilSource.Share(THICK, 1)));
        WorkTime weld = new WorkTime.Travel(
                new TravelSpeed.ByThickness(
                        List.of(new TravelSpeed.Row(0.001, 0.05), new TravelSpeed.Row(0.003, 0.03))),
                Distribution.constant(0));
        assertThat(mean(mix, new WorkElement("weld", weld, new Occurrence.Always(), true)))
                .isCloseTo(35, within(1e-12));
        assertThat(mean(mix, new WorkElement("weld", weld, WIDTH, true))).isCloseTo(20, within(1e-12));
        WorkTime threeMinutes = new WorkTime.Timed(Distribution.constant(180));
        assertThat(mean(mix, new WorkElement("set up", threeMinutes, WIDTH, true)))
                .isCloseTo(90, within(1e-12));
    }

    private static double mean(CoilSource coils, WorkElement element) {
        return coils.mean(kind -> MeanWork.total(List.of(element), coils.joints(kind)));
    }
}
