package runthrough.plant.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static runthrough.plant.SoundLine.atSpeed;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.check.Found.assertError;
import static runthrough.plant.check.Found.assertWarning;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.check.Message.Severity;

/** Entries, and the coils they pay off: what is refused or warned of. 1.5 m/s are 90 m/min, 2.5 m/s are 150 m/min. */
class EntryAndCoilCheckTest {

    @Nested
    class Entries {
        @Test
        void entrySlowerThanProcess_isRefused() {
            // Rule CHECK-6.
            assertError(
                    line().topSpeed(1.4),
                    "entry.top-speed = 1.4 m/s; must be more than the process speed, 1.5 m/s. The entry must outrun"
                            + " the process: give a higher speed here or a lower one there.");
        }

        @Test
        void entryAsFastAsProcess_isWarnedOf() {
            // Rule CHECK-6.
            assertWarning(
                    line().topSpeed(1.5),
                    "entry.top-speed = 1.5 m/s; must be more than the process speed, 1.5 m/s. As it is, the"
                            + " accumulator never refills: give a higher speed here or a lower one there.");
        }

        @Test
        void entrySlowerThanTheFastestCoil_isRefused() {
            // Rule CHECK-6.
            assertThat(LineCheck.check(
                            line().coils(coil(600), atSpeed(coil(600), 3)).build()))
                    .extracting(Message::text)
                    .containsExactly("entry.top-speed = 2.5 m/s; must be more than the process speed, 3 m/s. The"
                            + " entry must outrun the process: give a higher speed here or a lower one there.");
        }

        @Test
        void creepTooShortToStopFrom_isRefused() {
            // Rule CHECK-8.
            // 1^2/(2 * 0.5) = 1 m
            assertError(
                    line().creep(1, 0.9),
                    "entry.creep.length = 0.9 m; must be at least what it takes to stop from the creep speed"
                            + " 1 m/s, 1 m. Give more metres of creep or a lower creep speed.");
            assertThat(LineCheck.check(line().creep(1, 1).build())).isEmpty();
        }

        @Test
        void creepAsFastAsTheSlowestCoil_isRefused() {
            // Rule CHECK-7.
            assertError(
                    line().coils(coil(600), atSpeed(coil(600), 0.5)).creep(0.5, 3),
                    "entry.creep.speed = 0.5 m/s; must be less than the slowest process speed, 0.5 m/s. Give a lower"
                            + " creep speed, or leave creep out.");
        }

        @Test
        void creepOnOneStrip_stopsAtTheSlowerOfBothDecelerations() {
            // The process slows at 0.1 m/s2: 1^2/(2 * 0.1) = 5 m, where the entry alone would take 1 m.
            assertError(
                    line().withoutAccumulator().process(1.5, 0.2, 0.1).creep(1, 4),
                    "entry.creep.length = 4 m; must be at least what it takes to stop from the creep speed 1 m/s,"
                            + " 5 m. Give more metres of creep or a lower creep speed.");
        }

        @Test
        void entrySlowerThanProcessOnOneStrip_runsAtTheEntrysSpeed() {
            assertThat(LineCheck.check(line().withoutAccumulator().topSpeed(1).build()))
                    .isEmpty();
        }
    }

    @Nested
    class Coils {
        @Test
        void coilShorterThanItsCrops_isRefused() {
            // Rule CHECK-2.
            assertError(
                    line().coils(coil(Distribution.constant(0.7), 0.4, 0.3)),
                    "coil = 0 m of usable strip; must be more than 0 after its crops, 0.7 m. Give a longer coil or"
                            + " shorter crops.");
        }

        @Test
        void lengthThatMayFallBelowTheCrops_isWarnedOfWithItsChance() {
            // Rule CHECK-2.
            // Uniform from 0 m to 500 m: 5 m of crops are more than 1 coil in 100.
            assertWarning(
                    line().coils(coil(Distribution.uniform(0, 500), 3, 2)),
                    "coil = -5 m to 495 m of usable strip; should always be more than 0 after its crops, 5 m, but is"
                            + " not for 1 coil in 100. A run that draws such a coil ends with an error: give lengths"
                            + " that are bounded below.");
        }

        @Test
        void lengthThatFallsBelowTheCropsOnlyInTheory_isAllowed() {
            // 4.5 m of crops are twelve standard deviations of the logarithm away: no stream of numbers comes there.
            assertThat(LineCheck.check(line().coils(coil(Distribution.lognormal(600, 30), 2.5, 2))
                            .build()))
                    .isEmpty();
        }

        @Test
        void firstCoilTooShortToStopIn_isRefused() {
            // Rule CHECK-3.
            assertError(
                    line().coils(coil(2), coil(600)),
                    "coils.schedule[1] = 2 m of usable strip; must be at least what it takes to stop the first coil"
                            + " from 1.5 m/s, 2.25 m. Give a longer first coil, a faster stop or a lower process"
                            + " speed.");
        }

        @Test
        void firstCoilTooShortToCreepAndStop_isRefused() {
            // Rule CHECK-3.
            // 3 m + (1.5^2 - 0.5^2)/(2 * 0.5) m = 5 m
            assertError(
                    line().coils(coil(4.9)).creep(0.5, 3),
                    "coil = 4.9 m of usable strip; must be at least what it takes to stop the first coil from"
                            + " 1.5 m/s, 5 m. Give a longer first coil, a faster stop or a lower process speed.");
        }

        @Test
        void laterCoilTooShortToStopIn_isOnlyTooShortToReachSpeed() {
            // Rule CHECK-4.
            // 1.5^2/(2 * 0.4) + 1.5^2/(2 * 0.5) = 5.0625 m
            assertWarning(
                    line().coils(coil(600), coil(2), coil(600), coil(3)),
                    "coils.schedule[2] = 2 m of usable strip (and 1 more like it); should be at least what it takes to reach"
                            + " 1.5 m/s and stop from it again, 5.0625 m. The entry cannot refill the accumulator from"
                            + " such a coil: give longer coils or faster ramps.");
        }

        @Test
        void coilOfAMixMayComeFirst_soMustBeLongEnoughToStopIn() {
            // Rule CHECK-3.
            CoilSource mix =
                    new CoilSource.Mix(List.of(new CoilSource.Share(coil(600), 3), new CoilSource.Share(coil(2), 1)));
            assertError(
                    line().coilSource(mix),
                    "coils.mix[2] = 2 m of usable strip; must be at least what it takes to stop the first coil from"
                            + " 1.5 m/s, 2.25 m. Give a longer first coil, a faster stop or a lower process speed.");
        }

        @Test
        void firstCoilThatMayBeTooShortToStopIn_isWarnedOfWithItsChance() {
            // Rule CHECK-3.
            // Uniform from 0 m to 22.5 m: 1 in 10 is below 2.25 m.
            assertThat(LineCheck.check(line().coils(coil(Distribution.uniform(0, 22.5), 0, 0))
                            .build()))
                    .extracting(Message::severity, Message::what)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "0 m to 22.5 m of usable strip; should always be at least what it takes to stop the first"
                                    + " coil from 1.5 m/s, 2.25 m, but is not for 1 coil in 10"));
        }

        @Test
        void coilWithinTheUncoilersPath_isWarnedOf() {
            // Rule CHECK-5.
            assertWarning(
                    line().coils(coil(30)).uncoilerPath(30),
                    "coil = 30 m of usable strip; should be more than the strip path from uncoiler to joiner, 30 m. Its"
                            + " tail leaves the uncoiler before it has begun to run, which counts as leaving when its"
                            + " joint is released: give a shorter path or longer coils.");
        }

        @Test
        void massesAndDiametersAreCheckedAsLengths() {
            // 100 kg of 0.002 m x 1.25 m x 7850 kg/m3 are 5.0955 m.
            Coil light = new Coil(
                            "light", new Coil.Strip(0.002, 1.25, 7850), new CoilSize.ByMass(Distribution.constant(100)))
                    .withCrops(3, 3);
            // pi (0.51^2 - 0.5^2)/(4 * 0.002) = 3.966 m
            Coil thin = new Coil("thin", new Coil.Strip(0.002, 1.25, 7850), new CoilSize.ByDiameters(0.51, 0.5, 1))
                    .withCrops(2, 2);
            assertThat(LineCheck.check(line().coils(light, thin).build()))
                    .extracting(Message::what)
                    .containsExactly("-0.904459 m of usable strip (and 1 more like it); must be more than 0 after its"
                            + " crops, 6 m");
        }
    }
}
