package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;

import org.junit.jupiter.api.Test;
import runthrough.handcalc.Preparation.Rule;
import runthrough.plant.Line;
import runthrough.plant.SoundLine;

/**
 * The time there is to prepare a coil, and what waiting costs. The line changed here is that of {@link HandCalculationTest}. The
 * strip stops in 3 s after T0; a path of 2.25 m is left 3 s before the tail stops.
 */
class PreparationTimeTest {

    private Preparation of(SoundLine line) {
        return HandCalculation.of(line.build()).preparation();
    }

    @Test
    void oneUncoilerTwoPeople_fromTailLeavingUntilTailWorkDone() {
        // Rule FORM-9.
        Preparation preparation = of(line().uncoilers(1).uncoilerPath(2.25));
        assertThat(preparation.rule()).isEqualTo(Rule.UNTIL_TAIL_WORK_DONE);
        assertThat(preparation.withoutWaiting()).isCloseTo(3 + 10, within(1e-12));
        assertThat(preparation.waiting()).isCloseTo(107, within(1e-12));
        assertThat(preparation.grows()).isFalse();
    }

    @Test
    void twoUncoilersTwoPeople_aWholeCycle() {
        // Rule FORM-9.
        Preparation preparation = of(line().prepare(timed("load", 399)));
        assertThat(preparation.rule()).isEqualTo(Rule.WHOLE_CYCLE);
        assertThat(preparation.withoutWaiting()).isEqualTo(400);
        assertThat(preparation.waiting()).isZero();
    }

    @Test
    void moreWorkThanCycle_waitsLongerAndLonger() {
        Preparation preparation = of(line().prepare(timed("load", 401)));
        assertThat(preparation.grows()).isTrue();
        assertThat(preparation.waiting()).isZero();
    }

    @Test
    void onePersonTwoUncoilers_whatTheJointLeavesOfACycle() {
        // Rule FORM-9.
        Preparation preparation = of(line().crew(1).prepare(timed("load", 310)));
        assertThat(preparation.rule()).isEqualTo(Rule.BETWEEN_JOINTS);
        assertThat(preparation.withoutWaiting()).isEqualTo(400 - 90);
        assertThat(preparation.grows()).isFalse();
        assertThat(of(line().crew(1).prepare(timed("load", 311))).grows()).isTrue();
    }

    @Test
    void onePersonOneUncoiler_waitsForAllOfIt() {
        // Rule FORM-9.
        Preparation preparation = of(line().crew(1).uncoilers(1));
        assertThat(preparation.rule()).isEqualTo(Rule.UNTIL_TAIL_STOPS);
        assertThat(preparation.withoutWaiting()).isZero();
        assertThat(preparation.waiting()).isEqualTo(120);
    }

    @Test
    void onePersonWithTwoUncoilers_hasACycleLessTheJoint_howeverEarlyAnUncoilerIsFreed() {
        // Rule FORM-9.
        // 400 s of cycle less 90 s of joint; 120 s to prepare are put down for the joint and taken up again.
        Preparation preparation = of(line().crew(1).uncoilerPath(2.25));
        assertThat(preparation.rule()).isEqualTo(Rule.BETWEEN_JOINTS);
        assertThat(preparation.withoutWaiting()).isCloseTo(310, within(1e-9));
        assertThat(preparation.waiting()).isZero();
    }

    @Test
    void onePersonWithOneUncoiler_hasTheTimeThatTheTailTakesToTheJoiner() {
        // Rule FORM-9.
        Preparation preparation = of(line().crew(1).uncoilers(1).uncoilerPath(2.25));
        assertThat(preparation.rule()).isEqualTo(Rule.UNTIL_TAIL_STOPS);
        assertThat(preparation.withoutWaiting()).isCloseTo(3, within(1e-12));
        assertThat(preparation.waiting()).isCloseTo(117, within(1e-12));
    }

    @Test
    void elementsForSeveralPeopleMayLeaveNobodyForTheJoint() {
        // Rule FORM-9.
        Line two = line().crew(2).uncoilers(1).uncoilerPath(2.25).build();
        Line loadByTwo = two.with(two.change()
                .withWork(
                        two.change().prepare().stream()
                                .map(element -> element.withPeople(2))
                                .toList(),
                        two.change().tail(),
                        two.change().join()));
        assertThat(HandCalculation.of(two).preparation().rule()).isEqualTo(Rule.UNTIL_TAIL_WORK_DONE);
        assertThat(HandCalculation.of(loadByTwo).preparation().rule()).isEqualTo(Rule.UNTIL_TAIL_STOPS);
    }

    @Test
    void coilWithinThePath_isGoneWhenItsJointIsReleased() {
        // 400 s of cycle less 90 s of joint.
        Preparation preparation = of(line().uncoilers(1).uncoilerPath(600));
        assertThat(preparation.withoutWaiting()).isCloseTo(310 + 10, within(1e-9));
    }

    /** The accumulator bears 38.4583333 s of waiting: (200 - 142.3125) m at 1.5 m/s. */
    @Test
    void waitingThatIsBorne_isTimeToPrepareToo() {
        // Alone at one uncoiler there is no other time.
        assertThat(timeToPrepare(line().crew(1).uncoilers(1))).isCloseTo(38.4583333, within(1e-7));
        assertThat(timeToPrepare(line().crew(1).uncoilers(1).uncoilerPath(2.25)))
                .isCloseTo(3 + 38.4583333, within(1e-7));
        // With a second one the joint leaves 310 s of a cycle, whenever it is free.
        assertThat(timeToPrepare(line().crew(1).uncoilerPath(2.25))).isCloseTo(310, within(1e-9));
        assertThat(timeToPrepare(line().crew(1).uncoilerPath(450))).isCloseTo(310, within(1e-9));
    }

    private double timeToPrepare(SoundLine line) {
        return HandCalculation.of(line.build()).preparationTime().given();
    }

    @Test
    void nothingToPrepare_waitsForNothing() {
        Preparation preparation = of(line().uncoilers(1).prepare());
        assertThat(preparation.needed()).isZero();
        assertThat(preparation.waiting()).isZero();
    }
}
