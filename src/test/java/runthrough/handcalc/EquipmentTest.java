package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.Distribution;
import runthrough.plant.StorageForm;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/** What the equipment must do, against worked examples. */
class EquipmentTest {
    private static final double AT_ONCE = Double.POSITIVE_INFINITY;

    /** Wound from 1 m to 2 m; with a density of 4000/(3 pi) kg/m3 and a width of 1 m it weighs 1000 kg. */
    private static Coil tonne(String name, double width) {
        return new Coil(name, new Coil.Strip(0.001, width, 4000 / (3 * Math.PI)), new CoilSize.ByDiameters(2, 1, 1));
    }

    /**
     * J = 1000 (1^2 + 0.5^2)/2 = 625 kg m2. With 0.4 m/s2 at a radius of 1 m: M = 625 x 0.4/1 = 250 N m, F = 250/1 = 250 N, and
     * at 2.5 m/s P = 250 x 2.5 = 625 W.
     */
    @Test
    void fullCoilTakesTorqueForceAndPowerToSpeedUp() {
        CoilDrive drive = CoilDrive.of(line().coils(tonne("coil", 1)).build()).orElseThrow();

        assertThat(drive.mass()).isCloseTo(1000, within(1e-9));
        assertThat(drive.inertia()).isCloseTo(625, within(1e-9));
        assertThat(drive.torque()).isCloseTo(250, within(1e-9));
        assertThat(drive.force()).isCloseTo(250, within(1e-9));
        assertThat(drive.power()).isCloseTo(625, within(1e-9));
    }

    /** The same coil given by its length and inner diameter: pi (2^2 - 1^2)/(4 x 0.001) = 750 pi m. */
    @Test
    void innerDiameterBesideALengthGivesTheDriveOfTheSameCoil() {
        Coil byLength = new Coil(
                        "coil",
                        new Coil.Strip(0.001, 1, 4000 / (3 * Math.PI)),
                        new CoilSize.ByLength(Distribution.constant(750 * Math.PI)))
                .withInnerDiameter(1);

        CoilDrive drive = CoilDrive.of(line().coils(byLength).build()).orElseThrow();

        assertThat(drive.outer()).isCloseTo(2, within(1e-12));
        assertThat(drive.inertia()).isCloseTo(625, within(1e-9));
        assertThat(drive.power()).isCloseTo(625, within(1e-9));
    }

    /**
     * From 0.6 m to 1.6 m, 1 m wide, of 1000/(pi (0.8^2 - 0.3^2)) kg/m3: 1000 kg, J = 1000 (0.64 + 0.09)/2 = 365 kg m2. With 0.4
     * m/s2 at 0.8 m: M = 365 x 0.4/0.8 = 182.5 N m, F = 182.5/0.8 = 228.125 N, and at 2.5 m/s P = 570.3125 W.
     */
    @Test
    void atAnotherRadiusTorqueAndForceDiffer() {
        Coil coil = new Coil(
                "coil",
                new Coil.Strip(0.001, 1, 1000 / (Math.PI * (0.64 - 0.09))),
                new CoilSize.ByDiameters(1.6, 0.6, 1));

        CoilDrive drive = CoilDrive.of(line().coils(coil).build()).orElseThrow();

        assertThat(drive.inertia()).isCloseTo(365, within(1e-9));
        assertThat(drive.torque()).isCloseTo(182.5, within(1e-9));
        assertThat(drive.force()).isCloseTo(228.125, within(1e-9));
        assertThat(drive.power()).isCloseTo(570.3125, within(1e-9));
    }

    @Test
    void ofCoilsThatTakeTheSameTheFirstIsSaid() {
        assertThat(CoilDrive.of(line().coils(tonne("first", 1), tonne("second", 1))
                                .build())
                        .orElseThrow()
                        .coil()
                        .name())
                .isEqualTo("first");
    }

    /** A thin ring of 1000 kg, all of it at 1 m, is like the same mass in a straight line: F = m a. */
    @Test
    void ringIsLikeMassOnAStraightLine() {
        Coil ring = new Coil(
                "ring",
                new Coil.Strip(1e-9, 1, 1000 / (Math.PI * (1 - 0.999999 * 0.999999))),
                new CoilSize.ByDiameters(2, 1.999998, 1));

        CoilDrive drive = CoilDrive.of(line().coils(ring).build()).orElseThrow();

        assertThat(drive.force()).isCloseTo(1000 * 0.4, within(1e-3));
    }

    @Test
    void coilThatTakesMostIsSaid() {
        assertThat(CoilDrive.of(line().coils(tonne("light", 0.5), tonne("heavy", 1), tonne("middling", 0.8))
                                .build())
                        .orElseThrow()
                        .coil()
                        .name())
                .isEqualTo("heavy");
    }

    @Test
    void nothingIsSaidWhereSpeedsChangeAtOnceOrCoilsHaveNoDiameters() {
        assertThat(CoilDrive.of(line().coils(tonne("coil", 1))
                        .entry(2, 2.5, AT_ONCE, 0.5)
                        .build()))
                .isEmpty();
        assertThat(CoilDrive.of(line().coils(coil(600)).build())).isEmpty();
    }

    /** Entry 2.5 m/s, process 1.5 m/s, 8 strands: filling moves the carriage at 1/8 m/s, emptying at 1.5/8 m/s. */
    @Test
    void carriageMovesAtTheDifferenceOfSpeedsOverItsStrands() {
        StorageForm strands = new StorageForm.Strands(8, 25, 0.1, 0.2, false);

        CarriageSpeed carriage = CarriageSpeed.of(
                        line().accumulator(Accumulator.of(strands)).build())
                .orElseThrow();

        assertThat(carriage.filling().needed()).isCloseTo(0.125, within(1e-12));
        assertThat(carriage.filling().isEnough()).isFalse();
        assertThat(carriage.emptying().needed()).isCloseTo(0.1875, within(1e-12));
        assertThat(carriage.emptying().isEnough()).isTrue();
    }

    @Test
    void onlyStrandsHaveACarriage() {
        assertThat(CarriageSpeed.of(line().build())).isEmpty();
        assertThat(CarriageSpeed.of(line().withoutAccumulator().build())).isEmpty();
    }

    /** 1.25 m at 0.01 m/s are 125 s, whatever the torch takes to start and stop. */
    @Test
    void toolTravelsAcrossTheWidth() {
        WorkElement weld = new WorkElement(
                "weld", new WorkTime.Travel(0.01, Distribution.constant(6)), new Occurrence.Always(), true);

        List<WeldTravel> travels =
                WeldTravel.of(line().join(timed("clamp", 20), weld).build());

        assertThat(travels).containsExactly(new WeldTravel("weld", 0.002, 1.25, 0.01, 125));
    }

    /** 2 mm lie half way between 1 mm at 0.03 m/s and 3 mm at 0.02 m/s: 1.25 m at 0.025 m/s are 50 s. */
    @Test
    void toolTravelsAtTheSpeedForTheThickness() {
        TravelSpeed table = new TravelSpeed.ByThickness(
                List.of(new TravelSpeed.Row(0.001, 0.03), new TravelSpeed.Row(0.003, 0.02)));
        WorkElement weld = new WorkElement(
                "weld", new WorkTime.Travel(table, Distribution.constant(6)), new Occurrence.Always(), true);

        WeldTravel travel = WeldTravel.of(line().join(weld).build()).get(0);

        assertThat(travel.speed()).isCloseTo(0.025, within(1e-12));
        assertThat(travel.time()).isCloseTo(50, within(1e-9));
    }

    @Test
    void strippedOfAJoinerNothingTravels() {
        assertThat(WeldTravel.of(line().rethread(Distribution.constant(600)).build()))
                .isEmpty();
    }
}
