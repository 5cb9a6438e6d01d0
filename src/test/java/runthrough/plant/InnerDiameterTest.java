package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** An inner diameter beside a length or a mass gives the outer one, and no second size. */
class InnerDiameterTest {

    private static Coil coil(CoilSize size) {
        return new Coil("coil", new Coil.Strip(0.002, 1.25, 7850), size);
    }

    @Test
    void outerDiameter_isThatOfTheSameSectionOfStrip() {
        // Rule COIL-9.
        // 4 * 0.002 m * 600 m/pi = 1.527887 m2; with 0.508^2 m2 = 0.258064 m2: sqrt(1.785951) = 1.336395 m.
        Coil coil = coil(new CoilSize.ByLength(Distribution.constant(600))).withInnerDiameter(0.508);
        assertThat(coil.outerDiameter().orElseThrow()).isCloseTo(1.336395, within(1e-6));
        assertThat(coil.coreDiameter()).hasValue(0.508);
        assertThat(coil.meanLength()).isEqualTo(600);
        // 7850 * 1.25 * 0.002 = 19.625 kg/m; 600 m are 11775 kg.
        Coil byMass = coil(new CoilSize.ByMass(Distribution.constant(11775))).withInnerDiameter(0.508);
        assertThat(byMass.outerDiameter().orElseThrow()).isCloseTo(1.336395, within(1e-6));
    }

    @Test
    void looselyWoundCoil_isLarger() {
        // Rule COIL-9. 1.527887 m2 of strip in a section filled to 0.9: 1.697652 m2; with 0.258064 m2: sqrt(1.955716) =
        // 1.398469 m.
        Coil coil = coil(new CoilSize.ByLength(Distribution.constant(600))).withCore(new Coil.Core(0.508, 0.9));
        assertThat(coil.outerDiameter().orElseThrow()).isCloseTo(1.398469, within(1e-6));
        assertThat(coil.meanLength()).isEqualTo(600);
        assertThatThrownBy(() -> new Coil.Core(0.508, 1.1))
                .hasMessage("coil winding factor = 1.1; must be more than 0 and at most 1");
    }

    @Test
    void coilByDiameters_isTheSameTheOtherWayRound() {
        Coil round = coil(new CoilSize.ByDiameters(1.4, 0.508, 0.95));
        assertThat(round.outerDiameter()).hasValue(1.4);
        assertThat(round.coreDiameter()).hasValue(0.508);
        assertThat(CoilSize.outerDiameter(0.508, 0.002, round.meanLength(), 0.95))
                .isCloseTo(1.4, within(1e-12));
    }

    @Test
    void withoutInnerDiameter_theOuterOneIsNotKnown() {
        assertThat(coil(new CoilSize.ByLength(Distribution.constant(600))).outerDiameter())
                .isEmpty();
    }

    @Test
    void longerCoil_keepsItsCoreAndGrowsOutside() {
        // 4 * 0.002 * 1200/pi + 0.258064 = 3.313839; its root is 1.820395.
        Coil coil = coil(new CoilSize.ByLength(Distribution.constant(600))).withInnerDiameter(0.508);
        Coil twice = coil.withLengthTimes(2).withSpeedTimes(2);
        assertThat(twice.innerDiameter()).hasValue(0.508);
        assertThat(twice.outerDiameter().orElseThrow()).isCloseTo(1.820395, within(1e-6));
    }

    @Test
    void innerDiameterTwice_isRefused() {
        // Rule COIL-9.
        Coil round = coil(new CoilSize.ByDiameters(1.4, 0.508, 1));
        assertThatThrownBy(() -> round.withInnerDiameter(0.508))
                .hasMessage("inner diameter given twice, by the size and beside it; give it once");
    }

    @Test
    void longTableOfCoils_keepsInnerDiameters() {
        List<Coil> kinds = List.of(
                coil(new CoilSize.ByLength(Distribution.constant(600))).withCore(new Coil.Core(0.508, 0.9)),
                coil(new CoilSize.ByDiameters(1.4, 0.61, 1)),
                coil(new CoilSize.ByMass(Distribution.constant(9000))),
                coil(new CoilSize.ByLength(Distribution.uniform(500, 600))).withInnerDiameter(0.4));
        CoilTable.Builder table = new CoilTable.Builder();
        for (int i = 0; i < 10_004; i++) {
            table.add(kinds.get(i % 4));
        }
        List<Coil> coils = table.build();
        assertThat(coils).isInstanceOf(CoilTable.class);
        assertThat(coils.subList(10_000, 10_004)).isEqualTo(kinds);
    }
}
