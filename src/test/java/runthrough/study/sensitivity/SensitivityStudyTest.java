package runthrough.study.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.sensitivity.Swing.End;

/**
 * Inputs moved one at a time. The plain line of {@link PlainLine}: coils of 600 m, entry 2.5 m/s, process 1.5 m/s, speeds
 * change at once, 200 m of accumulator. A joint of T seconds leaves a margin of 200 m - 1.5 m/s x T.
 */
class SensitivityStudyTest {
    private static final Distribution JOINT = Distribution.lognormal(90, 20);

    private static PlainLine line() {
        return new PlainLine().coils(PlainLine.coil(2000));
    }

    private static Swing swing(String path, PlainLine low, PlainLine high) {
        return new Swing(path, "as it is", false, false, end(low), end(high));
    }

    private static End end(PlainLine line) {
        return new End(0, "moved", Optional.of(line.build()), "");
    }

    private static Sensitivity study(Line line, double target, int changes, int replications, Swing... swings) {
        SimulationRequest request = new SimulationRequest(
                "Line (invented)",
                List.of(),
                line,
                new RunPlan(new RunPlan.Extent.Changes(changes), 0, replications, 5, target),
                UnitSystem.METRIC);
        return new SensitivityStudy(request, target, List.of(swings), 20).run(2, StudyListener.NONE);
    }

    private static double strip(SwingEffect.AtEnd at) {
        return at.strip().orElseThrow().by().mean();
    }

    private static double share(SwingEffect.AtEnd at) {
        return at.share().orElseThrow().by().mean();
    }

    @Test
    void whereNothingIsRandom_whatIsSeenIsExact() {
        Sensitivity sensitivity = study(
                line().join(60).build(),
                0.9,
                10,
                50,
                swing(
                        "speed",
                        line().join(60).process(1.35, PlainLine.AT_ONCE, PlainLine.AT_ONCE),
                        line().join(60).process(1.65, PlainLine.AT_ONCE, PlainLine.AT_ONCE)),
                swing("capacity", line().join(60).capacity(80), line().join(60).capacity(220)),
                swing(
                        "preparation",
                        line().join(60).prepare(10),
                        line().join(60).prepare(100)));

        // 200 - 1.5 x 60 = 110 m.
        assertThat(sensitivity.swings().strip().mean()).isCloseTo(110, within(1e-9));
        assertThat(sensitivity.swings().share().mean()).isEqualTo(1);
        SwingEffect speed = sensitivity.swings().effects().get(0);
        assertThat(strip(speed.low())).isCloseTo(9, within(1e-9));
        assertThat(strip(speed.high())).isCloseTo(-9, within(1e-9));
        SwingEffect capacity = sensitivity.swings().effects().get(1);
        // 90 m are needed of 80: every coil change fails, 10 m short.
        assertThat(strip(capacity.low())).isCloseTo(-120, within(1e-9));
        assertThat(share(capacity.low())).isEqualTo(-1);
        assertThat(strip(capacity.high())).isCloseTo(20, within(1e-9));
        // The coil that is prepared in 10 s or 100 s waits for the joint: nothing changes, and nothing is ranked.
        assertThat(sensitivity.swings().byStrip())
                .extracting(effect -> effect.swing().path())
                .containsExactly("capacity", "speed");
        assertThat(sensitivity.swings().byShare())
                .extracting(effect -> effect.swing().path())
                .containsExactly("capacity");
        assertThat(sensitivity.swings().effects().get(2).isShown()).isFalse();
        assertThat(sensitivity.randomness()).isEmpty();
        assertThat(sensitivity.chance()).isFalse();
    }

    /** Always refilled and under the same random numbers: 10 m of capacity are 10 m of margin, at any quantile. */
    @Test
    void underTheSameRandomNumbers_whatShiftsEveryCoilChangeAlikeIsKnownExactly() {
        Sensitivity sensitivity = study(
                line().join(JOINT).build(),
                0.9,
                100,
                20,
                swing(
                        "capacity",
                        line().join(JOINT).capacity(190),
                        line().join(JOINT).capacity(210)));

        SwingEffect capacity = sensitivity.swings().effects().get(0);
        assertThat(sensitivity.swings().atTarget()).isTrue();
        assertThat(strip(capacity.low())).isCloseTo(-10, within(1e-9));
        assertThat(strip(capacity.high())).isCloseTo(10, within(1e-9));
        assertThat(capacity.low().strip().orElseThrow().shown()).isTrue();
        // The margin that nine in ten have: 200 - 1.5 x the 90 % quantile of the joint, which 2000 of them tell to 2 m.
        assertThat(sensitivity.swings().strip().mean()).isCloseTo(200 - 1.5 * JOINT.quantile(0.9), within(4.0));
        assertThat(sensitivity
                        .swings()
                        .strip()
                        .interval()
                        .orElseThrow()
                        .contains(sensitivity.swings().strip().mean()))
                .isTrue();
    }

    /** At 99.9 % of 2000 coil changes two are beyond: too few to speak of, so the mean is taken. */
    @Test
    void aTargetThatTheRunCannotTell_isMeasuredByTheMean() {
        Sensitivity sensitivity = study(
                line().join(JOINT).build(),
                0.999,
                100,
                20,
                swing(
                        "joint",
                        line().join(Distribution.lognormal(81, 18)),
                        line().join(Distribution.lognormal(99, 22))));

        assertThat(sensitivity.swings().atTarget()).isFalse();
        assertThat(sensitivity.swings().strip().mean()).isCloseTo(200 - 1.5 * 90, within(3.0));
        assertThat(strip(sensitivity.swings().effects().get(0).low())).isCloseTo(1.5 * 9, within(0.3));
        assertThat(strip(sensitivity.swings().effects().get(0).high())).isCloseTo(-1.5 * 9, within(0.3));
    }

    /** Twenty inputs that are other random numbers and nothing else. */
    @Test
    void whatIsNoiseAloneIsNotRanked() {
        List<Swing> swings = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            swings.add(swing("noise " + i, otherNumbers(2 * i + 1), otherNumbers(2 * i + 2)));
        }
        Sensitivity sensitivity = study(line().join(JOINT).build(), 0.9, 50, 20, swings.toArray(Swing[]::new));

        assertThat(sensitivity.swings().byStrip()).isEmpty();
        assertThat(sensitivity.swings().byShare()).isEmpty();
        // Their own 95 % intervals would have let some pass.
        assertThat(sensitivity.swings().effects().stream()
                        .map(effect -> effect.low().strip().orElseThrow().by())
                        .filter(by -> Math.abs(by.mean()) > 0))
                .hasSize(20);
    }

    /** Elements of no time before it give the joint another name, so other random numbers. */
    private static PlainLine otherNumbers(int before) {
        return line().join(new double[before]).join(JOINT);
    }

    @Test
    void rejectsALittleOftener_areComparedCoilChangeByCoilChange() {
        PlainLine rare = line().capacity(1000).join(JOINT).reject(new Reject.Chance(0.05));
        PlainLine often = line().capacity(1000).join(JOINT).reject(new Reject.Chance(0.07));
        PlainLine asItIs = line().capacity(1000).join(JOINT).reject(new Reject.Chance(0.06));

        Sensitivity sensitivity = study(asItIs.build(), 0.999, 400, 20, swing("reject", rare, often));

        // Mean passes 1/(1 - p): 90 s more or less of each hundredth. Paired, what differs are the joints that only one
        // of two rejects, 80 of 8000 with a standard deviation of 9: known to a ninth, 0.17 m.
        double less = 1.5 * 90 * (1 / 0.94 - 1 / 0.95);
        double more = 1.5 * 90 * (1 / 0.93 - 1 / 0.94);
        SwingEffect reject = sensitivity.swings().effects().get(0);
        assertThat(strip(reject.low())).isCloseTo(less, within(3 * 0.17));
        assertThat(strip(reject.high())).isCloseTo(-more, within(3 * 0.17));
        assertThat(reject.low().strip().orElseThrow().shown()).isTrue();
    }

    @Test
    void withoutAccumulator_theLostTimeIsMoved() {
        PlainLine line = new PlainLine().withoutAccumulator();
        Sensitivity sensitivity = study(
                line.join(60).build(),
                0.9,
                10,
                1,
                swing(
                        "joint",
                        new PlainLine().withoutAccumulator().join(54),
                        new PlainLine().withoutAccumulator().join(66)));

        assertThat(sensitivity.swings().measure()).isEqualTo(ChangeMeasure.LOST_TIME);
        assertThat(sensitivity.swings().strip().mean()).isCloseTo(60, within(1e-9));
        assertThat(strip(sensitivity.swings().effects().get(0).low())).isCloseTo(-6, within(1e-9));
        assertThat(sensitivity.swings().byShare()).isEmpty();
    }

    @Test
    void whatStandsForSeveralInputsIsLeftOutWhereItDoesWhatOneOfThemDoes() {
        PlainLine low = line().join(60).capacity(180);
        PlainLine high = line().join(60).capacity(220);
        Swing stroke = swing("stroke", low, high);
        Swing capacity = new Swing("usable-capacity", "200 m", false, true, stroke.low(), stroke.high());
        Swing other = new Swing("joint-cycle-time", "60 s", false, true, end(line().join(54)), end(line().join(66)));

        Sensitivity sensitivity = study(line().join(60).build(), 0.9, 10, 1, stroke, capacity, other);

        assertThat(sensitivity.swings().effects())
                .extracting(effect -> effect.swing().path())
                .containsExactly("stroke", "joint-cycle-time");
    }

    /** Coils of 5 m are used up by crops: that end cannot go on, and the others are said all the same. */
    @Test
    void anEndAtWhichARunCannotGoOnIsNotPossible() {
        // One coil in two is shorter than its crops, which the checks only warn of.
        Coil mayBeTooShort = new Coil(
                        "coil",
                        new Coil.Strip(0.002, 1, 7850),
                        new CoilSize.ByLength(Distribution.observed(List.of(5.0, 600.0))))
                .withCrops(3, 3);
        PlainLine tooShort = line().join(60).coils(mayBeTooShort);
        Sensitivity sensitivity = study(line().join(60).build(), 0.9, 10, 1, swing("coil", tooShort, line().join(60)));

        SwingEffect coil = sensitivity.swings().effects().get(0);
        assertThat(coil.low().strip()).isEmpty();
        assertThat(coil.low().end().note()).contains("5 m long, no longer than its crops");
        assertThat(coil.high().strip()).isPresent();
    }

    @Test
    void anEndThatTheChecksRefuseIsNotPossible() {
        PlainLine tooShort = line().join(60).coils(PlainLine.cropped(5, 3, 3));
        Sensitivity sensitivity = study(line().join(60).build(), 0.9, 10, 1, swing("coil", tooShort, line().join(60)));

        SwingEffect coil = sensitivity.swings().effects().get(0);
        assertThat(coil.low().strip()).isEmpty();
        assertThat(coil.low().end().note()).contains("must be more than 0 after its crops, 6 m");
        assertThat(coil.high().strip()).isPresent();
    }

    @Test
    void causesAreThoseOfTheVerdict() {
        Line line = line().capacity(150).join(JOINT).build();
        Sensitivity sensitivity = study(line, 0.9, 50, 4);
        assertThat(sensitivity.causes())
                .isNotEmpty()
                .isEqualTo(new RunThroughStudy(sensitivity.request())
                        .run(StudyOptions.plain(), StudyListener.NONE)
                        .verdict()
                        .namedCauses());
    }
}
