package runthrough.study.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.study.limits.LimitsRun.RAMPED;
import static runthrough.study.limits.LimitsRun.limit;
import static runthrough.study.limits.LimitsRun.limits;
import static runthrough.study.limits.LimitsRun.parts;
import static runthrough.study.limits.LimitsRun.request;
import static runthrough.study.limits.LimitsRun.value;

import org.junit.jupiter.api.Test;
import runthrough.handcalc.Limit;
import runthrough.plant.Line;
import runthrough.simulation.PlainLine;
import runthrough.study.cause.Cause;
import runthrough.study.lever.Lever.What;
import runthrough.study.search.Crossing.Found;

/**
 * Limits of lines without randomness are those of the closed forms. The plain line of
 * {@link PlainLine}: coils of 600 m, entry 2.5 m/s, process 1.5 m/s, 200 m of accumulator, speeds change at once.
 */
class ClosedFormLimitsTest {

    /** Metres per (m/s)^2 that all ramps take together. */
    private static final double RAMPS = 1 / 0.8 + 1 / 0.6 + 1 / 0.5;

    @Test
    void withoutChance_theFastestSpeedIsTheClosedForm() {
        // k V^2 + 60 V = 117.
        double exact = (-60 + Math.sqrt(3600 + 4 * RAMPS * 117)) / (2 * RAMPS);
        LineLimit speed = limit(limits(request(RAMPED, 40, 3), 0.995), What.PROCESS_SPEED);

        assertThat(speed.present()).isEqualTo(1.5);
        assertThat(speed.scaledAlike()).isFalse();
        assertThat(value(speed)).isBetween(exact * (1 - 1.1e-4), exact * (1 + 1e-9));
        assertThat(speed.crossing().found()).isEqualTo(Found.CROSSED);
        assertThat(speed.crossing().sure()).isEqualTo(speed.crossing().value());
        assertThat(speed.neighbour().orElseThrow().value()).isCloseTo(exact, parts(exact, 1e-9));
        assertThat(speed.neighbour().orElseThrow().limitingFactor()).contains(Limit.CAPACITY);
        assertThat(speed.differences()).isEmpty();
        assertThat(speed.beyond().get(0).reason().cause()).isEqualTo(Cause.USUAL_JOINT_TOO_LONG);
    }

    @Test
    void withoutChance_theLongestJointIsTheClosedForm() {
        double longest = (117 - RAMPS * 2.25) / 1.5;
        Limits limits = limits(request(RAMPED, 40, 3), 0.995);

        LineLimit added = limit(limits, What.JOINT_CYCLE_TIME);
        // To 0.01 % of the 60 s of work.
        assertThat(value(added)).isCloseTo(longest - 60, within(0.0061));
        assertThat(added.present()).isZero();
        assertThat(added.neighbour().orElseThrow().value()).isCloseTo(longest - 60, within(1e-9));
        assertThat(added.differences()).isEmpty();
    }

    @Test
    void withoutChance_theSlowestEntryAndTheShortestCoilAreThoseThatJustRefill() {
        // 60 s take 90 m. Entry: 600 (1 - 1.5/v) = 90 at v = 1.7647 m/s. Coil: L (1 - 1.5/2.5) = 90 at L = 225 m. Just
        // beyond,
        // a little more is missing after each coil, so in 3,000 coil changes the margin of 110 m are used up in the
        // end.
        Line line = new PlainLine().join(60).build();
        Limits limits = limits(request(line, 3000, 1), 1);

        LineLimit entry = limit(limits, What.ENTRY_TOP_SPEED);
        assertThat(value(entry)).isCloseTo(600 / (600 - 90.0) * 1.5, parts(1.7647, 1e-3));
        assertThat(entry.neighbour().orElseThrow().value()).isCloseTo(600 / (600 - 90.0) * 1.5, within(1e-9));
        assertThat(entry.neighbour().orElseThrow().limitingFactor()).contains(Limit.REFILL);
        LineLimit coil = limit(limits, What.COIL_LENGTH);
        assertThat(coil.present()).isEqualTo(600);
        assertThat(value(coil)).isCloseTo(225, parts(225, 1e-3));
        assertThat(coil.neighbour().orElseThrow().value()).isCloseTo(225, within(1e-6));
        assertThat(coil.beyond().get(0).reason().cause()).isEqualTo(Cause.ACCUMULATOR_NOT_FULL);
    }

    @Test
    void aLackThatGrowsIsSeenInTheLongRun_howeverShortThePlan() {
        // In ten coil changes margin of 110 m would make up for 11 m each that are not refilled.
        Line line = new PlainLine().join(60).build();
        LineLimit coil = limit(limits(request(line, 10, 1), 1), What.COIL_LENGTH);

        assertThat(value(coil)).isCloseTo(225, parts(225, 2e-4));
        assertThat(coil.neighbour().orElseThrow().value()).isCloseTo(225, within(1e-6));
        assertThat(coil.differences()).isEmpty();
    }

    @Test
    void ofALineThatSlows_closedFormAndSimulationAgreeOnRunningThrough() {
        // Rule FORM-7. 120 m, slows below 40 m; joint 60 s at 1.5 m/s, ramps 0.3 and 0.4 m/s2: 90 + 2.25/0.8 + 2.25/0.6
        // + 40 = 136.5625 m
        // are needed. Everything is given: simulation and closed form are one number, but for the digits of the search.
        Line line = new PlainLine()
                .coils(PlainLine.coil(2000))
                .entry(2.5, 0.3, 0.4)
                .process(1.5, 0.2, 0.25)
                .capacity(120)
                .slowing(0.5, 40, 60)
                .join(60)
                .build();

        LineLimit capacity = limit(limits(request(line, 5, 1), 0.9), What.CAPACITY);

        assertThat(capacity.neighbour().orElseThrow().value()).isCloseTo(136.5625, within(1e-6));
        assertThat(value(capacity)).isCloseTo(136.5625, parts(136.5625, 2e-3));
    }

    @Test
    void preparationLimitsTheShortestCoil() {
        // A coil must last the 300 s that the next takes to prepare: 450 m.
        Line line = new PlainLine().prepare(300).join(60).build();
        LineLimit coil = limit(limits(request(line, 3000, 1), 1), What.COIL_LENGTH);

        assertThat(value(coil)).isCloseTo(450, parts(450, 1e-3));
        assertThat(coil.neighbour().orElseThrow().limitingFactor()).contains(Limit.PREPARATION);
        assertThat(coil.beyond().get(0).reason().cause()).isEqualTo(Cause.WAITING_FOR_PREPARATION);
    }
}
