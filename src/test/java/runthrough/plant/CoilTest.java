package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static runthrough.report.validation.Topic.GEOMETRY;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.quantity.Unit;

/**
 * Geometry and mass of coils. Densities: carbon steel 7850 kg/m3 (EN 1993-1-2:2005, 3.2.2), stainless 1.4301 7900 kg/m3 (EN
 * 10088-1), aluminium 2700 kg/m3 (EN 1999-1-1, 3.2.5), copper 8960 kg/m3 (pure element, 20 C); clauses from memory.
 */
@RecordsChecks
class CoilTest {

    private static Coil coil(double thickness, double width, double density, CoilSize size) {
        return new Coil("coil", new Coil.Strip(thickness, width, density), size);
    }

    /**
     * The annulus formula against numbers worked out independently, and against the exact length of an Archimedean spiral of
     * pitch t, from which it differs by less than 2e-7 in these cases.
     */
    @ParameterizedTest
    @CsvSource({
        "G01, 1.8, 0.508, 0.0005, 1.25, 7850, 4684.014116, 22980.94425, 18.3847554, 4684.014166",
        "G02, 1.5, 0.61, 0.002, 1.0, 7900, 737.4496055, 11651.70377, 11.65170377, 737.4497487",
        "G03, 1.6, 0.508, 0.0008, 1.5, 2700, 2259.920383, 7322.142042, 4.881428028, 2259.920456",
        "G04, 1.2, 0.4, 0.0003, 0.6, 8960, 3351.032164, 5404.544674, 9.007574456, 3351.03219"
    })
    void lengthAndMassFromDiameters(
            String id,
            double outer,
            double inner,
            double thickness,
            double width,
            double density,
            double length,
            double mass,
            double massPerMillimetre,
            double spiralLength,
            CheckBook book) {
        // Rule COIL-1.
        Coil coil = coil(thickness, width, density, new CoilSize.ByDiameters(outer, inner, 1));

        // Ten digits are printed.
        book.check(GEOMETRY, id, "length from diameters")
                .source(Sources.COIL_GEOMETRY)
                .unit("m")
                .expected(length)
                .relative(1e-9)
                .got(coil.meanLength());
        book.check(GEOMETRY, id, "mass")
                .source(Sources.COIL_GEOMETRY)
                .unit("kg")
                .expected(mass)
                .relative(1e-9)
                .got(coil.meanLength() * coil.massPerMetre());
        book.check(GEOMETRY, id, "mass per millimetre of width")
                .source(Sources.COIL_GEOMETRY)
                .unit("kg/mm")
                .expected(massPerMillimetre)
                .relative(3e-9)
                .got(coil.meanLength() * coil.massPerMetre() / (width * 1000));
        book.check(GEOMETRY, id, "length against the exact spiral")
                .source(Sources.SPIRAL)
                .unit("m")
                .expected(spiralLength)
                .relative(2e-7)
                .got(coil.meanLength());
    }

    @Test
    void lengthFromMass_isThatOfTheDiametersItWindsTo(CheckBook book) {
        // Rule COIL-1.
        // 20 t of 1.5 mm x 1250 mm steel: 1358.81104 m, wound on 508 mm to 1689.142364 mm.
        Coil byMass = coil(0.0015, 1.25, 7850, new CoilSize.ByMass(Distribution.constant(20000)));
        Coil byDiameters = coil(0.0015, 1.25, 7850, new CoilSize.ByDiameters(1.689142364, 0.508, 1));
        // Nine digits are printed.
        book.check(GEOMETRY, "G07", "length from mass")
                .source(Sources.COIL_GEOMETRY)
                .unit("m")
                .expected(1358.81104)
                .within(5e-6, "half of the last digit printed")
                .got(byMass.meanLength());
        book.check(GEOMETRY, "G07", "length from the diameters it winds to")
                .source(Sources.COIL_GEOMETRY)
                .unit("m")
                .expected(1358.81104)
                .within(5e-6, "half of the last digit printed")
                .got(byDiameters.meanLength());
    }

    /**
     * Manufacturers' standard gauge for sheet steel: thickness in inches is weight in lb/ft2 over 41.82, a conventional
     * number that makes 501.84 lb/ft3 and is not the density of steel. Published inches are rounded to four decimals.
     */
    @ParameterizedTest
    @CsvSource({
        "GA1, 10, 5.625, 0.1345, 3.41643",
        "GA2, 12, 4.375, 0.1046, 2.65722",
        "GA3, 16, 2.5, 0.0598, 1.51841",
        "GA4, 18, 2.0, 0.0478, 1.21473",
        "GA5, 24, 1.0, 0.0239, 0.607365"
    })
    void gaugeIsTheThicknessOfItsWeight(
            String id, int gauge, double poundsPerSquareFoot, double inches, double millimetres, CheckBook book) {
        double foot = 0.3048;
        double pound = 0.45359237;
        double conventionalDensity = 501.84 * pound / (foot * foot * foot);
        Coil oneFootWide =
                coil(millimetres / 1000, foot, conventionalDensity, new CoilSize.ByLength(Distribution.constant(1)));
        double weight = oneFootWide.massPerMetre() * foot / pound;
        book.check(GEOMETRY, id, "weight of a square foot of gauge " + gauge)
                .source(Sources.GAUGE_WEIGHT)
                .unit("lb/ft2")
                .expected(poundsPerSquareFoot)
                .relative(2e-6)
                .got(weight);
        // Weight is proportional to thickness.
        double thickness = millimetres / 1000 * poundsPerSquareFoot / weight;
        book.check(GEOMETRY, id, "thickness of gauge " + gauge)
                .source(Sources.GAUGES)
                .unit("in")
                .expected(inches)
                .within(5e-5, "half of the last digit printed")
                .got(Unit.INCH.fromSi(thickness));
    }

    @Test
    void windingFactorIsTheShareThatIsStrip() {
        // Rule COIL-1.
        Coil tight = coil(0.002, 1, 7850, new CoilSize.ByDiameters(1.5, 0.5, 1));
        Coil loose = coil(0.002, 1, 7850, new CoilSize.ByDiameters(1.5, 0.5, 0.9));
        assertThat(loose.meanLength()).isCloseTo(0.9 * tight.meanLength(), withinPercentage(1e-10));
    }

    @Test
    void usableLengthIsWhatTheCropsLeave() {
        // Rule COIL-2.
        Coil coil = SoundLine.coil(Distribution.uniform(400, 600), 0.4, 0.3);
        assertThat(coil.usableLength(0.25)).isCloseTo(450 - 0.7, within(1e-12));
        assertThat(coil.meanUsableLength()).isCloseTo(500 - 0.7, within(1e-12));
        assertThat(coil.usableLength(Double.MIN_VALUE)).isCloseTo(400 - 0.7, within(1e-12));
    }

    @Test
    void randomMass_makesRandomLength() {
        // Rule COIL-6.
        // 2 mm x 1 m x 7850 kg/m3 weigh 15.7 kg/m.
        Coil coil = coil(0.002, 1, 7850, new CoilSize.ByMass(Distribution.uniform(15700, 31400)));
        assertThat(coil.size().isConstant()).isFalse();
        assertThat(coil.length(0.5)).isCloseTo(1500, within(1e-9));
        assertThat(coil.meanLength()).isCloseTo(1500, within(1e-9));
        assertThat(coil.usableLength(Double.MIN_VALUE)).isCloseTo(1000, within(1e-9));
    }

    @Test
    void diameters_areAlwaysAlike() {
        Coil coil = coil(0.002, 1, 7850, new CoilSize.ByDiameters(1.5, 0.5, 1));
        assertThat(coil.size().isConstant()).isTrue();
        assertThat(coil.length(0.1)).isEqualTo(coil.length(0.9)).isEqualTo(coil.meanLength());
        assertThat(coil.usableLength(Double.MIN_VALUE)).isEqualTo(coil.meanLength());
    }

    @Test
    void whatNoCoilCanBe_isRefusedWithItsValue() {
        // Rule CHECK-1.
        assertThatThrownBy(() -> coil(Double.NaN, 1, 7850, new CoilSize.ByLength(Distribution.constant(1))))
                .hasMessage("coil thickness = NaN m; must be more than 0 and finite");
        assertThatThrownBy(() -> coil(0.001, 0, 7850, new CoilSize.ByLength(Distribution.constant(1))))
                .hasMessage("coil width = 0 m; must be more than 0 and finite");
        assertThatThrownBy(() -> SoundLine.coil(Distribution.constant(1), -0.1, 0))
                .hasMessage("coil head crop = -0.1 m; must be 0 or more and finite");
        assertThatThrownBy(() -> SoundLine.atSpeed(SoundLine.coil(1), Double.POSITIVE_INFINITY))
                .hasMessage("coil process speed = Infinity m/s; must be more than 0 and finite");
        assertThatThrownBy(() -> new CoilSize.ByDiameters(0.5, 0.5, 1))
                .hasMessage("coil outer diameter = 0.5 m; must be more than the inner diameter, 0.5 m");
        assertThatThrownBy(() -> new CoilSize.ByDiameters(1.5, 0.5, 1.01))
                .hasMessage("coil winding factor = 1.01; must be more than 0 and at most 1");
    }
}
