package runthrough.study.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.handcalc.Limit;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.TargetStatus;
import runthrough.study.cause.Cause;
import runthrough.study.lever.Lever.What;
import runthrough.study.limits.LineLimit.Difference;
import runthrough.study.search.Crossing;
import runthrough.study.search.Crossing.Found;

/**
 * Limits of lines for which they are known. The plain line of {@link PlainLine}: coils of 600 m, entry 2.5 m/s, process 1.5
 * m/s, 200 m of accumulator, speeds change at once.
 */
class LimitsStudyTest {

    private static SimulationRequest request(Line line, int changes, int replications) {
        return new SimulationRequest(
                "Line (invented)",
                List.of(),
                line,
                new RunPlan(new RunPlan.Extent.Changes(changes), 0, replications, 11, 0.9),
                UnitSystem.METRIC);
    }

    private static Limits limits(SimulationRequest request, double target) {
        return new LimitsStudy(request, target).run(2, StudyListener.NONE);
    }

    private static LineLimit limit(Limits limits, What what) {
        return limits.limit(what).orElseThrow();
    }

    private static double value(LineLimit limit) {
        return limit.crossing().answer().orElseThrow();
    }

    private static Offset<Double> parts(double value, double part) {
        return within(value * part);
    }

    /** Ramps throughout, 3 m of reserve, 120 m, a joint of 60 s of work. */
    private static final Line RAMPED = new PlainLine()
            .coils(PlainLine.coil(2000))
            .entry(2.5, 0.3, 0.4)
            .process(1.5, 0.2, 0.25)
            .reserve(3)
            .capacity(120)
            .tail(10)
            .join(50)
            .build();

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
        assertThat(speed.beyond().orElseThrow().count(Cause.USUAL_JOINT_TOO_LONG))
                .isPositive();
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
        assertThat(coil.beyond().orElseThrow().count(Cause.ACCUMULATOR_NOT_FULL))
                .isPositive();
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
    void anElementForTwoBesideAnElementForOneTakesAThirdPerson() {
        // Coil 2000 m, entry 2.5 m/s, process 1.5 m/s, 150 m: 100 s at 1.5 m/s. One uncoiler: loading, 50 s for two,
        // begins with the
        // tail work, 50 s for one; then 20 s to join. Two people: 50 + 50 + 20 = 120 s > 100 s. Three: 50 + 20 = 70 s.
        WorkElement load = new WorkElement(
                "load",
                new WorkElement.WorkTime.Timed(Distribution.constant(50)),
                new WorkElement.Occurrence.Always(),
                false,
                2,
                true);
        Line line = new PlainLine()
                .coils(PlainLine.coil(2000))
                .uncoilers(1, 0)
                .capacity(150)
                .crew(2)
                .tail(50)
                .join(20)
                .build();
        CoilChange change = line.change();
        Line two = line.with(change.withWork(List.of(load), change.tail(), change.join()));

        CountLimit crew = limits(request(two, 10, 1), 1).counts().get(0);

        assertThat(crew.smallest()).hasValue(3);
        assertThat(crew.closedForm()).hasValue(3);
        assertThat(crew.tried()).extracting(CountLimit.Tried::count).containsExactly(2, 3);
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
    void byShifts_theLargestShiftIsCounted_andTheOthersFollowIt() {
        // One uncoiler: preparing, 200 s from T1 on, then joining, 60 s, take 260 s however many are there; 200 m last
        // 133 s at 1.5
        // m/s: no crew does. Two can be at work at once. Shifts of 3 and 1: two in the smaller one are four in the
        // larger.
        Line line = new PlainLine().uncoilers(1, 0).prepare(200).join(60).build();
        Shifts shifts = new Shifts(List.of(
                new Shifts.Shift("day", 28_800, 3, List.of()), new Shifts.Shift("night", 28_800, 1, List.of())));
        CountLimit crew = limits(request(line.with(line.change().withShifts(shifts)), 10, 1), 1)
                .counts()
                .get(0);

        assertThat(crew.present()).isEqualTo(3);
        assertThat(crew.smallest()).isEmpty();
        assertThat(crew.tried()).extracting(CountLimit.Tried::count).containsExactly(1, 2, 3, 4);
    }

    @Test
    void theFastestSpeedIsNoneThatTheCarriageCannotFollow() {
        // Rule CHECK-18. Four strands at 0.4 m/s when emptying: 1.6 m/s. Without that 200 m in 100 s of joint allow 2
        // m/s.
        Line line = new PlainLine().coils(PlainLine.coil(5000)).join(100).build();
        Line slowCarriage = line.with(new Accumulator(
                new StorageForm.Strands(4, 50, Double.POSITIVE_INFINITY, 0.4, false),
                line.accumulator().ownFillRateLimit(),
                line.accumulator().reserve(),
                line.accumulator().overtravelAllowance()));

        LineLimit free = limit(limits(request(line, 10, 1), 1), What.PROCESS_SPEED);
        LineLimit bound = limit(limits(request(slowCarriage, 10, 1), 1), What.PROCESS_SPEED);

        assertThat(value(free)).isCloseTo(2, parts(2, 1.1e-4));
        assertThat(free.notFeasible()).isEmpty();
        assertThat(value(bound)).isBetween(1.6 * (1 - 1.1e-4), 1.6);
        assertThat(bound.neighbour().orElseThrow().value()).isCloseTo(1.6, within(1e-9));
        assertThat(bound.notFeasible().orElseThrow().path()).isEqualTo("accumulator.emptying-speed");
    }

    @Test
    void preparationLimitsTheShortestCoil() {
        // A coil must last the 300 s that the next takes to prepare: 450 m.
        Line line = new PlainLine().prepare(300).join(60).build();
        LineLimit coil = limit(limits(request(line, 3000, 1), 1), What.COIL_LENGTH);

        assertThat(value(coil)).isCloseTo(450, parts(450, 1e-3));
        assertThat(coil.neighbour().orElseThrow().limitingFactor()).contains(Limit.PREPARATION);
        assertThat(coil.beyond().orElseThrow().count(Cause.WAITING_FOR_PREPARATION))
                .isPositive();
    }

    @Test
    void aProcessThatMayRunAsFastAsTheEntry_meetsTheTargetThroughout() {
        // At 1.6 m/s ten joints of 60 s take 960 m; nothing is refilled, but 10,000 m last for that.
        Line line = new PlainLine()
                .coils(PlainLine.coil(20_000))
                .entry(1.6, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .capacity(1e4)
                .join(Distribution.uniform(59, 61))
                .build();
        LineLimit speed = limit(limits(request(line, 10, 1), 0.9), What.PROCESS_SPEED);

        assertThat(speed.crossing().found()).isEqualTo(Found.MET_THROUGHOUT);
        assertThat(value(speed)).isEqualTo(1.6);
        assertThat(speed.beyond()).isEmpty();
    }

    @Test
    void randomJoints_theIntervalHoldsTheExactSeconds_andTheMeanIsNotEnough() {
        // 200 m bear 133.3 s. 90 % of joints, uniform from 60 to 120 s, take up to 114 s; the mean is 90 s.
        Line line = new PlainLine()
                .coils(PlainLine.coil(5000))
                .join(Distribution.uniform(60, 120))
                .build();
        Limits limits = limits(request(line, 100, 20), 0.9);

        LineLimit added = limit(limits, What.JOINT_CYCLE_TIME);
        assertThat(200 / 1.5 - 114).isBetween(low(added), high(added));
        assertThat(added.neighbour().orElseThrow().value()).isCloseTo(200 / 1.5 - 90, within(1e-6));
        assertThat(added.differences()).containsExactly(Difference.CHANCE, Difference.TARGET);
        LineLimit speed = limit(limits, What.PROCESS_SPEED);
        assertThat(200 / 114.0).isBetween(low(speed), high(speed));
        assertThat(limits.chance()).isTrue();
        assertThat(limits.present().orElseThrow().answer(0.9)).isEqualTo(TargetStatus.MEETS);
    }

    private static double low(LineLimit limit) {
        return limit.crossing().low().orElseThrow();
    }

    private static double high(LineLimit limit) {
        return limit.crossing().high().orElseThrow();
    }

    @Test
    void aLineThatMissesItsTarget_saysHowMuchItWouldHaveToBeRelieved() {
        // 120 s take 180 m of 150 m: 1.25 m/s instead of 1.5 m/s, or 100 s.
        Line line = new PlainLine()
                .coils(PlainLine.coil(5000))
                .capacity(150)
                .join(120)
                .build();
        Limits limits = limits(request(line, 10, 1), 1);

        assertThat(value(limit(limits, What.PROCESS_SPEED))).isCloseTo(1.25, parts(1.25, 1.1e-4));
        // In steps of 0.01 s, which is 0.0001 of the work.
        assertThat(value(limit(limits, What.JOINT_CYCLE_TIME))).isCloseTo(-20, within(0.011));
        // No entry is fast enough, no coil long enough.
        for (What what : List.of(What.ENTRY_TOP_SPEED, What.COIL_LENGTH)) {
            assertThat(limit(limits, what).crossing().found()).isEqualTo(Found.MISSED_THROUGHOUT);
            assertThat(limit(limits, what).crossing().value()).isEmpty();
            assertThat(limit(limits, what).neighbour()).isEmpty();
        }
    }

    @Test
    void whereTheMeanWouldDoButTheTargetIsMissed_itSaysWhy() {
        // 150 m bear 100 s: more than the mean of 90 s, less than the 114 s that 90 % of joints take.
        Line line = new PlainLine()
                .coils(PlainLine.coil(5000))
                .capacity(150)
                .join(Distribution.uniform(60, 120))
                .build();
        LineLimit added = limit(limits(request(line, 50, 10), 0.9), What.JOINT_CYCLE_TIME);

        assertThat(-14.0).isBetween(low(added), high(added));
        assertThat(added.neighbour().orElseThrow().value()).isCloseTo(10, within(1e-6));
        assertThat(added.differences()).containsExactly(Difference.CHANCE, Difference.TARGET);
        assertThat(added.beyond().orElseThrow().count(Cause.ELEMENT_TOOK_LONG)).isPositive();
    }

    @Test
    void coilsWithSpeedsAndLengthsOfTheirOwnAreScaledAlike() {
        // The faster coil limits: 200 m / 60 s = 3.333 m/s; entry 5 m/s.
        CoilSource coilSource =
                new CoilSource.Schedule(List.of(PlainLine.coilAt(6000, 1.5), PlainLine.coilAt(3000, 2)));
        Line line = new PlainLine()
                .coilSource(coilSource)
                .entry(5, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .join(60)
                .build();
        Limits limits = limits(request(line, 20, 1), 0.9);

        LineLimit speed = limit(limits, What.PROCESS_SPEED);
        assertThat(speed.scaledAlike()).isTrue();
        assertThat(speed.present()).isEqualTo(2);
        assertThat(value(speed)).isCloseTo(200 / 60.0, parts(3.333, 1.1e-4));
        LineLimit coil = limit(limits, What.COIL_LENGTH);
        assertThat(coil.scaledAlike()).isTrue();
        assertThat(coil.present()).isEqualTo(4500);
    }

    @Test
    void aMixHasTheMeanLengthOfItsWeights() {
        Coil shorter = PlainLine.coil(1000);
        Coil longer = PlainLine.coil(2000);
        Line line = new PlainLine()
                .coilSource(
                        new CoilSource.Mix(List.of(new CoilSource.Share(shorter, 3), new CoilSource.Share(longer, 1))))
                .join(60)
                .build();

        assertThat(limit(limits(request(line, 20, 2), 0.9), What.COIL_LENGTH).present())
                .isEqualTo(1250);
    }

    @Test
    void aProcessIsNotDrivenSlowerThanItIsSlowedTo() {
        Line line = new PlainLine().slowing(1, 100, 150).capacity(150).join(60).build();
        Crossing crossing =
                limit(limits(request(line, 10, 1), 1), What.PROCESS_SPEED).crossing();

        // 50 m above the level at which it slows bear 0.833 m/s only.
        assertThat(crossing.from()).isBetween(1.0, 1.01);
        assertThat(crossing.found()).isEqualTo(Found.MISSED_THROUGHOUT);
    }

    @Test
    void theSmallestCountsThatDo() {
        // One uncoiler: each joint would wait 300 s and take 540 m. One person has 300 + 60 s of work in 400 s.
        Line line = new PlainLine().prepare(300).join(60).build();
        Limits limits = limits(request(line, 50, 1), 0.9);

        CountLimit crew = limits.counts().get(0);
        assertThat(crew.what()).isEqualTo(CountLimit.What.CREW);
        assertThat(crew.present()).isEqualTo(2);
        assertThat(crew.smallest()).hasValue(1);
        assertThat(crew.sure()).hasValue(1);
        CountLimit uncoilers = limits.counts().get(1);
        assertThat(uncoilers.smallest()).hasValue(2);
        assertThat(uncoilers.tried()).extracting(CountLimit.Tried::count).containsExactly(1, 2, 3);
        assertThat(uncoilers.tried().get(0).evaluation().ranThrough()).isZero();
        assertThat(uncoilers.tried().get(0).evaluation().causes().count(Cause.WAITING_FOR_PREPARATION))
                .isPositive();
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void oneStripHasNoLimitsThatItBeginsToMissTheTargetAt(boolean joins) {
        PlainLine line = new PlainLine().join(60);
        Line oneStrip = (joins ? line.withoutAccumulator() : line.rethread(Distribution.constant(600))).build();
        Limits limits = limits(request(oneStrip, 10, 1), 0.9);

        assertThat(limits.applicable()).isFalse();
        assertThat(limits.limits()).isEmpty();
        assertThat(limits.counts()).isEmpty();
        assertThat(limits.present()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void threadsChangeNothing(int threads) {
        Line line = new PlainLine()
                .coils(PlainLine.coil(400))
                .join(Distribution.lognormal(60, 20))
                .build();
        LimitsStudy study = new LimitsStudy(request(line, 30, 7), 0.9);

        Limits alone = study.run(1, StudyListener.NONE);
        Limits together = study.run(threads, StudyListener.NONE);
        assertThat(together.limits()).isEqualTo(alone.limits());
        assertThat(together.counts()).isEqualTo(alone.counts());
        assertThat(together.present()).isEqualTo(alone.present());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.5, 1.01, Double.NaN})
    void aTargetThatMakesNoSenseIsRefused(double target) {
        assertThatThrownBy(() -> new LimitsStudy(request(RAMPED, 10, 1), target))
                .isInstanceOf(StudyException.class)
                .hasMessageStartingWith("target = ")
                .hasMessageContaining("must be more than 0 % and at most 100 %");
    }
}
