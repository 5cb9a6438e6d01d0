package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.plant.SoundLine.atSpeed;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.SoundLine;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/**
 * Of several kinds of coil the hand calculation takes the hardest. The line changed here is that of {@link
 * HandCalculationTest}.
 */
class HardestCoilTest {

    @Test
    void fastestCoilNeedsTheMostStrip() {
        // Rule FORM-12.
        HandCalculation calculation =
                HandCalculation.of(line().coils(coil(600), atSpeed(coil(600), 1.8), atSpeed(coil(600), 1.2))
                        .build());
        assertThat(calculation.kind()).isEqualTo(1);
        assertThat(calculation.kinds()).isEqualTo(3);
        assertThat(calculation.speed()).isEqualTo(1.8);
    }

    @Test
    void shortestCoilLeavesTheLeastTimeToRefill() {
        // Rule FORM-12.
        HandCalculation calculation = HandCalculation.of(
                line().capacity(400).coils(coil(600), coil(450), coil(900)).build());
        assertThat(calculation.coil().meanLength()).isEqualTo(450);
    }

    @Test
    void ofEqualCoils_theFirst() {
        assertThat(HandCalculation.of(line().coils(coil(600), coil(600)).build())
                        .kind())
                .isZero();
    }

    @Test
    void withoutAccumulator_theOneThatLosesTheMost() {
        HandCalculation calculation = HandCalculation.of(line().withoutAccumulator()
                .coils(coil(600), coil(300), coil(900))
                .build());
        assertThat(calculation.kind()).isEqualTo(1);
    }

    @Test
    void anyOtherCoil_canBeAskedFor() {
        Line line = line().coils(coil(600), atSpeed(coil(600), 1.8)).build();
        assertThat(HandCalculation.of(line, 0).speed()).isEqualTo(1.5);
    }

    @Test
    void weldCrossesTheWiderOfTwoStrips() {
        WorkElement weld = new WorkElement(
                "weld", new WorkTime.Travel(0.01, Distribution.constant(0)), new Occurrence.Always(), true);
        Coil narrow = wide(0.5);
        Coil broad = wide(1.5);
        // In a schedule the coil that follows is known: 0.5 to 1.5 m, 1.5 to 0.5 m, 0.5 to 0.5 m.
        SoundLine scheduled = line().tail().join(weld).coils(narrow, broad, narrow);
        assertThat(HandCalculation.of(scheduled.build(), 0).joint().total()).isCloseTo(150, within(1e-9));
        assertThat(HandCalculation.of(scheduled.build(), 1).joint().total()).isCloseTo(150, within(1e-9));
        assertThat(HandCalculation.of(scheduled.build(), 2).joint().total()).isCloseTo(50, within(1e-9));
        // In a mix a quarter of those that follow a narrow coil are wide: (3 * 50 + 150)/4 s.
        SoundLine mixed = line().tail()
                .join(weld)
                .coilSource(
                        new CoilSource.Mix(List.of(new CoilSource.Share(narrow, 3), new CoilSource.Share(broad, 1))));
        assertThat(HandCalculation.of(mixed.build(), 0).joint().total()).isCloseTo(75, within(1e-9));
        assertThat(HandCalculation.of(mixed.build(), 1).joint().total()).isCloseTo(150, within(1e-9));
    }

    private Coil wide(double width) {
        return new Coil(
                width + " m", new Coil.Strip(0.002, width, 7850), new CoilSize.ByLength(Distribution.constant(600)));
    }
}
