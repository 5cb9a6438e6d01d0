package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.KINEMATICS;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.Entry.Creep;

/** The closed forms against worked examples of uniform acceleration (elementary mechanics, any text on it). */
@RecordsChecks
class ClosedFormsTest {

    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
    private static final double AT_ONCE = Double.POSITIVE_INFINITY;

    private static ClosedForms forms(
            double speed, double topSpeed, double acceleration, double deceleration, double capacity, double usable) {
        return new ClosedForms(
                new StopAndGo(speed, acceleration, deceleration, Optional.empty()),
                topSpeed,
                capacity,
                0,
                NO_LIMIT,
                AT_ONCE,
                usable);
    }

    private static void check(CheckBook book, String id, String what, String unit, double expected, double got) {
        book.check(KINEMATICS, id, "hand calculation: " + what)
                .source(Sources.MECHANICS)
                .unit(unit)
                .expected(expected)
                .relative(1e-9)
                .got(got);
    }

    private static Offset<Double> relative(double value) {
        return within(1e-9 * Math.abs(value));
    }

    /** K01 and K02: the entry brakes at the process's speed, stands for the joint, comes back and fills up again. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "K01, 1.5, 90, 0.5, 0.4, 2.5, 3.0, 2.25, 2.8125, 140.0625, 142.3125",
        "K02, 2, 60, 0.8, 0.8, 3, 2.5, 2.5, 2.5, 125.0, 126.25"
    })
    void stripDrawnAndRefill(
            String id,
            double speed,
            double joint,
            double deceleration,
            double acceleration,
            double topSpeed,
            double stopTime,
            double stopDistance,
            double startDistance,
            double drawn,
            double refillTime,
            CheckBook book) {
        // Rules FORM-1, FORM-5.
        ClosedForms forms = forms(speed, topSpeed, acceleration, deceleration, 200, 1000);
        check(book, id, "time to stop", "s", stopTime, forms.entry().runOutTime());
        check(book, id, "length to stop in", "m", stopDistance, forms.entry().stoppingLength());
        check(book, id, "length to start in", "m", startDistance, forms.entry().startingLength());
        check(book, id, "strip drawn", "m", drawn, forms.stripDrawn(joint));
        check(
                book,
                id,
                "refill time",
                "s",
                refillTime,
                forms.refill(joint).orElseThrow().time());
        assertThat(forms.refill(joint).orElseThrow().isHeld()).isTrue();
    }

    /** K04: 1 m is regained before the entry reaches its top speed of 2.5 m/s; it turns back at 2.166666667 m/s after 1/3 of it. */
    @Test
    void smallDeficit_isRefilledInATriangle(CheckBook book) {
        // Rule FORM-5.
        Refill refill = forms(1.5, 2.5, 0.4, 0.5, 200, 1000).refillOf(1);
        check(book, "K04", "refill time", "s", 3, refill.time());
        check(book, "K04", "peak speed of the entry", "m/s", 2.166666667, 1.5 + refill.overspeed());
        assertThat(refill.isHeld()).isFalse();
        assertThat(refill.gainOnRamps()).isCloseTo(1, relative(1));
    }

    /** K06: a whole cycle of 400 s: 3 s down, 90 s standing, 3.75 s up, 142.3125 s refill, and 160.9375 s at 1.5 m/s. */
    @Test
    void wholeCycle(CheckBook book) {
        // Rule FORM-6.
        ClosedForms forms = forms(1.5, 2.5, 0.4, 0.5, 200, 600);
        Refill refill = forms.refill(90).orElseThrow();
        double matchedTime = (forms.stripBeforeChange() - refill.entryStrip()) / 1.5;
        check(book, "K06", "strip drawn", "m", 140.0625, forms.stripDrawn(90));
        check(book, "K06", "refill time", "s", 142.3125, refill.time());
        check(book, "K06", "time from one coil change to the next", "s", 400, forms.coilRun());
        check(book, "K06", "time at the speed of the process", "s", 160.9375, matchedTime);
        assertThat(refill.timeFromRelease()).isCloseTo(3.75 + 142.3125, relative(146.0625));
    }

    /** K08: exponential joint cycle time of mean 60 s; the process runs out with the chance P(T > (200 - 5.0625)/1.5). */
    @Test
    void longestJoint_givesTheChanceOfRunningOut(CheckBook book) {
        // Rule FORM-3.
        ClosedForms forms = forms(1.5, 2.5, 0.4, 0.5, 200, 600);
        check(book, "K08", "strip drawn by a joint of no time", "m", 5.0625, forms.stripDrawn(0));
        book.check(KINEMATICS, "K08", "hand calculation: chance that a joint runs out, exponential time")
                .source(Sources.MECHANICS)
                .expected(0.114638426)
                .within(5e-10, "half of the last digit")
                .got(Math.exp(-forms.longestJoint() / 60));
    }

    @Test
    void fillRateLimit_holdsTheOverspeedDown() {
        // Rules FORM-5, ACC-6.
        // u = 0.5 m/s: ramps 1.25 s and 1 s gain 0.3125 + 0.25 m; the other 139.5 m take 279 s.
        ClosedForms forms =
                new ClosedForms(new StopAndGo(1.5, 0.4, 0.5, Optional.empty()), 2.5, 200, 0, 0.5, AT_ONCE, 1000);
        Refill refill = forms.refill(90).orElseThrow();
        assertThat(refill.overspeed()).isEqualTo(0.5);
        assertThat(refill.gainOnRamps()).isCloseTo(0.5625, relative(0.5625));
        assertThat(refill.time()).isCloseTo(2.25 + 279, relative(281.25));
    }

    @Test
    void reserveAndStoppingOfTheProcess_addToTheCapacityNeeded() {
        // Rules FORM-2, FORM-3.
        // 140.0625 + 10 + 1.5^2/(2 * 0.25)
        ClosedForms forms =
                new ClosedForms(new StopAndGo(1.5, 0.4, 0.5, Optional.empty()), 2.5, 200, 10, NO_LIMIT, 0.25, 1000);
        assertThat(forms.capacityNeeded(90)).isCloseTo(154.5625, relative(154.5625));
    }

    @Test
    void entryNoFasterThanTheProcess_neverRefills() {
        ClosedForms forms = forms(1.5, 1.5, 0.4, 0.5, 200, 600);
        assertThat(forms.refill(90)).isEmpty();
        assertThat(forms.longestRefilledJoint()).isEmpty();
    }

    @Nested
    class AtOnce {
        private final ClosedForms forms = forms(1.5, 2.5, AT_ONCE, AT_ONCE, 150, 600);

        @Test
        void onlyStandingCounts() {
            // Rule FORM-1.
            assertThat(forms.stripDrawn(90)).isEqualTo(135);
            assertThat(forms.longestJoint()).isEqualTo(100);
            assertThat(forms.refill(90).orElseThrow().time()).isEqualTo(135);
            assertThat(forms.entry().runOutLength()).isZero();
        }

        @Test
        void fastestSpeedIsStripOverTime() {
            // Rule FORM-4.
            assertThat(forms.fastestSpeed(100)).isCloseTo(1.5, relative(1.5));
            assertThat(forms.fastestSpeed(0)).isInfinite();
        }

        @Test
        void nothingStored_bearsNoSpeed() {
            assertThat(forms(1.5, 2.5, AT_ONCE, AT_ONCE, 0, 600).fastestSpeed(0))
                    .isZero();
        }
    }

    @Nested
    class Creeping {
        /** Slows from 1.5 to 0.5 m/s in 2 s over 2 m, creeps (3 - 0.25)/0.5 = 5.5 s, stops in 1 s over 0.25 m. */
        private final StopAndGo strip = new StopAndGo(1.5, 0.4, 0.5, Optional.of(new Creep(0.5, 3)));

        @Test
        void creepingTakesLongerAndMore() {
            // Rule FORM-8.
            assertThat(strip.creepTime()).isCloseTo(5.5, relative(5.5));
            assertThat(strip.runOutTime()).isCloseTo(8.5, relative(8.5));
            assertThat(strip.runOutLength()).isCloseTo(5, relative(5));
            // 140.0625 m without creep, and 1 m/s less for 5.5 s.
            assertThat(strip.missed(90)).isCloseTo(145.5625, relative(145.5625));
        }

        @ParameterizedTest
        @CsvSource({
            // at rest; half of the last ramp's quarter of its speed; the whole of it
            "0, 0",
            "0.0625, 0.5",
            "0.25, 1",
            // 1 m of creeping takes 2 s more
            "1.25, 3",
            "3, 6.5",
            // on the ramp at 1 m/s: (1 - 0.25)/(2 * 0.5) = 0.75 m before the creep, 1 s
            "3.75, 7.5",
            "5, 8.5",
            // at 1.5 m/s
            "8, 10.5"
        })
        void timeOfTheLastMetres(double length, double time) {
            assertThat(strip.timeOfLast(length)).isCloseTo(time, within(1e-12));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.5625, 1.5", "2.25, 3", "5.25, 5"})
    void timeOfTheLastMetresWithoutCreep(double length, double time) {
        StopAndGo strip = new StopAndGo(1.5, 0.4, 0.5, Optional.empty());
        assertThat(strip.timeOfLast(length)).isCloseTo(time, within(1e-12));
    }

    @Test
    void timeOfTheLastMetresOfStripThatStopsAtOnce() {
        assertThat(new StopAndGo(1.5, AT_ONCE, AT_ONCE, Optional.empty()).timeOfLast(3))
                .isEqualTo(2);
        StopAndGo creeping = new StopAndGo(1.5, AT_ONCE, AT_ONCE, Optional.of(new Creep(0.5, 3)));
        assertThat(creeping.timeOfLast(1)).isEqualTo(2);
        assertThat(creeping.timeOfLast(3)).isEqualTo(6);
        assertThat(creeping.timeOfLast(4.5)).isEqualTo(7);
    }
}
