package runthrough.study.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.lever.LineLevers;
import runthrough.study.map.MapVariants.Variant;

class JointAxisTest {
    private static final String JOINT = LineFigure.JOINT_CYCLE_TIME.path();

    /** Every second joint is made twice, 50 s each: 75 s on average, of 1.5 passes. */
    private static final Line TWICE =
            new PlainLine().join(50).reject(new Reject.Every(2)).build();

    private static Line line(Line line, double value) {
        return ((Variant.Possible) JointAxis.along(JOINT, value, new Variant.Possible(line))).line();
    }

    @Test
    void theMeanIsTheOneAskedFor_byTheSameSecondsOffEveryPassAsTheLeverTakes() {
        // Rule LEVER-4. 15 s less on average are 10 s off each of 1.5 passes.
        assertThat(line(TWICE, 60))
                .isEqualTo(new LineLevers(TWICE, UnitSystem.METRIC)
                        .jointCycleTime()
                        .variant()
                        .apply(-10));
        assertThat(LineFigure.JOINT_CYCLE_TIME.of(line(TWICE, 60)).orElseThrow())
                .isCloseTo(60, within(1e-9));
        assertThat(LineFigure.JOINT_CYCLE_TIME.of(line(TWICE, 90)).orElseThrow())
                .isCloseTo(90, within(1e-9));
        assertThat(line(TWICE, 75)).isEqualTo(TWICE);
    }

    @Test
    void whatVariesKeepsItsSpread_thatAFactorWouldNarrow() {
        Line random = new PlainLine().join(Distribution.lognormal(90, 20)).build();
        Line shorter = line(random, 45);
        assertThat(shorter.change().join()).isEqualTo(random.change().join());
        assertThat(shorter.change().joinShorterBy()).isCloseTo(45, within(1e-9));
    }

    @Test
    void lessThanNoTimeIsRefused_andOtherNumbersAreLeftAlone() {
        Line tail = line(TWICE, 0.5);
        assertThat(LineFigure.JOINT_CYCLE_TIME.of(tail).orElseThrow()).isCloseTo(0.5, within(1e-9));
        Line both = new PlainLine().join(50).build();
        Variant possible = new Variant.Possible(both.with(both.change()
                .withWork(
                        both.change().prepare(),
                        both.change().join(),
                        both.change().join())));
        assertThat(JointAxis.along(JOINT, 40, possible))
                .isInstanceOfSatisfying(
                        Variant.Refused.class,
                        refused -> assertThat(refused.why())
                                .isEqualTo(
                                        "joint-cycle-time = 40 s; a pass of the join work would take less than no time"));
        assertThat(JointAxis.along("rated-speed", 1, possible)).isSameAs(possible);
    }
}
