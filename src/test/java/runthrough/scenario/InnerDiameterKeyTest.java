package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.Distribution;
import runthrough.scenario.source.Problems;

/** An inner diameter beside a length or a mass, in every place where a coil is described. */
class InnerDiameterKeyTest {

    private static final String STRIP = "thickness: 2 mm, width: 240 mm, density: 7850 kg/m3";

    @TempDir
    private Path folder;

    private Written written = new Written(Path.of("."));

    @BeforeEach
    void writeIntoTheFolder() {
        written = new Written(folder);
    }

    private static String coil(String size) {
        return "coil: {" + STRIP + ", " + size + "}";
    }

    private List<Coil> severalCoils(String value) {
        String text = Written.without("coil") + "coils: " + value + "\n";
        return written.request(text).line().coils();
    }

    @Test
    void aCoilByLengthOrMassMayHaveOne() {
        Coil byLength = written.line(coil("length: 900 m, inner-diameter: 508 mm"))
                .coils()
                .get(0);
        assertThat(byLength.innerDiameter()).hasValue(0.508);
        assertThat(byLength.size()).isEqualTo(new CoilSize.ByLength(Distribution.constant(900)));
        Coil byMass =
                written.line(coil("inner-diameter: 508 mm, mass: 3 t")).coils().get(0);
        assertThat(byMass.innerDiameter()).hasValue(0.508);
        assertThat(byMass.meanLength()).isGreaterThan(700);
        Coil round = written.line(coil("outer-diameter: 1.2 m, inner-diameter: 508 mm"))
                .coils()
                .get(0);
        assertThat(round.innerDiameter()).isEmpty();
        assertThat(round.coreDiameter()).hasValue(0.508);
    }

    @Test
    void aSizeGivenTwiceIsRefusedAllTheSame() {
        assertThat(written.refusal(Written.with(coil("length: 900 m, inner-diameter: 508 mm, outer-diameter: 1.2 m"))))
                .containsExactly("line.yaml:2:100 coil.outer-diameter = 1.2 m; the size of the coil is already given by"
                        + " length; allowed is one of: length; mass; outer-diameter with inner-diameter. Leave out all but"
                        + " one.");
        assertThat(written.refusal(Written.with(coil("inner-diameter: 508 mm"))))
                .containsExactly("line.yaml:2:61 coil.outer-diameter; is missing; inner-diameter needs it. Add"
                        + " outer-diameter.");
        assertThat(written.refusal(Written.with(coil("length: 900 m, inner-diameter: 508 mm, inner-diameter: 1 m"))))
                .containsExactly("line.yaml:2:100 coil.inner-diameter = 1 m; is given twice, first in line 2. Leave out"
                        + " one.");
    }

    @Test
    void aWindingFactorGoesWithIt() {
        // Rule COIL-9.
        Coil byLength = written.line(coil("length: 900 m, inner-diameter: 508 mm, winding-factor: 0.9"))
                .coils()
                .get(0);
        // 4 * 0.002 m * 900 m/(0.9 pi) = 8/pi m2 = 2.546479 m2; with 0.508^2 m2 = 0.258064 m2: sqrt(2.804543) =
        // 1.674677 m.
        assertThat(byLength.outerDiameter().orElseThrow()).isCloseTo(1.674677, within(1e-6));
        Coil byMass = written.line(coil("winding-factor: 0.9, mass: 3 t, inner-diameter: 508 mm"))
                .coils()
                .get(0);
        assertThat(byMass.windingFactor()).isEqualTo(0.9);
    }

    @Test
    void aWindingFactorAloneBesideALengthIsRefused() {
        assertThat(written.refusal(Written.with(coil("length: 900 m, winding-factor: 0.9"))))
                .containsExactly(
                        "line.yaml:2:76 coil.winding-factor = 0.9; only goes with inner-diameter. Leave it out,"
                                + " or give inner-diameter.");
    }

    @Test
    void aWindingFactorOfTheDefaultsIsForCoilsWithAnInnerDiameter() {
        List<Coil> coils =
                severalCoils("{defaults: {" + STRIP + ", winding-factor: 0.9}, mix: [{weight: 1, length: 900 m},"
                        + " {weight: 1, length: 900 m, inner-diameter: 508 mm},"
                        + " {weight: 1, outer-diameter: 1.2 m, inner-diameter: 508 mm}]}");
        assertThat(coils).extracting(Coil::windingFactor).containsExactly(1.0, 0.9, 0.9);
    }

    @Test
    void coilsOfAMixMayHaveOneOrTakeThatOfTheDefaults() {
        List<Coil> coils = severalCoils("{defaults: {" + STRIP + ", inner-diameter: 508 mm}, mix: ["
                + "{weight: 1, length: 900 m}, {weight: 1, mass: 3 t, inner-diameter: 610 mm},"
                + " {weight: 1, outer-diameter: 1.2 m}]}");
        assertThat(coils).extracting(coil -> coil.coreDiameter().orElseThrow()).containsExactly(0.508, 0.61, 0.508);
        assertThat(coils.get(2).size()).isEqualTo(new CoilSize.ByDiameters(1.2, 0.508, 1));
    }

    @Test
    void itsOwnOneLeavesALengthOfTheDefaults() {
        List<Coil> coils =
                severalCoils("{defaults: {" + STRIP + ", length: 900 m}, mix: [{weight: 1, inner-diameter: 610 mm}]}");
        assertThat(coils.get(0).innerDiameter()).hasValue(0.61);
        assertThat(coils.get(0).meanLength()).isEqualTo(900);
    }

    @Test
    void aScheduleMayHaveAColumnOfThem() {
        written.file("coils.csv", """
                thickness [mm],width [mm],length [m],inner-diameter [mm],winding-factor
                2,240,900,508,0.9
                2,240,800,610,0.95
                2,240,700,,
                2,240,600,400,
                """);
        List<Coil> coils = severalCoils("{defaults: {density: 7850 kg/m3}, schedule: coils.csv}");
        assertThat(coils).extracting(coil -> coil.innerDiameter().orElse(0)).containsExactly(0.508, 0.61, 0.0, 0.4);
        assertThat(coils).extracting(Coil::meanLength).containsExactly(900.0, 800.0, 700.0, 600.0);
        assertThat(coils).extracting(Coil::windingFactor).containsExactly(0.9, 0.95, 1.0, 1.0);
    }

    @Test
    void aDefaultOneHoldsForEveryRowOfASchedule() {
        written.file("coils.csv", "thickness [mm],width [mm],length [m]\n2,240,900\n2,240,800\n");
        List<Coil> coils =
                severalCoils("{defaults: {density: 7850 kg/m3, inner-diameter: 508 mm}, schedule: coils.csv}");
        assertThat(coils).allSatisfy(coil -> assertThat(coil.innerDiameter()).hasValue(0.508));
    }

    @Test
    void byPathItIsAddedToALengthAndGoesWithDiameters() {
        ScenarioFile file = ScenarioFile.open(written.file("line.yaml", Written.with()));
        Coil added = changed(file, "coil.inner-diameter", "508 mm");
        assertThat(added.innerDiameter()).hasValue(0.508);
        assertThat(added.meanLength()).isEqualTo(900);

        ScenarioFile beside = ScenarioFile.open(
                written.file("line.yaml", Written.with(coil("length: 900 m, inner-diameter: 508 mm"))));
        assertThat(changed(beside, "coil.outer-diameter", "1.2 m").size())
                .isEqualTo(new CoilSize.ByDiameters(1.2, 0.508, 1));
        assertThat(changed(beside, "coil.mass", "3 t").innerDiameter()).hasValue(0.508);

        ScenarioFile round = ScenarioFile.open(written.file(
                "line.yaml", Written.with(coil("outer-diameter: 1.2 m, inner-diameter: 508 mm, winding-factor: 0.9"))));
        Coil byLength = changed(round, "coil.length", "900 m");
        assertThat(byLength.meanLength()).isEqualTo(900);
        assertThat(byLength.core()).hasValue(new Coil.Core(0.508, 0.9));
        assertThat(changed(round, "coil.inner-diameter", "610 mm").size())
                .isEqualTo(new CoilSize.ByDiameters(1.2, 0.61, 0.9));
    }

    @Test
    void anAlternativeMayChangeIt() {
        String text = Written.with("alternatives: {thin core: {coil.inner-diameter: 400 mm}}");
        ScenarioFile file = ScenarioFile.open(written.file("line.yaml", text));
        AlternativesReading reading = file.alternatives(List.of(), (ScenarioReading.Accepted) file.with(List.of()));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.alternatives().get(1).request().line().coils().get(0).innerDiameter())
                .hasValue(0.4);
    }

    private static Coil changed(ScenarioFile file, String path, String value) {
        ScenarioReading reading = file.with(
                List.of(Setting.written(path, value, "--set", new Problems()).orElseThrow()));
        assertThat(reading).isInstanceOf(ScenarioReading.Accepted.class);
        return ((ScenarioReading.Accepted) reading).request().line().coils().get(0);
    }
}
