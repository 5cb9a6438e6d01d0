package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.plant.SoundLine;

/**
 * An accumulator of 100 m before a process of 1.5 m/s, ramps of the entry 0.4 m/s2 up and 0.5 m/s2 down, of the process 0.5 m/s2
 * down, that slows to 0.5 m/s below 40 m. Stop level 1.5^2/(2 0.5) = 2.25 m.
 */
class SlowingFormsTest {
    private static final double EXACT = 1e-9;
    private static final int LINES = 1000;
    private static final Slowing SLOWING = new Slowing(0.5, 40, 70);

    private final SlowingForms forms =
            SlowingForms.of(ClosedForms.of(line(), line().coils().get(0)), SLOWING);

    private static Line line() {
        ProcessSection process = ProcessSection.running(1.5, 0.2, 0.5).withSlowing(Optional.of(SLOWING));
        return SoundLine.line()
                .capacity(100)
                .process(process)
                .join(SoundLine.timed("weld", Distribution.constant(60)))
                .build();
    }

    @Test
    void toRunThrough_theLevelAtWhichItSlowsIsInThePlaceOfTheStopLevel() {
        // Rule FORM-7.
        // (100 - 40)/V - V/(2 d_e) - V/(2 a_e) with V = 1.5 and the entry's ramps.
        StopAndGo entry = forms.forms().entry();
        double longest = 60 / 1.5 - 1.5 / (2 * entry.deceleration()) - 1.5 / (2 * entry.acceleration());
        assertThat(forms.atRatedSpeed().longestJoint()).isCloseTo(longest, within(EXACT));
        assertThat(forms.fastestAtRatedSpeed(longest)).isCloseTo(1.5, within(EXACT));
    }

    @Test
    void withoutAStop_itRunsDownToTheStopLevelAtTheSlowedSpeed() {
        // Rule FORM-13.
        // Until x_slow at 1.5 m/s, the entry having let in V^2/(2 d_e); 2 s of ramp; then at 0.5 m/s down to the stop
        // level, of
        // which the entry, speeding up again, leaves 0.5^2/(2 a_e).
        StopAndGo entry = forms.forms().entry();
        double first = (60 - 1.5 * 1.5 / (2 * entry.deceleration())) / 1.5;
        double last = (40 - 2.25 - 0.25 / (2 * entry.acceleration())) / 0.5;
        double longest = first + (1.5 - 0.5) / 0.5 + last;
        assertThat(forms.longestWithoutStop()).isCloseTo(longest, within(EXACT));
        assertThat(forms.fastestWithoutStop(longest)).isCloseTo(1.5, within(EXACT));
        assertThat(forms.fastestWithoutStop(longest + 5)).isLessThan(1.5);
    }

    /** Whatever the line, with and without creep and ramps: with the fastest speed the joint is the longest. */
    @Test
    void withTheFastestSpeedTheJointIsTheLongest() {
        // Rule FORM-13.
        SplittableRandom random = new SplittableRandom(13);
        int slowed = 0;
        for (int i = 0; i < LINES; i++) {
            SlowingForms some = some(random);
            double joint = some.longestWithoutStop() * (0.5 + random.nextDouble());
            double fastest = some.fastestWithoutStop(joint);
            if (fastest > some.slowedSpeed() && fastest < 1e6) {
                slowed++;
                assertThat(at(some, fastest).longestWithoutStop()).isCloseTo(joint, withinPercentage(1e-9));
            }
        }
        assertThat(slowed).isGreaterThan(LINES / 2);
    }

    private static SlowingForms some(SplittableRandom random) {
        double speed = random.nextDouble(0.2, 4);
        double level = random.nextDouble(10, 100);
        double up = random.nextInt(4) == 0 ? Double.POSITIVE_INFINITY : random.nextDouble(0.1, 1);
        double down = random.nextInt(4) == 0 ? Double.POSITIVE_INFINITY : random.nextDouble(0.1, 1);
        Optional<Entry.Creep> creep =
                random.nextBoolean() ? Optional.empty() : Optional.of(new Entry.Creep(0.1 * speed, 3));
        ClosedForms forms = new ClosedForms(
                new StopAndGo(speed, up, random.nextDouble(0.1, 1), creep),
                10,
                level + random.nextDouble(20, 400),
                2,
                Double.POSITIVE_INFINITY,
                down,
                1000);
        return new SlowingForms(forms, level, speed * random.nextDouble(0.3, 0.9));
    }

    private static SlowingForms at(SlowingForms some, double speed) {
        ClosedForms forms = some.forms();
        StopAndGo entry = forms.entry();
        return new SlowingForms(
                new ClosedForms(
                        new StopAndGo(speed, entry.acceleration(), entry.deceleration(), entry.creep()),
                        forms.topSpeed(),
                        forms.capacity(),
                        forms.reserve(),
                        forms.fillRateLimit(),
                        forms.processDeceleration(),
                        forms.usable()),
                some.level(),
                some.slowedSpeed());
    }

    @Test
    void aSpeedBelowTheSlowedOneNeverSlows() {
        // Rule FORM-13.
        double joint = forms.forms().holding(100).longestJoint() * 10;
        assertThat(forms.fastestWithoutStop(joint)).isEqualTo(forms.forms().fastestSpeed(joint));
    }

    @Test
    void bothSetsAreGiven_andTheOneWithoutSlowingLimits() {
        // Rules FORM-7, FORM-13. 100 m/min = 5/3 m/s, 300 m, ramps of the entry 0.3 up and 0.4 m/s2 down, of the
        // process 0.25
        // m/s2 down; slows at 120 m to 0.8 m/s; weld 190 s. V^2/(2 d_e) = 3.4722, V^2/(2 a_e) = 4.6296, x_stop = V^2/(2
        // d_p) =
        // 5.5556 m.
        // Without slowing: T = (300 - 120 - 3.4722 - 4.6296)/V = 103.139 s; C = 190 V + 8.1019 + 120 = 444.769 m.
        // Without a stop: T = (300 - 120 - 3.4722)/V + (V - 0.8)/0.25 + (120 - 5.5556 - 0.64/0.6)/0.8
        //   = 105.917 + 3.4667 + 141.722 = 251.106 s; C = 300 - V (251.106 - 190) = 198.157 m.
        Line line = line(5 / 3.0);
        HandCalculation hand = HandCalculation.of(line);
        Bearable slowing = hand.storage().orElseThrow().withoutSlowing().orElseThrow();
        BearableSlowed stop = hand.storage().orElseThrow().withoutStop().orElseThrow();

        assertThat(slowing.jointCycleTime().given()).isCloseTo(103.1389, within(1e-4));
        assertThat(slowing.capacity().needed()).isCloseTo(444.7685, within(1e-4));
        assertThat(stop.jointCycleTime().orElseThrow().given()).isCloseTo(251.1056, within(1e-4));
        assertThat(stop.capacity().orElseThrow().needed()).isCloseTo(198.1574, within(1e-4));
        assertThat(stop.speed().orElseThrow().given()).isGreaterThan(5 / 3.0);
        assertThat(hand.limitingFactor()).contains(Limit.CAPACITY);
        // An accumulator of just that capacity bears just this joint.
        ClosedForms forms = ClosedForms.of(line, line.coils().get(0))
                .holding(stop.capacity().orElseThrow().needed());
        assertThat(SlowingForms.of(forms, FAR).longestWithoutStop()).isCloseTo(190, within(EXACT));
    }

    @Test
    void everyStepOfBothSetsComesToItsNumber() {
        // Rules FORM-7, FORM-13.
        assertThat(HandCalculation.of(line(5 / 3.0)).steps())
                .extracting(step -> step.result().symbol())
                .containsSubsequence("C_slow", "T_slow", "x_stop", "T_3", "T_1", "T_stop", "C_stop");
        // A process no faster than the slowed speed is not slowed.
        assertThat(HandCalculation.of(line(0.7)).steps())
                .extracting(step -> step.result().symbol())
                .contains("T_slow")
                .doesNotContain("T_stop");
        BearableSlowed slow = HandCalculation.of(line(0.7))
                .storage()
                .orElseThrow()
                .withoutStop()
                .orElseThrow();
        assertThat(slow.jointCycleTime().orElseThrow().given())
                .isEqualTo(HandCalculation.of(line(0.7))
                        .storage()
                        .orElseThrow()
                        .atRatedSpeed()
                        .jointCycleTime()
                        .given());
    }

    @Test
    void whereSlowingBeginsAfterTheRelease_thereIsNoFormWithoutAStop() {
        // Rule FORM-13. 1 m/s, slows below 0.1 m to 0.2 m/s at once; the entry has 0.1 m/s2. From the slowed speed down
        // to the stop
        // level, 0, there would be (0.1 - 0 - 0.2^2/(2 0.1))/0.2 = -0.5 s: the slowed speed is not reached before the
        // release.
        HandCalculation hand = HandCalculation.of(atOnce(0.1));
        assertThat(hand.storage().orElseThrow().withoutStop().orElseThrow().jointCycleTime())
                .isEmpty();
        assertThat(hand.storage().orElseThrow().withoutSlowing()).isPresent();
        // At 0.3 m there are 0.5 s, and the form holds.
        assertThat(HandCalculation.of(atOnce(0.3))
                        .storage()
                        .orElseThrow()
                        .withoutStop()
                        .orElseThrow()
                        .jointCycleTime())
                .isPresent();
    }

    @Test
    void whatTheFormGivesOutsideOfWhatItAssumes_isLeftOut() {
        // Rule FORM-13. The line above with a weld of T seconds. T = 105.917 + 3.467 + 141.722 = 251.106 s at 300 m.
        // Of 150 s: C = 300 - 101.106 V = 131.490 m, more than x_slow + V^2/(2 d_e) = 123.472 m: slowing begins while
        // the entry stands.
        // Of 140 s: C = 300 - 111.106 V = 114.824 m, less than that: a full accumulator would be slowed before.
        assertThat(weld(150).capacity().orElseThrow().needed()).isCloseTo(131.4907, within(1e-4));
        assertThat(weld(140).capacity()).isEmpty();
        assertThat(weld(140).jointCycleTime().orElseThrow().given()).isCloseTo(251.1056, within(1e-4));
        // Of 190 s: 180/V - V/0.8 + (V - 0.8)/0.25 + (120 - 2 V^2 - 1.0667)/0.8 = 190 s at 3.04 m/s. The slowed speed
        // is reached above
        // the stop level up to 2 V^2 = 118.93 m, 7.71 m/s, where a joint may take 41.8 s: of 2 s the form would give
        // more.
        assertThat(weld(190).speed().orElseThrow().given()).isCloseTo(3.04, within(0.01));
        assertThat(weld(2).speed()).isEmpty();
    }

    @Test
    void aFormThatHoldsOfTheAnswerIsShown_whereItDoesNotHoldOfTheLineAsItIs() {
        // Rule FORM-13. Of 122 m, less than x_slow + V^2/(2 d_e) = 123.472 m, slowing begins before the entry stands:
        // no longest T.
        // A weld of 150 s takes 131.491 m as above: there it begins while the entry stands.
        HandCalculation small = HandCalculation.of(line(5 / 3.0, 150, 122));
        BearableSlowed stop = small.storage().orElseThrow().withoutStop().orElseThrow();

        assertThat(stop.jointCycleTime()).isEmpty();
        assertThat(stop.capacity().orElseThrow().needed()).isCloseTo(131.4907, within(1e-4));
        assertThat(small.steps())
                .extracting(step -> step.result().symbol())
                .contains("T_3", "C_stop")
                .doesNotContain("T_1", "T_stop");
    }

    private static BearableSlowed weld(double seconds) {
        return HandCalculation.of(line(5 / 3.0, seconds))
                .storage()
                .orElseThrow()
                .withoutStop()
                .orElseThrow();
    }

    private static Line atOnce(double level) {
        return new runthrough.plant.builder.LineBuilder()
                .coil("strip", 0.001, 1, 7850, Distribution.constant(2000))
                .entry(2, 0.1, 0.1)
                .capacity(100)
                .process(1, 0.1, Double.POSITIVE_INFINITY)
                .slowing(0.2, level, 20)
                .join("weld", Distribution.constant(71))
                .describe();
    }

    private static final Slowing FAR = new Slowing(0.8, 120, 200);

    private static Line line(double speed) {
        return line(speed, 190);
    }

    private static Line line(double speed, double weld) {
        return line(speed, weld, 300);
    }

    private static Line line(double speed, double weld, double capacity) {
        return new runthrough.plant.builder.LineBuilder()
                .coil("strip", 0.0015, 0.3, 7850, Distribution.constant(2000))
                .entry(2.5, 0.3, 0.4)
                .capacity(capacity)
                .process(speed, 0.2, 0.25)
                .slowing(FAR.speed(), FAR.level(), FAR.resumeLevel())
                .join("weld", Distribution.constant(weld))
                .describe();
    }
}
